<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.lock-out']}">
  <circle cx="50" cy="50" r="48" fill="#005387"/>
  <#-- a padlock -->
  <path d="M36 48 L36 36 Q36 22 50 22 Q64 22 64 36 L64 48" fill="none" stroke="#fff" stroke-width="8"/>
  <rect x="27" y="47" width="46" height="33" rx="4" fill="#fff"/>
  <circle cx="50" cy="60" r="5" fill="#005387"/>
  <rect x="47.5" y="61" width="5" height="12" fill="#005387"/>
</svg>
