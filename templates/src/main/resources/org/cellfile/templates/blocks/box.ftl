<div class="box box-${block.tone?lower_case}">
  <p class="box-title"><span class="box-tone">${words["box." + block.tone?lower_case]}</span>${block.title}</p>
  <@blocks of=block.blocks number=number depth=depth/>
</div>
