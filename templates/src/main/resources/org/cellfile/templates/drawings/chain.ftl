<#-- Parts of function-chain.svg.ftl, in a namespace of their own. A unit of the drawing is a quarter of a millimetre. -->
<#import "/drawings/elevation.ftl" as e>

<#-- Texts of 9 units are 6.4 pt; they are wrapped, and set no smaller than 6 pt. -->
<#assign size = 9 pace = 11 bare = 108 box = 114 pad = 5 gap = 10 rail = 14 between = 16 edge = 12>

<#-- About how wide a text is at that size: thin, wide and other letters. -->
<#function measure text>
  <#local wide = text?replace("[^mwMW%@]", "", "r")?length thin = text?replace("[^ijltfI.,:;'| \xA0-]", "", "r")?length capital = text?replace("[^A-LN-VX-Z]", "", "r")?length>
  <#return size * (0.9 * wide + 0.34 * thin + 0.68 * capital + 0.565 * (text?length - wide - thin - capital))>
</#function>

<#-- A text in lines no wider than the room, broken after hyphens and blanks but not between a figure and its unit, and within a word where that is not enough. -->
<#function lines text room>
  <#local done = [] line = "">
  <#list text?replace(r"(?<=\d) (?=years|%|1/h)", "\xA0", "r")?replace("([ -])", "$1\n", "r")?split("\n") as piece>
    <#if line?has_content && measure(line + piece) gt room><#local done = done + [line] line = ""></#if>
    <#local line = line + piece>
    <#list 1..20 as cut>
      <#if measure(line) lte room><#break></#if>
      <#local many = 1>
      <#list 1..<line?length as n><#if measure(line[0..<n]) gt room><#break></#if><#local many = n></#list>
      <#local done = done + [line[0..<many]] line = line[many..]>
    </#list>
  </#list>
  <#return done + line?has_content?then([line], [])>
</#function>

<#function texts of wide>
  <#local heads = lines(of.tag, wide - 2 * pad) figures = []>
  <#list of.figures as figure><#local figures = figures + lines(figure, wide - 2 * pad)></#list>
  <#return {"heads": heads, "figures": figures, "high": pace * (heads?size + figures?size)}>
</#function>

<#-- How much room a subsystem takes, above and below the line that runs through it. -->
<#function room stage>
  <#if stage.channels?size == 0>
    <#local words = texts(stage, bare)>
    <#return {"wide": bare, "above": words.high / 2 + 4 + pace, "below": words.high / 2 + 4, "words": words}>
  </#if>
  <#local boxes = stage.equipment most = stage.equipment?size>
  <#list stage.channels as channel><#local boxes = boxes + channel most = [most, channel?size]?max></#list>
  <#local high = (boxes?map(one -> texts(one, box).high) + [pace])?max + 7>
  <#local wide = most * (box + gap) - gap + 2 * rail>
  <#local words = texts(stage, wide)>
  <#local half = (stage.channels?size * (high + 7) - 7) / 2>
  <#return {"wide": wide, "above": half + 5 + words.high + 5 + pace, "below": half + 6 + (stage.equipment?size gt 0)?then(high + 10, 0), "words": words, "boxHigh": high, "half": half}>
</#function>

<#-- The subsystems in rows as wide as the drawing; each row with its height and how far below its top the line runs. -->
<#function rows stages>
  <#local rows = [] row = [] x = edge above = 0 below = 0>
  <#list stages as stage>
    <#local needs = room(stage)>
    <#if row?size gt 0 && x + needs.wide gt 640 - edge>
      <#local rows = rows + [{"stages": row, "axis": above + 2, "high": above + below + 16}] row = [] x = edge above = 0 below = 0>
    </#if>
    <#local row = row + [{"stage": stage, "x": x, "room": needs}] x = x + needs.wide + between above = [above, needs.above]?max below = [below, needs.below]?max>
  </#list>
  <#return rows + [{"stages": row, "axis": above + 2, "high": above + below + 6}]>
</#function>

<#macro words of x y wide>
  <#list of.heads as line>
<text x="${e.n(x)}" y="${e.n(y + pace * line?counter - 2)}" font-size="${size}" font-weight="bold" data-fit="${e.n(wide - 4)}">${line?trim}</text>
  </#list>
  <#list of.figures as line>
<text x="${e.n(x)}" y="${e.n(y + pace * (of.heads?size + line?counter) - 2)}" font-size="${size}" data-fit="${e.n(wide - 4)}">${line?trim}</text>
  </#list>
</#macro>

<#macro frame x y wide high width=0.9 dash="">
<rect x="${e.n(x)}" y="${e.n(y)}" width="${e.n(wide)}" height="${e.n(high)}" fill="#fff" stroke="#000" stroke-width="${width}"<#if dash?has_content> stroke-dasharray="${dash}"</#if>/>
</#macro>

<#macro row of top first last>
  <#local axis = top + of.axis end = of.stages?last.x + of.stages?last.room.wide>
  <@e.line x1=first?then(4, 2) y1=axis x2=end + (last?then(8, between / 2)) y2=axis width=1.2/>
  <#if !first><@e.line x1=2 y1=top - 4 x2=2 y2=axis width=1.2/></#if>
  <#if first><circle cx="4" cy="${e.n(axis)}" r="2.4" fill="#000"/></#if>
  <#if last>
    <circle cx="${e.n(end + 8)}" cy="${e.n(axis)}" r="2.4" fill="#000"/>
  <#else>
    <#-- over to the row below -->
    <path d="M${e.n(end + between / 2)} ${e.n(axis)} L${e.n(end + between / 2)} ${e.n(top + of.high - 4)} L2 ${e.n(top + of.high - 4)}" fill="none" stroke="#000" stroke-width="1.2"/>
  </#if>
  <#list of.stages as placed>
    <#if placed.stage.channels?size == 0><@bought of=placed axis=axis/><#else><@built of=placed axis=axis/></#if>
  </#list>
</#macro>

<#macro bought of axis>
  <#local top = axis - of.room.above>
  <text x="${e.n(of.x + 1)}" y="${e.n(top + pace - 3)}" font-size="${size}">${of.stage.place}</text>
  <@frame x=of.x y=top + pace wide=of.room.wide high=of.room.words.high + 8 width=1.4/>
  <@words of=of.room.words x=of.x + pad y=top + pace + 3 wide=of.room.wide - pad/>
</#macro>

<#macro built of axis>
  <#local top = axis - of.room.above right = of.x + of.room.wide high = of.room.boxHigh>
  <text x="${e.n(of.x + 1)}" y="${e.n(top + pace - 3)}" font-size="${size}">${of.stage.place}</text>
  <@frame x=of.x y=top + pace wide=of.room.wide high=of.room.above + of.room.below - pace width=0.6/>
  <@words of=of.room.words x=of.x + pad y=top + pace + 3 wide=of.room.wide - pad/>
  <#local splitAt = of.x + 6 joinAt = right - 6 firstAt = axis - of.room.half + high / 2 lastAt = axis + of.room.half - high / 2>
  <@e.line x1=of.x y1=axis x2=splitAt y2=axis width=1.2/>
  <@e.line x1=joinAt y1=axis x2=right y2=axis width=1.2/>
  <@e.line x1=splitAt y1=firstAt x2=splitAt y2=lastAt width=1.2/>
  <@e.line x1=joinAt y1=firstAt x2=joinAt y2=lastAt width=1.2/>
  <#list of.stage.channels as channel>
    <@boxes of=channel x=of.x + rail from=splitAt to=joinAt at=firstAt + channel?index * (high + 7) high=high/>
  </#list>
  <#if of.stage.equipment?size gt 0>
    <#local at = lastAt + high + 10>
    <#local dash = "3 2">
    <@e.line x1=splitAt y1=lastAt x2=splitAt y2=at width=0.9 dash=dash/>
    <@e.line x1=joinAt y1=lastAt x2=joinAt y2=at width=0.9 dash=dash/>
    <@boxes of=of.stage.equipment x=of.x + rail from=splitAt to=joinAt at=at high=high dash=dash/>
  </#if>
</#macro>

<#-- Boxes in series on a line. -->
<#macro boxes of x from to at high dash="">
  <@e.line x1=from y1=at x2=to y2=at width=dash?has_content?then(0.9, 1.2) dash=dash/>
  <#list of as one>
    <#local left = x + one?index * (box + gap)>
    <@frame x=left y=at - high / 2 wide=box high=high dash=dash/>
    <@words of=texts(one, box) x=left + pad y=at - high / 2 + 2 wide=box - pad/>
  </#list>
</#macro>
