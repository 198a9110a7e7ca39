<#-- As high as the text of a page, so that no page torn from a draft can be taken for a released one. -->
<#assign high = bandHigh!((label.page == "Letter")?then(636, 686))>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 ${high?c}" alt="${words.draft}">
  <#list 0..high / 9 - 2 as i><path d="M0 ${(i * 9 + 7)?c} L10 ${(i * 9)?c} L10 ${(i * 9 + 3.4)?c} L0 ${(i * 9 + 10.4)?c} Z" fill="#000"/></#list>
</svg>
