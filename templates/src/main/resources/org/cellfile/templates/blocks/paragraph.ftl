<p class="text">${block.text}</p>
