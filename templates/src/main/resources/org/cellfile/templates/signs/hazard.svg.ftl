<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.hazard']}">
  <path d="M50 8 L97 90 L3 90 Z" fill="#000" stroke="#000" stroke-width="6" stroke-linejoin="round"/>
  <path d="M50 19 L88 85 L12 85 Z" fill="#f9a900"/>
  <path d="M45 40 L55 40 L52.6 66 L47.4 66 Z" fill="#000"/>
  <circle cx="50" cy="75" r="4.6" fill="#000"/>
</svg>
