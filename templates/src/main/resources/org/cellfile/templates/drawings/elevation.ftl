<#--
  Parts shared by the side elevations of all kinds of safeguards. The view is 640 by 320 units. The floor lies at 250; the
  hazard zone stands from 430 to 510; the safeguard to its left, between 170 and 390. Texts have places of their own:
  heights of the safeguard at the far left, heights of the zone at the far right, distances to the right below the floor,
  so that no two of them can meet whatever the figures are.
-->

<#assign floor = 250 zoneLeft = 430 zoneRight = 510>

<#-- A length or place with two decimals at most. -->
<#function n value><#return ((value * 100)?round / 100)?string("0.##")></#function>

<#function mm value><#return value?string("0.###") + " mm"></#function>

<#--
  Where things stand.
    data     the figures of the drawing
    heights  every height above the floor that is drawn, in millimetres
  Returned: up (units a millimetre, upwards), required and installed (places, when given), guard (where the safeguard is
  drawn), toScale.
-->
<#function plan data heights>
  <#local given = []>
  <#if data.required??><#local given = given + [data.required]></#if>
  <#if data.installed??><#local given = given + [data.installed]></#if>
  <#local tall = heights + [data.zoneHighest!0, data.zoneLowest!0]>
  <#local highest = tall?max>
  <#if highest lte 0><#local highest = 2000></#if>
  <#local farthest = (given?size gt 0)?then((given + [1])?max, 1)>
  <#local nearest = (given?size gt 0)?then(given?min, 0)>
  <#local scale = [260 / farthest, 200 / highest]?min>
  <#local toScale = nearest * scale gte 40 && (given?size lt 2 || data.required == data.installed || (data.required - data.installed)?abs * scale gte 4)>
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
    heights  pairs of words and millimetres, from the highest down
    from     where the leaders end at the thing
    side     left or right: where the words stand
-->
<#macro heights plan heights from side>
  <#local last = -100>
  <#list heights as pair>
    <#local y = up(plan, pair[1])>
    <#local at = [[y, last + 13]?max, floor - 7 - 13 * (heights?size - 1 - pair?index)]?min>
    <#local last = at>
    <#if side == "left">
      <@text x=4 y=at + 3.6 fit=118>${pair[0]} ${mm(pair[1])}</@text>
      <path d="M${n(from)} ${n(y)} L134 ${n(y)} L126 ${n(at)}" fill="none" stroke="#000" stroke-width="0.5"/>
    <#else>
      <path d="M${n(from)} ${n(y)} L519 ${n(y)} L527 ${n(at)}" fill="none" stroke="#000" stroke-width="0.5"/>
      <@text x=531 y=at + 3.6 fit=107>${pair[0]} ${mm(pair[1])}</@text>
    </#if>
  </#list>
</#macro>

<#-- A tag of any length, in two lines when it is a long one, the last of them at the given height. -->
<#macro tagLines x y name anchor room>
  <#local most = 30>
  <#if name?length gt most>
    <@text x=x y=y - 12 anchor=anchor fit=room bold=true>${name?substring(0, most)}</@text>
    <@text x=x y=y anchor=anchor fit=room bold=true>${name?substring(most)}</@text>
  <#else>
    <@text x=x y=y anchor=anchor fit=room bold=true>${name}</@text>
  </#if>
</#macro>

<#-- The tag of the safeguard, standing clear of the line of the required distance. -->
<#macro tag plan y name>
  <#local width = [[name?length, 30]?min * 6.4 + 6, plan.guard]?min high = (name?length gt 30)?then(25, 13)>
  <#if name?has_content><rect x="${n(plan.guard + 8 - width)}" y="${n(y - 9 - high)}" width="${n(width)}" height="${high}" fill="#fff"/></#if>
  <@tagLines x=plan.guard + 5 y=y - 12 name=name anchor="end" room=plan.guard/>
</#macro>

<#-- The whole drawing: floor, zone, distances; the safeguard is the nested content. -->
<#macro view data plan alternative>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 320" alt="${alternative}">
  <#-- floor -->
  <#list 0..63 as i><@line x1=i * 10 + 8 y1=floor x2=i * 10 + 2 y2=floor + 6 width=0.4/></#list>
  <@line x1=0 y1=floor x2=640 y2=floor width=1.4/>
  <@text x=4 y=280>approach</@text>
  <@line x1=54 y1=276.5 x2=100 y2=276.5/>
  <@head x=106 y=276.5 towards=1/>

  <#-- hazard zone -->
  <#local top = up(plan, data.zoneHighest!(plan.highest * 0.8)) bottom = up(plan, data.zoneLowest!0)>
  <rect x="${zoneLeft}" y="${n(top)}" width="80" height="${n([bottom - top, 2]?max)}" fill="#e4e4e4" stroke="#000" stroke-width="1.2"/>
  <@line x1=zoneLeft y1=top x2=zoneRight y2=bottom width=0.5/>
  <@line x1=zoneLeft y1=bottom x2=zoneRight y2=top width=0.5/>
  <@tagLines x=zoneLeft y=top - 8 name=data.zone!"hazard zone" anchor="start" room=206/>
  <#local known = []>
  <#if data.zoneHighest??><#local known = known + [["highest", data.zoneHighest]]></#if>
  <#if data.zoneLowest??><#local known = known + [["lowest", data.zoneLowest]]></#if>
  <@heights plan=plan heights=known from=zoneRight side="right"/>

  <#-- the line the safeguard has to stand at or outside of -->
  <#if plan.required??><@line x1=plan.required y1=40 x2=plan.required y2=floor width=0.8 dash="6 3"/></#if>

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
