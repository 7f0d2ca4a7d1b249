(()=>{var I0="http://www.w3.org/2000/svg";function jf(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1))if(n==="on")for(let[r,o]of Object.entries(s))i.addEventListener(r,o);else if(n==="style")for(let[r,o]of Object.entries(s))i.style.setProperty(r,o);else i.setAttribute(n,s===!0?"":String(s));for(let n of e.flat(1/0))n==null||n===!1||i.append(n instanceof Node?n:document.createTextNode(String(n)));return i}var I=(i,t,...e)=>jf(document.createElement(i),t,e),Yt=(i,t,...e)=>jf(document.createElementNS(I0,i),t,e),Tt=(i,t)=>I("bdi",t,i??"");function ni(i,t){i.firstChild?.data!==t&&(i.textContent=t)}function Je(i,t,e){i.getAttribute(t)!==e&&i.setAttribute(t,e)}function Cr(i){if(!i?.base64)return new Float32Array(0);let t=atob(i.base64),e=new Uint8Array(t.length);for(let n=0;n<t.length;++n)e[n]=t.charCodeAt(n);return new Float32Array(e.buffer,0,e.length>>2)}var L0={"-":"\u207B",0:"\u2070",1:"\xB9",2:"\xB2",3:"\xB3",4:"\u2074",5:"\u2075",6:"\u2076",7:"\u2077",8:"\u2078",9:"\u2079"};function Wn(i,t=4){if(i==null||Number.isNaN(i))return"\u2013";if(i===0)return"0";let e=Math.abs(i),n;if(e>=1e6||e<1e-4){let[s,r]=i.toExponential(t-1).split("e");n=`${s}\xD710${[...String(Number(r))].map(o=>L0[o]).join("")}`}else{let s=Math.max(0,t-1-Math.floor(Math.log10(e)));n=i.toFixed(Math.min(s,8))}return n.replace("-","\u2212")}var In=(i,t=1)=>`${i.toFixed(t>=1e3?1:t>=100?2:t>=20?3:4)} s`;function Zs(i){let t=10**Math.floor(Math.log10(i)),e=i/t;return(e>=5?5:e>=2?2:1)*t}function Qf(i,t,e){let n=i.length-2;if(n<0||!(t>i[0])){e.row=0,e.part=0;return}if(t>=i[n+1]){e.row=n,e.part=1;return}let s=Math.min(e.row,n);if(!(i[s]<=t&&t<i[s+1])){let o=0,a=n;for(;o<a;){let l=o+a+1>>1;i[l]<=t?o=l:a=l-1}s=o}e.row=s;let r=i[s+1]-i[s];e.part=r>0?(t-i[s])/r:0}function Js(i){let t=Cr(i),e=i?.width??1;return{data:t,width:e,now:new Float64Array(e)}}function td({data:i,width:t,now:e},{row:n,part:s}){let r=n*t,o=r+t;for(let a=0;a<t;++a){let l=i[r+a],c=o+a<i.length?i[o+a]:l;e[a]=l!==l?c:c!==c?l:l+s*(c-l)}}function D0(i,{row:t,part:e}){td(i,{row:t,part:e});let{data:n,now:s}=i,r=t*7+3,o=r+7;if(o+3<n.length&&n[r]*n[o]+n[r+1]*n[o+1]+n[r+2]*n[o+2]+n[r+3]*n[o+3]<0)for(let c=0;c<4;++c)s[3+c]=(1-e)*n[r+c]-e*n[o+c];let a=Math.hypot(s[3],s[4],s[5],s[6])||1;for(let l=3;l<7;++l)s[l]/=a}function ed(i){let t=i.scene??{},e=Cr(i.time),n={row:0,part:0},s=(t.bodies??[]).map(c=>({...c,pose:Js(c.poses)})),r=(t.cords??[]).map(c=>({...c,points:Js(c.points),tension:Js(c.tension),slack:Js(c.slack)})),o=[...(t.contacts??[]).map(c=>({...c,kind:"contact"})),...(t.loads??[]).map(c=>({...c,kind:"load"}))].map(c=>({...c,point:Js(c.point),force:Js(c.force)})),a=(t.pulleys??[]).map(c=>({...c,angle:Js(c.angle)})),l=[...r.flatMap(c=>[c.points,c.tension,c.slack]),...o.flatMap(c=>[c.point,c.force]),...a.map(c=>c.angle)];return{times:e,bodies:s,cords:r,arrows:o,pulleys:a,pins:t.pins??[],guides:t.guides??[],box:t.box,at(c){Qf(e,c,n);for(let h of s)D0(h.pose,n);for(let h of l)td(h,n)}}}function zi(i,t,e){let[n,s,r,o,a,l,c]=i,[h,f,u]=t,p=2*(a*u-l*f),_=2*(l*h-o*u),x=2*(o*f-a*h);return e[0]=n+h+c*p+a*x-l*_,e[1]=s+f+c*_+l*p-o*x,e[2]=r+u+c*x+o*_-a*p,e}function nd(i,t,e){return zi(i,t,e),e[0]-=i[0],e[1]-=i[1],e[2]-=i[2],e}function N0({point:i,force:t},e,n,s){for(let r=0;r<t.data.length;++r){let o=i.data[r]+t.data[r]*e*1.08;o<n[r%3]&&(n[r%3]=o),o>s[r%3]&&(s[r%3]=o)}}function id(i){let t=0,e=0,n=[1/0,1/0,1/0],s=[-1/0,-1/0,-1/0];for(let a of i){for(let l of a.cords)t=Math.max(t,l.most_tension||0);for(let l of a.arrows)e=Math.max(e,l.most||0);for(let l=0;l<3;++l)n[l]=Math.min(n[l],a.box?.low?.[l]??-50),s[l]=Math.max(s[l],a.box?.high?.[l]??50)}let r=Math.hypot(s[0]-n[0],s[1]-n[1]),o=e>0?Zs(.26*r/e):1;for(let a of i)for(let l of a.arrows)N0(l,o,n,s);return{mostTension:t||1,mostForce:e,mmPerNewton:o,sampleForce:e>0?Zs(e):0,low:n,high:s,centre:n.map((a,l)=>.5*(a+s[l]))}}function sd(i,t){let e=[],n={time:0,duration:i,playing:!1,speed:1,loop:!1},s=0,r=()=>{for(let a of e)a(n)};function o(a){if(!n.playing)return;let l=Math.min((a-s)/1e3,.1);s=a;let c=n.time+l*n.speed;c>=i&&(n.loop?c=0:(c=i,n.playing=!1)),n.time=c,r(),n.playing&&requestAnimationFrame(o)}return{state:n,listen(a){e.push(a),a(n)},seek(a){n.playing=!1,n.time=Math.min(Math.max(Number(a)||0,0),i),r()},play(){n.playing||(n.time>=i&&(n.time=0),n.playing=!0,s=performance.now(),r(),requestAnimationFrame(o))},pause(){n.playing=!1,r()},toggle(){n.playing?this.pause():this.play()},setSpeed(a){n.speed=a,r()},setLoop(a){n.loop=a,r()},step(a){let l=a>0,c=n.time;for(let h=0;h<Math.abs(a);++h){let f=l?t.find(u=>u>c+1e-7):t.findLast(u=>u<c-1e-7);if(f===void 0)break;c=f}this.seek(c)}}}var rd=[],od=!1,ad=null,ld=matchMedia("(prefers-color-scheme: dark)"),bh=()=>!od&&(ad??(ld.matches?"dark":"light"))==="dark";function ka(){document.documentElement.dataset.theme=bh()?"dark":"light";for(let i of rd)i()}function cd(){ld.addEventListener("change",ka),ka()}var wh=bh;function hd(){ad=bh()?"light":"dark",ka()}function Eh(i){od=i,ka()}function Cs(i){rd.push(i)}var Ks=i=>getComputedStyle(document.documentElement).getPropertyValue(i).trim();function fd(i){let t=[];return{index:t,section(e,n,...s){let r=t.length+1;t.push({id:e,title:n,number:r});let o=I("section",{id:e,"aria-labelledby":`${e}-title`},I("h2",{id:`${e}-title`},I("span",{class:"balloon","aria-hidden":"true"},r),I("span",{},n)),...s);return i.append(o),o}}}var ud={good:["M2 8.5 L6.5 13 L14 3.5","open"],bad:["M3 3 L13 13 M13 3 L3 13","open"],unknown:["M3 8 L13 8","open"]};function js(i){return ud[i]?Yt("svg",{class:`mark ${i}`,viewBox:"0 0 16 16",width:14,height:14,"aria-hidden":"true"},Yt("path",{d:ud[i][0]})):null}var Pr=(i,t,e,n)=>I("button",{type:"button",class:"jump","data-jump":t,title:"show this instant",...n,on:{click:()=>{i.seek(t)}}},e);var ss=(i,t,e)=>I("div",{class:"table-box",tabindex:0,role:"group","aria-label":e?.label??"table"},I("table",{class:e?.class},I("thead",{},I("tr",{},i.map(n=>I("th",{scope:"col"},n)))),I("tbody",{},t))),Ir=i=>I("h3",{class:"record-heading"},I("span",{class:"record-letter"},i.label)," ",Tt(i.name),I("span",{class:"muted"}," \xB7 ",Tt(i.file)));var Lr=(i,t,e)=>I("div",{class:"cell",...e},I("span",{class:"cell-title"},i),I("span",{class:"cell-text"},t)),za=i=>[...new Set(i.filter(Boolean))],dd=i=>za(i).map((t,e)=>[e?", ":"",Tt(t)]);function pd(i){let{records:t}=i,e=t.length>1;return I("header",{class:"title-block"},I("div",{class:"title-main"},I("p",{class:"kind"},e?`Design review \xB7 ${t.length} records side by side`:"Design review"),I("h1",{},e?t.map((n,s)=>[s?I("span",{class:"against"}," against "):"",I("span",{class:"record-letter"},n.label)," ",Tt(n.name)]):Tt(i.title||t[0].name)),za(t.map(n=>n.description)).map(n=>I("p",{class:"about"},Tt(n))),I("div",{class:"sheet-buttons controls"},I("button",{type:"button",id:"theme",on:{click:hd}},"Light / dark"),I("button",{type:"button",on:{click:()=>print()}},"Print"))),I("div",{class:"cells"},Lr("Model",dd(t.map(n=>n.model))),Lr(e?"Records":"Record",e?t.map((n,s)=>[s?", ":"",`${n.label} `,Tt(n.file)]):Tt(t[0].file)),Lr("Outcome",e&&za(t.map(n=>n.outcome)).length>1?t.map((n,s)=>[s?", ":"",`${n.label} `,Tt(n.outcome)]):dd(t.map(n=>n.outcome))),Lr("Computed by",Tt(i.made_by)),Lr("Dimensions","mm, unless stated"),Lr("Pictures","to scale, orthographic")))}function md(i){let t=za(i.records.map(e=>e.demo_data));return I("p",{class:"caution",role:"note"},I("strong",{},Tt(i.cautions?.[0]??"The numbers are design predictions, not certification."))," ",t.map(e=>[Tt(e)," "]),I("a",{href:"#validity"},"Cautions and limits of validity"))}var gd=i=>I("nav",{class:"contents","aria-label":"sections of this sheet"},i.map(({id:t,title:e,number:n})=>I("a",{href:`#${t}`},I("span",{class:"balloon small","aria-hidden":"true"},n),e)));var Dr=120,Qs=14;function Va(i,{low:t=.5,high:e=20}={}){let n=l=>Dr*Math.log(Math.min(Math.max(l,t),e)/t)/Math.log(e/t),s=n(1),r=n(i),o=i>=1,a=[.2,.5,2,5,10,20].filter(l=>l>t&&l<e);return Yt("svg",{class:`log-bar ${o?"good":"bad"}`,viewBox:`0 0 ${Dr} ${Qs}`,width:Dr,height:Qs,"aria-hidden":"true"},Yt("path",{class:"ticks",d:a.map(l=>`M${n(l).toFixed(1)} 0V${Qs}`).join("")}),Number.isFinite(i)&&Yt("rect",{class:"bar",x:Math.min(s,r).toFixed(1),y:3,width:Math.max(Math.abs(r-s),1).toFixed(1),height:Qs-6}),i>e&&Yt("path",{class:"beyond",d:`M${Dr-5} 1L${Dr} ${Qs/2}L${Dr-5} ${Qs-1}`}),Yt("path",{class:"one",d:`M${s.toFixed(1)} 0V${Qs}`}))}var _d={good:"within the limit",bad:"beyond the limit",unknown:"not known",plain:""};function U0(i,t){return I("div",{class:"five"},(i.headline??[]).map(e=>I("div",{class:`number ${e.state}`,"data-headline":e.id},I("h4",{},Tt(e.title)),I("p",{class:"value"},I("span",{class:"figure"},Tt(e.text)),e.unit&&e.state!=="unknown"?[" ",I("span",{class:"unit"},e.unit)]:""),I("p",{class:"state"},js(e.state),_d[e.state]?I("span",{},_d[e.state]):null),I("p",{class:"threshold"},Tt(e.threshold)),I("p",{class:"detail"},Tt(e.detail)),I("p",{class:"sure"},I("span",{class:"cell-title"},"how sure"),Tt(e.sure)),Number.isFinite(e.time)?Pr(t,e.time,`at ${In(e.time,t.state.duration)}`):null)))}function F0(i,t){let e=i.requirements??[];return e.length?ss(["","requirement","asked","found","margin (found against asked)","at"],e.map(n=>I("tr",{class:n.met?"met":"missed"},I("td",{class:"nowrap"},js(n.met?"good":"bad"),n.met?" met":" not met"),I("th",{scope:"row"},Tt(n.title)),I("td",{},Tt(n.demand)),I("td",{class:"figure"},Tt(n.value)),I("td",{class:"margin-cell"},I("div",{class:"bar-line"},Va(n.margin,{low:.5,high:10}),I("span",{class:"figure"},Tt(n.margin_text)))),I("td",{class:"nowrap"},Number.isFinite(n.time)?Pr(t,n.time,In(n.time,t.state.duration)):"\u2013"))),{class:"requirements",label:"requirements"}):I("p",{class:"muted"},"The scenario states no requirements.")}function xd(i,t,e){let{records:n}=t,s=n.length>1,r=n.flatMap(f=>f.requirements??[]),o=r.filter(f=>!f.met),a=r.length?o.length===0?`all ${r.length} requirements are met`:`${o.length} of ${r.length} requirements ${o.length===1?"is":"are"} not met`:"no requirement was stated",l=s&&n.every(f=>JSON.stringify(f.asked)===JSON.stringify(n[0].asked)),c=f=>I("ol",{class:`asked ${(f.asked??[]).length>6?"many":""}`},(f.asked??[]).map(u=>I("li",{},Tt(u)))),h=[l||!s?[I("h4",{class:"sub first"},s?"What was asked, of each alike":"What was asked"),c(n[0])]:null,I("p",{class:`verdict ${o.length?"bad":r.length?"good":""}`},r.length?js(o.length?"bad":"good"):null," ",a[0].toUpperCase()+a.slice(1)+".")];for(let f of n)s&&h.push(Ir(f)),s&&!l&&h.push(I("h4",{class:"sub first"},"What was asked"),c(f)),h.push(U0(f,e),I("h4",{class:"sub"},"Requirements"),F0(f,e));return i.section("verdict","Verdict",h)}function yd(i,t){let{records:e}=t;if(e.length<2||!t.comparison)return;let{values:n=[],inputs:s=[]}=t.comparison,r=n.filter(h=>h.notable),o=h=>I("span",{class:"record-letter"},e[h].label),a=r.length?I("ul",{class:"callouts"},r.slice(0,12).map(h=>I("li",{},I("span",{class:"callout-title"},Tt(h.title)),I("span",{class:"callout-values"},h.texts.map((f,u)=>I("span",{class:"figure"},o(u)," ",Tt(f)))),I("span",{class:"callout-change"},h.change.slice(1).map((f,u)=>[u?", ":"",Tt(f)]))))):I("p",{},"No reported value differs notably."),l=ss(["value",...e.map((h,f)=>o(f)),...e.slice(1).map(h=>`${h.label} against ${e[0].label}`)],n.map((h,f)=>[h.group&&h.group!==n[f-1]?.group&&I("tr",{class:"group-row"},I("th",{colspan:2*e.length,scope:"rowgroup"},Tt(h.group))),I("tr",{class:h.notable?"differs":""},I("th",{scope:"row"},Tt(h.title)),h.texts.map(u=>I("td",{class:"figure"},Tt(u))),h.change.slice(1).map(u=>I("td",{class:"figure"},Tt(u))))]),{class:"comparison",label:"all values compared"}),c=s.length?ss(["what the inputs say",...e.map((h,f)=>o(f))],s.map(h=>I("tr",{},I("th",{scope:"row",class:"path"},Tt(h.place)),h.texts.map(f=>I("td",{class:"figure"},Tt(f))))),{label:"differences of the inputs"}):I("p",{class:"muted"},"The inputs do not differ.");i.section("differences",`What differs: ${e.map(h=>h.label).join(" against ")}`,I("h3",{},"Changed on purpose, in the inputs"),c,I("h3",{},"Notable in the results"),a,n.length>0&&I("details",{"data-print":!0},I("summary",{},`All ${n.length} values compared`),l))}var O0=[[.82,.6,.1],[.87,.4,.16],[.72,.21,.33],[.42,.13,.42],[.16,.08,.32]],B0=[[.4,.36,.72],[.64,.38,.74],[.88,.46,.58],[.97,.68,.42],[1,.92,.62]];function Th(i,t){let e=wh()?B0:O0,n=Math.min(Math.max(i||0,0),1)*(e.length-1),s=Math.min(Math.floor(n),e.length-2);for(let r=0;r<3;++r)t[r]=e[s][r]+(n-s)*(e[s+1][r]-e[s][r]);return t}function Ah(i){let[t,e,n]=Th(i,[0,0,0]).map(s=>Math.round(255*s));return`rgb(${t},${e},${n})`}var Rh=()=>`linear-gradient(to right, ${[0,.25,.5,.75,1].map(Ah).join(", ")})`,vd=["#123f6d","#c4551b","#2a8c82","#8b2f6b","#b08a00","#5b6b7a","#3f7fd0","#7a4a1e"],k0=["#8ec5ff","#ff9a5c","#5fd3c3","#e18bd0","#e6cf5a","#b6c2cc","#4f8fe6","#d0a070"],Nr=i=>(wh()?k0:vd)[i%vd.length];/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var zs={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Vs={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Kd=0,su=1,jd=2;var ga=1,Qd=2,lo=3,Hs=0,Nn=1,$i=2,ar=0,co=1,ru=2,ou=3,au=4,tp=5;var lr=100,ep=101,np=102,ip=103,sp=104,rp=200,op=201,ap=202,lp=203,lu=204,cu=205,cp=206,hp=207,up=208,fp=209,dp=210,pp=211,mp=212,gp=213,_p=214,gl=0,_l=1,xl=2,Kr=3,yl=4,vl=5,jr=6,Ml=7,$l=0,xp=1,yp=2,Yi=0,hu=1,uu=2,fu=3,du=4,pu=5,mu=6,gu=7;var _u=300,cr=301,ho=302,Yl=303,Zl=304,Sl=1e3,Hi=1001,bl=1002,Cn=1003,vp=1004;var _a=1005;var qn=1006,Jl=1007;var xs=1008;var Jn=1009,xu=1010,yu=1011,uo=1012,Kl=1013,Ai=1014,gi=1015,Ri=1016,jl=1017,Ql=1018,hr=1020,vu=35902,Mu=35899,Su=1021,bu=1022,Ci=1023,fs=1026,ys=1027,tc=1028,ec=1029,Gs=1030,nc=1031;var ic=1033,xa=33776,ya=33777,va=33778,Ma=33779,sc=35840,rc=35841,oc=35842,ac=35843,lc=36196,cc=37492,hc=37496,uc=37488,fc=37489,Sa=37490,dc=37491,pc=37808,mc=37809,gc=37810,_c=37811,xc=37812,yc=37813,vc=37814,Mc=37815,Sc=37816,bc=37817,wc=37818,Ec=37819,Tc=37820,Ac=37821,Rc=36492,Cc=36494,Pc=36495,Ic=36283,Lc=36284,ba=36285,Dc=36286;var Wo=2300,wl=2301,pl=2302,Kh=2303,jh=2400,Qh=2401,tu=2402;var Mp=3200;var Nc=0,Sp=1,vs="",Xn="srgb",Xo="srgb-linear",qo="linear",Ne="srgb";var ml=7680;var bp=519,wp=512,Ep=513,Tp=514,wu=515,Ap=516,Rp=517,Eu=518,Tu=519,Cp=35044;var Au="300 es",mi=2e3,Qr=2001;function z0(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function V0(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function $o(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function Pp(){let i=$o("canvas");return i.style.display="block",i}var Md={},to=null;function Ru(...i){let t="THREE."+i.shift();to?to("log",t,...i):console.log(t,...i)}function Ip(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function te(...i){i=Ip(i);let t="THREE."+i.shift();if(to)to("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function le(...i){i=Ip(i);let t="THREE."+i.shift();if(to)to("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Ho(...i){let t=i.join(" ");t in Md||(Md[t]=!0,te(...i))}function Lp(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var Dp={[gl]:gl,[xl]:jr,[yl]:yl,[Kr]:vl,[_l]:_l,[jr]:xl,[Ml]:Ml,[vl]:Kr},Ti=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Fn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Sd=1234567,Zr=Math.PI/180,eo=180/Math.PI;function fo(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Fn[i&255]+Fn[i>>8&255]+Fn[i>>16&255]+Fn[i>>24&255]+"-"+Fn[t&255]+Fn[t>>8&255]+"-"+Fn[t>>16&15|64]+Fn[t>>24&255]+"-"+Fn[e&63|128]+Fn[e>>8&255]+"-"+Fn[e>>16&255]+Fn[e>>24&255]+Fn[n&255]+Fn[n>>8&255]+Fn[n>>16&255]+Fn[n>>24&255]).toLowerCase()}function Me(i,t,e){return Math.max(t,Math.min(e,i))}function Cu(i,t){return(i%t+t)%t}function H0(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function G0(i,t,e){return i!==t?(e-i)/(t-i):0}function Go(i,t,e){return(1-e)*i+e*t}function W0(i,t,e,n){return Go(i,t,1-Math.exp(-e*n))}function X0(i,t=1){return t-Math.abs(Cu(i,t*2)-t)}function q0(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function $0(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function Y0(i,t){return i+Math.floor(Math.random()*(t-i+1))}function Z0(i,t){return i+Math.random()*(t-i)}function J0(i){return i*(.5-Math.random())}function K0(i){i!==void 0&&(Sd=i);let t=Sd+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function j0(i){return i*Zr}function Q0(i){return i*eo}function t_(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function e_(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function Pu(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function n_(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),h=o((t+n)/2),f=r((t-n)/2),u=o((t-n)/2),p=r((n-t)/2),_=o((n-t)/2);switch(s){case"XYX":i.set(a*h,l*f,l*u,a*c);break;case"YZY":i.set(l*u,a*h,l*f,a*c);break;case"ZXZ":i.set(l*f,l*u,a*h,a*c);break;case"XZX":i.set(a*h,l*_,l*p,a*c);break;case"YXY":i.set(l*p,a*h,l*_,a*c);break;case"ZYZ":i.set(l*_,l*p,a*h,a*c);break;default:te("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function Iu(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Np(i,t){if(t.constructor===Float32Array)return i;let e=Iu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function Up(i,t){if(t.constructor===Float32Array)return i;let e=Iu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var Lu={DEG2RAD:Zr,RAD2DEG:eo,generateUUID:fo,clamp:Me,euclideanModulo:Cu,mapLinear:H0,inverseLerp:G0,lerp:Go,damp:W0,pingpong:X0,smoothstep:q0,smootherstep:$0,randInt:Y0,randFloat:Z0,randFloatSpread:J0,seededRandom:K0,degToRad:j0,radToDeg:Q0,isPowerOfTwo:t_,ceilPowerOfTwo:e_,floorPowerOfTwo:Pu,setQuaternionFromProperEuler:n_,normalize:Up,denormalize:Np},re=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=Me(this.x,t.x,e.x),this.y=Me(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=Me(this.x,t,e),this.y=Me(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(Me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},Ln=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],h=n[s+2],f=n[s+3],u=r[o+0],p=r[o+1],_=r[o+2],x=r[o+3];if(f!==x||l!==u||c!==p||h!==_){let g=l*u+c*p+h*_+f*x;g<0&&(u=-u,p=-p,_=-_,x=-x,g=-g);let d=1-a;if(g<.9995){let y=Math.acos(g),C=Math.sin(y);d=Math.sin(d*y)/C,a=Math.sin(a*y)/C,l=l*d+u*a,c=c*d+p*a,h=h*d+_*a,f=f*d+x*a}else{l=l*d+u*a,c=c*d+p*a,h=h*d+_*a,f=f*d+x*a;let y=1/Math.sqrt(l*l+c*c+h*h+f*f);l*=y,c*=y,h*=y,f*=y}}t[e]=l,t[e+1]=c,t[e+2]=h,t[e+3]=f}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],h=n[s+3],f=r[o],u=r[o+1],p=r[o+2],_=r[o+3];return t[e]=a*_+h*f+l*p-c*u,t[e+1]=l*_+h*u+c*f-a*p,t[e+2]=c*_+h*p+a*u-l*f,t[e+3]=h*_-a*f-l*u-c*p,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),h=a(s/2),f=a(r/2),u=l(n/2),p=l(s/2),_=l(r/2);switch(o){case"XYZ":this._x=u*h*f+c*p*_,this._y=c*p*f-u*h*_,this._z=c*h*_+u*p*f,this._w=c*h*f-u*p*_;break;case"YXZ":this._x=u*h*f+c*p*_,this._y=c*p*f-u*h*_,this._z=c*h*_-u*p*f,this._w=c*h*f+u*p*_;break;case"ZXY":this._x=u*h*f-c*p*_,this._y=c*p*f+u*h*_,this._z=c*h*_+u*p*f,this._w=c*h*f-u*p*_;break;case"ZYX":this._x=u*h*f-c*p*_,this._y=c*p*f+u*h*_,this._z=c*h*_-u*p*f,this._w=c*h*f+u*p*_;break;case"YZX":this._x=u*h*f+c*p*_,this._y=c*p*f+u*h*_,this._z=c*h*_-u*p*f,this._w=c*h*f-u*p*_;break;case"XZY":this._x=u*h*f-c*p*_,this._y=c*p*f-u*h*_,this._z=c*h*_+u*p*f,this._w=c*h*f+u*p*_;break;default:te("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],h=e[6],f=e[10],u=n+a+f;if(u>0){let p=.5/Math.sqrt(u+1);this._w=.25/p,this._x=(h-l)*p,this._y=(r-c)*p,this._z=(o-s)*p}else if(n>a&&n>f){let p=2*Math.sqrt(1+n-a-f);this._w=(h-l)/p,this._x=.25*p,this._y=(s+o)/p,this._z=(r+c)/p}else if(a>f){let p=2*Math.sqrt(1+a-n-f);this._w=(r-c)/p,this._x=(s+o)/p,this._y=.25*p,this._z=(l+h)/p}else{let p=2*Math.sqrt(1+f-n-a);this._w=(o-s)/p,this._x=(r+c)/p,this._y=(l+h)/p,this._z=.25*p}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(Me(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,h=e._w;return this._x=n*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-n*c,this._z=r*h+o*c+n*l-s*a,this._w=o*h-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,e=Math.sin(e*c)/h,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},$=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(bd.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(bd.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),h=2*(a*e-r*s),f=2*(r*n-o*e);return this.x=e+l*c+o*f-a*h,this.y=n+l*h+a*c-r*f,this.z=s+l*f+r*h-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=Me(this.x,t.x,e.x),this.y=Me(this.y,t.y,e.y),this.z=Me(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=Me(this.x,t,e),this.y=Me(this.y,t,e),this.z=Me(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return Ch.copy(this).projectOnVector(t),this.sub(Ch)}reflect(t){return this.sub(Ch.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(Me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Ch=new $,bd=new Ln,ce=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let h=this.elements;return h[0]=t,h[1]=s,h[2]=a,h[3]=e,h[4]=r,h[5]=l,h[6]=n,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],h=n[4],f=n[7],u=n[2],p=n[5],_=n[8],x=s[0],g=s[3],d=s[6],y=s[1],C=s[4],b=s[7],P=s[2],T=s[5],m=s[8];return r[0]=o*x+a*y+l*P,r[3]=o*g+a*C+l*T,r[6]=o*d+a*b+l*m,r[1]=c*x+h*y+f*P,r[4]=c*g+h*C+f*T,r[7]=c*d+h*b+f*m,r[2]=u*x+p*y+_*P,r[5]=u*g+p*C+_*T,r[8]=u*d+p*b+_*m,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8];return e*o*h-e*a*c-n*r*h+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],f=h*o-a*c,u=a*l-h*r,p=c*r-o*l,_=e*f+n*u+s*p;if(_===0)return this.set(0,0,0,0,0,0,0,0,0);let x=1/_;return t[0]=f*x,t[1]=(s*c-h*n)*x,t[2]=(a*n-s*o)*x,t[3]=u*x,t[4]=(h*e-s*l)*x,t[5]=(s*r-a*e)*x,t[6]=p*x,t[7]=(n*l-c*e)*x,t[8]=(o*e-n*r)*x,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return Ho("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Ph.makeScale(t,e)),this}rotate(t){return Ho("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Ph.makeRotation(-t)),this}translate(t,e){return Ho("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Ph.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},Ph=new ce,wd=new ce().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Ed=new ce().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function i_(){let i={enabled:!0,workingColorSpace:Xo,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Ne&&(s.r=us(s.r),s.g=us(s.g),s.b=us(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Ne&&(s.r=Jr(s.r),s.g=Jr(s.g),s.b=Jr(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===vs?qo:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[Xo]:{primaries:t,whitePoint:n,transfer:qo,toXYZ:wd,fromXYZ:Ed,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:Xn},outputColorSpaceConfig:{drawingBufferColorSpace:Xn}},[Xn]:{primaries:t,whitePoint:n,transfer:Ne,toXYZ:wd,fromXYZ:Ed,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:Xn}}}),i}var we=i_();function us(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function Jr(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Ur,El=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Ur===void 0&&(Ur=$o("canvas")),Ur.width=t.width,Ur.height=t.height;let s=Ur.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Ur}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=$o("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=us(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(us(e[n]/255)*255):e[n]=us(e[n]);return{data:e,width:t.width,height:t.height}}else return te("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},s_=0,no=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:s_++}),this.uuid=fo(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(Ih(s[o].image)):r.push(Ih(s[o]))}else r=Ih(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function Ih(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?El.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(te("Texture: Unable to serialize Texture."),{})}var r_=0,Lh=new $,Zn=class i extends Ti{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Hi,s=Hi,r=qn,o=xs,a=Ci,l=Jn,c=i.DEFAULT_ANISOTROPY,h=vs){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:r_++}),this.uuid=fo(),this.name="",this.source=new no(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new re(0,0),this.repeat=new re(1,1),this.center=new re(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new ce,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Lh).x}get height(){return this.source.getSize(Lh).y}get depth(){return this.source.getSize(Lh).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){te(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){te(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==_u)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Sl:t.x=t.x-Math.floor(t.x);break;case Hi:t.x=t.x<0?0:1;break;case bl:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Sl:t.y=t.y-Math.floor(t.y);break;case Hi:t.y=t.y<0?0:1;break;case bl:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Zn.DEFAULT_IMAGE=null;Zn.DEFAULT_MAPPING=_u;Zn.DEFAULT_ANISOTROPY=1;var tn=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],h=l[4],f=l[8],u=l[1],p=l[5],_=l[9],x=l[2],g=l[6],d=l[10];if(Math.abs(h-u)<.01&&Math.abs(f-x)<.01&&Math.abs(_-g)<.01){if(Math.abs(h+u)<.1&&Math.abs(f+x)<.1&&Math.abs(_+g)<.1&&Math.abs(c+p+d-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let C=(c+1)/2,b=(p+1)/2,P=(d+1)/2,T=(h+u)/4,m=(f+x)/4,M=(_+g)/4;return C>b&&C>P?C<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(C),s=T/n,r=m/n):b>P?b<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),n=T/s,r=M/s):P<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(P),n=m/r,s=M/r),this.set(n,s,r,e),this}let y=Math.sqrt((g-_)*(g-_)+(f-x)*(f-x)+(u-h)*(u-h));return Math.abs(y)<.001&&(y=1),this.x=(g-_)/y,this.y=(f-x)/y,this.z=(u-h)/y,this.w=Math.acos((c+p+d-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=Me(this.x,t.x,e.x),this.y=Me(this.y,t.y,e.y),this.z=Me(this.z,t.z,e.z),this.w=Me(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=Me(this.x,t,e),this.y=Me(this.y,t,e),this.z=Me(this.z,t,e),this.w=Me(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Tl=class extends Ti{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:qn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new tn(0,0,t,e),this.scissorTest=!1,this.viewport=new tn(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Zn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:qn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new no(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},ai=class extends Tl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},Yo=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Cn,this.minFilter=Cn,this.wrapR=Hi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Al=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Cn,this.minFilter=Cn,this.wrapR=Hi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var Ie=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,h,f,u,p,_,x,g){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,h,f,u,p,_,x,g)}set(t,e,n,s,r,o,a,l,c,h,f,u,p,_,x,g){let d=this.elements;return d[0]=t,d[4]=e,d[8]=n,d[12]=s,d[1]=r,d[5]=o,d[9]=a,d[13]=l,d[2]=c,d[6]=h,d[10]=f,d[14]=u,d[3]=p,d[7]=_,d[11]=x,d[15]=g,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Fr.setFromMatrixColumn(t,0).length(),r=1/Fr.setFromMatrixColumn(t,1).length(),o=1/Fr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),f=Math.sin(r);if(t.order==="XYZ"){let u=o*h,p=o*f,_=a*h,x=a*f;e[0]=l*h,e[4]=-l*f,e[8]=c,e[1]=p+_*c,e[5]=u-x*c,e[9]=-a*l,e[2]=x-u*c,e[6]=_+p*c,e[10]=o*l}else if(t.order==="YXZ"){let u=l*h,p=l*f,_=c*h,x=c*f;e[0]=u+x*a,e[4]=_*a-p,e[8]=o*c,e[1]=o*f,e[5]=o*h,e[9]=-a,e[2]=p*a-_,e[6]=x+u*a,e[10]=o*l}else if(t.order==="ZXY"){let u=l*h,p=l*f,_=c*h,x=c*f;e[0]=u-x*a,e[4]=-o*f,e[8]=_+p*a,e[1]=p+_*a,e[5]=o*h,e[9]=x-u*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let u=o*h,p=o*f,_=a*h,x=a*f;e[0]=l*h,e[4]=_*c-p,e[8]=u*c+x,e[1]=l*f,e[5]=x*c+u,e[9]=p*c-_,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let u=o*l,p=o*c,_=a*l,x=a*c;e[0]=l*h,e[4]=x-u*f,e[8]=_*f+p,e[1]=f,e[5]=o*h,e[9]=-a*h,e[2]=-c*h,e[6]=p*f+_,e[10]=u-x*f}else if(t.order==="XZY"){let u=o*l,p=o*c,_=a*l,x=a*c;e[0]=l*h,e[4]=-f,e[8]=c*h,e[1]=u*f+x,e[5]=o*h,e[9]=p*f-_,e[2]=_*f-p,e[6]=a*h,e[10]=x*f+u}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(o_,t,a_)}lookAt(t,e,n){let s=this.elements;return ii.subVectors(t,e),ii.lengthSq()===0&&(ii.z=1),ii.normalize(),Ps.crossVectors(n,ii),Ps.lengthSq()===0&&(Math.abs(n.z)===1?ii.x+=1e-4:ii.z+=1e-4,ii.normalize(),Ps.crossVectors(n,ii)),Ps.normalize(),Ha.crossVectors(ii,Ps),s[0]=Ps.x,s[4]=Ha.x,s[8]=ii.x,s[1]=Ps.y,s[5]=Ha.y,s[9]=ii.y,s[2]=Ps.z,s[6]=Ha.z,s[10]=ii.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],h=n[1],f=n[5],u=n[9],p=n[13],_=n[2],x=n[6],g=n[10],d=n[14],y=n[3],C=n[7],b=n[11],P=n[15],T=s[0],m=s[4],M=s[8],L=s[12],S=s[1],R=s[5],F=s[9],B=s[13],D=s[2],V=s[6],X=s[10],H=s[14],K=s[3],q=s[7],Z=s[11],et=s[15];return r[0]=o*T+a*S+l*D+c*K,r[4]=o*m+a*R+l*V+c*q,r[8]=o*M+a*F+l*X+c*Z,r[12]=o*L+a*B+l*H+c*et,r[1]=h*T+f*S+u*D+p*K,r[5]=h*m+f*R+u*V+p*q,r[9]=h*M+f*F+u*X+p*Z,r[13]=h*L+f*B+u*H+p*et,r[2]=_*T+x*S+g*D+d*K,r[6]=_*m+x*R+g*V+d*q,r[10]=_*M+x*F+g*X+d*Z,r[14]=_*L+x*B+g*H+d*et,r[3]=y*T+C*S+b*D+P*K,r[7]=y*m+C*R+b*V+P*q,r[11]=y*M+C*F+b*X+P*Z,r[15]=y*L+C*B+b*H+P*et,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],h=t[2],f=t[6],u=t[10],p=t[14],_=t[3],x=t[7],g=t[11],d=t[15],y=l*p-c*u,C=a*p-c*f,b=a*u-l*f,P=o*p-c*h,T=o*u-l*h,m=o*f-a*h;return e*(x*y-g*C+d*b)-n*(_*y-g*P+d*T)+s*(_*C-x*P+d*m)-r*(_*b-x*T+g*m)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],h=t[10];return e*(o*h-a*c)-n*(r*h-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],f=t[9],u=t[10],p=t[11],_=t[12],x=t[13],g=t[14],d=t[15],y=e*a-n*o,C=e*l-s*o,b=e*c-r*o,P=n*l-s*a,T=n*c-r*a,m=s*c-r*l,M=h*x-f*_,L=h*g-u*_,S=h*d-p*_,R=f*g-u*x,F=f*d-p*x,B=u*d-p*g,D=y*B-C*F+b*R+P*S-T*L+m*M;if(D===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let V=1/D;return t[0]=(a*B-l*F+c*R)*V,t[1]=(s*F-n*B-r*R)*V,t[2]=(x*m-g*T+d*P)*V,t[3]=(u*T-f*m-p*P)*V,t[4]=(l*S-o*B-c*L)*V,t[5]=(e*B-s*S+r*L)*V,t[6]=(g*b-_*m-d*C)*V,t[7]=(h*m-u*b+p*C)*V,t[8]=(o*F-a*S+c*M)*V,t[9]=(n*S-e*F-r*M)*V,t[10]=(_*T-x*b+d*y)*V,t[11]=(f*b-h*T-p*y)*V,t[12]=(a*L-o*R-l*M)*V,t[13]=(e*R-n*L+s*M)*V,t[14]=(x*C-_*P-g*y)*V,t[15]=(h*P-f*C+u*y)*V,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,h=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+n,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,h=o+o,f=a+a,u=r*c,p=r*h,_=r*f,x=o*h,g=o*f,d=a*f,y=l*c,C=l*h,b=l*f,P=n.x,T=n.y,m=n.z;return s[0]=(1-(x+d))*P,s[1]=(p+b)*P,s[2]=(_-C)*P,s[3]=0,s[4]=(p-b)*T,s[5]=(1-(u+d))*T,s[6]=(g+y)*T,s[7]=0,s[8]=(_+C)*m,s[9]=(g-y)*m,s[10]=(1-(u+x))*m,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Fr.set(s[0],s[1],s[2]).length(),a=Fr.set(s[4],s[5],s[6]).length(),l=Fr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Si.copy(this);let c=1/o,h=1/a,f=1/l;return Si.elements[0]*=c,Si.elements[1]*=c,Si.elements[2]*=c,Si.elements[4]*=h,Si.elements[5]*=h,Si.elements[6]*=h,Si.elements[8]*=f,Si.elements[9]*=f,Si.elements[10]*=f,e.setFromRotationMatrix(Si),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=mi,l=!1){let c=this.elements,h=2*r/(e-t),f=2*r/(n-s),u=(e+t)/(e-t),p=(n+s)/(n-s),_,x;if(l)_=r/(o-r),x=o*r/(o-r);else if(a===mi)_=-(o+r)/(o-r),x=-2*o*r/(o-r);else if(a===Qr)_=-o/(o-r),x=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=u,c[12]=0,c[1]=0,c[5]=f,c[9]=p,c[13]=0,c[2]=0,c[6]=0,c[10]=_,c[14]=x,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=mi,l=!1){let c=this.elements,h=2/(e-t),f=2/(n-s),u=-(e+t)/(e-t),p=-(n+s)/(n-s),_,x;if(l)_=1/(o-r),x=o/(o-r);else if(a===mi)_=-2/(o-r),x=-(o+r)/(o-r);else if(a===Qr)_=-1/(o-r),x=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=u,c[1]=0,c[5]=f,c[9]=0,c[13]=p,c[2]=0,c[6]=0,c[10]=_,c[14]=x,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Fr=new $,Si=new Ie,o_=new $(0,0,0),a_=new $(1,1,1),Ps=new $,Ha=new $,ii=new $,Td=new Ie,Ad=new Ln,ds=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],f=s[2],u=s[6],p=s[10];switch(e){case"XYZ":this._y=Math.asin(Me(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,p),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(u,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Me(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,p),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-f,r),this._z=0);break;case"ZXY":this._x=Math.asin(Me(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(-f,p),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-Me(f,-1,1)),Math.abs(f)<.9999999?(this._x=Math.atan2(u,p),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(Me(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-f,r)):(this._x=0,this._y=Math.atan2(a,p));break;case"XZY":this._z=Math.asin(-Me(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(u,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,p),this._y=0);break;default:te("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return Td.makeRotationFromQuaternion(t),this.setFromRotationMatrix(Td,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return Ad.setFromEuler(this),this.setFromQuaternion(Ad,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ds.DEFAULT_ORDER="XYZ";var Zo=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},l_=0,Rd=new $,Or=new Ln,rs=new Ie,Ga=new $,Uo=new $,c_=new $,h_=new Ln,Cd=new $(1,0,0),Pd=new $(0,1,0),Id=new $(0,0,1),Ld={type:"added"},u_={type:"removed"},Br={type:"childadded",child:null},Dh={type:"childremoved",child:null},Dn=class i extends Ti{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:l_++}),this.uuid=fo(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new $,e=new ds,n=new Ln,s=new $(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Ie},normalMatrix:{value:new ce}}),this.matrix=new Ie,this.matrixWorld=new Ie,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Zo,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Or.setFromAxisAngle(t,e),this.quaternion.multiply(Or),this}rotateOnWorldAxis(t,e){return Or.setFromAxisAngle(t,e),this.quaternion.premultiply(Or),this}rotateX(t){return this.rotateOnAxis(Cd,t)}rotateY(t){return this.rotateOnAxis(Pd,t)}rotateZ(t){return this.rotateOnAxis(Id,t)}translateOnAxis(t,e){return Rd.copy(t).applyQuaternion(this.quaternion),this.position.add(Rd.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(Cd,t)}translateY(t){return this.translateOnAxis(Pd,t)}translateZ(t){return this.translateOnAxis(Id,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(rs.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?Ga.copy(t):Ga.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Uo.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?rs.lookAt(Uo,Ga,this.up):rs.lookAt(Ga,Uo,this.up),this.quaternion.setFromRotationMatrix(rs),s&&(rs.extractRotation(s.matrixWorld),Or.setFromRotationMatrix(rs),this.quaternion.premultiply(Or.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(le("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(Ld),Br.child=t,this.dispatchEvent(Br),Br.child=null):le("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(u_),Dh.child=t,this.dispatchEvent(Dh),Dh.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),rs.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),rs.multiply(t.parent.matrixWorld)),t.applyMatrix4(rs),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(Ld),Br.child=t,this.dispatchEvent(Br),Br.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Uo,t,c_),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Uo,h_,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let f=l[c];r(t.shapes,f)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),h=o(t.images),f=o(t.shapes),u=o(t.skeletons),p=o(t.animations),_=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),f.length>0&&(n.shapes=f),u.length>0&&(n.skeletons=u),p.length>0&&(n.animations=p),_.length>0&&(n.nodes=_)}return n.object=s,n;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Dn.DEFAULT_UP=new $(0,1,0);Dn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Dn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Gi=class extends Dn{constructor(){super(),this.isGroup=!0,this.type="Group"}},f_={type:"move"},io=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Gi,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Gi,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new $,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new $),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Gi,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new $,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new $,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let x of t.hand.values()){let g=e.getJointPose(x,n),d=this._getHandJoint(c,x);g!==null&&(d.matrix.fromArray(g.transform.matrix),d.matrix.decompose(d.position,d.quaternion,d.scale),d.matrixWorldNeedsUpdate=!0,d.jointRadius=g.radius),d.visible=g!==null}let h=c.joints["index-finger-tip"],f=c.joints["thumb-tip"],u=h.position.distanceTo(f.position),p=.02,_=.005;c.inputState.pinching&&u>p+_?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&u<=p-_&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(f_)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Gi;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},Fp={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Is={h:0,s:0,l:0},Wa={h:0,s:0,l:0};function Nh(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var ge=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=Xn){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,we.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=we.workingColorSpace){return this.r=t,this.g=e,this.b=n,we.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=we.workingColorSpace){if(t=Cu(t,1),e=Me(e,0,1),n=Me(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=Nh(o,r,t+1/3),this.g=Nh(o,r,t),this.b=Nh(o,r,t-1/3)}return we.colorSpaceToWorking(this,s),this}setStyle(t,e=Xn){function n(r){r!==void 0&&parseFloat(r)<1&&te("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:te("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);te("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=Xn){let n=Fp[t.toLowerCase()];return n!==void 0?this.setHex(n,e):te("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=us(t.r),this.g=us(t.g),this.b=us(t.b),this}copyLinearToSRGB(t){return this.r=Jr(t.r),this.g=Jr(t.g),this.b=Jr(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=Xn){return we.workingToColorSpace(On.copy(this),t),Math.round(Me(On.r*255,0,255))*65536+Math.round(Me(On.g*255,0,255))*256+Math.round(Me(On.b*255,0,255))}getHexString(t=Xn){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=we.workingColorSpace){we.workingToColorSpace(On.copy(this),e);let n=On.r,s=On.g,r=On.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let f=o-a;switch(c=h<=.5?f/(o+a):f/(2-o-a),o){case n:l=(s-r)/f+(s<r?6:0);break;case s:l=(r-n)/f+2;break;case r:l=(n-s)/f+4;break}l/=6}return t.h=l,t.s=c,t.l=h,t}getRGB(t,e=we.workingColorSpace){return we.workingToColorSpace(On.copy(this),e),t.r=On.r,t.g=On.g,t.b=On.b,t}getStyle(t=Xn){we.workingToColorSpace(On.copy(this),t);let e=On.r,n=On.g,s=On.b;return t!==Xn?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Is),this.setHSL(Is.h+t,Is.s+e,Is.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Is),t.getHSL(Wa);let n=Go(Is.h,Wa.h,e),s=Go(Is.s,Wa.s,e),r=Go(Is.l,Wa.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},On=new ge;ge.NAMES=Fp;var Jo=class extends Dn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ds,this.environmentIntensity=1,this.environmentRotation=new ds,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},bi=new $,os=new $,Uh=new $,as=new $,kr=new $,zr=new $,Dd=new $,Fh=new $,Oh=new $,Bh=new $,kh=new tn,zh=new tn,Vh=new tn,hs=class i{constructor(t=new $,e=new $,n=new $){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),bi.subVectors(t,e),s.cross(bi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){bi.subVectors(s,e),os.subVectors(n,e),Uh.subVectors(t,e);let o=bi.dot(bi),a=bi.dot(os),l=bi.dot(Uh),c=os.dot(os),h=os.dot(Uh),f=o*c-a*a;if(f===0)return r.set(0,0,0),null;let u=1/f,p=(c*l-a*h)*u,_=(o*h-a*l)*u;return r.set(1-p-_,_,p)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,as)===null?!1:as.x>=0&&as.y>=0&&as.x+as.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,as)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,as.x),l.addScaledVector(o,as.y),l.addScaledVector(a,as.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return kh.setScalar(0),zh.setScalar(0),Vh.setScalar(0),kh.fromBufferAttribute(t,e),zh.fromBufferAttribute(t,n),Vh.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(kh,r.x),o.addScaledVector(zh,r.y),o.addScaledVector(Vh,r.z),o}static isFrontFacing(t,e,n,s){return bi.subVectors(n,e),os.subVectors(t,e),bi.cross(os).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return bi.subVectors(this.c,this.b),os.subVectors(this.a,this.b),bi.cross(os).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;kr.subVectors(s,n),zr.subVectors(r,n),Fh.subVectors(t,n);let l=kr.dot(Fh),c=zr.dot(Fh);if(l<=0&&c<=0)return e.copy(n);Oh.subVectors(t,s);let h=kr.dot(Oh),f=zr.dot(Oh);if(h>=0&&f<=h)return e.copy(s);let u=l*f-h*c;if(u<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),e.copy(n).addScaledVector(kr,o);Bh.subVectors(t,r);let p=kr.dot(Bh),_=zr.dot(Bh);if(_>=0&&p<=_)return e.copy(r);let x=p*c-l*_;if(x<=0&&c>=0&&_<=0)return a=c/(c-_),e.copy(n).addScaledVector(zr,a);let g=h*_-p*f;if(g<=0&&f-h>=0&&p-_>=0)return Dd.subVectors(r,s),a=(f-h)/(f-h+(p-_)),e.copy(s).addScaledVector(Dd,a);let d=1/(g+x+u);return o=x*d,a=u*d,e.copy(n).addScaledVector(kr,o).addScaledVector(zr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Wi=class{constructor(t=new $(1/0,1/0,1/0),e=new $(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(wi.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(wi.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=wi.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,wi):wi.fromBufferAttribute(r,o),wi.applyMatrix4(t.matrixWorld),this.expandByPoint(wi);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),Xa.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),Xa.copy(n.boundingBox)),Xa.applyMatrix4(t.matrixWorld),this.union(Xa)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,wi),wi.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Fo),qa.subVectors(this.max,Fo),Vr.subVectors(t.a,Fo),Hr.subVectors(t.b,Fo),Gr.subVectors(t.c,Fo),Ls.subVectors(Hr,Vr),Ds.subVectors(Gr,Hr),tr.subVectors(Vr,Gr);let e=[0,-Ls.z,Ls.y,0,-Ds.z,Ds.y,0,-tr.z,tr.y,Ls.z,0,-Ls.x,Ds.z,0,-Ds.x,tr.z,0,-tr.x,-Ls.y,Ls.x,0,-Ds.y,Ds.x,0,-tr.y,tr.x,0];return!Hh(e,Vr,Hr,Gr,qa)||(e=[1,0,0,0,1,0,0,0,1],!Hh(e,Vr,Hr,Gr,qa))?!1:($a.crossVectors(Ls,Ds),e=[$a.x,$a.y,$a.z],Hh(e,Vr,Hr,Gr,qa))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,wi).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(wi).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(ls[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),ls[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),ls[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),ls[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),ls[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),ls[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),ls[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),ls[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(ls),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},ls=[new $,new $,new $,new $,new $,new $,new $,new $],wi=new $,Xa=new Wi,Vr=new $,Hr=new $,Gr=new $,Ls=new $,Ds=new $,tr=new $,Fo=new $,qa=new $,$a=new $,er=new $;function Hh(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){er.fromArray(i,r);let a=s.x*Math.abs(er.x)+s.y*Math.abs(er.y)+s.z*Math.abs(er.z),l=t.dot(er),c=e.dot(er),h=n.dot(er);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var dn=new $,Ya=new re,d_=0,Ei=class extends Ti{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:d_++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=Cp,this.updateRanges=[],this.gpuType=gi,this.version=0,this._normalizationScale=t!==void 0?Iu(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)Ya.fromBufferAttribute(this,e),Ya.applyMatrix3(t),this.setXY(e,Ya.x,Ya.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix3(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix4(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyNormalMatrix(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.transformDirection(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):Np(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):Up(t,this.array)}};var Ko=class extends Ei{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var jo=class extends Ei{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Xe=class extends Ei{constructor(t,e,n){super(new Float32Array(t),e,n)}},p_=new Wi,Oo=new $,Gh=new $,ps=class{constructor(t=new $,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):p_.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Oo.subVectors(t,this.center);let e=Oo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(Oo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(Gh.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Oo.copy(t.center).add(Gh)),this.expandByPoint(Oo.copy(t.center).sub(Gh))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},m_=0,pi=new Ie,Wh=new Dn,Wr=new $,si=new Wi,Bo=new Wi,Rn=new $,$n=class i extends Ti{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:m_++}),this.uuid=fo(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(z0(t)?jo:Ko)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new ce().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return pi.makeRotationFromQuaternion(t),this.applyMatrix4(pi),this}rotateX(t){return pi.makeRotationX(t),this.applyMatrix4(pi),this}rotateY(t){return pi.makeRotationY(t),this.applyMatrix4(pi),this}rotateZ(t){return pi.makeRotationZ(t),this.applyMatrix4(pi),this}translate(t,e,n){return pi.makeTranslation(t,e,n),this.applyMatrix4(pi),this}scale(t,e,n){return pi.makeScale(t,e,n),this.applyMatrix4(pi),this}lookAt(t){return Wh.lookAt(t),Wh.updateMatrix(),this.applyMatrix4(Wh.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Wr).negate(),this.translate(Wr.x,Wr.y,Wr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Xe(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&te("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Wi);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){le("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new $(-1/0,-1/0,-1/0),new $(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];si.setFromBufferAttribute(r),this.morphTargetsRelative?(Rn.addVectors(this.boundingBox.min,si.min),this.boundingBox.expandByPoint(Rn),Rn.addVectors(this.boundingBox.max,si.max),this.boundingBox.expandByPoint(Rn)):(this.boundingBox.expandByPoint(si.min),this.boundingBox.expandByPoint(si.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&le('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ps);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){le("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new $,1/0);return}if(t){let n=this.boundingSphere.center;if(si.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Bo.setFromBufferAttribute(a),this.morphTargetsRelative?(Rn.addVectors(si.min,Bo.min),si.expandByPoint(Rn),Rn.addVectors(si.max,Bo.max),si.expandByPoint(Rn)):(si.expandByPoint(Bo.min),si.expandByPoint(Bo.max))}si.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Rn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Rn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)Rn.fromBufferAttribute(a,c),l&&(Wr.fromBufferAttribute(t,c),Rn.add(Wr)),s=Math.max(s,n.distanceToSquared(Rn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&le('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){le("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Ei(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let L=0;L<n.count;L++)a[L]=new $,l[L]=new $;let h=new $,f=new $,u=new $,p=new re,_=new re,x=new re,g=new $,d=new $;function y(L,S,R){c[L]=c[S]=c[R]=1,h.fromBufferAttribute(n,L),f.fromBufferAttribute(n,S),u.fromBufferAttribute(n,R),p.fromBufferAttribute(r,L),_.fromBufferAttribute(r,S),x.fromBufferAttribute(r,R),f.sub(h),u.sub(h),_.sub(p),x.sub(p);let F=1/(_.x*x.y-x.x*_.y);isFinite(F)&&(g.copy(f).multiplyScalar(x.y).addScaledVector(u,-_.y).multiplyScalar(F),d.copy(u).multiplyScalar(_.x).addScaledVector(f,-x.x).multiplyScalar(F),a[L].add(g),a[S].add(g),a[R].add(g),l[L].add(d),l[S].add(d),l[R].add(d))}let C=this.groups;C.length===0&&(C=[{start:0,count:t.count}]);for(let L=0,S=C.length;L<S;++L){let R=C[L],F=R.start,B=R.count;for(let D=F,V=F+B;D<V;D+=3)y(t.getX(D+0),t.getX(D+1),t.getX(D+2))}let b=new $,P=new $,T=new $,m=new $;function M(L){T.fromBufferAttribute(s,L),m.copy(T);let S=a[L];b.copy(S),b.sub(T.multiplyScalar(T.dot(S))).normalize(),P.crossVectors(m,S);let F=P.dot(l[L])<0?-1:1;o.setXYZW(L,b.x,b.y,b.z,F)}for(let L=0,S=n.count;L<S;++L)c[L]&&M(L);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Ei(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let u=0,p=n.count;u<p;u++)n.setXYZ(u,0,0,0);let s=new $,r=new $,o=new $,a=new $,l=new $,c=new $,h=new $,f=new $;if(t)for(let u=0,p=t.count;u<p;u+=3){let _=t.getX(u+0),x=t.getX(u+1),g=t.getX(u+2);s.fromBufferAttribute(e,_),r.fromBufferAttribute(e,x),o.fromBufferAttribute(e,g),h.subVectors(o,r),f.subVectors(s,r),h.cross(f),a.fromBufferAttribute(n,_),l.fromBufferAttribute(n,x),c.fromBufferAttribute(n,g),a.add(h),l.add(h),c.add(h),n.setXYZ(_,a.x,a.y,a.z),n.setXYZ(x,l.x,l.y,l.z),n.setXYZ(g,c.x,c.y,c.z)}else for(let u=0,p=e.count;u<p;u+=3)s.fromBufferAttribute(e,u+0),r.fromBufferAttribute(e,u+1),o.fromBufferAttribute(e,u+2),h.subVectors(o,r),f.subVectors(s,r),h.cross(f),n.setXYZ(u+0,h.x,h.y,h.z),n.setXYZ(u+1,h.x,h.y,h.z),n.setXYZ(u+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Rn.fromBufferAttribute(t,e),Rn.normalize(),t.setXYZ(e,Rn.x,Rn.y,Rn.z)}toNonIndexed(){function t(a,l){let c=a.array,h=a.itemSize,f=a.normalized,u=new c.constructor(l.length*h),p=0,_=0;for(let x=0,g=l.length;x<g;x++){a.isInterleavedBufferAttribute?p=l[x]*a.data.stride+a.offset:p=l[x]*h;for(let d=0;d<h;d++)u[_++]=c[p++]}return new Ei(u,h,f)}if(this.index===null)return te("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,f=c.length;h<f;h++){let u=c[h],p=t(u,n);l.push(p)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let f=0,u=c.length;f<u;f++){let p=c[f];h.push(p.toJSON(t.data))}h.length>0&&(s[l]=h,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(e))}let r=t.morphAttributes;for(let c in r){let h=[],f=r[c];for(let u=0,p=f.length;u<p;u++)h.push(f[u].clone(e));this.morphAttributes[c]=h}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,h=o.length;c<h;c++){let f=o[c];this.addGroup(f.start,f.count,f.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var Xh=new $,g_=new $,__=new ce,ri=class{constructor(t=new $(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=Xh.subVectors(n,e).cross(g_.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(Xh),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||__.getNormalMatrix(t),s=this.coplanarPoint(Xh).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},x_=0,ms=class extends Ti{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:x_++}),this.uuid=fo(),this.name="",this.type="Material",this.blending=co,this.side=Hs,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=lu,this.blendDst=cu,this.blendEquation=lr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new ge(0,0,0),this.blendAlpha=0,this.depthFunc=Kr,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=bp,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=ml,this.stencilZFail=ml,this.stencilZPass=ml,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){te(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){te(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new ge().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new ri().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new re().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new re().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var cs=new $,qh=new $,Za=new $,Ja=new $,sr=class{constructor(t=new $,e=new $(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,cs)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=cs.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(cs.copy(this.origin).addScaledVector(this.direction,e),cs.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){qh.copy(t).add(e).multiplyScalar(.5),Za.copy(e).sub(t).normalize(),Ja.copy(this.origin).sub(qh);let r=t.distanceTo(e)*.5,o=-this.direction.dot(Za),a=Ja.dot(this.direction),l=-Ja.dot(Za),c=Ja.lengthSq(),h=Math.abs(1-o*o),f,u,p,_;if(h>0)if(f=o*l-a,u=o*a-l,_=r*h,f>=0)if(u>=-_)if(u<=_){let x=1/h;f*=x,u*=x,p=f*(f+o*u+2*a)+u*(o*f+u+2*l)+c}else u=r,f=Math.max(0,-(o*u+a)),p=-f*f+u*(u+2*l)+c;else u=-r,f=Math.max(0,-(o*u+a)),p=-f*f+u*(u+2*l)+c;else u<=-_?(f=Math.max(0,-(-o*r+a)),u=f>0?-r:Math.min(Math.max(-r,-l),r),p=-f*f+u*(u+2*l)+c):u<=_?(f=0,u=Math.min(Math.max(-r,-l),r),p=u*(u+2*l)+c):(f=Math.max(0,-(o*r+a)),u=f>0?r:Math.min(Math.max(-r,-l),r),p=-f*f+u*(u+2*l)+c);else u=o>0?-r:r,f=Math.max(0,-(o*u+a)),p=-f*f+u*(u+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,f),s&&s.copy(qh).addScaledVector(Za,u),p}intersectSphere(t,e){if(t.radius<0)return null;cs.subVectors(t.center,this.origin);let n=cs.dot(this.direction),s=cs.dot(cs)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,f=1/this.direction.z,u=this.origin;return c>=0?(n=(t.min.x-u.x)*c,s=(t.max.x-u.x)*c):(n=(t.max.x-u.x)*c,s=(t.min.x-u.x)*c),h>=0?(r=(t.min.y-u.y)*h,o=(t.max.y-u.y)*h):(r=(t.max.y-u.y)*h,o=(t.min.y-u.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),f>=0?(a=(t.min.z-u.z)*f,l=(t.max.z-u.z)*f):(a=(t.max.z-u.z)*f,l=(t.min.z-u.z)*f),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,cs)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,f=t.x-o.x,u=t.y-o.y,p=t.z-o.z,_=e.x-o.x,x=e.y-o.y,g=e.z-o.z,d=n.x-o.x,y=n.y-o.y,C=n.z-o.z,b=Math.abs(l),P=Math.abs(c),T=Math.abs(h),m,M,L,S,R,F,B,D,V,X,H,K;if(b>=P&&b>=T?(L=l,F=f,V=_,K=d,l>=0?(m=c,M=h,S=u,R=p,B=x,D=g,X=y,H=C):(m=h,M=c,S=p,R=u,B=g,D=x,X=C,H=y)):P>=T?(L=c,F=u,V=x,K=y,c>=0?(m=h,M=l,S=p,R=f,B=g,D=_,X=C,H=d):(m=l,M=h,S=f,R=p,B=_,D=g,X=d,H=C)):(L=h,F=p,V=g,K=C,h>=0?(m=l,M=c,S=f,R=u,B=_,D=x,X=d,H=y):(m=c,M=l,S=u,R=f,B=x,D=_,X=y,H=d)),L===0)return null;let q=m/L,Z=M/L,et=1/L,ht=S-q*F,ut=R-Z*F,tt=B-q*V,_t=D-Z*V,yt=X-q*K,vt=H-Z*K,Mt=yt*_t-vt*tt,Zt=ht*vt-ut*yt,oe=tt*ut-_t*ht;if(s){if(Mt<0||Zt<0||oe<0)return null}else if((Mt<0||Zt<0||oe<0)&&(Mt>0||Zt>0||oe>0))return null;let Gt=Mt+Zt+oe;if(Gt===0)return null;let ue=et*(Mt*F+Zt*V+oe*K);return(Gt>0?ue<0:ue>0)?null:this.at(ue/Gt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Us=class extends ms{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new ge(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ds,this.combine=$l,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},Nd=new Ie,nr=new sr,Ka=new ps,Ud=new $,ja=new $,Qa=new $,tl=new $,$h=new $,el=new $,Fd=new $,nl=new $,pn=class extends Dn{constructor(t=new $n,e=new Us){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){el.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],f=r[l];h!==0&&($h.fromBufferAttribute(f,t),o?el.addScaledVector($h,h):el.addScaledVector($h.sub(e),h))}e.add(el)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),Ka.copy(n.boundingSphere),Ka.applyMatrix4(r),nr.copy(t.ray).recast(t.near),!(Ka.containsPoint(nr.origin)===!1&&(nr.intersectSphere(Ka,Ud)===null||nr.origin.distanceToSquared(Ud)>(t.far-t.near)**2))&&(Nd.copy(r).invert(),nr.copy(t.ray).applyMatrix4(Nd),!(n.boundingBox!==null&&nr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,nr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,f=r.attributes.normal,u=r.groups,p=r.drawRange;if(a!==null)if(Array.isArray(o))for(let _=0,x=u.length;_<x;_++){let g=u[_],d=o[g.materialIndex],y=Math.max(g.start,p.start),C=Math.min(a.count,Math.min(g.start+g.count,p.start+p.count));for(let b=y,P=C;b<P;b+=3){let T=a.getX(b),m=a.getX(b+1),M=a.getX(b+2);s=il(this,d,t,n,c,h,f,T,m,M),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=g.materialIndex,e.push(s))}}else{let _=Math.max(0,p.start),x=Math.min(a.count,p.start+p.count);for(let g=_,d=x;g<d;g+=3){let y=a.getX(g),C=a.getX(g+1),b=a.getX(g+2);s=il(this,o,t,n,c,h,f,y,C,b),s&&(s.faceIndex=Math.floor(g/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let _=0,x=u.length;_<x;_++){let g=u[_],d=o[g.materialIndex],y=Math.max(g.start,p.start),C=Math.min(l.count,Math.min(g.start+g.count,p.start+p.count));for(let b=y,P=C;b<P;b+=3){let T=b,m=b+1,M=b+2;s=il(this,d,t,n,c,h,f,T,m,M),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=g.materialIndex,e.push(s))}}else{let _=Math.max(0,p.start),x=Math.min(l.count,p.start+p.count);for(let g=_,d=x;g<d;g+=3){let y=g,C=g+1,b=g+2;s=il(this,o,t,n,c,h,f,y,C,b),s&&(s.faceIndex=Math.floor(g/3),e.push(s))}}}};function y_(i,t,e,n,s,r,o,a){let l;if(t.side===Nn?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Hs,a),l===null)return null;nl.copy(a),nl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(nl);return c<e.near||c>e.far?null:{distance:c,point:nl.clone(),object:i}}function il(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,ja),i.getVertexPosition(l,Qa),i.getVertexPosition(c,tl);let h=y_(i,t,e,n,ja,Qa,tl,Fd);if(h){let f=new $;hs.getBarycoord(Fd,ja,Qa,tl,f),s&&(h.uv=hs.getInterpolatedAttribute(s,a,l,c,f,new re)),r&&(h.uv1=hs.getInterpolatedAttribute(r,a,l,c,f,new re)),o&&(h.normal=hs.getInterpolatedAttribute(o,a,l,c,f,new $),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let u={a,b:l,c,normal:new $,materialIndex:0};hs.getNormal(ja,Qa,tl,u.normal),h.face=u,h.barycoord=f}return h}var Qo=class extends Zn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=Cn,h=Cn,f,u){super(null,o,a,l,c,h,s,r,f,u),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var rr=class extends Ei{constructor(t,e,n,s=1){super(t,e,n),this.isInstancedBufferAttribute=!0,this.meshPerAttribute=s}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}toJSON(){let t=super.toJSON();return t.meshPerAttribute=this.meshPerAttribute,t.isInstancedBufferAttribute=!0,t}},Xr=new Ie,Od=new Ie,sl=[],Bd=new Wi,v_=new Ie,ko=new pn,zo=new ps,ta=class extends pn{constructor(t,e,n){super(t,e),this.isInstancedMesh=!0,this.instanceMatrix=new rr(new Float32Array(n*16),16),this.instanceColor=null,this.morphTexture=null,this.count=n,this.boundingBox=null,this.boundingSphere=null;for(let s=0;s<n;s++)this.setMatrixAt(s,v_)}computeBoundingBox(){let t=this.geometry,e=this.count;this.boundingBox===null&&(this.boundingBox=new Wi),t.boundingBox===null&&t.computeBoundingBox(),this.boundingBox.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,Xr),Bd.copy(t.boundingBox).applyMatrix4(Xr),this.boundingBox.union(Bd)}computeBoundingSphere(){let t=this.geometry,e=this.count;this.boundingSphere===null&&(this.boundingSphere=new ps),t.boundingSphere===null&&t.computeBoundingSphere(),this.boundingSphere.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,Xr),zo.copy(t.boundingSphere).applyMatrix4(Xr),this.boundingSphere.union(zo)}copy(t,e){return super.copy(t,e),this.instanceMatrix.copy(t.instanceMatrix),this.morphTexture=t.morphTexture!==null?t.morphTexture.clone():null,this.instanceColor=t.instanceColor!==null?t.instanceColor.clone():null,this.count=t.count,this.boundingBox=t.boundingBox!==null?t.boundingBox.clone():null,this.boundingSphere=t.boundingSphere!==null?t.boundingSphere.clone():null,this}getColorAt(t,e){return this.instanceColor===null?e.setRGB(1,1,1):e.fromArray(this.instanceColor.array,t*3)}getMatrixAt(t,e){return e.fromArray(this.instanceMatrix.array,t*16)}getMorphAt(t,e){let n=e.morphTargetInfluences,s=this.morphTexture.source.data.data,r=n.length+1,o=t*r+1;for(let a=0;a<n.length;a++)n[a]=s[o+a]}raycast(t,e){let n=this.matrixWorld,s=this.count;if(ko.geometry=this.geometry,ko.material=this.material,ko.material!==void 0&&(this.boundingSphere===null&&this.computeBoundingSphere(),zo.copy(this.boundingSphere),zo.applyMatrix4(n),t.ray.intersectsSphere(zo)!==!1))for(let r=0;r<s;r++){this.getMatrixAt(r,Xr),Od.multiplyMatrices(n,Xr),ko.matrixWorld=Od,ko.raycast(t,sl);for(let o=0,a=sl.length;o<a;o++){let l=sl[o];l.instanceId=r,l.object=this,e.push(l)}sl.length=0}}setColorAt(t,e){return this.instanceColor===null&&(this.instanceColor=new rr(new Float32Array(this.instanceMatrix.count*3).fill(1),3)),e.toArray(this.instanceColor.array,t*3),this}setMatrixAt(t,e){return e.toArray(this.instanceMatrix.array,t*16),this}setMorphAt(t,e){let n=e.morphTargetInfluences,s=n.length+1;this.morphTexture===null&&(this.morphTexture=new Qo(new Float32Array(s*this.count),s,this.count,tc,gi));let r=this.morphTexture.source.data.data,o=0;for(let c=0;c<n.length;c++)o+=n[c];let a=this.geometry.morphTargetsRelative?1:1-o,l=s*t;return r[l]=a,r.set(n,l+1),this}updateMorphTargets(){}dispose(){super.dispose(),this.instanceMatrix.dispose(),this.instanceColor!==null&&this.instanceColor.dispose(),this.morphTexture!==null&&(this.morphTexture.dispose(),this.morphTexture=null)}},ir=new ps,M_=new re(.5,.5),rl=new $,Fs=class{constructor(t=new ri,e=new ri,n=new ri,s=new ri,r=new ri,o=new ri){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=mi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],f=r[5],u=r[6],p=r[7],_=r[8],x=r[9],g=r[10],d=r[11],y=r[12],C=r[13],b=r[14],P=r[15];if(s[0].setComponents(c-o,p-h,d-_,P-y).normalize(),s[1].setComponents(c+o,p+h,d+_,P+y).normalize(),s[2].setComponents(c+a,p+f,d+x,P+C).normalize(),s[3].setComponents(c-a,p-f,d-x,P-C).normalize(),n)s[4].setComponents(l,u,g,b).normalize(),s[5].setComponents(c-l,p-u,d-g,P-b).normalize();else if(s[4].setComponents(c-l,p-u,d-g,P-b).normalize(),e===mi)s[5].setComponents(c+l,p+u,d+g,P+b).normalize();else if(e===Qr)s[5].setComponents(l,u,g,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),ir.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),ir.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(ir)}intersectsSprite(t){ir.center.set(0,0,0);let e=M_.distanceTo(t.center);return ir.radius=.7071067811865476+e,ir.applyMatrix4(t.matrixWorld),this.intersectsSphere(ir)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(rl.x=s.normal.x>0?t.max.x:t.min.x,rl.y=s.normal.y>0?t.max.y:t.min.y,rl.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(rl)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},kd=new Ie,Rl=class i{constructor(){this.coordinateSystem=mi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];kd.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Fs),n[s].setFromProjectionMatrix(kd,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new Fs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var so=class extends ms{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new ge(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Cl=new $,Pl=new $,zd=new Ie,Vo=new sr,ol=new ps,Yh=new $,Vd=new $,Il=class extends Dn{constructor(t=new $n,e=new so){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Cl.fromBufferAttribute(e,s-1),Pl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Cl.distanceTo(Pl);t.setAttribute("lineDistance",new Xe(n,1))}else te("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),ol.copy(n.boundingSphere),ol.applyMatrix4(s),ol.radius+=r,t.ray.intersectsSphere(ol)===!1)return;zd.copy(s).invert(),Vo.copy(t.ray).applyMatrix4(zd);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=n.index,u=n.attributes.position;if(h!==null){let p=Math.max(0,o.start),_=Math.min(h.count,o.start+o.count);for(let x=p,g=_-1;x<g;x+=c){let d=h.getX(x),y=h.getX(x+1),C=al(this,t,Vo,l,d,y,x);C&&e.push(C)}if(this.isLineLoop){let x=h.getX(_-1),g=h.getX(p),d=al(this,t,Vo,l,x,g,_-1);d&&e.push(d)}}else{let p=Math.max(0,o.start),_=Math.min(u.count,o.start+o.count);for(let x=p,g=_-1;x<g;x+=c){let d=al(this,t,Vo,l,x,x+1,x);d&&e.push(d)}if(this.isLineLoop){let x=al(this,t,Vo,l,_-1,p,_-1);x&&e.push(x)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function al(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Cl.fromBufferAttribute(a,s),Pl.fromBufferAttribute(a,r),e.distanceSqToSegment(Cl,Pl,Yh,Vd)>n)return;Yh.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(Yh);if(!(c<t.near||c>t.far))return{distance:c,point:Vd.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var Hd=new $,Gd=new $,ea=class extends Il{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)Hd.fromBufferAttribute(e,s),Gd.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Hd.distanceTo(Gd);t.setAttribute("lineDistance",new Xe(n,1))}else te("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var na=class extends Zn{constructor(t=[],e=cr,n,s,r,o,a,l,c,h){super(t,e,n,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var gs=class extends Zn{constructor(t,e,n=Ai,s,r,o,a=Cn,l=Cn,c,h=fs,f=1){if(h!==fs&&h!==ys)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let u={width:t,height:e,depth:f};super(u,s,r,o,a,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new no(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},ia=class extends gs{constructor(t,e=Ai,n=cr,s,r,o=Cn,a=Cn,l,c=fs){let h={width:t,height:t,depth:1},f=[h,h,h,h,h,h];super(t,t,e,n,s,r,o,a,l,c),this.image=f,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},sa=class extends Zn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},_s=class i extends $n{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],f=[],u=0,p=0;_("z","y","x",-1,-1,n,e,t,o,r,0),_("z","y","x",1,-1,n,e,-t,o,r,1),_("x","z","y",1,1,t,n,e,s,o,2),_("x","z","y",1,-1,t,n,-e,s,o,3),_("x","y","z",1,-1,t,e,n,s,r,4),_("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Xe(c,3)),this.setAttribute("normal",new Xe(h,3)),this.setAttribute("uv",new Xe(f,2));function _(x,g,d,y,C,b,P,T,m,M,L){let S=b/m,R=P/M,F=b/2,B=P/2,D=T/2,V=m+1,X=M+1,H=0,K=0,q=new $;for(let Z=0;Z<X;Z++){let et=Z*R-B;for(let ht=0;ht<V;ht++){let ut=ht*S-F;q[x]=ut*y,q[g]=et*C,q[d]=D,c.push(q.x,q.y,q.z),q[x]=0,q[g]=0,q[d]=T>0?1:-1,h.push(q.x,q.y,q.z),f.push(ht/m),f.push(1-Z/M),H+=1}}for(let Z=0;Z<M;Z++)for(let et=0;et<m;et++){let ht=u+et+V*Z,ut=u+et+V*(Z+1),tt=u+(et+1)+V*(Z+1),_t=u+(et+1)+V*Z;l.push(ht,ut,_t),l.push(ut,tt,_t),K+=6}a.addGroup(p,K,L),p+=K,u+=H}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}},ra=class i extends $n{constructor(t=1,e=1,n=4,s=8,r=1){super(),this.type="CapsuleGeometry",this.parameters={radius:t,height:e,capSegments:n,radialSegments:s,heightSegments:r},e=Math.max(0,e),n=Math.max(1,Math.floor(n)),s=Math.max(3,Math.floor(s)),r=Math.max(1,Math.floor(r));let o=[],a=[],l=[],c=[],h=e/2,f=Math.PI/2*t,u=e,p=2*f+u,_=n*2+r,x=s+1,g=new $,d=new $;for(let y=0;y<=_;y++){let C=0,b=0,P=0,T=0;if(y<=n){let L=y/n,S=L*Math.PI/2;b=-h-t*Math.cos(S),P=t*Math.sin(S),T=-t*Math.cos(S),C=L*f}else if(y<=n+r){let L=(y-n)/r;b=-h+L*e,P=t,T=0,C=f+L*u}else{let L=(y-n-r)/n,S=L*Math.PI/2;b=h+t*Math.sin(S),P=t*Math.cos(S),T=t*Math.sin(S),C=f+u+L*f}let m=Math.max(0,Math.min(1,C/p)),M=0;y===0?M=.5/s:y===_&&(M=-.5/s);for(let L=0;L<=s;L++){let S=L/s,R=S*Math.PI*2,F=Math.sin(R),B=Math.cos(R);d.x=-P*B,d.y=b,d.z=P*F,a.push(d.x,d.y,d.z),g.set(-P*B,T,P*F),g.normalize(),l.push(g.x,g.y,g.z),c.push(S+M,m)}if(y>0){let L=(y-1)*x;for(let S=0;S<s;S++){let R=L+S,F=L+S+1,B=y*x+S,D=y*x+S+1;o.push(R,F,B),o.push(F,D,B)}}}this.setIndex(o),this.setAttribute("position",new Xe(a,3)),this.setAttribute("normal",new Xe(l,3)),this.setAttribute("uv",new Xe(c,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.height,t.capSegments,t.radialSegments,t.heightSegments)}};var Xi=class i extends $n{constructor(t=1,e=1,n=1,s=32,r=1,o=!1,a=0,l=Math.PI*2){super(),this.type="CylinderGeometry",this.parameters={radiusTop:t,radiusBottom:e,height:n,radialSegments:s,heightSegments:r,openEnded:o,thetaStart:a,thetaLength:l};let c=this;s=Math.floor(s),r=Math.floor(r);let h=[],f=[],u=[],p=[],_=0,x=[],g=n/2,d=0;y(),o===!1&&(t>0&&C(!0),e>0&&C(!1)),this.setIndex(h),this.setAttribute("position",new Xe(f,3)),this.setAttribute("normal",new Xe(u,3)),this.setAttribute("uv",new Xe(p,2));function y(){let b=new $,P=new $,T=0,m=(e-t)/n;for(let M=0;M<=r;M++){let L=[],S=M/r,R=S*(e-t)+t;for(let F=0;F<=s;F++){let B=F/s,D=B*l+a,V=Math.sin(D),X=Math.cos(D);P.x=R*V,P.y=-S*n+g,P.z=R*X,f.push(P.x,P.y,P.z),b.set(V,m,X).normalize(),u.push(b.x,b.y,b.z),p.push(B,1-S),L.push(_++)}x.push(L)}for(let M=0;M<s;M++)for(let L=0;L<r;L++){let S=x[L][M],R=x[L+1][M],F=x[L+1][M+1],B=x[L][M+1];(t>0||L!==0)&&(h.push(S,R,B),T+=3),(e>0||L!==r-1)&&(h.push(R,F,B),T+=3)}c.addGroup(d,T,0),d+=T}function C(b){let P=_,T=new re,m=new $,M=0,L=b===!0?t:e,S=b===!0?1:-1;for(let F=1;F<=s;F++)f.push(0,g*S,0),u.push(0,S,0),p.push(.5,.5),_++;let R=_;for(let F=0;F<=s;F++){let D=F/s*l+a,V=Math.cos(D),X=Math.sin(D);m.x=L*X,m.y=g*S,m.z=L*V,f.push(m.x,m.y,m.z),u.push(0,S,0),T.x=V*.5+.5,T.y=X*.5*S+.5,p.push(T.x,T.y),_++}for(let F=0;F<s;F++){let B=P+F,D=R+F;b===!0?h.push(D,D+1,B):h.push(D+1,D,B),M+=3}c.addGroup(d,M,b===!0?1:2),d+=M}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radiusTop,t.radiusBottom,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}},oa=class i extends Xi{constructor(t=1,e=1,n=32,s=1,r=!1,o=0,a=Math.PI*2){super(0,t,e,n,s,r,o,a),this.type="ConeGeometry",this.parameters={radius:t,height:e,radialSegments:n,heightSegments:s,openEnded:r,thetaStart:o,thetaLength:a}}static fromJSON(t){return new i(t.radius,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}};var ll=new $,cl=new $,Zh=new $,hl=new hs,aa=class extends $n{constructor(t=null,e=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:e},t!==null){let s=Math.pow(10,4),r=Math.cos(Zr*e),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],h=["a","b","c"],f=new Array(3),u=new Map,p=[];for(let _=0;_<l;_+=3){o?(c[0]=o.getX(_),c[1]=o.getX(_+1),c[2]=o.getX(_+2)):(c[0]=_,c[1]=_+1,c[2]=_+2);let{a:x,b:g,c:d}=hl;if(x.fromBufferAttribute(a,c[0]),g.fromBufferAttribute(a,c[1]),d.fromBufferAttribute(a,c[2]),hl.getNormal(Zh),f[0]=`${Math.round(x.x*s)},${Math.round(x.y*s)},${Math.round(x.z*s)}`,f[1]=`${Math.round(g.x*s)},${Math.round(g.y*s)},${Math.round(g.z*s)}`,f[2]=`${Math.round(d.x*s)},${Math.round(d.y*s)},${Math.round(d.z*s)}`,!(f[0]===f[1]||f[1]===f[2]||f[2]===f[0]))for(let y=0;y<3;y++){let C=(y+1)%3,b=f[y],P=f[C],T=hl[h[y]],m=hl[h[C]],M=`${b}_${P}`,L=`${P}_${b}`,S=u.get(L);S?(Zh.dot(S.normal)<=r&&(p.push(T.x,T.y,T.z),p.push(m.x,m.y,m.z)),u.set(L,null)):u.has(M)||u.set(M,{index0:c[y],index1:c[C],normal:Zh.clone()})}}for(let _ of u.values())if(_){let{index0:x,index1:g}=_;ll.fromBufferAttribute(a,x),cl.fromBufferAttribute(a,g),p.push(ll.x,ll.y,ll.z),p.push(cl.x,cl.y,cl.z)}this.setAttribute("position",new Xe(p,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var la=class i extends $n{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,h=l+1,f=t/a,u=e/l,p=[],_=[],x=[],g=[];for(let d=0;d<h;d++){let y=d*u-o;for(let C=0;C<c;C++){let b=C*f-r;_.push(b,-y,0),x.push(0,0,1),g.push(C/a),g.push(1-d/l)}}for(let d=0;d<l;d++)for(let y=0;y<a;y++){let C=y+c*d,b=y+c*(d+1),P=y+1+c*(d+1),T=y+1+c*d;p.push(C,b,T),p.push(b,P,T)}this.setIndex(p),this.setAttribute("position",new Xe(_,3)),this.setAttribute("normal",new Xe(x,3)),this.setAttribute("uv",new Xe(g,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var ro=class i extends $n{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,h=[],f=new $,u=new $,p=[],_=[],x=[],g=[];for(let d=0;d<=n;d++){let y=[],C=d/n,b=o+C*a,P=t*Math.cos(b),T=Math.sqrt(t*t-P*P),m=0;d===0&&o===0?m=.5/e:d===n&&l===Math.PI&&(m=-.5/e);for(let M=0;M<=e;M++){let L=M/e,S=s+L*r;f.x=-T*Math.cos(S),f.y=P,f.z=T*Math.sin(S),_.push(f.x,f.y,f.z),u.copy(f).normalize(),x.push(u.x,u.y,u.z),g.push(L+m,1-C),y.push(c++)}h.push(y)}for(let d=0;d<n;d++)for(let y=0;y<e;y++){let C=h[d][y+1],b=h[d][y],P=h[d+1][y],T=h[d+1][y+1];(d!==0||o>0)&&p.push(C,b,T),(d!==n-1||l<Math.PI)&&p.push(b,P,T)}this.setIndex(p),this.setAttribute("position",new Xe(_,3)),this.setAttribute("normal",new Xe(x,3)),this.setAttribute("uv",new Xe(g,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function ur(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(Wd(s))s.isRenderTargetTexture?(te("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(Wd(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Bn(i){let t={};for(let e=0;e<i.length;e++){let n=ur(i[e]);for(let s in n)t[s]=n[s]}return t}function Wd(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function S_(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function Du(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:we.workingColorSpace}var Op={clone:ur,merge:Bn},b_=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,w_=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,qi=class extends ms{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=b_,this.fragmentShader=w_,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=ur(t.uniforms),this.uniformsGroups=S_(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new ge().setHex(s.value);break;case"v2":this.uniforms[n].value=new re().fromArray(s.value);break;case"v3":this.uniforms[n].value=new $().fromArray(s.value);break;case"v4":this.uniforms[n].value=new tn().fromArray(s.value);break;case"m3":this.uniforms[n].value=new ce().fromArray(s.value);break;case"m4":this.uniforms[n].value=new Ie().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Ll=class extends qi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var ca=class extends ms{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new ge(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new ge(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Nc,this.normalScale=new re(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ds,this.combine=$l,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Dl=class extends ms{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Mp,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Nl=class extends ms{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function qr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function ul(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Os=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Ul=class extends Os{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:jh,endingEnd:jh}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Qh:r=t,a=2*e-n;break;case tu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case Qh:o=t,l=2*n-e;break;case tu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,h=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this._offsetPrev,f=this._offsetNext,u=this._weightPrev,p=this._weightNext,_=(n-e)/(s-e),x=_*_,g=x*_,d=-u*g+2*u*x-u*_,y=(1+u)*g+(-1.5-2*u)*x+(-.5+u)*_+1,C=(-1-p)*g+(1.5+p)*x+.5*_,b=p*g-p*x;for(let P=0;P!==a;++P)r[P]=d*o[h+P]+y*o[c+P]+C*o[l+P]+b*o[f+P];return r}},Fl=class extends Os{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=(n-e)/(s-e),f=1-h;for(let u=0;u!==a;++u)r[u]=o[c+u]*f+o[l+u]*h;return r}},Ol=class extends Os{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},Bl=class extends Os{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this.inTangents,f=this.outTangents;if(!h||!f){let _=(n-e)/(s-e),x=1-_;for(let g=0;g!==a;++g)r[g]=o[c+g]*x+o[l+g]*_;return r}let u=a*2,p=t-1;for(let _=0;_!==a;++_){let x=o[c+_],g=o[l+_],d=p*u+_*2,y=f[d],C=f[d+1],b=t*u+_*2,P=h[b],T=h[b+1],m=T_(n,e,y,P,s);r[_]=Bp(m,x,C,T,g)}return r}};function Bp(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function E_(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function T_(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=Bp(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=E_(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var li=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=qr(e,this.TimeBufferType),this.values=qr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:qr(t.times,Array),values:qr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),ul(t.settings)&&(n.settings={inTangents:qr(t.settings.inTangents,Array),outTangents:qr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new Ol(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Fl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Ul(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new Bl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case Wo:e=this.InterpolantFactoryMethodDiscrete;break;case wl:e=this.InterpolantFactoryMethodLinear;break;case pl:e=this.InterpolantFactoryMethodSmooth;break;case Kh:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return te("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Wo;case this.InterpolantFactoryMethodLinear:return wl;case this.InterpolantFactoryMethodSmooth:return pl;case this.InterpolantFactoryMethodBezier:return Kh}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;ul(this.settings)&&(Xd(this.settings.inTangents,t),Xd(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;ul(this.settings)&&(qd(this.settings.inTangents,t),qd(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(le("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(le("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){le("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){le("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&V0(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){le("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===pl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],h=t[a+1];if(c!==h&&(a!==1||c!==t[0]))if(s)l=!0;else{let f=a*n,u=f-n,p=f+n;for(let _=0;_!==n;++_){let x=e[f+_];if(x!==e[u+_]||x!==e[p+_]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let f=a*n,u=o*n;for(let p=0;p!==n;++p)e[u+p]=e[f+p]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,ul(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Xd(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function qd(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}li.prototype.ValueTypeName="";li.prototype.TimeBufferType=Float32Array;li.prototype.ValueBufferType=Float32Array;li.prototype.DefaultInterpolation=wl;var Bs=class extends li{constructor(t,e,n){super(t,e,n)}};Bs.prototype.ValueTypeName="bool";Bs.prototype.ValueBufferType=Array;Bs.prototype.DefaultInterpolation=Wo;Bs.prototype.InterpolantFactoryMethodLinear=void 0;Bs.prototype.InterpolantFactoryMethodSmooth=void 0;var kl=class extends li{constructor(t,e,n,s){super(t,e,n,s)}};kl.prototype.ValueTypeName="color";var zl=class extends li{constructor(t,e,n,s){super(t,e,n,s)}};zl.prototype.ValueTypeName="number";var Vl=class extends Os{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let h=c+a;c!==h;c+=4)Ln.slerpFlat(r,0,o,c-a,o,c,l);return r}},ha=class extends li{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new Vl(this.times,this.values,this.getValueSize(),t)}};ha.prototype.ValueTypeName="quaternion";ha.prototype.InterpolantFactoryMethodSmooth=void 0;var ks=class extends li{constructor(t,e,n){super(t,e,n)}};ks.prototype.ValueTypeName="string";ks.prototype.ValueBufferType=Array;ks.prototype.DefaultInterpolation=Wo;ks.prototype.InterpolantFactoryMethodLinear=void 0;ks.prototype.InterpolantFactoryMethodSmooth=void 0;var Hl=class extends li{constructor(t,e,n,s){super(t,e,n,s)}};Hl.prototype.ValueTypeName="vector";var Gl=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,f){return c.push(h,f),this},this.removeHandler=function(h){let f=c.indexOf(h);return f!==-1&&c.splice(f,2),this},this.getHandler=function(h){for(let f=0,u=c.length;f<u;f+=2){let p=c[f],_=c[f+1];if(p.global&&(p.lastIndex=0),p.test(h))return _}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},kp=new Gl,Wl=class{constructor(t){this.manager=t!==void 0?t:kp,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};Wl.DEFAULT_MATERIAL_NAME="__DEFAULT";var ua=class extends Dn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new ge(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}},fa=class extends ua{constructor(t,e,n){super(t,n),this.isHemisphereLight=!0,this.type="HemisphereLight",this.position.copy(Dn.DEFAULT_UP),this.updateMatrix(),this.groundColor=new ge(e)}copy(t,e){return super.copy(t,e),this.groundColor.copy(t.groundColor),this}toJSON(t){let e=super.toJSON(t);return e.object.groundColor=this.groundColor.getHex(),e}},Jh=new Ie,$d=new $,Yd=new $,Xl=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new re(512,512),this.mapType=Jn,this.map=null,this.mapPass=null,this.matrix=new Ie,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Fs,this._frameExtents=new re(1,1),this._viewportCount=1,this._viewports=[new tn(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;$d.setFromMatrixPosition(t.matrixWorld),e.position.copy($d),Yd.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(Yd),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){Jh.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(Jh,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===Qr||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(Jh)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},fl=new $,dl=new Ln,Vi=new $,da=class extends Dn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Ie,this.projectionMatrix=new Ie,this.projectionMatrixInverse=new Ie,this.coordinateSystem=mi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(fl,dl,Vi),Vi.x===1&&Vi.y===1&&Vi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(fl,dl,Vi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(fl,dl,Vi),Vi.x===1&&Vi.y===1&&Vi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(fl,dl,Vi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Ns=new $,Zd=new re,Jd=new re,oi=class extends da{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=eo*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(Zr*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return eo*2*Math.atan(Math.tan(Zr*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Ns.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Ns.x,Ns.y).multiplyScalar(-t/Ns.z),Ns.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Ns.x,Ns.y).multiplyScalar(-t/Ns.z)}getViewSize(t,e){return this.getViewBounds(t,Zd,Jd),e.subVectors(Jd,Zd)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(Zr*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var or=class extends da{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},eu=class extends Xl{constructor(){super(new or(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},pa=class extends ua{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Dn.DEFAULT_UP),this.updateMatrix(),this.target=new Dn,this.shadow=new eu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}};var $r=-90,Yr=1,oo=class extends Dn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new oi($r,Yr,t,e);s.layers=this.layers,this.add(s);let r=new oi($r,Yr,t,e);r.layers=this.layers,this.add(r);let o=new oi($r,Yr,t,e);o.layers=this.layers,this.add(o);let a=new oi($r,Yr,t,e);a.layers=this.layers,this.add(a);let l=new oi($r,Yr,t,e);l.layers=this.layers,this.add(l);let c=new oi($r,Yr,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===mi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===Qr)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,f=t.getRenderTarget(),u=t.getActiveCubeFace(),p=t.getActiveMipmapLevel(),_=t.xr.enabled;t.xr.enabled=!1;let x=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let g=!1;t.isWebGLRenderer===!0?g=t.state.buffers.depth.getReversed():g=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=x,t.setRenderTarget(n,5,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,h),t.setRenderTarget(f,u,p),t.xr.enabled=_,n.texture.needsPMREMUpdate=!0}},ql=class extends oi{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var Nu="\\[\\]\\.:\\/",A_=new RegExp("["+Nu+"]","g"),Uu="[^"+Nu+"]",R_="[^"+Nu.replace("\\.","")+"]",C_=/((?:WC+[\/:])*)/.source.replace("WC",Uu),P_=/(WCOD+)?/.source.replace("WCOD",R_),I_=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Uu),L_=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Uu),D_=new RegExp("^"+C_+P_+I_+L_+"$"),N_=["material","materials","bones","map"],nu=class{constructor(t,e,n){let s=n||Ke.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},Ke=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(A_,"")}static parseTrackName(t){let e=D_.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);N_.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){te("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){le("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){le("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){le("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let h=0;h<t.length;h++)if(t[h].name===c){c=h;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){le("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){le("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){le("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){le("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;le("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){le("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){le("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Ke.Composite=nu;Ke.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Ke.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Ke.prototype.GetterByBindingType=[Ke.prototype._getValue_direct,Ke.prototype._getValue_array,Ke.prototype._getValue_arrayElement,Ke.prototype._getValue_toArray];Ke.prototype.SetterByBindingTypeAndVersioning=[[Ke.prototype._setValue_direct,Ke.prototype._setValue_direct_setNeedsUpdate,Ke.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Ke.prototype._setValue_array,Ke.prototype._setValue_array_setNeedsUpdate,Ke.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Ke.prototype._setValue_arrayElement,Ke.prototype._setValue_arrayElement_setNeedsUpdate,Ke.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Ke.prototype._setValue_fromArray,Ke.prototype._setValue_fromArray_setNeedsUpdate,Ke.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var TE=new Float32Array(1);var ao=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=Me(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(Me(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var iu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var ma=class extends Ti{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function Fu(i,t,e,n){let s=U_(n);switch(e){case Su:return i*t;case tc:return i*t/s.components*s.byteLength;case ec:return i*t/s.components*s.byteLength;case Gs:return i*t*2/s.components*s.byteLength;case nc:return i*t*2/s.components*s.byteLength;case bu:return i*t*3/s.components*s.byteLength;case Ci:return i*t*4/s.components*s.byteLength;case ic:return i*t*4/s.components*s.byteLength;case xa:case ya:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case va:case Ma:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case rc:case ac:return Math.max(i,16)*Math.max(t,8)/4;case sc:case oc:return Math.max(i,8)*Math.max(t,8)/2;case lc:case cc:case uc:case fc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case hc:case Sa:case dc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case pc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case mc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case gc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case _c:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case xc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case yc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case vc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Mc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Sc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case bc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case wc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Ec:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Tc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case Ac:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Rc:case Cc:case Pc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case Ic:case Lc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case ba:case Dc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function U_(i){switch(i){case Jn:case xu:return{byteLength:1,components:1};case uo:case yu:case Ri:return{byteLength:2,components:1};case jl:case Ql:return{byteLength:2,components:4};case Ai:case Kl:case gi:return{byteLength:4,components:1};case vu:case Mu:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?te("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function am(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function O_(i){let t=new WeakMap;function e(a,l){let c=a.array,h=a.usage,f=c.byteLength,u=i.createBuffer();i.bindBuffer(l,u),i.bufferData(l,c,h),a.onUploadCallback();let p;if(c instanceof Float32Array)p=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)p=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?p=i.HALF_FLOAT:p=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)p=i.SHORT;else if(c instanceof Uint32Array)p=i.UNSIGNED_INT;else if(c instanceof Int32Array)p=i.INT;else if(c instanceof Int8Array)p=i.BYTE;else if(c instanceof Uint8Array)p=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)p=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:u,type:p,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:f}}function n(a,l,c){let h=l.array,f=l.updateRanges;if(i.bindBuffer(c,a),f.length===0)i.bufferSubData(c,0,h);else{f.sort((p,_)=>p.start-_.start);let u=0;for(let p=1;p<f.length;p++){let _=f[u],x=f[p];x.start<=_.start+_.count+1?_.count=Math.max(_.count,x.start+x.count-_.start):(++u,f[u]=x)}f.length=u+1;for(let p=0,_=f.length;p<_;p++){let x=f[p];i.bufferSubData(c,x.start*h.BYTES_PER_ELEMENT,h,x.start,x.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=t.get(a);(!h||h.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var B_=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,k_=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,z_=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,V_=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,H_=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,G_=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,W_=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,X_=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,q_=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,$_=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,Y_=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,Z_=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,J_=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,K_=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,j_=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,Q_=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,tx=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,ex=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,nx=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,ix=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,sx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,rx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,ox=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,ax=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,lx=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,cx=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,hx=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,ux=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,fx=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,dx="gl_FragColor = linearToOutputTexel( gl_FragColor );",px=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,mx=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,gx=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,_x=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,xx=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,yx=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,vx=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Mx=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Sx=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,bx=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,wx=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,Ex=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Tx=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,Ax=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,Rx=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,Cx=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,Px=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,Ix=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Lx=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,Dx=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,Nx=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,Ux=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,Fx=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,Ox=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,Bx=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,kx=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,zx=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Vx=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Hx=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Gx=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Wx=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Xx=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,qx=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,$x=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Yx=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,Zx=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Jx=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Kx=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,jx=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Qx=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,ty=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,ey=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,ny=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,iy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,sy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,ry=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,oy=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,ay=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,ly=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,cy=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,hy=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,uy=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,fy=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,dy=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,py=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,my=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,gy=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,_y=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,xy=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,yy=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,vy=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,My=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,Sy=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,by=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,wy=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,Ey=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,Ty=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,Ay=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,Ry=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,Cy=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,Py=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,Iy=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,Ly=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,Dy=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Ny=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Uy=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,Fy=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,Oy=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,By=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,ky=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,zy=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Vy=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Hy=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Gy=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,Wy=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,Xy=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,qy=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,$y=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,Yy=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Zy=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,Jy=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,Ky=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,jy=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,Qy=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,tv=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,ev=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,nv=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,iv=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,sv=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,rv=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,ov=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,av=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,lv=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,cv=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,hv=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,uv=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,fv=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,dv=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,pv=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,mv=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,gv=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,xe={alphahash_fragment:B_,alphahash_pars_fragment:k_,alphamap_fragment:z_,alphamap_pars_fragment:V_,alphatest_fragment:H_,alphatest_pars_fragment:G_,aomap_fragment:W_,aomap_pars_fragment:X_,batching_pars_vertex:q_,batching_vertex:$_,begin_vertex:Y_,beginnormal_vertex:Z_,bsdfs:J_,iridescence_fragment:K_,bumpmap_pars_fragment:j_,clipping_planes_fragment:Q_,clipping_planes_pars_fragment:tx,clipping_planes_pars_vertex:ex,clipping_planes_vertex:nx,color_fragment:ix,color_pars_fragment:sx,color_pars_vertex:rx,color_vertex:ox,common:ax,defaultnormal_vertex:lx,displacementmap_pars_vertex:cx,displacementmap_vertex:hx,emissivemap_fragment:ux,emissivemap_pars_fragment:fx,colorspace_fragment:dx,colorspace_pars_fragment:px,envmap_fragment:mx,envmap_common_pars_fragment:gx,envmap_pars_fragment:_x,envmap_pars_vertex:xx,envmap_physical_pars_fragment:Cx,envmap_vertex:yx,fog_vertex:vx,fog_pars_vertex:Mx,fog_fragment:Sx,fog_pars_fragment:bx,gradientmap_pars_fragment:wx,lightmap_pars_fragment:Ex,lights_lambert_fragment:Tx,lights_lambert_pars_fragment:Ax,lights_pars_begin:Rx,lights_toon_fragment:Px,lights_toon_pars_fragment:Ix,lights_phong_fragment:Lx,lights_phong_pars_fragment:Dx,lights_physical_fragment:Nx,lights_physical_pars_fragment:Ux,lights_fragment_begin:Fx,lights_fragment_maps:Ox,lights_fragment_end:Bx,lightprobes_pars_fragment:kx,logdepthbuf_fragment:zx,logdepthbuf_pars_fragment:Vx,logdepthbuf_pars_vertex:Hx,logdepthbuf_vertex:Gx,map_fragment:Wx,map_pars_fragment:Xx,map_particle_fragment:qx,map_particle_pars_fragment:$x,metalnessmap_fragment:Yx,metalnessmap_pars_fragment:Zx,morphinstance_vertex:Jx,morphcolor_vertex:Kx,morphnormal_vertex:jx,morphtarget_pars_vertex:Qx,morphtarget_vertex:ty,normal_fragment_begin:ey,normal_fragment_maps:ny,normal_pars_fragment:iy,normal_pars_vertex:sy,normal_vertex:ry,normalmap_pars_fragment:oy,clearcoat_normal_fragment_begin:ay,clearcoat_normal_fragment_maps:ly,clearcoat_pars_fragment:cy,iridescence_pars_fragment:hy,opaque_fragment:uy,packing:fy,premultiplied_alpha_fragment:dy,project_vertex:py,dithering_fragment:my,dithering_pars_fragment:gy,roughnessmap_fragment:_y,roughnessmap_pars_fragment:xy,shadowmap_pars_fragment:yy,shadowmap_pars_vertex:vy,shadowmap_vertex:My,shadowmask_pars_fragment:Sy,skinbase_vertex:by,skinning_pars_vertex:wy,skinning_vertex:Ey,skinnormal_vertex:Ty,specularmap_fragment:Ay,specularmap_pars_fragment:Ry,tonemapping_fragment:Cy,tonemapping_pars_fragment:Py,transmission_fragment:Iy,transmission_pars_fragment:Ly,uv_pars_fragment:Dy,uv_pars_vertex:Ny,uv_vertex:Uy,worldpos_vertex:Fy,background_vert:Oy,background_frag:By,backgroundCube_vert:ky,backgroundCube_frag:zy,cube_vert:Vy,cube_frag:Hy,depth_vert:Gy,depth_frag:Wy,distance_vert:Xy,distance_frag:qy,equirect_vert:$y,equirect_frag:Yy,linedashed_vert:Zy,linedashed_frag:Jy,meshbasic_vert:Ky,meshbasic_frag:jy,meshlambert_vert:Qy,meshlambert_frag:tv,meshmatcap_vert:ev,meshmatcap_frag:nv,meshnormal_vert:iv,meshnormal_frag:sv,meshphong_vert:rv,meshphong_frag:ov,meshphysical_vert:av,meshphysical_frag:lv,meshtoon_vert:cv,meshtoon_frag:hv,points_vert:uv,points_frag:fv,shadow_vert:dv,shadow_frag:pv,sprite_vert:mv,sprite_frag:gv},Ft={common:{diffuse:{value:new ge(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new ce},alphaMap:{value:null},alphaMapTransform:{value:new ce},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new ce}},envmap:{envMap:{value:null},envMapRotation:{value:new ce},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new ce}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new ce}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new ce},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new ce},normalScale:{value:new re(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new ce},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new ce}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new ce}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new ce}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new ge(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new ge(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new ce},alphaTest:{value:0},uvTransform:{value:new ce}},sprite:{diffuse:{value:new ge(16777215)},opacity:{value:1},center:{value:new re(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new ce},alphaMap:{value:null},alphaMapTransform:{value:new ce},alphaTest:{value:0}}},Ji={basic:{uniforms:Bn([Ft.common,Ft.specularmap,Ft.envmap,Ft.aomap,Ft.lightmap,Ft.fog]),vertexShader:xe.meshbasic_vert,fragmentShader:xe.meshbasic_frag},lambert:{uniforms:Bn([Ft.common,Ft.specularmap,Ft.envmap,Ft.aomap,Ft.lightmap,Ft.emissivemap,Ft.bumpmap,Ft.normalmap,Ft.displacementmap,Ft.fog,Ft.lights,{emissive:{value:new ge(0)},envMapIntensity:{value:1}}]),vertexShader:xe.meshlambert_vert,fragmentShader:xe.meshlambert_frag},phong:{uniforms:Bn([Ft.common,Ft.specularmap,Ft.envmap,Ft.aomap,Ft.lightmap,Ft.emissivemap,Ft.bumpmap,Ft.normalmap,Ft.displacementmap,Ft.fog,Ft.lights,{emissive:{value:new ge(0)},specular:{value:new ge(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:xe.meshphong_vert,fragmentShader:xe.meshphong_frag},standard:{uniforms:Bn([Ft.common,Ft.envmap,Ft.aomap,Ft.lightmap,Ft.emissivemap,Ft.bumpmap,Ft.normalmap,Ft.displacementmap,Ft.roughnessmap,Ft.metalnessmap,Ft.fog,Ft.lights,{emissive:{value:new ge(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:xe.meshphysical_vert,fragmentShader:xe.meshphysical_frag},toon:{uniforms:Bn([Ft.common,Ft.aomap,Ft.lightmap,Ft.emissivemap,Ft.bumpmap,Ft.normalmap,Ft.displacementmap,Ft.gradientmap,Ft.fog,Ft.lights,{emissive:{value:new ge(0)}}]),vertexShader:xe.meshtoon_vert,fragmentShader:xe.meshtoon_frag},matcap:{uniforms:Bn([Ft.common,Ft.bumpmap,Ft.normalmap,Ft.displacementmap,Ft.fog,{matcap:{value:null}}]),vertexShader:xe.meshmatcap_vert,fragmentShader:xe.meshmatcap_frag},points:{uniforms:Bn([Ft.points,Ft.fog]),vertexShader:xe.points_vert,fragmentShader:xe.points_frag},dashed:{uniforms:Bn([Ft.common,Ft.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:xe.linedashed_vert,fragmentShader:xe.linedashed_frag},depth:{uniforms:Bn([Ft.common,Ft.displacementmap]),vertexShader:xe.depth_vert,fragmentShader:xe.depth_frag},normal:{uniforms:Bn([Ft.common,Ft.bumpmap,Ft.normalmap,Ft.displacementmap,{opacity:{value:1}}]),vertexShader:xe.meshnormal_vert,fragmentShader:xe.meshnormal_frag},sprite:{uniforms:Bn([Ft.sprite,Ft.fog]),vertexShader:xe.sprite_vert,fragmentShader:xe.sprite_frag},background:{uniforms:{uvTransform:{value:new ce},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:xe.background_vert,fragmentShader:xe.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new ce}},vertexShader:xe.backgroundCube_vert,fragmentShader:xe.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:xe.cube_vert,fragmentShader:xe.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:xe.equirect_vert,fragmentShader:xe.equirect_frag},distance:{uniforms:Bn([Ft.common,Ft.displacementmap,{referencePosition:{value:new $},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:xe.distance_vert,fragmentShader:xe.distance_frag},shadow:{uniforms:Bn([Ft.lights,Ft.fog,{color:{value:new ge(0)},opacity:{value:1}}]),vertexShader:xe.shadow_vert,fragmentShader:xe.shadow_frag}};Ji.physical={uniforms:Bn([Ji.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new ce},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new ce},clearcoatNormalScale:{value:new re(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new ce},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new ce},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new ce},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new ce},sheen:{value:0},sheenColor:{value:new ge(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new ce},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new ce},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new ce},transmissionSamplerSize:{value:new re},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new ce},attenuationDistance:{value:0},attenuationColor:{value:new ge(0)},specularColor:{value:new ge(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new ce},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new ce},anisotropyVector:{value:new re},anisotropyMap:{value:null},anisotropyMapTransform:{value:new ce}}]),vertexShader:xe.meshphysical_vert,fragmentShader:xe.meshphysical_frag};var Uc={r:0,b:0,g:0},_v=new Ie,lm=new ce;lm.set(-1,0,0,0,1,0,0,0,1);function xv(i,t,e,n,s,r){let o=new ge(0),a=s===!0?0:1,l,c,h=null,f=0,u=null;function p(y){let C=y.isScene===!0?y.background:null;if(C&&C.isTexture){let b=y.backgroundBlurriness>0;C=t.get(C,b)}return C}function _(y){let C=!1,b=p(y);b===null?g(o,a):b&&b.isColor&&(g(b,1),C=!0);let P=i.xr.getEnvironmentBlendMode();P==="additive"?e.buffers.color.setClear(0,0,0,1,r):P==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||C)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function x(y,C){let b=p(C);b&&b.isCubeTexture?(c===void 0&&(c=new pn(new _s(1,1,1),new qi({name:"BackgroundCubeMaterial",uniforms:ur(Ji.backgroundCube.uniforms),vertexShader:Ji.backgroundCube.vertexShader,fragmentShader:Ji.backgroundCube.fragmentShader,side:Nn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(P,T,m){this.matrixWorld.copyPosition(m.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=b,c.material.uniforms.backgroundBlurriness.value=C.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(_v.makeRotationFromEuler(C.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(lm),c.material.toneMapped=we.getTransfer(b.colorSpace)!==Ne,(h!==b||f!==b.version||u!==i.toneMapping)&&(c.material.needsUpdate=!0,h=b,f=b.version,u=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null)):b&&b.isTexture&&(l===void 0&&(l=new pn(new la(2,2),new qi({name:"BackgroundMaterial",uniforms:ur(Ji.background.uniforms),vertexShader:Ji.background.vertexShader,fragmentShader:Ji.background.fragmentShader,side:Hs,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=b,l.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,l.material.toneMapped=we.getTransfer(b.colorSpace)!==Ne,b.matrixAutoUpdate===!0&&b.updateMatrix(),l.material.uniforms.uvTransform.value.copy(b.matrix),(h!==b||f!==b.version||u!==i.toneMapping)&&(l.material.needsUpdate=!0,h=b,f=b.version,u=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null))}function g(y,C){y.getRGB(Uc,Du(i)),e.buffers.color.setClear(Uc.r,Uc.g,Uc.b,C,r)}function d(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,C=1){o.set(y),a=C,g(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,g(o,a)},render:_,addToRenderList:x,dispose:d}}function yv(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=u(null),r=s,o=!1;function a(R,F,B,D,V){let X=!1,H=f(R,D,B,F);r!==H&&(r=H,c(r.object)),X=p(R,D,B,V),X&&_(R,D,B,V),V!==null&&t.update(V,i.ELEMENT_ARRAY_BUFFER),(X||o)&&(o=!1,b(R,F,B,D),V!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(V).buffer))}function l(){return i.createVertexArray()}function c(R){return i.bindVertexArray(R)}function h(R){return i.deleteVertexArray(R)}function f(R,F,B,D){let V=D.wireframe===!0,X=n[F.id];X===void 0&&(X={},n[F.id]=X);let H=R.isInstancedMesh===!0?R.id:0,K=X[H];K===void 0&&(K={},X[H]=K);let q=K[B.id];q===void 0&&(q={},K[B.id]=q);let Z=q[V];return Z===void 0&&(Z=u(l()),q[V]=Z),Z}function u(R){let F=[],B=[],D=[];for(let V=0;V<e;V++)F[V]=0,B[V]=0,D[V]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:F,enabledAttributes:B,attributeDivisors:D,object:R,attributes:{},index:null}}function p(R,F,B,D){let V=r.attributes,X=F.attributes,H=0,K=B.getAttributes();for(let q in K)if(K[q].location>=0){let et=V[q],ht=X[q];if(ht===void 0&&(q==="instanceMatrix"&&R.instanceMatrix&&(ht=R.instanceMatrix),q==="instanceColor"&&R.instanceColor&&(ht=R.instanceColor)),et===void 0||et.attribute!==ht||ht&&et.data!==ht.data)return!0;H++}return r.attributesNum!==H||r.index!==D}function _(R,F,B,D){let V={},X=F.attributes,H=0,K=B.getAttributes();for(let q in K)if(K[q].location>=0){let et=X[q];et===void 0&&(q==="instanceMatrix"&&R.instanceMatrix&&(et=R.instanceMatrix),q==="instanceColor"&&R.instanceColor&&(et=R.instanceColor));let ht={};ht.attribute=et,et&&et.data&&(ht.data=et.data),V[q]=ht,H++}r.attributes=V,r.attributesNum=H,r.index=D}function x(){let R=r.newAttributes;for(let F=0,B=R.length;F<B;F++)R[F]=0}function g(R){d(R,0)}function d(R,F){let B=r.newAttributes,D=r.enabledAttributes,V=r.attributeDivisors;B[R]=1,D[R]===0&&(i.enableVertexAttribArray(R),D[R]=1),V[R]!==F&&(i.vertexAttribDivisor(R,F),V[R]=F)}function y(){let R=r.newAttributes,F=r.enabledAttributes;for(let B=0,D=F.length;B<D;B++)F[B]!==R[B]&&(i.disableVertexAttribArray(B),F[B]=0)}function C(R,F,B,D,V,X,H){H===!0?i.vertexAttribIPointer(R,F,B,V,X):i.vertexAttribPointer(R,F,B,D,V,X)}function b(R,F,B,D){x();let V=D.attributes,X=B.getAttributes(),H=F.defaultAttributeValues;for(let K in X){let q=X[K];if(q.location>=0){let Z=V[K];if(Z===void 0&&(K==="instanceMatrix"&&R.instanceMatrix&&(Z=R.instanceMatrix),K==="instanceColor"&&R.instanceColor&&(Z=R.instanceColor)),Z!==void 0){let et=Z.normalized,ht=Z.itemSize,ut=t.get(Z);if(ut===void 0)continue;let tt=ut.buffer,_t=ut.type,yt=ut.bytesPerElement,vt=_t===i.INT||_t===i.UNSIGNED_INT||Z.gpuType===Kl;if(Z.isInterleavedBufferAttribute){let Mt=Z.data,Zt=Mt.isInterleavedBuffer===!0?Mt.stride:Mt.itemSize,oe=Z.offset;if(Mt.isInstancedInterleavedBuffer||Mt.isInstancedBufferAttribute){for(let Gt=0;Gt<q.locationSize;Gt++)d(q.location+Gt,Mt.meshPerAttribute);R.isInstancedMesh!==!0&&D._maxInstanceCount===void 0&&(D._maxInstanceCount=Mt.meshPerAttribute*Mt.count)}else for(let Gt=0;Gt<q.locationSize;Gt++)g(q.location+Gt);i.bindBuffer(i.ARRAY_BUFFER,tt);for(let Gt=0;Gt<q.locationSize;Gt++)C(q.location+Gt,ht/q.locationSize,_t,et,Zt*yt,(oe+ht/q.locationSize*Gt)*yt,vt)}else{if(Z.isInstancedBufferAttribute){for(let Mt=0;Mt<q.locationSize;Mt++)d(q.location+Mt,Z.meshPerAttribute);R.isInstancedMesh!==!0&&D._maxInstanceCount===void 0&&(D._maxInstanceCount=Z.meshPerAttribute*Z.count)}else for(let Mt=0;Mt<q.locationSize;Mt++)g(q.location+Mt);i.bindBuffer(i.ARRAY_BUFFER,tt);for(let Mt=0;Mt<q.locationSize;Mt++)C(q.location+Mt,ht/q.locationSize,_t,et,ht*yt,ht/q.locationSize*Mt*yt,vt)}}else if(H!==void 0){let et=H[K];if(et!==void 0)switch(et.length){case 2:i.vertexAttrib2fv(q.location,et);break;case 3:i.vertexAttrib3fv(q.location,et);break;case 4:i.vertexAttrib4fv(q.location,et);break;default:i.vertexAttrib1fv(q.location,et)}}}}y()}function P(){L();for(let R in n){let F=n[R];for(let B in F){let D=F[B];for(let V in D){let X=D[V];for(let H in X)h(X[H].object),delete X[H];delete D[V]}}delete n[R]}}function T(R){if(n[R.id]===void 0)return;let F=n[R.id];for(let B in F){let D=F[B];for(let V in D){let X=D[V];for(let H in X)h(X[H].object),delete X[H];delete D[V]}}delete n[R.id]}function m(R){for(let F in n){let B=n[F];for(let D in B){let V=B[D];if(V[R.id]===void 0)continue;let X=V[R.id];for(let H in X)h(X[H].object),delete X[H];delete V[R.id]}}}function M(R){for(let F in n){let B=n[F],D=R.isInstancedMesh===!0?R.id:0,V=B[D];if(V!==void 0){for(let X in V){let H=V[X];for(let K in H)h(H[K].object),delete H[K];delete V[X]}delete B[D],Object.keys(B).length===0&&delete n[F]}}}function L(){S(),o=!0,r!==s&&(r=s,c(r.object))}function S(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:L,resetDefaultState:S,dispose:P,releaseStatesOfGeometry:T,releaseStatesOfObject:M,releaseStatesOfProgram:m,initAttributes:x,enableAttribute:g,disableUnusedAttributes:y}}function vv(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),e.update(c,n,h))}function a(l,c,h){if(h===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let u=0;for(let p=0;p<h;p++)u+=c[p];e.update(u,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function Mv(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let m=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(m.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(m){return!(m!==Ci&&n.convert(m)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(m){let M=m===Ri&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(m!==Jn&&m!==gi&&!M&&n.convert(m)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(m){if(m==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";m="mediump"}return m==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",h=l(c);h!==c&&(te("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let f=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),u=e.logarithmicDepthBuffer===!0&&f===!1;e.reversedDepthBuffer===!0&&f===!1&&te("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&f===!0&&te("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let p=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),x=i.getParameter(i.MAX_TEXTURE_SIZE),g=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),d=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),C=i.getParameter(i.MAX_VARYING_VECTORS),b=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),P=i.getParameter(i.MAX_SAMPLES),T=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:u,reversedDepthBuffer:f,maxTextures:p,maxVertexTextures:_,maxTextureSize:x,maxCubemapSize:g,maxAttributes:d,maxVertexUniforms:y,maxVaryings:C,maxFragmentUniforms:b,maxSamples:P,samples:T}}function Sv(i){let t=this,e=null,n=0,s=!1,r=!1,o=new ri,a=new ce,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(f,u){let p=f.length!==0||u||n!==0||s;return s=u,n=f.length,p},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(f,u){e=h(f,u,0)},this.setState=function(f,u,p){let _=f.clippingPlanes,x=f.clipIntersection,g=f.clipShadows,d=i.get(f);if(!s||_===null||_.length===0||r&&!g)r?h(null):c();else{let y=r?0:n,C=y*4,b=d.clippingState||null;l.value=b,b=h(_,u,C,p);for(let P=0;P!==C;++P)b[P]=e[P];d.clippingState=b,this.numIntersection=x?this.numPlanes:0,this.numPlanes+=y}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function h(f,u,p,_){let x=f!==null?f.length:0,g=null;if(x!==0){if(g=l.value,_!==!0||g===null){let d=p+x*4,y=u.matrixWorldInverse;a.getNormalMatrix(y),(g===null||g.length<d)&&(g=new Float32Array(d));for(let C=0,b=p;C!==x;++C,b+=4)o.copy(f[C]).applyMatrix4(y,a),o.normal.toArray(g,b),g[b+3]=o.constant}l.value=g,l.needsUpdate=!0}return t.numPlanes=x,t.numIntersection=0,g}}var Ta=class extends ai{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new na(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new _s(5,5,5),r=new qi({name:"CubemapFromEquirect",uniforms:ur(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Nn,blending:ar});r.uniforms.tEquirect.value=e;let o=new pn(s,r),a=e.minFilter;return e.minFilter===xs&&(e.minFilter=qn),new oo(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},zp=256,bv=3,wv=20,cm=256,hm=16,Ev=3,Tv=new $,Av=new ge,Oc=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new oo(1,10,null),this._boxMesh=new pn(new _s(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=Tv}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);e>0&&(h.texture.mipmapsAutoUpdate=!1);let f=l.autoClear,u=l.autoClearColor,p=l.autoClearDepth,_=l.autoClearStencil,x=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,x===null&&(t.background=l.getClearColor(Av));let g=new oo(n,s,h);return g.position.copy(a),g.update(l,t),l.autoClear=f,l.autoClearColor=u,l.autoClearDepth=p,l.autoClearStencil=_,t.background=x,e>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Gp(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Hp(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(zp,Pu(t))}_fromTexture(t,e){t.mapping===cr||t.mapping===ho?this._setSize(t.image.length===0?zp:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=Vp(t,!1,!1),n=Math.log2(t)-bv;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=Vp(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===cr||t.mapping===ho?(this._cubemapMaterial===null&&(this._cubemapMaterial=Gp()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Hp()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=Rv(),this._integrationMaterial=Cv());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/hm);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-Ev)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(cm*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=Pv());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function Vp(i,t,e){return new Ta(i,{minFilter:xs,generateMipmaps:t,type:Ri,colorSpace:Xo,depthBuffer:e})}function Aa(i,t,e){return new qi({name:i,uniforms:t,vertexShader:xe.cube_vert,fragmentShader:e,side:Nn,blending:ar,depthTest:!1,depthWrite:!1})}function Rv(){return Aa("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${cm}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function Cv(){return Aa("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:hm}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function Pv(){return Aa("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${wv}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Hp(){return Aa("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function Gp(){return Aa("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function Iv(i){let t=new WeakMap,e=new WeakMap,n=null;function s(u,p=!1){return u==null?null:p?o(u):r(u)}function r(u){if(u&&u.isTexture){let p=u.mapping;if(p===Yl||p===Zl)if(t.has(u)){let _=t.get(u).texture;return a(_,u.mapping)}else{let _=u.image;if(_&&_.height>0){let x=new Ta(_.height);return x.fromEquirectangularTexture(i,u),t.set(u,x),u.addEventListener("dispose",c),a(x.texture,u.mapping)}else return null}}return u}function o(u){if(u&&u.isTexture&&u.isPMREMTexture!==!0){let p=u.mapping,_=p===Yl||p===Zl,x=p===cr||p===ho;if(_||x){let g=e.get(u),d=g!==void 0?g.texture.pmremVersion:0;if(u.isRenderTargetTexture&&u.pmremVersion!==d)return n===null&&(n=new Oc(i)),g=_?n.fromEquirectangular(u,g):n.fromCubemap(u,g),g.texture.pmremVersion=u.pmremVersion,e.set(u,g),g.texture;if(g!==void 0)return g.texture;{let y=u.image;return _&&y&&y.height>0||x&&y&&l(y)?(n===null&&(n=new Oc(i)),g=_?n.fromEquirectangular(u):n.fromCubemap(u),g.texture.pmremVersion=u.pmremVersion,e.set(u,g),u.addEventListener("dispose",h),g.texture):null}}}return u}function a(u,p){return p===Yl?u.mapping=cr:p===Zl&&(u.mapping=ho),u}function l(u){let p=0,_=6;for(let x=0;x<_;x++)u[x]!==void 0&&p++;return p===_}function c(u){let p=u.target;p.removeEventListener("dispose",c);let _=t.get(p);_!==void 0&&(t.delete(p),_.dispose())}function h(u){let p=u.target;p.removeEventListener("dispose",h);let _=e.get(p);_!==void 0&&(e.delete(p),_.dispose())}function f(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:f}}function Lv(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Ho("WebGLRenderer: "+n+" extension not supported."),s}}}function Dv(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(_=>delete s[_]);function a(_){l(_.target)}function l(_){_.index!==null&&t.remove(_.index);for(let g in _.attributes)t.remove(_.attributes[g]);_.removeEventListener("dispose",a),delete s[_.id],o.unregister(_);let x=r.get(_);x&&(t.remove(x),r.delete(_)),n.releaseStatesOfGeometry(_),_.isInstancedBufferGeometry===!0&&delete _._maxInstanceCount,e.memory.geometries--}function c(_,x){return s[x.id]!==void 0||(x.addEventListener("dispose",a),s[x.id]=new WeakRef(x),o.register(x,x.id,x),e.memory.geometries++),x}function h(_){let x=_.attributes;for(let g in x)t.update(x[g],i.ARRAY_BUFFER)}function f(_){let x=_.index,g=_.attributes.position,d=0;if(g===void 0)return;let y=x!==null?x.array.length:g.array.length/3-1,C=g.count>=65535?jo:Ko,b=new C(Math.ceil(y/3)*6,1),P=b.array;if(x!==null){let m=x.array;d=x.version;for(let M=0,L=0;M<y;M+=3){let S=m[M+0],R=m[M+1],F=m[M+2];P[L++]=S,P[L++]=R,P[L++]=R,P[L++]=F,P[L++]=F,P[L++]=S}}else{d=g.version;for(let m=0,M=0;m<y;m+=3){let L=m+0,S=m+1,R=m+2;P[M++]=L,P[M++]=S,P[M++]=S,P[M++]=R,P[M++]=R,P[M++]=L}}b.version=d;let T=r.get(_);T&&t.remove(T),r.set(_,b)}function u(_){let x=r.get(_);if(x){let g=_.index;g!==null&&x.version<g.version&&f(_)}else f(_);return r.get(_)}function p(){for(let _ in s){let x=s[_].deref();x!==void 0&&l(x)}}return{get:c,update:h,getWireframeAttribute:u,dispose:p}}function Nv(i,t,e){let n;function s(f){n=f}let r,o;function a(f){r=f.type,o=f.bytesPerElement}function l(f,u){i.drawElements(n,u,r,f*o),e.update(u,n,1)}function c(f,u,p){p!==0&&(i.drawElementsInstanced(n,u,r,f*o,p),e.update(u,n,p))}function h(f,u,p){if(p===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,u,0,r,f,0,p);let x=0;for(let g=0;g<p;g++)x+=u[g];e.update(x,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function Uv(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:le("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function Fv(i,t,e){let n=new WeakMap,s=new tn;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,f=h!==void 0?h.length:0,u=n.get(a);if(u===void 0||u.count!==f){let L=function(){m.dispose(),n.delete(a),a.removeEventListener("dispose",L)};u!==void 0&&u.texture.dispose();let p=a.morphAttributes.position!==void 0,_=a.morphAttributes.normal!==void 0,x=a.morphAttributes.color!==void 0,g=a.morphAttributes.position||[],d=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],C=0;p===!0&&(C=1),_===!0&&(C=2),x===!0&&(C=3);let b=a.attributes.position.count*C,P=1;b>t.maxTextureSize&&(P=Math.ceil(b/t.maxTextureSize),b=t.maxTextureSize);let T=new Float32Array(b*P*4*f),m=new Yo(T,b,P,f);m.type=gi,m.needsUpdate=!0;let M=C*4;for(let S=0;S<f;S++){let R=g[S],F=d[S],B=y[S],D=b*P*4*S;for(let V=0;V<R.count;V++){let X=V*M;p===!0&&(s.fromBufferAttribute(R,V),T[D+X+0]=s.x,T[D+X+1]=s.y,T[D+X+2]=s.z,T[D+X+3]=0),_===!0&&(s.fromBufferAttribute(F,V),T[D+X+4]=s.x,T[D+X+5]=s.y,T[D+X+6]=s.z,T[D+X+7]=0),x===!0&&(s.fromBufferAttribute(B,V),T[D+X+8]=s.x,T[D+X+9]=s.y,T[D+X+10]=s.z,T[D+X+11]=B.itemSize===4?s.w:1)}}u={count:f,texture:m,size:new re(b,P)},n.set(a,u),a.addEventListener("dispose",L)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let p=0;for(let x=0;x<c.length;x++)p+=c[x];let _=a.morphTargetsRelative?1:1-p;l.getUniforms().setValue(i,"morphTargetBaseInfluence",_),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",u.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",u.size)}return{update:r}}function Ov(i,t,e,n,s){let r=new WeakMap;function o(c){let h=s.render.frame,f=c.geometry,u=t.get(c,f);if(r.get(u)!==h&&(t.update(u),r.set(u,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let p=c.skeleton;r.get(p)!==h&&(p.update(),r.set(p,h))}return u}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),e.remove(h.instanceMatrix),h.instanceColor!==null&&e.remove(h.instanceColor)}return{update:o,dispose:a}}var Bv={[hu]:"LINEAR_TONE_MAPPING",[uu]:"REINHARD_TONE_MAPPING",[fu]:"CINEON_TONE_MAPPING",[du]:"ACES_FILMIC_TONE_MAPPING",[mu]:"AGX_TONE_MAPPING",[gu]:"NEUTRAL_TONE_MAPPING",[pu]:"CUSTOM_TONE_MAPPING"};function kv(i,t,e,n,s,r){let o=new ai(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new $n;h.setAttribute("position",new Xe([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new Xe([0,2,0,0,2,0],2));let f=new Ll({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),u=new pn(h,f),p=new or(-1,1,1,-1,0,1),_=null,x=null,g=!1,d,y=null,C=[],b=!1;this.setSize=function(P,T){o.setSize(P,T),a!==null&&a.setSize(P,T),l!==null&&l.setSize(P,T);for(let m=0;m<C.length;m++){let M=C[m];M.setSize&&M.setSize(P,T)}},this.setEffects=function(P){C=P,b=C.length>0&&C[0].isRenderPass===!0;let T=o.width,m=o.height;C.length>0&&a===null&&(a=new ai(T,m,{type:Ri,depthBuffer:!1,stencilBuffer:!1}),l=new ai(T,m,{type:Ri,depthBuffer:!1,stencilBuffer:!1}));let M=s===!0&&C.some(L=>L.needsDepthTexture===!0);M!==(o.depthTexture!==null)&&(M===!0&&c===null&&(c=new gs(T,m),r===!0&&(c.format=ys,c.type=hr)),o.dispose(),o.depthTexture=M?c:null,o.resolveDepthBuffer=M,o.storeMultisampledDepthBuffer=M);for(let L=0;L<C.length;L++){let S=C[L];S.setSize&&S.setSize(T,m),M&&S.needsDepthTexture===!0&&S.setDepthTexture&&S.setDepthTexture(c)}},this.begin=function(P,T){if(g||P.toneMapping===Yi&&C.length===0)return!1;if(y=T,T!==null){let m=T.width,M=T.height;(o.width!==m||o.height!==M)&&this.setSize(m,M)}return b===!1&&P.setRenderTarget(o),d=P.toneMapping,P.toneMapping=Yi,!0},this.hasRenderPass=function(){return b},this.end=function(P,T){P.toneMapping=d,g=!0;let m=o,M=a;for(let L=0;L<C.length;L++){let S=C[L];S.enabled!==!1&&(S.render(P,M,m,T),S.needsSwap!==!1&&(m=M,M=M===a?l:a))}if(_!==P.outputColorSpace||x!==P.toneMapping){_=P.outputColorSpace,x=P.toneMapping,f.defines={},we.getTransfer(_)===Ne&&(f.defines.SRGB_TRANSFER="");let L=Bv[x];L&&(f.defines[L]=""),f.needsUpdate=!0}f.uniforms.tDiffuse.value=m.texture,P.setRenderTarget(y),P.render(u,p),y=null,g=!1},this.isCompositing=function(){return g},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),f.dispose()}}var um=new Zn,fm=new gs(1,1),dm=new ia(1),pm=new Yo,mm=new Al,gm=new na,Wp=[],Xp=[],qp=new Float32Array(16),$p=new Float32Array(9),Yp=new Float32Array(4);function mo(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=Wp[s];if(r===void 0&&(r=new Float32Array(s),Wp[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function xn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function yn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function kc(i,t){let e=Xp[t];e===void 0&&(e=new Int32Array(t),Xp[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function zv(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function Vv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(xn(e,t))return;i.uniform2fv(this.addr,t),yn(e,t)}}function Hv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(xn(e,t))return;i.uniform3fv(this.addr,t),yn(e,t)}}function Gv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(xn(e,t))return;i.uniform4fv(this.addr,t),yn(e,t)}}function Wv(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(xn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),yn(e,t)}else{if(xn(e,n))return;Yp.set(n),i.uniformMatrix2fv(this.addr,!1,Yp),yn(e,n)}}function Xv(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(xn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),yn(e,t)}else{if(xn(e,n))return;$p.set(n),i.uniformMatrix3fv(this.addr,!1,$p),yn(e,n)}}function qv(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(xn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),yn(e,t)}else{if(xn(e,n))return;qp.set(n),i.uniformMatrix4fv(this.addr,!1,qp),yn(e,n)}}function $v(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function Yv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(xn(e,t))return;i.uniform2iv(this.addr,t),yn(e,t)}}function Zv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(xn(e,t))return;i.uniform3iv(this.addr,t),yn(e,t)}}function Jv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(xn(e,t))return;i.uniform4iv(this.addr,t),yn(e,t)}}function Kv(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function jv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(xn(e,t))return;i.uniform2uiv(this.addr,t),yn(e,t)}}function Qv(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(xn(e,t))return;i.uniform3uiv(this.addr,t),yn(e,t)}}function tM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(xn(e,t))return;i.uniform4uiv(this.addr,t),yn(e,t)}}function zc(i){return i.version===0&&(i.compareFunction=Tu,i.needsUpdate=!0),i}function eM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=zc(fm):r=um,e.setTexture2D(t||r,s)}function nM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||mm,s)}function iM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=zc(dm):r=gm,e.setTextureCube(t||r,s)}function sM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||pm,s)}function rM(i){switch(i){case 5126:return zv;case 35664:return Vv;case 35665:return Hv;case 35666:return Gv;case 35674:return Wv;case 35675:return Xv;case 35676:return qv;case 5124:case 35670:return $v;case 35667:case 35671:return Yv;case 35668:case 35672:return Zv;case 35669:case 35673:return Jv;case 5125:return Kv;case 36294:return jv;case 36295:return Qv;case 36296:return tM;case 35678:case 36198:case 36298:case 36306:case 35682:return eM;case 35679:case 36299:case 36307:return nM;case 35680:case 36300:case 36308:case 36293:return iM;case 36289:case 36303:case 36311:case 36292:return sM}}function oM(i,t){i.uniform1fv(this.addr,t)}function aM(i,t){let e=mo(t,this.size,2);i.uniform2fv(this.addr,e)}function lM(i,t){let e=mo(t,this.size,3);i.uniform3fv(this.addr,e)}function cM(i,t){let e=mo(t,this.size,4);i.uniform4fv(this.addr,e)}function hM(i,t){let e=mo(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function uM(i,t){let e=mo(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function fM(i,t){let e=mo(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function dM(i,t){i.uniform1iv(this.addr,t)}function pM(i,t){i.uniform2iv(this.addr,t)}function mM(i,t){i.uniform3iv(this.addr,t)}function gM(i,t){i.uniform4iv(this.addr,t)}function _M(i,t){i.uniform1uiv(this.addr,t)}function xM(i,t){i.uniform2uiv(this.addr,t)}function yM(i,t){i.uniform3uiv(this.addr,t)}function vM(i,t){i.uniform4uiv(this.addr,t)}function MM(i,t,e){let n=this.cache,s=t.length,r=kc(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=zc(fm):o=um;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function SM(i,t,e){let n=this.cache,s=t.length,r=kc(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||mm,r[o])}function bM(i,t,e){let n=this.cache,s=t.length,r=kc(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=zc(dm):o=gm;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function wM(i,t,e){let n=this.cache,s=t.length,r=kc(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||pm,r[o])}function EM(i){switch(i){case 5126:return oM;case 35664:return aM;case 35665:return lM;case 35666:return cM;case 35674:return hM;case 35675:return uM;case 35676:return fM;case 5124:case 35670:return dM;case 35667:case 35671:return pM;case 35668:case 35672:return mM;case 35669:case 35673:return gM;case 5125:return _M;case 36294:return xM;case 36295:return yM;case 36296:return vM;case 35678:case 36198:case 36298:case 36306:case 35682:return MM;case 35679:case 36299:case 36307:return SM;case 35680:case 36300:case 36308:case 36293:return bM;case 36289:case 36303:case 36311:case 36292:return wM}}var ku=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=rM(e.type)}},zu=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=EM(e.type)}},Vu=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},Ou=/(\w+)(\])?(\[|\.)?/g;function Zp(i,t){i.seq.push(t),i.map[t.id]=t}function TM(i,t,e){let n=i.name,s=n.length;for(Ou.lastIndex=0;;){let r=Ou.exec(n),o=Ou.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){Zp(e,c===void 0?new ku(a,i,t):new zu(a,i,t));break}else{let f=e.map[a];f===void 0&&(f=new Vu(a),Zp(e,f)),e=f}}}var po=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);TM(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function Jp(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var AM=37297,RM=0;function CM(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var Kp=new ce;function PM(i){we._getMatrix(Kp,we.workingColorSpace,i);let t=`mat3( ${Kp.elements.map(e=>e.toFixed(4))} )`;switch(we.getTransfer(i)){case qo:return[t,"LinearTransferOETF"];case Ne:return[t,"sRGBTransferOETF"];default:return te("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function jp(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+CM(i.getShaderSource(t),a)}else return r}function IM(i,t){let e=PM(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var LM={[hu]:"Linear",[uu]:"Reinhard",[fu]:"Cineon",[du]:"ACESFilmic",[mu]:"AgX",[gu]:"Neutral",[pu]:"Custom"};function DM(i,t){let e=LM[t];return e===void 0?(te("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var Fc=new $;function NM(){we.getLuminanceCoefficients(Fc);let i=Fc.x.toFixed(4),t=Fc.y.toFixed(4),e=Fc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function UM(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Ea).join(`
`)}function FM(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function OM(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Ea(i){return i!==""}function Qp(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function tm(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var BM=/^[ \t]*#include +<([\w\d./]+)>/gm;function Hu(i){return i.replace(BM,kM)}function kM(i,t){let e=xe[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return Hu(e)}var zM=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function em(i){return i.replace(zM,VM)}function VM(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function nm(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var HM={[ga]:"SHADOWMAP_TYPE_PCF",[lo]:"SHADOWMAP_TYPE_VSM"};function GM(i){return HM[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var WM={[ho]:"ENVMAP_MODE_REFRACTION"};function XM(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":WM[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var qM={[$l]:"ENVMAP_BLENDING_MULTIPLY",[xp]:"ENVMAP_BLENDING_MIX",[yp]:"ENVMAP_BLENDING_ADD"};function $M(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":qM[i.combine]||"ENVMAP_BLENDING_NONE"}function YM(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=GM(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=XM(e),f=$M(e),u=UM(e),p=FM(r),_=s.createProgram(),x,g,d=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(x=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p].filter(Ea).join(`
`),x.length>0&&(x+=`
`),g=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p].filter(Ea).join(`
`),g.length>0&&(g+=`
`)):(x=[nm(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+h:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Ea).join(`
`),g=[nm(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+h:"",e.envMap?"#define "+f:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Yi?"#define TONE_MAPPING":"",e.toneMapping!==Yi?xe.tonemapping_pars_fragment:"",e.toneMapping!==Yi?DM("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",xe.colorspace_pars_fragment,IM("linearToOutputTexel",e.outputColorSpace),NM(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Ea).join(`
`)),o=Hu(o),o=Qp(o,e),o=tm(o,e),a=Hu(a),a=Qp(a,e),a=tm(a,e),o=em(o),a=em(a),e.isRawShaderMaterial!==!0&&(d=`#version 300 es
`,x=[u,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+x,g=["#define varying in",e.glslVersion===Au?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===Au?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+g);let y=d+x+o,C=d+g+a,b=Jp(s,s.VERTEX_SHADER,y),P=Jp(s,s.FRAGMENT_SHADER,C);s.attachShader(_,b),s.attachShader(_,P),e.index0AttributeName!==void 0?s.bindAttribLocation(_,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(_,0,"position"),s.linkProgram(_);function T(S){if(i.debug.checkShaderErrors){let R=s.getProgramInfoLog(_)||"",F=s.getShaderInfoLog(b)||"",B=s.getShaderInfoLog(P)||"",D=R.trim(),V=F.trim(),X=B.trim(),H=!0,K=!0;if(s.getProgramParameter(_,s.LINK_STATUS)===!1)if(H=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,_,b,P);else{let q=jp(s,b,"vertex"),Z=jp(s,P,"fragment");le("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(_,s.VALIDATE_STATUS)+`

Material Name: `+S.name+`
Material Type: `+S.type+`

Program Info Log: `+D+`
`+q+`
`+Z)}else D!==""?te("WebGLProgram: Program Info Log:",D):(V===""||X==="")&&(K=!1);K&&(S.diagnostics={runnable:H,programLog:D,vertexShader:{log:V,prefix:x},fragmentShader:{log:X,prefix:g}})}s.deleteShader(b),s.deleteShader(P),m=new po(s,_),M=OM(s,_)}let m;this.getUniforms=function(){return m===void 0&&T(this),m};let M;this.getAttributes=function(){return M===void 0&&T(this),M};let L=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return L===!1&&(L=s.getProgramParameter(_,AM)),L},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(_),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=RM++,this.cacheKey=t,this.usedTimes=1,this.program=_,this.vertexShader=b,this.fragmentShader=P,this}var ZM=0,Gu=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new Wu(t),e.set(t,n)),n}},Wu=class{constructor(t){this.id=ZM++,this.code=t,this.usedTimes=0}};function JM(i){return i===Gs||i===Sa||i===ba}function KM(i,t,e,n,s,r){let o=new Zo,a=new Gu,l=new Set,c=[],h=new Map,f=n.logarithmicDepthBuffer,u={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function p(m){return l.add(m),m===0?"uv":`uv${m}`}function _(m,M,L,S,R,F){let B=S.fog,D=R.geometry,V=m.isMeshStandardMaterial||m.isMeshLambertMaterial||m.isMeshPhongMaterial?S.environment:null,X=m.isMeshStandardMaterial||m.isMeshLambertMaterial&&!m.envMap||m.isMeshPhongMaterial&&!m.envMap,H=t.get(m.envMap||V,X),K=u[m.type],q=n.precision;m.precision!==null&&(q=n.getMaxPrecision(m.precision),q!==m.precision&&te("WebGLProgram.getParameters:",m.precision,"not supported, using",q,"instead."));let Z=D.morphAttributes.position||D.morphAttributes.normal||D.morphAttributes.color,et=Z!==void 0?Z.length:0,ht=0;D.morphAttributes.position!==void 0&&(ht=1),D.morphAttributes.normal!==void 0&&(ht=2),D.morphAttributes.color!==void 0&&(ht=3);let ut,tt,_t,yt;if(K){let Lt=Ji[K];ut=Lt.vertexShader,tt=Lt.fragmentShader}else{ut=m.vertexShader,tt=m.fragmentShader;let Lt=a.getVertexShaderStage(m),pe=a.getFragmentShaderStage(m);a.update(m,Lt,pe),_t=Lt.id,yt=pe.id}let vt=i.getRenderTarget(),Mt=i.state.buffers.depth.getReversed(),Zt=R.isInstancedMesh===!0,oe=R.isBatchedMesh===!0,Gt=!!m.map,ue=!!m.matcap,fe=!!H,ne=fe&&H.isPMREMTexture===!0,We=!!m.aoMap,ke=!!m.lightMap,Ve=!!m.bumpMap&&m.wireframe===!1,Ce=!!m.normalMap,gn=!!m.displacementMap,ot=!!m.emissiveMap,At=!!m.metalnessMap,Nt=!!m.roughnessMap,Jt=m.anisotropy>0,k=m.clearcoat>0,ft=m.diffuseRoughness>0,zt=m.dispersion>0,Bt=m.retroreflectivity>0,mt=m.iridescence>0,Te=m.sheen>0,$t=m.transmission>0,Qt=Jt&&!!m.anisotropyMap,N=k&&!!m.clearcoatMap,w=k&&!!m.clearcoatNormalMap,Y=k&&!!m.clearcoatRoughnessMap,pt=ft&&!!m.diffuseRoughnessMap,lt=mt&&!!m.iridescenceMap,bt=mt&&!!m.iridescenceThicknessMap,wt=Te&&!!m.sheenColorMap,it=Te&&!!m.sheenRoughnessMap,rt=!!m.specularMap,xt=!!m.specularColorMap,z=!!m.specularIntensityMap,at=$t&&!!m.transmissionMap,st=$t&&!!m.thicknessMap,Ct=!!m.gradientMap,St=!!m.alphaMap,Rt=m.alphaTest>0,Kt=!!m.alphaHash,ie=!!m.extensions,dt=Yi;m.toneMapped&&(vt===null||vt.isXRRenderTarget===!0)&&(dt=i.toneMapping);let Wt=ne?H.isCompressedCubeTexture?H.image[0].mipmaps:H.mipmaps:null,se={shaderID:K,shaderType:m.type,shaderName:m.name,vertexShader:ut,fragmentShader:tt,defines:m.defines,customVertexShaderID:_t,customFragmentShaderID:yt,isRawShaderMaterial:m.isRawShaderMaterial===!0,glslVersion:m.glslVersion,precision:q,batching:oe,batchingColor:oe&&R._colorsTexture!==null,instancing:Zt,instancingColor:Zt&&R.instanceColor!==null,instancingMorph:Zt&&R.morphTexture!==null,outputColorSpace:vt===null?i.outputColorSpace:vt.isXRRenderTarget===!0?vt.texture.colorSpace:we.workingColorSpace,alphaToCoverage:!!m.alphaToCoverage,map:Gt,matcap:ue,envMap:fe,envMapMode:fe&&H.mapping,envMapPMREM:ne,envMapMaxLod:ne?Wt.length-1:null,envMapSize:ne?Wt[0].width:null,aoMap:We,lightMap:ke,bumpMap:Ve,normalMap:Ce,displacementMap:gn,emissiveMap:ot,normalMapObjectSpace:Ce&&m.normalMapType===Sp,normalMapTangentSpace:Ce&&m.normalMapType===Nc,packedNormalMap:Ce&&m.normalMapType===Nc&&JM(m.normalMap.format),metalnessMap:At,roughnessMap:Nt,anisotropy:Jt,anisotropyMap:Qt,clearcoat:k,clearcoatMap:N,clearcoatNormalMap:w,clearcoatRoughnessMap:Y,diffuseRoughness:ft,diffuseRoughnessMap:pt,dispersion:zt,retroreflection:Bt,iridescence:mt,iridescenceMap:lt,iridescenceThicknessMap:bt,sheen:Te,sheenColorMap:wt,sheenRoughnessMap:it,specularMap:rt,specularColorMap:xt,specularIntensityMap:z,transmission:$t,transmissionMap:at,thicknessMap:st,gradientMap:Ct,opaque:m.transparent===!1&&m.blending===co&&m.alphaToCoverage===!1,alphaMap:St,alphaTest:Rt,alphaHash:Kt,combine:m.combine,mapUv:Gt&&p(m.map.channel),aoMapUv:We&&p(m.aoMap.channel),lightMapUv:ke&&p(m.lightMap.channel),bumpMapUv:Ve&&p(m.bumpMap.channel),normalMapUv:Ce&&p(m.normalMap.channel),displacementMapUv:gn&&p(m.displacementMap.channel),emissiveMapUv:ot&&p(m.emissiveMap.channel),metalnessMapUv:At&&p(m.metalnessMap.channel),roughnessMapUv:Nt&&p(m.roughnessMap.channel),anisotropyMapUv:Qt&&p(m.anisotropyMap.channel),clearcoatMapUv:N&&p(m.clearcoatMap.channel),clearcoatNormalMapUv:w&&p(m.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:Y&&p(m.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:pt&&p(m.diffuseRoughnessMap.channel),iridescenceMapUv:lt&&p(m.iridescenceMap.channel),iridescenceThicknessMapUv:bt&&p(m.iridescenceThicknessMap.channel),sheenColorMapUv:wt&&p(m.sheenColorMap.channel),sheenRoughnessMapUv:it&&p(m.sheenRoughnessMap.channel),specularMapUv:rt&&p(m.specularMap.channel),specularColorMapUv:xt&&p(m.specularColorMap.channel),specularIntensityMapUv:z&&p(m.specularIntensityMap.channel),transmissionMapUv:at&&p(m.transmissionMap.channel),thicknessMapUv:st&&p(m.thicknessMap.channel),alphaMapUv:St&&p(m.alphaMap.channel),vertexTangents:!!D.attributes.tangent&&(Ce||Jt),vertexNormals:!!D.attributes.normal,vertexColors:m.vertexColors,vertexAlphas:m.vertexColors===!0&&!!D.attributes.color&&D.attributes.color.itemSize===4,pointsUvs:R.isPoints===!0&&!!D.attributes.uv&&(Gt||St),fog:!!B,useFog:m.fog===!0,fogExp2:!!B&&B.isFogExp2,flatShading:m.wireframe===!1&&(m.flatShading===!0||D.attributes.normal===void 0&&Ce===!1&&(m.isMeshLambertMaterial||m.isMeshPhongMaterial||m.isMeshStandardMaterial||m.isMeshPhysicalMaterial)),sizeAttenuation:m.sizeAttenuation===!0,logarithmicDepthBuffer:f,reversedDepthBuffer:Mt,skinning:R.isSkinnedMesh===!0,hasPositionAttribute:D.attributes.position!==void 0,morphTargets:D.morphAttributes.position!==void 0,morphNormals:D.morphAttributes.normal!==void 0,morphColors:D.morphAttributes.color!==void 0,morphTargetsCount:et,morphTextureStride:ht,numSunLights:M.sun.length,numDirLights:M.directional.length,numPointLights:M.point.length,numSpotLights:M.spot.length,numSpotLightMaps:M.spotLightMap.length,numRectAreaLights:M.rectArea.length,numHemiLights:M.hemi.length,numSunLightShadows:M.sunShadowMap.length,numDirLightShadows:M.directionalShadowMap.length,numPointLightShadows:M.pointShadowMap.length,numSpotLightShadows:M.spotShadowMap.length,numSpotLightShadowsWithMaps:M.numSpotLightShadowsWithMaps,numLightProbes:M.numLightProbes,numLightProbeGrids:F.filter(Lt=>Lt.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:m.dithering,shadowMapEnabled:i.shadowMap.enabled&&L.length>0,shadowMapType:i.shadowMap.type,toneMapping:dt,decodeVideoTexture:Gt&&m.map.isVideoTexture===!0&&we.getTransfer(m.map.colorSpace)===Ne,decodeVideoTextureEmissive:ot&&m.emissiveMap.isVideoTexture===!0&&we.getTransfer(m.emissiveMap.colorSpace)===Ne,premultipliedAlpha:m.premultipliedAlpha,doubleSided:m.side===$i,flipSided:m.side===Nn,useDepthPacking:m.depthPacking>=0,depthPacking:m.depthPacking||0,index0AttributeName:m.index0AttributeName,extensionClipCullDistance:ie&&m.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(ie&&m.extensions.multiDraw===!0||oe)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:m.customProgramCacheKey()};return se.vertexUv1s=l.has(1),se.vertexUv2s=l.has(2),se.vertexUv3s=l.has(3),l.clear(),se}function x(m){let M=[];if(m.shaderID?M.push(m.shaderID):(M.push(m.customVertexShaderID),M.push(m.customFragmentShaderID)),m.defines!==void 0)for(let L in m.defines)M.push(L),M.push(m.defines[L]);return m.isRawShaderMaterial===!1&&(g(M,m),d(M,m),M.push(i.outputColorSpace)),M.push(m.customProgramCacheKey),M.join()}function g(m,M){m.push(M.precision),m.push(M.outputColorSpace),m.push(M.envMapMode),m.push(M.envMapPMREM),m.push(M.envMapMaxLod),m.push(M.envMapSize),m.push(M.mapUv),m.push(M.alphaMapUv),m.push(M.lightMapUv),m.push(M.aoMapUv),m.push(M.bumpMapUv),m.push(M.normalMapUv),m.push(M.displacementMapUv),m.push(M.emissiveMapUv),m.push(M.metalnessMapUv),m.push(M.roughnessMapUv),m.push(M.anisotropyMapUv),m.push(M.clearcoatMapUv),m.push(M.clearcoatNormalMapUv),m.push(M.clearcoatRoughnessMapUv),m.push(M.diffuseRoughnessMapUv),m.push(M.iridescenceMapUv),m.push(M.iridescenceThicknessMapUv),m.push(M.sheenColorMapUv),m.push(M.sheenRoughnessMapUv),m.push(M.specularMapUv),m.push(M.specularColorMapUv),m.push(M.specularIntensityMapUv),m.push(M.transmissionMapUv),m.push(M.thicknessMapUv),m.push(M.combine),m.push(M.fogExp2),m.push(M.sizeAttenuation),m.push(M.morphTargetsCount),m.push(M.numSunLights),m.push(M.numDirLights),m.push(M.numPointLights),m.push(M.numSpotLights),m.push(M.numSpotLightMaps),m.push(M.numHemiLights),m.push(M.numRectAreaLights),m.push(M.numSunLightShadows),m.push(M.numDirLightShadows),m.push(M.numPointLightShadows),m.push(M.numSpotLightShadows),m.push(M.numSpotLightShadowsWithMaps),m.push(M.numLightProbes),m.push(M.numLightProbeGrids),m.push(M.shadowMapType),m.push(M.toneMapping),m.push(M.numClippingPlanes),m.push(M.numClipIntersection),m.push(M.depthPacking)}function d(m,M){o.disableAll(),M.instancing&&o.enable(0),M.instancingColor&&o.enable(1),M.instancingMorph&&o.enable(2),M.matcap&&o.enable(3),M.envMap&&o.enable(4),M.normalMapObjectSpace&&o.enable(5),M.normalMapTangentSpace&&o.enable(6),M.clearcoat&&o.enable(7),M.iridescence&&o.enable(8),M.alphaTest&&o.enable(9),M.vertexColors&&o.enable(10),M.vertexAlphas&&o.enable(11),M.vertexUv1s&&o.enable(12),M.vertexUv2s&&o.enable(13),M.vertexUv3s&&o.enable(14),M.vertexTangents&&o.enable(15),M.anisotropy&&o.enable(16),M.alphaHash&&o.enable(17),M.batching&&o.enable(18),M.dispersion&&o.enable(19),M.retroreflection&&o.enable(24),M.diffuseRoughness&&o.enable(25),M.batchingColor&&o.enable(20),M.gradientMap&&o.enable(21),M.packedNormalMap&&o.enable(22),M.vertexNormals&&o.enable(23),m.push(o.mask),o.disableAll(),M.fog&&o.enable(0),M.useFog&&o.enable(1),M.flatShading&&o.enable(2),M.logarithmicDepthBuffer&&o.enable(3),M.reversedDepthBuffer&&o.enable(4),M.skinning&&o.enable(5),M.morphTargets&&o.enable(6),M.morphNormals&&o.enable(7),M.morphColors&&o.enable(8),M.premultipliedAlpha&&o.enable(9),M.shadowMapEnabled&&o.enable(10),M.doubleSided&&o.enable(11),M.flipSided&&o.enable(12),M.useDepthPacking&&o.enable(13),M.dithering&&o.enable(14),M.transmission&&o.enable(15),M.sheen&&o.enable(16),M.opaque&&o.enable(17),M.pointsUvs&&o.enable(18),M.decodeVideoTexture&&o.enable(19),M.decodeVideoTextureEmissive&&o.enable(20),M.alphaToCoverage&&o.enable(21),M.numLightProbeGrids>0&&o.enable(22),M.hasPositionAttribute&&o.enable(23),m.push(o.mask)}function y(m){let M=u[m.type],L;if(M){let S=Ji[M];L=Op.clone(S.uniforms)}else L=m.uniforms;return L}function C(m,M){let L=h.get(M);return L!==void 0?++L.usedTimes:(L=new YM(i,M,m,s),c.push(L),h.set(M,L)),L}function b(m){if(--m.usedTimes===0){let M=c.indexOf(m);c[M]=c[c.length-1],c.pop(),h.delete(m.cacheKey),m.destroy()}}function P(m){a.remove(m)}function T(){a.dispose()}return{getParameters:_,getProgramCacheKey:x,getUniforms:y,acquireProgram:C,releaseProgram:b,releaseShaderCache:P,programs:c,dispose:T}}function jM(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function QM(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function im(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function sm(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(u){let p=0;return u.isInstancedMesh&&(p+=2),u.isSkinnedMesh&&(p+=1),p}function a(u,p,_,x,g,d){let y=i[t];return y===void 0?(y={id:u.id,object:u,geometry:p,material:_,materialVariant:o(u),groupOrder:x,renderOrder:u.renderOrder,z:g,group:d},i[t]=y):(y.id=u.id,y.object=u,y.geometry=p,y.material=_,y.materialVariant=o(u),y.groupOrder=x,y.renderOrder=u.renderOrder,y.z=g,y.group=d),t++,y}function l(u,p,_,x,g,d,y){y.reversedDepth===!0&&(g=-g);let C=a(u,p,_,x,g,d);_.transmission>0?n.push(C):_.transparent===!0?s.push(C):e.push(C)}function c(u,p,_,x,g,d){let y=a(u,p,_,x,g,d);_.transmission>0?n.unshift(y):_.transparent===!0?s.unshift(y):e.unshift(y)}function h(u,p){e.length>1&&e.sort(u||QM),n.length>1&&n.sort(p||im),s.length>1&&s.sort(p||im)}function f(){for(let u=t,p=i.length;u<p;u++){let _=i[u];if(_.id===null)break;_.id=null,_.object=null,_.geometry=null,_.material=null,_.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:f,sort:h}}function tS(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new sm,i.set(n,[o])):s>=r.length?(o=new sm,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function eS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new $,color:new ge};break;case"SpotLight":e={position:new $,direction:new $,color:new ge,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new $,color:new ge,distance:0,decay:0};break;case"HemisphereLight":e={direction:new $,skyColor:new ge,groundColor:new ge};break;case"RectAreaLight":e={color:new ge,position:new $,halfWidth:new $,halfHeight:new $};break}return i[t.id]=e,e}}}function nS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new re,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var iS=0;function sS(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function rS(i){let t=new eS,e=nS(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new $);let s=new $,r=new Ie,o=new Ie;function a(c){let h=0,f=0,u=0;for(let F=0;F<9;F++)n.probe[F].set(0,0,0);let p=0,_=0,x=0,g=0,d=0,y=0,C=0,b=0,P=0,T=0,m=0,M=0,L=0,S=0;c.sort(sS);for(let F=0,B=c.length;F<B;F++){let D=c[F],V=D.color,X=D.intensity,H=D.distance,K=null;if(D.shadow&&D.shadow.map&&(D.shadow.map.texture.format===Gs?K=D.shadow.map.texture:K=D.shadow.map.depthTexture||D.shadow.map.texture),D.isAmbientLight)h+=V.r*X,f+=V.g*X,u+=V.b*X;else if(D.isLightProbe){for(let q=0;q<9;q++)n.probe[q].addScaledVector(D.sh.coefficients[q],X);S++}else if(D.isSunLight){let q=t.get(D);if(q.color.copy(D.color).multiplyScalar(D.intensity),D.castShadow){let Z=D.shadow,et=e.get(D);et.shadowIntensity=Z.intensity,et.shadowBias=Z.bias,et.shadowNormalBias=Z.normalBias,et.shadowRadius=Z.radius,et.shadowMapSize.copy(Z.mapSize).multiply(Z.getFrameExtents()),n.sunShadow[_]=et,n.sunShadowMap[_]=K;let ht=Z.getViewportCount();for(let ut=0;ut<ht;ut++)n.sunShadowMatrix[x+ut]=Z.getMatrix(ut),n.sunShadowCascade[x+ut]=Z._cascadeData[ut];x+=ht,_++}n.sun[p]=q,p++}else if(D.isDirectionalLight){let q=t.get(D);if(q.color.copy(D.color).multiplyScalar(D.intensity),D.castShadow){let Z=D.shadow,et=e.get(D);et.shadowIntensity=Z.intensity,et.shadowBias=Z.bias,et.shadowNormalBias=Z.normalBias,et.shadowRadius=Z.radius,et.shadowMapSize=Z.mapSize,n.directionalShadow[g]=et,n.directionalShadowMap[g]=K,n.directionalShadowMatrix[g]=D.shadow.matrix,P++}n.directional[g]=q,g++}else if(D.isSpotLight){let q=t.get(D);q.position.setFromMatrixPosition(D.matrixWorld),q.color.copy(V).multiplyScalar(X),q.distance=H,q.coneCos=Math.cos(D.angle),q.penumbraCos=Math.cos(D.angle*(1-D.penumbra)),q.decay=D.decay,n.spot[y]=q;let Z=D.shadow;if(D.map&&(n.spotLightMap[M]=D.map,M++,Z.updateMatrices(D),D.castShadow&&L++),n.spotLightMatrix[y]=Z.matrix,D.castShadow){let et=e.get(D);et.shadowIntensity=Z.intensity,et.shadowBias=Z.bias,et.shadowNormalBias=Z.normalBias,et.shadowRadius=Z.radius,et.shadowMapSize=Z.mapSize,n.spotShadow[y]=et,n.spotShadowMap[y]=K,m++}y++}else if(D.isRectAreaLight){let q=t.get(D);q.color.copy(V).multiplyScalar(X),q.halfWidth.set(D.width*.5,0,0),q.halfHeight.set(0,D.height*.5,0),n.rectArea[C]=q,C++}else if(D.isPointLight){let q=t.get(D);if(q.color.copy(D.color).multiplyScalar(D.intensity),q.distance=D.distance,q.decay=D.decay,D.castShadow){let Z=D.shadow,et=e.get(D);et.shadowIntensity=Z.intensity,et.shadowBias=Z.bias,et.shadowNormalBias=Z.normalBias,et.shadowRadius=Z.radius,et.shadowMapSize=Z.mapSize,et.shadowCameraNear=Z.camera.near,et.shadowCameraFar=Z.camera.far,n.pointShadow[d]=et,n.pointShadowMap[d]=K,n.pointShadowMatrix[d]=D.shadow.matrix,T++}n.point[d]=q,d++}else if(D.isHemisphereLight){let q=t.get(D);q.skyColor.copy(D.color).multiplyScalar(X),q.groundColor.copy(D.groundColor).multiplyScalar(X),n.hemi[b]=q,b++}}C>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Ft.LTC_FLOAT_1,n.rectAreaLTC2=Ft.LTC_FLOAT_2):(n.rectAreaLTC1=Ft.LTC_HALF_1,n.rectAreaLTC2=Ft.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=f,n.ambient[2]=u;let R=n.hash;(R.sunLength!==p||R.directionalLength!==g||R.pointLength!==d||R.spotLength!==y||R.rectAreaLength!==C||R.hemiLength!==b||R.numSunShadows!==_||R.numDirectionalShadows!==P||R.numPointShadows!==T||R.numSpotShadows!==m||R.numSpotMaps!==M||R.numLightProbes!==S)&&(n.sun.length=p,n.directional.length=g,n.spot.length=y,n.rectArea.length=C,n.point.length=d,n.hemi.length=b,n.sunShadow.length=_,n.sunShadowMap.length=_,n.sunShadowMatrix.length=x,n.sunShadowCascade.length=x,n.directionalShadow.length=P,n.directionalShadowMap.length=P,n.directionalShadowMatrix.length=P,n.pointShadow.length=T,n.pointShadowMap.length=T,n.pointShadowMatrix.length=T,n.spotShadow.length=m,n.spotShadowMap.length=m,n.spotLightMatrix.length=m+M-L,n.spotLightMap.length=M,n.numSpotLightShadowsWithMaps=L,n.numLightProbes=S,R.sunLength=p,R.directionalLength=g,R.pointLength=d,R.spotLength=y,R.rectAreaLength=C,R.hemiLength=b,R.numSunShadows=_,R.numDirectionalShadows=P,R.numPointShadows=T,R.numSpotShadows=m,R.numSpotMaps=M,R.numLightProbes=S,n.version=iS++)}function l(c,h){let f=0,u=0,p=0,_=0,x=0,g=0,d=h.matrixWorldInverse;for(let y=0,C=c.length;y<C;y++){let b=c[y];if(b.isSunLight){let P=n.sun[f];P.direction.setFromMatrixPosition(b.matrixWorld),P.direction.transformDirection(d),f++}else if(b.isDirectionalLight){let P=n.directional[u];P.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),P.direction.sub(s),P.direction.transformDirection(d),u++}else if(b.isSpotLight){let P=n.spot[_];P.position.setFromMatrixPosition(b.matrixWorld),P.position.applyMatrix4(d),P.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),P.direction.sub(s),P.direction.transformDirection(d),_++}else if(b.isRectAreaLight){let P=n.rectArea[x];P.position.setFromMatrixPosition(b.matrixWorld),P.position.applyMatrix4(d),o.identity(),r.copy(b.matrixWorld),r.premultiply(d),o.extractRotation(r),P.halfWidth.set(b.width*.5,0,0),P.halfHeight.set(0,b.height*.5,0),P.halfWidth.applyMatrix4(o),P.halfHeight.applyMatrix4(o),x++}else if(b.isPointLight){let P=n.point[p];P.position.setFromMatrixPosition(b.matrixWorld),P.position.applyMatrix4(d),p++}else if(b.isHemisphereLight){let P=n.hemi[g];P.direction.setFromMatrixPosition(b.matrixWorld),P.direction.transformDirection(d),g++}}}return{setup:a,setupView:l,state:n}}function rm(i){let t=new rS(i),e=[],n=[],s=[];function r(f){h.camera=f,e.length=0,n.length=0,s.length=0}function o(f){f.isLightProbeGrid?s.push(f):e.push(f)}function a(f){n.push(f)}function l(){t.setup(e),s.sort((f,u)=>f.priority-u.priority||f.id-u.id)}function c(f){t.setupView(e,f)}let h={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function oS(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new rm(i),t.set(s,[a])):r>=o.length?(a=new rm(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var aS=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,lS=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,cS=[new $(1,0,0),new $(-1,0,0),new $(0,1,0),new $(0,-1,0),new $(0,0,1),new $(0,0,-1)],hS=[new $(0,-1,0),new $(0,-1,0),new $(0,0,1),new $(0,0,-1),new $(0,-1,0),new $(0,-1,0)],om=new Ie,wa=new $,Bu=new $;function uS(i,t,e){let n=new Fs,s=new re,r=new re,o=new tn,a=new Dl,l=new Nl,c={},h=e.maxTextureSize,f={[Hs]:Nn,[Nn]:Hs,[$i]:$i},u=new qi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new re},radius:{value:4}},vertexShader:aS,fragmentShader:lS}),p=u.clone();p.defines.HORIZONTAL_PASS=1;let _=new $n;_.setAttribute("position",new Ei(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let x=new pn(_,u),g=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=ga;let d=this.type;this.render=function(T,m,M){if(g.enabled===!1||g.autoUpdate===!1&&g.needsUpdate===!1||T.length===0)return;this.type===Qd&&(te("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=ga);let L=i.getRenderTarget(),S=i.getActiveCubeFace(),R=i.getActiveMipmapLevel(),F=i.state;F.setBlending(ar),F.buffers.depth.getReversed()===!0?F.buffers.color.setClear(0,0,0,0):F.buffers.color.setClear(1,1,1,1),F.buffers.depth.setTest(!0),F.setScissorTest(!1);let B=d!==this.type;B&&m.traverse(function(D){D.material&&(Array.isArray(D.material)?D.material.forEach(V=>V.needsUpdate=!0):D.material.needsUpdate=!0)});for(let D=0,V=T.length;D<V;D++){let X=T[D],H=X.shadow;if(H===void 0){te("WebGLShadowMap:",X,"has no shadow.");continue}if(H.autoUpdate===!1&&H.needsUpdate===!1)continue;s.copy(H.mapSize);let K=H.getFrameExtents();s.multiply(K),r.copy(H.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/K.x),s.x=r.x*K.x,H.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/K.y),s.y=r.y*K.y,H.mapSize.y=r.y));let q=i.state.buffers.depth.getReversed();if(H.camera._reversedDepth=q,H.map===null||B===!0){if(H.map!==null&&(H.map.depthTexture!==null&&(H.map.depthTexture.dispose(),H.map.depthTexture=null),H.map.dispose()),this.type===lo){if(X.isPointLight){te("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}H.map=new ai(s.x,s.y,{format:Gs,type:Ri,minFilter:qn,magFilter:qn,generateMipmaps:!1}),H.map.texture.name=X.name+".shadowMap",H.map.depthTexture=new gs(s.x,s.y,gi),H.map.depthTexture.name=X.name+".shadowMapDepth",H.map.depthTexture.format=fs,H.map.depthTexture.compareFunction=null,H.map.depthTexture.minFilter=Cn,H.map.depthTexture.magFilter=Cn}else X.isPointLight?(H.map=new Ta(s.x),H.map.depthTexture=new ia(s.x,Ai)):(H.map=new ai(s.x,s.y),H.map.depthTexture=new gs(s.x,s.y,Ai)),H.map.depthTexture.name=X.name+".shadowMap",H.map.depthTexture.format=fs,this.type===ga?(H.map.depthTexture.compareFunction=q?Eu:wu,H.map.depthTexture.minFilter=qn,H.map.depthTexture.magFilter=qn):(H.map.depthTexture.compareFunction=null,H.map.depthTexture.minFilter=Cn,H.map.depthTexture.magFilter=Cn);H.camera.updateProjectionMatrix()}H.map.isWebGLCubeRenderTarget!==!0&&(H.map.width!==s.x||H.map.height!==s.y)&&H.map.setSize(s.x,s.y);let Z=H.map.isWebGLCubeRenderTarget?6:H.getViewportCount();X.isPointLight!==!0&&H.updateMatrices(X,M);let et=(H.camera.layers.mask&4294967294)!==0?H.camera.layers:M.layers;for(let ht=0;ht<Z;ht++){let ut=H.getCamera(ht);if(X.isPointLight){let tt=H.camera,_t=H.matrix,yt=X.distance||tt.far;yt!==tt.far&&(tt.far=yt,tt.updateProjectionMatrix()),wa.setFromMatrixPosition(X.matrixWorld),tt.position.copy(wa),Bu.copy(tt.position),Bu.add(cS[ht]),tt.up.copy(hS[ht]),tt.lookAt(Bu),tt.updateMatrixWorld(),_t.makeTranslation(-wa.x,-wa.y,-wa.z),om.multiplyMatrices(tt.projectionMatrix,tt.matrixWorldInverse),H._frustum.setFromProjectionMatrix(om,tt.coordinateSystem,tt.reversedDepth)}if(H.map.isWebGLCubeRenderTarget)i.setRenderTarget(H.map,ht),i.clear();else{ht===0&&(i.setRenderTarget(H.map),i.clear());let tt=H.getViewport(ht);o.set(r.x*tt.x,r.y*tt.y,r.x*tt.z,r.y*tt.w),F.viewport(o)}n=H.getFrustum(ht),b(m,M,ut,X,et,this.type)}H.isPointLightShadow!==!0&&this.type===lo&&y(H,M),H.needsUpdate=!1}d=this.type,g.needsUpdate=!1,i.setRenderTarget(L,S,R)};function y(T,m){let M=t.update(x);u.defines.VSM_SAMPLES!==T.blurSamples&&(u.defines.VSM_SAMPLES=T.blurSamples,p.defines.VSM_SAMPLES=T.blurSamples,u.needsUpdate=!0,p.needsUpdate=!0),T.mapPass===null?T.mapPass=new ai(s.x,s.y,{format:Gs,type:Ri}):(T.mapPass.width!==T.map.width||T.mapPass.height!==T.map.height)&&T.mapPass.setSize(T.map.width,T.map.height),u.uniforms.shadow_pass.value=T.map.depthTexture,u.uniforms.resolution.value.set(T.map.width,T.map.height),u.uniforms.radius.value=T.radius,i.setRenderTarget(T.mapPass),i.clear(),i.renderBufferDirect(m,null,M,u,x,null),p.uniforms.shadow_pass.value=T.mapPass.texture,p.uniforms.resolution.value.set(T.map.width,T.map.height),p.uniforms.radius.value=T.radius,i.setRenderTarget(T.map),i.clear(),i.renderBufferDirect(m,null,M,p,x,null)}function C(T,m,M,L){let S=null,R=M.isPointLight===!0?T.customDistanceMaterial:T.customDepthMaterial;if(R!==void 0)S=R;else if(S=M.isPointLight===!0?l:a,i.localClippingEnabled&&m.clipShadows===!0&&Array.isArray(m.clippingPlanes)&&m.clippingPlanes.length!==0||m.displacementMap&&m.displacementScale!==0||m.alphaMap&&m.alphaTest>0||m.map&&m.alphaTest>0||m.alphaToCoverage===!0){let F=S.uuid,B=m.uuid,D=c[F];D===void 0&&(D={},c[F]=D);let V=D[B];V===void 0&&(V=S.clone(),D[B]=V,m.addEventListener("dispose",P)),S=V}if(S.visible=m.visible,S.wireframe=m.wireframe,L===lo?S.side=m.shadowSide!==null?m.shadowSide:m.side:S.side=m.shadowSide!==null?m.shadowSide:f[m.side],S.alphaMap=m.alphaMap,S.alphaTest=m.alphaToCoverage===!0?.5:m.alphaTest,S.map=m.map,S.clipShadows=m.clipShadows,S.clippingPlanes=m.clippingPlanes,S.clipIntersection=m.clipIntersection,S.displacementMap=m.displacementMap,S.displacementScale=m.displacementScale,S.displacementBias=m.displacementBias,S.wireframeLinewidth=m.wireframeLinewidth,S.linewidth=m.linewidth,M.isPointLight===!0&&S.isMeshDistanceMaterial===!0){let F=i.properties.get(S);F.light=M}return S}function b(T,m,M,L,S,R){if(T.visible===!1)return;if(T.layers.test(S)&&(T.isMesh||T.isLine||T.isPoints)&&(T.castShadow||T.receiveShadow&&R===lo)&&(!T.frustumCulled||T.intersectsFrustum(n))){T.modelViewMatrix.multiplyMatrices(M.matrixWorldInverse,T.matrixWorld);let D=t.update(T),V=T.material;if(Array.isArray(V)){let X=D.groups;for(let H=0,K=X.length;H<K;H++){let q=X[H],Z=V[q.materialIndex];if(Z&&Z.visible){let et=C(T,Z,L,R);T.onBeforeShadow(i,T,m,M,D,et,q),i.renderBufferDirect(M,null,D,et,T,q),T.onAfterShadow(i,T,m,M,D,et,q)}}}else if(V.visible){let X=C(T,V,L,R);T.onBeforeShadow(i,T,m,M,D,X,null),i.renderBufferDirect(M,null,D,X,T,null),T.onAfterShadow(i,T,m,M,D,X,null)}}let B=T.children;for(let D=0,V=B.length;D<V;D++)b(B[D],m,M,L,S,R)}function P(T){T.target.removeEventListener("dispose",P);for(let M in c){let L=c[M],S=T.target.uuid;S in L&&(L[S].dispose(),delete L[S])}}}function fS(i,t){function e(){let z=!1,at=new tn,st=null,Ct=new tn(0,0,0,0);return{setMask:function(St){st!==St&&!z&&(i.colorMask(St,St,St,St),st=St)},setLocked:function(St){z=St},setClear:function(St,Rt,Kt,ie,dt){dt===!0&&(St*=ie,Rt*=ie,Kt*=ie),at.set(St,Rt,Kt,ie),Ct.equals(at)===!1&&(i.clearColor(St,Rt,Kt,ie),Ct.copy(at))},reset:function(){z=!1,st=null,Ct.set(-1,0,0,0)}}}function n(){let z=!1,at=!1,st=null,Ct=null,St=null;return{setReversed:function(Rt){if(at!==Rt){let Kt=t.get("EXT_clip_control");Rt?Kt.clipControlEXT(Kt.LOWER_LEFT_EXT,Kt.ZERO_TO_ONE_EXT):Kt.clipControlEXT(Kt.LOWER_LEFT_EXT,Kt.NEGATIVE_ONE_TO_ONE_EXT),at=Rt;let ie=St;St=null,this.setClear(ie)}},getReversed:function(){return at},setTest:function(Rt){Rt?Mt(i.DEPTH_TEST):Zt(i.DEPTH_TEST)},setMask:function(Rt){st!==Rt&&!z&&(i.depthMask(Rt),st=Rt)},setFunc:function(Rt){if(at&&(Rt=Dp[Rt]),Ct!==Rt){switch(Rt){case gl:i.depthFunc(i.NEVER);break;case _l:i.depthFunc(i.ALWAYS);break;case xl:i.depthFunc(i.LESS);break;case Kr:i.depthFunc(i.LEQUAL);break;case yl:i.depthFunc(i.EQUAL);break;case vl:i.depthFunc(i.GEQUAL);break;case jr:i.depthFunc(i.GREATER);break;case Ml:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Ct=Rt}},setLocked:function(Rt){z=Rt},setClear:function(Rt){St!==Rt&&(St=Rt,at&&(Rt=1-Rt),i.clearDepth(Rt))},reset:function(){z=!1,st=null,Ct=null,St=null,at=!1}}}function s(){let z=!1,at=null,st=null,Ct=null,St=null,Rt=null,Kt=null,ie=null,dt=null;return{setTest:function(Wt){z||(Wt?Mt(i.STENCIL_TEST):Zt(i.STENCIL_TEST))},setMask:function(Wt){at!==Wt&&!z&&(i.stencilMask(Wt),at=Wt)},setFunc:function(Wt,se,Lt){(st!==Wt||Ct!==se||St!==Lt)&&(i.stencilFunc(Wt,se,Lt),st=Wt,Ct=se,St=Lt)},setOp:function(Wt,se,Lt){(Rt!==Wt||Kt!==se||ie!==Lt)&&(i.stencilOp(Wt,se,Lt),Rt=Wt,Kt=se,ie=Lt)},setLocked:function(Wt){z=Wt},setClear:function(Wt){dt!==Wt&&(i.clearStencil(Wt),dt=Wt)},reset:function(){z=!1,at=null,st=null,Ct=null,St=null,Rt=null,Kt=null,ie=null,dt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,h={},f={},u={},p=new WeakMap,_=[],x=null,g=!1,d=null,y=null,C=null,b=null,P=null,T=null,m=null,M=new ge(0,0,0),L=0,S=!1,R=null,F=null,B=null,D=null,V=null,X=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),H=!1,K=0,q=i.getParameter(i.VERSION);q.indexOf("WebGL")!==-1?(K=parseFloat(/^WebGL (\d)/.exec(q)[1]),H=K>=1):q.indexOf("OpenGL ES")!==-1&&(K=parseFloat(/^OpenGL ES (\d)/.exec(q)[1]),H=K>=2);let Z=null,et={},ht=i.getParameter(i.SCISSOR_BOX),ut=i.getParameter(i.VIEWPORT),tt=new tn().fromArray(ht),_t=new tn().fromArray(ut);function yt(z,at,st,Ct){let St=new Uint8Array(4),Rt=i.createTexture();i.bindTexture(z,Rt),i.texParameteri(z,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(z,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Kt=0;Kt<st;Kt++)z===i.TEXTURE_3D||z===i.TEXTURE_2D_ARRAY?i.texImage3D(at,0,i.RGBA,1,1,Ct,0,i.RGBA,i.UNSIGNED_BYTE,St):i.texImage2D(at+Kt,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,St);return Rt}let vt={};vt[i.TEXTURE_2D]=yt(i.TEXTURE_2D,i.TEXTURE_2D,1),vt[i.TEXTURE_CUBE_MAP]=yt(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),vt[i.TEXTURE_2D_ARRAY]=yt(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),vt[i.TEXTURE_3D]=yt(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),Mt(i.DEPTH_TEST),o.setFunc(Kr),Ve(!1),Ce(su),Mt(i.CULL_FACE),We(ar);function Mt(z){h[z]!==!0&&(i.enable(z),h[z]=!0)}function Zt(z){h[z]!==!1&&(i.disable(z),h[z]=!1)}function oe(z,at){return u[z]!==at?(i.bindFramebuffer(z,at),u[z]=at,z===i.DRAW_FRAMEBUFFER&&(u[i.FRAMEBUFFER]=at),z===i.FRAMEBUFFER&&(u[i.DRAW_FRAMEBUFFER]=at),!0):!1}function Gt(z,at){let st=_,Ct=!1;if(z){st=p.get(at),st===void 0&&(st=[],p.set(at,st));let St=z.textures;if(st.length!==St.length||st[0]!==i.COLOR_ATTACHMENT0){for(let Rt=0,Kt=St.length;Rt<Kt;Rt++)st[Rt]=i.COLOR_ATTACHMENT0+Rt;st.length=St.length,Ct=!0}}else st[0]!==i.BACK&&(st[0]=i.BACK,Ct=!0);Ct&&i.drawBuffers(st)}function ue(z){return x!==z?(i.useProgram(z),x=z,!0):!1}let fe={[lr]:i.FUNC_ADD,[ep]:i.FUNC_SUBTRACT,[np]:i.FUNC_REVERSE_SUBTRACT};fe[ip]=i.MIN,fe[sp]=i.MAX;let ne={[rp]:i.ZERO,[op]:i.ONE,[ap]:i.SRC_COLOR,[lu]:i.SRC_ALPHA,[dp]:i.SRC_ALPHA_SATURATE,[up]:i.DST_COLOR,[cp]:i.DST_ALPHA,[lp]:i.ONE_MINUS_SRC_COLOR,[cu]:i.ONE_MINUS_SRC_ALPHA,[fp]:i.ONE_MINUS_DST_COLOR,[hp]:i.ONE_MINUS_DST_ALPHA,[pp]:i.CONSTANT_COLOR,[mp]:i.ONE_MINUS_CONSTANT_COLOR,[gp]:i.CONSTANT_ALPHA,[_p]:i.ONE_MINUS_CONSTANT_ALPHA};function We(z,at,st,Ct,St,Rt,Kt,ie,dt,Wt){if(z===ar){g===!0&&(Zt(i.BLEND),g=!1);return}if(g===!1&&(Mt(i.BLEND),g=!0),z!==tp){if(z!==d||Wt!==S){if((y!==lr||P!==lr)&&(i.blendEquation(i.FUNC_ADD),y=lr,P=lr),Wt)switch(z){case co:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case ru:i.blendFunc(i.ONE,i.ONE);break;case ou:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case au:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:le("WebGLState: Invalid blending: ",z);break}else switch(z){case co:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case ru:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case ou:le("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case au:le("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:le("WebGLState: Invalid blending: ",z);break}C=null,b=null,T=null,m=null,M.set(0,0,0),L=0,d=z,S=Wt}return}St=St||at,Rt=Rt||st,Kt=Kt||Ct,(at!==y||St!==P)&&(i.blendEquationSeparate(fe[at],fe[St]),y=at,P=St),(st!==C||Ct!==b||Rt!==T||Kt!==m)&&(i.blendFuncSeparate(ne[st],ne[Ct],ne[Rt],ne[Kt]),C=st,b=Ct,T=Rt,m=Kt),(ie.equals(M)===!1||dt!==L)&&(i.blendColor(ie.r,ie.g,ie.b,dt),M.copy(ie),L=dt),d=z,S=!1}function ke(z,at){z.side===$i?Zt(i.CULL_FACE):Mt(i.CULL_FACE);let st=z.side===Nn;at&&(st=!st),Ve(st),z.blending===co&&z.transparent===!1?We(ar):We(z.blending,z.blendEquation,z.blendSrc,z.blendDst,z.blendEquationAlpha,z.blendSrcAlpha,z.blendDstAlpha,z.blendColor,z.blendAlpha,z.premultipliedAlpha),o.setFunc(z.depthFunc),o.setTest(z.depthTest),o.setMask(z.depthWrite),r.setMask(z.colorWrite);let Ct=z.stencilWrite;a.setTest(Ct),Ct&&(a.setMask(z.stencilWriteMask),a.setFunc(z.stencilFunc,z.stencilRef,z.stencilFuncMask),a.setOp(z.stencilFail,z.stencilZFail,z.stencilZPass)),ot(z.polygonOffset,z.polygonOffsetFactor,z.polygonOffsetUnits),z.alphaToCoverage===!0?Mt(i.SAMPLE_ALPHA_TO_COVERAGE):Zt(i.SAMPLE_ALPHA_TO_COVERAGE)}function Ve(z){R!==z&&(z?i.frontFace(i.CW):i.frontFace(i.CCW),R=z)}function Ce(z){z!==Kd?(Mt(i.CULL_FACE),z!==F&&(z===su?i.cullFace(i.BACK):z===jd?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):Zt(i.CULL_FACE),F=z}function gn(z){z!==B&&(H&&i.lineWidth(z),B=z)}function ot(z,at,st){z?(Mt(i.POLYGON_OFFSET_FILL),(D!==at||V!==st)&&(D=at,V=st,o.getReversed()&&(at=-at,st=-st),i.polygonOffset(at,st))):Zt(i.POLYGON_OFFSET_FILL)}function At(z){z?Mt(i.SCISSOR_TEST):Zt(i.SCISSOR_TEST)}function Nt(z){z===void 0&&(z=i.TEXTURE0+X-1),Z!==z&&(i.activeTexture(z),Z=z)}function Jt(z,at,st){st===void 0&&(Z===null?st=i.TEXTURE0+X-1:st=Z);let Ct=et[st];Ct===void 0&&(Ct={type:void 0,texture:void 0},et[st]=Ct),(Ct.type!==z||Ct.texture!==at)&&(Z!==st&&(i.activeTexture(st),Z=st),i.bindTexture(z,at||vt[z]),Ct.type=z,Ct.texture=at)}function k(){let z=et[Z];z!==void 0&&z.type!==void 0&&(i.bindTexture(z.type,null),z.type=void 0,z.texture=void 0)}function ft(){try{i.compressedTexImage2D(...arguments)}catch(z){le("WebGLState:",z)}}function zt(){try{i.compressedTexImage3D(...arguments)}catch(z){le("WebGLState:",z)}}function Bt(){try{i.texSubImage2D(...arguments)}catch(z){le("WebGLState:",z)}}function mt(){try{i.texSubImage3D(...arguments)}catch(z){le("WebGLState:",z)}}function Te(){try{i.compressedTexSubImage2D(...arguments)}catch(z){le("WebGLState:",z)}}function $t(){try{i.compressedTexSubImage3D(...arguments)}catch(z){le("WebGLState:",z)}}function Qt(){try{i.texStorage2D(...arguments)}catch(z){le("WebGLState:",z)}}function N(){try{i.texStorage3D(...arguments)}catch(z){le("WebGLState:",z)}}function w(){try{i.texImage2D(...arguments)}catch(z){le("WebGLState:",z)}}function Y(){try{i.texImage3D(...arguments)}catch(z){le("WebGLState:",z)}}function pt(z){return f[z]!==void 0?f[z]:i.getParameter(z)}function lt(z,at){f[z]!==at&&(i.pixelStorei(z,at),f[z]=at)}function bt(z){tt.equals(z)===!1&&(i.scissor(z.x,z.y,z.z,z.w),tt.copy(z))}function wt(z){_t.equals(z)===!1&&(i.viewport(z.x,z.y,z.z,z.w),_t.copy(z))}function it(z,at){let st=c.get(at);st===void 0&&(st=new WeakMap,c.set(at,st));let Ct=st.get(z);Ct===void 0&&(Ct=i.getUniformBlockIndex(at,z.name),i.uniformBlockBinding(at,Ct,Ct),st.set(z,Ct))}function rt(z,at,st){let St=c.get(at).get(z);l[St]!==st&&(i.bindBufferBase(i.UNIFORM_BUFFER,St,st),l[St]=st)}function xt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},f={},Z=null,et={},u={},l={},p=new WeakMap,_=[],x=null,g=!1,d=null,y=null,C=null,b=null,P=null,T=null,m=null,M=new ge(0,0,0),L=0,S=!1,R=null,F=null,B=null,D=null,V=null,tt.set(0,0,i.canvas.width,i.canvas.height),_t.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:Mt,disable:Zt,bindFramebuffer:oe,drawBuffers:Gt,useProgram:ue,setBlending:We,setMaterial:ke,setFlipSided:Ve,setCullFace:Ce,setLineWidth:gn,setPolygonOffset:ot,setScissorTest:At,activeTexture:Nt,bindTexture:Jt,unbindTexture:k,compressedTexImage2D:ft,compressedTexImage3D:zt,texImage2D:w,texImage3D:Y,pixelStorei:lt,getParameter:pt,updateUBOMapping:it,uniformBlockBinding:rt,texStorage2D:Qt,texStorage3D:N,texSubImage2D:Bt,texSubImage3D:mt,compressedTexSubImage2D:Te,compressedTexSubImage3D:$t,scissor:bt,viewport:wt,reset:xt}}function dS(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new re,h=new WeakMap,f=new Set,u,p=new WeakMap,_=new Set,x=new FinalizationRegistry(N=>_.delete(N)),g=!1;try{g=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function d(N,w){return g?new OffscreenCanvas(N,w):$o("canvas")}function y(N,w,Y){let pt=1,lt=Qt(N);if((lt.width>Y||lt.height>Y)&&(pt=Y/Math.max(lt.width,lt.height)),pt<1)if(typeof HTMLImageElement<"u"&&N instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&N instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&N instanceof ImageBitmap||typeof VideoFrame<"u"&&N instanceof VideoFrame){let bt=Math.floor(pt*lt.width),wt=Math.floor(pt*lt.height);u===void 0&&(u=d(bt,wt));let it=w?d(bt,wt):u;return it.width=bt,it.height=wt,it.getContext("2d").drawImage(N,0,0,bt,wt),te("WebGLRenderer: Texture has been resized from ("+lt.width+"x"+lt.height+") to ("+bt+"x"+wt+")."),it}else return"data"in N&&te("WebGLRenderer: Image in DataTexture is too big ("+lt.width+"x"+lt.height+")."),N;return N}function C(N){return N.generateMipmaps}function b(N){i.generateMipmap(N)}function P(N){return N.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:N.isWebGL3DRenderTarget?i.TEXTURE_3D:N.isWebGLArrayRenderTarget||N.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function T(N,w,Y,pt,lt,bt=!1){if(N!==null){if(i[N]!==void 0)return i[N];te("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+N+"'")}let wt;pt&&(wt=t.get("EXT_texture_norm16"),wt||te("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let it=w;if(w===i.RED&&(Y===i.FLOAT&&(it=i.R32F),Y===i.HALF_FLOAT&&(it=i.R16F),Y===i.UNSIGNED_BYTE&&(it=i.R8),Y===i.UNSIGNED_SHORT&&wt&&(it=wt.R16_EXT),Y===i.SHORT&&wt&&(it=wt.R16_SNORM_EXT)),w===i.RED_INTEGER&&(Y===i.UNSIGNED_BYTE&&(it=i.R8UI),Y===i.UNSIGNED_SHORT&&(it=i.R16UI),Y===i.UNSIGNED_INT&&(it=i.R32UI),Y===i.BYTE&&(it=i.R8I),Y===i.SHORT&&(it=i.R16I),Y===i.INT&&(it=i.R32I)),w===i.RG&&(Y===i.FLOAT&&(it=i.RG32F),Y===i.HALF_FLOAT&&(it=i.RG16F),Y===i.UNSIGNED_BYTE&&(it=i.RG8),Y===i.UNSIGNED_SHORT&&wt&&(it=wt.RG16_EXT),Y===i.SHORT&&wt&&(it=wt.RG16_SNORM_EXT)),w===i.RG_INTEGER&&(Y===i.UNSIGNED_BYTE&&(it=i.RG8UI),Y===i.UNSIGNED_SHORT&&(it=i.RG16UI),Y===i.UNSIGNED_INT&&(it=i.RG32UI),Y===i.BYTE&&(it=i.RG8I),Y===i.SHORT&&(it=i.RG16I),Y===i.INT&&(it=i.RG32I)),w===i.RGB_INTEGER&&(Y===i.UNSIGNED_BYTE&&(it=i.RGB8UI),Y===i.UNSIGNED_SHORT&&(it=i.RGB16UI),Y===i.UNSIGNED_INT&&(it=i.RGB32UI),Y===i.BYTE&&(it=i.RGB8I),Y===i.SHORT&&(it=i.RGB16I),Y===i.INT&&(it=i.RGB32I)),w===i.RGBA_INTEGER&&(Y===i.UNSIGNED_BYTE&&(it=i.RGBA8UI),Y===i.UNSIGNED_SHORT&&(it=i.RGBA16UI),Y===i.UNSIGNED_INT&&(it=i.RGBA32UI),Y===i.BYTE&&(it=i.RGBA8I),Y===i.SHORT&&(it=i.RGBA16I),Y===i.INT&&(it=i.RGBA32I)),w===i.RGB&&(Y===i.UNSIGNED_SHORT&&wt&&(it=wt.RGB16_EXT),Y===i.SHORT&&wt&&(it=wt.RGB16_SNORM_EXT),Y===i.UNSIGNED_INT_5_9_9_9_REV&&(it=i.RGB9_E5),Y===i.UNSIGNED_INT_10F_11F_11F_REV&&(it=i.R11F_G11F_B10F)),w===i.RGBA){let rt=bt?qo:we.getTransfer(lt);Y===i.FLOAT&&(it=i.RGBA32F),Y===i.HALF_FLOAT&&(it=i.RGBA16F),Y===i.UNSIGNED_BYTE&&(it=rt===Ne?i.SRGB8_ALPHA8:i.RGBA8),Y===i.UNSIGNED_SHORT&&wt&&(it=wt.RGBA16_EXT),Y===i.SHORT&&wt&&(it=wt.RGBA16_SNORM_EXT),Y===i.UNSIGNED_SHORT_4_4_4_4&&(it=i.RGBA4),Y===i.UNSIGNED_SHORT_5_5_5_1&&(it=i.RGB5_A1)}return(it===i.R16F||it===i.R32F||it===i.RG16F||it===i.RG32F||it===i.RGBA16F||it===i.RGBA32F)&&t.get("EXT_color_buffer_float"),it}function m(N,w){let Y;return N?w===null||w===Ai||w===hr?Y=i.DEPTH24_STENCIL8:w===gi?Y=i.DEPTH32F_STENCIL8:w===uo&&(Y=i.DEPTH24_STENCIL8,te("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):w===null||w===Ai||w===hr?Y=i.DEPTH_COMPONENT24:w===gi?Y=i.DEPTH_COMPONENT32F:w===uo&&(Y=i.DEPTH_COMPONENT16),Y}function M(N,w){return C(N)===!0||N.isFramebufferTexture&&N.minFilter!==Cn&&N.minFilter!==qn?Math.log2(Math.max(w.width,w.height))+1:N.mipmaps.length>0?N.mipmaps.length:N.isCompressedTexture&&Array.isArray(N.image)?w.mipmaps.length:1}function L(N){let w=new WeakRef(N);n.get(N).__ref=w,_.add(w),x.register(N,w,w)}function S(N){let w=n.get(N).__ref;w!==void 0&&(_.delete(w),x.unregister(w))}function R(N){B(N.target)}function F(N){D(N.target)}function B(N){N.removeEventListener("dispose",R),S(N),X(N),N.isVideoTexture&&h.delete(N),N.isHTMLTexture&&f.delete(N)}function D(N){N.removeEventListener("dispose",F),S(N),K(N)}function V(){for(let N of _){let w=N.deref();w!==void 0&&(w.isRenderTarget===!0?D(w):B(w))}_.clear(),f.clear()}function X(N){let w=n.get(N);if(w.__webglInit===void 0)return;let Y=N.source,pt=p.get(Y);if(pt){let lt=pt[w.__cacheKey];lt.usedTimes--,lt.usedTimes===0&&H(N),Object.keys(pt).length===0&&p.delete(Y)}n.remove(N)}function H(N){let w=n.get(N);i.deleteTexture(w.__webglTexture);let Y=N.source,pt=p.get(Y);delete pt[w.__cacheKey],o.memory.textures--}function K(N){let w=n.get(N);w.__depthDisposeCallback&&w.__depthDisposeCallback();let Y=N.depthTexture;if(Y&&Y.renderTarget===N&&B(Y),N.isWebGLCubeRenderTarget)for(let lt=0;lt<6;lt++){if(Array.isArray(w.__webglFramebuffer[lt]))for(let bt=0;bt<w.__webglFramebuffer[lt].length;bt++)i.deleteFramebuffer(w.__webglFramebuffer[lt][bt]);else i.deleteFramebuffer(w.__webglFramebuffer[lt]);w.__webglDepthbuffer&&i.deleteRenderbuffer(w.__webglDepthbuffer[lt])}else{if(Array.isArray(w.__webglFramebuffer))for(let lt=0;lt<w.__webglFramebuffer.length;lt++)i.deleteFramebuffer(w.__webglFramebuffer[lt]);else i.deleteFramebuffer(w.__webglFramebuffer);if(w.__webglDepthbuffer&&i.deleteRenderbuffer(w.__webglDepthbuffer),w.__webglMultisampledFramebuffer&&i.deleteFramebuffer(w.__webglMultisampledFramebuffer),w.__webglColorRenderbuffer)for(let lt=0;lt<w.__webglColorRenderbuffer.length;lt++)w.__webglColorRenderbuffer[lt]&&i.deleteRenderbuffer(w.__webglColorRenderbuffer[lt]);w.__webglDepthRenderbuffer&&i.deleteRenderbuffer(w.__webglDepthRenderbuffer)}let pt=N.textures;for(let lt=0,bt=pt.length;lt<bt;lt++){let wt=n.get(pt[lt]);wt.__webglTexture&&(i.deleteTexture(wt.__webglTexture),o.memory.textures--),n.remove(pt[lt])}n.remove(N)}let q=0;function Z(){q=0}function et(){return q}function ht(N){q=N}function ut(){let N=q;return N>=s.maxTextures&&te("WebGLTextures: Trying to use "+(N+1)+" texture units while this GPU supports only "+s.maxTextures),q+=1,N}function tt(N){let w=[];return w.push(N.wrapS),w.push(N.wrapT),w.push(N.wrapR||0),w.push(N.magFilter),w.push(N.minFilter),w.push(N.anisotropy),w.push(N.internalFormat),w.push(N.format),w.push(N.type),w.push(N.generateMipmaps),w.push(N.mipmapsAutoUpdate),w.push(N.premultiplyAlpha),w.push(N.flipY),w.push(N.unpackAlignment),w.push(N.colorSpace),w.join()}function _t(N,w){let Y=n.get(N);if(N.isVideoTexture&&Te(N),N.isRenderTargetTexture===!1&&N.isExternalTexture!==!0&&N.version>0&&Y.__version!==N.version){let pt=N.image;if(pt===null)te("WebGLRenderer: Texture marked for update but no image data found.");else if(pt.complete===!1)te("WebGLRenderer: Texture marked for update but image is incomplete");else{ke(Y,N,w);return}}else N.isExternalTexture&&(Y.__webglTexture=N.sourceTexture?N.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,Y.__webglTexture,i.TEXTURE0+w)}function yt(N,w){let Y=n.get(N);if(N.isRenderTargetTexture===!1&&N.version>0&&Y.__version!==N.version){ke(Y,N,w);return}else N.isExternalTexture&&(Y.__webglTexture=N.sourceTexture?N.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,Y.__webglTexture,i.TEXTURE0+w)}function vt(N,w){let Y=n.get(N);if(N.isRenderTargetTexture===!1&&N.version>0&&Y.__version!==N.version){ke(Y,N,w);return}e.bindTexture(i.TEXTURE_3D,Y.__webglTexture,i.TEXTURE0+w)}function Mt(N,w){let Y=n.get(N);if(N.version>0&&Y.__version!==N.version){Ve(Y,N,w);return}e.bindTexture(i.TEXTURE_CUBE_MAP,Y.__webglTexture,i.TEXTURE0+w)}let Zt={[Sl]:i.REPEAT,[Hi]:i.CLAMP_TO_EDGE,[bl]:i.MIRRORED_REPEAT},oe={[Cn]:i.NEAREST,[vp]:i.NEAREST_MIPMAP_NEAREST,[_a]:i.NEAREST_MIPMAP_LINEAR,[qn]:i.LINEAR,[Jl]:i.LINEAR_MIPMAP_NEAREST,[xs]:i.LINEAR_MIPMAP_LINEAR},Gt={[wp]:i.NEVER,[Tu]:i.ALWAYS,[Ep]:i.LESS,[wu]:i.LEQUAL,[Tp]:i.EQUAL,[Eu]:i.GEQUAL,[Ap]:i.GREATER,[Rp]:i.NOTEQUAL};function ue(N,w){if(w.type===gi&&t.has("OES_texture_float_linear")===!1&&(w.magFilter===qn||w.magFilter===Jl||w.magFilter===_a||w.magFilter===xs||w.minFilter===qn||w.minFilter===Jl||w.minFilter===_a||w.minFilter===xs)&&te("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(N,i.TEXTURE_WRAP_S,Zt[w.wrapS]),i.texParameteri(N,i.TEXTURE_WRAP_T,Zt[w.wrapT]),(N===i.TEXTURE_3D||N===i.TEXTURE_2D_ARRAY)&&i.texParameteri(N,i.TEXTURE_WRAP_R,Zt[w.wrapR]),i.texParameteri(N,i.TEXTURE_MAG_FILTER,oe[w.magFilter]),i.texParameteri(N,i.TEXTURE_MIN_FILTER,oe[w.minFilter]),w.compareFunction&&(i.texParameteri(N,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(N,i.TEXTURE_COMPARE_FUNC,Gt[w.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(w.magFilter===Cn||w.minFilter!==_a&&w.minFilter!==xs||w.type===gi&&t.has("OES_texture_float_linear")===!1)return;if(w.anisotropy>1||n.get(w).__currentAnisotropy){let Y=t.get("EXT_texture_filter_anisotropic");i.texParameterf(N,Y.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(w.anisotropy,s.getMaxAnisotropy())),n.get(w).__currentAnisotropy=w.anisotropy}}}function fe(N,w){let Y=!1;N.__webglInit===void 0&&(N.__webglInit=!0,w.addEventListener("dispose",R),L(w));let pt=w.source,lt=p.get(pt);lt===void 0&&(lt={},p.set(pt,lt));let bt=tt(w);if(bt!==N.__cacheKey){lt[bt]===void 0&&(lt[bt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,Y=!0),lt[bt].usedTimes++;let wt=lt[N.__cacheKey];wt!==void 0&&(lt[N.__cacheKey].usedTimes--,wt.usedTimes===0&&H(w)),N.__cacheKey=bt,N.__webglTexture=lt[bt].texture}return Y}function ne(N,w,Y){return Math.floor(Math.floor(N/Y)/w)}function We(N,w,Y,pt){let bt=N.updateRanges;if(bt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,w.width,w.height,Y,pt,w.data);else{bt.sort((z,at)=>z.start-at.start);let wt=0;for(let z=1;z<bt.length;z++){let at=bt[wt],st=bt[z],Ct=at.start+at.count,St=ne(st.start,w.width,4),Rt=ne(at.start,w.width,4);st.start<=Ct+1&&St===Rt&&ne(st.start+st.count-1,w.width,4)===St?at.count=Math.max(at.count,st.start+st.count-at.start):(++wt,bt[wt]=st)}bt.length=wt+1;let it=e.getParameter(i.UNPACK_ROW_LENGTH),rt=e.getParameter(i.UNPACK_SKIP_PIXELS),xt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,w.width);for(let z=0,at=bt.length;z<at;z++){let st=bt[z],Ct=Math.floor(st.start/4),St=Math.ceil(st.count/4),Rt=Ct%w.width,Kt=Math.floor(Ct/w.width),ie=St,dt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,Rt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Kt),e.texSubImage2D(i.TEXTURE_2D,0,Rt,Kt,ie,dt,Y,pt,w.data)}N.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,it),e.pixelStorei(i.UNPACK_SKIP_PIXELS,rt),e.pixelStorei(i.UNPACK_SKIP_ROWS,xt)}}function ke(N,w,Y){let pt=i.TEXTURE_2D;(w.isDataArrayTexture||w.isCompressedArrayTexture)&&(pt=i.TEXTURE_2D_ARRAY),w.isData3DTexture&&(pt=i.TEXTURE_3D);let lt=fe(N,w),bt=w.source;e.bindTexture(pt,N.__webglTexture,i.TEXTURE0+Y);let wt=n.get(bt);if(bt.version!==wt.__version||lt===!0){if(e.activeTexture(i.TEXTURE0+Y),(typeof ImageBitmap<"u"&&w.image instanceof ImageBitmap)===!1){let dt=we.getPrimaries(we.workingColorSpace),Wt=w.colorSpace===vs?null:we.getPrimaries(w.colorSpace),se=w.colorSpace===vs||dt===Wt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,w.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,w.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,se)}e.pixelStorei(i.UNPACK_ALIGNMENT,w.unpackAlignment);let rt=y(w.image,!1,s.maxTextureSize);rt=$t(w,rt);let xt=r.convert(w.format,w.colorSpace),z=r.convert(w.type),at=T(w.internalFormat,xt,z,w.normalized,w.colorSpace,w.isVideoTexture);ue(pt,w);let st,Ct=w.mipmaps,St=w.isVideoTexture!==!0,Rt=wt.__version===void 0||lt===!0,Kt=bt.dataReady,ie=M(w,rt);if(w.isDepthTexture)at=m(w.format===ys,w.type),Rt&&(St?e.texStorage2D(i.TEXTURE_2D,1,at,rt.width,rt.height):e.texImage2D(i.TEXTURE_2D,0,at,rt.width,rt.height,0,xt,z,null));else if(w.isDataTexture)if(Ct.length>0){St&&Rt&&e.texStorage2D(i.TEXTURE_2D,ie,at,Ct[0].width,Ct[0].height);for(let dt=0,Wt=Ct.length;dt<Wt;dt++)st=Ct[dt],St?Kt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,st.width,st.height,xt,z,st.data):e.texImage2D(i.TEXTURE_2D,dt,at,st.width,st.height,0,xt,z,st.data);w.generateMipmaps=!1}else St?(Rt&&e.texStorage2D(i.TEXTURE_2D,ie,at,rt.width,rt.height),Kt&&We(w,rt,xt,z)):e.texImage2D(i.TEXTURE_2D,0,at,rt.width,rt.height,0,xt,z,rt.data);else if(w.isCompressedTexture)if(w.isCompressedArrayTexture){St&&Rt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,ie,at,Ct[0].width,Ct[0].height,rt.depth);for(let dt=0,Wt=Ct.length;dt<Wt;dt++)if(st=Ct[dt],w.format!==Ci)if(xt!==null)if(St){if(Kt)if(w.layerUpdates.size>0){let se=Fu(st.width,st.height,w.format,w.type);for(let Lt of w.layerUpdates){let pe=st.data.subarray(Lt*se/st.data.BYTES_PER_ELEMENT,(Lt+1)*se/st.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,Lt,st.width,st.height,1,xt,pe)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,0,st.width,st.height,rt.depth,xt,st.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,dt,at,st.width,st.height,rt.depth,0,st.data,0,0);else te("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else St?Kt&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,0,st.width,st.height,rt.depth,xt,z,st.data):e.texImage3D(i.TEXTURE_2D_ARRAY,dt,at,st.width,st.height,rt.depth,0,xt,z,st.data);w.layerUpdates.size>0&&w.clearLayerUpdates()}else{St&&Rt&&e.texStorage2D(i.TEXTURE_2D,ie,at,Ct[0].width,Ct[0].height);for(let dt=0,Wt=Ct.length;dt<Wt;dt++)st=Ct[dt],w.format!==Ci?xt!==null?St?Kt&&e.compressedTexSubImage2D(i.TEXTURE_2D,dt,0,0,st.width,st.height,xt,st.data):e.compressedTexImage2D(i.TEXTURE_2D,dt,at,st.width,st.height,0,st.data):te("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):St?Kt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,st.width,st.height,xt,z,st.data):e.texImage2D(i.TEXTURE_2D,dt,at,st.width,st.height,0,xt,z,st.data)}else if(w.isDataArrayTexture)if(St){if(Rt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,ie,at,rt.width,rt.height,rt.depth),Kt)if(w.layerUpdates.size>0){let dt=Fu(rt.width,rt.height,w.format,w.type);for(let Wt of w.layerUpdates){let se=rt.data.subarray(Wt*dt/rt.data.BYTES_PER_ELEMENT,(Wt+1)*dt/rt.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Wt,rt.width,rt.height,1,xt,z,se)}w.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,rt.width,rt.height,rt.depth,xt,z,rt.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,at,rt.width,rt.height,rt.depth,0,xt,z,rt.data);else if(w.isData3DTexture)St?(Rt&&e.texStorage3D(i.TEXTURE_3D,ie,at,rt.width,rt.height,rt.depth),Kt&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,rt.width,rt.height,rt.depth,xt,z,rt.data)):e.texImage3D(i.TEXTURE_3D,0,at,rt.width,rt.height,rt.depth,0,xt,z,rt.data);else if(w.isFramebufferTexture){if(Rt)if(St)e.texStorage2D(i.TEXTURE_2D,ie,at,rt.width,rt.height);else{let dt=rt.width,Wt=rt.height;for(let se=0;se<ie;se++)e.texImage2D(i.TEXTURE_2D,se,at,dt,Wt,0,xt,z,null),dt>>=1,Wt>>=1}}else if(w.isHTMLTexture){if("texElementImage2D"in i){let dt=i.canvas;if(dt.hasAttribute("layoutsubtree")||dt.setAttribute("layoutsubtree","true"),rt.parentNode!==dt){dt.appendChild(rt),f.add(w),dt.onpaint=Wt=>{let se=Wt.changedElements;for(let Lt of f)se.includes(Lt.image)&&(Lt.needsUpdate=!0)},dt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,rt);else{let se=i.RGBA,Lt=i.RGBA,pe=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,se,Lt,pe,rt)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Ct.length>0){if(St&&Rt){let dt=Qt(Ct[0]);e.texStorage2D(i.TEXTURE_2D,ie,at,dt.width,dt.height)}for(let dt=0,Wt=Ct.length;dt<Wt;dt++)st=Ct[dt],St?Kt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,xt,z,st):e.texImage2D(i.TEXTURE_2D,dt,at,xt,z,st);w.generateMipmaps=!1}else if(St){if(Rt){let dt=Qt(rt);e.texStorage2D(i.TEXTURE_2D,ie,at,dt.width,dt.height)}Kt&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,xt,z,rt)}else e.texImage2D(i.TEXTURE_2D,0,at,xt,z,rt);C(w)&&w.mipmapsAutoUpdate===!0&&b(pt),wt.__version=bt.version,w.onUpdate&&w.onUpdate(w)}N.__version=w.version}function Ve(N,w,Y){if(w.image.length!==6)return;let pt=fe(N,w),lt=w.source;e.bindTexture(i.TEXTURE_CUBE_MAP,N.__webglTexture,i.TEXTURE0+Y);let bt=n.get(lt);if(lt.version!==bt.__version||pt===!0){e.activeTexture(i.TEXTURE0+Y);let wt=we.getPrimaries(we.workingColorSpace),it=w.colorSpace===vs?null:we.getPrimaries(w.colorSpace),rt=w.colorSpace===vs||wt===it?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,w.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,w.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,w.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,rt);let xt=w.isCompressedTexture||w.image[0].isCompressedTexture,z=w.image[0]&&w.image[0].isDataTexture,at=[];for(let Lt=0;Lt<6;Lt++)!xt&&!z?at[Lt]=y(w.image[Lt],!0,s.maxCubemapSize):at[Lt]=z?w.image[Lt].image:w.image[Lt],at[Lt]=$t(w,at[Lt]);let st=at[0],Ct=r.convert(w.format,w.colorSpace),St=r.convert(w.type),Rt=T(w.internalFormat,Ct,St,w.normalized,w.colorSpace),Kt=w.isVideoTexture!==!0,ie=bt.__version===void 0||pt===!0,dt=lt.dataReady,Wt=M(w,st);ue(i.TEXTURE_CUBE_MAP,w);let se;if(w.isDepthTexture){if(Rt=m(w.format===ys,w.type),ie)if(Kt)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,Rt,st.width,st.height);else for(let Lt=0;Lt<6;Lt++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,Rt,st.width,st.height,0,Ct,St,null)}else if(xt){Kt&&ie&&e.texStorage2D(i.TEXTURE_CUBE_MAP,Wt,Rt,st.width,st.height);for(let Lt=0;Lt<6;Lt++){se=at[Lt].mipmaps;for(let pe=0;pe<se.length;pe++){let qe=se[pe];w.format!==Ci?Ct!==null?Kt?dt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe,0,0,qe.width,qe.height,Ct,qe.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe,Rt,qe.width,qe.height,0,qe.data):te("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Kt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe,0,0,qe.width,qe.height,Ct,St,qe.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe,Rt,qe.width,qe.height,0,Ct,St,qe.data)}}}else{if(se=w.mipmaps,Kt&&ie){se.length>0&&Wt++;let Lt=Qt(at[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,Wt,Rt,Lt.width,Lt.height)}for(let Lt=0;Lt<6;Lt++)if(z){Kt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,0,0,at[Lt].width,at[Lt].height,Ct,St,at[Lt].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,Rt,at[Lt].width,at[Lt].height,0,Ct,St,at[Lt].data);for(let pe=0;pe<se.length;pe++){let kn=se[pe].image[Lt].image;Kt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe+1,0,0,kn.width,kn.height,Ct,St,kn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe+1,Rt,kn.width,kn.height,0,Ct,St,kn.data)}}else{Kt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,0,0,Ct,St,at[Lt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,0,Rt,Ct,St,at[Lt]);for(let pe=0;pe<se.length;pe++){let qe=se[pe];Kt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe+1,0,0,Ct,St,qe.image[Lt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Lt,pe+1,Rt,Ct,St,qe.image[Lt])}}}C(w)&&w.mipmapsAutoUpdate===!0&&b(i.TEXTURE_CUBE_MAP),bt.__version=lt.version,w.onUpdate&&w.onUpdate(w)}N.__version=w.version}function Ce(N,w,Y,pt,lt,bt){let wt=r.convert(Y.format,Y.colorSpace),it=r.convert(Y.type),rt=T(Y.internalFormat,wt,it,Y.normalized,Y.colorSpace),xt=n.get(w),z=n.get(Y);if(z.__renderTarget=w,!xt.__hasExternalTextures){let at=Math.max(1,w.width>>bt),st=Math.max(1,w.height>>bt);lt===i.TEXTURE_3D||lt===i.TEXTURE_2D_ARRAY?e.texImage3D(lt,bt,rt,at,st,w.depth,0,wt,it,null):e.texImage2D(lt,bt,rt,at,st,0,wt,it,null)}e.bindFramebuffer(i.FRAMEBUFFER,N),mt(w)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,pt,lt,z.__webglTexture,0,Bt(w)):(lt===i.TEXTURE_2D||lt>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&lt<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,pt,lt,z.__webglTexture,bt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function gn(N,w,Y){if(i.bindRenderbuffer(i.RENDERBUFFER,N),w.depthBuffer){let pt=w.depthTexture,lt=pt&&pt.isDepthTexture?pt.type:null,bt=m(w.stencilBuffer,lt),wt=w.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;mt(w)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,Bt(w),bt,w.width,w.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,Bt(w),bt,w.width,w.height):i.renderbufferStorage(i.RENDERBUFFER,bt,w.width,w.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,wt,i.RENDERBUFFER,N)}else{let pt=w.textures;for(let lt=0;lt<pt.length;lt++){let bt=pt[lt],wt=r.convert(bt.format,bt.colorSpace),it=r.convert(bt.type),rt=T(bt.internalFormat,wt,it,bt.normalized,bt.colorSpace);mt(w)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,Bt(w),rt,w.width,w.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,Bt(w),rt,w.width,w.height):i.renderbufferStorage(i.RENDERBUFFER,rt,w.width,w.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function ot(N,w,Y){let pt=w.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,N),!(w.depthTexture&&w.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let lt=n.get(w.depthTexture);lt.__renderTarget=w;let bt=pt?w.depthTexture.image[0]:w.depthTexture.image;(!lt.__webglTexture||bt.width!==w.width||bt.height!==w.height)&&(bt.width=w.width,bt.height=w.height,w.depthTexture.needsUpdate=!0),pt?Mt(w.depthTexture,0):_t(w.depthTexture,0);let wt=lt.__webglTexture,it=Bt(w),rt=pt?i.TEXTURE_CUBE_MAP_POSITIVE_X+Y:i.TEXTURE_2D,xt=w.depthTexture.format===ys?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(w.depthTexture.format===fs)mt(w)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,xt,rt,wt,0,it):i.framebufferTexture2D(i.FRAMEBUFFER,xt,rt,wt,0);else if(w.depthTexture.format===ys)mt(w)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,xt,rt,wt,0,it):i.framebufferTexture2D(i.FRAMEBUFFER,xt,rt,wt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function At(N){let w=n.get(N),Y=N.isWebGLCubeRenderTarget===!0;if(w.__boundDepthTexture!==N.depthTexture){let pt=N.depthTexture;if(w.__depthDisposeCallback&&w.__depthDisposeCallback(),pt){let lt=()=>{delete w.__boundDepthTexture,delete w.__depthDisposeCallback,pt.removeEventListener("dispose",lt)};pt.addEventListener("dispose",lt),w.__depthDisposeCallback=lt}w.__boundDepthTexture=pt}if(N.depthTexture&&!w.__autoAllocateDepthBuffer)if(Y)for(let pt=0;pt<6;pt++)ot(w.__webglFramebuffer[pt],N,pt);else N.texture.mipmaps.length>0?ot(w.__webglFramebuffer[0],N,0):ot(w.__webglFramebuffer,N,0);else if(Y){w.__webglDepthbuffer=[];for(let pt=0;pt<6;pt++)if(e.bindFramebuffer(i.FRAMEBUFFER,w.__webglFramebuffer[pt]),w.__webglDepthbuffer[pt]===void 0)w.__webglDepthbuffer[pt]=i.createRenderbuffer(),gn(w.__webglDepthbuffer[pt],N,!1);else{let lt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,bt=w.__webglDepthbuffer[pt];i.bindRenderbuffer(i.RENDERBUFFER,bt),i.framebufferRenderbuffer(i.FRAMEBUFFER,lt,i.RENDERBUFFER,bt)}}else if(N.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,w.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,w.__webglFramebuffer),w.__webglDepthbuffer===void 0)w.__webglDepthbuffer=i.createRenderbuffer(),gn(w.__webglDepthbuffer,N,!1);else{let lt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,bt=w.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,bt),i.framebufferRenderbuffer(i.FRAMEBUFFER,lt,i.RENDERBUFFER,bt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Nt(N,w,Y){let pt=n.get(N);w!==void 0&&Ce(pt.__webglFramebuffer,N,N.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),Y!==void 0&&At(N)}function Jt(N){let w=N.texture,Y=n.get(N),pt=n.get(w);N.addEventListener("dispose",F),L(N);let lt=N.textures,bt=N.isWebGLCubeRenderTarget===!0,wt=lt.length>1;if(wt||(pt.__webglTexture===void 0&&(pt.__webglTexture=i.createTexture()),pt.__version=w.version,o.memory.textures++),bt){Y.__webglFramebuffer=[];for(let it=0;it<6;it++)if(w.mipmaps.length>0){Y.__webglFramebuffer[it]=[];for(let rt=0;rt<w.mipmaps.length;rt++)Y.__webglFramebuffer[it][rt]=i.createFramebuffer()}else Y.__webglFramebuffer[it]=i.createFramebuffer()}else{if(w.mipmaps.length>0){Y.__webglFramebuffer=[];for(let it=0;it<w.mipmaps.length;it++)Y.__webglFramebuffer[it]=i.createFramebuffer()}else Y.__webglFramebuffer=i.createFramebuffer();if(wt)for(let it=0,rt=lt.length;it<rt;it++){let xt=n.get(lt[it]);xt.__webglTexture===void 0&&(xt.__webglTexture=i.createTexture(),o.memory.textures++)}if(N.samples>0&&mt(N)===!1){Y.__webglMultisampledFramebuffer=i.createFramebuffer(),Y.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,Y.__webglMultisampledFramebuffer);for(let it=0;it<lt.length;it++){let rt=lt[it];Y.__webglColorRenderbuffer[it]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,Y.__webglColorRenderbuffer[it]);let xt=r.convert(rt.format,rt.colorSpace),z=r.convert(rt.type),at=T(rt.internalFormat,xt,z,rt.normalized,rt.colorSpace,N.isXRRenderTarget===!0),st=Bt(N);i.renderbufferStorageMultisample(i.RENDERBUFFER,st,at,N.width,N.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+it,i.RENDERBUFFER,Y.__webglColorRenderbuffer[it])}i.bindRenderbuffer(i.RENDERBUFFER,null),N.depthBuffer&&(Y.__webglDepthRenderbuffer=i.createRenderbuffer(),gn(Y.__webglDepthRenderbuffer,N,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(bt){e.bindTexture(i.TEXTURE_CUBE_MAP,pt.__webglTexture),ue(i.TEXTURE_CUBE_MAP,w);for(let it=0;it<6;it++)if(w.mipmaps.length>0)for(let rt=0;rt<w.mipmaps.length;rt++)Ce(Y.__webglFramebuffer[it][rt],N,w,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+it,rt);else Ce(Y.__webglFramebuffer[it],N,w,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+it,0);C(w)?b(i.TEXTURE_CUBE_MAP):w.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,w.mipmaps.length-1),e.unbindTexture()}else if(wt){for(let it=0,rt=lt.length;it<rt;it++){let xt=lt[it],z=n.get(xt),at=i.TEXTURE_2D;(N.isWebGL3DRenderTarget||N.isWebGLArrayRenderTarget)&&(at=N.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(at,z.__webglTexture),ue(at,xt),Ce(Y.__webglFramebuffer,N,xt,i.COLOR_ATTACHMENT0+it,at,0),C(xt)&&b(at)}e.unbindTexture()}else{let it=i.TEXTURE_2D;if((N.isWebGL3DRenderTarget||N.isWebGLArrayRenderTarget)&&(it=N.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(it,pt.__webglTexture),ue(it,w),w.mipmaps.length>0)for(let rt=0;rt<w.mipmaps.length;rt++)Ce(Y.__webglFramebuffer[rt],N,w,i.COLOR_ATTACHMENT0,it,rt);else Ce(Y.__webglFramebuffer,N,w,i.COLOR_ATTACHMENT0,it,0);C(w)?b(it):w.mipmaps.length>0&&i.texParameteri(it,i.TEXTURE_MAX_LEVEL,w.mipmaps.length-1),e.unbindTexture()}N.depthBuffer&&At(N)}function k(N){let w=N.textures;for(let Y=0,pt=w.length;Y<pt;Y++){let lt=w[Y];if(C(lt)&&lt.mipmapsAutoUpdate===!0){let bt=P(N),wt=n.get(lt).__webglTexture;e.bindTexture(bt,wt),b(bt),e.unbindTexture()}}}let ft=[];function zt(N){if(N.samples>0){if(mt(N)===!1){let w=N.textures,Y=N.width,pt=N.height,lt=i.COLOR_BUFFER_BIT,bt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,wt=n.get(N),it=w.length>1;if(it)for(let xt=0;xt<w.length;xt++)e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,wt.__webglMultisampledFramebuffer),N.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglFramebuffer);for(let xt=0;xt<w.length;xt++){if(N.resolveDepthBuffer&&(N.depthBuffer&&(lt|=i.DEPTH_BUFFER_BIT),N.stencilBuffer&&N.resolveStencilBuffer&&(lt|=i.STENCIL_BUFFER_BIT)),it){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,wt.__webglColorRenderbuffer[xt]);let z=n.get(w[xt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,z,0)}i.blitFramebuffer(0,0,Y,pt,0,0,Y,pt,lt,i.NEAREST),l===!0&&(ft.length=0,ft.push(i.COLOR_ATTACHMENT0+xt),N.depthBuffer&&N.storeMultisampledDepthBuffer===!1&&ft.push(bt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,ft))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),it)for(let xt=0;xt<w.length;xt++){e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.RENDERBUFFER,wt.__webglColorRenderbuffer[xt]);let z=n.get(w[xt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,wt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.TEXTURE_2D,z,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,wt.__webglMultisampledFramebuffer)}else if(N.depthBuffer&&N.storeMultisampledDepthBuffer===!1&&l){let w=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[w])}}}function Bt(N){return Math.min(s.maxSamples,N.samples)}function mt(N){let w=n.get(N);return N.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&w.__useRenderToTexture!==!1}function Te(N){let w=o.render.frame;h.get(N)!==w&&(h.set(N,w),N.update())}function $t(N,w){let Y=N.colorSpace,pt=N.format,lt=N.type;return N.isCompressedTexture===!0||N.isVideoTexture===!0||Y!==Xo&&Y!==vs&&(we.getTransfer(Y)===Ne?(pt!==Ci||lt!==Jn)&&te("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):le("WebGLTextures: Unsupported texture color space:",Y)),w}function Qt(N){return typeof HTMLImageElement<"u"&&N instanceof HTMLImageElement?(c.width=N.naturalWidth||N.width,c.height=N.naturalHeight||N.height):typeof VideoFrame<"u"&&N instanceof VideoFrame?(c.width=N.displayWidth,c.height=N.displayHeight):(c.width=N.width,c.height=N.height),c}this.allocateTextureUnit=ut,this.resetTextureUnits=Z,this.getTextureUnits=et,this.setTextureUnits=ht,this.setTexture2D=_t,this.setTexture2DArray=yt,this.setTexture3D=vt,this.setTextureCube=Mt,this.rebindTextures=Nt,this.setupRenderTarget=Jt,this.updateRenderTargetMipmap=k,this.updateMultisampleRenderTarget=zt,this.setupDepthRenderbuffer=At,this.setupFrameBufferTexture=Ce,this.useMultisampledRTT=mt,this.dispose=V}function pS(i,t){function e(n,s=vs){let r,o=we.getTransfer(s);if(n===Jn)return i.UNSIGNED_BYTE;if(n===jl)return i.UNSIGNED_SHORT_4_4_4_4;if(n===Ql)return i.UNSIGNED_SHORT_5_5_5_1;if(n===vu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Mu)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===xu)return i.BYTE;if(n===yu)return i.SHORT;if(n===uo)return i.UNSIGNED_SHORT;if(n===Kl)return i.INT;if(n===Ai)return i.UNSIGNED_INT;if(n===gi)return i.FLOAT;if(n===Ri)return i.HALF_FLOAT;if(n===Su)return i.ALPHA;if(n===bu)return i.RGB;if(n===Ci)return i.RGBA;if(n===fs)return i.DEPTH_COMPONENT;if(n===ys)return i.DEPTH_STENCIL;if(n===tc)return i.RED;if(n===ec)return i.RED_INTEGER;if(n===Gs)return i.RG;if(n===nc)return i.RG_INTEGER;if(n===ic)return i.RGBA_INTEGER;if(n===xa||n===ya||n===va||n===Ma)if(o===Ne)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===xa)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===ya)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===va)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Ma)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===xa)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===ya)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===va)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Ma)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===sc||n===rc||n===oc||n===ac)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===sc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===rc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===oc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===ac)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===lc||n===cc||n===hc||n===uc||n===fc||n===Sa||n===dc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===lc||n===cc)return o===Ne?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===hc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===uc)return r.COMPRESSED_R11_EAC;if(n===fc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Sa)return r.COMPRESSED_RG11_EAC;if(n===dc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===pc||n===mc||n===gc||n===_c||n===xc||n===yc||n===vc||n===Mc||n===Sc||n===bc||n===wc||n===Ec||n===Tc||n===Ac)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===pc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===mc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===gc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===_c)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===xc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===yc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===vc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Mc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Sc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===bc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===wc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Ec)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Tc)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Ac)return o===Ne?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Rc||n===Cc||n===Pc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Rc)return o===Ne?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Cc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Pc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Ic||n===Lc||n===ba||n===Dc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===Ic)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Lc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===ba)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Dc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===hr?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var mS=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,gS=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Xu=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new sa(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new qi({vertexShader:mS,fragmentShader:gS,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new pn(new la(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},qu=class extends Ti{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,f=null,u=null,p=null,_=null,x=typeof XRWebGLBinding<"u",g=new Xu,d={},y=e.getContextAttributes(),C=null,b=null,P=[],T=[],m=new re,M=null,L=null,S=new oi;S.viewport=new tn;let R=new oi;R.viewport=new tn;let F=[S,R],B=new ql,D=null,V=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(tt){let _t=P[tt];return _t===void 0&&(_t=new io,P[tt]=_t),_t.getTargetRaySpace()},this.getControllerGrip=function(tt){let _t=P[tt];return _t===void 0&&(_t=new io,P[tt]=_t),_t.getGripSpace()},this.getHand=function(tt){let _t=P[tt];return _t===void 0&&(_t=new io,P[tt]=_t),_t.getHandSpace()};function X(tt){let _t=T.indexOf(tt.inputSource);if(_t===-1)return;let yt=P[_t];yt!==void 0&&(yt.update(tt.inputSource,tt.frame,c||o),yt.dispatchEvent({type:tt.type,data:tt.inputSource}))}function H(){s.removeEventListener("select",X),s.removeEventListener("selectstart",X),s.removeEventListener("selectend",X),s.removeEventListener("squeeze",X),s.removeEventListener("squeezestart",X),s.removeEventListener("squeezeend",X),s.removeEventListener("end",H),s.removeEventListener("inputsourceschange",K);for(let tt=0;tt<P.length;tt++){let _t=T[tt];_t!==null&&(T[tt]=null,P[tt].disconnect(_t))}D=null,V=null,g.reset();for(let tt in d)delete d[tt];if(t.setRenderTarget(C),p=null,u=null,f=null,s=null,b=null,ut.stop(),n.isPresenting=!1,t.setPixelRatio(M),t.setSize(m.width,m.height,!1),L!==null){let tt=L.camera;tt.fov=L.fov,tt.zoom=L.zoom,tt.updateProjectionMatrix(),L=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(tt){r=tt,n.isPresenting===!0&&te("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(tt){a=tt,n.isPresenting===!0&&te("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(tt){c=tt},this.getBaseLayer=function(){return u!==null?u:p},this.getBinding=function(){return f===null&&x&&(f=new XRWebGLBinding(s,e)),f},this.getFrame=function(){return _},this.getSession=function(){return s},this.setSession=async function(tt){if(s=tt,s!==null){if(C=t.getRenderTarget(),s.addEventListener("select",X),s.addEventListener("selectstart",X),s.addEventListener("selectend",X),s.addEventListener("squeeze",X),s.addEventListener("squeezestart",X),s.addEventListener("squeezeend",X),s.addEventListener("end",H),s.addEventListener("inputsourceschange",K),y.xrCompatible!==!0&&await e.makeXRCompatible(),M=t.getPixelRatio(),t.getSize(m),x&&"createProjectionLayer"in XRWebGLBinding.prototype){let yt=null,vt=null,Mt=null;y.depth&&(Mt=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,yt=y.stencil?ys:fs,vt=y.stencil?hr:Ai);let Zt={colorFormat:e.RGBA8,depthFormat:Mt,scaleFactor:r};f=this.getBinding(),u=f.createProjectionLayer(Zt),s.updateRenderState({layers:[u]}),t.setPixelRatio(1),t.setSize(u.textureWidth,u.textureHeight,!1),b=new ai(u.textureWidth,u.textureHeight,{format:Ci,type:Jn,depthTexture:new gs(u.textureWidth,u.textureHeight,vt,void 0,void 0,void 0,void 0,void 0,void 0,yt),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:u.ignoreDepthValues===!1,resolveStencilBuffer:u.ignoreDepthValues===!1,storeMultisampledDepthBuffer:u.ignoreDepthValues===!1,storeMultisampledStencilBuffer:u.ignoreDepthValues===!1})}else{let yt={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};p=new XRWebGLLayer(s,e,yt),s.updateRenderState({baseLayer:p}),t.setPixelRatio(1),t.setSize(p.framebufferWidth,p.framebufferHeight,!1),b=new ai(p.framebufferWidth,p.framebufferHeight,{format:Ci,type:Jn,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:p.ignoreDepthValues===!1,resolveStencilBuffer:p.ignoreDepthValues===!1,storeMultisampledDepthBuffer:p.ignoreDepthValues===!1,storeMultisampledStencilBuffer:p.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),ut.setContext(s),ut.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return g.getDepthTexture()};function K(tt){for(let _t=0;_t<tt.removed.length;_t++){let yt=tt.removed[_t],vt=T.indexOf(yt);vt>=0&&(T[vt]=null,P[vt].disconnect(yt))}for(let _t=0;_t<tt.added.length;_t++){let yt=tt.added[_t],vt=T.indexOf(yt);if(vt===-1){for(let Zt=0;Zt<P.length;Zt++)if(Zt>=T.length){T.push(yt),vt=Zt;break}else if(T[Zt]===null){T[Zt]=yt,vt=Zt;break}if(vt===-1)break}let Mt=P[vt];Mt&&Mt.connect(yt)}}function q(tt,_t){_t===null?tt.matrixWorld.copy(tt.matrix):tt.matrixWorld.multiplyMatrices(_t.matrixWorld,tt.matrix),tt.matrixWorldInverse.copy(tt.matrixWorld).invert()}this.updateCamera=function(tt){if(s===null)return;let _t=tt.near,yt=tt.far;g.texture!==null&&(g.depthNear>0&&(_t=g.depthNear),g.depthFar>0&&(yt=g.depthFar)),B.near=R.near=S.near=_t,B.far=R.far=S.far=yt,(D!==B.near||V!==B.far)&&(s.updateRenderState({depthNear:B.near,depthFar:B.far}),D=B.near,V=B.far),B.layers.mask=tt.layers.mask|6,S.layers.mask=B.layers.mask&-5,R.layers.mask=B.layers.mask&-3;let vt=tt.parent,Mt=B.cameras;q(B,vt);for(let Zt=0;Zt<Mt.length;Zt++)q(Mt[Zt],vt);B.projectionMatrix.copy(S.projectionMatrix),B.projectionMatrixInverse.copy(S.projectionMatrixInverse),L===null&&tt.isPerspectiveCamera&&(L={camera:tt,fov:tt.fov,zoom:tt.zoom}),Z(tt,B,vt)};function Z(tt,_t,yt){yt===null?tt.matrix.copy(_t.matrixWorld):(tt.matrix.copy(yt.matrixWorld),tt.matrix.invert(),tt.matrix.multiply(_t.matrixWorld)),tt.matrix.decompose(tt.position,tt.quaternion,tt.scale),tt.updateMatrixWorld(!0),tt.projectionMatrix.copy(_t.projectionMatrix),tt.projectionMatrixInverse.copy(_t.projectionMatrixInverse),tt.isPerspectiveCamera&&(tt.fov=eo*2*Math.atan(1/tt.projectionMatrix.elements[5]),tt.zoom=1)}this.getCamera=function(){return B},this.getFoveation=function(){if(!(u===null&&p===null))return l},this.setFoveation=function(tt){l=tt,u!==null&&(u.fixedFoveation=tt),p!==null&&p.fixedFoveation!==void 0&&(p.fixedFoveation=tt)},this.hasDepthSensing=function(){return g.texture!==null},this.getDepthSensingMesh=function(){return g.getMesh(B)},this.getCameraTexture=function(tt){return d[tt]};let et=null;function ht(tt,_t){if(h=_t.getViewerPose(c||o),_=_t,h!==null){let yt=h.views;p!==null&&(t.setRenderTargetFramebuffer(b,p.framebuffer),t.setRenderTarget(b));let vt=!1;yt.length!==B.cameras.length&&(B.cameras.length=0,vt=!0);for(let Gt=0;Gt<yt.length;Gt++){let ue=yt[Gt],fe=null;if(p!==null)fe=p.getViewport(ue);else{let We=f.getViewSubImage(u,ue);fe=We.viewport,Gt===0&&(t.setRenderTargetTextures(b,We.colorTexture,We.depthStencilTexture),t.setRenderTarget(b))}let ne=F[Gt];ne===void 0&&(ne=new oi,ne.layers.enable(Gt),ne.viewport=new tn,F[Gt]=ne),ne.matrix.fromArray(ue.transform.matrix),ne.matrix.decompose(ne.position,ne.quaternion,ne.scale),ne.projectionMatrix.fromArray(ue.projectionMatrix),ne.projectionMatrixInverse.copy(ne.projectionMatrix).invert(),ne.viewport.set(fe.x,fe.y,fe.width,fe.height),Gt===0&&(B.matrix.copy(ne.matrix),B.matrix.decompose(B.position,B.quaternion,B.scale)),vt===!0&&B.cameras.push(ne)}let Mt=s.enabledFeatures;if(Mt&&Mt.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&x){f=n.getBinding();let Gt=f.getDepthInformation(yt[0]);Gt&&Gt.isValid&&Gt.texture&&g.init(Gt,s.renderState)}if(Mt&&Mt.includes("camera-access")&&x){t.state.unbindTexture(),f=n.getBinding();for(let Gt=0;Gt<yt.length;Gt++){let ue=yt[Gt].camera;if(ue){let fe=d[ue];fe||(fe=new sa,d[ue]=fe);let ne=f.getCameraImage(ue);fe.sourceTexture=ne}}}}for(let yt=0;yt<P.length;yt++){let vt=T[yt],Mt=P[yt];vt!==null&&Mt!==void 0&&Mt.update(vt,_t,c||o)}et&&et(tt,_t),_t.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:_t}),_=null}let ut=new am;ut.setAnimationLoop(ht),this.setAnimationLoop=function(tt){et=tt},this.dispose=function(){}}},_S=new Ie,_m=new ce;_m.set(-1,0,0,0,1,0,0,0,1);function xS(i,t){function e(g,d){g.matrixAutoUpdate===!0&&g.updateMatrix(),d.value.copy(g.matrix)}function n(g,d){d.color.getRGB(g.fogColor.value,Du(i)),d.isFog?(g.fogNear.value=d.near,g.fogFar.value=d.far):d.isFogExp2&&(g.fogDensity.value=d.density)}function s(g,d,y,C,b){d.isNodeMaterial?d.uniformsNeedUpdate=!1:d.isMeshBasicMaterial?r(g,d):d.isMeshLambertMaterial?(r(g,d),d.envMap&&(g.envMapIntensity.value=d.envMapIntensity)):d.isMeshToonMaterial?(r(g,d),f(g,d)):d.isMeshPhongMaterial?(r(g,d),h(g,d),d.envMap&&(g.envMapIntensity.value=d.envMapIntensity)):d.isMeshStandardMaterial?(r(g,d),u(g,d),d.isMeshPhysicalMaterial&&p(g,d,b)):d.isMeshMatcapMaterial?(r(g,d),_(g,d)):d.isMeshDepthMaterial?r(g,d):d.isMeshDistanceMaterial?(r(g,d),x(g,d)):d.isMeshNormalMaterial?r(g,d):d.isLineBasicMaterial?(o(g,d),d.isLineDashedMaterial&&a(g,d)):d.isPointsMaterial?l(g,d,y,C):d.isSpriteMaterial?c(g,d):d.isShadowMaterial?(g.color.value.copy(d.color),g.opacity.value=d.opacity):d.isShaderMaterial&&(d.uniformsNeedUpdate=!1)}function r(g,d){g.opacity.value=d.opacity,d.color&&g.diffuse.value.copy(d.color),d.emissive&&g.emissive.value.copy(d.emissive).multiplyScalar(d.emissiveIntensity),d.map&&(g.map.value=d.map,e(d.map,g.mapTransform)),d.alphaMap&&(g.alphaMap.value=d.alphaMap,e(d.alphaMap,g.alphaMapTransform)),d.bumpMap&&(g.bumpMap.value=d.bumpMap,e(d.bumpMap,g.bumpMapTransform),g.bumpScale.value=d.bumpScale,d.side===Nn&&(g.bumpScale.value*=-1)),d.normalMap&&(g.normalMap.value=d.normalMap,e(d.normalMap,g.normalMapTransform),g.normalScale.value.copy(d.normalScale),d.side===Nn&&g.normalScale.value.negate()),d.displacementMap&&(g.displacementMap.value=d.displacementMap,e(d.displacementMap,g.displacementMapTransform),g.displacementScale.value=d.displacementScale,g.displacementBias.value=d.displacementBias),d.emissiveMap&&(g.emissiveMap.value=d.emissiveMap,e(d.emissiveMap,g.emissiveMapTransform)),d.specularMap&&(g.specularMap.value=d.specularMap,e(d.specularMap,g.specularMapTransform)),d.alphaTest>0&&(g.alphaTest.value=d.alphaTest);let y=t.get(d),C=y.envMap,b=y.envMapRotation;C&&(g.envMap.value=C,g.envMapRotation.value.setFromMatrix4(_S.makeRotationFromEuler(b)).transpose(),C.isCubeTexture&&C.isRenderTargetTexture===!1&&g.envMapRotation.value.premultiply(_m),g.reflectivity.value=d.reflectivity,g.ior.value=d.ior,g.refractionRatio.value=d.refractionRatio),d.lightMap&&(g.lightMap.value=d.lightMap,g.lightMapIntensity.value=d.lightMapIntensity,e(d.lightMap,g.lightMapTransform)),d.aoMap&&(g.aoMap.value=d.aoMap,g.aoMapIntensity.value=d.aoMapIntensity,e(d.aoMap,g.aoMapTransform))}function o(g,d){g.diffuse.value.copy(d.color),g.opacity.value=d.opacity,d.map&&(g.map.value=d.map,e(d.map,g.mapTransform))}function a(g,d){g.dashSize.value=d.dashSize,g.totalSize.value=d.dashSize+d.gapSize,g.scale.value=d.scale}function l(g,d,y,C){g.diffuse.value.copy(d.color),g.opacity.value=d.opacity,g.size.value=d.size*y,g.scale.value=C*.5,d.map&&(g.map.value=d.map,e(d.map,g.uvTransform)),d.alphaMap&&(g.alphaMap.value=d.alphaMap,e(d.alphaMap,g.alphaMapTransform)),d.alphaTest>0&&(g.alphaTest.value=d.alphaTest)}function c(g,d){g.diffuse.value.copy(d.color),g.opacity.value=d.opacity,g.rotation.value=d.rotation,d.map&&(g.map.value=d.map,e(d.map,g.mapTransform)),d.alphaMap&&(g.alphaMap.value=d.alphaMap,e(d.alphaMap,g.alphaMapTransform)),d.alphaTest>0&&(g.alphaTest.value=d.alphaTest)}function h(g,d){g.specular.value.copy(d.specular),g.shininess.value=Math.max(d.shininess,1e-4)}function f(g,d){d.gradientMap&&(g.gradientMap.value=d.gradientMap)}function u(g,d){g.metalness.value=d.metalness,d.metalnessMap&&(g.metalnessMap.value=d.metalnessMap,e(d.metalnessMap,g.metalnessMapTransform)),g.roughness.value=d.roughness,d.roughnessMap&&(g.roughnessMap.value=d.roughnessMap,e(d.roughnessMap,g.roughnessMapTransform)),d.envMap&&(g.envMapIntensity.value=d.envMapIntensity)}function p(g,d,y){g.ior.value=d.ior,d.diffuseRoughness>0&&(g.diffuseRoughness.value=d.diffuseRoughness,d.diffuseRoughnessMap&&(g.diffuseRoughnessMap.value=d.diffuseRoughnessMap,e(d.diffuseRoughnessMap,g.diffuseRoughnessMapTransform))),d.sheen>0&&(g.sheenColor.value.copy(d.sheenColor).multiplyScalar(d.sheen),g.sheenRoughness.value=d.sheenRoughness,d.sheenColorMap&&(g.sheenColorMap.value=d.sheenColorMap,e(d.sheenColorMap,g.sheenColorMapTransform)),d.sheenRoughnessMap&&(g.sheenRoughnessMap.value=d.sheenRoughnessMap,e(d.sheenRoughnessMap,g.sheenRoughnessMapTransform))),d.clearcoat>0&&(g.clearcoat.value=d.clearcoat,g.clearcoatRoughness.value=d.clearcoatRoughness,d.clearcoatMap&&(g.clearcoatMap.value=d.clearcoatMap,e(d.clearcoatMap,g.clearcoatMapTransform)),d.clearcoatRoughnessMap&&(g.clearcoatRoughnessMap.value=d.clearcoatRoughnessMap,e(d.clearcoatRoughnessMap,g.clearcoatRoughnessMapTransform)),d.clearcoatNormalMap&&(g.clearcoatNormalMap.value=d.clearcoatNormalMap,e(d.clearcoatNormalMap,g.clearcoatNormalMapTransform),g.clearcoatNormalScale.value.copy(d.clearcoatNormalScale),d.side===Nn&&g.clearcoatNormalScale.value.negate())),d.dispersion>0&&(g.dispersion.value=d.dispersion),d.retroreflectivity>0&&(g.retroreflectivity.value=d.retroreflectivity),d.iridescence>0&&(g.iridescence.value=d.iridescence,g.iridescenceIOR.value=d.iridescenceIOR,g.iridescenceThicknessMinimum.value=d.iridescenceThicknessMinimum,g.iridescenceThicknessMaximum.value=d.iridescenceThicknessMaximum,d.iridescenceMap&&(g.iridescenceMap.value=d.iridescenceMap,e(d.iridescenceMap,g.iridescenceMapTransform)),d.iridescenceThicknessMap&&(g.iridescenceThicknessMap.value=d.iridescenceThicknessMap,e(d.iridescenceThicknessMap,g.iridescenceThicknessMapTransform))),d.transmission>0&&(g.transmission.value=d.transmission,g.transmissionSamplerMap.value=y.texture,g.transmissionSamplerSize.value.set(y.width,y.height),d.transmissionMap&&(g.transmissionMap.value=d.transmissionMap,e(d.transmissionMap,g.transmissionMapTransform)),g.thickness.value=d.thickness,d.thicknessMap&&(g.thicknessMap.value=d.thicknessMap,e(d.thicknessMap,g.thicknessMapTransform)),g.attenuationDistance.value=d.attenuationDistance,g.attenuationColor.value.copy(d.attenuationColor)),d.anisotropy>0&&(g.anisotropyVector.value.set(d.anisotropy*Math.cos(d.anisotropyRotation),d.anisotropy*Math.sin(d.anisotropyRotation)),d.anisotropyMap&&(g.anisotropyMap.value=d.anisotropyMap,e(d.anisotropyMap,g.anisotropyMapTransform))),g.specularIntensity.value=d.specularIntensity,g.specularColor.value.copy(d.specularColor),d.specularColorMap&&(g.specularColorMap.value=d.specularColorMap,e(d.specularColorMap,g.specularColorMapTransform)),d.specularIntensityMap&&(g.specularIntensityMap.value=d.specularIntensityMap,e(d.specularIntensityMap,g.specularIntensityMapTransform))}function _(g,d){d.matcap&&(g.matcap.value=d.matcap)}function x(g,d){let y=t.get(d).light;g.referencePosition.value.setFromMatrixPosition(y.matrixWorld),g.nearDistance.value=y.shadow.camera.near,g.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function yS(i,t,e,n){let s={},r={};function o(y,C){let b=C.program;n.uniformBlockBinding(y,b,s[y.id])}function a(y,C){let b=s[y.id];b===void 0&&(_(y),b=l(y),s[y.id]=b,y.addEventListener("dispose",g));let P=C.program;n.updateUBOMapping(y,P);let T=t.render.frame;r[y.id]!==T&&(c(y),r[y.id]=T)}function l(y){let C=i.createBuffer(),b=y.__size,P=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,C),i.bufferData(i.UNIFORM_BUFFER,b,P),i.bindBuffer(i.UNIFORM_BUFFER,null),C}function c(y){let C=s[y.id],b=y.uniforms,P=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,C);for(let T=0,m=b.length;T<m;T++){let M=b[T];if(Array.isArray(M))for(let L=0,S=M.length;L<S;L++)h(M[L],T,L,P);else h(M,T,0,P)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(y,C,b,P){if(u(y,C,b,P)===!0){let T=y.__offset,m=y.value;if(Array.isArray(m)){let M=0;for(let L=0;L<m.length;L++){let S=m[L],R=x(S,!0);f(S,y.__data,M),M+=R.storage/Float32Array.BYTES_PER_ELEMENT}}else f(m,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,T,y.__data)}}function f(y,C,b){typeof y=="number"||typeof y=="boolean"?C[b]=y:y.isMatrix3?(C[b]=y.elements[0],C[b+1]=y.elements[1],C[b+2]=y.elements[2],C[b+3]=0,C[b+4]=y.elements[3],C[b+5]=y.elements[4],C[b+6]=y.elements[5],C[b+7]=0,C[b+8]=y.elements[6],C[b+9]=y.elements[7],C[b+10]=y.elements[8],C[b+11]=0):ArrayBuffer.isView(y)?C.set(y.subarray(0,C.length-b),b):y.toArray(C,b)}function u(y,C,b,P){let T=y.value,m=C+"_"+b;if(Array.isArray(T)){P[m]===void 0&&(P[m]=[]);let M=P[m],L=!1;for(let S=0;S<T.length;S++)p(T[S],M,S)===!0&&(L=!0);return L}return p(T,P,m)}function p(y,C,b){if(C[b]===void 0)return typeof y=="number"||typeof y=="boolean"?C[b]=y:ArrayBuffer.isView(y)?C[b]=y.slice():C[b]=y.clone(),!0;{let P=C[b];if(typeof y=="number"||typeof y=="boolean"){if(P!==y)return C[b]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(P.equals(y)===!1)return P.copy(y),!0}}return!1}function _(y){let C=y.uniforms,b=0,P=16;for(let m=0,M=C.length;m<M;m++){let L=Array.isArray(C[m])?C[m]:[C[m]];for(let S=0,R=L.length;S<R;S++){let F=L[S],B=Array.isArray(F.value)?F.value:[F.value],D=Array.isArray(C[m])||Array.isArray(F.value),V=b;for(let H=0,K=B.length;H<K;H++){let q=B[H],Z=x(q,D),et=b%P,ht=et%Z.boundary,ut=et+ht;b+=ht,ut!==0&&P-ut<Z.storage&&(b+=P-ut),H===0&&(V=b),b+=Z.storage}let X=F.type==="int"?Int32Array:F.type==="uint"?Uint32Array:Float32Array;F.__data=new X((b-V)/Float32Array.BYTES_PER_ELEMENT),F.__offset=V}}let T=b%P;return T>0&&(b+=P-T),y.__size=b,y.__cache={},this}function x(y,C){let b={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(b.boundary=4,b.storage=4):y.isVector2?(b.boundary=8,b.storage=8):y.isVector3||y.isColor?(b.boundary=16,b.storage=12):y.isVector4?(b.boundary=16,b.storage=16):y.isMatrix3?(b.boundary=16,b.storage=48):y.isMatrix4?(b.boundary=16,b.storage=64):y.isTexture?te("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(b.boundary=16,b.storage=y.byteLength):te("WebGLRenderer: Unsupported uniform value type.",y),C===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function g(y){let C=y.target;C.removeEventListener("dispose",g),i.deleteBuffer(s[C.id]),delete s[C.id],delete r[C.id]}function d(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:d}}var vS=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Zi=null;function MS(){return Zi===null&&(Zi=new Qo(vS,16,16,Gs,Ri),Zi.name="DFG_LUT",Zi.minFilter=qn,Zi.magFilter=qn,Zi.wrapS=Hi,Zi.wrapT=Hi,Zi.generateMipmaps=!1,Zi.needsUpdate=!0),Zi}var Bc=class{constructor(t={}){let{canvas:e=Pp(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:f=!1,reversedDepthBuffer:u=!1,outputBufferType:p=Jn}=t;this.isWebGLRenderer=!0;let _;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");_=n.getContextAttributes().alpha}else _=o;let x=p,g=new Set([ic,nc,ec]),d=new Set([Jn,Ai,uo,hr,jl,Ql]),y=new Uint32Array(4),C=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},P=null,T=null,m=[],M=[],L=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Yi,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let S=this,R=!1,F=null,B=null,D=null,V=null;this._outputColorSpace=Xn;let X=0,H=0,K=null,q=-1,Z=null,et=new tn,ht=new tn,ut=null,tt=new ge(0),_t=0,yt=e.width,vt=e.height,Mt=1,Zt=null,oe=null,Gt=new tn(0,0,yt,vt),ue=new tn(0,0,yt,vt),fe=!1,ne=new Fs,We=new Rl,ke=!1,Ve=!1,Ce=new Ie,gn=new $,ot=new tn,At={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Nt=!1;function Jt(){return K===null?Mt:1}let k=n;function ft(A,G){return e.getContext(A,G)}let zt,Bt,mt,Te,$t,Qt,N,w,Y,pt,lt,bt,wt,it,rt,xt,z,at,st,Ct,St,Rt,Kt;try{let A={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:f};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",Wt,!1),e.addEventListener("webglcontextrestored",se,!1),e.addEventListener("webglcontextcreationerror",Lt,!1),k===null){let G="webgl2";if(k=ft(G,A),k===null)throw ft(G)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}ie()}catch(A){throw e.removeEventListener("webglcontextlost",Wt,!1),e.removeEventListener("webglcontextrestored",se,!1),e.removeEventListener("webglcontextcreationerror",Lt,!1),le("WebGLRenderer: "+A.message),A}function ie(){zt=new Lv(k),zt.init(),St=new pS(k,zt),Bt=new Mv(k,zt,t,St),mt=new fS(k,zt),Bt.reversedDepthBuffer&&u&&mt.buffers.depth.setReversed(!0),B=k.createFramebuffer(),D=k.createFramebuffer(),V=k.createFramebuffer(),Te=new Uv(k),$t=new jM,Qt=new dS(k,zt,mt,$t,Bt,St,Te),N=new Iv(S),w=new O_(k),Rt=new yv(k,w),Y=new Dv(k,w,Te,Rt),pt=new Ov(k,Y,w,Rt,Te),at=new Fv(k,Bt,Qt),rt=new Sv($t),lt=new KM(S,N,zt,Bt,Rt,rt),bt=new xS(S,$t),wt=new tS,it=new oS(zt),z=new xv(S,N,mt,pt,_,l),xt=new uS(S,pt,Bt),Kt=new yS(k,Te,Bt,mt),st=new vv(k,zt,Te),Ct=new Nv(k,zt,Te),Te.programs=lt.programs,S.capabilities=Bt,S.extensions=zt,S.properties=$t,S.renderLists=wt,S.shadowMap=xt,S.state=mt,S.info=Te}x!==Jn&&(L=new kv(x,e.width,e.height,a,s,r));let dt=new qu(S,k);this.xr=dt,this.getContext=function(){return k},this.getContextAttributes=function(){return k.getContextAttributes()},this.forceContextLoss=function(){let A=zt.get("WEBGL_lose_context");A&&A.loseContext()},this.forceContextRestore=function(){let A=zt.get("WEBGL_lose_context");A&&A.restoreContext()},this.getPixelRatio=function(){return Mt},this.setPixelRatio=function(A){A!==void 0&&(Mt=A,this.setSize(yt,vt,!1))},this.getSize=function(A){return A.set(yt,vt)},this.setSize=function(A,G,nt=!0){if(dt.isPresenting){te("WebGLRenderer: Can't change size while VR device is presenting.");return}yt=A,vt=G,e.width=Math.floor(A*Mt),e.height=Math.floor(G*Mt),nt===!0&&(e.style.width=A+"px",e.style.height=G+"px"),L!==null&&L.setSize(e.width,e.height),this.setViewport(0,0,A,G)},this.getDrawingBufferSize=function(A){return A.set(yt*Mt,vt*Mt).floor()},this.setDrawingBufferSize=function(A,G,nt){yt=A,vt=G,Mt=nt,e.width=Math.floor(A*nt),e.height=Math.floor(G*nt),this.setViewport(0,0,A,G)},this.setEffects=function(A){if(x===Jn){le("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(A){for(let G=0;G<A.length;G++)if(A[G].isOutputPass===!0){te("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}L.setEffects(A||[])},this.getCurrentViewport=function(A){return A.copy(et)},this.getViewport=function(A){return A.copy(Gt)},this.setViewport=function(A,G,nt,J){A.isVector4?Gt.set(A.x,A.y,A.z,A.w):Gt.set(A,G,nt,J),mt.viewport(et.copy(Gt).multiplyScalar(Jt()).round())},this.getScissor=function(A){return A.copy(ue)},this.setScissor=function(A,G,nt,J){A.isVector4?ue.set(A.x,A.y,A.z,A.w):ue.set(A,G,nt,J),mt.scissor(ht.copy(ue).multiplyScalar(Jt()).round())},this.getScissorTest=function(){return fe},this.setScissorTest=function(A){mt.setScissorTest(fe=A)},this.setOpaqueSort=function(A){Zt=A},this.setTransparentSort=function(A){oe=A},this.getClearColor=function(A){return A.copy(z.getClearColor())},this.setClearColor=function(){z.setClearColor(...arguments)},this.getClearAlpha=function(){return z.getClearAlpha()},this.setClearAlpha=function(){z.setClearAlpha(...arguments)},this.clear=function(A=!0,G=!0,nt=!0){let J=0;if(A){let j=!1;if(K!==null){let Pt=K.texture.format;j=g.has(Pt)}if(j){let Pt=K.texture.type,Dt=d.has(Pt),It=z.getClearColor(),Ut=z.getClearAlpha(),qt=It.r,ae=It.g,ye=It.b;Dt?(y[0]=qt,y[1]=ae,y[2]=ye,y[3]=Ut,k.clearBufferuiv(k.COLOR,0,y)):(C[0]=qt,C[1]=ae,C[2]=ye,C[3]=Ut,k.clearBufferiv(k.COLOR,0,C))}else J|=k.COLOR_BUFFER_BIT}G&&(J|=k.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),nt&&(J|=k.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),J!==0&&k.clear(J)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(A){A.setRenderer(this),F=A},this.dispose=function(){e.removeEventListener("webglcontextlost",Wt,!1),e.removeEventListener("webglcontextrestored",se,!1),e.removeEventListener("webglcontextcreationerror",Lt,!1),z.dispose(),wt.dispose(),it.dispose(),Qt.dispose(),$t.dispose(),N.dispose(),pt.dispose(),Y.dispose(),Rt.dispose(),Kt.dispose(),lt.dispose(),dt.dispose(),dt.removeEventListener("sessionstart",Ua),dt.removeEventListener("sessionend",Di),Qi.stop()};function Wt(A){A.preventDefault(),Ru("WebGLRenderer: Context Lost."),R=!0}function se(){Ru("WebGLRenderer: Context Restored."),R=!1;let A=Te.autoReset,G=xt.enabled,nt=xt.autoUpdate,J=xt.needsUpdate,j=xt.type;ie(),Te.autoReset=A,xt.enabled=G,xt.autoUpdate=nt,xt.needsUpdate=J,xt.type=j}function Lt(A){le("WebGLRenderer: A WebGL context could not be created. Reason: ",A.statusMessage)}function pe(A){let G=A.target;G.removeEventListener("dispose",pe),qe(G)}function qe(A){kn(A),$t.remove(A)}function kn(A){let G=$t.get(A).programs;G!==void 0&&(G.forEach(function(nt){lt.releaseProgram(nt)}),A.isShaderMaterial&&lt.releaseShaderCache(A))}this.renderBufferDirect=function(A,G,nt,J,j,Pt){G===null&&(G=At);let Dt=j.isMesh&&j.matrixWorld.determinantAffine()<0,It=Po(A,G,nt,J,j);mt.setMaterial(J,Dt);let Ut=nt.index,qt=1;if(J.wireframe===!0){if(Ut=Y.getWireframeAttribute(nt),Ut===void 0)return;qt=2}let ae=nt.drawRange,ye=nt.attributes.position,Xt=ae.start*qt,ve=(ae.start+ae.count)*qt;Pt!==null&&(Xt=Math.max(Xt,Pt.start*qt),ve=Math.min(ve,(Pt.start+Pt.count)*qt)),Ut!==null?(Xt=Math.max(Xt,0),ve=Math.min(ve,Ut.count)):ye!=null&&(Xt=Math.max(Xt,0),ve=Math.min(ve,ye.count));let en=ve-Xt;if(en<0||en===1/0)return;Rt.setup(j,J,It,nt,Ut);let Fe,Oe=st;if(Ut!==null&&(Fe=w.get(Ut),Oe=Ct,Oe.setIndex(Fe)),j.isMesh)J.wireframe===!0?(mt.setLineWidth(J.wireframeLinewidth*Jt()),Oe.setMode(k.LINES)):Oe.setMode(k.TRIANGLES);else if(j.isLine){let _n=J.linewidth;_n===void 0&&(_n=1),mt.setLineWidth(_n*Jt()),j.isLineSegments?Oe.setMode(k.LINES):j.isLineLoop?Oe.setMode(k.LINE_LOOP):Oe.setMode(k.LINE_STRIP)}else j.isPoints?Oe.setMode(k.POINTS):j.isSprite&&Oe.setMode(k.TRIANGLES);if(j.isBatchedMesh)if(zt.get("WEBGL_multi_draw"))Oe.renderMultiDraw(j._multiDrawStarts,j._multiDrawCounts,j._multiDrawCount);else{let _n=j._multiDrawStarts,Vt=j._multiDrawCounts,cn=j._multiDrawCount,be=Ut?w.get(Ut).bytesPerElement:1,es=$t.get(J).currentProgram.getUniforms();for(let hn=0;hn<cn;hn++)es.setValue(k,"_gl_DrawID",hn),Oe.render(_n[hn]/be,Vt[hn])}else if(j.isInstancedMesh)Oe.renderInstances(Xt,en,j.count);else if(nt.isInstancedBufferGeometry){let _n=nt._maxInstanceCount!==void 0?nt._maxInstanceCount:1/0,Vt=Math.min(nt.instanceCount,_n);Oe.renderInstances(Xt,en,Vt)}else Oe.render(Xt,en)};function Ao(A,G,nt,J){F!==null&&A.isNodeMaterial&&F.setObject(J,A),ke===!0&&rt.setState(A,nt,!1),A.transparent===!0&&A.side===$i&&A.forceSinglePass===!1?(A.side=Nn,A.needsUpdate=!0,Ni(A,G,J),A.side=Hs,A.needsUpdate=!0,Ni(A,G,J),A.side=$i):Ni(A,G,J)}this.compile=function(A,G,nt=null){nt===null&&(nt=A),F!==null&&F.renderStart(A,G,nt),T=it.get(nt),T.init(G),M.push(T),nt.traverseVisible(function(j){j.isLight&&j.layers.test(G.layers)&&(T.pushLight(j),j.castShadow&&T.pushShadow(j))}),A!==nt&&A.traverseVisible(function(j){j.isLight&&j.layers.test(G.layers)&&(T.pushLight(j),j.castShadow&&T.pushShadow(j))}),T.setupLights(),F!==null&&F.updateLights(T.state.lightsArray),Ve=this.localClippingEnabled,ke=rt.init(this.clippingPlanes,Ve),ke===!0&&rt.setGlobalState(this.clippingPlanes,G),F!==null&&xt.render(T.state.shadowsArray,nt,G);let J=new Set;return A.traverse(function(j){if(!(j.isMesh||j.isPoints||j.isLine||j.isSprite))return;let Pt=j.material;if(Pt)if(Array.isArray(Pt))for(let Dt=0;Dt<Pt.length;Dt++){let It=Pt[Dt];Ao(It,nt,G,j),J.add(It)}else Ao(Pt,nt,G,j),J.add(Pt)}),T=M.pop(),F!==null&&F.renderEnd(),J},this.compileAsync=function(A,G,nt=null){let J=this.compile(A,G,nt);return new Promise(j=>{function Pt(){if(J.forEach(function(Dt){let Ut=$t.get(Dt).currentProgram;(Ut===void 0||Ut.isReady())&&J.delete(Dt)}),J.size===0){j(A);return}setTimeout(Pt,10)}zt.get("KHR_parallel_shader_compile")!==null?Pt():setTimeout(Pt,10)})};let xr=null;function dh(A){xr&&xr(A)}function Ua(){Qi.stop()}function Di(){Qi.start()}let Qi=new am;Qi.setAnimationLoop(dh),typeof self<"u"&&Qi.setContext(self),this.setAnimationLoop=function(A){xr=A,dt.setAnimationLoop(A),A===null?Qi.stop():Qi.start()},dt.addEventListener("sessionstart",Ua),dt.addEventListener("sessionend",Di),this.render=function(A,G){if(G!==void 0&&G.isCamera!==!0){le("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(R===!0)return;F!==null&&F.renderStart(A,G);let nt=dt.enabled===!0&&dt.isPresenting===!0,J=L!==null&&(K===null||nt)&&L.begin(S,K);if(A.matrixWorldAutoUpdate===!0&&A.updateMatrixWorld(),G.parent===null&&G.matrixWorldAutoUpdate===!0&&G.updateMatrixWorld(),dt.enabled===!0&&dt.isPresenting===!0&&(L===null||L.isCompositing()===!1)&&(dt.cameraAutoUpdate===!0&&dt.updateCamera(G),G=dt.getCamera()),A.isScene===!0&&A.onBeforeRender(S,A,G,K),T=it.get(A,M.length),T.init(G),T.state.textureUnits=Qt.getTextureUnits(),M.push(T),Ce.multiplyMatrices(G.projectionMatrix,G.matrixWorldInverse),G.isArrayCamera?We.setFromArrayCamera(G):ne.setFromProjectionMatrix(Ce,mi,G.reversedDepth),Ve=this.localClippingEnabled,ke=rt.init(this.clippingPlanes,Ve),P=wt.get(A,m.length),P.init(),m.push(P),this.info.render.frame++,dt.enabled===!0&&dt.isPresenting===!0){let Dt=S.xr.getDepthSensingMesh();Dt!==null&&ts(Dt,G,-1/0,S.sortObjects)}ts(A,G,0,S.sortObjects),P.finish(),F!==null&&F.updateLights(T.state.lightsArray),S.sortObjects===!0&&P.sort(Zt,oe),Nt=dt.enabled===!1||dt.isPresenting===!1||dt.hasDepthSensing()===!1,Nt&&z.addToRenderList(P,A),this.info.autoReset===!0&&this.info.reset(),ke===!0&&rt.beginShadows();let j=T.state.shadowsArray;if(xt.render(j,A,G),ke===!0&&rt.endShadows(),(J&&L.hasRenderPass())===!1){let Dt=P.opaque,It=P.transmissive;if(T.setupLights(),G.isArrayCamera){let Ut=G.cameras;if(It.length>0)for(let qt=0,ae=Ut.length;qt<ae;qt++){let ye=Ut[qt];yi(Dt,It,A,ye)}Nt&&z.render(A);for(let qt=0,ae=Ut.length;qt<ae;qt++){let ye=Ut[qt];Ro(P,A,ye,ye.viewport)}}else It.length>0&&yi(Dt,It,A,G),Nt&&z.render(A),Ro(P,A,G)}K!==null&&H===0&&(Qt.updateMultisampleRenderTarget(K),Qt.updateRenderTargetMipmap(K)),J&&L.end(S),A.isScene===!0&&A.onAfterRender(S,A,G),Rt.resetDefaultState(),q=-1,Z=null,M.pop(),M.length>0?(T=M[M.length-1],Qt.setTextureUnits(T.state.textureUnits),ke===!0&&rt.setGlobalState(S.clippingPlanes,T.state.camera)):T=null,m.pop(),m.length>0?P=m[m.length-1]:P=null,F!==null&&F.renderEnd()};function ts(A,G,nt,J){if(A.visible===!1)return;if(A.layers.test(G.layers)){if(A.isGroup)nt=A.renderOrder;else if(A.isLOD)A.autoUpdate===!0&&A.update(G);else if(A.isLight)T.pushLight(A),A.castShadow&&T.pushShadow(A);else if(A.isSprite){let Dt=G.isArrayCamera?We:ne;if(!A.frustumCulled||A.intersectsFrustum(Dt)){J&&ot.setFromMatrixPosition(A.matrixWorld).applyMatrix4(Ce);let It=pt.update(A),Ut=A.material;Ut.visible&&P.push(A,It,Ut,nt,ot.z,null,G)}}else if(A.isMesh||A.isLine||A.isPoints){let Dt=G.isArrayCamera?We:ne;if(!A.frustumCulled||A.intersectsFrustum(Dt)){let It=pt.update(A),Ut=A.material;if(J&&(A.boundingSphere!==void 0?(A.boundingSphere===null&&A.computeBoundingSphere(),ot.copy(A.boundingSphere.center)):(It.boundingSphere===null&&It.computeBoundingSphere(),ot.copy(It.boundingSphere.center)),ot.applyMatrix4(A.matrixWorld).applyMatrix4(Ce)),Array.isArray(Ut)){let qt=It.groups;for(let ae=0,ye=qt.length;ae<ye;ae++){let Xt=qt[ae],ve=Ut[Xt.materialIndex];ve&&ve.visible&&P.push(A,It,ve,nt,ot.z,Xt,G)}}else Ut.visible&&P.push(A,It,Ut,nt,ot.z,null,G)}}}let Pt=A.children;for(let Dt=0,It=Pt.length;Dt<It;Dt++)ts(Pt[Dt],G,nt,J)}function Ro(A,G,nt,J){let{opaque:j,transmissive:Pt,transparent:Dt}=A;T.setupLightsView(nt),ke===!0&&rt.setGlobalState(S.clippingPlanes,nt),J&&mt.viewport(et.copy(J)),j.length>0&&nn(j,G,nt),Pt.length>0&&nn(Pt,G,nt),Dt.length>0&&nn(Dt,G,nt),mt.buffers.depth.setTest(!0),mt.buffers.depth.setMask(!0),mt.buffers.color.setMask(!0),mt.setPolygonOffset(!1)}function yi(A,G,nt,J){if((nt.isScene===!0?nt.overrideMaterial:null)!==null)return;if(T.state.transmissionRenderTarget[J.id]===void 0){let Xt=zt.has("EXT_color_buffer_half_float")||zt.has("EXT_color_buffer_float");T.state.transmissionRenderTarget[J.id]=new ai(1,1,{generateMipmaps:!0,type:Xt?Ri:Jn,minFilter:xs,samples:Math.max(4,Bt.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:we.workingColorSpace})}let Pt=T.state.transmissionRenderTarget[J.id],Dt=J.viewport||et;Pt.setSize(Dt.z*S.transmissionResolutionScale,Dt.w*S.transmissionResolutionScale);let It=S.getRenderTarget(),Ut=S.getActiveCubeFace(),qt=S.getActiveMipmapLevel();S.setRenderTarget(Pt),S.getClearColor(tt),_t=S.getClearAlpha(),_t<1&&S.setClearColor(16777215,.5),S.clear(),Nt&&z.render(nt);let ae=S.toneMapping;S.toneMapping=Yi;let ye=J.viewport;if(J.viewport!==void 0&&(J.viewport=void 0),T.setupLightsView(J),ke===!0&&rt.setGlobalState(S.clippingPlanes,J),nn(A,nt,J),Qt.updateMultisampleRenderTarget(Pt),Qt.updateRenderTargetMipmap(Pt),zt.has("WEBGL_multisampled_render_to_texture")===!1){let Xt=!1;for(let ve=0,en=G.length;ve<en;ve++){let Fe=G[ve],{object:Oe,geometry:_n,material:Vt,group:cn}=Fe;if(Vt.side===$i&&Oe.layers.test(J.layers)){let be=Vt.side;Vt.side=Nn,Vt.needsUpdate=!0,an(Oe,nt,J,_n,Vt,cn),Vt.side=be,Vt.needsUpdate=!0,Xt=!0}}Xt===!0&&(Qt.updateMultisampleRenderTarget(Pt),Qt.updateRenderTargetMipmap(Pt))}S.setRenderTarget(It,Ut,qt),S.setClearColor(tt,_t),ye!==void 0&&(J.viewport=ye),S.toneMapping=ae}function nn(A,G,nt){let J=G.isScene===!0?G.overrideMaterial:null;for(let j=0,Pt=A.length;j<Pt;j++){let Dt=A[j],{object:It,geometry:Ut,group:qt}=Dt,ae=Dt.material;ae.allowOverride===!0&&J!==null&&(ae=J),It.layers.test(nt.layers)&&an(It,G,nt,Ut,ae,qt)}}function an(A,G,nt,J,j,Pt){F!==null&&j.isNodeMaterial&&F.setObject(A,j),A.onBeforeRender(S,G,nt,J,j,Pt),A.modelViewMatrix.multiplyMatrices(nt.matrixWorldInverse,A.matrixWorld),A.normalMatrix.getNormalMatrix(A.modelViewMatrix),j.onBeforeRender(S,G,nt,J,A,Pt),j.transparent===!0&&j.side===$i&&j.forceSinglePass===!1?(j.side=Nn,j.needsUpdate=!0,S.renderBufferDirect(nt,G,J,j,A,Pt),j.side=Hs,j.needsUpdate=!0,S.renderBufferDirect(nt,G,J,j,A,Pt),j.side=$i):S.renderBufferDirect(nt,G,J,j,A,Pt),A.onAfterRender(S,G,nt,J,j,Pt)}function ln(A){let G=0;for(let nt of A)nt.texture!==null&&G++;return G}function Ni(A,G,nt){G.isScene!==!0&&(G=At);let J=$t.get(A),j=T.state.lights,Pt=T.state.shadowsArray,Dt=j.state.version,It=lt.getParameters(A,j.state,Pt,G,nt,T.state.lightProbeGridArray),Ut=lt.getProgramCacheKey(It),qt=J.programs;J.environment=A.isMeshStandardMaterial||A.isMeshLambertMaterial||A.isMeshPhongMaterial?G.environment:null,J.fog=G.fog;let ae=A.isMeshStandardMaterial||A.isMeshLambertMaterial&&!A.envMap||A.isMeshPhongMaterial&&!A.envMap;J.envMap=N.get(A.envMap||J.environment,ae),J.envMapRotation=J.environment!==null&&A.envMap===null?G.environmentRotation:A.envMapRotation,qt===void 0&&(A.addEventListener("dispose",pe),qt=new Map,J.programs=qt,J.programVariants=new Map);let ye=qt.get(Ut);if(ye!==void 0){if(J.currentProgram===ye&&J.lightsStateVersion===Dt)return Co(A,It),ye}else It.uniforms=lt.getUniforms(A),F!==null&&A.isNodeMaterial&&F.build(A,nt,It),A.onBeforeCompile(It,S),ye=lt.acquireProgram(It,Ut),qt.set(Ut,ye),J.uniforms=It.uniforms;let Xt=J.uniforms;return(!A.isShaderMaterial&&!A.isRawShaderMaterial||A.clipping===!0)&&(Xt.clippingPlanes=rt.uniform),Co(A,It),J.needsLights=ws(A),J.lightsStateVersion=Dt,J.needsLights&&(Xt.ambientLightColor.value=j.state.ambient,Xt.lightProbe.value=j.state.probe,Xt.sunLights.value=j.state.sun,Xt.sunLightShadows.value=j.state.sunShadow,Xt.directionalLights.value=j.state.directional,Xt.directionalLightShadows.value=j.state.directionalShadow,Xt.spotLights.value=j.state.spot,Xt.spotLightShadows.value=j.state.spotShadow,Xt.rectAreaLights.value=j.state.rectArea,Xt.ltc_1.value=j.state.rectAreaLTC1,Xt.ltc_2.value=j.state.rectAreaLTC2,Xt.pointLights.value=j.state.point,Xt.pointLightShadows.value=j.state.pointShadow,Xt.hemisphereLights.value=j.state.hemi,Xt.sunShadowMatrix.value=j.state.sunShadowMatrix,Xt.sunShadowCascade.value=j.state.sunShadowCascade,Xt.directionalShadowMatrix.value=j.state.directionalShadowMatrix,Xt.spotLightMatrix.value=j.state.spotLightMatrix,Xt.spotLightMap.value=j.state.spotLightMap,Xt.pointShadowMatrix.value=j.state.pointShadowMatrix),J.numLightProbeGrids=ln(T.state.lightProbeGridArray),J.currentProgram=ye,J.uniformsList=null,ye}function jn(A,G,nt,J,j){let Pt=$t.get(A),Dt=Pt.currentProgram.id+","+J+","+j,It=Pt.programVariants.get(Dt);return It===void 0?(It=Ni(A,G,nt),Pt.programVariants.set(Dt,It)):(Pt.currentProgram=It,Pt.uniformsList=null,Pt.outputColorSpace=J,Pt.toneMapping=j),It}function bs(A){if(A.uniformsList===null){let G=A.currentProgram.getUniforms();A.uniformsList=po.seqWithValue(G.seq,A.uniforms)}return A.uniformsList}function Co(A,G){let nt=$t.get(A);nt.outputColorSpace=G.outputColorSpace,nt.batching=G.batching,nt.batchingColor=G.batchingColor,nt.instancing=G.instancing,nt.instancingColor=G.instancingColor,nt.instancingMorph=G.instancingMorph,nt.skinning=G.skinning,nt.morphTargets=G.morphTargets,nt.morphNormals=G.morphNormals,nt.morphColors=G.morphColors,nt.morphTargetsCount=G.morphTargetsCount,nt.numClippingPlanes=G.numClippingPlanes,nt.numIntersection=G.numClipIntersection,nt.vertexAlphas=G.vertexAlphas,nt.vertexTangents=G.vertexTangents,nt.toneMapping=G.toneMapping}function Po(A,G,nt,J,j){G.isScene!==!0&&(G=At),Qt.resetTextureUnits();let Pt=G.fog,Dt=J.isMeshStandardMaterial||J.isMeshLambertMaterial||J.isMeshPhongMaterial?G.environment:null,It=K===null?S.outputColorSpace:K.isXRRenderTarget===!0?K.texture.colorSpace:we.workingColorSpace,Ut=J.isMeshStandardMaterial||J.isMeshLambertMaterial&&!J.envMap||J.isMeshPhongMaterial&&!J.envMap,qt=N.get(J.envMap||Dt,Ut),ae=J.vertexColors===!0&&!!nt.attributes.color&&nt.attributes.color.itemSize===4,ye=!!nt.attributes.tangent&&(!!J.normalMap||J.anisotropy>0),Xt=!!nt.morphAttributes.position,ve=!!nt.morphAttributes.normal,en=!!nt.morphAttributes.color,Fe=Yi;J.toneMapped&&(K===null||K.isXRRenderTarget===!0)&&(Fe=S.toneMapping);let Oe=nt.morphAttributes.position||nt.morphAttributes.normal||nt.morphAttributes.color,_n=Oe!==void 0?Oe.length:0,Vt=$t.get(J),cn=T.state.lights;if(ke===!0&&(Ve===!0||A!==Z)){let Be=A===Z&&J.id===q;rt.setState(J,A,Be)}let be=!1,es=!1;J.version===Vt.__version?Vt.needsLights&&Vt.lightsStateVersion!==cn.state.version||j.isBatchedMesh&&Vt.batching===!1||!j.isBatchedMesh&&Vt.batching===!0||j.isBatchedMesh&&Vt.batchingColor===!0&&j._colorsTexture===null||j.isBatchedMesh&&Vt.batchingColor===!1&&j._colorsTexture!==null||j.isInstancedMesh&&Vt.instancing===!1||!j.isInstancedMesh&&Vt.instancing===!0||j.isSkinnedMesh&&Vt.skinning===!1||!j.isSkinnedMesh&&Vt.skinning===!0||j.isInstancedMesh&&Vt.instancingColor===!0&&j.instanceColor===null||j.isInstancedMesh&&Vt.instancingColor===!1&&j.instanceColor!==null||j.isInstancedMesh&&Vt.instancingMorph===!0&&j.morphTexture===null||j.isInstancedMesh&&Vt.instancingMorph===!1&&j.morphTexture!==null||Vt.envMap!==qt||J.fog===!0&&Vt.fog!==Pt||Vt.numClippingPlanes!==void 0&&(Vt.numClippingPlanes!==rt.numPlanes||Vt.numIntersection!==rt.numIntersection)||Vt.vertexAlphas!==ae||Vt.vertexTangents!==ye||Vt.morphTargets!==Xt||Vt.morphNormals!==ve||Vt.morphColors!==en||Vt.morphTargetsCount!==_n||Vt.numLightProbeGrids!==ln(T.state.lightProbeGridArray)?be=!0:(Vt.outputColorSpace!==It||Vt.toneMapping!==Fe)&&(es=!0):(be=!0,Vt.__version=J.version);let hn=Vt.currentProgram;(be===!0||es===!0)&&(hn=es===!0?jn(J,G,j,It,Fe):Ni(J,G,j),F&&J.isNodeMaterial&&F.onUpdateProgram(J,hn,Vt));let Mr=!1,Ui=!1,ns=!1,_e=hn.getUniforms(),sn=Vt.uniforms;if(mt.useProgram(hn.program)&&(Mr=!0,Ui=!0,ns=!0),J.id!==q&&(q=J.id,Ui=!0),Mr||Z!==A){mt.buffers.depth.getReversed()&&A.reversedDepth!==!0&&(A._reversedDepth=!0,A.updateProjectionMatrix()),_e.setValue(k,"projectionMatrix",A.projectionMatrix),_e.setValue(k,"viewMatrix",A.matrixWorldInverse);let un=_e.map.cameraPosition;un!==void 0&&un.setValue(k,gn.setFromMatrixPosition(A.matrixWorld)),Bt.logarithmicDepthBuffer&&_e.setValue(k,"logDepthBufFC",2/(Math.log(A.far+1)/Math.LN2)),(J.isMeshPhongMaterial||J.isMeshToonMaterial||J.isMeshLambertMaterial||J.isMeshBasicMaterial||J.isMeshStandardMaterial||J.isShaderMaterial)&&_e.setValue(k,"isOrthographic",A.isOrthographicCamera===!0),Z!==A&&(Z=A,Ui=!0,ns=!0)}if(Vt.needsLights&&(cn.state.sunShadowMap.length>0&&_e.setValue(k,"sunShadowMap",cn.state.sunShadowMap,Qt),cn.state.directionalShadowMap.length>0&&_e.setValue(k,"directionalShadowMap",cn.state.directionalShadowMap,Qt),cn.state.spotShadowMap.length>0&&_e.setValue(k,"spotShadowMap",cn.state.spotShadowMap,Qt),cn.state.pointShadowMap.length>0&&_e.setValue(k,"pointShadowMap",cn.state.pointShadowMap,Qt)),j.isSkinnedMesh){_e.setOptional(k,j,"bindMatrix"),_e.setOptional(k,j,"bindMatrixInverse");let Be=j.skeleton;Be&&(Be.boneTexture===null&&Be.computeBoneTexture(),_e.setValue(k,"boneTexture",Be.boneTexture,Qt))}j.isBatchedMesh&&(_e.setOptional(k,j,"batchingTexture"),_e.setValue(k,"batchingTexture",j._matricesTexture,Qt),_e.setOptional(k,j,"batchingIdTexture"),_e.setValue(k,"batchingIdTexture",j._indirectTexture,Qt),_e.setOptional(k,j,"batchingColorTexture"),j._colorsTexture!==null&&_e.setValue(k,"batchingColorTexture",j._colorsTexture,Qt));let zn=nt.morphAttributes;if((zn.position!==void 0||zn.normal!==void 0||zn.color!==void 0)&&at.update(j,nt,hn),(Ui||Vt.receiveShadow!==j.receiveShadow)&&(Vt.receiveShadow=j.receiveShadow,_e.setValue(k,"receiveShadow",j.receiveShadow)),(J.isMeshStandardMaterial||J.isMeshLambertMaterial||J.isMeshPhongMaterial)&&J.envMap===null&&G.environment!==null&&(sn.envMapIntensity.value=G.environmentIntensity),sn.dfgLUT!==void 0&&(sn.dfgLUT.value=MS()),Ui){if(_e.setValue(k,"toneMappingExposure",S.toneMappingExposure),Vt.needsLights&&yr(sn,ns),Pt&&J.fog===!0&&bt.refreshFogUniforms(sn,Pt),bt.refreshMaterialUniforms(sn,J,Mt,vt,T.state.transmissionRenderTarget[A.id]),Vt.needsLights&&Vt.numLightProbeGrids>0){let Be=b,un=0;for(let Un of T.state.lightProbeGridArray)Un.texture!==null&&(Be.textures[un]=Un.texture,Be.min[un]=Un.boundingBox.min,Be.max[un]=Un.boundingBox.max,Be.resolution[un]=Un.resolution,un++);for(let Un in Be)Be[Un].length=un;sn.probesSH.value=Be.textures,sn.probesMin.value=Be.min,sn.probesMax.value=Be.max,sn.probesResolution.value=Be.resolution}po.upload(k,bs(Vt),sn,Qt)}if(J.isShaderMaterial&&J.uniformsNeedUpdate===!0&&(po.upload(k,bs(Vt),sn,Qt),J.uniformsNeedUpdate=!1),J.isSpriteMaterial&&_e.setValue(k,"center",j.center),_e.setValue(k,"modelViewMatrix",j.modelViewMatrix),_e.setValue(k,"normalMatrix",j.normalMatrix),_e.setValue(k,"modelMatrix",j.matrixWorld),J.uniformsGroups!==void 0){let Be=J.uniformsGroups;for(let un=0,Un=Be.length;un<Un;un++){let Fa=Be[un];Kt.update(Fa,hn),Kt.bind(Fa,hn)}}return hn}function yr(A,G){A.ambientLightColor.needsUpdate=G,A.lightProbe.needsUpdate=G,A.sunLights.needsUpdate=G,A.sunLightShadows.needsUpdate=G,A.directionalLights.needsUpdate=G,A.directionalLightShadows.needsUpdate=G,A.pointLights.needsUpdate=G,A.pointLightShadows.needsUpdate=G,A.spotLights.needsUpdate=G,A.spotLightShadows.needsUpdate=G,A.rectAreaLights.needsUpdate=G,A.hemisphereLights.needsUpdate=G}function ws(A){return A.isMeshLambertMaterial||A.isMeshToonMaterial||A.isMeshPhongMaterial||A.isMeshStandardMaterial||A.isShadowMaterial||A.isShaderMaterial&&A.lights===!0}this.getActiveCubeFace=function(){return X},this.getActiveMipmapLevel=function(){return H},this.getRenderTarget=function(){return K},this.setRenderTargetTextures=function(A,G,nt){let J=$t.get(A);J.__autoAllocateDepthBuffer=A.resolveDepthBuffer===!1,J.__autoAllocateDepthBuffer===!1&&(J.__useRenderToTexture=!1),$t.get(A.texture).__webglTexture=G,$t.get(A.depthTexture).__webglTexture=J.__autoAllocateDepthBuffer?void 0:nt,J.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(A,G){let nt=$t.get(A);nt.__webglFramebuffer=G,nt.__useDefaultFramebuffer=G===void 0},this.setRenderTarget=function(A,G=0,nt=0){K=A,X=G,H=nt;let J=null,j=!1,Pt=!1;if(A){let It=$t.get(A);if(It.__useDefaultFramebuffer!==void 0){mt.bindFramebuffer(k.FRAMEBUFFER,It.__webglFramebuffer),et.copy(A.viewport),ht.copy(A.scissor),ut=A.scissorTest,mt.viewport(et),mt.scissor(ht),mt.setScissorTest(ut),q=-1;return}else if(It.__webglFramebuffer===void 0)Qt.setupRenderTarget(A);else if(It.__hasExternalTextures)Qt.rebindTextures(A,$t.get(A.texture).__webglTexture,$t.get(A.depthTexture).__webglTexture);else if(A.depthBuffer){let ae=A.depthTexture;if(It.__boundDepthTexture!==ae){if(ae!==null&&$t.has(ae)&&(A.width!==ae.image.width||A.height!==ae.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Qt.setupDepthRenderbuffer(A)}}let Ut=A.texture;(Ut.isData3DTexture||Ut.isDataArrayTexture||Ut.isCompressedArrayTexture)&&(Pt=!0);let qt=$t.get(A).__webglFramebuffer;A.isWebGLCubeRenderTarget?(Array.isArray(qt[G])?J=qt[G][nt]:J=qt[G],j=!0):A.samples>0&&Qt.useMultisampledRTT(A)===!1?J=$t.get(A).__webglMultisampledFramebuffer:Array.isArray(qt)?J=qt[nt]:J=qt,et.copy(A.viewport),ht.copy(A.scissor),ut=A.scissorTest}else et.copy(Gt).multiplyScalar(Mt).floor(),ht.copy(ue).multiplyScalar(Mt).floor(),ut=fe;if(nt!==0&&(J=B),mt.bindFramebuffer(k.FRAMEBUFFER,J)&&mt.drawBuffers(A,J),mt.viewport(et),mt.scissor(ht),mt.setScissorTest(ut),j){let It=$t.get(A.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_CUBE_MAP_POSITIVE_X+G,It.__webglTexture,nt)}else if(Pt){let It=G;for(let Ut=0;Ut<A.textures.length;Ut++){let qt=$t.get(A.textures[Ut]);k.framebufferTextureLayer(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0+Ut,qt.__webglTexture,nt,It)}}else if(A!==null&&nt!==0){let It=$t.get(A.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,It.__webglTexture,nt)}q=-1};function vr(A){let G=$t.get(A);return(G.__readFormat!==A.format||G.__readType!==A.type)&&(G.__readFormat=A.format,G.__readType=A.type,G.__formatReadable=Bt.textureFormatReadable(A.format),G.__typeReadable=Bt.textureTypeReadable(A.type)),G}this.readRenderTargetPixels=function(A,G,nt,J,j,Pt,Dt,It=0){if(!(A&&A.isWebGLRenderTarget)){le("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Ut=$t.get(A).__webglFramebuffer;if(A.isWebGLCubeRenderTarget&&Dt!==void 0&&(Ut=Ut[Dt],Array.isArray(Ut)&&(Ut=Ut[0])),Ut){mt.bindFramebuffer(k.FRAMEBUFFER,Ut);try{let qt=A.textures[It],ae=qt.format,ye=qt.type;A.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+It);let Xt=vr(qt);if(Xt.__formatReadable===!1){le("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Xt.__typeReadable===!1){le("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}G>=0&&G<=A.width-J&&nt>=0&&nt<=A.height-j&&k.readPixels(G,nt,J,j,St.convert(ae),St.convert(ye),Pt)}finally{let qt=K!==null?$t.get(K).__webglFramebuffer:null;mt.bindFramebuffer(k.FRAMEBUFFER,qt)}}},this.readRenderTargetPixelsAsync=async function(A,G,nt,J,j,Pt,Dt,It=0){if(!(A&&A.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Ut=$t.get(A).__webglFramebuffer;if(A.isWebGLCubeRenderTarget&&Dt!==void 0&&(Ut=Ut[Dt],Array.isArray(Ut)&&(Ut=Ut[0])),Ut)if(G>=0&&G<=A.width-J&&nt>=0&&nt<=A.height-j){mt.bindFramebuffer(k.FRAMEBUFFER,Ut);let qt=A.textures[It],ae=qt.format,ye=qt.type;A.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+It);let Xt=vr(qt);if(Xt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Xt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ve=k.createBuffer();k.bindBuffer(k.PIXEL_PACK_BUFFER,ve),k.bufferData(k.PIXEL_PACK_BUFFER,Pt.byteLength,k.STREAM_READ),k.readPixels(G,nt,J,j,St.convert(ae),St.convert(ye),0),k.bindBuffer(k.PIXEL_PACK_BUFFER,null);let en=K!==null?$t.get(K).__webglFramebuffer:null;mt.bindFramebuffer(k.FRAMEBUFFER,en);let Fe=k.fenceSync(k.SYNC_GPU_COMMANDS_COMPLETE,0);return k.flush(),await Lp(k,Fe,4),k.bindBuffer(k.PIXEL_PACK_BUFFER,ve),k.getBufferSubData(k.PIXEL_PACK_BUFFER,0,Pt),k.bindBuffer(k.PIXEL_PACK_BUFFER,null),k.deleteBuffer(ve),k.deleteSync(Fe),Pt}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(A,G=null,nt=0){let J=Math.pow(2,-nt),j=Math.floor(A.image.width*J),Pt=Math.floor(A.image.height*J),Dt=G!==null?G.x:0,It=G!==null?G.y:0;Qt.setTexture2D(A,0),k.copyTexSubImage2D(k.TEXTURE_2D,nt,0,0,Dt,It,j,Pt),mt.unbindTexture()},this.copyTextureToTexture=function(A,G,nt=null,J=null,j=0,Pt=0){let Dt,It,Ut,qt,ae,ye,Xt,ve,en,Fe=A.isCompressedTexture?A.mipmaps[Pt]:A.image;if(nt!==null)Dt=nt.max.x-nt.min.x,It=nt.max.y-nt.min.y,Ut=nt.isBox3?nt.max.z-nt.min.z:1,qt=nt.min.x,ae=nt.min.y,ye=nt.isBox3?nt.min.z:0;else{let _e=Math.pow(2,-j);Dt=Math.floor(Fe.width*_e),It=Math.floor(Fe.height*_e),A.isDataArrayTexture?Ut=Fe.depth:A.isData3DTexture?Ut=Math.floor(Fe.depth*_e):Ut=1,qt=0,ae=0,ye=0}J!==null?(Xt=J.x,ve=J.y,en=J.z):(Xt=0,ve=0,en=0);let Oe=St.convert(G.format),_n=St.convert(G.type),Vt;G.isData3DTexture?(Qt.setTexture3D(G,0),Vt=k.TEXTURE_3D):G.isDataArrayTexture||G.isCompressedArrayTexture?(Qt.setTexture2DArray(G,0),Vt=k.TEXTURE_2D_ARRAY):(Qt.setTexture2D(G,0),Vt=k.TEXTURE_2D),mt.activeTexture(k.TEXTURE0),mt.pixelStorei(k.UNPACK_FLIP_Y_WEBGL,G.flipY),mt.pixelStorei(k.UNPACK_PREMULTIPLY_ALPHA_WEBGL,G.premultiplyAlpha),mt.pixelStorei(k.UNPACK_ALIGNMENT,G.unpackAlignment);let cn=mt.getParameter(k.UNPACK_ROW_LENGTH),be=mt.getParameter(k.UNPACK_IMAGE_HEIGHT),es=mt.getParameter(k.UNPACK_SKIP_PIXELS),hn=mt.getParameter(k.UNPACK_SKIP_ROWS),Mr=mt.getParameter(k.UNPACK_SKIP_IMAGES);mt.pixelStorei(k.UNPACK_ROW_LENGTH,Fe.width),mt.pixelStorei(k.UNPACK_IMAGE_HEIGHT,Fe.height),mt.pixelStorei(k.UNPACK_SKIP_PIXELS,qt),mt.pixelStorei(k.UNPACK_SKIP_ROWS,ae),mt.pixelStorei(k.UNPACK_SKIP_IMAGES,ye);let Ui=A.isDataArrayTexture||A.isData3DTexture,ns=G.isDataArrayTexture||G.isData3DTexture;if(A.isDepthTexture){let _e=$t.get(A),sn=$t.get(G),zn=$t.get(_e.__renderTarget),Be=$t.get(sn.__renderTarget);mt.bindFramebuffer(k.READ_FRAMEBUFFER,zn.__webglFramebuffer),mt.bindFramebuffer(k.DRAW_FRAMEBUFFER,Be.__webglFramebuffer);for(let un=0;un<Ut;un++)Ui&&(k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,$t.get(A).__webglTexture,j,ye+un),k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,$t.get(G).__webglTexture,Pt,en+un)),k.blitFramebuffer(qt,ae,qt+Dt,ae+It,Xt,ve,Xt+Dt,ve+It,k.DEPTH_BUFFER_BIT,k.NEAREST);mt.bindFramebuffer(k.READ_FRAMEBUFFER,null),mt.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else if(j!==0||A.isRenderTargetTexture||$t.has(A)){let _e=$t.get(A),sn=$t.get(G);mt.bindFramebuffer(k.READ_FRAMEBUFFER,D),mt.bindFramebuffer(k.DRAW_FRAMEBUFFER,V);for(let zn=0;zn<Ut;zn++)Ui?k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,_e.__webglTexture,j,ye+zn):k.framebufferTexture2D(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,_e.__webglTexture,j),ns?k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,sn.__webglTexture,Pt,en+zn):k.framebufferTexture2D(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,sn.__webglTexture,Pt),j!==0?k.blitFramebuffer(qt,ae,qt+Dt,ae+It,Xt,ve,Xt+Dt,ve+It,k.COLOR_BUFFER_BIT,k.NEAREST):ns?k.copyTexSubImage3D(Vt,Pt,Xt,ve,en+zn,qt,ae,Dt,It):k.copyTexSubImage2D(Vt,Pt,Xt,ve,qt,ae,Dt,It);mt.bindFramebuffer(k.READ_FRAMEBUFFER,null),mt.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else ns?A.isDataTexture||A.isData3DTexture?k.texSubImage3D(Vt,Pt,Xt,ve,en,Dt,It,Ut,Oe,_n,Fe.data):G.isCompressedArrayTexture?k.compressedTexSubImage3D(Vt,Pt,Xt,ve,en,Dt,It,Ut,Oe,Fe.data):k.texSubImage3D(Vt,Pt,Xt,ve,en,Dt,It,Ut,Oe,_n,Fe):A.isDataTexture?k.texSubImage2D(k.TEXTURE_2D,Pt,Xt,ve,Dt,It,Oe,_n,Fe.data):A.isCompressedTexture?k.compressedTexSubImage2D(k.TEXTURE_2D,Pt,Xt,ve,Fe.width,Fe.height,Oe,Fe.data):k.texSubImage2D(k.TEXTURE_2D,Pt,Xt,ve,Dt,It,Oe,_n,Fe);mt.pixelStorei(k.UNPACK_ROW_LENGTH,cn),mt.pixelStorei(k.UNPACK_IMAGE_HEIGHT,be),mt.pixelStorei(k.UNPACK_SKIP_PIXELS,es),mt.pixelStorei(k.UNPACK_SKIP_ROWS,hn),mt.pixelStorei(k.UNPACK_SKIP_IMAGES,Mr),Pt===0&&G.generateMipmaps===!0&&G.mipmapsAutoUpdate===!0&&k.generateMipmap(Vt),mt.unbindTexture()},this.initRenderTarget=function(A){$t.get(A).__webglFramebuffer===void 0&&Qt.setupRenderTarget(A)},this.initTexture=function(A){A.isCubeTexture?Qt.setTextureCube(A,0):A.isData3DTexture?Qt.setTexture3D(A,0):A.isDataArrayTexture||A.isCompressedArrayTexture?Qt.setTexture2DArray(A,0):Qt.setTexture2D(A,0),mt.unbindTexture()},this.resetState=function(){X=0,H=0,K=null,mt.reset(),Rt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return mi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=we._getDrawingBufferColorSpace(t),e.unpackColorSpace=we._getUnpackColorSpace()}};var xm={type:"change"},Yu={type:"start"},vm={type:"end"},Vc=new sr,ym=new ri,bS=Math.cos(70*Lu.DEG2RAD),vn=new $,Kn=2*Math.PI,Le={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},$u=1e-6,Hc=class extends ma{constructor(t,e=null){super(t,e),this.state=Le.NONE,this.target=new $,this.cursor=new $,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:zs.ROTATE,MIDDLE:zs.DOLLY,RIGHT:zs.PAN},this.touches={ONE:Vs.ROTATE,TWO:Vs.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new $,this._lastQuaternion=new Ln,this._lastTargetPosition=new $,this._quat=new Ln().setFromUnitVectors(t.up,new $(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new ao,this._sphericalDelta=new ao,this._scale=1,this._panOffset=new $,this._rotateStart=new re,this._rotateEnd=new re,this._rotateDelta=new re,this._panStart=new re,this._panEnd=new re,this._panDelta=new re,this._dollyStart=new re,this._dollyEnd=new re,this._dollyDelta=new re,this._dollyDirection=new $,this._mouse=new re,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=ES.bind(this),this._onPointerDown=wS.bind(this),this._onPointerUp=TS.bind(this),this._onContextMenu=DS.bind(this),this._onMouseWheel=CS.bind(this),this._onKeyDown=PS.bind(this),this._onTouchStart=IS.bind(this),this._onTouchMove=LS.bind(this),this._onMouseDown=AS.bind(this),this._onMouseMove=RS.bind(this),this._interceptControlDown=NS.bind(this),this._interceptControlUp=US.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Le.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(xm),this.update(),this.state=Le.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;vn.copy(e).sub(this.target),vn.applyQuaternion(this._quat),this._spherical.setFromVector3(vn),this.autoRotate&&this.state===Le.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Kn:n>Math.PI&&(n-=Kn),s<-Math.PI?s+=Kn:s>Math.PI&&(s-=Kn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(vn.setFromSpherical(this._spherical),vn.applyQuaternion(this._quatInverse),e.copy(this.target).add(vn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=vn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new $(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new $(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=vn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Vc.origin.copy(this.object.position),Vc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Vc.direction))<bS?this.object.lookAt(this.target):(ym.setFromNormalAndCoplanarPoint(this.object.up,this.target),Vc.intersectPlane(ym,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>$u||8*(1-this._lastQuaternion.dot(this.object.quaternion))>$u||this._lastTargetPosition.distanceToSquared(this.target)>$u?(this.dispatchEvent(xm),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Kn/60*this.autoRotateSpeed*t:Kn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){vn.setFromMatrixColumn(e,0),vn.multiplyScalar(-t),this._panOffset.add(vn)}_panUp(t,e){this.screenSpacePanning===!0?vn.setFromMatrixColumn(e,1):(vn.setFromMatrixColumn(e,0),vn.crossVectors(this.object.up,vn)),vn.multiplyScalar(t),this._panOffset.add(vn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;vn.copy(s).sub(this.target);let r=vn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Kn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Kn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Kn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Kn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new re,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function wS(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function ES(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function TS(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(vm),this.state=Le.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function AS(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case zs.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Le.DOLLY;break;case zs.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Le.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Le.ROTATE}break;case zs.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Le.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Le.PAN}break;default:this.state=Le.NONE}this.state!==Le.NONE&&this.dispatchEvent(Yu)}function RS(i){switch(this.state){case Le.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Le.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Le.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function CS(i){this.enabled===!1||this.enableZoom===!1||this.state!==Le.NONE||(i.preventDefault(),this.dispatchEvent(Yu),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(vm))}function PS(i){this.enabled!==!1&&this._handleKeyDown(i)}function IS(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case Vs.ROTATE:if(this.enableRotate===!1){this.state=Le.NONE;break}this._handleTouchStartRotate(i),this.state=Le.TOUCH_ROTATE;break;case Vs.PAN:if(this.enablePan===!1){this.state=Le.NONE;break}this._handleTouchStartPan(i),this.state=Le.TOUCH_PAN;break;default:this.state=Le.NONE}break;case 2:switch(this.touches.TWO){case Vs.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Le.TOUCH_DOLLY_PAN;break;case Vs.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Le.TOUCH_DOLLY_ROTATE;break;default:this.state=Le.NONE}break;default:this.state=Le.NONE}this.state!==Le.NONE&&this.dispatchEvent(Yu)}function LS(i){switch(this._trackPointer(i),this.state){case Le.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Le.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Le.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Le.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Le.NONE}}function DS(i){this.enabled!==!1&&i.preventDefault()}function NS(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function US(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var Gc=i=>{let t=Math.max(i.points.width/3-1,0);return{data:new Float64Array(t*5*8),count:0,slackAt:-1,slackPoint:[0,0,0]}};function Wc(i,t){let e=i.points.now,n=e.length/3-1,s=i.slack.now[0]||0,r=.002*(i.most_tension||1),o=u=>i.tension.now[i.span_of?.[u]??0]??0,a=u=>Math.hypot(e[3*u+3]-e[3*u],e[3*u+4]-e[3*u+1],e[3*u+5]-e[3*u+2]),l=0,c=0;if(t.slackAt=-1,s>.02){for(let u=0;u<n;++u)if(o(u)<r){let p=a(u);l+=p,p>c&&(c=p,t.slackAt=u)}}let h=0,f=(u,p,_,x,g,d,y)=>{let C=h++*8,b=t.data;b[C]=u,b[C+1]=p,b[C+2]=_,b[C+3]=x,b[C+4]=g,b[C+5]=d,b[C+6]=y,b[C+7]=Math.hypot(x-u,g-p,d-_)};for(let u=0;u<n;++u){let p=3*u,_=o(u);if(e[p]!==e[p]||e[p+3]!==e[p+3])continue;if(!(l>0&&_<r)){f(e[p],e[p+1],e[p+2],e[p+3],e[p+4],e[p+5],_);continue}let x=a(u),g=Math.sqrt(3/8*x*s*x/l);if(u===t.slackAt)for(let d=0;d<3;++d)t.slackPoint[d]=.5*(e[p+d]+e[p+3+d])-(d===1?g:0);for(let d=0;d<5;++d){let y=d/5,C=(d+.6)/5,b=T=>g*4*T*(1-T),P=(T,m)=>e[p+m]+T*(e[p+3+m]-e[p+m]);f(P(y,0),P(y,1)-b(y),P(y,2),P(C,0),P(C,1)-b(C),P(C,2),-1)}}t.count=h}function Xc(i,t,e=.004){let n=[];for(let r of i.pins)n.push({kind:"pin",at:[0,0,0],text:r.joint,shown:!0,source:r});for(let r of i.arrows)n.push({kind:r.kind,at:[0,0,0],text:"",shown:!1,source:r});for(let r of i.cords)n.push({kind:"slack",at:[0,0,0],text:"",shown:!1,source:r});function s(r){for(let o of n){let{source:a}=o;if(o.kind==="pin"){let l=i.bodies[a.body];l&&zi(l.pose.now,a.at,o.at)}else if(o.kind==="slack"){let l=a.slack.now[0]||0,c=r(a);if(o.shown=l>.02,!o.shown)continue;if(o.text=`${a.name}: ${Wn(l,2)} mm slack`,c.slackAt>=0)for(let h=0;h<3;++h)o.at[h]=c.slackPoint[h];else for(let h=0;h<3;++h)o.at[h]=a.points.now[h]}else{let l=a.force.now,c=a.point.now,h=Math.hypot(l[0],l[1],l[2]);if(o.shown=h>e*t.mostForce,!o.shown)continue;let f=t.mmPerNewton+3.5/h;for(let u=0;u<3;++u)o.at[u]=c[u]+l[u]*f;o.text=`${Wn(h,2)} N`}}}return{labels:n,update:s}}var FS=.3,OS=.6;function Sm(){try{let i=document.createElement("canvas").getContext("webgl2");return i?.getExtension("WEBGL_lose_context")?.loseContext(),!!i}catch{return!1}}var Zu=(i,t)=>new Ln().setFromUnitVectors(new $(0,1,0),new $(t[0]-i[0],t[1]-i[1],t[2]-i[2]).normalize());function Mm(i,t){let e;switch(i.kind){case"capsule":{let{from:n,to:s,radius:r}=i,o=Math.hypot(s[0]-n[0],s[1]-n[1],s[2]-n[2]);e=new ra(r+t,o,12,40),o>0&&e.applyQuaternion(Zu(n,s)),e.translate((n[0]+s[0])/2,(n[1]+s[1])/2,(n[2]+s[2])/2);break}case"sphere":e=new ro(i.radius+t,40,24),e.translate(...i.center);break;case"cylinder":e=new Xi(i.radius+t,i.radius+t,i.length+2*t,64),e.applyQuaternion(Zu([0,0,0],i.axis)),e.translate(...i.center);break;case"box":{e=new _s(...i.size.map(s=>s+2*t));let n=i.rotation??[1,0,0,0,1,0,0,0,1];e.applyMatrix4(new Ie().set(n[0],n[1],n[2],i.center[0],n[3],n[4],n[5],i.center[1],n[6],n[7],n[8],i.center[2],0,0,0,1));break}case"hull":{let n=[0,1,2].map(r=>i.points.reduce((o,a)=>o+a[r],0)/i.points.length),s=r=>{let o=i.points[r].map((l,c)=>l-n[c]),a=Math.hypot(...o)||1;return o.map((l,c)=>n[c]+l*(1+t/a))};e=new $n,e.setAttribute("position",new Xe(i.faces.flatMap(r=>r.flatMap(s)),3)),e.computeVertexNormals();break}default:return null}return e}function bm(i,t,e,{labelText:n}){let s=new Bc({antialias:!0,alpha:!0});s.setPixelRatio(Math.min(devicePixelRatio,2));let r=s.domElement;r.setAttribute("aria-hidden","true");let o=I("div",{class:"labels","aria-hidden":"true"});i.append(r,o);let a=new Jo,l=new or(-1,1,1,-1,.1,4e3),c=new fa(16777215,12895428,2.5),h=new pa(16777215,.9);h.position.set(-.4,1,.8),a.add(c,h);let f=(ot,At)=>{let Nt=new ca(At);return Nt.userData.variable=ot,Nt},u=(ot,At)=>{let Nt=new Us(At);return Nt.userData.variable=ot,Nt},p={phalanx:f("--phalanx"),pad:f("--pad"),palm:f("--palm"),object:f("--object",{transparent:!0,opacity:.5,depthWrite:!1}),outline:u("--outline",{side:Nn}),edge:new so,metal:f("--metal",{depthTest:!1,transparent:!0}),ring:u("--outline",{depthTest:!1,transparent:!0}),pulley:f("--pulley",{depthTest:!1,transparent:!0}),contact:u("--force",{depthTest:!1,transparent:!0}),load:u("--load",{depthTest:!1,transparent:!0})};p.edge.userData.variable="--object-edge";let _=t.bodies.map(ot=>{let At=new Gi;for(let Nt of ot.shapes??[]){let Jt=Mm(Nt,0);if(!Jt)continue;let k=ot.role==="object"?"object":ot.role==="palm"?"palm":Nt.role==="contact"?"pad":"phalanx";At.add(new pn(Jt,p[k])),k==="object"?At.add(new ea(new aa(Jt,30),p.edge)):At.add(new pn(Mm(Nt,FS),p.outline))}return a.add(At),At}),x=(ot,At,Nt,Jt,k)=>(At.position.set(...Nt),At.quaternion.copy(Zu([0,0,0],Jt)),At.renderOrder=k,(_[ot]??a).add(At),At),g=(ot,At,Nt)=>(x(ot.body,new pn(new Xi(ot.radius+.25,ot.radius+.25,ot.length,32),p.ring),ot.at,ot.axis,Nt),x(ot.body,new pn(new Xi(ot.radius,ot.radius,ot.length+.2,32),At),ot.at,ot.axis,Nt+1));for(let ot of t.pins)g(ot,p.metal,10);for(let ot of t.guides)g(ot,p.metal,10);let d=t.pulleys.map(ot=>{g(ot,p.pulley,6);let At=new Gi,Nt=new pn(new _s(ot.radius,ot.length+.4,.7),p.ring);return Nt.position.x=ot.radius/2,At.add(Nt),Nt.renderOrder=8,x(ot.body,At,ot.at,ot.axis,8),{mark:At,rest:At.quaternion.clone(),angle:ot.angle}}),y=new Xi(1,1,1,12),C=new ro(1,12,8),b=t.cords.map(ot=>{let At=Gc(ot),Nt=Math.max(At.data.length/8,1),Jt=(zt,Bt,mt)=>{let Te=new ta(zt,Bt,Nt);return Te.instanceColor=new rr(new Float32Array(3*Nt),3),Te.frustumCulled=!1,Te.renderOrder=mt,a.add(Te),Te},k=new Us,ft=new Us({transparent:!0,opacity:.8,depthFunc:jr,depthWrite:!1});return{cord:ot,pieces:At,radius:Math.max(ot.radius||0,OS)*(ot.kind==="rubber"?1.15:1),rods:[Jt(y,ft,2),Jt(y,k,3)],balls:[Jt(C,ft,2),Jt(C,k,3)]}}),P=ot=>b.find(At=>At.cord===ot).pieces,T=t.arrows.map(ot=>{let At=p[ot.kind],Nt=new pn(new Xi(.55,.55,1,12),At),Jt=new pn(new oa(1.7,4.2,20),At);return Nt.renderOrder=Jt.renderOrder=20,a.add(Nt,Jt),{arrow:ot,shaft:Nt,head:Jt}}),{labels:m,update:M}=Xc(t,e),L=m.map(ot=>{let At=Tt(ot.text,{class:`tag tag-${ot.kind}`});return o.append(At),At}),S=new Hc(l,r);S.enableDamping=!1,S.zoomSpeed=1.2,r.style.touchAction="pan-y",r.addEventListener("wheel",ot=>{!ot.ctrlKey&&!ot.metaKey&&ot.stopImmediatePropagation()},{capture:!0});let R={side:[0,0,1],iso:[.75,.55,1],palm:[0,-1,1e-4],back:[-.6,.5,1]},F=4*Math.hypot(...e.high.map((ot,At)=>ot-e.low[At])),B=new $(...e.centre),D=1,V=1,X=1,H=!1,K=new $;function q(){l.updateMatrixWorld();let ot=1,At=1;for(let Jt=0;Jt<8;++Jt)K.set(Jt&1?e.high[0]:e.low[0],Jt&2?e.high[1]:e.low[1],Jt&4?e.high[2]:e.low[2]),K.applyMatrix4(l.matrixWorldInverse),ot=Math.max(ot,Math.abs(K.x)),At=Math.max(At,Math.abs(K.y));X=Math.max(2*ot/D,2*At/V)*1.05,Z()}function Z(){l.left=-D*X/2,l.right=D*X/2,l.top=V*X/2,l.bottom=-V*X/2,l.updateProjectionMatrix(),Ve()}function et(ot){l.up.set(0,1,0);let[At,Nt,Jt]=R[ot]??R.side;S.target.copy(B),l.position.set(At,Nt,Jt).normalize().multiplyScalar(F).add(B),l.zoom=1,l.lookAt(B),S.update(),q()}let ht=[];S.addEventListener("change",()=>{Ve();for(let ot of ht)ot(l,S)});let ut=new $(0,1,0),tt=new $,_t=new Ie,yt=new Ln,vt=new $,Mt=new $,Zt=new $(0,1,0),oe=new Ln,Gt=[0,0,0],ue=new ge,fe=new ge;function ne(){t.bodies.forEach((ot,At)=>{let Nt=ot.pose.now;_[At].position.set(Nt[0],Nt[1],Nt[2]),_[At].quaternion.set(Nt[3],Nt[4],Nt[5],Nt[6])});for(let ot of d)oe.setFromAxisAngle(Zt,(ot.angle.now[0]||0)*Math.PI/180),ot.mark.quaternion.copy(ot.rest).multiply(oe);for(let{cord:ot,pieces:At,radius:Nt,rods:Jt,balls:k}of b){Wc(ot,At);let ft=At.data;for(let zt=0;zt<At.count;++zt){let Bt=zt*8;tt.set(ft[Bt+3]-ft[Bt],ft[Bt+4]-ft[Bt+1],ft[Bt+5]-ft[Bt+2]).normalize(),yt.setFromUnitVectors(ut,tt),vt.set((ft[Bt]+ft[Bt+3])/2,(ft[Bt+1]+ft[Bt+4])/2,(ft[Bt+2]+ft[Bt+5])/2),Mt.set(Nt,ft[Bt+7],Nt),_t.compose(vt,yt,Mt),ft[Bt+6]<0?ue.copy(fe):(Th(ft[Bt+6]/e.mostTension,Gt),ue.setRGB(Gt[0],Gt[1],Gt[2],Xn));for(let mt of Jt)mt.setMatrixAt(zt,_t),mt.setColorAt(zt,ue);vt.set(ft[Bt+3],ft[Bt+4],ft[Bt+5]),Mt.set(Nt,Nt,Nt),_t.compose(vt,yt,Mt);for(let mt of k)mt.setMatrixAt(zt,_t),mt.setColorAt(zt,ue)}for(let zt of[Jt[0],Jt[1],k[0],k[1]])zt.count=At.count,zt.instanceMatrix.needsUpdate=!0,zt.instanceColor.needsUpdate=!0}for(let{arrow:ot,shaft:At,head:Nt}of T){let Jt=ot.force.now,k=ot.point.now,ft=Math.hypot(Jt[0],Jt[1],Jt[2]),zt=ft>.004*e.mostForce&&k[0]===k[0];if(At.visible=Nt.visible=zt,!zt)continue;let Bt=ft*e.mmPerNewton,mt=Math.min(4.2,.6*Bt);tt.set(Jt[0]/ft,Jt[1]/ft,Jt[2]/ft),At.quaternion.setFromUnitVectors(ut,tt),Nt.quaternion.copy(At.quaternion),At.position.set(k[0],k[1],k[2]).addScaledVector(tt,(Bt-mt)/2),At.scale.set(1,Math.max(Bt-mt,.001),1),Nt.position.set(k[0],k[1],k[2]).addScaledVector(tt,Bt-mt/2),Nt.scale.setScalar(mt/4.2)}M(P),Ve()}function We(){let ot=n();for(let At=0;At<m.length;++At){let Nt=m[At],Jt=L[At],k=Nt.shown&&ot;Jt.hidden===k&&(Jt.hidden=!k),k&&(vt.set(Nt.at[0],Nt.at[1],Nt.at[2]).project(l),ni(Jt,Nt.text),Jt.style.transform=`translate(-50%, -50%) translate(${((vt.x+1)/2*D).toFixed(1)}px, ${((1-vt.y)/2*V).toFixed(1)}px)`)}}function ke(){H=!1,s.render(a,l),We()}function Ve(){H||(H=!0,requestAnimationFrame(ke))}function Ce(){for(let ot of Object.values(p))ot.color.set(Ks(ot.userData.variable));fe.set(Ks("--slack")),ne()}return Cs(Ce),new ResizeObserver(()=>{let ot=i.getBoundingClientRect();if(ot.width<1||ot.height<1)return;let At=l.zoom;D=ot.width,V=ot.height,s.setSize(D,V,!1),l.zoom=1,q(),l.zoom=At,l.updateProjectionMatrix()}).observe(i),Ce(),et("side"),{kind:"3d",update:ne,look:et,invalidate:Ve,zoomBy(ot){l.zoom=Math.min(Math.max(l.zoom*ot,.3),20),l.updateProjectionMatrix(),S.update();for(let At of ht)At(l,S);Ve()},pixelsPerMm:()=>l.zoom/X,onCamera(ot){ht.push(ot)},follow(ot,At){l.position.equals(ot.position)&&l.zoom===ot.zoom&&S.target.equals(At.target)||(l.position.copy(ot.position),l.quaternion.copy(ot.quaternion),S.target.copy(At.target),l.zoom=ot.zoom,l.updateProjectionMatrix(),S.update(),Ve())}}}function BS(i){let t=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),e=n=>{let s=[];for(let r of n){for(;s.length>1;){let[o,a]=[s[s.length-2],s[s.length-1]];if((a[0]-o[0])*(r[1]-o[1])-(a[1]-o[1])*(r[0]-o[0])>0)break;s.pop()}s.push(r)}return s.pop(),s};return[...e(t),...e(t.reverse())]}var de=i=>i.toFixed(2),kS=i=>i.map((t,e)=>`${e?"L":"M"}${de(t[0])} ${de(-t[1])}`).join("")+"Z";function Tm(i,t){let e=i[0],n=-i[1];return`M${de(e-t)} ${de(n)}a${de(t)} ${de(t)} 0 1 0 ${de(2*t)} 0a${de(t)} ${de(t)} 0 1 0 ${de(-2*t)} 0Z`}function zS(i,t,e){let n=t[0]-i[0],s=t[1]-i[1],r=Math.hypot(n,s);if(r<1e-6)return Tm(i,e);let o=n/r*e,a=s/r*e,l=(h,f,u)=>`${de(h[0]+f)} ${de(-h[1]-u)}`,c=(h,f,u)=>`A${de(e)} ${de(e)} 0 0 1 ${l(h,f,u)}`;return`M${l(i,-a,o)}L${l(t,-a,o)}${c(t,o,a)}${c(t,a,-o)}L${l(i,a,-o)}${c(i,-o,-a)}${c(i,-a,o)}Z`}function VS(i){if(i.kind==="hull")return i.points;if(i.kind==="box"){let t=i.rotation??[1,0,0,0,1,0,0,0,1];return[0,1,2,3,4,5,6,7].map(e=>{let n=[e&1?.5:-.5,e&2?.5:-.5,e&4?.5:-.5].map((s,r)=>s*i.size[r]);return[0,1,2].map(s=>i.center[s]+t[3*s]*n[0]+t[3*s+1]*n[1]+t[3*s+2]*n[2])})}if(i.kind==="cylinder"){let t=Math.hypot(...i.axis),e=i.axis.map(c=>c/t),n=Math.abs(e[0])<.8?[1,0,0]:[0,1,0],s=(c,h)=>[c[1]*h[2]-c[2]*h[1],c[2]*h[0]-c[0]*h[2],c[0]*h[1]-c[1]*h[0]],r=s(e,n),o=Math.hypot(...r);r=r.map(c=>c/o);let a=s(e,r),l=[];for(let c=0;c<48;++c)for(let h of[-.5,.5]){let f=2*Math.PI*c/48;l.push([0,1,2].map(u=>i.center[u]+h*i.length*e[u]+i.radius*(Math.cos(f)*r[u]+Math.sin(f)*a[u])))}return l}return null}function HS(i,t){let e=[0,0,0],n=[0,0,0];if(i.kind==="capsule")return zS(zi(t,i.from,e),zi(t,i.to,n),i.radius);if(i.kind==="sphere")return Tm(zi(t,i.center,e),i.radius);let s=VS(i);return s?kS(BS(s.map(r=>zi(t,r,[0,0,0])))):""}var wm={palm:0,object:1,phalanx:2},Em=i=>Je(i,"stroke",i.share<0?"currentColor":Ah(i.share));function Ju(i,t,e,{textSize:n=3.2,labelText:s=()=>!0,live:r=!0}={}){let a=e.low[0]-4,l=-e.high[1]-4,c=e.high[0]-e.low[0]+8,h=e.high[1]-e.low[1]+8,f=Yt("svg",{class:"side-view",viewBox:`${de(a)} ${de(l)} ${de(c)} ${de(h)}`,"aria-hidden":"true","font-size":n});i.append(f);let u=[],p=t.bodies.map(L=>L).sort((L,S)=>(wm[L.role]??0)-(wm[S.role]??0));for(let L of["contact","solid"])for(let S of p)for(let R of S.shapes??[]){if((S.role==="phalanx"?R.role??"solid":"contact")!==L)continue;let F=Yt("path",{class:`shape ${S.role} ${S.role==="phalanx"?L:""}`});f.append(F),u.push({path:F,shape:R,body:S})}let _=t.pulleys.map(L=>{let S=Yt("circle",{class:"pulley",r:L.radius}),R=Yt("line",{class:"pulley-mark"});return f.append(S,R),{pulley:L,disc:S,mark:R}}),x=t.cords.map(L=>{let S=Gc(L),R=Yt("g",{class:`cord ${L.kind}`,"stroke-width":de(Math.max(2*(L.radius||0),1.1))});return f.append(R),{cord:L,pieces:S,group:R,lines:[]}}),g=L=>x.find(S=>S.cord===L).pieces,d=[...t.pins,...t.guides].map(L=>{let S=Yt("circle",{class:"pin",r:L.radius});return f.append(S),{pin:L,disc:S}}),y=t.arrows.map(L=>{let S=Yt("path",{class:`arrow ${L.kind}`});return f.append(S),{arrow:L,path:S}}),{labels:C,update:b}=Xc(t,e,r?void 0:.1),P=C.map(L=>{let S=Yt("text",{class:`tag-${L.kind}`});return f.append(S),S}),T=[0,0,0],m=[0,0,0];function M(){for(let{path:S,shape:R,body:F}of u)Je(S,"d",HS(R,F.pose.now));for(let{pulley:S,disc:R,mark:F}of _){let B=t.bodies[S.body]?.pose.now;if(!B)continue;zi(B,S.at,T),nd(B,S.axis,m);let D=(S.angle.now[0]||0)*Math.PI/180*(m[2]<0?-1:1);Je(R,"cx",de(T[0])),Je(R,"cy",de(-T[1])),Je(F,"x1",de(T[0])),Je(F,"y1",de(-T[1])),Je(F,"x2",de(T[0]+S.radius*Math.cos(D))),Je(F,"y2",de(-T[1]-S.radius*Math.sin(D)))}for(let S of x){Wc(S.cord,S.pieces);let R=S.pieces.data;for(let F=0;F<S.pieces.count;++F){let B=S.lines[F];B||(B=Yt("line"),S.group.append(B),S.lines.push(B));let D=F*8;Je(B,"x1",de(R[D])),Je(B,"y1",de(-R[D+1])),Je(B,"x2",de(R[D+3])),Je(B,"y2",de(-R[D+4]));let V=R[D+6]<0;Je(B,"class",V?"slack":"taut"),B.share=V?-1:R[D+6]/e.mostTension,Em(B),Je(B,"visibility","visible")}for(let F=S.pieces.count;F<S.lines.length;++F)Je(S.lines[F],"visibility","hidden")}for(let{pin:S,disc:R}of d){let F=t.bodies[S.body]?.pose.now;F&&(zi(F,S.at,T),Je(R,"cx",de(T[0])),Je(R,"cy",de(-T[1])))}for(let{arrow:S,path:R}of y){let F=S.force.now,B=S.point.now,D=Math.hypot(F[0],F[1]);if(!(D>.004*e.mostForce)||B[0]!==B[0]){Je(R,"d","");continue}let V=D*e.mmPerNewton,X=Math.min(4,.6*V),H=F[0]/D,K=F[1]/D,q=B[0]+H*V,Z=B[1]+K*V,et=q-H*X,ht=Z-K*X,ut=.4*X;Je(R,"d",`M${de(B[0])} ${de(-B[1])}L${de(et)} ${de(-ht)}M${de(q)} ${de(-Z)}L${de(et-K*ut)} ${de(-ht-H*ut)}L${de(et+K*ut)} ${de(-ht+H*ut)}Z`)}b(g);let L=s();C.forEach((S,R)=>{let F=S.shown&&L;if(Je(P[R],"visibility",F?"visible":"hidden"),!F)return;ni(P[R],S.text);let B=.3*n*S.text.length;Je(P[R],"x",de(Math.min(Math.max(S.at[0],a+B),a+c-B))),Je(P[R],"y",de(-S.at[1]+.35*n+(S.kind==="pin"?-2.2-.2*n:S.kind==="slack"?n:0)))})}return Cs(r?M:()=>{for(let L of x)L.lines.forEach(Em)}),{kind:"2d",root:f,update:M,look(){},invalidate(){},zoomBy(){},onCamera(){},follow(){},pixelsPerMm:()=>{let L=f.getBoundingClientRect();return Math.min(L.width/c,L.height/h)}}}var GS=4;function Am(i,t,{onKey:e}){let{records:n}=i,s=n.length>1,{duration:r}=t.state,o=WS(n,r),a=y=>r>0?y/r:0,l=I("div",{class:"lanes"}),c=I("div",{class:"event-marks"}),h=I("input",{type:"range",min:0,max:r,step:"any",value:0,class:"scrub","aria-label":"time of the run",on:{input:()=>{t.seek(h.valueAsNumber)},keydown:e}}),f=I("div",{class:"time-line"},l,I("div",{class:"track"},c,h)),u=y=>`${s?`${y.letters}: `:""}${y.text}`,p=y=>()=>{t.seek(y.time)},_=o.filter(y=>y.weight>=3).sort((y,C)=>y.time-C.time),x=_.map(y=>I("button",{type:"button",class:"event","data-jump":y.time,title:`${u(y)}, ${In(y.time,r)}`,on:{click:p(y)}},Tt(u(y))));l.append(...x);for(let y of o.filter(C=>C.weight>=2))c.append(I("span",{class:`event-mark weight-${y.weight}`,style:{left:`${100*a(y.time)}%`}}));function g(){let y=l.clientWidth;if(!y)return;let C=y<500?3:GS,b=new Array(C).fill(1/0),P=[];for(let m=x.length-1;m>=0;--m){let M=x[m];M.hidden=!1;let L=M.offsetWidth,S=a(_[m].time)*y,R=S+L>y,F=R?Math.max(S-L,0):S,B=b.findIndex((D,V)=>F+L+4<=D&&P.every(X=>X.lane<=V||X.x<F||X.x>F+L));M.hidden=B<0,!(B<0)&&(b[B]=F,P.push({lane:B,x:S}),M.classList.toggle("flip",R),M.style.left=`${F}px`,M.style.bottom=`${B*22}px`,M.style.setProperty("--leader",`${B*22+6}px`))}let T=b.filter(m=>m<1/0).length;l.style.height=`${T*22}px`}new ResizeObserver(g).observe(l);let d=_.map(y=>y.time);return t.listen(({time:y})=>{h.value=y;let C=_.findLast(b=>b.time<=y+1e-9);h.setAttribute("aria-valuetext",`${In(y,r)}${C?`, after ${u(C)}`:""}`)}),{box:f,slider:h,labelled:_,text:u,next:()=>d.find(y=>y>t.state.time+1e-6),previous:()=>d.findLast(y=>y<t.state.time-1e-6)}}function WS(i,t){let e=[];for(let n of i)for(let s of n.events??[]){if(s.weight<2)continue;let r=e.find(o=>o.text===s.text&&!o.letters.includes(n.label)&&Math.abs(o.time-s.time)<.005*t);r?(r.letters+=` ${n.label}`,r.weight=Math.max(r.weight,s.weight)):e.push({...s,letters:n.label})}return e}function Rm(i,t){let{records:e}=i,{duration:n}=t.state;return e.map(s=>{let r=[...s.events??[]].sort((l,c)=>l.time-c.time);if(!r.length)return null;let o=400,a=r.length>o?r.filter(l=>l.weight>1).slice(0,o):r;return I("details",{class:"events"},I("summary",{},e.length>1?`Events of ${s.label}`:"All events",` (${r.length}${a.length<r.length?`, the ${a.length} main ones shown`:""})`),I("ul",{},a.map(l=>I("li",{},I("button",{type:"button",class:"jump","data-jump":l.time,on:{click:()=>{t.seek(l.time)}}},In(l.time,n))," ",Tt(l.text)))))})}function Cm(i,t){return e=>{if(e.defaultPrevented||e.altKey||e.ctrlKey||e.metaKey)return;let n=e.target.tagName,s=n==="INPUT"&&e.target.type==="range";if(n==="SELECT"||n==="SUMMARY"||n==="INPUT"&&!s||n==="BUTTON"&&(e.key===" "||e.key==="Enter"))return;let r=o=>{o!==void 0&&i.seek(o)};switch(e.key){case" ":i.toggle();break;case"ArrowLeft":i.step(e.shiftKey?-10:-1);break;case"ArrowRight":i.step(e.shiftKey?10:1);break;case"PageUp":case",":r(t().previous()??0);break;case"PageDown":case".":r(t().next()??i.state.duration);break;case"Home":r(0);break;case"End":r(i.state.duration);break;default:return}e.preventDefault()}}var Pm=[.02,.05,.1,.25,.5,1,2,5,10,60],XS=i=>Pm.reduce((t,e)=>Math.abs(Math.log(i/e/8))<Math.abs(Math.log(i/t/8))?e:t,1);function qS(i,t,e){let n=I("span",{class:"tension-bar"});Cs(()=>{n.style.background=Rh()}),n.style.background=Rh();let s=r=>Yt("svg",{class:"arrow-sample",viewBox:"0 -5 34 10",width:34,height:10},Yt("path",{class:`arrow ${r}`,d:"M0 0H26M34 0L25 -4L25 4Z"}));return I("div",{class:"legend"},I("div",{class:"legend-tension"},I("span",{class:"cell-title"},"cord tension"),n,I("span",{class:"tension-ends"},I("span",{},"0"),I("span",{},Wn(i.mostTension/2,3)),I("span",{},`${Wn(i.mostTension,3)} N`))),I("ul",{},t&&I("li",{},Yt("svg",{class:"slack-sample",viewBox:"0 0 34 10",width:34,height:10},Yt("path",{d:"M0 2Q17 14 34 2"})),"slack cord: sag shows the loose length"),i.mostForce>0&&I("li",{},s("contact"),`force on the finger, ${Wn(i.mmPerNewton,1)}\xA0mm\xA0per\xA0N`),e&&I("li",{},s("load"),"load from outside, same scale"),I("li",{},I("span",{class:"swatch pad"}),"pad that touches"),I("li",{},I("span",{class:"swatch pulley"}),"pulley, mark turns with it"),I("li",{class:"muted"},"All to scale except thin cords, drawn at least 1.2 mm thick")))}function Im(i,t,e,n,s){let{records:r}=t,o=r.length>1,{duration:a}=s.state,l=!0,c=Sm(),h=[],f=I("div",{class:`pictures count-${Math.min(r.length,3)}`});r.forEach((K,q)=>{let Z=I("div",{class:"picture-holder"}),et=I("div",{class:"scale-bar","aria-hidden":"true"},I("span",{}),I("b",{})),ht=I("figure",{class:"picture",tabindex:0,role:"group","data-view":c?"3d":"2d","aria-label":`${o?`${K.label}: `:""}the finger in motion; space plays, arrow keys step, Home and End go to the ends`},Z,et,o&&I("figcaption",{class:"picture-name"},I("span",{class:"record-letter"},K.label)," ",Tt(K.name)),I("span",{class:"picture-state","aria-hidden":"true"}));f.append(ht);let ut={labelText:()=>l},tt=null;if(c)try{tt=bm(Z,e[q],n,ut)}catch{Z.textContent=""}tt??=Ju(Z,e[q],n,ut),ht.dataset.view=tt.kind,h.push({view:tt,motion:e[q],picture:ht,scale:et,end:e[q].times.at(-1)??0})});for(let{view:K}of h)K.onCamera((q,Z)=>{for(let et of h)et.view!==K&&et.view.follow(q,Z);u()});function u(){for(let{view:K,scale:q}of h){let Z=K.pixelsPerMm();if(!(Z>0)||!Number.isFinite(Z))continue;let et=Zs(110/Z);q.firstChild.style.width=`${(et*Z).toFixed(1)}px`,ni(q.lastChild,`${et} mm`)}}let p=(K,q,Z,et,ht)=>I("button",{type:"button",id:K,title:Z,"aria-label":Z,on:{click:et},...ht},q),_=K=>Yt("svg",{viewBox:"0 0 16 16",width:16,height:16,"aria-hidden":"true"},Yt("path",{d:K})),x="M4 2L14 8L4 14Z",g="M3 2H7V14H3ZM9 2H13V14H9Z",d=_(x),y=I("span",{},"Play"),C=I("button",{type:"button",id:"play",class:"play",on:{click:()=>s.toggle()}},d,y),b=Cm(s,()=>P),P=Am(t,s,{onKey:b}),T=K=>{K!==void 0&&s.seek(K)},m=I("select",{id:"speed","aria-label":"speed of the playback",on:{change:()=>s.setSpeed(Number(m.value))}},Pm.filter(K=>a/K>.7&&a/K<600||K>=.1&&K<=2).map(K=>I("option",{value:K},K===1?"real time":K<1?`${K}\xD7 slow`:`${K}\xD7 fast`)));s.setSpeed(XS(a)),m.value=String(s.state.speed);let M=I("input",{type:"checkbox",id:"loop",on:{change:()=>s.setLoop(M.checked)}}),L=I("output",{class:"clock","aria-live":"off"}),S=I("input",{type:"checkbox",id:"names",checked:!0,on:{change:()=>{l=S.checked,D()}}}),R=[["side","Side"],["iso","Oblique"],["palm","Palm"]].map(([K,q])=>I("button",{type:"button",class:"look","data-look":K,"aria-pressed":K==="side",on:{click:()=>{h[0].view.look(K);for(let{view:Z}of h.slice(1))Z.look(K);for(let Z of R)Z.setAttribute("aria-pressed",String(Z.dataset.look===K));u()}}},q)),F=c?I("div",{class:"view-tools controls",role:"group","aria-label":"view"},R,p("closer","+","closer",()=>{h[0].view.zoomBy(1.25)}),p("farther","\u2212","farther",()=>{h[0].view.zoomBy(.8)}),I("label",{},S," names"),I("span",{class:"hint"},"drag to turn, Ctrl + wheel to zoom")):I("div",{class:"view-tools controls"},I("label",{},S," names"),I("span",{class:"hint no-webgl"},"This browser has no WebGL, so the finger is drawn from the side only.")),B=I("div",{class:"transport controls"},I("div",{class:"transport-buttons"},C,p("to-previous",_("M3 2H5V14H3ZM14 2L6 8L14 14Z"),"to the event before",()=>T(P.previous()??0)),p("step-back",_("M12 2L4 8L12 14Z"),"one row of the record back",()=>s.step(-1)),p("step-on",_("M4 2L12 8L4 14Z"),"one row of the record on",()=>s.step(1)),p("to-next",_("M2 2L10 8L2 14ZM11 2H13V14H11Z"),"to the next event",()=>T(P.next()??a)),L,I("label",{class:"speed"},m),I("label",{},M," repeat")),P.box);function D(){let{time:K}=s.state;for(let{view:q,motion:Z,picture:et,end:ht}of h)Z.at(K),q.update(),ni(et.querySelector(".picture-state"),K>ht+1e-9?`ended at ${In(ht,a)}`:"")}s.listen(K=>{D();let q=P.labelled.findLast(et=>et.time<=K.time+1e-9);ni(L,In(K.time,a)),L.title=q?`after: ${P.text(q)}`:"",ni(y,K.playing?"Pause":"Play"),d.firstChild.setAttribute("d",K.playing?g:x);let Z=document.getElementById("review");Z.dataset.time=K.time.toFixed(6),Z.dataset.playing=String(K.playing)}),new ResizeObserver(u).observe(f);let V=r.some(K=>(K.scene?.cords??[]).length>0),X=e.some(K=>K.arrows.some(q=>q.kind==="load")),H=i.section("motion","The finger in motion",F,I("div",{class:`stage-body ${o?"several":""}`},f,qS(n,V,X)),$S(r,e,n,s),Rm(t,s));return H.addEventListener("keydown",b),requestAnimationFrame(u),{section:H,controls:B,onKey:b}}function $S(i,t,e,n){return i.map((s,r)=>{let o=s.instants??[];if(!o.length)return null;let a=I("div",{class:"instants"},o.map(l=>{let c=I("button",{type:"button",class:"instant","data-jump":l.time,on:{click:()=>{n.seek(l.time)}}}),h=I("span",{class:"instant-picture"});return c.append(h,I("span",{class:"instant-text"},I("b",{},In(l.time,n.state.duration))," ",Tt(l.what))),t[r].at(l.time),Ju(h,t[r],e,{textSize:7.5,live:!1,labelText:()=>!0}).update(),c}));return[I("h4",{class:"sub"},i.length>1?`Key instants of ${s.label}`:"Key instants"),a]})}var YS="uplot",ZS="u-hz",JS="u-vt",KS="u-title",jS="u-wrap",QS="u-under",tb="u-over",eb="u-axis",pr="u-off",nb="u-select",ib="u-cursor-x",sb="u-cursor-y",rb="u-cursor-pt",ob="u-legend",ab="u-live",lb="u-inline",cb="u-series",hb="u-marker",Lm="u-label",ub="u-value",Ca="width",Pa="height";var Dm="bottom",go="left",Ku="right",mf="#000",Nm=mf+"0",ju="mousemove",Um="mousedown",Qu="mouseup",Fm="mouseenter",Om="mouseleave",Bm="dblclick",fb="resize",db="scroll",km="change",Kc="dppxchange",gf="--",bo=typeof window<"u",rf=bo?document:null,xo=bo?window:null,pb=bo?navigator:null,De,$c;function of(){let i=devicePixelRatio;De!=i&&(De=i,$c&&lf(km,$c,of),$c=matchMedia(`(min-resolution: ${De-.001}dppx) and (max-resolution: ${De+.001}dppx)`),mr(km,$c,of),xo.dispatchEvent(new CustomEvent(Kc)))}function ci(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function af(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function je(i,t,e){i.style[t]=e+"px"}function Pi(i,t,e,n){let s=rf.createElement(i);return t!=null&&ci(s,t),e?.insertBefore(s,n),s}function _i(i,t){return Pi("div",i,t)}var zm=new WeakMap;function Ki(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=zm.get(i);r!=o&&(i.style.transform=r,zm.set(i,r),t<0||e<0||t>n||e>s?ci(i,pr):af(i,pr))}var Vm=new WeakMap;function Hm(i,t,e){let n=t+e,s=Vm.get(i);n!=s&&(Vm.set(i,n),i.style.background=t,i.style.borderColor=e)}var Gm=new WeakMap;function Wm(i,t,e,n){let s=t+""+e,r=Gm.get(i);s!=r&&(Gm.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var _f={passive:!0},mb={..._f,capture:!0};function mr(i,t,e,n){t.addEventListener(i,e,n?mb:_f)}function lf(i,t,e,n){t.removeEventListener(i,e,_f)}bo&&of();function Ii(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:hi((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function xg(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var yg=i=>i!=null,vg=i=>i!=null&&i>0,th=xg(yg),gb=xg(vg);function _b(i,t,e,n=0,s=!1){let r=s?gb:th,o=s?vg:yg;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let h=i[c];o(h)&&(h<a?a=h:h>l&&(l=h))}return[a??He,l??-He]}function eh(i,t,e,n){let s=$m(i),r=$m(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?Ms:Mg,a=s==1?hi:xi,l=r==1?xi:hi,c=a(o(Sn(i))),h=l(o(Sn(t))),f=yo(e,c),u=yo(e,h);return e==10&&(c<0&&(f=Ge(f,-c)),h<0&&(u=Ge(u,-h))),n||e==2?(i=f*s,t=u*r):(i=Eg(i,f),t=nh(t,u)),[i,t]}function xf(i,t,e,n){let s=eh(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var yf=.1,Xm={mode:3,pad:yf},La={pad:0,soft:null,mode:0},xb={min:La,max:La};function jc(i,t,e,n){return ih(e)?qm(i,t,e):(La.pad=e,La.soft=n?0:null,La.mode=n?3:0,qm(i,t,xb))}function Re(i,t){return i??t}function yb(i,t,e){for(t=Re(t,0),e=Re(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function qm(i,t,e){let n=e.min,s=e.max,r=Re(n.pad,0),o=Re(s.pad,0),a=Re(n.hard,-He),l=Re(s.hard,He),c=Re(n.soft,He),h=Re(s.soft,-He),f=Re(n.mode,0),u=Re(s.mode,0),p=t-i,_=Ms(p),x=Yn(Sn(i),Sn(t)),g=Ms(x),d=Sn(g-_);(p<1e-24||d>10)&&(p=0,(i==0||t==0)&&(p=1e-24,f==2&&c!=He&&(r=0),u==2&&h!=-He&&(o=0)));let y=p||x||1e3,C=Ms(y),b=yo(10,hi(C)),P=y*(p==0?i==0?.1:1:r),T=Ge(Eg(i-P,b/10),24),m=i>=c&&(f==1||f==3&&T<=c||f==2&&T>=c)?c:He,M=Yn(a,T<m&&i>=m?m:Li(m,T)),L=y*(p==0?t==0?.1:1:o),S=Ge(nh(t+L,b/10),24),R=t<=h&&(u==1||u==3&&S>=h||u==2&&S<=h)?h:-He,F=Li(l,S>R&&t<=R?R:Yn(R,S));return M==F&&M==0&&(F=100),[M,F]}var vb=new Intl.NumberFormat(bo?pb.language:"en-US"),vf=i=>vb.format(i),ui=Math,Jc=ui.PI,Sn=ui.abs,hi=ui.floor,Mn=ui.round,xi=ui.ceil,Li=ui.min,Yn=ui.max,yo=ui.pow,$m=ui.sign,Ms=ui.log10,Mg=ui.log2,Mb=(i,t=1)=>ui.sinh(i)*t,tf=(i,t=1)=>ui.asinh(i/t),He=1/0;function Ym(i){return(Ms((i^i>>31)-(i>>31))|0)+1}function cf(i,t,e){return Li(Yn(i,t),e)}function Sg(i){return typeof i=="function"}function Ee(i){return Sg(i)?i:()=>i}var Sb=()=>{},bg=i=>i,wg=(i,t)=>t,bb=i=>null,Zm=i=>!0,Jm=(i,t)=>i==t,wb=/\.\d*?(?=9{6,}|0{6,})/gm,gr=i=>{if(Ag(i)||Xs.has(i))return i;let t=`${i}`,e=t.match(wb);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${gr(s)}e${r}`}return Ge(i,n)};function fr(i,t){return gr(Ge(gr(i/t))*t)}function nh(i,t){return gr(xi(gr(i/t))*t)}function Eg(i,t){return gr(hi(gr(i/t))*t)}function Ge(i,t=0){if(Ag(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return Mn(n)/e}var Xs=new Map;function Tg(i){return((""+i).split(".")[1]||"").length}function Na(i,t,e,n){let s=[],r=n.map(Tg);for(let o=t;o<e;o++){let a=Sn(o),l=Ge(yo(i,o),a);for(let c=0;c<n.length;c++){let h=i==10?+`${n[c]}e${o}`:n[c]*l,f=(o>=0?0:a)+(o>=r[c]?0:r[c]),u=i==10?h:Ge(h,f);s.push(u),Xs.set(u,f)}}return s}var Da={},Mf=[],vo=[null,null],Ws=Array.isArray,Ag=Number.isInteger,Eb=i=>i===void 0;function Km(i){return typeof i=="string"}function ih(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function Tb(i){return i!=null&&typeof i=="object"}var Ab=Object.getPrototypeOf(Uint8Array),Rg="__proto__";function Mo(i,t=ih){let e;if(Ws(i)){let n=i.find(s=>s!=null);if(Ws(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Mo(i[s],t)}else e=i.slice()}else if(i instanceof Ab)e=i.slice();else if(t(i)){e={};for(let n in i)n!=Rg&&(e[n]=Mo(i[n],t))}else e=i;return e}function mn(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=Rg&&(ih(i[s])?mn(i[s],Mo(n[s])):i[s]=Mo(n[s]))}return i}var Rb=0,Cb=1,Pb=2;function Ib(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function Lb(i,t){if(Ub(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return Fb(o[0])||(o=Nb(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let h=0;h<c;h++)e.add(l[h])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let h=a[c],f=Array(s).fill(void 0),u=t?t[o][c]:Cb,p=[];for(let _=0;_<h.length;_++){let x=h[_],g=r.get(l[_]);x===null?u!=Rb&&(f[g]=x,u==Pb&&p.push(g)):f[g]=x}Ib(f,p,s),n.push(f)}}return n}var Db=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function Nb(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function Ub(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function Fb(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Yn(1,hi((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var Cg=["January","February","March","April","May","June","July","August","September","October","November","December"],Pg=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Ig(i){return i.slice(0,3)}var Ob=Pg.map(Ig),Bb=Cg.map(Ig),kb={MMMM:Cg,MMM:Bb,WWWW:Pg,WWW:Ob};function Ra(i){return(i<10?"0":"")+i}function zb(i){return(i<10?"00":i<100?"0":"")+i}var Vb={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Ra(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Ra(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Ra(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Ra(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Ra(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>zb(i.getMilliseconds())};function Sf(i,t){t=t||kb;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?Vb[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var Hb=new Intl.DateTimeFormat().resolvedOptions().timeZone;function Gb(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==Hb?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var Lg=i=>i%1==0,Qc=[1,2,2.5,5],Wb=Na(10,-32,0,Qc),Dg=Na(10,0,32,Qc),Xb=Dg.filter(Lg),dr=Wb.concat(Dg),bf=`
`,Ng="{YYYY}",jm=bf+Ng,Ug="{M}/{D}",Ia=bf+Ug,Yc=Ia+"/{YY}",Fg="{aa}",qb="{h}:{mm}",_o=qb+Fg,Qm=bf+_o,tg=":{ss}",Ue=null;function Og(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Na(10,0,3,Qc).filter(Lg):Na(10,-3,0,Qc)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,Ng,Ue,Ue,Ue,Ue,Ue,Ue,1],[s*28,"{MMM}",jm,Ue,Ue,Ue,Ue,Ue,1],[s,Ug,jm,Ue,Ue,Ue,Ue,Ue,1],[n,"{h}"+Fg,Yc,Ue,Ia,Ue,Ue,Ue,1],[e,_o,Yc,Ue,Ia,Ue,Ue,Ue,1],[t,tg,Yc+" "+_o,Ue,Ia+" "+_o,Ue,Qm,Ue,1],[i,tg+".{fff}",Yc+" "+_o,Ue,Ia+" "+_o,Ue,Qm,Ue,1]];function h(f){return(u,p,_,x,g,d)=>{let y=[],C=g>=o,b=g>=r&&g<o,P=f(_),T=Ge(P*i,3),m=ef(P.getFullYear(),C?0:P.getMonth(),b||C?1:P.getDate()),M=Ge(m*i,3);if(b||C){let L=b?g/r:0,S=C?g/o:0,R=T==M?T:Ge(ef(m.getFullYear()+S,m.getMonth()+L,1)*i,3),F=new Date(Mn(R/i)),B=F.getFullYear(),D=F.getMonth();for(let V=0;R<=x;V++){let X=ef(B+S*V,D+L*V,1),H=X-f(Ge(X*i,3));R=Ge((+X+H)*i,3),R<=x&&y.push(R)}}else{let L=g>=s?s:g,S=hi(_)-hi(T),R=M+S+nh(T-M,L);y.push(R);let F=f(R),B=F.getHours()+F.getMinutes()/e+F.getSeconds()/n,D=g/n,V=u.axes[p]._space,X=d/V;for(;R=Ge(R+g,i==1?0:3),!(R>x);)if(D>1){let H=hi(Ge(B+D,6))%24,Z=f(R).getHours()-H;Z>1&&(Z=-1),R-=Z*n,B=(B+D)%24;let et=y[y.length-1];Ge((R-et)/g,3)*X>=.7&&y.push(R)}else y.push(R)}return y}}return[l,c,h]}var[$b,Yb,Zb]=Og(1),[Jb,Kb,jb]=Og(.001);Na(2,-53,53,[1]);function eg(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function ng(i,t){return(e,n,s,r,o)=>{let a=t.find(_=>o>=_[0])||t[t.length-1],l,c,h,f,u,p;return n.map(_=>{let x=i(_),g=x.getFullYear(),d=x.getMonth(),y=x.getDate(),C=x.getHours(),b=x.getMinutes(),P=x.getSeconds(),T=g!=l&&a[2]||d!=c&&a[3]||y!=h&&a[4]||C!=f&&a[5]||b!=u&&a[6]||P!=p&&a[7]||a[1];return l=g,c=d,h=y,f=C,u=b,p=P,T(x)})}}function Qb(i,t){let e=Sf(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function ef(i,t,e){return new Date(i,t,e)}function ig(i,t){return t(i)}var tw="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function sg(i,t){return(e,n,s,r)=>r==null?gf:t(i(n))}function ew(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function nw(i,t){return i.series[t].fill(i,t)}var iw={show:!0,live:!0,isolate:!1,mount:Sb,markers:{show:!0,width:2,stroke:ew,fill:nw,dash:"solid"},idx:null,idxs:null,values:[]};function sw(i,t){let e=i.cursor.points,n=_i(),s=e.size(i,t);je(n,Ca,s),je(n,Pa,s);let r=s/-2;je(n,"marginLeft",r),je(n,"marginTop",r);let o=e.width(i,t,s);return o&&je(n,"borderWidth",o),n}function rw(i,t){let e=i.series[t].points;return e._fill||e._stroke}function ow(i,t){let e=i.series[t].points;return e._stroke||e._fill}function aw(i,t){return i.series[t].points.size}var nf=[0,0];function lw(i,t,e){return nf[0]=t,nf[1]=e,nf}function Zc(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function sf(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var cw={show:!0,x:!0,y:!0,lock:!1,move:lw,points:{one:!1,show:sw,size:aw,width:0,stroke:ow,fill:rw},bind:{mousedown:Zc,mouseup:Zc,click:Zc,dblclick:Zc,mousemove:sf,mouseleave:sf,mouseenter:sf},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Bg={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},wf=mn({},Bg,{filter:wg}),kg=mn({},wf,{size:10}),zg=mn({},Bg,{show:!1}),Ef='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',Vg="bold "+Ef,Hg=1.5,rg={show:!0,scale:"x",stroke:mf,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Vg,side:2,grid:wf,ticks:kg,border:zg,font:Ef,lineGap:Hg,rotate:0},hw="Value",uw="Time",og={show:!0,scale:"x",auto:!1,sorted:1,min:He,max:-He,idxs:[]};function fw(i,t,e,n,s){return t.map(r=>r==null?"":vf(r))}function dw(i,t,e,n,s,r,o){let a=[],l=Xs.get(s)||0;e=o?e:Ge(nh(e,s),l);for(let c=e;c<=n;c=Ge(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function hf(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?Ms:Mg,h=hi(c(e));s=yo(l,h),l==10&&(s=dr[Ii(s,dr)]);let f=e,u=s*l;l==10&&(u=dr[Ii(u,dr)]);do a.push(f),f=f+s,l==10&&!Xs.has(f)&&(f=Ge(f,Xs.get(s))),f>=u&&(s=f,u=s*l,l==10&&(u=dr[Ii(u,dr)]));while(f<=n);return a}function pw(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?hf(i,t,Yn(l,e),n,s):[l],h=n>=0&&e<=0?[0]:[];return(e<-l?hf(i,t,Yn(l,-n),-e,s):[l]).reverse().map(u=>-u).concat(h,c)}var Gg=/./,mw=/[12357]/,gw=/[125]/,ag=/1/,uf=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function _w(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,h=l(10,o),f=l(9,o)-h>=c?Gg:l(7,o)-h>=c?mw:l(5,o)-h>=c?gw:ag;if(f==ag){let u=Sn(l(1,o)-h);if(u<c)return uf(t.slice().reverse(),a.distr,f,xi(c/u)).reverse()}return uf(t,a.distr,f,1)}function xw(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=Sn(l(1,o)-l(2,o));return c<a?uf(t.slice().reverse(),3,Gg,xi(a/c)).reverse():t}function yw(i,t,e,n){return n==null?gf:t==null?"":vf(t)}var lg={show:!0,scale:"y",stroke:mf,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Vg,side:3,grid:wf,ticks:kg,border:zg,font:Ef,lineGap:Hg,rotate:0};function vw(i,t){let e=3+(i||1)*2;return Ge(e*t,3)}function Mw(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=Sn(o-r),l=i.series[t],c=a/(l.points.space*De);return n[1]-n[0]<=c}var cg={scale:null,auto:!0,sorted:0,min:He,max:-He},Wg=(i,t,e,n,s)=>s,hg={show:!0,auto:!0,sorted:0,gaps:Wg,alpha:1,facets:[mn({},cg,{scale:"x"}),mn({},cg,{scale:"y"})]},ug={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:Wg,alpha:1,points:{show:Mw,filter:null},values:null,min:He,max:-He,idxs:[],path:null,clip:null};function Sw(i,t,e,n,s){return e/10}var Xg={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},bw=mn({},Xg,{time:!1,ori:1}),fg={};function qg(i,t){let e=fg[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let h=0;h<e.plots.length;h++)e.plots[h]!=s&&e.plots[h].pub(n,s,r,o,a,l,c)}},i!=null&&(fg[i]=e)),e}var So=1,ff=2;function _r(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],h=n==2?o[s.facets[0].scale]:o[i.series[0].scale],f=n==2?o[s.facets[1].scale]:o[s.scale],u=a.left,p=a.top,_=a.width,x=a.height,g=i.valToPosH,d=i.valToPosV;return h.ori==0?e(s,l,c,h,f,g,d,u,p,_,x,rh,wo,ah,Yg,Jg):e(s,l,c,h,f,d,g,p,u,x,_,oh,Eo,Rf,Zg,Kg)}function Tf(i,t){let e=0,n=0,s=Re(i.bands,Mf);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function ww(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function Ss(i,t,e,n,s,r){return _r(i,t,(o,a,l,c,h,f,u,p,_,x,g)=>{let d=o.pxRound,y=c.dir*(c.ori==0?1:-1),C=c.ori==0?wo:Eo,b,P;y==1?(b=e,P=n):(b=n,P=e);let T=d(f(a[b],c,x,p)),m=d(u(l[b],h,g,_)),M=d(f(a[P],c,x,p)),L=d(u(r==1?h.max:h.min,h,g,_)),S=new Path2D(s);return C(S,M,L),C(S,T,L),C(S,T,m),S})}function sh(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?ah:Rf,l=e;for(let f=0;f<i.length;f++){let u=i[f];if(u[1]>u[0]){let p=u[0]-l;p>0&&a(o,l,n,p,n+r),l=u[1]}}let c=e+s-l,h=10;c>0&&a(o,l,n-h/2,c,n+r+h)}return o}function Ew(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function Af(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let f=c,u=c;if(s==1)for(;++c<=n&&t[c]===null;)u=c;else for(;--c>=e&&t[c]===null;)u=c;let p=r(i[f]),_=u==f?p:r(i[u]),x=f-s;p=o<=0&&x>=0&&x<l?r(i[x]):p;let d=u+s;_=o>=0&&d>=0&&d<l?r(i[d]):_,_>=p&&a.push([p,_])}return a}function dg(i){return i==0?bg:i==1?Mn:t=>fr(t,i)}function $g(i){let t=i==0?rh:oh,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,h=0)=>{c==0&&h==0?n(s,r,o,a,l):(c=Li(c,a/2,l/2),h=Li(h,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,h),e(s,r,o+l,r,o,h),e(s,r,o,r+a,o,c),s.closePath())}}var rh=(i,t,e)=>{i.moveTo(t,e)},oh=(i,t,e)=>{i.moveTo(e,t)},wo=(i,t,e)=>{i.lineTo(t,e)},Eo=(i,t,e)=>{i.lineTo(e,t)},ah=$g(0),Rf=$g(1),Yg=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},Zg=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},Jg=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},Kg=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function jg(i){return(t,e,n,s,r)=>_r(t,e,(o,a,l,c,h,f,u,p,_,x,g)=>{let{pxRound:d,points:y}=o,C,b;c.ori==0?(C=rh,b=Yg):(C=oh,b=Zg);let P=Ge(y.width*De,3),T=(y.size-y.width)/2*De,m=Ge(T*2,3),M=new Path2D,L=new Path2D,{left:S,top:R,width:F,height:B}=t.bbox;ah(L,S-m,R-m,F+m*2,B+m*2);let D=V=>{if(l[V]!=null){let X=d(f(a[V],c,x,p)),H=d(u(l[V],h,g,_));C(M,X+T,H),b(M,X,H,T,0,Jc*2)}};if(r)r.forEach(D);else for(let V=n;V<=s;V++)D(V);return{stroke:P>0?M:null,fill:M,clip:L,flags:So|ff}})}function Qg(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var Tw=Qg(wo),Aw=Qg(Eo);function t0(i){let t=Re(i?.alignGaps,0);return(e,n,s,r)=>_r(e,n,(o,a,l,c,h,f,u,p,_,x,g)=>{[s,r]=th(l,s,r);let d=o.pxRound,y=B=>d(f(B,c,x,p)),C=B=>d(u(B,h,g,_)),b,P;c.ori==0?(b=wo,P=Tw):(b=Eo,P=Aw);let T=c.dir*(c.ori==0?1:-1),m={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:So},M=m.stroke,L=!1;if(r-s>=x*4){let B=ut=>e.posToVal(ut,c.key,!0),D=null,V=null,X,H,K,q=y(a[T==1?s:r]),Z=y(a[s]),et=y(a[r]),ht=B(T==1?Z+1:et-1);for(let ut=T==1?s:r;ut>=s&&ut<=r;ut+=T){let tt=a[ut],yt=(T==1?tt<ht:tt>ht)?q:y(tt),vt=l[ut];yt==q?vt!=null?(H=vt,D==null?(b(M,yt,C(H)),X=D=V=H):H<D?D=H:H>V&&(V=H)):vt===null&&(L=!0):(D!=null&&P(M,q,C(D),C(V),C(X),C(H)),vt!=null?(H=vt,b(M,yt,C(H)),D=V=X=H):(D=V=null,vt===null&&(L=!0)),q=yt,ht=B(q+T))}D!=null&&D!=V&&K!=q&&P(M,q,C(D),C(V),C(X),C(H))}else for(let B=T==1?s:r;B>=s&&B<=r;B+=T){let D=l[B];D===null?L=!0:D!=null&&b(M,y(a[B]),C(D))}let[R,F]=Tf(e,n);if(o.fill!=null||R!=0){let B=m.fill=new Path2D(M),D=o.fillTo(e,n,o.min,o.max,R),V=C(D),X=y(a[s]),H=y(a[r]);T==-1&&([H,X]=[X,H]),b(B,H,V),b(B,X,V)}if(!o.spanGaps){let B=[];L&&B.push(...Af(a,l,s,r,T,y,t)),m.gaps=B=o.gaps(e,n,s,r,B),m.clip=sh(B,c.ori,p,_,x,g)}return F!=0&&(m.band=F==2?[Ss(e,n,s,r,M,-1),Ss(e,n,s,r,M,1)]:Ss(e,n,s,r,M,F)),m})}function Rw(i){let t=Re(i.align,1),e=Re(i.ascDesc,!1),n=Re(i.alignGaps,0),s=Re(i.extend,!1);return(r,o,a,l)=>_r(r,o,(c,h,f,u,p,_,x,g,d,y,C)=>{[a,l]=th(f,a,l);let b=c.pxRound,{left:P,width:T}=r.bbox,m=Z=>b(_(Z,u,y,g)),M=Z=>b(x(Z,p,C,d)),L=u.ori==0?wo:Eo,S={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:So},R=S.stroke,F=u.dir*(u.ori==0?1:-1),B=M(f[F==1?a:l]),D=m(h[F==1?a:l]),V=D,X=D;s&&t==-1&&(X=P,L(R,X,B)),L(R,D,B);for(let Z=F==1?a:l;Z>=a&&Z<=l;Z+=F){let et=f[Z];if(et==null)continue;let ht=m(h[Z]),ut=M(et);t==1?L(R,ht,B):L(R,V,ut),L(R,ht,ut),B=ut,V=ht}let H=V;s&&t==1&&(H=P+T,L(R,H,B));let[K,q]=Tf(r,o);if(c.fill!=null||K!=0){let Z=S.fill=new Path2D(R),et=c.fillTo(r,o,c.min,c.max,K),ht=M(et);L(Z,H,ht),L(Z,X,ht)}if(!c.spanGaps){let Z=[];Z.push(...Af(h,f,a,l,F,m,n));let et=c.width*De/2,ht=e||t==1?et:-et,ut=e||t==-1?-et:et;Z.forEach(tt=>{tt[0]+=ht,tt[1]+=ut}),S.gaps=Z=c.gaps(r,o,a,l,Z),S.clip=sh(Z,u.ori,g,d,y,C)}return q!=0&&(S.band=q==2?[Ss(r,o,a,l,R,-1),Ss(r,o,a,l,R,1)]:Ss(r,o,a,l,R,q)),S})}function pg(i,t,e,n,s,r,o=He){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let h=Sn(i[l]-i[a]);h<c&&(c=h,o=Sn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function Cw(i){i=i||Da;let t=Re(i.size,[.6,He,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=Ee(s),o=1-t[0],a=Re(t[1],He),l=Re(t[2],1),c=Re(i.disp,Da),h=Re(i.each,p=>{}),{fill:f,stroke:u}=c;return(p,_,x,g)=>_r(p,_,(d,y,C,b,P,T,m,M,L,S,R)=>{let F=d.pxRound,B=e,D=n*De,V=a*De,X=l*De,H,K;b.ori==0?[H,K]=r(p,_):[K,H]=r(p,_);let q=b.dir*(b.ori==0?1:-1),Z=b.ori==0?ah:Rf,et=b.ori==0?h:(ft,zt,Bt,mt,Te,$t,Qt)=>{h(ft,zt,Bt,Te,mt,Qt,$t)},ht=Re(p.bands,Mf).find(ft=>ft.series[0]==_),ut=ht!=null?ht.dir:0,tt=d.fillTo(p,_,d.min,d.max,ut),_t=F(m(tt,P,R,L)),yt,vt,Mt,Zt=S,oe=F(d.width*De),Gt=!1,ue=null,fe=null,ne=null,We=null;f!=null&&(oe==0||u!=null)&&(Gt=!0,ue=f.values(p,_,x,g),fe=new Map,new Set(ue).forEach(ft=>{ft!=null&&fe.set(ft,new Path2D)}),oe>0&&(ne=u.values(p,_,x,g),We=new Map,new Set(ne).forEach(ft=>{ft!=null&&We.set(ft,new Path2D)})));let{x0:ke,size:Ve}=c;if(ke!=null&&Ve!=null){B=1,y=ke.values(p,_,x,g),ke.unit==2&&(y=y.map(Bt=>p.posToVal(M+Bt*S,b.key,!0)));let ft=Ve.values(p,_,x,g);Ve.unit==2?vt=ft[0]*S:vt=T(ft[0],b,S,M)-T(0,b,S,M),Zt=pg(y,C,T,b,S,M,Zt),Mt=Zt-vt+D}else Zt=pg(y,C,T,b,S,M,Zt),Mt=Zt*o+D,vt=Zt-Mt;Mt<1&&(Mt=0),oe>=vt/2&&(oe=0),Mt<5&&(F=bg);let Ce=Mt>0,gn=Zt-Mt-(Ce?oe:0);vt=F(cf(gn,X,V)),yt=(B==0?vt/2:B==q?0:vt)-B*q*((B==0?D/2:0)+(Ce?oe/2:0));let ot={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},At=Gt?null:new Path2D,Nt=null;if(ht!=null)Nt=p.data[ht.series[1]];else{let{y0:ft,y1:zt}=c;ft!=null&&zt!=null&&(C=zt.values(p,_,x,g),Nt=ft.values(p,_,x,g))}let Jt=H*vt,k=K*vt;for(let ft=q==1?x:g;ft>=x&&ft<=g;ft+=q){let zt=C[ft];if(zt==null)continue;if(Nt!=null){let Y=Nt[ft]??0;if(zt-Y==0)continue;_t=m(Y,P,R,L)}let Bt=b.distr!=2||c!=null?y[ft]:ft,mt=T(Bt,b,S,M),Te=m(Re(zt,tt),P,R,L),$t=F(mt-yt),Qt=F(Yn(Te,_t)),N=F(Li(Te,_t)),w=Qt-N;if(zt!=null){let Y=zt<0?k:Jt,pt=zt<0?Jt:k;Gt?(oe>0&&ne[ft]!=null&&Z(We.get(ne[ft]),$t,N+hi(oe/2),vt,Yn(0,w-oe),Y,pt),ue[ft]!=null&&Z(fe.get(ue[ft]),$t,N+hi(oe/2),vt,Yn(0,w-oe),Y,pt)):Z(At,$t,N+hi(oe/2),vt,Yn(0,w-oe),Y,pt),et(p,_,ft,$t-oe/2,N,vt+oe,w)}}return oe>0?ot.stroke=Gt?We:At:Gt||(ot._fill=d.width==0?d._fill:d._stroke??d._fill,ot.width=0),ot.fill=Gt?fe:At,ot})}function Pw(i,t){let e=Re(t?.alignGaps,0);return(n,s,r,o)=>_r(n,s,(a,l,c,h,f,u,p,_,x,g,d)=>{[r,o]=th(c,r,o);let y=a.pxRound,C=H=>y(u(H,h,g,_)),b=H=>y(p(H,f,d,x)),P,T,m;h.ori==0?(P=rh,m=wo,T=Jg):(P=oh,m=Eo,T=Kg);let M=h.dir*(h.ori==0?1:-1),L=C(l[M==1?r:o]),S=L,R=[],F=[];for(let H=M==1?r:o;H>=r&&H<=o;H+=M)if(c[H]!=null){let q=l[H],Z=C(q);R.push(S=Z),F.push(b(c[H]))}let B={stroke:i(R,F,P,m,T,y),fill:null,clip:null,band:null,gaps:null,flags:So},D=B.stroke,[V,X]=Tf(n,s);if(a.fill!=null||V!=0){let H=B.fill=new Path2D(D),K=a.fillTo(n,s,a.min,a.max,V),q=b(K);m(H,S,q),m(H,L,q)}if(!a.spanGaps){let H=[];H.push(...Af(l,c,r,o,M,C,e)),B.gaps=H=a.gaps(n,s,r,o,H),B.clip=sh(H,h.ori,_,x,g,d)}return X!=0&&(B.band=X==2?[Ss(n,s,r,o,D,-1),Ss(n,s,r,o,D,1)]:Ss(n,s,r,o,D,X)),B})}function Iw(i){return Pw(Lw,i)}function Lw(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),h=Array(o-1),f=Array(o-1);for(let u=0;u<o-1;u++)h[u]=t[u+1]-t[u],f[u]=i[u+1]-i[u],c[u]=h[u]/f[u];l[0]=c[0];for(let u=1;u<o-1;u++)c[u]===0||c[u-1]===0||c[u-1]>0!=c[u]>0?l[u]=0:(l[u]=3*(f[u-1]+f[u])/((2*f[u]+f[u-1])/c[u-1]+(f[u]+2*f[u-1])/c[u]),isFinite(l[u])||(l[u]=0));l[o-1]=c[o-2];for(let u=0;u<o-1;u++)s(a,i[u]+f[u]/3,t[u]+l[u]*f[u]/3,i[u+1]-f[u]/3,t[u+1]-l[u+1]*f[u]/3,i[u+1],t[u+1])}return a}var df=new Set;function mg(){for(let i of df)i.syncRect(!0)}bo&&(mr(fb,xo,mg),mr(db,xo,mg,!0),mr(Kc,xo,()=>{bn.pxRatio=De}));var Dw=t0(),Nw=jg();function gg(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>pf(r,o,t,e))}function Uw(i,t){return i.map((e,n)=>n==0?{}:mn({},t,e))}function pf(i,t,e,n){return mn({},t==0?e:n,i)}function e0(i,t,e){return t==null?vo:[t,e]}var Fw=e0;function Ow(i,t,e){return t==null?vo:jc(t,e,yf,!0)}function n0(i,t,e,n){return t==null?vo:eh(t,e,i.scales[n].log,!1)}var Bw=n0;function i0(i,t,e,n){return t==null?vo:xf(t,e,i.scales[n].log,!1)}var kw=i0;function zw(i,t,e,n,s){let r=Yn(Ym(i),Ym(t)),o=t-i,a=Ii(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Xs.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function _g(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=Mn((e=+s)*De))+"px"),[i,t,e]}function Vw(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=Ge(t[2]*De,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function bn(i,t,e){let n={mode:Re(i.mode,1)},s=n.mode;function r(v,E,U,O){let W=E.valToPct(v);return O+U*(E.dir==-1?1-W:W)}function o(v,E,U,O){let W=E.valToPct(v);return O+U*(E.dir==-1?W:1-W)}function a(v,E,U,O){return E.ori==0?r(v,E,U,O):o(v,E,U,O)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=_i(YS);if(i.id!=null&&(c.id=i.id),ci(c,i.class),i.title){let v=_i(KS,c);v.textContent=i.title}let h=Pi("canvas"),f=n.ctx=h.getContext("2d"),u=_i(jS,c);mr("click",u,v=>{v.target===_&&($e!=wr||Qe!=Er)&&Pn.click(n,v)},!0);let p=n.under=_i(QS,u);u.appendChild(h);let _=n.over=_i(tb,u);i=Mo(i);let x=+Re(i.pxAlign,1),g=dg(x);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let d=i.ms||.001,y=n.series=s==1?gg(i.series||[],og,ug,!1):Uw(i.series||[null],hg),C=n.axes=gg(i.axes||[],rg,lg,!0),b=n.scales={},P=n.bands=i.bands||[];P.forEach(v=>{v.fill=Ee(v.fill||null),v.dir=Re(v.dir,-1)});let T=s==2?y[1].facets[0].scale:y[0].scale,m={axes:ns,series:ve},M=(i.drawOrder||["axes","series"]).map(v=>m[v]);function L(v){let E=v.distr==3?U=>Ms(U>0?U:v.clamp(n,U,v.min,v.max,v.key)):v.distr==4?U=>tf(U,v.asinh):v.distr==100?U=>v.fwd(U):U=>U;return U=>{let O=E(U),{_min:W,_max:Q}=v,ct=Q-W;return(O-W)/ct}}function S(v){let E=b[v];if(E==null){let U=(i.scales||Da)[v]||Da;if(U.from!=null){S(U.from);let O=mn({},b[U.from],U,{key:v});O.valToPct=L(O),b[v]=O}else{E=b[v]=mn({},v==T?Xg:bw,U),E.key=v;let O=E.time,W=E.range,Q=Ws(W);if((v!=T||s==2&&!O)&&(Q&&(W[0]==null||W[1]==null)&&(W={min:W[0]==null?Xm:{mode:1,hard:W[0],soft:W[0]},max:W[1]==null?Xm:{mode:1,hard:W[1],soft:W[1]}},Q=!1),!Q&&ih(W))){let ct=W;W=(gt,Et,Ot)=>Et==null?vo:jc(Et,Ot,ct)}E.range=Ee(W||(O?Fw:v==T?E.distr==3?Bw:E.distr==4?kw:e0:E.distr==3?n0:E.distr==4?i0:Ow)),E.auto=Ee(Q?!1:E.auto),E.clamp=Ee(E.clamp||Sw),E._min=E._max=null,E.valToPct=L(E)}}}S("x"),S("y"),s==1&&y.forEach(v=>{S(v.scale)}),C.forEach(v=>{S(v.scale)});for(let v in i.scales)S(v);let R=b[T],F=R.distr,B,D;R.ori==0?(ci(c,ZS),B=r,D=o):(ci(c,JS),B=o,D=r);let V={};for(let v in b){let E=b[v];(E.min!=null||E.max!=null)&&(V[v]={min:E.min,max:E.max},E.min=E.max=null)}let X=i.tzDate||(v=>new Date(Mn(v/d))),H=i.fmtDate||Sf,K=d==1?Zb(X):jb(X),q=ng(X,eg(d==1?Yb:Kb,H)),Z=sg(X,ig(tw,H)),et=[],ht=n.legend=mn({},iw,i.legend),ut=n.cursor=mn({},cw,{drag:{y:s==2}},i.cursor),tt=ht.show,_t=ut.show,yt=ht.markers;ht.idxs=et,yt.width=Ee(yt.width),yt.dash=Ee(yt.dash),yt.stroke=Ee(yt.stroke),yt.fill=Ee(yt.fill);let vt,Mt,Zt,oe=[],Gt=[],ue,fe=!1,ne={};if(ht.live){let v=y[1]?y[1].values:null;fe=v!=null,ue=fe?v(n,1,0):{_:0};for(let E in ue)ne[E]=gf}if(tt)if(vt=Pi("table",ob,c),Zt=Pi("tbody",null,vt),ht.mount(n,vt),fe){Mt=Pi("thead",null,vt,Zt);let v=Pi("tr",null,Mt);Pi("th",null,v);for(var We in ue)Pi("th",Lm,v).textContent=We}else ci(vt,lb),ht.live&&ci(vt,ab);let ke={show:!0},Ve={show:!1};function Ce(v,E){if(E==0&&(fe||!ht.live||s==2))return vo;let U=[],O=Pi("tr",cb,Zt,Zt.childNodes[E]);ci(O,v.class),v.show||ci(O,pr);let W=Pi("th",null,O);if(yt.show){let gt=_i(hb,W);if(E>0){let Et=yt.width(n,E);Et&&(gt.style.border=Et+"px "+yt.dash(n,E)+" "+yt.stroke(n,E)),gt.style.background=yt.fill(n,E)}}let Q=_i(Lm,W);v.label instanceof HTMLElement?Q.appendChild(v.label):Q.textContent=v.label,E>0&&(yt.show||(Q.style.color=v.width>0?yt.stroke(n,E):yt.fill(n,E)),ot("click",W,gt=>{if(ut._lock)return;ie(gt);let Et=y.indexOf(v);if((gt.ctrlKey||gt.metaKey)!=ht.isolate){let Ot=y.some((kt,Ht)=>Ht>0&&Ht!=Et&&kt.show);y.forEach((kt,Ht)=>{Ht>0&&Fi(Ht,Ot?Ht==Et?ke:Ve:ke,!0,fn.setSeries)})}else Fi(Et,{show:!v.show},!0,fn.setSeries)},!1),se&&ot(Fm,W,gt=>{ut._lock||(ie(gt),Fi(y.indexOf(v),Ar,!0,fn.setSeries))},!1));for(var ct in ue){let gt=Pi("td",ub,O);gt.textContent="--",U.push(gt)}return[O,U]}let gn=new Map;function ot(v,E,U,O=!0){let W=gn.get(E)||{},Q=ut.bind[v](n,E,U,O);Q&&(mr(v,E,W[v]=Q),gn.set(E,W))}function At(v,E,U){let O=gn.get(E)||{};for(let W in O)(v==null||W==v)&&(lf(W,E,O[W]),delete O[W]);v==null&&gn.delete(E)}let Nt=0,Jt=0,k=0,ft=0,zt=0,Bt=0,mt=zt,Te=Bt,$t=k,Qt=ft,N=0,w=0,Y=0,pt=0;n.bbox={};let lt=!1,bt=!1,wt=!1,it=!1,rt=!1,xt=!1;function z(v,E,U){(U||v!=n.width||E!=n.height)&&at(v,E),_e(!1),wt=!0,bt=!0,Un()}function at(v,E){n.width=Nt=k=v,n.height=Jt=ft=E,zt=Bt=0,Rt(),Kt();let U=n.bbox;N=U.left=fr(zt*De,.5),w=U.top=fr(Bt*De,.5),Y=U.width=fr(k*De,.5),pt=U.height=fr(ft*De,.5)}let st=3;function Ct(){let v=!1,E=0;for(;!v;){E++;let U=Mr(E),O=Ui(E);v=E==st||U&&O,v||(at(n.width,n.height),bt=!0)}}function St({width:v,height:E}){z(v,E)}n.setSize=St;function Rt(){let v=!1,E=!1,U=!1,O=!1;C.forEach((W,Q)=>{if(W.show&&W._show){let{side:ct,_size:gt}=W,Et=ct%2,Ot=W.label!=null?W.labelSize:0,kt=gt+Ot;kt>0&&(Et?(k-=kt,ct==3?(zt+=kt,O=!0):U=!0):(ft-=kt,ct==0?(Bt+=kt,v=!0):E=!0))}}),Di[0]=v,Di[1]=U,Di[2]=E,Di[3]=O,k-=yi[1]+yi[3],zt+=yi[3],ft-=yi[2]+yi[0],Bt+=yi[0]}function Kt(){let v=zt+k,E=Bt+ft,U=zt,O=Bt;function W(Q,ct){switch(Q){case 1:return v+=ct,v-ct;case 2:return E+=ct,E-ct;case 3:return U-=ct,U+ct;case 0:return O-=ct,O+ct}}C.forEach((Q,ct)=>{if(Q.show&&Q._show){let gt=Q.side;Q._pos=W(gt,Q._size),Q.label!=null&&(Q._lpos=W(gt,Q.labelSize))}})}if(ut.dataIdx==null){let v=ut.hover,E=v.skip=new Set(v.skip??[]);E.add(void 0);let U=v.prox=Ee(v.prox),O=v.bias??=0;ut.dataIdx=(W,Q,ct,gt)=>{if(Q==0)return ct;let Et=ct,Ot=U(W,Q,ct,gt)??He,kt=Ot>=0&&Ot<He,Ht=R.ori==0?k:ft,he=ut.left,Pe=t[0],Ae=t[Q];if(E.has(Ae[ct])){Et=null;let Se=null,ee=null,jt;if(O==0||O==-1)for(jt=ct;Se==null&&jt-- >0;)E.has(Ae[jt])||(Se=jt);if(O==0||O==1)for(jt=ct;ee==null&&jt++<Ae.length;)E.has(Ae[jt])||(ee=jt);if(Se!=null||ee!=null)if(kt){let Ze=Se==null?-1/0:B(Pe[Se],R,Ht,0),rn=ee==null?1/0:B(Pe[ee],R,Ht,0),An=he-Ze,ze=rn-he;An<=ze?An<=Ot&&(Et=Se):ze<=Ot&&(Et=ee)}else Et=ee==null?Se:Se==null?ee:ct-Se<=ee-ct?Se:ee}else kt&&Sn(he-B(Pe[ct],R,Ht,0))>Ot&&(Et=null);return Et}}let ie=v=>{ut.event=v};ut.idxs=et,ut._lock=!1;let dt=ut.points;dt.show=Ee(dt.show),dt.size=Ee(dt.size),dt.stroke=Ee(dt.stroke),dt.width=Ee(dt.width),dt.fill=Ee(dt.fill);let Wt=n.focus=mn({},i.focus||{alpha:.3},ut.focus),se=Wt.prox>=0,Lt=se&&dt.one,pe=[],qe=[],kn=[];function Ao(v,E){let U=dt.show(n,E);if(U instanceof HTMLElement)return ci(U,rb),ci(U,v.class),Ki(U,-10,-10,k,ft),_.insertBefore(U,pe[E]),U}function xr(v,E){if(s==1||E>0){let U=s==1&&b[v.scale].time,O=v.value;v.value=U?Km(O)?sg(X,ig(O,H)):O||Z:O||yw,v.label=v.label||(U?uw:hw)}if(Lt||E>0){v.width=v.width==null?1:v.width,v.paths=v.paths||Dw||bb,v.fillTo=Ee(v.fillTo||ww),v.pxAlign=+Re(v.pxAlign,x),v.pxRound=dg(v.pxAlign),v.stroke=Ee(v.stroke||null),v.fill=Ee(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let U=vw(Yn(1,v.width),1),O=v.points=mn({},{size:U,width:Yn(1,U*.2),stroke:v.stroke,space:U*2,paths:Nw,_stroke:null,_fill:null},v.points);O.show=Ee(O.show),O.filter=Ee(O.filter),O.fill=Ee(O.fill),O.stroke=Ee(O.stroke),O.paths=Ee(O.paths),O.pxAlign=v.pxAlign}if(tt){let U=Ce(v,E);oe.splice(E,0,U[0]),Gt.splice(E,0,U[1]),ht.values.push(null)}if(_t){et.splice(E,0,null);let U=null;Lt?E==0&&(U=Ao(v,E)):E>0&&(U=Ao(v,E)),pe.splice(E,0,U),qe.splice(E,0,0),kn.splice(E,0,0)}Tn("addSeries",E)}function dh(v,E){E=E??y.length,v=s==1?pf(v,E,og,ug):pf(v,E,{},hg),y.splice(E,0,v),xr(y[E],E)}n.addSeries=dh;function Ua(v){if(y.splice(v,1),tt){ht.values.splice(v,1),Gt.splice(v,1);let E=oe.splice(v,1)[0];At(null,E.firstChild),E.remove()}_t&&(et.splice(v,1),pe.splice(v,1)[0].remove(),qe.splice(v,1),kn.splice(v,1)),Tn("delSeries",v)}n.delSeries=Ua;let Di=[!1,!1,!1,!1];function Qi(v,E){if(v._show=v.show,v.show){let U=v.side%2,O=b[v.scale];O==null&&(v.scale=U?y[1].scale:T,O=b[v.scale]);let W=O.time;v.size=Ee(v.size),v.space=Ee(v.space),v.rotate=Ee(v.rotate),Ws(v.incrs)&&v.incrs.forEach(ct=>{!Xs.has(ct)&&Xs.set(ct,Tg(ct))}),v.incrs=Ee(v.incrs||(O.distr==2?Xb:W?d==1?$b:Jb:dr)),v.splits=Ee(v.splits||(W&&O.distr==1?K:O.distr==3?hf:O.distr==4?pw:dw)),v.stroke=Ee(v.stroke),v.grid.stroke=Ee(v.grid.stroke),v.ticks.stroke=Ee(v.ticks.stroke),v.border.stroke=Ee(v.border.stroke);let Q=v.values;v.values=Ws(Q)&&!Ws(Q[0])?Ee(Q):W?Ws(Q)?ng(X,eg(Q,H)):Km(Q)?Qb(X,Q):Q||q:Q||fw,v.filter=Ee(v.filter||(O.distr>=3&&O.log==10?_w:O.distr==3&&O.log==2?xw:wg)),v.font=_g(v.font),v.labelFont=_g(v.labelFont),v._size=v.size(n,null,E,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(Di[E]=!0,v._el=_i(eb,u))}}function ts(v,E,U,O){let[W,Q,ct,gt]=U,Et=E%2,Ot=0;return Et==0&&(gt||Q)&&(Ot=E==0&&!W||E==2&&!ct?Mn(rg.size/3):0),Et==1&&(W||ct)&&(Ot=E==1&&!Q||E==3&&!gt?Mn(lg.size/2):0),Ot}let Ro=n.padding=(i.padding||[ts,ts,ts,ts]).map(v=>Ee(Re(v,ts))),yi=n._padding=Ro.map((v,E)=>v(n,E,Di,0)),nn,an=null,ln=null,Ni=s==1?y[0].idxs:null,jn=null,bs=!1;function Co(v,E){if(t=v??[],n.data=n._data=t,s==2){nn=0;for(let U=1;U<y.length;U++)nn+=t[U][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),jn=t[0],nn=jn.length;let U=t;if(F==2){U=t.slice();let O=U[0]=Array(nn);for(let W=0;W<nn;W++)O[W]=W}n._data=t=U}if(_e(!0),Tn("setData"),F==2&&(wt=!0),E!==!1){let U=R;U.auto(n,bs)?Po():Ts(T,U.min,U.max),it=it||ut.left>=0,xt=!0,Un()}}n.setData=Co;function Po(){bs=!0;let v,E;s==1&&(nn>0?(an=Ni[0]=0,ln=Ni[1]=nn-1,v=t[0][an],E=t[0][ln],F==2?(v=an,E=ln):v==E&&(F==3?[v,E]=eh(v,v,R.log,!1):F==4?[v,E]=xf(v,v,R.log,!1):R.time?E=v+Mn(86400/d):[v,E]=jc(v,E,yf,!0))):(an=Ni[0]=v=null,ln=Ni[1]=E=null)),Ts(T,v,E)}let yr,ws,vr,A,G,nt,J,j,Pt,Dt;function It(v,E,U,O,W,Q){v??=Nm,U??=Mf,O??="butt",W??=Nm,Q??="round",v!=yr&&(f.strokeStyle=yr=v),W!=ws&&(f.fillStyle=ws=W),E!=vr&&(f.lineWidth=vr=E),Q!=G&&(f.lineJoin=G=Q),O!=nt&&(f.lineCap=nt=O),U!=A&&f.setLineDash(A=U)}function Ut(v,E,U,O){E!=ws&&(f.fillStyle=ws=E),v!=J&&(f.font=J=v),U!=j&&(f.textAlign=j=U),O!=Pt&&(f.textBaseline=Pt=O)}function qt(v,E,U,O,W=0){if(O.length>0&&v.auto(n,bs)&&(E==null||E.min==null)){let Q=Re(an,0),ct=Re(ln,O.length-1),gt=U.min==null?_b(O,Q,ct,W,v.distr==3):[U.min,U.max];v.min=Li(v.min,U.min=gt[0]),v.max=Yn(v.max,U.max=gt[1])}}let ae={min:null,max:null};function ye(){for(let O in b){let W=b[O];V[O]==null&&(W.min==null||V[T]!=null&&W.auto(n,bs))&&(V[O]=ae)}for(let O in b){let W=b[O];V[O]==null&&W.from!=null&&V[W.from]!=null&&(V[O]=ae)}V[T]!=null&&_e(!0);let v={};for(let O in V){let W=V[O];if(W!=null){let Q=v[O]=Mo(b[O],Tb);if(W.min!=null)mn(Q,W);else if(O!=T||s==2)if(nn==0&&Q.from==null){let ct=Q.range(n,null,null,O);Q.min=ct[0],Q.max=ct[1]}else Q.min=He,Q.max=-He}}if(nn>0){y.forEach((O,W)=>{if(s==1){let Q=O.scale,ct=V[Q];if(ct==null)return;let gt=v[Q];if(W==0){let Et=gt.range(n,gt.min,gt.max,Q);gt.min=Et[0],gt.max=Et[1],an=Ii(gt.min,t[0]),ln=Ii(gt.max,t[0]),ln-an>1&&(t[0][an]<gt.min&&an++,t[0][ln]>gt.max&&ln--),O.min=jn[an],O.max=jn[ln]}else O.show&&O.auto&&qt(gt,ct,O,t[W],O.sorted);O.idxs[0]=an,O.idxs[1]=ln}else if(W>0&&O.show&&O.auto){let[Q,ct]=O.facets,gt=Q.scale,Et=ct.scale,[Ot,kt]=t[W],Ht=v[gt],he=v[Et];Ht!=null&&qt(Ht,V[gt],Q,Ot,Q.sorted),he!=null&&qt(he,V[Et],ct,kt,ct.sorted),O.min=ct.min,O.max=ct.max}});for(let O in v){let W=v[O],Q=V[O];if(W.from==null&&(Q==null||Q.min==null)){let ct=W.range(n,W.min==He?null:W.min,W.max==-He?null:W.max,O);W.min=ct[0],W.max=ct[1]}}}for(let O in v){let W=v[O];if(W.from!=null){let Q=v[W.from];if(Q.min==null)W.min=W.max=null;else{let ct=W.range(n,Q.min,Q.max,O);W.min=ct[0],W.max=ct[1]}}}let E={},U=!1;for(let O in v){let W=v[O],Q=b[O];if(Q.min!=W.min||Q.max!=W.max){Q.min=W.min,Q.max=W.max;let ct=Q.distr;Q._min=ct==3?Ms(Q.min):ct==4?tf(Q.min,Q.asinh):ct==100?Q.fwd(Q.min):Q.min,Q._max=ct==3?Ms(Q.max):ct==4?tf(Q.max,Q.asinh):ct==100?Q.fwd(Q.max):Q.max,E[O]=U=!0}}if(U){y.forEach((O,W)=>{s==2?W>0&&E.y&&(O._paths=null):E[O.scale]&&(O._paths=null)});for(let O in E)wt=!0,Tn("setScale",O);_t&&ut.left>=0&&(it=xt=!0)}for(let O in V)V[O]=null}function Xt(v){let E=cf(an-1,0,nn-1),U=cf(ln+1,0,nn-1);for(;v[E]==null&&E>0;)E--;for(;v[U]==null&&U<nn-1;)U++;return[E,U]}function ve(){if(nn>0){let v=y.some(E=>E._focus)&&Dt!=Wt.alpha;v&&(f.globalAlpha=Dt=Wt.alpha),y.forEach((E,U)=>{if(U>0&&E.show&&(en(U,!1),en(U,!0),E._paths==null)){let O=Dt;Dt!=E.alpha&&(f.globalAlpha=Dt=E.alpha);let W=s==2?[0,t[U][0].length-1]:Xt(t[U]);E._paths=E.paths(n,U,W[0],W[1]),Dt!=O&&(f.globalAlpha=Dt=O)}}),y.forEach((E,U)=>{if(U>0&&E.show){let O=Dt;Dt!=E.alpha&&(f.globalAlpha=Dt=E.alpha),E._paths!=null&&Fe(U,!1);{let W=E._paths!=null?E._paths.gaps:null,Q=E.points.show(n,U,an,ln,W),ct=E.points.filter(n,U,Q,W);(Q||ct)&&(E.points._paths=E.points.paths(n,U,an,ln,ct),Fe(U,!0))}Dt!=O&&(f.globalAlpha=Dt=O),Tn("drawSeries",U)}}),v&&(f.globalAlpha=Dt=1)}}function en(v,E){let U=E?y[v].points:y[v];U._stroke=U.stroke(n,v),U._fill=U.fill(n,v)}function Fe(v,E){let U=E?y[v].points:y[v],{stroke:O,fill:W,clip:Q,flags:ct,_stroke:gt=U._stroke,_fill:Et=U._fill,_width:Ot=U.width}=U._paths;Ot=Ge(Ot*De,3);let kt=null,Ht=Ot%2/2;E&&Et==null&&(Et=Ot>0?"#fff":gt);let he=U.pxAlign==1&&Ht>0;if(he&&f.translate(Ht,Ht),!E){let Pe=N-Ot/2,Ae=w-Ot/2,Se=Y+Ot,ee=pt+Ot;kt=new Path2D,kt.rect(Pe,Ae,Se,ee)}E?Vt(gt,Ot,U.dash,U.cap,Et,O,W,ct,Q):Oe(v,gt,Ot,U.dash,U.cap,Et,O,W,ct,kt,Q),he&&f.translate(-Ht,-Ht)}function Oe(v,E,U,O,W,Q,ct,gt,Et,Ot,kt){let Ht=!1;Et!=0&&P.forEach((he,Pe)=>{if(he.series[0]==v){let Ae=y[he.series[1]],Se=t[he.series[1]],ee=(Ae._paths||Da).band;Ws(ee)&&(ee=he.dir==1?ee[0]:ee[1]);let jt,Ze=null;Ae.show&&ee&&yb(Se,an,ln)?(Ze=he.fill(n,Pe)||Q,jt=Ae._paths.clip):ee=null,Vt(E,U,O,W,Ze,ct,gt,Et,Ot,kt,jt,ee),Ht=!0}}),Ht||Vt(E,U,O,W,Q,ct,gt,Et,Ot,kt)}let _n=So|ff;function Vt(v,E,U,O,W,Q,ct,gt,Et,Ot,kt,Ht){It(v,E,U,O,W),(Et||Ot||Ht)&&(f.save(),Et&&f.clip(Et),Ot&&f.clip(Ot)),Ht?(gt&_n)==_n?(f.clip(Ht),kt&&f.clip(kt),be(W,ct),cn(v,Q,E)):gt&ff?(be(W,ct),f.clip(Ht),cn(v,Q,E)):gt&So&&(f.save(),f.clip(Ht),kt&&f.clip(kt),be(W,ct),f.restore(),cn(v,Q,E)):(be(W,ct),cn(v,Q,E)),(Et||Ot||Ht)&&f.restore()}function cn(v,E,U){U>0&&(E instanceof Map?E.forEach((O,W)=>{f.strokeStyle=yr=W,f.stroke(O)}):E!=null&&v&&f.stroke(E))}function be(v,E){E instanceof Map?E.forEach((U,O)=>{f.fillStyle=ws=O,f.fill(U)}):E!=null&&v&&f.fill(E)}function es(v,E,U,O){let W=C[v],Q;if(O<=0)Q=[0,0];else{let ct=W._space=W.space(n,v,E,U,O),gt=W._incrs=W.incrs(n,v,E,U,O,ct);Q=zw(E,U,gt,O,ct)}return W._found=Q}function hn(v,E,U,O,W,Q,ct,gt,Et,Ot){let kt=ct%2/2;x==1&&f.translate(kt,kt),It(gt,ct,Et,Ot,gt),f.beginPath();let Ht,he,Pe,Ae,Se=W+(O==0||O==3?-Q:Q);U==0?(he=W,Ae=Se):(Ht=W,Pe=Se);for(let ee=0;ee<v.length;ee++)E[ee]!=null&&(U==0?Ht=Pe=v[ee]:he=Ae=v[ee],f.moveTo(Ht,he),f.lineTo(Pe,Ae));f.stroke(),x==1&&f.translate(-kt,-kt)}function Mr(v){let E=!0;return C.forEach((U,O)=>{if(!U.show)return;let W=b[U.scale];if(W.min==null){U._show&&(E=!1,U._show=!1,_e(!1));return}else U._show||(E=!1,U._show=!0,_e(!1));let Q=U.side,ct=Q%2,{min:gt,max:Et}=W,[Ot,kt]=es(O,gt,Et,ct==0?k:ft);if(kt==0)return;let Ht=W.distr==2,he=U._splits=U.splits(n,O,gt,Et,Ot,kt,Ht),Pe=W.distr==2?he.map(jt=>jn[jt]):he,Ae=W.distr==2?jn[he[1]]-jn[he[0]]:Ot,Se=U._values=U.values(n,U.filter(n,Pe,O,kt,Ae),O,kt,Ae);U._rotate=Q==2?U.rotate(n,Se,O,kt):0;let ee=U._size;U._size=xi(U.size(n,Se,O,v)),ee!=null&&U._size!=ee&&(E=!1)}),E}function Ui(v){let E=!0;return Ro.forEach((U,O)=>{let W=U(n,O,Di,v);W!=yi[O]&&(E=!1),yi[O]=W}),E}function ns(){for(let v=0;v<C.length;v++){let E=C[v];if(!E.show||!E._show)continue;let U=E.side,O=U%2,W,Q,ct=E.stroke(n,v),gt=U==0||U==3?-1:1,[Et,Ot]=E._found;if(E.label!=null){let Hn=E.labelGap*gt,ei=Mn((E._lpos+Hn)*De);Ut(E.labelFont[0],ct,"center",U==2?"top":Dm),f.save(),O==1?(W=Q=0,f.translate(ei,Mn(w+pt/2)),f.rotate((U==3?-Jc:Jc)/2)):(W=Mn(N+Y/2),Q=ei);let Ys=Sg(E.label)?E.label(n,v,Et,Ot):E.label;f.fillText(Ys,W,Q),f.restore()}if(Ot==0)continue;let kt=b[E.scale],Ht=O==0?Y:pt,he=O==0?N:w,Pe=E._splits,Ae=kt.distr==2?Pe.map(Hn=>jn[Hn]):Pe,Se=kt.distr==2?jn[Pe[1]]-jn[Pe[0]]:Et,ee=E.ticks,jt=E.border,Ze=ee.show?ee.size:0,rn=Mn(Ze*De),An=Mn((E.alignTo==2?E._size-Ze-E.gap:E.gap)*De),ze=E._rotate*-Jc/180,on=g(E._pos*De),Qn=(rn+An)*gt,Vn=on+Qn;Q=O==0?Vn:0,W=O==1?Vn:0;let fi=E.font[0],vi=E.align==1?go:E.align==2?Ku:ze>0?go:ze<0?Ku:O==0?"center":U==3?Ku:go,Bi=ze||O==1?"middle":U==2?"top":Dm;Ut(fi,ct,vi,Bi);let ti=E.font[1]*E.lineGap,di=Pe.map(Hn=>g(a(Hn,kt,Ht,he))),Mi=E._values;for(let Hn=0;Hn<Mi.length;Hn++){let ei=Mi[Hn];if(ei!=null){O==0?W=di[Hn]:Q=di[Hn],ei=""+ei;let Ys=ei.indexOf(`
`)==-1?[ei]:ei.split(/\n/gm);for(let Gn=0;Gn<Ys.length;Gn++){let Kf=Ys[Gn];ze?(f.save(),f.translate(W,Q+Gn*ti),f.rotate(ze),f.fillText(Kf,0,0),f.restore()):f.fillText(Kf,W,Q+Gn*ti)}}}ee.show&&hn(di,ee.filter(n,Ae,v,Ot,Se),O,U,on,rn,Ge(ee.width*De,3),ee.stroke(n,v),ee.dash,ee.cap);let ki=E.grid;ki.show&&hn(di,ki.filter(n,Ae,v,Ot,Se),O,O==0?2:1,O==0?w:N,O==0?pt:Y,Ge(ki.width*De,3),ki.stroke(n,v),ki.dash,ki.cap),jt.show&&hn([on],[1],O==0?1:0,O==0?1:2,O==1?w:N,O==1?pt:Y,Ge(jt.width*De,3),jt.stroke(n,v),jt.dash,jt.cap)}Tn("drawAxes")}function _e(v){y.forEach((E,U)=>{U>0&&(E._paths=null,v&&(s==1?(E.min=null,E.max=null):E.facets.forEach(O=>{O.min=null,O.max=null})))})}let sn=!1,zn=!1,Be=[];function un(){zn=!1;for(let v=0;v<Be.length;v++)Tn(...Be[v]);Be.length=0}function Un(){sn||(Db(Df),sn=!0)}function Fa(v,E=!1){sn=!0,zn=E,v(n),Df(),E&&Be.length>0&&queueMicrotask(un)}n.batch=Fa;function Df(){if(lt&&(ye(),lt=!1),wt&&(Ct(),wt=!1),bt){if(je(p,go,zt),je(p,"top",Bt),je(p,Ca,k),je(p,Pa,ft),je(_,go,zt),je(_,"top",Bt),je(_,Ca,k),je(_,Pa,ft),je(u,Ca,Nt),je(u,Pa,Jt),h.width=Mn(Nt*De),h.height=Mn(Jt*De),C.forEach(({_el:v,_show:E,_size:U,_pos:O,side:W})=>{if(v!=null)if(E){let Q=W===3||W===0?U:0,ct=W%2==1;je(v,ct?"left":"top",O-Q),je(v,ct?"width":"height",U),je(v,ct?"top":"left",ct?Bt:zt),je(v,ct?"height":"width",ct?ft:k),af(v,pr)}else ci(v,pr)}),yr=ws=vr=G=nt=J=j=Pt=A=null,Dt=1,Do(!0),zt!=mt||Bt!=Te||k!=$t||ft!=Qt){_e(!1);let v=k/$t,E=ft/Qt;if(_t&&!it&&ut.left>=0){ut.left*=v,ut.top*=E,Sr&&Ki(Sr,Mn(ut.left),0,k,ft),br&&Ki(br,0,Mn(ut.top),k,ft);for(let U=0;U<pe.length;U++){let O=pe[U];O!=null&&(qe[U]*=v,kn[U]*=E,Ki(O,xi(qe[U]),xi(kn[U]),k,ft))}}if(Ye.show&&!rt&&Ye.left>=0&&Ye.width>0){Ye.left*=v,Ye.width*=v,Ye.top*=E,Ye.height*=E;for(let U in yh)je(Tr,U,Ye[U])}mt=zt,Te=Bt,$t=k,Qt=ft}Tn("setSize"),bt=!1}Nt>0&&Jt>0&&(f.clearRect(0,0,h.width,h.height),Tn("drawClear"),M.forEach(v=>v()),Tn("draw")),Ye.show&&rt&&(Oa(Ye),rt=!1),_t&&it&&($s(null,!0,!1),it=!1),ht.show&&ht.live&&xt&&(_h(),xt=!1),l||(l=!0,n.status=1,Tn("ready")),bs=!1,sn=!1}n.redraw=(v,E)=>{wt=E||!1,v!==!1?Ts(T,R.min,R.max):Un()};function ph(v,E){let U=b[v];if(U.from==null){if(nn==0){let O=U.range(n,E.min,E.max,v);E.min=O[0],E.max=O[1]}if(E.min>E.max){let O=E.min;E.min=E.max,E.max=O}if(nn>1&&E.min!=null&&E.max!=null&&E.max-E.min<1e-16)return;v==T&&U.distr==2&&nn>0&&(E.min=Ii(E.min,t[0]),E.max=Ii(E.max,t[0]),E.min==E.max&&E.max++),V[v]=E,lt=!0,Un()}}n.setScale=ph;let mh,gh,Sr,br,Nf,Uf,wr,Er,Ff,Of,$e,Qe,Es=!1,Pn=ut.drag,wn=Pn.x,En=Pn.y;_t&&(ut.x&&(mh=_i(ib,_)),ut.y&&(gh=_i(sb,_)),R.ori==0?(Sr=mh,br=gh):(Sr=gh,br=mh),$e=ut.left,Qe=ut.top);let Ye=n.select=mn({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Tr=Ye.show?_i(nb,Ye.over?_:p):null;function Oa(v,E){if(Ye.show){for(let U in v)Ye[U]=v[U],U in yh&&je(Tr,U,v[U]);E!==!1&&Tn("setSelect")}}n.setSelect=Oa;function y0(v){if(y[v].show)tt&&af(oe[v],pr);else if(tt&&ci(oe[v],pr),_t){let U=Lt?pe[0]:pe[v];U!=null&&Ki(U,-10,-10,k,ft)}}function Ts(v,E,U){ph(v,{min:E,max:U})}function Fi(v,E,U,O){E.focus!=null&&w0(v),E.show!=null&&y.forEach((W,Q)=>{Q>0&&(v==Q||v==null)&&(W.show=E.show,y0(Q),s==2?(Ts(W.facets[0].scale,null,null),Ts(W.facets[1].scale,null,null)):Ts(W.scale,null,null),Un())}),U!==!1&&Tn("setSeries",v,E),O&&No("setSeries",n,v,E)}n.setSeries=Fi;function v0(v,E){mn(P[v],E)}function M0(v,E){v.fill=Ee(v.fill||null),v.dir=Re(v.dir,-1),E=E??P.length,P.splice(E,0,v)}function S0(v){v==null?P.length=0:P.splice(v,1)}n.addBand=M0,n.setBand=v0,n.delBand=S0;function b0(v,E){y[v].alpha=E,_t&&pe[v]!=null&&(pe[v].style.opacity=E),tt&&oe[v]&&(oe[v].style.opacity=E)}let is,As,qs,Ar={focus:!0};function w0(v){if(v!=qs){let E=v==null,U=Wt.alpha!=1;y.forEach((O,W)=>{if(s==1||W>0){let Q=E||W==0||W==v;O._focus=E?null:Q,U&&b0(W,Q?1:Wt.alpha)}}),qs=v,U&&Un()}}tt&&se&&ot(Om,vt,v=>{ut._lock||(ie(v),qs!=null&&Fi(null,Ar,!0,fn.setSeries))});function Oi(v,E,U){let O=b[E];U&&(v=v/De-(O.ori==1?Bt:zt));let W=k;O.ori==1&&(W=ft,v=W-v),O.dir==-1&&(v=W-v);let Q=O._min,ct=O._max,gt=v/W,Et=Q+(ct-Q)*gt,Ot=O.distr;return Ot==3?yo(10,Et):Ot==4?Mb(Et,O.asinh):Ot==100?O.bwd(Et):Et}function E0(v,E){let U=Oi(v,T,E);return Ii(U,t[0],an,ln)}n.valToIdx=v=>Ii(v,t[0]),n.posToIdx=E0,n.posToVal=Oi,n.valToPos=(v,E,U)=>b[E].ori==0?r(v,b[E],U?Y:k,U?N:0):o(v,b[E],U?pt:ft,U?w:0),n.setCursor=(v,E,U)=>{$e=v.left,Qe=v.top,$s(null,E,U)};function Bf(v,E){je(Tr,go,Ye.left=v),je(Tr,Ca,Ye.width=E)}function kf(v,E){je(Tr,"top",Ye.top=v),je(Tr,Pa,Ye.height=E)}let Io=R.ori==0?Bf:kf,Lo=R.ori==1?Bf:kf;function T0(){if(tt&&ht.live)for(let v=s==2?1:0;v<y.length;v++){if(v==0&&fe)continue;let E=ht.values[v],U=0;for(let O in E)Gt[v][U++].firstChild.nodeValue=E[O]}}function _h(v,E){if(v!=null&&(v.idxs?v.idxs.forEach((U,O)=>{et[O]=U}):Eb(v.idx)||et.fill(v.idx),ht.idx=et[0]),tt&&ht.live){for(let U=0;U<y.length;U++)(U>0||s==1&&!fe)&&A0(U,et[U]);T0()}xt=!1,E!==!1&&Tn("setLegend")}n.setLegend=_h;function A0(v,E){let U=y[v],O=v==0&&F==2?jn:t[v],W;fe?W=U.values(n,v,E)??ne:(W=U.value(n,E==null?null:O[E],v,E),W=W==null?ne:{_:W}),ht.values[v]=W}function $s(v,E,U){Ff=$e,Of=Qe,[$e,Qe]=ut.move(n,$e,Qe),ut.left=$e,ut.top=Qe,_t&&(Sr&&Ki(Sr,Mn($e),0,k,ft),br&&Ki(br,0,Mn(Qe),k,ft));let O,W=an>ln;is=He,As=null;let Q=R.ori==0?k:ft,ct=R.ori==1?k:ft;if($e<0||nn==0||W){O=ut.idx=null;for(let gt=0;gt<y.length;gt++){let Et=pe[gt];Et!=null&&Ki(Et,-10,-10,k,ft)}se&&Fi(null,Ar,!0,v==null&&fn.setSeries),ht.live&&(et.fill(O),xt=!0)}else{let gt,Et,Ot;s==1&&(gt=R.ori==0?$e:Qe,Et=Oi(gt,T),O=ut.idx=Ii(Et,t[0],an,ln),Ot=B(t[0][O],R,Q,0));let kt=-10,Ht=-10,he=0,Pe=0,Ae=!0,Se="",ee="";for(let jt=s==2?1:0;jt<y.length;jt++){let Ze=y[jt],rn=et[jt],An=rn==null?null:s==1?t[jt][rn]:t[jt][1][rn],ze=ut.dataIdx(n,jt,O,Et),on=ze==null?null:s==1?t[jt][ze]:t[jt][1][ze];if(xt=xt||on!=An||ze!=rn,et[jt]=ze,jt>0&&Ze.show){let Qn=ze==null?-10:ze==O?Ot:B(s==1?t[0][ze]:t[jt][0][ze],R,Q,0),Vn=on==null?-10:D(on,s==1?b[Ze.scale]:b[Ze.facets[1].scale],ct,0);if(se&&on!=null){let fi=R.ori==1?$e:Qe,vi=Sn(Wt.dist(n,jt,ze,Vn,fi));if(vi<is){let Bi=Wt.bias;if(Bi!=0){let ti=Oi(fi,Ze.scale),di=on>=0?1:-1,Mi=ti>=0?1:-1;Mi==di&&(Mi==1?Bi==1?on>=ti:on<=ti:Bi==1?on<=ti:on>=ti)&&(is=vi,As=jt)}else is=vi,As=jt}}if(xt||Lt){let fi,vi;R.ori==0?(fi=Qn,vi=Vn):(fi=Vn,vi=Qn);let Bi,ti,di,Mi,ki,Hn,ei=!0,Ys=dt.bbox;if(Ys!=null){ei=!1;let Gn=Ys(n,jt);di=Gn.left,Mi=Gn.top,Bi=Gn.width,ti=Gn.height}else di=fi,Mi=vi,Bi=ti=dt.size(n,jt);if(Hn=dt.fill(n,jt),ki=dt.stroke(n,jt),Lt)jt==As&&is<=Wt.prox&&(kt=di,Ht=Mi,he=Bi,Pe=ti,Ae=ei,Se=Hn,ee=ki);else{let Gn=pe[jt];Gn!=null&&(qe[jt]=di,kn[jt]=Mi,Wm(Gn,Bi,ti,ei),Hm(Gn,Hn,ki),Ki(Gn,xi(di),xi(Mi),k,ft))}}}}if(Lt){let jt=Wt.prox,Ze=qs==null?is<=jt:is>jt||As!=qs;if(xt||Ze){let rn=pe[0];rn!=null&&(qe[0]=kt,kn[0]=Ht,Wm(rn,he,Pe,Ae),Hm(rn,Se,ee),Ki(rn,xi(kt),xi(Ht),k,ft))}}}if(Ye.show&&Es)if(v!=null){let[gt,Et]=fn.scales,[Ot,kt]=fn.match,[Ht,he]=v.cursor.sync.scales,Pe=v.cursor.drag;if(wn=Pe._x,En=Pe._y,wn||En){let{left:Ae,top:Se,width:ee,height:jt}=v.select,Ze=v.scales[Ht].ori,rn=v.posToVal,An,ze,on,Qn,Vn,fi=gt!=null&&Ot(gt,Ht),vi=Et!=null&&kt(Et,he);fi&&wn?(Ze==0?(An=Ae,ze=ee):(An=Se,ze=jt),on=b[gt],Qn=B(rn(An,Ht),on,Q,0),Vn=B(rn(An+ze,Ht),on,Q,0),Io(Li(Qn,Vn),Sn(Vn-Qn))):Io(0,Q),vi&&En?(Ze==1?(An=Ae,ze=ee):(An=Se,ze=jt),on=b[Et],Qn=D(rn(An,he),on,ct,0),Vn=D(rn(An+ze,he),on,ct,0),Lo(Li(Qn,Vn),Sn(Vn-Qn))):Lo(0,ct)}else vh()}else{let gt=Sn(Ff-Nf),Et=Sn(Of-Uf);if(R.ori==1){let he=gt;gt=Et,Et=he}wn=Pn.x&&gt>=Pn.dist,En=Pn.y&&Et>=Pn.dist;let Ot=Pn.uni;Ot!=null?wn&&En&&(wn=gt>=Ot,En=Et>=Ot,!wn&&!En&&(Et>gt?En=!0:wn=!0)):Pn.x&&Pn.y&&(wn||En)&&(wn=En=!0);let kt,Ht;wn&&(R.ori==0?(kt=wr,Ht=$e):(kt=Er,Ht=Qe),Io(Li(kt,Ht),Sn(Ht-kt)),En||Lo(0,ct)),En&&(R.ori==1?(kt=wr,Ht=$e):(kt=Er,Ht=Qe),Lo(Li(kt,Ht),Sn(Ht-kt)),wn||Io(0,Q)),!wn&&!En&&(Io(0,0),Lo(0,0))}if(Pn._x=wn,Pn._y=En,v==null){if(U){if(Jf!=null){let[gt,Et]=fn.scales;fn.values[0]=gt!=null?Oi(R.ori==0?$e:Qe,gt):null,fn.values[1]=Et!=null?Oi(R.ori==1?$e:Qe,Et):null}No(ju,n,$e,Qe,k,ft,O)}if(se){let gt=U&&fn.setSeries,Et=Wt.prox;qs==null?is<=Et&&Fi(As,Ar,!0,gt):is>Et?Fi(null,Ar,!0,gt):As!=qs&&Fi(As,Ar,!0,gt)}}xt&&(ht.idx=O,_h()),E!==!1&&Tn("setCursor")}let Rs=null;Object.defineProperty(n,"rect",{get(){return Rs==null&&Do(!1),Rs}});function Do(v=!1){v?Rs=null:(Rs=_.getBoundingClientRect(),Tn("syncRect",Rs))}function zf(v,E,U,O,W,Q,ct){ut._lock||Es&&v!=null&&v.movementX==0&&v.movementY==0||(xh(v,E,U,O,W,Q,ct,!1,v!=null),v!=null?$s(null,!0,!0):$s(E,!0,!1))}function xh(v,E,U,O,W,Q,ct,gt,Et){if(Rs==null&&Do(!1),ie(v),v!=null)U=v.clientX-Rs.left,O=v.clientY-Rs.top;else{if(U<0||O<0){$e=-10,Qe=-10;return}let[Ot,kt]=fn.scales,Ht=E.cursor.sync,[he,Pe]=Ht.values,[Ae,Se]=Ht.scales,[ee,jt]=fn.match,Ze=E.axes[0].side%2==1,rn=R.ori==0?k:ft,An=R.ori==1?k:ft,ze=Ze?Q:W,on=Ze?W:Q,Qn=Ze?O:U,Vn=Ze?U:O;if(Ae!=null?U=ee(Ot,Ae)?a(he,b[Ot],rn,0):-10:U=rn*(Qn/ze),Se!=null?O=jt(kt,Se)?a(Pe,b[kt],An,0):-10:O=An*(Vn/on),R.ori==1){let fi=U;U=O,O=fi}}Et&&(E==null||E.cursor.event.type==ju)&&((U<=1||U>=k-1)&&(U=fr(U,k)),(O<=1||O>=ft-1)&&(O=fr(O,ft))),gt?(Nf=U,Uf=O,[wr,Er]=ut.move(n,U,O)):($e=U,Qe=O)}let yh={width:0,height:0,left:0,top:0};function vh(){Oa(yh,!1)}let Vf,Hf,Gf,Wf;function Xf(v,E,U,O,W,Q,ct){Es=!0,wn=En=Pn._x=Pn._y=!1,xh(v,E,U,O,W,Q,ct,!0,!1),v!=null&&(ot(Qu,rf,qf,!1),No(Um,n,wr,Er,k,ft,null));let{left:gt,top:Et,width:Ot,height:kt}=Ye;Vf=gt,Hf=Et,Gf=Ot,Wf=kt}function qf(v,E,U,O,W,Q,ct){Es=Pn._x=Pn._y=!1,xh(v,E,U,O,W,Q,ct,!1,!0);let{left:gt,top:Et,width:Ot,height:kt}=Ye,Ht=Ot>0||kt>0,he=Vf!=gt||Hf!=Et||Gf!=Ot||Wf!=kt;if(Ht&&he&&Oa(Ye),Pn.setScale&&Ht&&he){let Pe=gt,Ae=Ot,Se=Et,ee=kt;if(R.ori==1&&(Pe=Et,Ae=kt,Se=gt,ee=Ot),wn&&Ts(T,Oi(Pe,T),Oi(Pe+Ae,T)),En)for(let jt in b){let Ze=b[jt];jt!=T&&Ze.from==null&&Ze.min!=He&&Ts(jt,Oi(Se+ee,jt),Oi(Se,jt))}vh()}else ut.lock&&(ut._lock=!ut._lock,$s(E,!0,v!=null));v!=null&&(At(Qu,rf),No(Qu,n,$e,Qe,k,ft,null))}function R0(v,E,U,O,W,Q,ct){if(ut._lock)return;ie(v);let gt=Es;if(Es){let Et=!0,Ot=!0,kt=10,Ht,he;R.ori==0?(Ht=wn,he=En):(Ht=En,he=wn),Ht&&he&&(Et=$e<=kt||$e>=k-kt,Ot=Qe<=kt||Qe>=ft-kt),Ht&&Et&&($e=$e<wr?0:k),he&&Ot&&(Qe=Qe<Er?0:ft),$s(null,!0,!0),Es=!1}$e=-10,Qe=-10,et.fill(null),$s(null,!0,!0),gt&&(Es=gt)}function $f(v,E,U,O,W,Q,ct){ut._lock||(ie(v),Po(),vh(),v!=null&&No(Bm,n,$e,Qe,k,ft,null))}function Yf(){C.forEach(Vw),z(n.width,n.height,!0)}mr(Kc,xo,Yf);let Rr={};Rr.mousedown=Xf,Rr.mousemove=zf,Rr.mouseup=qf,Rr.dblclick=$f,Rr.setSeries=(v,E,U,O)=>{let W=fn.match[2];U=W(n,E,U),U!=-1&&Fi(U,O,!0,!1)},_t&&(ot(Um,_,Xf),ot(ju,_,zf),ot(Fm,_,v=>{ie(v),Do(!1)}),ot(Om,_,R0),ot(Bm,_,$f),df.add(n),n.syncRect=Do);let Ba=n.hooks=i.hooks||{};function Tn(v,E,U){zn?Be.push([v,E,U]):v in Ba&&Ba[v].forEach(O=>{O.call(null,n,E,U)})}(i.plugins||[]).forEach(v=>{for(let E in v.hooks)Ba[E]=(Ba[E]||[]).concat(v.hooks[E])});let Zf=(v,E,U)=>U,fn=mn({key:null,setSeries:!1,filters:{pub:Zm,sub:Zm},scales:[T,y[1]?y[1].scale:null],match:[Jm,Jm,Zf],values:[null,null]},ut.sync);fn.match.length==2&&fn.match.push(Zf),ut.sync=fn;let Jf=fn.key,Mh=qg(Jf);function No(v,E,U,O,W,Q,ct){fn.filters.pub(v,E,U,O,W,Q,ct)&&Mh.pub(v,E,U,O,W,Q,ct)}Mh.sub(n);function C0(v,E,U,O,W,Q,ct){fn.filters.sub(v,E,U,O,W,Q,ct)&&Rr[v](null,E,U,O,W,Q,ct)}n.pub=C0;function P0(){Mh.unsub(n),df.delete(n),gn.clear(),lf(Kc,xo,Yf),c.remove(),vt?.remove(),Tn("destroy")}n.destroy=P0;function Sh(){Tn("init",i,t),Co(t||i.data,!1),V[T]?ph(T,V[T]):Po(),rt=Ye.show&&(Ye.width>0||Ye.height>0),it=xt=!0,z(i.width,i.height)}return y.forEach(xr),C.forEach(Qi),e?e instanceof HTMLElement?(e.appendChild(c),Sh()):e(n,Sh):Sh(),n}bn.assign=mn;bn.fmtNum=vf;bn.rangeNum=jc;bn.rangeLog=eh;bn.rangeAsinh=xf;bn.orient=_r;bn.pxRatio=De;bn.join=Lb;bn.fmtDate=Sf,bn.tzDate=Gb;bn.sync=qg;{bn.addGap=Ew,bn.clipGaps=sh;let i=bn.paths={points:jg};i.linear=t0,i.stepped=Rw,i.bars=Cw,i.spline=Iw}function Hw(i,t){let e=[],n=[],s=new Map,r="",o="";for(let[l,c]of i.entries()){let h=(c.charts??[]).find(u=>u.id===t);if(!h)continue;r=h.title,o=h.unit;let f=[Array.from(Cr(c.time))];for(let u of h.series)s.has(u.name)||s.set(u.name,s.size),f.push(Array.from(Cr(u.data),p=>p===p?p:null)),n.push({...u,record:l,label:c.label,colour:s.get(u.name)});e.push(f)}let a=e.length>1?bn.join(e,e.map(l=>l.map(()=>1))):e[0];return{id:t,title:r,unit:o,series:n,columns:a}}var Gw=i=>[...new Set(i.flatMap(t=>(t.charts??[]).map(e=>e.id)))];function s0(i,t){let e=i.length>1,{duration:n}=t.state,s=bn.sync("curves"),r=[],o=I("div",{class:"curves"}),a=[[],[7,4],[2,3],[10,3,2,3]],l=!1,c=I("button",{type:"button",id:"zoom-out",hidden:!0,on:{click:()=>h(0,n)}},"Show the whole run");function h(x,g){l=!0;for(let{plot:d}of r)d.setScale("x",{min:x,max:g});l=!1,c.hidden=x<=0&&g>=n,u()}for(let x of Gw(i)){let g=Hw(i,x),d=I("div",{class:"chart-plot"}),y=I("div",{class:"chart-legend"}),C=I("span",{class:"chart-time"}),b=I("figure",{class:"chart","data-chart":x},I("figcaption",{},I("span",{},Tt(g.title),I("span",{class:"muted"},` [${g.unit}]`)),C),d,y);o.append(b);let P=S=>({stroke:()=>Ks("--ink-soft"),grid:{stroke:()=>Ks("--grid"),width:1},ticks:{stroke:()=>Ks("--grid"),width:1,size:4},font:"11px system-ui, sans-serif",...S}),T=new bn({width:400,height:190,legend:{show:!1},padding:[8,10,0,0],scales:{x:{time:!1,range:(S,R,F)=>[R,Math.max(F,R+1e-6)]}},axes:[P({size:26,space:60,values:(S,R)=>R.map((F,B)=>(R.length-1,`${+F.toPrecision(6)} s`))}),P({size:48,space:30,values:(S,R)=>R.map(F=>String(+F.toPrecision(6)).replace("-","\u2212"))})],series:[{},...g.series.map(S=>({label:S.name,show:S.shown!==!1,stroke:()=>Nr(S.colour),width:1.6,dash:a[S.record%a.length],spanGaps:e,points:{show:!1}}))],cursor:{sync:{key:s.key,setSeries:!1},drag:{x:!0,y:!1,dist:5},y:!1,points:{size:6}},hooks:{setScale:[(S,R)=>{R==="x"&&!l&&r.length&&h(S.scales.x.min,S.scales.x.max)}],setCursor:[()=>p()]}},g.columns,d),m=I("div",{class:"time-cursor"},I("span",{class:"time-grip"}));T.over.append(m);let M=g.series.map((S,R)=>{let F=I("span",{class:"figure"}),B=I("span",{class:"swatch-line","data-record":S.record}),D=I("button",{type:"button",class:"series","aria-pressed":String(S.shown!==!1),title:S.description||S.name,on:{click:()=>{let V=!T.series[R+1].show;T.setSeries(R+1,{show:V}),D.setAttribute("aria-pressed",String(V)),p()}}},B,e?`${S.label} `:"",Tt(S.name),F);return y.append(D),{value:F,swatch:B,colour:S.colour}});if(M.length>10){y.classList.add("folded");let S=I("button",{type:"button",class:"more","aria-expanded":"false",on:{click:()=>{let R=y.classList.toggle("folded");S.setAttribute("aria-expanded",String(!R)),S.textContent=R?`all ${M.length} curves`:"fewer"}}},`all ${M.length} curves`);y.append(S)}let L={id:x,plot:T,group:g,figure:b,hand:m,entries:M,note:C,holder:d,time:NaN};r.push(L),Xw(T,m,t),new ResizeObserver(()=>{let S=Math.floor(d.clientWidth);S>50&&S!==T.width&&(T.setSize({width:S,height:T.height}),u())}).observe(d)}function f(){for(let{plot:x,entries:g}of r){for(let d of g)d.swatch.style.color=Nr(d.colour);x.redraw(!1)}}Cs(f);function u(){let{time:x}=t.state;for(let{plot:g,hand:d,figure:y}of r){let{min:C,max:b}=g.scales.x,P=x>=C-1e-9&&x<=b+1e-9;d.hidden=!P,P&&(d.style.transform=`translateX(${g.valToPos(x,"x").toFixed(2)}px)`),Je(y,"data-time",x.toFixed(6))}}function p(){for(let{plot:x,group:g,entries:d,note:y}of r){let C=x.cursor.left>=0&&x.cursor.idx!==null&&x.cursor.idx!==void 0,b=g.columns[0],P=C?b[x.cursor.idx]:t.state.time;ni(y,C?`mouse: ${In(P,n)}`:In(P,n));for(let[T,m]of d.entries()){if(!x.series[T+1].show){ni(m.value,"");continue}let M=C&&!e?g.columns[T+1][x.cursor.idx]:Ww(b,g.columns[T+1],P);ni(m.value,M==null?"\u2013":`${Wn(M)} ${g.unit}`)}}}let _=0;return t.listen(({playing:x})=>{u();let g=performance.now();x&&g-_<100||(_=g,p())}),f(),{box:o,reset:c,charts:r}}function Ww(i,t,e){let n=0,s=i.length-1;for(;n<s;){let a=n+s+1>>1;i[a]<=e?n=a:s=a-1}let r=n,o=Math.min(n+1,i.length-1);for(;r>0&&t[r]===void 0;)--r;for(;o<i.length-1&&t[o]===void 0;)++o;return t[r]===null||t[r]===void 0?null:t[o]===null||t[o]===void 0||i[o]<=i[r]?t[r]:t[r]+(t[o]-t[r])*Math.min(Math.max((e-i[r])/(i[o]-i[r]),0),1)}function Xw(i,t,e){let{over:n}=i,s=l=>i.posToVal(l.clientX-n.getBoundingClientRect().left,"x"),r=l=>{e.seek(s(l))};n.style.touchAction="pan-y";let o=null;n.addEventListener("pointerdown",l=>{o={x:l.clientX,touch:l.pointerType!=="mouse"}}),n.addEventListener("pointermove",l=>{o?.touch&&r(l)}),n.addEventListener("pointerup",l=>{o&&Math.abs(l.clientX-o.x)<4&&r(l),o=null}),n.addEventListener("pointercancel",()=>{o=null});let a=t.firstChild;a.addEventListener("mousedown",l=>l.stopPropagation()),a.addEventListener("pointerdown",l=>{l.stopPropagation(),l.preventDefault(),a.setPointerCapture(l.pointerId)}),a.addEventListener("pointermove",l=>{a.hasPointerCapture(l.pointerId)&&(l.stopPropagation(),r(l))}),a.addEventListener("pointerup",l=>l.stopPropagation()),a.addEventListener("click",l=>l.stopPropagation())}var ji=150,Cf=34,Pf=i=>i>=.0995?`${(100*i).toFixed(0)} %`:`${Wn(100*i,2)} %`;function qw(i,t,e){let n=Math.max(t,1.2),s=i,r=i-n,o=n+6,a=n+12,l=ji+Cf-14,c=`M${r} 0A${o} ${o} 0 0 0 ${r+o} ${o}H${l}v6l13 ${-(n/2+6)}l-13 ${-(n/2+6)}v6H${s+6}A6 6 0 0 1 ${s} 0Z`;return Yt("svg",{class:`branch ${e}`,width:ji+Cf,height:a,viewBox:`0 0 ${ji+Cf} ${a}`,"aria-hidden":"true"},Yt("path",{d:c}))}function $w(i,t){let e=(i??[]).filter(n=>n.share>0).sort((n,s)=>s.share-n.share);return e.length?I("ul",{class:"parts"},e.map(n=>I("li",{},Tt(n.name)," ",I("span",{class:"figure"},Pf(n.share))))):null}function Yw(i){let{unit:t,total:e}=i,n=(o,a,l)=>{let c=Math.max(o.share,0)*ji;return I("div",{class:`flow-row ${l}`,style:{"--least":`${Math.ceil(c)+26}px`,"--drop":`${Math.max(c/2-5,0).toFixed(1)}px`}},I("div",{class:"stream-cell"},I("div",{class:"stream",style:{width:`${Math.max(a-c,0).toFixed(2)}px`}}),qw(a,c,l)),I("div",{class:"flow-text"},I("p",{},I("b",{},Tt(o.name))," ",I("span",{class:"figure"},Pf(o.share))," ",I("span",{class:"figure muted"},`${Wn(o.value,3)} ${t}`)),$w(o.parts,t)))},s=[],r=ji;for(let o of i.flows??[])o.share>0&&(s.push(n(o,r,"loss")),r-=o.share*ji);for(let o of i.useful??[])o.share>0&&(s.push(n(o,r,"useful")),r-=o.share*ji);return Math.abs(r)>.005*ji&&s.push(I("p",{class:"muted"},`The parts named do not add up to the whole: ${Pf(Math.abs(r)/ji)} ${r>0?"is missing":"too much"}.`)),I("div",{class:"flow"},I("div",{class:"flow-row source"},I("div",{class:"stream-cell"},I("div",{class:"stream",style:{width:`${ji}px`}})),I("div",{class:"flow-text"},I("p",{},I("b",{},"from the supply")," ",I("span",{class:"figure"},"100 %")," ",I("span",{class:"figure muted"},`${Wn(e,4)} ${t}`)))),s)}function r0(i,t){let{records:e}=t,n=e.length>1;e.some(s=>s.losses)&&i.section("losses","Where the energy goes",I("div",{class:n?"columns":""},e.map(s=>I("div",{},n&&Ir(s),s.losses?[I("p",{class:"lead"},Tt(s.losses.title)),Yw(s.losses)]:I("p",{class:"muted"},"This run draws nothing from a supply, so there is no energy to follow.")))))}var If=12;function Zw(i){let t=new Map;return i.forEach((e,n)=>{for(let s of e.margins?.values??[]){t.has(s.name)||t.set(s.name,{check:s.check,least:1/0,of:[]});let r=t.get(s.name);r.of[n]=s,r.least=Math.min(r.least,s.ratio)}}),[...t.values()].sort((e,n)=>e.least-n.least)}function Jw(i){let t=[],e=(n,s)=>["time","load","posture","lost_at","lost_load"].every(r=>n[r]===s[r]);return i.forEach((n,s)=>{if(!n)return;let r=t.find(o=>e(o.value,n));r?r.of.push(s):t.push({value:n,of:[s]})}),t}function o0(i,t,e){let{records:n}=t,s=n.length>1,r=Zw(n),{duration:o}=e.state,a=n.flatMap(x=>(x.margins?.not_checked??[]).map(g=>({...g,label:x.label}))),l=(x,g)=>[...new Map(x.map(d=>[g(d),d])).values()],c=l(a,x=>x.check+"|"+(x.missing??[]).join()),h=l(n.flatMap(x=>x.margins?.cautions??[]),x=>x),f=l(n.flatMap(x=>x.margins?.unloaded??[]),x=>x),u=r.map((x,g)=>I("tr",{class:`${x.least<1?"missed":""} ${g>=If?"later":""}`},I("td",{class:"figure number-cell"},g+1),I("th",{scope:"row"},Tt(x.check)),I("td",{class:"margin-cell"},x.of.map((d,y)=>d&&I("div",{class:"bar-line"},s&&I("span",{class:"record-letter"},n[y].label),Va(d.ratio),I("span",{class:`figure ${d.ratio<1?"short":""}`},Tt(d.ratio_text))))),I("td",{class:"figure"},x.of.map(d=>d&&I("div",{class:"pair"},Tt(d.capacity),I("span",{class:"muted"}," / "),Tt(d.demand)))),I("td",{},Jw(x.of).map(({value:d,of:y})=>I("div",{class:"governs"},s&&y.map(C=>[I("span",{class:"record-letter"},n[C].label)," "]),Number.isFinite(d.time)&&Pr(e,d.time,In(d.time,o))," ",I("span",{class:"small"},Tt(d.load),d.posture?I("span",{class:"muted posture"}," \xB7 ",Tt(d.posture)):""),d.lost_at!==null&&Number.isFinite(d.lost_at)&&I("div",{class:"lost"},js("bad")," falls below 1 at ",Pr(e,d.lost_at,In(d.lost_at,o))," ",I("span",{class:"small"},Tt(d.lost_load??"")))))))),p=r.length?ss(["","what could fail","margin","capacity / demand","governed at, by"],u,{class:"margins short",label:"margins"}):I("p",{class:"muted"},"The record holds no margins."),_=r.length>If&&I("button",{type:"button",class:"more controls","aria-expanded":"false",on:{click:()=>{let x=p.querySelector("table").classList.toggle("short");_.textContent=x?`Show all ${r.length} margins`:`Show the ${If} smallest`,_.setAttribute("aria-expanded",String(!x))}}},`Show all ${r.length} margins`);return i.section("margins","Margins: what breaks first",I("p",{class:"lead"},"How many times over each part would bear what the run asked of it, at the worst instant of the run. Below 1 it fails. Bars on a logarithmic axis from 0.5 to 20, starting at 1; smallest first."),p,_,I("div",{class:"not-checked"},I("h3",{},js("unknown")," Not checked"),c.length?[I("p",{},`${c.length===1?"This check was":`These ${c.length} checks were`} not made, because the model lacks the data. Nothing is known about them: they are not safe, they are unknown.`),I("ul",{},c.map(x=>I("li",{},Tt(x.check),x.missing?.length?I("span",{class:"muted"}," \u2014 needs ",x.missing.map((g,d)=>[d?", ":"",Tt(g)])):"")))]:I("p",{},r.length?"Every check that the program knows of had the data it needs. Failures that it does not know of are not covered.":"No part was checked in this record.")),f.length>0&&I("details",{},I("summary",{},`Never loaded in this run (${f.length})`),I("p",{class:"small"},f.map((x,g)=>[g?" \xB7 ":"",Tt(x)]))),h.length>0&&I("div",{class:"caution-list"},I("h3",{},"Cautions about the margins"),I("ul",{},h.map(x=>I("li",{},Tt(x))))))}function Kw(i){if((i.axes??[]).length!==1)return null;let t=i.rows.filter(_=>_.found!==!1&&Number.isFinite(_.value)).map(_=>({x:parseFloat(_.place[0]),y:_.value})).filter(_=>Number.isFinite(_.x)).sort((_,x)=>_.x-x.x);if(t.length<2)return null;let e=420,n=200,s=50,r=36,o=10,a=14,l=t.map(_=>_.x),c=Math.min(...l),h=Math.max(...l),f=1.1*Math.max(...t.map(_=>_.y),1e-12);if(!(h>c))return null;let u=_=>s+(_-c)/(h-c)*(e-s-a),p=_=>n-r-_/f*(n-r-o);return Yt("svg",{class:"limit-chart",viewBox:`0 0 ${e} ${n}`,width:e,height:n,role:"img","aria-label":`${i.name} over ${i.axes[0].name}`},Yt("path",{class:"grid",d:[0,.25,.5,.75,1].map(_=>`M${s} ${p(_*f/1.1)}H${e-a}`).join("")}),[0,.5,1].map(_=>Yt("text",{x:s-6,y:p(_*f/1.1)+4,"text-anchor":"end"},Wn(_*f/1.1,3))),t.map(_=>Yt("text",{x:u(_.x),y:n-r+15,"text-anchor":"middle"},String(_.x))),Yt("text",{x:(s+e-a)/2,y:n-4,"text-anchor":"middle"},i.axes[0].name),Yt("path",{class:"line",d:t.map((_,x)=>`${x?"L":"M"}${u(_.x)} ${p(_.y)}`).join("")}),t.map(_=>Yt("circle",{cx:u(_.x),cy:p(_.y),r:3})))}function a0(i,t){t.limits?.length&&i.section("limits","Limits",t.limits.map(e=>I("div",{class:"limit"},I("h3",{},Tt(e.name)),I("p",{class:"lead"},Tt(e.quantity),e.unit?` [${e.unit}]`:"",e.method?I("span",{class:"muted"},", found by ",Tt(e.method)):""),I("div",{class:"limit-body"},ss([...(e.axes??[]).map(n=>Tt(n.name)),"limit","error","remark"],e.rows.map(n=>I("tr",{class:n.found===!1?"missed":""},(n.place??[]).map(s=>I("td",{class:"figure"},Tt(s))),I("td",{class:"figure"},I("b",{},Tt(n.text))),I("td",{class:"figure"},Tt(n.error_text)),I("td",{class:"small"},Tt(n.note)))),{label:`limit ${e.name}`}),Kw(e)))))}var lh=900,ch=24,l0=13,me=i=>i.toFixed(2);function jw(i){let t=[...(i.polygons??[]).flatMap(s=>s.points),...(i.cords??[]).flatMap(s=>s.points),...(i.circles??[]).flatMap(s=>[[s.at[0]-s.radius,s.at[1]-s.radius],[s.at[0]+s.radius,s.at[1]+s.radius]]),...(i.dimensions??[]).flatMap(s=>[s.from,s.to])],e=t.map(s=>s[0]),n=t.map(s=>s[1]);return{left:Math.min(...e),right:Math.max(...e),bottom:Math.min(...n),top:Math.max(...n)}}function c0(i,t,e){for(let n=0;;++n)if(i[n]??=[],i[n].every(([s,r])=>e<=s+.01||t>=r-.01))return i[n].push([t,e]),n}function Qw(i){let t=jw(i);if(!Number.isFinite(t.left))return null;let e=(m,M)=>Math.abs(m.to[M]-m.from[M]),n=(i.dimensions??[]).filter(m=>m.axis!=="y").sort((m,M)=>e(m,0)-e(M,0)),s=(i.dimensions??[]).filter(m=>m.axis==="y").sort((m,M)=>e(m,1)-e(M,1)),r=[],o=[],a=n.map(m=>({d:m,lane:c0(r,Math.min(m.from[0],m.to[0]),Math.max(m.from[0],m.to[0]))})),l=s.map(m=>({d:m,lane:c0(o,Math.min(m.from[1],m.to[1]),Math.max(m.from[1],m.to[1]))})),c=[...i.notes??[]].sort((m,M)=>m.at[0]-M.at[0]),h=20+(o.length?o.length*(ch+14)+16:0),f=(lh-h-30)/(t.right-t.left||1),u=m=>h+(m-t.left)*f,p=m=>.6*l0*m.length+12,_=[],x=c.map(m=>{let M=p(m.text),L=Math.min(u(m.at[0])+10,lh-M-4),S=_.findIndex(F=>F<=L);S<0&&(S=_.length<4?_.length:_.indexOf(Math.min(..._)));let R=Math.max(L,_[S]??0);return _[S]=R+M,{note:m,x:R,row:S,width:M}}),g=14+_.length*20+(_.length?14:0),d=m=>g+(t.top-m)*f,y=d(t.bottom),C=y+20+r.length*ch+14,b=(m,M)=>m.map((L,S)=>`${S?"L":"M"}${me(u(L[0]))} ${me(d(L[1]))}`).join("")+(M?"Z":""),P=(m,M,L,S)=>{let R=Math.hypot(L-m,S-M),F=(L-m)/(R||1),B=(S-M)/(R||1),D=(V,X,H)=>`M${me(V)} ${me(X)}L${me(V+H*8*F-2.4*B)} ${me(X+H*8*B+2.4*F)}L${me(V+H*8*F+2.4*B)} ${me(X+H*8*B-2.4*F)}Z`;return R>20?D(m,M,1)+D(L,S,-1):D(m,M,-1)+D(L,S,1)},T=(m,M,L,S,R,F,B)=>{let D=(m+L)/2,V=(M+S)/2;return Yt("g",{class:"dimension"},Yt("path",{class:"thin",d:`${R}M${me(m)} ${me(M)}L${me(L)} ${me(S)}`}),Yt("path",{class:"head",d:P(m,M,L,S)}),Yt("text",{x:me(D),y:me(V-4),"text-anchor":"middle",...B?{transform:`rotate(-90 ${me(D)} ${me(V)})`}:{}},F))};return Yt("svg",{class:"model-drawing",viewBox:`0 0 ${lh} ${me(C)}`,width:lh,height:me(C),role:"img","aria-label":`drawing of the model, ${i.name}`,"font-size":l0},(i.polygons??[]).filter(m=>m.role==="contact").map(m=>Yt("path",{class:"outline contact",d:b(m.points,!0)})),(i.polygons??[]).filter(m=>m.role!=="contact").map(m=>Yt("path",{class:"outline solid",d:b(m.points,!0)})),(i.cords??[]).map(m=>Yt("path",{class:`drawn-cord ${m.kind}`,d:b(m.points,!1)})),(i.circles??[]).map(m=>{let M=u(m.at[0]),L=d(m.at[1]),S=Math.max(m.radius*f,1.5),R=S+6;return Yt("g",{},Yt("circle",{class:`round ${m.role}`,cx:me(M),cy:me(L),r:me(S)}),Yt("path",{class:"centre-line",d:`M${me(M-R)} ${me(L)}H${me(M+R)}M${me(M)} ${me(L-R)}V${me(L+R)}`}))}),a.map(({d:m,lane:M})=>{let L=y+24+M*ch,S=m.from[0]<=m.to[0]?m.from:m.to,R=S===m.from?m.to:m.from,F=[S,R].map(B=>`M${me(u(B[0]))} ${me(d(B[1])+4)}V${me(L+5)}`).join("");return T(u(S[0]),L,u(R[0]),L,F,m.text,!1)}),l.map(({d:m,lane:M})=>{let L=h-18-M*(ch+14),S=m.from[1]<=m.to[1]?m.from:m.to,R=S===m.from?m.to:m.from,F=[S,R].map(B=>`M${me(u(B[0])-4)} ${me(d(B[1]))}H${me(L-5)}`).join("");return T(L,d(S[1]),L,d(R[1]),F,m.text,!0)}),x.map(({note:m,x:M,row:L,width:S})=>{let R=16+L*20,F=u(m.at[0]),B=d(m.at[1]);return Yt("g",{class:"note"},Yt("path",{class:"thin",d:`M${me(F)} ${me(B)}L${me(M)} ${me(R+4)}H${me(M+S-8)}`}),Yt("circle",{class:"dot",cx:me(F),cy:me(B),r:2}),Yt("text",{x:me(M+2),y:me(R)},m.text))}))}function h0(i,t){let{records:e}=t,n=e.length>1,s=l=>(l.drawing?.views??[]).map(c=>I("figure",{class:"drawing-figure"},I("div",{class:"drawing-box",tabindex:0,role:"group","aria-label":"drawing, can be scrolled sideways"},Qw(c)),I("figcaption",{},"View: ",Tt(c.name),", posture straight; mm"))),r=n&&e.every(l=>JSON.stringify(l.drawing)===JSON.stringify(e[0].drawing)),o=new Map;e.forEach((l,c)=>{for(let h of l.facts??[]){o.has(h.group)||o.set(h.group,new Map);let f=o.get(h.group);f.has(h.title)||f.set(h.title,new Array(e.length).fill("\u2013")),f.get(h.title)[c]=h.text}});let a=[...o].map(([l,c])=>I("div",{class:"fact-group"},I("h4",{class:"sub"},Tt(l)),I("table",{class:"facts"},n&&I("thead",{},I("tr",{},I("th",{}),e.map(h=>I("th",{scope:"col"},h.label)))),I("tbody",{},[...c].map(([h,f])=>I("tr",{class:n&&new Set(f).size>1?"differs":""},I("th",{scope:"row"},Tt(h)),f.map(u=>I("td",{class:"figure"},Tt(u)))))))));!a.length&&!e.some(l=>l.drawing?.views?.length)||i.section("model","The model",r||!n?s(e[0]):e.map(l=>[Ir(l),s(l)]),n&&r&&I("p",{class:"muted small"},"The drawing is the same for all records."),a.length>0&&I("div",{class:"fact-groups"},a))}function u0(i,t){let e=s=>I("ul",{},(s??[]).map(r=>I("li",{},Tt(r)))),n=[...new Set(t.records.map(s=>s.demo_data).filter(Boolean))];i.section("validity","Cautions and limits of validity",I("div",{class:"columns"},I("div",{},I("h3",{},"Cautions"),e([...t.cautions??[],...n])),I("div",{},I("h3",{},"What is simplified"),e(t.validity))),I("h3",{},"How the pictures were made"),I("ul",{},t.records.map(s=>I("li",{},t.records.length>1?`${s.label}: `:"",`${s.rows?.kept??"?"} of ${s.rows?.of??"?"} rows of the record are drawn: `,Tt(s.rows?.bound_text??"no bound stated"),". The numbers in the tables come from the whole record."))))}function f0(i,t){let{records:e}=t,n=e.length>1;if(!e.some(o=>o.summary?.length))return;let s=e.map(o=>{let a=new Map;for(let l of o.summary??[])a.set(l.group,[...a.get(l.group)??[],l]);return I("details",{},I("summary",{},n?`All values of ${o.label}`:`All ${o.summary?.length??0} values of the summary`),I("div",{class:"fact-groups"},[...a].map(([l,c])=>I("div",{class:"fact-group"},I("h4",{class:"sub"},Tt(l)),I("table",{class:"facts"},I("tbody",{},c.map(h=>I("tr",{},I("th",{scope:"row"},Tt(h.title)),I("td",{class:"figure"},Tt(h.text))))))))))});n||(s[0].dataset.print="");let r=i.section("values","All values",s);n&&r.classList.add("only-screen")}function d0(i,t){let{records:e}=t,n=e.length>1,s=new Map;for(let r of e)for(let o of r.inputs?.files??[]){let a=`${o.path}
${o.text}`;s.has(a)||s.set(a,{...o,of:[]}),s.get(a).of.push(r.label)}i.section("inputs","All inputs",e.map(r=>I("p",{},n&&[I("span",{class:"record-letter"},r.label)," "],"Scenario ",I("code",{},Tt(r.inputs?.scenario)),`, Sinewright ${r.inputs?.engine_version??"?"}, seed ${r.inputs?.seed??0}`,r.inputs?.overrides?.length?[", changed on the command line: ",r.inputs.overrides.map((o,a)=>[a?", ":"",I("code",{},Tt(o))])]:"",".")),I("p",{class:"only-print small"},"The full texts of these files are in the HTML file and in the record:"),[...s.values()].map(r=>I("details",{class:"input-file"},I("summary",{},n?`${r.of.join(", ")}: `:"",I("code",{},Tt(r.path)),I("span",{class:"muted"},`, ${r.text.split(`
`).length} lines`)),I("pre",{tabindex:0},I("code",{},r.text)))))}var hh=700,To=165,uh=52,Lf=20,p0=6,m0=6,fh=["","7 4","2 3","10 3 2 3"];function g0(i,t,e){if(!(t>i))return[i];let n=[1,2,2.5,5,10].map(r=>r*Zs((t-i)/e)).find(r=>(t-i)/r<=e+1),s=[];for(let r=Math.ceil(i/n-1e-9)*n;r<=t+1e-9*n;r+=n)s.push(+r.toPrecision(10));return s}function _0({group:i,plot:t},e){let n=i.series.map((x,g)=>({...x,data:i.columns[g+1]})).filter((x,g)=>t.series[g+1].show),s=i.columns[0],{min:r,max:o}=t.scales.x,a=1/0,l=-1/0;for(let{data:x}of n)x.forEach((g,d)=>{g!=null&&s[d]>=r&&s[d]<=o&&(a=Math.min(a,g),l=Math.max(l,g))});if(!(l>=a))return null;l-a<1e-9&&(a-=1,l+=1);let c=.06*(l-a);a-=c,l+=c;let h=x=>uh+(x-r)/(o-r||1)*(hh-uh-m0),f=x=>To-Lf-(x-a)/(l-a)*(To-Lf-p0),u=g0(r,o,10),p=g0(a,l,5),_=n.map(x=>{let g="",d=!1;return x.data.forEach((y,C)=>{if(y===null){d=!1;return}y===void 0||s[C]<r||s[C]>o||(g+=`${d?"L":"M"}${h(s[C]).toFixed(1)} ${f(y).toFixed(1)}`,d=!0)}),Yt("path",{d:g,stroke:Nr(x.colour),"stroke-dasharray":fh[x.record%fh.length],class:"curve"})});return I("figure",{class:"printed-curve"},I("figcaption",{},Tt(i.title),` [${i.unit}] over time [s]`),Yt("svg",{viewBox:`0 0 ${hh} ${To}`,width:hh,height:To},Yt("path",{class:"grid",d:u.map(x=>`M${h(x).toFixed(1)} ${p0}V${To-Lf}`).join("")+p.map(x=>`M${uh} ${f(x).toFixed(1)}H${hh-m0}`).join("")}),u.map(x=>Yt("text",{x:h(x).toFixed(1),y:To-6,"text-anchor":"middle"},String(x))),p.map(x=>Yt("text",{x:uh-6,y:(f(x)+4).toFixed(1),"text-anchor":"end"},String(x).replace("-","\u2212"))),_),I("p",{class:"printed-legend"},n.map(x=>I("span",{},Yt("svg",{width:26,height:8,viewBox:"0 0 26 8"},Yt("path",{class:"curve",d:"M0 4H26",stroke:Nr(x.colour),"stroke-dasharray":fh[x.record%fh.length]})),e?`${x.label} `:"",Tt(x.name)))))}function x0(i,t){let e=[];addEventListener("beforeprint",()=>{Eh(!0);for(let n of i.charts){let s=_0(n,t);s&&n.figure.before(s)}e=[...document.querySelectorAll("details[data-print]:not([open])")];for(let n of e)n.open=!0}),addEventListener("afterprint",()=>{for(let n of document.querySelectorAll(".printed-curve"))n.remove();for(let n of e)n.open=!1;Eh(!1)})}function tE(){let i=JSON.parse(document.getElementById("data").textContent),t=document.getElementById("review"),{records:e}=i,n=e.length>1;cd();let s=e.map(ed),r=id(s),o=s.reduce((x,g)=>(g.times.at(-1)??0)>(x.times.at(-1)??0)?g:x),a=sd(o.times.at(-1)??0,o.times);t.append(pd(i),md(i));let l=fd(t);xd(l,i,a),yd(l,i);let c=Im(l,i,s,r,a),h=s0(e,a),f=e.map(x=>`${n?`${x.label}: `:""}${x.rows?.bound_text??""}`).join("; "),u=l.section("curves","Curves",I("p",{class:"lead controls"},"Click in a chart to show that instant, drag across it to look closer (all charts follow), switch curves on and off below it."," ",h.reset),h.box,I("p",{class:"small muted"},n&&"A drawn solid, B dashed. ","Drawn rows: ",I("bdi",{},f),"."));u.addEventListener("keydown",c.onKey);let p=I("div",{class:"with-transport"});c.section.before(p),p.append(c.section,u,c.controls),r0(l,i),o0(l,i,a),a0(l,i),h0(l,i),u0(l,i),f0(l,i),d0(l,i),t.querySelector(".caution").after(gd(l.index)),t.append(I("footer",{class:"sheet-foot"},I("span",{},"Design predictions, not certification."),I("span",{},i.made_by??""))),x0(h,n);let _=/^#t=([0-9.]+)$/.exec(location.hash);_&&a.seek(Number(_[1])),t.dataset.ready=String(Math.round(performance.now()))}tE();})();
