<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" alt="${words['sign.prohibition']}">
  <circle cx="50" cy="50" r="43" fill="#fff" stroke="#9b2423" stroke-width="10"/>
  <#-- an open hand -->
  <path d="M36 80 L36 62 L27 47 Q25 43 28 42 Q31 41 33 44 L39 52 L39 30 Q39 26 42 26 Q45 26 45 30 L45 46 L46 46 L46 25 Q46 21 49 21 Q52 21 52 25 L52 46 L53 46 L53 27 Q53 23 56 23 Q59 23 59 27 L59 47 L60 47 L60 33 Q60 29.5 63 29.5 Q66 29.5 66 33 L66 60 Q66 68 62 72 L62 80 Z" fill="#000"/>
  <path d="M19.6 19.6 L80.4 80.4" stroke="#9b2423" stroke-width="10"/>
</svg>
