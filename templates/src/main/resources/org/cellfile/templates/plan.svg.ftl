<#-- A plan of the safety file as a file of its own, with what the margin of a page tells. -->
<#assign data = block.data alternative = block.alternative
         state = draft?then(words.draft + ", " + words["draft-notice"], words.released)
         standalone = [data.title + ", " + label.cellName, label.cellId + ", " + words.revision + " " + label.revision + ", " + words["as-of"] + " " + label.asOf, state]>
<#include "/" + block.template>
