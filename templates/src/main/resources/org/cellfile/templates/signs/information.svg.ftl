<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.information']}">
  <rect x="4" y="4" width="92" height="92" fill="#fff" stroke="#000" stroke-width="6"/>
  <circle cx="50" cy="27" r="8" fill="#000"/>
  <rect x="43" y="42" width="14" height="38" fill="#000"/>
</svg>
