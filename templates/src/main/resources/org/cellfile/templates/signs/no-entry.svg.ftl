<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.no-entry']}">
  <circle cx="50" cy="50" r="43" fill="#fff" stroke="#9b2423" stroke-width="10"/>
  <#-- somebody who walks -->
  <circle cx="51" cy="27" r="7" fill="#000"/>
  <path d="M51 36 L49 56 L39 77 M49 56 L60 76" fill="none" stroke="#000" stroke-width="7" stroke-linecap="round" stroke-linejoin="round"/>
  <path d="M36 55 L41 42 L51 38 L60 48 L68 49" fill="none" stroke="#000" stroke-width="5.5" stroke-linecap="round" stroke-linejoin="round"/>
  <path d="M19.6 19.6 L80.4 80.4" stroke="#9b2423" stroke-width="10"/>
</svg>
