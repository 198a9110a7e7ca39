<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.falling']}">
  <path d="M50 8 L97 90 L3 90 Z" fill="#000" stroke="#000" stroke-width="6" stroke-linejoin="round"/>
  <path d="M50 19 L88 85 L12 85 Z" fill="#f9a900"/>
  <#-- a load above a head -->
  <path d="M40 36 L60 36 L60 52 L40 52 Z" fill="#000" transform="rotate(12 50 44)"/>
  <path d="M45 56 L45 62 M50 57 L50 64 M55 58 L55 62" stroke="#000" stroke-width="2.6"/>
  <circle cx="50" cy="70" r="4.5" fill="#000"/>
  <path d="M36 83 Q38 75.5 50 75.5 Q62 75.5 64 83 Z" fill="#000"/>
</svg>
