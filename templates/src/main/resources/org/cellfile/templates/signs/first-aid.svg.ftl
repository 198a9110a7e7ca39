<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.first-aid']}">
  <rect x="2" y="2" width="96" height="96" fill="#237f52"/>
  <path d="M39 16 L61 16 L61 39 L84 39 L84 61 L61 61 L61 84 L39 84 L39 61 L16 61 L16 39 L39 39 Z" fill="#fff"/>
</svg>
