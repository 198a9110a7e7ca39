<div class="signature">
  <p class="signature-words">${block.words} <span class="signature-who">${block.who}</span></p>
  <p class="signature-rule"><span class="slot slot-name">${words["signature.name"]}</span><span class="slot slot-date">${words["signature.date"]}</span><span class="slot slot-sign">${words["signature.signature"]}</span></p>
</div>
