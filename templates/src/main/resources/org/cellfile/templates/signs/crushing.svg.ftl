<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.crushing']}">
  <path d="M50 8 L97 90 L3 90 Z" fill="#000" stroke="#000" stroke-width="6" stroke-linejoin="round"/>
  <path d="M50 19 L88 85 L12 85 Z" fill="#f9a900"/>
  <#-- fingers between two blocks -->
  <rect x="36" y="44" width="28" height="10" fill="#000"/>
  <path d="M50 32 L50 44" stroke="#000" stroke-width="5"/>
  <rect x="28" y="73" width="44" height="8" fill="#000"/>
  <path d="M76 59 L46 57.5 M76 63.5 L42 63.5 M76 68 L46 69" fill="none" stroke="#000" stroke-width="3.6" stroke-linecap="round"/>
</svg>
