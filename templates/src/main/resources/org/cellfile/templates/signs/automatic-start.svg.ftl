<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.automatic-start']}">
  <path d="M50 8 L97 90 L3 90 Z" fill="#000" stroke="#000" stroke-width="6" stroke-linejoin="round"/>
  <path d="M50 19 L88 85 L12 85 Z" fill="#f9a900"/>
  <#-- an arm on its base, and the arrow of its movement -->
  <rect x="33" y="75" width="24" height="6" fill="#000"/>
  <path d="M45 75 L42 58 L56 46" fill="none" stroke="#000" stroke-width="6.5" stroke-linejoin="round"/>
  <circle cx="42" cy="58" r="4.6" fill="#000"/>
  <path d="M53 45 L62 43 M55 49 L61 52" fill="none" stroke="#000" stroke-width="3"/>
  <path d="M62 78 Q74 72 69 60" fill="none" stroke="#000" stroke-width="3.6"/>
  <path d="M65.5 63 L67.5 54 L73.5 60.5 Z" fill="#000"/>
</svg>
