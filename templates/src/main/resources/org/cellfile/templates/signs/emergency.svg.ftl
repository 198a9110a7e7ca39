<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.emergency']}">
  <rect x="2" y="2" width="96" height="96" fill="#237f52"/>
  <#-- a stop button from the side, and the press on it -->
  <path d="M22 58 Q22 44 50 44 Q78 44 78 58 Z" fill="#fff"/>
  <rect x="42" y="60" width="16" height="10" fill="#fff"/>
  <rect x="16" y="72" width="68" height="14" fill="#fff"/>
  <path d="M44 12 L56 12 L56 26 L64 26 L50 40 L36 26 L44 26 Z" fill="#fff"/>
</svg>
