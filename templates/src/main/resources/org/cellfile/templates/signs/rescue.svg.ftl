<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.rescue']}">
  <rect x="2" y="2" width="96" height="96" fill="#237f52"/>
  <#-- somebody pulls somebody who lies out by the arms -->
  <circle cx="27" cy="25" r="8" fill="#fff"/>
  <path d="M27 36 L23 58 L14 84 M23 58 L34 70 L33 85" fill="none" stroke="#fff" stroke-width="8" stroke-linecap="round" stroke-linejoin="round"/>
  <path d="M27 39 L44 56 L52 66" fill="none" stroke="#fff" stroke-width="6" stroke-linecap="round" stroke-linejoin="round"/>
  <circle cx="59" cy="62" r="7" fill="#fff"/>
  <path d="M52 66 L60 75 L90 84" fill="none" stroke="#fff" stroke-width="8" stroke-linecap="round" stroke-linejoin="round"/>
  <path d="M86 22 L60 22 M70 12 L58 22 L70 32" fill="none" stroke="#fff" stroke-width="6" stroke-linecap="round" stroke-linejoin="round" transform="rotate(180 73 22) translate(0 0)"/>
</svg>
