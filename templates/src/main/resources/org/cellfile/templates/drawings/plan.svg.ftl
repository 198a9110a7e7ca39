<#--
  A plan from above. Everything has its place already, in units of the drawing, y downwards; here it only gets its looks, in black,
  white and grey: what a thing is shows by its line and its filling, never by its colour alone.
    marks      shapes of a kind as paths, the lowest first; hatching: the lines within one
    symbols    of a kind at a place
    distances  line, heads, bar across it, ends; aside: from its ends to its line where that is drawn beside another
    labels     boxes of text, or numbers, with a leader to the thing where they stand apart from it
    along, up  ticks of the rulers, where the drawing has some
    legend     a sample and words of each kind that occurs; key: what the circled numbers stand for
    planAcross in mm, of the whole drawing, by the page it is on; missing for 160 mm
    standalone the lines above it in a file of its own; missing on a page
-->
<#import "/drawings/elevation.ftl" as e>

<#-- Its line: width, dashes, colour; and its filling. -->
<#assign looks = {
  "restricted":      {"width": 1.1, "dash": "10 3 2 3"},
  "warning":         {"width": 0.7, "dash": "1.5 2.5"},
  "floor":           {"width": 1.2},
  "not-seen":        {"width": 0.8, "dash": "0.8 2.4"},
  "zone":            {"width": 1.4},
  "passable":        {"width": 0.7, "dash": "4 1.5", "fill": "#fff"},
  "structure":       {"width": 0.9, "fill": "#ddd"},
  "hiding":          {"width": 0.9, "fill": "#999"},
  "reach":           {"width": 0.7, "dash": "5 3"},
  "swing":           {"width": 0.6, "dash": "2 2"},
  "guard":           {"width": 1.2},
  "door":            {"width": 5},
  "line":            {"width": 0.6},
  "suspended-floor": {"width": 0.8, "dash": "1 3"},
  "suspended-line":  {"width": 1.4, "dash": "1.4 4"},
  "two-hand":        {"width": 1}
}>

<#macro path d width dash="" fill="none" stroke="#000" cap="butt">
<path d="${d}" fill="${fill}" stroke="${stroke}" stroke-width="${width}"<#if dash?has_content> stroke-dasharray="${dash}"</#if><#if cap != "butt"> stroke-linecap="${cap}"</#if>/>
</#macro>

<#macro mark kind d hatching=false>
  <#if hatching>
    <#if kind == "zone"><@path d=d width=0.4 stroke="#777"/><#else><@path d=d width=0.6 stroke="#777" dash="3 2"/></#if>
  <#else>
    <#local look = looks[kind]>
    <#-- a wall drawn as a line encloses nothing -->
    <@path d=d width=look.width dash=look.dash!"" fill=d?contains("Z")?then(look.fill!"none", "none")/>
    <#-- posts along a guard, the leaf of a door, beams in a line of detection -->
    <#if kind == "guard"><@path d=d width=6 dash="1.2 11"/></#if>
    <#if kind == "door"><@path d=d width=3 stroke="#fff"/></#if>
    <#if kind == "line"><@path d=d width=4 dash="0.1 5.5" cap="round"/></#if>
  </#if>
</#macro>

<#macro disc x y r fill="#000" width=0.8><circle cx="${e.n(x)}" cy="${e.n(y)}" r="${r}" fill="${fill}" stroke="#000" stroke-width="${width}"/></#macro>
<#macro square x y half fill="#fff" width=0.9><rect x="${e.n(x - half)}" y="${e.n(y - half)}" width="${2 * half}" height="${2 * half}" fill="${fill}" stroke="#000" stroke-width="${width}"/></#macro>

<#-- A symbol within 13 units. -->
<#macro symbol kind x y turn=0>
  <#switch kind>
    <#case "robot"><@disc x=x y=y r=5.5 fill="#fff" width=1.2/><@e.line x1=x - 5.5 y1=y x2=x + 5.5 y2=y width=0.9/><@e.line x1=x y1=y - 5.5 x2=x y2=y + 5.5 width=0.9/><#break>
    <#case "controller"><@square x=x y=y half=5/><@e.line x1=x - 5 y1=y + 5 x2=x + 5 y2=y - 5 width=0.9/><#break>
    <#case "scanner"><@disc x=x y=y r=4.6 fill="#fff"/><path d="M${e.n(x)} ${e.n(y)} L${e.n(x - 4.6)} ${e.n(y)} A4.6 4.6 0 1 0 ${e.n(x)} ${e.n(y - 4.6)} Z" fill="#000"/><#break>
    <#case "two-hand"><@disc x=x - 3.2 y=y r=2.6 width=0.9 fill="#fff"/><@disc x=x + 3.2 y=y r=2.6 width=0.9 fill="#fff"/><#break>
    <#case "device"><path d="M${e.n(x)} ${e.n(y - 5.5)} L${e.n(x + 5.5)} ${e.n(y)} L${e.n(x)} ${e.n(y + 5.5)} L${e.n(x - 5.5)} ${e.n(y)} Z" fill="#fff" stroke="#000" stroke-width="0.9"/><#break>
    <#case "reset"><@square x=x y=y half=5/><path d="M${e.n(x - 2.4)} ${e.n(y - 3)} L${e.n(x + 3)} ${e.n(y)} L${e.n(x - 2.4)} ${e.n(y + 3)} Z" fill="#000"/><#break>
    <#case "emergency-stop"><@square x=x y=y half=6 fill="#ffd500"/><@disc x=x y=y r=4.4 fill="#c00000" width=1/><#break>
    <#case "emergency-stop-idle"><@square x=x y=y half=6/><@disc x=x y=y r=4.4 fill="#fff"/><@e.line x1=x - 6 y1=y + 6 x2=x + 6 y2=y - 6 width=1.2/><#break>
    <#case "place"><path d="M${e.n(x - 6)} ${e.n(y + 5.5)} C${e.n(x - 6)} ${e.n(y - 1)} ${e.n(x + 6)} ${e.n(y - 1)} ${e.n(x + 6)} ${e.n(y + 5.5)} Z" fill="#fff" stroke="#000" stroke-width="0.9"/><@disc x=x y=y - 2.6 r=3 fill="#fff" width=0.9/><#break>
    <#case "reader"><path d="M${e.n(x)} ${e.n(y + 6.5)} L${e.n(x - 5)} ${e.n(y - 1.5)} A5.2 5.2 0 1 1 ${e.n(x + 5)} ${e.n(y - 1.5)} Z" fill="#000"/><circle cx="${e.n(x)}" cy="${e.n(y - 2.6)}" r="1.9" fill="#fff"/><#break>
    <#case "way-out"><rect x="${e.n(x - 6.5)}" y="${e.n(y - 5)}" width="13" height="10" fill="#00713c" stroke="#000" stroke-width="0.6"/><g<#if turn != 0> transform="rotate(${turn} ${e.n(x)} ${e.n(y)})"</#if>><path d="M${e.n(x - 4.6)} ${e.n(y - 1)} L${e.n(x + 0.6)} ${e.n(y - 1)} L${e.n(x + 0.6)} ${e.n(y - 3.4)} L${e.n(x + 4.8)} ${e.n(y)} L${e.n(x + 0.6)} ${e.n(y + 3.4)} L${e.n(x + 0.6)} ${e.n(y + 1)} L${e.n(x - 4.6)} ${e.n(y + 1)} Z" fill="#fff"/></g><#break>
  </#switch>
</#macro>

<#-- A distance with a ring at the safeguard and a dot at the hazard zone. -->
<#macro distance of>
  <#if of.aside??><@path d=of.aside width=0.4/></#if>
  <#if of.line??><@path d=of.line width=of.governs?then(1.8, 0.9)/><path d="${of.heads}" fill="#000"/></#if>
  <#if of.bar??><@path d=of.bar width=1.8/></#if>
  <@disc x=of.x1 y=of.y1 r=2.2 fill="#fff" width=1/>
  <@disc x=of.x2 y=of.y2 r=of.governs?then(3.2, 2.2)/>
</#macro>

<#-- What a kind looks like, beside its words. -->
<#macro sample kind x y across>
  <#local line = "M${e.n(x)} ${e.n(y)} L${e.n(x + 27)} ${e.n(y)}" box = "M${e.n(x)} ${e.n(y - 4.5)} L${e.n(x + 27)} ${e.n(y - 4.5)} L${e.n(x + 27)} ${e.n(y + 4.5)} L${e.n(x)} ${e.n(y + 4.5)} Z">
  <#if ["distance", "governs"]?seq_contains(kind)>
    <#local strong = (kind == "governs") line = "M${e.n(x)} ${e.n(y)} L${e.n(x + 23)} ${e.n(y)}">
    <@path d=line width=strong?then(1.8, 0.9)/>
    <#if !strong><path d="M${e.n(x + 8)} ${e.n(y - 4)} L${e.n(x + 8)} ${e.n(y + 4)}" stroke="#000" stroke-width="1.8"/></#if>
    <@disc x=x y=y r=2.2 fill="#fff" width=1/><@disc x=x + 23 y=y r=strong?then(3.2, 2.2)/>
  <#elseif ["guard", "door", "line", "suspended-line", "reach", "restricted", "swing"]?seq_contains(kind)><@mark kind=kind d=line/>
  <#elseif looks[kind]?? && kind != "two-hand">
    <@mark kind=kind d=box/>
    <#if ["zone", "floor"]?seq_contains(kind)>
      <#list 0..2 as i>
        <#local from = x + i * 9 + (kind == "zone")?then(0, 9) to = x + i * 9 + (kind == "zone")?then(9, 0)>
        <@mark kind=kind d="M${e.n(from)} ${e.n(y + 4.5)} L${e.n(to)} ${e.n(y - 4.5)}" hatching=true/>
      </#list>
    </#if>
  <#else><@symbol kind=kind x=x + across / 2 y=y/></#if>
</#macro>

<#-- In a file of its own lines of words stand above it; elsewhere there is none. -->
<#-- on a page at most 215 mm high -->
<#assign across = [planAcross!(data.width / 4), 215 * data.width / data.height]?min>
<#assign heading = standalone![]>
<#assign above = heading?size * 14 + heading?has_content?then(10, 0)>
<#if heading?has_content>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="-10 ${-above} ${e.n(data.width + 20)} ${e.n(data.height + above)}" width="${e.n((data.width + 20) / 4)}mm" height="${e.n((data.height + above) / 4)}mm" font-family="Liberation Sans, Arial, Helvetica, sans-serif" role="img">
  <title>${heading[0]}</title>
  <desc>${alternative}</desc>
  <rect x="-10" y="${-above}" width="${e.n(data.width + 20)}" height="${e.n(data.height + above)}" fill="#fff"/>
  <#list heading as line><@e.text x=0 y=14 * line?counter - above bold=(line?index == 0)>${line}</@e.text></#list>
<#else>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${e.n(data.width)} ${e.n(data.height)}" alt="${alternative}" style="width: ${e.n(across)}mm; height: ${e.n(data.height * across / data.width)}mm">
</#if>
  <#list data.marks as each><@mark kind=each.kind d=each.path hatching=each.hatching/></#list>
  <#-- a zone once more over what stands in it, so that it shows as one -->
  <#list data.marks?filter(one -> one.kind == "zone") as each><@mark kind=each.kind d=each.path hatching=each.hatching/></#list>
  <rect x="${e.n(data.left)}" y="${e.n(data.top)}" width="${e.n(data.right - data.left)}" height="${e.n(data.bottom - data.top)}" fill="none" stroke="#000" stroke-width="0.8"/>
  <#list data.distances as each><@distance of=each/></#list>
  <#list data.labels as label><#if label.leader??><@path d=label.leader width=0.5/><@disc x=label.x y=label.y r=1.2 width=0/></#if></#list>
  <#list data.symbols as each><#if each.leader??><@path d=each.leader width=0.5/></#if></#list>
  <#list data.symbols as each><@symbol kind=each.kind x=each.x y=each.y turn=each.turn!0/></#list>
  <#list data.labels as label>
    <rect x="${e.n(label.left)}" y="${e.n(label.top)}" width="${e.n(label.wide)}" height="${e.n(label.high)}"<#if label.number> rx="${e.n(label.high / 2)}" stroke="#000" stroke-width="0.6"</#if> fill="#fff"/>
    <#list label.lines as line>
    <text x="${e.n(label.left + label.wide / 2)}" y="${e.n(label.top + data.lineHeight * line?counter - data.size * 0.14)}" font-size="${data.size}" text-anchor="middle"<#if line.bold> font-weight="bold"</#if> data-fit="${e.n(label.wide)}">${line.text}</text>
    </#list>
  </#list>
  <#if data.along??>
    <#list data.along as tick><@e.line x1=tick.at y1=data.bottom x2=tick.at y2=data.bottom + 4/><@e.text x=tick.at y=data.bottom + 14 anchor="middle">${tick.text}</@e.text></#list>
    <#list data.up as tick><@e.line x1=data.left - 4 y1=tick.at x2=data.left y2=tick.at/><@e.text x=data.left - 6 y=tick.at + 3.6 anchor="end" fit=data.left - 8>${tick.text}</@e.text></#list>
    <@e.text x=data.right y=data.bottom + 14 anchor="end" bold=true>x →</@e.text>
    <@e.text x=data.left - 6 y=data.top + 10 anchor="end" bold=true>↑ y</@e.text>
    <#-- the scale, in two halves -->
    <#assign y = data.bottom + 32 x = data.left>
    <rect x="${e.n(x)}" y="${e.n(y - 3)}" width="${e.n(data.scale)}" height="4" fill="#000" stroke="#000" stroke-width="0.6"/>
    <rect x="${e.n(x + data.scale / 2)}" y="${e.n(y - 3)}" width="${e.n(data.scale / 2)}" height="4" fill="#fff" stroke="#000" stroke-width="0.6"/>
    <@e.text x=x + data.scale + 8 y=y + 2.6>${data.scaleWords}; coordinates in ${data.unit}</@e.text>
  </#if>
  <#list data.legend as entry>
    <@sample kind=entry.kind x=entry.x y=entry.y across=entry.across/>
    <#list entry.lines as line>
    <text x="${e.n(entry.x + entry.sample)}" y="${e.n(entry.y + data.size * 0.35 + data.lineHeight * line?index)}" font-size="${data.size}" text-anchor="start" data-fit="${e.n(entry.fit)}">${line}</text>
    </#list>
  </#list>
  <#list data.key as entry>
    <rect x="${e.n(entry.x)}" y="${e.n(entry.y - 6.6)}" width="${e.n(entry.wide)}" height="13.2" rx="6.6" fill="#fff" stroke="#000" stroke-width="0.6"/>
    <@e.text x=entry.x + entry.wide / 2 y=entry.y + 3.6 anchor="middle" bold=true>${entry.number}</@e.text>
    <#list entry.lines as line>
    <text x="${e.n(entry.x + entry.sample)}" y="${e.n(entry.y + data.size * 0.35 + data.lineHeight * line?index)}" font-size="${data.size}" text-anchor="start" data-fit="${e.n(entry.fit)}">${line}</text>
    </#list>
  </#list>
</svg>
