<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.release']}">
  <circle cx="50" cy="50" r="48" fill="#005387"/>
  <#-- a vessel, its open valve and what comes out -->
  <rect x="19" y="50" width="30" height="28" rx="8" fill="#fff"/>
  <rect x="31" y="38" width="6" height="14" fill="#fff"/>
  <rect x="22" y="30" width="24" height="7" fill="#fff"/>
  <path d="M49 62 L60 62" stroke="#fff" stroke-width="7"/>
  <path d="M60 51 L76 51 L76 45 L88 54 L76 63 L76 57 L60 57 Z" fill="#fff"/>
  <path d="M60 67 L73 72 M60 72 L68 79" stroke="#fff" stroke-width="4" stroke-linecap="round"/>
</svg>
