<#--
  Parts shared by the side elevations of all kinds of safeguards. The view is 640 by 320 units. The floor lies at 250; the
  hazard zone stands from 430 to 510; the safeguard to its left, between 170 and 390. Texts have places of their own:
  heights of the safeguard at the far left, heights of the zone at the far right, distances to the right below the floor,
  so that no two of them can meet whatever the figures are.
-->

<#assign floor = 250 zoneLeft = 430 zoneRight = 510 inches = false>

<#-- A length or place with two decimals at most. -->
<#function n value><#return ((value * 100)?round / 100)?string("0.##")></#function>

<#-- A length given in millimetres, in the unit of the drawing that was planned last. -->
<#function mm value><#return inches?then((value / 25.4)?string("0.##") + " in", value?string("0.###") + " mm")></#function>

<#--
  Where things stand.
    data     the figures of the drawing, lengths in millimetres; inches says that they are written in inches
    heights  every height above the floor that is drawn, in millimetres
  Returned: up (units a millimetre, upwards), required and installed (places, when given), guard (where the safeguard is
  drawn), toScale.
-->
<#function plan data heights>
  <#assign inches = data.inches!false>
  <#local given = []>
  <#if data.required??><#local given = given + [data.required]></#if>
  <#if data.installed??><#local given = given + [data.installed]></#if>
  <#local tall = heights + [data.zoneHighest!0, data.zoneLowest!0]>
  <#local highest = tall?max>
  <#if highest lte 0><#local highest = 2000></#if>
  <#local farthest = (given?size gt 0)?then((given + [1])?max, 1)>
  <#local nearest = (given?size gt 0)?then(given?min, 0)>
  <#local scale = [260 / farthest, 200 / highest]?min>
  <#local toScale = nearest * scale gte 40 && (given?size lt 2 || data.required == data.installed || (data.required - data.installed)?abs * scale gte 1.2)>
  <#local places = {"toScale": toScale, "up": toScale?then(scale, 200 / highest), "highest": highest}>
  <#list ["required", "installed"] as which>
    <#if data[which]??>
      <#if toScale><#local away = data[which] * scale>
      <#elseif given?size == 1 || data.required == data.installed><#local away = 180>
      <#elseif data[which] == farthest><#local away = 230>
      <#else><#local away = 130></#if>
      <#local places = places + {which: zoneLeft - away}>
    </#if>
  </#list>
  <#return places + {"guard": places.installed!(places.required!(zoneLeft - 180))}>
</#function>

<#function up plan height><#return floor - height * plan.up></#function>

<#macro text x y anchor="start" fit=0 bold=false>
<text x="${n(x)}" y="${n(y)}" font-size="10.5" text-anchor="${anchor}"<#if bold> font-weight="bold"</#if><#if fit gt 0> data-fit="${fit}"</#if>><#nested></text>
</#macro>

<#macro line x1 y1 x2 y2 width=0.8 dash="">
<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke="#000" stroke-width="${width}"<#if dash?has_content> stroke-dasharray="${dash}"</#if>/>
</#macro>

<#-- A filled arrow head at the end of a horizontal line. -->
<#macro head x y towards>
<path d="M${n(x)} ${n(y)} L${n(x - 8 * towards)} ${n(y - 2.6)} L${n(x - 8 * towards)} ${n(y + 2.6)} Z" fill="#000"/>
</#macro>

<#--
  Heights of one thing with their words, one under the other and never closer than a line.
    heights  words and millimetres of each
    from     where the leaders end at the thing
    side     left or right: where the words stand
-->
<#macro heights plan heights from side>
  <#local last = -100>
  <#list heights?sort_by("mm")?reverse as pair>
    <#local y = up(plan, pair.mm)>
    <#local at = [[y, last + 13]?max, floor - 7 - 13 * (heights?size - 1 - pair?index)]?min>
    <#local last = at>
    <#if side == "left">
      <@text x=4 y=at + 3.6 fit=118>${pair.words} ${mm(pair.mm)}</@text>
      <path d="M${n(from)} ${n(y)} L134 ${n(y)} L126 ${n(at)}" fill="none" stroke="#000" stroke-width="0.5"/>
    <#else>
      <path d="M${n(from)} ${n(y)} L519 ${n(y)} L527 ${n(at)}" fill="none" stroke="#000" stroke-width="0.5"/>
      <@text x=531 y=at + 3.6 fit=107>${pair.words} ${mm(pair.mm)}</@text>
    </#if>
  </#list>
</#macro>

<#--
  The tag of a thing, above everything else and with a thin line down to the thing.
    x       where the line stands
    y       where it ends
    side    left or right: to which side of the line the tag runs
-->
<#macro tag x y name side>
  <#if name?has_content>
    <#local most = 30 left = (side == "left")>
    <#local lines = (name?length gt most)?then([name?substring(0, most), name?substring(most)], [name])>
    <#list lines as line>
      <@text x=left?then(x + 4, x) y=40 - 12 * (lines?size - 1 - line?index) anchor=left?then("end", "start") fit=left?then(x, 206) bold=true>${line}</@text>
    </#list>
    <@line x1=x y1=44 x2=x y2=y width=0.4/>
  </#if>
</#macro>

<#-- Sine of an angle in degrees, by the approximation of Bhaskara: near enough for a line in a drawing. -->
<#function sine a><#return 4 * a * (180 - a) / (40500 - a * (180 - a))></#function>

<#--
  An upright or inclined field with what shows its kind: beams end on, or hatching.
    data  lowerEdge, upperEdge; angle and farHeight where it is inclined, drawn from its side furthest from the hazard
-->
<#macro field plan data beams>
  <#local high = data.upperEdge!(plan.highest * 0.7) low = data.lowerEdge!(plan.highest * 0.15)>
  <#local top = up(plan, high) bottom = up(plan, low)>
  <#if data.angle?? && data.angle lt 90>
    <#local far = data.farHeight!low>
    <#local near = ((far - low)?abs lte (high - far)?abs)?then(high, low)>
    <#local room = zoneLeft - 16 - plan.guard>
    <#local run = (data.angle gt 0)?then((near - far)?abs * plan.up * sine(90 - data.angle) / sine(data.angle), room)>
    <#local x2 = plan.guard + [run, room]?min y1 = up(plan, far) y2 = up(plan, near)>
    <@line x1=plan.guard y1=y1 x2=plan.guard y2=floor width=0.5/>
    <@line x1=plan.guard y1=y1 x2=x2 y2=y2 width=beams?then(9, 1.2)/>
    <#local steps = 16>
    <#list 1..steps - 1 as i>
      <#local x = plan.guard + (x2 - plan.guard) * i / steps y = y1 + (y2 - y1) * i / steps>
      <#if beams><circle cx="${n(x)}" cy="${n(y)}" r="1.8" fill="#fff"/><#else><@line x1=x - 3 y1=y + 4 x2=x + 3 y2=y - 4 width=0.5/></#if>
    </#list>
    <#-- the way people come, and the height of the near side -->
    <@line x1=plan.guard y1=y1 x2=[plan.guard + 70, zoneLeft - 16]?min y2=y1 width=0.5 dash="2 2"/>
    <@line x1=plan.guard - 5 y1=y2 x2=x2 y2=y2 width=0.5 dash="2 2"/>
  <#else>
    <rect x="${n(plan.guard - 2)}" y="${n(top)}" width="4" height="${n(floor - top)}" fill="#fff" stroke="#000" stroke-width="0.8"/>
    <#if beams>
      <rect x="${n(plan.guard - 5)}" y="${n(top)}" width="10" height="${n([bottom - top, 4]?max)}" fill="#000"/>
      <#list 0..40 as i><#if top + 5 + i * 7 lt bottom - 3><circle cx="${n(plan.guard)}" cy="${n(top + 5 + i * 7)}" r="1.8" fill="#fff"/></#if></#list>
    <#else>
      <rect x="${n(plan.guard - 2)}" y="${n(top)}" width="4" height="${n([bottom - top, 4]?max)}" fill="#fff" stroke="#000" stroke-width="0.8"/>
      <#list 0..60 as i><#if top + 5 + i * 6 lt bottom><@line x1=plan.guard - 2 y1=top + 5 + i * 6 x2=plan.guard + 2 y2=top + 2 + i * 6 width=0.5/></#if></#list>
    </#if>
  </#if>
</#macro>

<#-- Where the line of its tag ends: at the upper edge, or at the side furthest from the hazard. -->
<#function fieldTop plan data><#return up(plan, (data.angle?? && data.angle lt 90)?then(data.farHeight!0, data.upperEdge!(plan.highest * 0.7)))></#function>

<#-- The heights of the edges of such a field, for its words. -->
<#function edges data>
  <#local known = []>
  <#if data.upperEdge??><#local known = known + [{"words": "upper edge", "mm": data.upperEdge}]></#if>
  <#if data.lowerEdge??><#local known = known + [{"words": "lower edge", "mm": data.lowerEdge}]></#if>
  <#return known>
</#function>

<#-- The whole drawing: floor, zone, distances; the safeguard is the nested content. -->
<#macro view data plan alternative>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 320" alt="${alternative}">
  <#-- floor -->
  <#list 0..63 as i><@line x1=i * 10 + 8 y1=floor x2=i * 10 + 2 y2=floor + 6 width=0.4/></#list>
  <@line x1=0 y1=floor x2=640 y2=floor width=1.4/>
  <@text x=4 y=288>approach</@text>
  <#if data.angle??><@text x=4 y=301 fit=150>at ${n(data.angle)}° to the field</@text></#if>
  <@line x1=54 y1=284.5 x2=100 y2=284.5/>
  <@head x=106 y=284.5 towards=1/>

  <#-- hazard zone -->
  <#local top = up(plan, data.zoneHighest!(plan.highest * 0.8)) bottom = up(plan, data.zoneLowest!0)>
  <rect x="${zoneLeft}" y="${n(top)}" width="80" height="${n([bottom - top, 2]?max)}" fill="#e4e4e4" stroke="#000" stroke-width="1.2"/>
  <@line x1=zoneLeft y1=top x2=zoneRight y2=bottom width=0.5/>
  <@line x1=zoneLeft y1=bottom x2=zoneRight y2=top width=0.5/>
  <@tag x=zoneLeft y=top name=data.zone!"hazard zone" side="right"/>
  <#local known = []>
  <#if data.zoneHighest??><#local known = known + [{"words": "highest", "mm": data.zoneHighest}]></#if>
  <#if data.zoneLowest??><#local known = known + [{"words": "lowest", "mm": data.zoneLowest}]></#if>
  <@heights plan=plan heights=known from=zoneRight side="right"/>

  <#-- the line the safeguard has to stand at or outside of -->
  <#if plan.required??><@line x1=plan.required y1=46 x2=plan.required y2=floor width=0.8 dash="6 3"/></#if>

  <#nested>

  <#-- distances, the shorter one above so that no line of one crosses the other -->
  <#local rows = []>
  <#if plan.required??><#local rows = rows + [{"at": plan.required, "words": "required S", "value": data.required}]></#if>
  <#if plan.installed??><#local rows = rows + [{"at": plan.installed, "words": "installed", "value": data.installed}]></#if>
  <#list rows?sort_by("value") as row>
    <#local y = 276 + 24 * row?index>
    <@line x1=row.at y1=floor + 8 x2=row.at y2=y + 5 width=0.5/>
    <@line x1=zoneLeft y1=floor + 8 x2=zoneLeft y2=y + 5 width=0.5/>
    <@line x1=row.at + 4 y1=y x2=zoneLeft - 4 y2=y/>
    <@head x=row.at y=y towards=-1/>
    <@head x=zoneLeft y=y towards=1/>
    <@text x=zoneLeft + 9 y=y + 3.6 fit=198 bold=true>${row.words} ${mm(row.value)}</@text>
  </#list>
  <@text x=636 y=12 anchor="end">side view, ${plan.toScale?then("to scale", "not to scale")}</@text>
</svg>
</#macro>
