<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.action']}">
  <circle cx="50" cy="50" r="48" fill="#005387"/>
  <path d="M43 18 L57 18 L54 60 L46 60 Z" fill="#fff"/>
  <circle cx="50" cy="75" r="7" fill="#fff"/>
</svg>
