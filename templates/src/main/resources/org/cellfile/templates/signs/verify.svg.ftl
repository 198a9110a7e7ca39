<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.verify']}">
  <circle cx="50" cy="50" r="48" fill="#005387"/>
  <#-- a dial whose hand stands at nought -->
  <path d="M18 64 A 32 32 0 0 1 82 64" fill="none" stroke="#fff" stroke-width="7"/>
  <path d="M29 47 L35 52 M50 33 L50 41 M71 47 L65 52" stroke="#fff" stroke-width="4"/>
  <path d="M51 69 L25 62" stroke="#fff" stroke-width="5" stroke-linecap="round"/>
  <circle cx="51" cy="69" r="6" fill="#fff"/>
  <path d="M41 80 L47 86 L61 78" fill="none" stroke="#fff" stroke-width="5" stroke-linecap="round" stroke-linejoin="round"/>
</svg>
