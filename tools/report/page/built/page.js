(()=>{var t_="http://www.w3.org/2000/svg";function ff(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1))if(n==="on")for(let[r,o]of Object.entries(s))i.addEventListener(r,o);else if(n==="style")for(let[r,o]of Object.entries(s))i.style.setProperty(r,o);else i.setAttribute(n,s===!0?"":String(s));for(let n of e.flat(1/0))n==null||n===!1||i.append(n instanceof Node?n:document.createTextNode(String(n)));return i}var M=(i,t,...e)=>ff(document.createElement(i),t,e),vt=(i,t,...e)=>ff(document.createElementNS(t_,i),t,e),ht=(i,t)=>M("bdi",t,i??"");function On(i,t){i.firstChild?.data!==t&&(i.textContent=t)}function Ke(i,t,e){i.getAttribute(t)!==e&&i.setAttribute(t,e)}function Gi(i){if(!i?.base64)return new Float32Array(0);let t=atob(i.base64),e=new Uint8Array(t.length);for(let n=0;n<t.length;++n)e[n]=t.charCodeAt(n);return new Float32Array(e.buffer,0,e.length>>2)}var Nr=(i,t=3)=>sn(i,t).replace(/(\.\d*?)0+(?=$|×)/,"$1").replace(/\.(?=$|×)/,""),e_={"-":"\u207B",0:"\u2070",1:"\xB9",2:"\xB2",3:"\xB3",4:"\u2074",5:"\u2075",6:"\u2076",7:"\u2077",8:"\u2078",9:"\u2079"};function sn(i,t=4){if(i==null||Number.isNaN(i))return"\u2013";if(i===0)return"0";let e=Math.abs(i),n;if(e>=1e6||e<1e-4){let[s,r]=i.toExponential(t-1).split("e");n=`${s}\xD710${[...String(Number(r))].map(o=>e_[o]).join("")}`}else{let s=Math.max(0,t-1-Math.floor(Math.log10(e)));n=i.toFixed(Math.min(s,8))}return n.replace("-","\u2212")}var Ln=(i,t=1)=>`${i.toFixed(t>=1e3?1:t>=100?2:t>=20?3:4)} s`;function tr(i){let t=10**Math.floor(Math.log10(i)),e=i/t;return(e>=5?5:e>=2?2:1)*t}function pf(i,t,e){let n=i.length-2;if(n<0||!(t>i[0])){e.row=0,e.part=0;return}if(t>=i[n+1]){e.row=n,e.part=1;return}let s=Math.min(e.row,n);if(!(i[s]<=t&&t<i[s+1])){let o=0,a=n;for(;o<a;){let l=o+a+1>>1;i[l]<=t?o=l:a=l-1}s=o}e.row=s;let r=i[s+1]-i[s];e.part=r>0?(t-i[s])/r:0}function er(i){let t=Gi(i),e=i?.width??1;return{data:t,width:e,now:new Float64Array(e)}}function mf({data:i,width:t,now:e},{row:n,part:s}){let r=n*t,o=r+t;for(let a=0;a<t;++a){let l=i[r+a],c=o+a<i.length?i[o+a]:l;e[a]=l!==l?c:c!==c?l:l+s*(c-l)}}function n_(i,{row:t,part:e}){mf(i,{row:t,part:e});let{data:n,now:s}=i,r=t*7+3,o=r+7;if(o+3<n.length&&n[r]*n[o]+n[r+1]*n[o+1]+n[r+2]*n[o+2]+n[r+3]*n[o+3]<0)for(let c=0;c<4;++c)s[3+c]=(1-e)*n[r+c]-e*n[o+c];let a=Math.hypot(s[3],s[4],s[5],s[6])||1;for(let l=3;l<7;++l)s[l]/=a}function gf(i){let t=i.scene??{},e=Gi(i.time),n={row:0,part:0},s=(t.bodies??[]).map(c=>({...c,pose:er(c.poses)})),r=(t.cords??[]).map(c=>({...c,points:er(c.points),tension:er(c.tension),slack:er(c.slack)})),o=[...(t.contacts??[]).map(c=>({...c,kind:"contact"})),...(t.loads??[]).map(c=>({...c,kind:"load"}))].map(c=>({...c,point:er(c.point),force:er(c.force)})),a=(t.pulleys??[]).map(c=>({...c,angle:er(c.angle)})),l=[...r.flatMap(c=>[c.points,c.tension,c.slack]),...o.flatMap(c=>[c.point,c.force]),...a.map(c=>c.angle)];return{times:e,bodies:s,cords:r,arrows:o,pulleys:a,pins:t.pins??[],guides:t.guides??[],box:t.box,at(c){pf(e,c,n);for(let h of s)n_(h.pose,n);for(let h of l)mf(h,n)}}}function Wi(i,t,e){let[n,s,r,o,a,l,c]=i,[h,d,u]=t,p=2*(a*u-l*d),g=2*(l*h-o*u),x=2*(o*d-a*h);return e[0]=n+h+c*p+a*x-l*g,e[1]=s+d+c*g+l*p-o*x,e[2]=r+u+c*x+o*g-a*p,e}function _f(i,t,e){return Wi(i,t,e),e[0]-=i[0],e[1]-=i[1],e[2]-=i[2],e}function i_({point:i,force:t},e,n,s){for(let r=0;r<t.data.length;++r){let o=i.data[r]+t.data[r]*e*1.08;o<n[r%3]&&(n[r%3]=o),o>s[r%3]&&(s[r%3]=o)}}function xf(i){let t=0,e=0,n=[1/0,1/0,1/0],s=[-1/0,-1/0,-1/0];for(let a of i){for(let l of a.cords)t=Math.max(t,l.most_tension||0);for(let l of a.arrows)e=Math.max(e,l.most||0);for(let l=0;l<3;++l)n[l]=Math.min(n[l],a.box?.low?.[l]??-50),s[l]=Math.max(s[l],a.box?.high?.[l]??50)}let r=Math.hypot(s[0]-n[0],s[1]-n[1]),o=e>0?tr(.26*r/e):1;for(let a of i)for(let l of a.arrows)i_(l,o,n,s);return{mostTension:t||1,mostForce:e,mmPerNewton:o,sampleForce:e>0?tr(e):0,low:n,high:s,centre:n.map((a,l)=>.5*(a+s[l]))}}function yf(i,t){let e=[],n={time:0,duration:i,playing:!1,speed:1,loop:!1},s=0,r=()=>{for(let a of e)a(n)};function o(a){if(!n.playing)return;let l=Math.min((a-s)/1e3,.1);s=a;let c=n.time+l*n.speed;c>=i&&(n.loop?c=0:(c=i,n.playing=!1)),n.time=c,r(),n.playing&&requestAnimationFrame(o)}return{state:n,listen(a){e.push(a),a(n)},seek(a){n.playing=!1,n.time=Math.min(Math.max(Number(a)||0,0),i),r()},play(){n.playing||(n.time>=i&&(n.time=0),n.playing=!0,s=performance.now(),r(),requestAnimationFrame(o))},pause(){n.playing=!1,r()},toggle(){n.playing?this.pause():this.play()},setSpeed(a){n.speed=a,r()},setLoop(a){n.loop=a,r()},step(a){let l=a>0,c=n.time;for(let h=0;h<Math.abs(a);++h){let d=l?t.find(u=>u>c+1e-7):t.findLast(u=>u<c-1e-7);if(d===void 0)break;c=d}this.seek(c)}}}var vf=[],Mf=!1,Sf=null,bf=matchMedia("(prefers-color-scheme: dark)"),zh=()=>!Mf&&(Sf??(bf.matches?"dark":"light"))==="dark";function Ka(){document.documentElement.dataset.theme=zh()?"dark":"light";for(let i of vf)i()}function wf(){bf.addEventListener("change",Ka),Ka()}var Vh=zh;function Ef(){Sf=zh()?"light":"dark",Ka()}function Hh(i){Mf=i,Ka()}function $i(i){vf.push(i)}var nr=i=>getComputedStyle(document.documentElement).getPropertyValue(i).trim();function Af(i){let t=[];return{index:t,section(e,n,...s){let r=t.length+1;t.push({id:e,title:n,number:r});let o=M("section",{id:e,"aria-labelledby":`${e}-title`},M("h2",{id:`${e}-title`},M("span",{class:"balloon","aria-hidden":"true"},r),M("span",{},n)),...s);return i.append(o),o}}}var Tf={good:["M2 8.5 L6.5 13 L14 3.5","open"],bad:["M3 3 L13 13 M13 3 L3 13","open"],unknown:["M3 8 L13 8","open"]};function si(i){return Tf[i]?vt("svg",{class:`mark ${i}`,viewBox:"0 0 16 16",width:14,height:14,"aria-hidden":"true"},vt("path",{d:Tf[i][0]})):null}var Ur=(i,t,e,n)=>M("button",{type:"button",class:"jump","data-jump":t,title:"show this instant",...n,on:{click:()=>{i.seek(t)}}},e);var Xn=(i,t,e)=>M("div",{class:"table-box",tabindex:0,role:"group","aria-label":e?.label??"table"},M("table",{class:e?.class},M("thead",{},M("tr",{},i.map(n=>M("th",{scope:"col"},n)))),M("tbody",{},t))),Fr=i=>M("h3",{class:"record-heading"},M("span",{class:"record-letter"},i.label)," ",ht(i.name),M("span",{class:"muted"}," \xB7 ",ht(i.file)));var wi=(i,t,e)=>M("div",{class:"cell",...e},M("span",{class:"cell-title"},i),M("span",{class:"cell-text"},t)),ja=i=>[...new Set(i.filter(Boolean))],Vo=i=>ja(i).map((t,e)=>[e?", ":"",ht(t)]);function s_(i,t){return[M("div",{class:"title-main"},M("p",{class:"kind"},t.length>1?`Review of ${t.length} studies`:"Review of a study"),M("h1",{},ht(i.title)),Rf()),M("div",{class:"cells"},wi(t.length>1?"Studies":"Study",Vo(t.map(e=>e.name))),wi(t.length>1?"Tables":"Table",Vo(t.map(e=>e.file))),wi("Kind",Vo(t.map(e=>e.kind))),wi("Designs",t.map((e,n)=>[n?", ":"",String(e.designs)])),wi("Computed by",ht(i.made_by)))]}var Rf=()=>M("div",{class:"sheet-buttons controls"},M("button",{type:"button",id:"theme",on:{click:Ef}},"Light / dark"),M("button",{type:"button",on:{click:()=>print()}},"Print"));function Cf(i){let{records:t}=i;if(!t.length)return M("header",{class:"title-block"},s_(i,i.studies??[]));let e=t.length>1;return M("header",{class:"title-block"},M("div",{class:"title-main"},M("p",{class:"kind"},e?`Design review \xB7 ${t.length} records side by side`:"Design review"),M("h1",{},e?t.map((n,s)=>[s?M("span",{class:"against"}," against "):"",M("span",{class:"record-letter"},n.label)," ",ht(n.name)]):ht(i.title||t[0].name)),ja(t.map(n=>n.description)).map(n=>M("p",{class:"about"},ht(n))),Rf()),M("div",{class:"cells"},wi("Model",Vo(t.map(n=>n.model))),wi(e?"Records":"Record",e?t.map((n,s)=>[s?", ":"",`${n.label} `,ht(n.file)]):ht(t[0].file)),wi("Outcome",e&&ja(t.map(n=>n.outcome)).length>1?t.map((n,s)=>[s?", ":"",`${n.label} `,ht(n.outcome)]):Vo(t.map(n=>n.outcome))),wi("Computed by",ht(i.made_by)),wi("Dimensions","mm, unless stated"),wi("Pictures","to scale, orthographic")))}function Pf(i){let t=ja(i.records.map(e=>e.demo_data));return M("p",{class:"caution",role:"note"},M("strong",{},ht(i.cautions?.[0]??"The numbers are design predictions, not certification."))," ",t.map(e=>[ht(e)," "]),M("a",{href:"#validity"},"Cautions and limits of validity"))}var If=i=>M("nav",{class:"contents","aria-label":"sections of this sheet"},i.map(({id:t,title:e,number:n})=>M("a",{href:`#${t}`},M("span",{class:"balloon small","aria-hidden":"true"},n),e)));var Or=120,ir=14;function Qa(i,{low:t=.5,high:e=20}={}){let n=l=>Or*Math.log(Math.min(Math.max(l,t),e)/t)/Math.log(e/t),s=n(1),r=n(i),o=i>=1,a=[.2,.5,2,5,10,20].filter(l=>l>t&&l<e);return vt("svg",{class:`log-bar ${o?"good":"bad"}`,viewBox:`0 0 ${Or} ${ir}`,width:Or,height:ir,"aria-hidden":"true"},vt("path",{class:"ticks",d:a.map(l=>`M${n(l).toFixed(1)} 0V${ir}`).join("")}),Number.isFinite(i)&&vt("rect",{class:"bar",x:Math.min(s,r).toFixed(1),y:3,width:Math.max(Math.abs(r-s),1).toFixed(1),height:ir-6}),i>e&&vt("path",{class:"beyond",d:`M${Or-5} 1L${Or} ${ir/2}L${Or-5} ${ir-1}`}),vt("path",{class:"one",d:`M${s.toFixed(1)} 0V${ir}`}))}var Lf={good:"within the limit",bad:"beyond the limit",unknown:"not known",plain:""};function r_(i,t){return M("div",{class:"five"},(i.headline??[]).map(e=>M("div",{class:`number ${e.state}`,"data-headline":e.id},M("h4",{},ht(e.title)),M("p",{class:"value"},M("span",{class:"figure"},ht(e.text)),e.unit&&e.state!=="unknown"?[" ",M("span",{class:"unit"},e.unit)]:""),M("p",{class:"state"},si(e.state),Lf[e.state]?M("span",{},Lf[e.state]):null),M("p",{class:"threshold"},ht(e.threshold)),M("p",{class:"detail"},ht(e.detail)),M("p",{class:"sure"},M("span",{class:"cell-title"},"how sure"),ht(e.sure)),Number.isFinite(e.time)?Ur(t,e.time,`at ${Ln(e.time,t.state.duration)}`):null)))}function o_(i,t){let e=i.requirements??[];return e.length?Xn(["","requirement","asked","found","margin (found against asked)","at"],e.map(n=>M("tr",{class:n.met?"met":"missed"},M("td",{class:"nowrap"},si(n.met?"good":"bad"),n.met?" met":" not met"),M("th",{scope:"row"},ht(n.title)),M("td",{},ht(n.demand)),M("td",{class:"figure"},ht(n.value)),M("td",{class:"margin-cell"},M("div",{class:"bar-line"},Qa(n.margin,{low:.5,high:10}),M("span",{class:"figure"},ht(n.margin_text)))),M("td",{class:"nowrap"},Number.isFinite(n.time)?Ur(t,n.time,Ln(n.time,t.state.duration)):"\u2013"))),{class:"requirements",label:"requirements"}):M("p",{class:"muted"},"The scenario states no requirements.")}function Df(i,t,e){let{records:n}=t,s=n.length>1,r=n.flatMap(d=>d.requirements??[]),o=r.filter(d=>!d.met),a=r.length?o.length===0?`all ${r.length} requirements are met`:`${o.length} of ${r.length} requirements ${o.length===1?"is":"are"} not met`:"no requirement was stated",l=s&&n.every(d=>JSON.stringify(d.asked)===JSON.stringify(n[0].asked)),c=d=>M("ol",{class:`asked ${(d.asked??[]).length>6?"many":""}`},(d.asked??[]).map(u=>M("li",{},ht(u)))),h=[l||!s?[M("h4",{class:"sub first"},s?"What was asked, of each alike":"What was asked"),c(n[0])]:null,M("p",{class:`verdict ${o.length?"bad":r.length?"good":""}`},r.length?si(o.length?"bad":"good"):null," ",a[0].toUpperCase()+a.slice(1)+".")];for(let d of n)s&&h.push(Fr(d)),s&&!l&&h.push(M("h4",{class:"sub first"},"What was asked"),c(d)),h.push(r_(d,e),M("h4",{class:"sub"},"Requirements"),o_(d,e));return i.section("verdict","Verdict",h)}function Nf(i,t){let{records:e}=t;if(e.length<2||!t.comparison)return;let{values:n=[],inputs:s=[]}=t.comparison,r=n.filter(h=>h.notable),o=h=>M("span",{class:"record-letter"},e[h].label),a=r.length?M("ul",{class:"callouts"},r.slice(0,12).map(h=>M("li",{},M("span",{class:"callout-title"},ht(h.title)),M("span",{class:"callout-values"},h.texts.map((d,u)=>M("span",{class:"figure"},o(u)," ",ht(d)))),M("span",{class:"callout-change"},h.change.slice(1).map((d,u)=>[u?", ":"",ht(d)]))))):M("p",{},"No reported value differs notably."),l=Xn(["value",...e.map((h,d)=>o(d)),...e.slice(1).map(h=>`${h.label} against ${e[0].label}`)],n.map((h,d)=>[h.group&&h.group!==n[d-1]?.group&&M("tr",{class:"group-row"},M("th",{colspan:2*e.length,scope:"rowgroup"},ht(h.group))),M("tr",{class:h.notable?"differs":""},M("th",{scope:"row"},ht(h.title)),h.texts.map(u=>M("td",{class:"figure"},ht(u))),h.change.slice(1).map(u=>M("td",{class:"figure"},ht(u))))]),{class:"comparison",label:"all values compared"}),c=s.length?Xn(["what the inputs say",...e.map((h,d)=>o(d))],s.map(h=>M("tr",{},M("th",{scope:"row",class:"path"},ht(h.place)),h.texts.map(d=>M("td",{class:"figure"},ht(d))))),{label:"differences of the inputs"}):M("p",{class:"muted"},"The inputs do not differ.");i.section("differences",`What differs: ${e.map(h=>h.label).join(" against ")}`,M("h3",{},"Changed on purpose, in the inputs"),c,M("h3",{},"Notable in the results"),a,n.length>0&&M("details",{"data-print":!0},M("summary",{},`All ${n.length} values compared`),l))}var a_=[[.82,.6,.1],[.87,.4,.16],[.72,.21,.33],[.42,.13,.42],[.16,.08,.32]],l_=[[.4,.36,.72],[.64,.38,.74],[.88,.46,.58],[.97,.68,.42],[1,.92,.62]];function Gh(i,t){let e=Vh()?l_:a_,n=Math.min(Math.max(i||0,0),1)*(e.length-1),s=Math.min(Math.floor(n),e.length-2);for(let r=0;r<3;++r)t[r]=e[s][r]+(n-s)*(e[s+1][r]-e[s][r]);return t}function Ho(i){let[t,e,n]=Gh(i,[0,0,0]).map(s=>Math.round(255*s));return`rgb(${t},${e},${n})`}var Go=()=>`linear-gradient(to right, ${[0,.25,.5,.75,1].map(Ho).join(", ")})`,Uf=["#123f6d","#c4551b","#2a8c82","#8b2f6b","#b08a00","#5b6b7a","#3f7fd0","#7a4a1e"],c_=["#8ec5ff","#ff9a5c","#5fd3c3","#e18bd0","#e6cf5a","#b6c2cc","#4f8fe6","#d0a070"],Br=i=>(Vh()?c_:Uf)[i%Uf.length];/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var Ws={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},$s={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},dp=0,yu=1,fp=2;var Ea=1,pp=2,fo=3,Xs=0,Un=1,ji=2,ur=0,po=1,vu=2,Mu=3,Su=4,mp=5;var dr=100,gp=101,_p=102,xp=103,yp=104,vp=200,Mp=201,Sp=202,bp=203,bu=204,wu=205,wp=206,Ep=207,Tp=208,Ap=209,Rp=210,Cp=211,Pp=212,Ip=213,Lp=214,Rl=0,Cl=1,Pl=2,eo=3,Il=4,Ll=5,no=6,Dl=7,rc=0,Dp=1,Np=2,Qi=0,Eu=1,Tu=2,Au=3,Ru=4,Cu=5,Pu=6,Iu=7;var Lu=300,fr=301,mo=302,oc=303,ac=304,Nl=1e3,qi=1001,Ul=1002,Pn=1003,Up=1004;var Ta=1005;var Yn=1006,lc=1007;var bs=1008;var jn=1009,Du=1010,Nu=1011,go=1012,cc=1013,Pi=1014,xi=1015,Ii=1016,hc=1017,uc=1018,pr=1020,Uu=35902,Fu=35899,Ou=1021,Bu=1022,Li=1023,_s=1026,ws=1027,dc=1028,fc=1029,qs=1030,pc=1031;var mc=1033,Aa=33776,Ra=33777,Ca=33778,Pa=33779,gc=35840,_c=35841,xc=35842,yc=35843,vc=36196,Mc=37492,Sc=37496,bc=37488,wc=37489,Ia=37490,Ec=37491,Tc=37808,Ac=37809,Rc=37810,Cc=37811,Pc=37812,Ic=37813,Lc=37814,Dc=37815,Nc=37816,Uc=37817,Fc=37818,Oc=37819,Bc=37820,kc=37821,zc=36492,Vc=36494,Hc=36495,Gc=36283,Wc=36284,La=36285,$c=36286;var Qo=2300,Fl=2301,Tl=2302,du=2303,fu=2400,pu=2401,mu=2402;var Fp=3200;var Xc=0,Op=1,Es="",qn="srgb",ta="srgb-linear",ea="linear",Be="srgb";var Al=7680;var Bp=519,kp=512,zp=513,Vp=514,ku=515,Hp=516,Gp=517,zu=518,Vu=519,Wp=35044;var Hu="300 es",_i=2e3,io=2001;function h_(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function u_(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function na(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function $p(){let i=na("canvas");return i.style.display="block",i}var Ff={},so=null;function Gu(...i){let t="THREE."+i.shift();so?so("log",t,...i):console.log(t,...i)}function Xp(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function re(...i){i=Xp(i);let t="THREE."+i.shift();if(so)so("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function ue(...i){i=Xp(i);let t="THREE."+i.shift();if(so)so("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Ko(...i){let t=i.join(" ");t in Ff||(Ff[t]=!0,re(...i))}function qp(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var Yp={[Rl]:Rl,[Pl]:no,[Il]:Il,[eo]:Ll,[Cl]:Cl,[no]:Pl,[Dl]:Dl,[Ll]:eo},Ci=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Bn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Of=1234567,Qr=Math.PI/180,ro=180/Math.PI;function _o(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Bn[i&255]+Bn[i>>8&255]+Bn[i>>16&255]+Bn[i>>24&255]+"-"+Bn[t&255]+Bn[t>>8&255]+"-"+Bn[t>>16&15|64]+Bn[t>>24&255]+"-"+Bn[e&63|128]+Bn[e>>8&255]+"-"+Bn[e>>16&255]+Bn[e>>24&255]+Bn[n&255]+Bn[n>>8&255]+Bn[n>>16&255]+Bn[n>>24&255]).toLowerCase()}function we(i,t,e){return Math.max(t,Math.min(e,i))}function Wu(i,t){return(i%t+t)%t}function d_(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function f_(i,t,e){return i!==t?(e-i)/(t-i):0}function jo(i,t,e){return(1-e)*i+e*t}function p_(i,t,e,n){return jo(i,t,1-Math.exp(-e*n))}function m_(i,t=1){return t-Math.abs(Wu(i,t*2)-t)}function g_(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function __(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function x_(i,t){return i+Math.floor(Math.random()*(t-i+1))}function y_(i,t){return i+Math.random()*(t-i)}function v_(i){return i*(.5-Math.random())}function M_(i){i!==void 0&&(Of=i);let t=Of+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function S_(i){return i*Qr}function b_(i){return i*ro}function w_(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function E_(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function $u(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function T_(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),h=o((t+n)/2),d=r((t-n)/2),u=o((t-n)/2),p=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*h,l*d,l*u,a*c);break;case"YZY":i.set(l*u,a*h,l*d,a*c);break;case"ZXZ":i.set(l*d,l*u,a*h,a*c);break;case"XZX":i.set(a*h,l*g,l*p,a*c);break;case"YXY":i.set(l*p,a*h,l*g,a*c);break;case"ZYZ":i.set(l*g,l*p,a*h,a*c);break;default:re("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function Xu(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Zp(i,t){if(t.constructor===Float32Array)return i;let e=Xu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function Jp(i,t){if(t.constructor===Float32Array)return i;let e=Xu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var qu={DEG2RAD:Qr,RAD2DEG:ro,generateUUID:_o,clamp:we,euclideanModulo:Wu,mapLinear:d_,inverseLerp:f_,lerp:jo,damp:p_,pingpong:m_,smoothstep:g_,smootherstep:__,randInt:x_,randFloat:y_,randFloatSpread:v_,seededRandom:M_,degToRad:S_,radToDeg:b_,isPowerOfTwo:w_,ceilPowerOfTwo:E_,floorPowerOfTwo:$u,setQuaternionFromProperEuler:T_,normalize:Jp,denormalize:Zp},ce=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=we(this.x,t.x,e.x),this.y=we(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=we(this.x,t,e),this.y=we(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(we(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(we(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},Dn=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],h=n[s+2],d=n[s+3],u=r[o+0],p=r[o+1],g=r[o+2],x=r[o+3];if(d!==x||l!==u||c!==p||h!==g){let m=l*u+c*p+h*g+d*x;m<0&&(u=-u,p=-p,g=-g,x=-x,m=-m);let f=1-a;if(m<.9995){let y=Math.acos(m),C=Math.sin(y);f=Math.sin(f*y)/C,a=Math.sin(a*y)/C,l=l*f+u*a,c=c*f+p*a,h=h*f+g*a,d=d*f+x*a}else{l=l*f+u*a,c=c*f+p*a,h=h*f+g*a,d=d*f+x*a;let y=1/Math.sqrt(l*l+c*c+h*h+d*d);l*=y,c*=y,h*=y,d*=y}}t[e]=l,t[e+1]=c,t[e+2]=h,t[e+3]=d}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],h=n[s+3],d=r[o],u=r[o+1],p=r[o+2],g=r[o+3];return t[e]=a*g+h*d+l*p-c*u,t[e+1]=l*g+h*u+c*d-a*p,t[e+2]=c*g+h*p+a*u-l*d,t[e+3]=h*g-a*d-l*u-c*p,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),h=a(s/2),d=a(r/2),u=l(n/2),p=l(s/2),g=l(r/2);switch(o){case"XYZ":this._x=u*h*d+c*p*g,this._y=c*p*d-u*h*g,this._z=c*h*g+u*p*d,this._w=c*h*d-u*p*g;break;case"YXZ":this._x=u*h*d+c*p*g,this._y=c*p*d-u*h*g,this._z=c*h*g-u*p*d,this._w=c*h*d+u*p*g;break;case"ZXY":this._x=u*h*d-c*p*g,this._y=c*p*d+u*h*g,this._z=c*h*g+u*p*d,this._w=c*h*d-u*p*g;break;case"ZYX":this._x=u*h*d-c*p*g,this._y=c*p*d+u*h*g,this._z=c*h*g-u*p*d,this._w=c*h*d+u*p*g;break;case"YZX":this._x=u*h*d+c*p*g,this._y=c*p*d+u*h*g,this._z=c*h*g-u*p*d,this._w=c*h*d-u*p*g;break;case"XZY":this._x=u*h*d-c*p*g,this._y=c*p*d-u*h*g,this._z=c*h*g+u*p*d,this._w=c*h*d+u*p*g;break;default:re("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],h=e[6],d=e[10],u=n+a+d;if(u>0){let p=.5/Math.sqrt(u+1);this._w=.25/p,this._x=(h-l)*p,this._y=(r-c)*p,this._z=(o-s)*p}else if(n>a&&n>d){let p=2*Math.sqrt(1+n-a-d);this._w=(h-l)/p,this._x=.25*p,this._y=(s+o)/p,this._z=(r+c)/p}else if(a>d){let p=2*Math.sqrt(1+a-n-d);this._w=(r-c)/p,this._x=(s+o)/p,this._y=.25*p,this._z=(l+h)/p}else{let p=2*Math.sqrt(1+d-n-a);this._w=(o-s)/p,this._x=(r+c)/p,this._y=(l+h)/p,this._z=.25*p}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(we(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,h=e._w;return this._x=n*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-n*c,this._z=r*h+o*c+n*l-s*a,this._w=o*h-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,e=Math.sin(e*c)/h,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},Y=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(Bf.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(Bf.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),h=2*(a*e-r*s),d=2*(r*n-o*e);return this.x=e+l*c+o*d-a*h,this.y=n+l*h+a*c-r*d,this.z=s+l*d+r*h-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=we(this.x,t.x,e.x),this.y=we(this.y,t.y,e.y),this.z=we(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=we(this.x,t,e),this.y=we(this.y,t,e),this.z=we(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(we(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return Wh.copy(this).projectOnVector(t),this.sub(Wh)}reflect(t){return this.sub(Wh.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(we(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Wh=new Y,Bf=new Dn,de=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let h=this.elements;return h[0]=t,h[1]=s,h[2]=a,h[3]=e,h[4]=r,h[5]=l,h[6]=n,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],h=n[4],d=n[7],u=n[2],p=n[5],g=n[8],x=s[0],m=s[3],f=s[6],y=s[1],C=s[4],b=s[7],I=s[2],T=s[5],_=s[8];return r[0]=o*x+a*y+l*I,r[3]=o*m+a*C+l*T,r[6]=o*f+a*b+l*_,r[1]=c*x+h*y+d*I,r[4]=c*m+h*C+d*T,r[7]=c*f+h*b+d*_,r[2]=u*x+p*y+g*I,r[5]=u*m+p*C+g*T,r[8]=u*f+p*b+g*_,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8];return e*o*h-e*a*c-n*r*h+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],d=h*o-a*c,u=a*l-h*r,p=c*r-o*l,g=e*d+n*u+s*p;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let x=1/g;return t[0]=d*x,t[1]=(s*c-h*n)*x,t[2]=(a*n-s*o)*x,t[3]=u*x,t[4]=(h*e-s*l)*x,t[5]=(s*r-a*e)*x,t[6]=p*x,t[7]=(n*l-c*e)*x,t[8]=(o*e-n*r)*x,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return Ko("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply($h.makeScale(t,e)),this}rotate(t){return Ko("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply($h.makeRotation(-t)),this}translate(t,e){return Ko("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply($h.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},$h=new de,kf=new de().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),zf=new de().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function A_(){let i={enabled:!0,workingColorSpace:ta,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Be&&(s.r=gs(s.r),s.g=gs(s.g),s.b=gs(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Be&&(s.r=to(s.r),s.g=to(s.g),s.b=to(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===Es?ea:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[ta]:{primaries:t,whitePoint:n,transfer:ea,toXYZ:kf,fromXYZ:zf,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:qn},outputColorSpaceConfig:{drawingBufferColorSpace:qn}},[qn]:{primaries:t,whitePoint:n,transfer:Be,toXYZ:kf,fromXYZ:zf,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:qn}}}),i}var Re=A_();function gs(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function to(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var kr,Ol=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{kr===void 0&&(kr=na("canvas")),kr.width=t.width,kr.height=t.height;let s=kr.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=kr}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=na("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=gs(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(gs(e[n]/255)*255):e[n]=gs(e[n]);return{data:e,width:t.width,height:t.height}}else return re("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},R_=0,oo=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:R_++}),this.uuid=_o(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(Xh(s[o].image)):r.push(Xh(s[o]))}else r=Xh(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function Xh(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Ol.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(re("Texture: Unable to serialize Texture."),{})}var C_=0,qh=new Y,Kn=class i extends Ci{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=qi,s=qi,r=Yn,o=bs,a=Li,l=jn,c=i.DEFAULT_ANISOTROPY,h=Es){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:C_++}),this.uuid=_o(),this.name="",this.source=new oo(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new ce(0,0),this.repeat=new ce(1,1),this.center=new ce(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new de,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(qh).x}get height(){return this.source.getSize(qh).y}get depth(){return this.source.getSize(qh).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){re(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){re(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==Lu)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Nl:t.x=t.x-Math.floor(t.x);break;case qi:t.x=t.x<0?0:1;break;case Ul:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Nl:t.y=t.y-Math.floor(t.y);break;case qi:t.y=t.y<0?0:1;break;case Ul:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Kn.DEFAULT_IMAGE=null;Kn.DEFAULT_MAPPING=Lu;Kn.DEFAULT_ANISOTROPY=1;var en=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],h=l[4],d=l[8],u=l[1],p=l[5],g=l[9],x=l[2],m=l[6],f=l[10];if(Math.abs(h-u)<.01&&Math.abs(d-x)<.01&&Math.abs(g-m)<.01){if(Math.abs(h+u)<.1&&Math.abs(d+x)<.1&&Math.abs(g+m)<.1&&Math.abs(c+p+f-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let C=(c+1)/2,b=(p+1)/2,I=(f+1)/2,T=(h+u)/4,_=(d+x)/4,w=(g+m)/4;return C>b&&C>I?C<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(C),s=T/n,r=_/n):b>I?b<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),n=T/s,r=w/s):I<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(I),n=_/r,s=w/r),this.set(n,s,r,e),this}let y=Math.sqrt((m-g)*(m-g)+(d-x)*(d-x)+(u-h)*(u-h));return Math.abs(y)<.001&&(y=1),this.x=(m-g)/y,this.y=(d-x)/y,this.z=(u-h)/y,this.w=Math.acos((c+p+f-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=we(this.x,t.x,e.x),this.y=we(this.y,t.y,e.y),this.z=we(this.z,t.z,e.z),this.w=we(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=we(this.x,t,e),this.y=we(this.y,t,e),this.z=we(this.z,t,e),this.w=we(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(we(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Bl=class extends Ci{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Yn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new en(0,0,t,e),this.scissorTest=!1,this.viewport=new en(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Kn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Yn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new oo(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},ci=class extends Bl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},ia=class extends Kn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Pn,this.minFilter=Pn,this.wrapR=qi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var kl=class extends Kn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Pn,this.minFilter=Pn,this.wrapR=qi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var Ue=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,h,d,u,p,g,x,m){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,h,d,u,p,g,x,m)}set(t,e,n,s,r,o,a,l,c,h,d,u,p,g,x,m){let f=this.elements;return f[0]=t,f[4]=e,f[8]=n,f[12]=s,f[1]=r,f[5]=o,f[9]=a,f[13]=l,f[2]=c,f[6]=h,f[10]=d,f[14]=u,f[3]=p,f[7]=g,f[11]=x,f[15]=m,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/zr.setFromMatrixColumn(t,0).length(),r=1/zr.setFromMatrixColumn(t,1).length(),o=1/zr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),d=Math.sin(r);if(t.order==="XYZ"){let u=o*h,p=o*d,g=a*h,x=a*d;e[0]=l*h,e[4]=-l*d,e[8]=c,e[1]=p+g*c,e[5]=u-x*c,e[9]=-a*l,e[2]=x-u*c,e[6]=g+p*c,e[10]=o*l}else if(t.order==="YXZ"){let u=l*h,p=l*d,g=c*h,x=c*d;e[0]=u+x*a,e[4]=g*a-p,e[8]=o*c,e[1]=o*d,e[5]=o*h,e[9]=-a,e[2]=p*a-g,e[6]=x+u*a,e[10]=o*l}else if(t.order==="ZXY"){let u=l*h,p=l*d,g=c*h,x=c*d;e[0]=u-x*a,e[4]=-o*d,e[8]=g+p*a,e[1]=p+g*a,e[5]=o*h,e[9]=x-u*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let u=o*h,p=o*d,g=a*h,x=a*d;e[0]=l*h,e[4]=g*c-p,e[8]=u*c+x,e[1]=l*d,e[5]=x*c+u,e[9]=p*c-g,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let u=o*l,p=o*c,g=a*l,x=a*c;e[0]=l*h,e[4]=x-u*d,e[8]=g*d+p,e[1]=d,e[5]=o*h,e[9]=-a*h,e[2]=-c*h,e[6]=p*d+g,e[10]=u-x*d}else if(t.order==="XZY"){let u=o*l,p=o*c,g=a*l,x=a*c;e[0]=l*h,e[4]=-d,e[8]=c*h,e[1]=u*d+x,e[5]=o*h,e[9]=p*d-g,e[2]=g*d-p,e[6]=a*h,e[10]=x*d+u}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(P_,t,I_)}lookAt(t,e,n){let s=this.elements;return ri.subVectors(t,e),ri.lengthSq()===0&&(ri.z=1),ri.normalize(),Ns.crossVectors(n,ri),Ns.lengthSq()===0&&(Math.abs(n.z)===1?ri.x+=1e-4:ri.z+=1e-4,ri.normalize(),Ns.crossVectors(n,ri)),Ns.normalize(),tl.crossVectors(ri,Ns),s[0]=Ns.x,s[4]=tl.x,s[8]=ri.x,s[1]=Ns.y,s[5]=tl.y,s[9]=ri.y,s[2]=Ns.z,s[6]=tl.z,s[10]=ri.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],h=n[1],d=n[5],u=n[9],p=n[13],g=n[2],x=n[6],m=n[10],f=n[14],y=n[3],C=n[7],b=n[11],I=n[15],T=s[0],_=s[4],w=s[8],L=s[12],S=s[1],P=s[5],F=s[9],O=s[13],D=s[2],V=s[6],$=s[10],H=s[14],K=s[3],X=s[7],Z=s[11],nt=s[15];return r[0]=o*T+a*S+l*D+c*K,r[4]=o*_+a*P+l*V+c*X,r[8]=o*w+a*F+l*$+c*Z,r[12]=o*L+a*O+l*H+c*nt,r[1]=h*T+d*S+u*D+p*K,r[5]=h*_+d*P+u*V+p*X,r[9]=h*w+d*F+u*$+p*Z,r[13]=h*L+d*O+u*H+p*nt,r[2]=g*T+x*S+m*D+f*K,r[6]=g*_+x*P+m*V+f*X,r[10]=g*w+x*F+m*$+f*Z,r[14]=g*L+x*O+m*H+f*nt,r[3]=y*T+C*S+b*D+I*K,r[7]=y*_+C*P+b*V+I*X,r[11]=y*w+C*F+b*$+I*Z,r[15]=y*L+C*O+b*H+I*nt,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],h=t[2],d=t[6],u=t[10],p=t[14],g=t[3],x=t[7],m=t[11],f=t[15],y=l*p-c*u,C=a*p-c*d,b=a*u-l*d,I=o*p-c*h,T=o*u-l*h,_=o*d-a*h;return e*(x*y-m*C+f*b)-n*(g*y-m*I+f*T)+s*(g*C-x*I+f*_)-r*(g*b-x*T+m*_)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],h=t[10];return e*(o*h-a*c)-n*(r*h-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],d=t[9],u=t[10],p=t[11],g=t[12],x=t[13],m=t[14],f=t[15],y=e*a-n*o,C=e*l-s*o,b=e*c-r*o,I=n*l-s*a,T=n*c-r*a,_=s*c-r*l,w=h*x-d*g,L=h*m-u*g,S=h*f-p*g,P=d*m-u*x,F=d*f-p*x,O=u*f-p*m,D=y*O-C*F+b*P+I*S-T*L+_*w;if(D===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let V=1/D;return t[0]=(a*O-l*F+c*P)*V,t[1]=(s*F-n*O-r*P)*V,t[2]=(x*_-m*T+f*I)*V,t[3]=(u*T-d*_-p*I)*V,t[4]=(l*S-o*O-c*L)*V,t[5]=(e*O-s*S+r*L)*V,t[6]=(m*b-g*_-f*C)*V,t[7]=(h*_-u*b+p*C)*V,t[8]=(o*F-a*S+c*w)*V,t[9]=(n*S-e*F-r*w)*V,t[10]=(g*T-x*b+f*y)*V,t[11]=(d*b-h*T-p*y)*V,t[12]=(a*L-o*P-l*w)*V,t[13]=(e*P-n*L+s*w)*V,t[14]=(x*C-g*I-m*y)*V,t[15]=(h*I-d*C+u*y)*V,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,h=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+n,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,h=o+o,d=a+a,u=r*c,p=r*h,g=r*d,x=o*h,m=o*d,f=a*d,y=l*c,C=l*h,b=l*d,I=n.x,T=n.y,_=n.z;return s[0]=(1-(x+f))*I,s[1]=(p+b)*I,s[2]=(g-C)*I,s[3]=0,s[4]=(p-b)*T,s[5]=(1-(u+f))*T,s[6]=(m+y)*T,s[7]=0,s[8]=(g+C)*_,s[9]=(m-y)*_,s[10]=(1-(u+x))*_,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=zr.set(s[0],s[1],s[2]).length(),a=zr.set(s[4],s[5],s[6]).length(),l=zr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ei.copy(this);let c=1/o,h=1/a,d=1/l;return Ei.elements[0]*=c,Ei.elements[1]*=c,Ei.elements[2]*=c,Ei.elements[4]*=h,Ei.elements[5]*=h,Ei.elements[6]*=h,Ei.elements[8]*=d,Ei.elements[9]*=d,Ei.elements[10]*=d,e.setFromRotationMatrix(Ei),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=_i,l=!1){let c=this.elements,h=2*r/(e-t),d=2*r/(n-s),u=(e+t)/(e-t),p=(n+s)/(n-s),g,x;if(l)g=r/(o-r),x=o*r/(o-r);else if(a===_i)g=-(o+r)/(o-r),x=-2*o*r/(o-r);else if(a===io)g=-o/(o-r),x=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=u,c[12]=0,c[1]=0,c[5]=d,c[9]=p,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=x,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=_i,l=!1){let c=this.elements,h=2/(e-t),d=2/(n-s),u=-(e+t)/(e-t),p=-(n+s)/(n-s),g,x;if(l)g=1/(o-r),x=o/(o-r);else if(a===_i)g=-2/(o-r),x=-(o+r)/(o-r);else if(a===io)g=-1/(o-r),x=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=u,c[1]=0,c[5]=d,c[9]=0,c[13]=p,c[2]=0,c[6]=0,c[10]=g,c[14]=x,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},zr=new Y,Ei=new Ue,P_=new Y(0,0,0),I_=new Y(1,1,1),Ns=new Y,tl=new Y,ri=new Y,Vf=new Ue,Hf=new Dn,xs=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],d=s[2],u=s[6],p=s[10];switch(e){case"XYZ":this._y=Math.asin(we(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,p),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(u,c),this._z=0);break;case"YXZ":this._x=Math.asin(-we(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,p),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-d,r),this._z=0);break;case"ZXY":this._x=Math.asin(we(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(-d,p),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-we(d,-1,1)),Math.abs(d)<.9999999?(this._x=Math.atan2(u,p),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(we(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-d,r)):(this._x=0,this._y=Math.atan2(a,p));break;case"XZY":this._z=Math.asin(-we(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(u,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,p),this._y=0);break;default:re("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return Vf.makeRotationFromQuaternion(t),this.setFromRotationMatrix(Vf,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return Hf.setFromEuler(this),this.setFromQuaternion(Hf,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};xs.DEFAULT_ORDER="XYZ";var sa=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},L_=0,Gf=new Y,Vr=new Dn,hs=new Ue,el=new Y,Wo=new Y,D_=new Y,N_=new Dn,Wf=new Y(1,0,0),$f=new Y(0,1,0),Xf=new Y(0,0,1),qf={type:"added"},U_={type:"removed"},Hr={type:"childadded",child:null},Yh={type:"childremoved",child:null},Nn=class i extends Ci{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:L_++}),this.uuid=_o(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new Y,e=new xs,n=new Dn,s=new Y(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Ue},normalMatrix:{value:new de}}),this.matrix=new Ue,this.matrixWorld=new Ue,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new sa,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Vr.setFromAxisAngle(t,e),this.quaternion.multiply(Vr),this}rotateOnWorldAxis(t,e){return Vr.setFromAxisAngle(t,e),this.quaternion.premultiply(Vr),this}rotateX(t){return this.rotateOnAxis(Wf,t)}rotateY(t){return this.rotateOnAxis($f,t)}rotateZ(t){return this.rotateOnAxis(Xf,t)}translateOnAxis(t,e){return Gf.copy(t).applyQuaternion(this.quaternion),this.position.add(Gf.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(Wf,t)}translateY(t){return this.translateOnAxis($f,t)}translateZ(t){return this.translateOnAxis(Xf,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(hs.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?el.copy(t):el.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Wo.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?hs.lookAt(Wo,el,this.up):hs.lookAt(el,Wo,this.up),this.quaternion.setFromRotationMatrix(hs),s&&(hs.extractRotation(s.matrixWorld),Vr.setFromRotationMatrix(hs),this.quaternion.premultiply(Vr.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(ue("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(qf),Hr.child=t,this.dispatchEvent(Hr),Hr.child=null):ue("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(U_),Yh.child=t,this.dispatchEvent(Yh),Yh.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),hs.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),hs.multiply(t.parent.matrixWorld)),t.applyMatrix4(hs),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(qf),Hr.child=t,this.dispatchEvent(Hr),Hr.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Wo,t,D_),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Wo,N_,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let d=l[c];r(t.shapes,d)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),h=o(t.images),d=o(t.shapes),u=o(t.skeletons),p=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),d.length>0&&(n.shapes=d),u.length>0&&(n.skeletons=u),p.length>0&&(n.animations=p),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Nn.DEFAULT_UP=new Y(0,1,0);Nn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Nn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Yi=class extends Nn{constructor(){super(),this.isGroup=!0,this.type="Group"}},F_={type:"move"},ao=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Yi,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Yi,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new Y,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new Y),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Yi,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new Y,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new Y,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let x of t.hand.values()){let m=e.getJointPose(x,n),f=this._getHandJoint(c,x);m!==null&&(f.matrix.fromArray(m.transform.matrix),f.matrix.decompose(f.position,f.quaternion,f.scale),f.matrixWorldNeedsUpdate=!0,f.jointRadius=m.radius),f.visible=m!==null}let h=c.joints["index-finger-tip"],d=c.joints["thumb-tip"],u=h.position.distanceTo(d.position),p=.02,g=.005;c.inputState.pinching&&u>p+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&u<=p-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(F_)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Yi;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},Kp={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Us={h:0,s:0,l:0},nl={h:0,s:0,l:0};function Zh(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var ye=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=qn){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,Re.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=Re.workingColorSpace){return this.r=t,this.g=e,this.b=n,Re.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=Re.workingColorSpace){if(t=Wu(t,1),e=we(e,0,1),n=we(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=Zh(o,r,t+1/3),this.g=Zh(o,r,t),this.b=Zh(o,r,t-1/3)}return Re.colorSpaceToWorking(this,s),this}setStyle(t,e=qn){function n(r){r!==void 0&&parseFloat(r)<1&&re("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:re("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);re("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=qn){let n=Kp[t.toLowerCase()];return n!==void 0?this.setHex(n,e):re("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=gs(t.r),this.g=gs(t.g),this.b=gs(t.b),this}copyLinearToSRGB(t){return this.r=to(t.r),this.g=to(t.g),this.b=to(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=qn){return Re.workingToColorSpace(kn.copy(this),t),Math.round(we(kn.r*255,0,255))*65536+Math.round(we(kn.g*255,0,255))*256+Math.round(we(kn.b*255,0,255))}getHexString(t=qn){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=Re.workingColorSpace){Re.workingToColorSpace(kn.copy(this),e);let n=kn.r,s=kn.g,r=kn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let d=o-a;switch(c=h<=.5?d/(o+a):d/(2-o-a),o){case n:l=(s-r)/d+(s<r?6:0);break;case s:l=(r-n)/d+2;break;case r:l=(n-s)/d+4;break}l/=6}return t.h=l,t.s=c,t.l=h,t}getRGB(t,e=Re.workingColorSpace){return Re.workingToColorSpace(kn.copy(this),e),t.r=kn.r,t.g=kn.g,t.b=kn.b,t}getStyle(t=qn){Re.workingToColorSpace(kn.copy(this),t);let e=kn.r,n=kn.g,s=kn.b;return t!==qn?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Us),this.setHSL(Us.h+t,Us.s+e,Us.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Us),t.getHSL(nl);let n=jo(Us.h,nl.h,e),s=jo(Us.s,nl.s,e),r=jo(Us.l,nl.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},kn=new ye;ye.NAMES=Kp;var ra=class extends Nn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new xs,this.environmentIntensity=1,this.environmentRotation=new xs,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Ti=new Y,us=new Y,Jh=new Y,ds=new Y,Gr=new Y,Wr=new Y,Yf=new Y,Kh=new Y,jh=new Y,Qh=new Y,tu=new en,eu=new en,nu=new en,ms=class i{constructor(t=new Y,e=new Y,n=new Y){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Ti.subVectors(t,e),s.cross(Ti);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Ti.subVectors(s,e),us.subVectors(n,e),Jh.subVectors(t,e);let o=Ti.dot(Ti),a=Ti.dot(us),l=Ti.dot(Jh),c=us.dot(us),h=us.dot(Jh),d=o*c-a*a;if(d===0)return r.set(0,0,0),null;let u=1/d,p=(c*l-a*h)*u,g=(o*h-a*l)*u;return r.set(1-p-g,g,p)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,ds)===null?!1:ds.x>=0&&ds.y>=0&&ds.x+ds.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,ds)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,ds.x),l.addScaledVector(o,ds.y),l.addScaledVector(a,ds.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return tu.setScalar(0),eu.setScalar(0),nu.setScalar(0),tu.fromBufferAttribute(t,e),eu.fromBufferAttribute(t,n),nu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(tu,r.x),o.addScaledVector(eu,r.y),o.addScaledVector(nu,r.z),o}static isFrontFacing(t,e,n,s){return Ti.subVectors(n,e),us.subVectors(t,e),Ti.cross(us).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Ti.subVectors(this.c,this.b),us.subVectors(this.a,this.b),Ti.cross(us).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Gr.subVectors(s,n),Wr.subVectors(r,n),Kh.subVectors(t,n);let l=Gr.dot(Kh),c=Wr.dot(Kh);if(l<=0&&c<=0)return e.copy(n);jh.subVectors(t,s);let h=Gr.dot(jh),d=Wr.dot(jh);if(h>=0&&d<=h)return e.copy(s);let u=l*d-h*c;if(u<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),e.copy(n).addScaledVector(Gr,o);Qh.subVectors(t,r);let p=Gr.dot(Qh),g=Wr.dot(Qh);if(g>=0&&p<=g)return e.copy(r);let x=p*c-l*g;if(x<=0&&c>=0&&g<=0)return a=c/(c-g),e.copy(n).addScaledVector(Wr,a);let m=h*g-p*d;if(m<=0&&d-h>=0&&p-g>=0)return Yf.subVectors(r,s),a=(d-h)/(d-h+(p-g)),e.copy(s).addScaledVector(Yf,a);let f=1/(m+x+u);return o=x*f,a=u*f,e.copy(n).addScaledVector(Gr,o).addScaledVector(Wr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Zi=class{constructor(t=new Y(1/0,1/0,1/0),e=new Y(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ai.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ai.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ai.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ai):Ai.fromBufferAttribute(r,o),Ai.applyMatrix4(t.matrixWorld),this.expandByPoint(Ai);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),il.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),il.copy(n.boundingBox)),il.applyMatrix4(t.matrixWorld),this.union(il)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ai),Ai.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter($o),sl.subVectors(this.max,$o),$r.subVectors(t.a,$o),Xr.subVectors(t.b,$o),qr.subVectors(t.c,$o),Fs.subVectors(Xr,$r),Os.subVectors(qr,Xr),sr.subVectors($r,qr);let e=[0,-Fs.z,Fs.y,0,-Os.z,Os.y,0,-sr.z,sr.y,Fs.z,0,-Fs.x,Os.z,0,-Os.x,sr.z,0,-sr.x,-Fs.y,Fs.x,0,-Os.y,Os.x,0,-sr.y,sr.x,0];return!iu(e,$r,Xr,qr,sl)||(e=[1,0,0,0,1,0,0,0,1],!iu(e,$r,Xr,qr,sl))?!1:(rl.crossVectors(Fs,Os),e=[rl.x,rl.y,rl.z],iu(e,$r,Xr,qr,sl))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ai).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ai).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(fs[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),fs[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),fs[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),fs[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),fs[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),fs[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),fs[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),fs[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(fs),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},fs=[new Y,new Y,new Y,new Y,new Y,new Y,new Y,new Y],Ai=new Y,il=new Zi,$r=new Y,Xr=new Y,qr=new Y,Fs=new Y,Os=new Y,sr=new Y,$o=new Y,sl=new Y,rl=new Y,rr=new Y;function iu(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){rr.fromArray(i,r);let a=s.x*Math.abs(rr.x)+s.y*Math.abs(rr.y)+s.z*Math.abs(rr.z),l=t.dot(rr),c=e.dot(rr),h=n.dot(rr);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var mn=new Y,ol=new ce,O_=0,Ri=class extends Ci{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:O_++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=Wp,this.updateRanges=[],this.gpuType=xi,this.version=0,this._normalizationScale=t!==void 0?Xu(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)ol.fromBufferAttribute(this,e),ol.applyMatrix3(t),this.setXY(e,ol.x,ol.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyMatrix3(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyMatrix4(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyNormalMatrix(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.transformDirection(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):Zp(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):Jp(t,this.array)}};var oa=class extends Ri{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var aa=class extends Ri{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Xe=class extends Ri{constructor(t,e,n){super(new Float32Array(t),e,n)}},B_=new Zi,Xo=new Y,su=new Y,ys=class{constructor(t=new Y,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):B_.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Xo.subVectors(t,this.center);let e=Xo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(Xo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(su.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Xo.copy(t.center).add(su)),this.expandByPoint(Xo.copy(t.center).sub(su))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},k_=0,gi=new Ue,ru=new Nn,Yr=new Y,oi=new Zi,qo=new Zi,Cn=new Y,Zn=class i extends Ci{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:k_++}),this.uuid=_o(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(h_(t)?aa:oa)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new de().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return gi.makeRotationFromQuaternion(t),this.applyMatrix4(gi),this}rotateX(t){return gi.makeRotationX(t),this.applyMatrix4(gi),this}rotateY(t){return gi.makeRotationY(t),this.applyMatrix4(gi),this}rotateZ(t){return gi.makeRotationZ(t),this.applyMatrix4(gi),this}translate(t,e,n){return gi.makeTranslation(t,e,n),this.applyMatrix4(gi),this}scale(t,e,n){return gi.makeScale(t,e,n),this.applyMatrix4(gi),this}lookAt(t){return ru.lookAt(t),ru.updateMatrix(),this.applyMatrix4(ru.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Yr).negate(),this.translate(Yr.x,Yr.y,Yr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Xe(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&re("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Zi);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ue("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new Y(-1/0,-1/0,-1/0),new Y(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];oi.setFromBufferAttribute(r),this.morphTargetsRelative?(Cn.addVectors(this.boundingBox.min,oi.min),this.boundingBox.expandByPoint(Cn),Cn.addVectors(this.boundingBox.max,oi.max),this.boundingBox.expandByPoint(Cn)):(this.boundingBox.expandByPoint(oi.min),this.boundingBox.expandByPoint(oi.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ue('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ys);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ue("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new Y,1/0);return}if(t){let n=this.boundingSphere.center;if(oi.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];qo.setFromBufferAttribute(a),this.morphTargetsRelative?(Cn.addVectors(oi.min,qo.min),oi.expandByPoint(Cn),Cn.addVectors(oi.max,qo.max),oi.expandByPoint(Cn)):(oi.expandByPoint(qo.min),oi.expandByPoint(qo.max))}oi.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Cn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Cn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)Cn.fromBufferAttribute(a,c),l&&(Yr.fromBufferAttribute(t,c),Cn.add(Yr)),s=Math.max(s,n.distanceToSquared(Cn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ue('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){ue("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Ri(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let L=0;L<n.count;L++)a[L]=new Y,l[L]=new Y;let h=new Y,d=new Y,u=new Y,p=new ce,g=new ce,x=new ce,m=new Y,f=new Y;function y(L,S,P){c[L]=c[S]=c[P]=1,h.fromBufferAttribute(n,L),d.fromBufferAttribute(n,S),u.fromBufferAttribute(n,P),p.fromBufferAttribute(r,L),g.fromBufferAttribute(r,S),x.fromBufferAttribute(r,P),d.sub(h),u.sub(h),g.sub(p),x.sub(p);let F=1/(g.x*x.y-x.x*g.y);isFinite(F)&&(m.copy(d).multiplyScalar(x.y).addScaledVector(u,-g.y).multiplyScalar(F),f.copy(u).multiplyScalar(g.x).addScaledVector(d,-x.x).multiplyScalar(F),a[L].add(m),a[S].add(m),a[P].add(m),l[L].add(f),l[S].add(f),l[P].add(f))}let C=this.groups;C.length===0&&(C=[{start:0,count:t.count}]);for(let L=0,S=C.length;L<S;++L){let P=C[L],F=P.start,O=P.count;for(let D=F,V=F+O;D<V;D+=3)y(t.getX(D+0),t.getX(D+1),t.getX(D+2))}let b=new Y,I=new Y,T=new Y,_=new Y;function w(L){T.fromBufferAttribute(s,L),_.copy(T);let S=a[L];b.copy(S),b.sub(T.multiplyScalar(T.dot(S))).normalize(),I.crossVectors(_,S);let F=I.dot(l[L])<0?-1:1;o.setXYZW(L,b.x,b.y,b.z,F)}for(let L=0,S=n.count;L<S;++L)c[L]&&w(L);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Ri(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let u=0,p=n.count;u<p;u++)n.setXYZ(u,0,0,0);let s=new Y,r=new Y,o=new Y,a=new Y,l=new Y,c=new Y,h=new Y,d=new Y;if(t)for(let u=0,p=t.count;u<p;u+=3){let g=t.getX(u+0),x=t.getX(u+1),m=t.getX(u+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,x),o.fromBufferAttribute(e,m),h.subVectors(o,r),d.subVectors(s,r),h.cross(d),a.fromBufferAttribute(n,g),l.fromBufferAttribute(n,x),c.fromBufferAttribute(n,m),a.add(h),l.add(h),c.add(h),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(x,l.x,l.y,l.z),n.setXYZ(m,c.x,c.y,c.z)}else for(let u=0,p=e.count;u<p;u+=3)s.fromBufferAttribute(e,u+0),r.fromBufferAttribute(e,u+1),o.fromBufferAttribute(e,u+2),h.subVectors(o,r),d.subVectors(s,r),h.cross(d),n.setXYZ(u+0,h.x,h.y,h.z),n.setXYZ(u+1,h.x,h.y,h.z),n.setXYZ(u+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Cn.fromBufferAttribute(t,e),Cn.normalize(),t.setXYZ(e,Cn.x,Cn.y,Cn.z)}toNonIndexed(){function t(a,l){let c=a.array,h=a.itemSize,d=a.normalized,u=new c.constructor(l.length*h),p=0,g=0;for(let x=0,m=l.length;x<m;x++){a.isInterleavedBufferAttribute?p=l[x]*a.data.stride+a.offset:p=l[x]*h;for(let f=0;f<h;f++)u[g++]=c[p++]}return new Ri(u,h,d)}if(this.index===null)return re("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,d=c.length;h<d;h++){let u=c[h],p=t(u,n);l.push(p)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let d=0,u=c.length;d<u;d++){let p=c[d];h.push(p.toJSON(t.data))}h.length>0&&(s[l]=h,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(e))}let r=t.morphAttributes;for(let c in r){let h=[],d=r[c];for(let u=0,p=d.length;u<p;u++)h.push(d[u].clone(e));this.morphAttributes[c]=h}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,h=o.length;c<h;c++){let d=o[c];this.addGroup(d.start,d.count,d.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var ou=new Y,z_=new Y,V_=new de,ai=class{constructor(t=new Y(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=ou.subVectors(n,e).cross(z_.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(ou),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||V_.getNormalMatrix(t),s=this.coplanarPoint(ou).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},H_=0,vs=class extends Ci{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:H_++}),this.uuid=_o(),this.name="",this.type="Material",this.blending=po,this.side=Xs,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=bu,this.blendDst=wu,this.blendEquation=dr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new ye(0,0,0),this.blendAlpha=0,this.depthFunc=eo,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=Bp,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=Al,this.stencilZFail=Al,this.stencilZPass=Al,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){re(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){re(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new ye().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new ai().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new ce().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new ce().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ps=new Y,au=new Y,al=new Y,ll=new Y,lr=class{constructor(t=new Y,e=new Y(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ps)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=ps.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(ps.copy(this.origin).addScaledVector(this.direction,e),ps.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){au.copy(t).add(e).multiplyScalar(.5),al.copy(e).sub(t).normalize(),ll.copy(this.origin).sub(au);let r=t.distanceTo(e)*.5,o=-this.direction.dot(al),a=ll.dot(this.direction),l=-ll.dot(al),c=ll.lengthSq(),h=Math.abs(1-o*o),d,u,p,g;if(h>0)if(d=o*l-a,u=o*a-l,g=r*h,d>=0)if(u>=-g)if(u<=g){let x=1/h;d*=x,u*=x,p=d*(d+o*u+2*a)+u*(o*d+u+2*l)+c}else u=r,d=Math.max(0,-(o*u+a)),p=-d*d+u*(u+2*l)+c;else u=-r,d=Math.max(0,-(o*u+a)),p=-d*d+u*(u+2*l)+c;else u<=-g?(d=Math.max(0,-(-o*r+a)),u=d>0?-r:Math.min(Math.max(-r,-l),r),p=-d*d+u*(u+2*l)+c):u<=g?(d=0,u=Math.min(Math.max(-r,-l),r),p=u*(u+2*l)+c):(d=Math.max(0,-(o*r+a)),u=d>0?r:Math.min(Math.max(-r,-l),r),p=-d*d+u*(u+2*l)+c);else u=o>0?-r:r,d=Math.max(0,-(o*u+a)),p=-d*d+u*(u+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,d),s&&s.copy(au).addScaledVector(al,u),p}intersectSphere(t,e){if(t.radius<0)return null;ps.subVectors(t.center,this.origin);let n=ps.dot(this.direction),s=ps.dot(ps)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,d=1/this.direction.z,u=this.origin;return c>=0?(n=(t.min.x-u.x)*c,s=(t.max.x-u.x)*c):(n=(t.max.x-u.x)*c,s=(t.min.x-u.x)*c),h>=0?(r=(t.min.y-u.y)*h,o=(t.max.y-u.y)*h):(r=(t.max.y-u.y)*h,o=(t.min.y-u.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),d>=0?(a=(t.min.z-u.z)*d,l=(t.max.z-u.z)*d):(a=(t.max.z-u.z)*d,l=(t.min.z-u.z)*d),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,ps)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,d=t.x-o.x,u=t.y-o.y,p=t.z-o.z,g=e.x-o.x,x=e.y-o.y,m=e.z-o.z,f=n.x-o.x,y=n.y-o.y,C=n.z-o.z,b=Math.abs(l),I=Math.abs(c),T=Math.abs(h),_,w,L,S,P,F,O,D,V,$,H,K;if(b>=I&&b>=T?(L=l,F=d,V=g,K=f,l>=0?(_=c,w=h,S=u,P=p,O=x,D=m,$=y,H=C):(_=h,w=c,S=p,P=u,O=m,D=x,$=C,H=y)):I>=T?(L=c,F=u,V=x,K=y,c>=0?(_=h,w=l,S=p,P=d,O=m,D=g,$=C,H=f):(_=l,w=h,S=d,P=p,O=g,D=m,$=f,H=C)):(L=h,F=p,V=m,K=C,h>=0?(_=l,w=c,S=d,P=u,O=g,D=x,$=f,H=y):(_=c,w=l,S=u,P=d,O=x,D=g,$=y,H=f)),L===0)return null;let X=_/L,Z=w/L,nt=1/L,dt=S-X*F,ft=P-Z*F,et=O-X*V,Mt=D-Z*V,q=$-X*K,it=H-Z*K,st=q*Mt-it*et,gt=dt*it-ft*q,Ut=et*ft-Mt*dt;if(s){if(st<0||gt<0||Ut<0)return null}else if((st<0||gt<0||Ut<0)&&(st>0||gt>0||Ut>0))return null;let wt=st+gt+Ut;if(wt===0)return null;let ne=nt*(st*F+gt*V+Ut*K);return(wt>0?ne<0:ne>0)?null:this.at(ne/wt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},ks=class extends vs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new ye(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new xs,this.combine=rc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},Zf=new Ue,or=new lr,cl=new ys,Jf=new Y,hl=new Y,ul=new Y,dl=new Y,lu=new Y,fl=new Y,Kf=new Y,pl=new Y,gn=class extends Nn{constructor(t=new Zn,e=new ks){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){fl.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],d=r[l];h!==0&&(lu.fromBufferAttribute(d,t),o?fl.addScaledVector(lu,h):fl.addScaledVector(lu.sub(e),h))}e.add(fl)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),cl.copy(n.boundingSphere),cl.applyMatrix4(r),or.copy(t.ray).recast(t.near),!(cl.containsPoint(or.origin)===!1&&(or.intersectSphere(cl,Jf)===null||or.origin.distanceToSquared(Jf)>(t.far-t.near)**2))&&(Zf.copy(r).invert(),or.copy(t.ray).applyMatrix4(Zf),!(n.boundingBox!==null&&or.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,or)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,d=r.attributes.normal,u=r.groups,p=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,x=u.length;g<x;g++){let m=u[g],f=o[m.materialIndex],y=Math.max(m.start,p.start),C=Math.min(a.count,Math.min(m.start+m.count,p.start+p.count));for(let b=y,I=C;b<I;b+=3){let T=a.getX(b),_=a.getX(b+1),w=a.getX(b+2);s=ml(this,f,t,n,c,h,d,T,_,w),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=m.materialIndex,e.push(s))}}else{let g=Math.max(0,p.start),x=Math.min(a.count,p.start+p.count);for(let m=g,f=x;m<f;m+=3){let y=a.getX(m),C=a.getX(m+1),b=a.getX(m+2);s=ml(this,o,t,n,c,h,d,y,C,b),s&&(s.faceIndex=Math.floor(m/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let g=0,x=u.length;g<x;g++){let m=u[g],f=o[m.materialIndex],y=Math.max(m.start,p.start),C=Math.min(l.count,Math.min(m.start+m.count,p.start+p.count));for(let b=y,I=C;b<I;b+=3){let T=b,_=b+1,w=b+2;s=ml(this,f,t,n,c,h,d,T,_,w),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=m.materialIndex,e.push(s))}}else{let g=Math.max(0,p.start),x=Math.min(l.count,p.start+p.count);for(let m=g,f=x;m<f;m+=3){let y=m,C=m+1,b=m+2;s=ml(this,o,t,n,c,h,d,y,C,b),s&&(s.faceIndex=Math.floor(m/3),e.push(s))}}}};function G_(i,t,e,n,s,r,o,a){let l;if(t.side===Un?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Xs,a),l===null)return null;pl.copy(a),pl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(pl);return c<e.near||c>e.far?null:{distance:c,point:pl.clone(),object:i}}function ml(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,hl),i.getVertexPosition(l,ul),i.getVertexPosition(c,dl);let h=G_(i,t,e,n,hl,ul,dl,Kf);if(h){let d=new Y;ms.getBarycoord(Kf,hl,ul,dl,d),s&&(h.uv=ms.getInterpolatedAttribute(s,a,l,c,d,new ce)),r&&(h.uv1=ms.getInterpolatedAttribute(r,a,l,c,d,new ce)),o&&(h.normal=ms.getInterpolatedAttribute(o,a,l,c,d,new Y),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let u={a,b:l,c,normal:new Y,materialIndex:0};ms.getNormal(hl,ul,dl,u.normal),h.face=u,h.barycoord=d}return h}var la=class extends Kn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=Pn,h=Pn,d,u){super(null,o,a,l,c,h,s,r,d,u),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var cr=class extends Ri{constructor(t,e,n,s=1){super(t,e,n),this.isInstancedBufferAttribute=!0,this.meshPerAttribute=s}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}toJSON(){let t=super.toJSON();return t.meshPerAttribute=this.meshPerAttribute,t.isInstancedBufferAttribute=!0,t}},Zr=new Ue,jf=new Ue,gl=[],Qf=new Zi,W_=new Ue,Yo=new gn,Zo=new ys,ca=class extends gn{constructor(t,e,n){super(t,e),this.isInstancedMesh=!0,this.instanceMatrix=new cr(new Float32Array(n*16),16),this.instanceColor=null,this.morphTexture=null,this.count=n,this.boundingBox=null,this.boundingSphere=null;for(let s=0;s<n;s++)this.setMatrixAt(s,W_)}computeBoundingBox(){let t=this.geometry,e=this.count;this.boundingBox===null&&(this.boundingBox=new Zi),t.boundingBox===null&&t.computeBoundingBox(),this.boundingBox.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,Zr),Qf.copy(t.boundingBox).applyMatrix4(Zr),this.boundingBox.union(Qf)}computeBoundingSphere(){let t=this.geometry,e=this.count;this.boundingSphere===null&&(this.boundingSphere=new ys),t.boundingSphere===null&&t.computeBoundingSphere(),this.boundingSphere.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,Zr),Zo.copy(t.boundingSphere).applyMatrix4(Zr),this.boundingSphere.union(Zo)}copy(t,e){return super.copy(t,e),this.instanceMatrix.copy(t.instanceMatrix),this.morphTexture=t.morphTexture!==null?t.morphTexture.clone():null,this.instanceColor=t.instanceColor!==null?t.instanceColor.clone():null,this.count=t.count,this.boundingBox=t.boundingBox!==null?t.boundingBox.clone():null,this.boundingSphere=t.boundingSphere!==null?t.boundingSphere.clone():null,this}getColorAt(t,e){return this.instanceColor===null?e.setRGB(1,1,1):e.fromArray(this.instanceColor.array,t*3)}getMatrixAt(t,e){return e.fromArray(this.instanceMatrix.array,t*16)}getMorphAt(t,e){let n=e.morphTargetInfluences,s=this.morphTexture.source.data.data,r=n.length+1,o=t*r+1;for(let a=0;a<n.length;a++)n[a]=s[o+a]}raycast(t,e){let n=this.matrixWorld,s=this.count;if(Yo.geometry=this.geometry,Yo.material=this.material,Yo.material!==void 0&&(this.boundingSphere===null&&this.computeBoundingSphere(),Zo.copy(this.boundingSphere),Zo.applyMatrix4(n),t.ray.intersectsSphere(Zo)!==!1))for(let r=0;r<s;r++){this.getMatrixAt(r,Zr),jf.multiplyMatrices(n,Zr),Yo.matrixWorld=jf,Yo.raycast(t,gl);for(let o=0,a=gl.length;o<a;o++){let l=gl[o];l.instanceId=r,l.object=this,e.push(l)}gl.length=0}}setColorAt(t,e){return this.instanceColor===null&&(this.instanceColor=new cr(new Float32Array(this.instanceMatrix.count*3).fill(1),3)),e.toArray(this.instanceColor.array,t*3),this}setMatrixAt(t,e){return e.toArray(this.instanceMatrix.array,t*16),this}setMorphAt(t,e){let n=e.morphTargetInfluences,s=n.length+1;this.morphTexture===null&&(this.morphTexture=new la(new Float32Array(s*this.count),s,this.count,dc,xi));let r=this.morphTexture.source.data.data,o=0;for(let c=0;c<n.length;c++)o+=n[c];let a=this.geometry.morphTargetsRelative?1:1-o,l=s*t;return r[l]=a,r.set(n,l+1),this}updateMorphTargets(){}dispose(){super.dispose(),this.instanceMatrix.dispose(),this.instanceColor!==null&&this.instanceColor.dispose(),this.morphTexture!==null&&(this.morphTexture.dispose(),this.morphTexture=null)}},ar=new ys,$_=new ce(.5,.5),_l=new Y,zs=class{constructor(t=new ai,e=new ai,n=new ai,s=new ai,r=new ai,o=new ai){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=_i,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],d=r[5],u=r[6],p=r[7],g=r[8],x=r[9],m=r[10],f=r[11],y=r[12],C=r[13],b=r[14],I=r[15];if(s[0].setComponents(c-o,p-h,f-g,I-y).normalize(),s[1].setComponents(c+o,p+h,f+g,I+y).normalize(),s[2].setComponents(c+a,p+d,f+x,I+C).normalize(),s[3].setComponents(c-a,p-d,f-x,I-C).normalize(),n)s[4].setComponents(l,u,m,b).normalize(),s[5].setComponents(c-l,p-u,f-m,I-b).normalize();else if(s[4].setComponents(c-l,p-u,f-m,I-b).normalize(),e===_i)s[5].setComponents(c+l,p+u,f+m,I+b).normalize();else if(e===io)s[5].setComponents(l,u,m,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),ar.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),ar.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(ar)}intersectsSprite(t){ar.center.set(0,0,0);let e=$_.distanceTo(t.center);return ar.radius=.7071067811865476+e,ar.applyMatrix4(t.matrixWorld),this.intersectsSphere(ar)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(_l.x=s.normal.x>0?t.max.x:t.min.x,_l.y=s.normal.y>0?t.max.y:t.min.y,_l.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(_l)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},tp=new Ue,zl=class i{constructor(){this.coordinateSystem=_i,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];tp.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new zs),n[s].setFromProjectionMatrix(tp,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new zs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var lo=class extends vs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new ye(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Vl=new Y,Hl=new Y,ep=new Ue,Jo=new lr,xl=new ys,cu=new Y,np=new Y,Gl=class extends Nn{constructor(t=new Zn,e=new lo){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Vl.fromBufferAttribute(e,s-1),Hl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Vl.distanceTo(Hl);t.setAttribute("lineDistance",new Xe(n,1))}else re("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),xl.copy(n.boundingSphere),xl.applyMatrix4(s),xl.radius+=r,t.ray.intersectsSphere(xl)===!1)return;ep.copy(s).invert(),Jo.copy(t.ray).applyMatrix4(ep);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=n.index,u=n.attributes.position;if(h!==null){let p=Math.max(0,o.start),g=Math.min(h.count,o.start+o.count);for(let x=p,m=g-1;x<m;x+=c){let f=h.getX(x),y=h.getX(x+1),C=yl(this,t,Jo,l,f,y,x);C&&e.push(C)}if(this.isLineLoop){let x=h.getX(g-1),m=h.getX(p),f=yl(this,t,Jo,l,x,m,g-1);f&&e.push(f)}}else{let p=Math.max(0,o.start),g=Math.min(u.count,o.start+o.count);for(let x=p,m=g-1;x<m;x+=c){let f=yl(this,t,Jo,l,x,x+1,x);f&&e.push(f)}if(this.isLineLoop){let x=yl(this,t,Jo,l,g-1,p,g-1);x&&e.push(x)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function yl(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Vl.fromBufferAttribute(a,s),Hl.fromBufferAttribute(a,r),e.distanceSqToSegment(Vl,Hl,cu,np)>n)return;cu.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(cu);if(!(c<t.near||c>t.far))return{distance:c,point:np.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var ip=new Y,sp=new Y,ha=class extends Gl{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)ip.fromBufferAttribute(e,s),sp.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+ip.distanceTo(sp);t.setAttribute("lineDistance",new Xe(n,1))}else re("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var ua=class extends Kn{constructor(t=[],e=fr,n,s,r,o,a,l,c,h){super(t,e,n,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var Ms=class extends Kn{constructor(t,e,n=Pi,s,r,o,a=Pn,l=Pn,c,h=_s,d=1){if(h!==_s&&h!==ws)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let u={width:t,height:e,depth:d};super(u,s,r,o,a,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new oo(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},da=class extends Ms{constructor(t,e=Pi,n=fr,s,r,o=Pn,a=Pn,l,c=_s){let h={width:t,height:t,depth:1},d=[h,h,h,h,h,h];super(t,t,e,n,s,r,o,a,l,c),this.image=d,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},fa=class extends Kn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},Ss=class i extends Zn{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],d=[],u=0,p=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Xe(c,3)),this.setAttribute("normal",new Xe(h,3)),this.setAttribute("uv",new Xe(d,2));function g(x,m,f,y,C,b,I,T,_,w,L){let S=b/_,P=I/w,F=b/2,O=I/2,D=T/2,V=_+1,$=w+1,H=0,K=0,X=new Y;for(let Z=0;Z<$;Z++){let nt=Z*P-O;for(let dt=0;dt<V;dt++){let ft=dt*S-F;X[x]=ft*y,X[m]=nt*C,X[f]=D,c.push(X.x,X.y,X.z),X[x]=0,X[m]=0,X[f]=T>0?1:-1,h.push(X.x,X.y,X.z),d.push(dt/_),d.push(1-Z/w),H+=1}}for(let Z=0;Z<w;Z++)for(let nt=0;nt<_;nt++){let dt=u+nt+V*Z,ft=u+nt+V*(Z+1),et=u+(nt+1)+V*(Z+1),Mt=u+(nt+1)+V*Z;l.push(dt,ft,Mt),l.push(ft,et,Mt),K+=6}a.addGroup(p,K,L),p+=K,u+=H}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}},pa=class i extends Zn{constructor(t=1,e=1,n=4,s=8,r=1){super(),this.type="CapsuleGeometry",this.parameters={radius:t,height:e,capSegments:n,radialSegments:s,heightSegments:r},e=Math.max(0,e),n=Math.max(1,Math.floor(n)),s=Math.max(3,Math.floor(s)),r=Math.max(1,Math.floor(r));let o=[],a=[],l=[],c=[],h=e/2,d=Math.PI/2*t,u=e,p=2*d+u,g=n*2+r,x=s+1,m=new Y,f=new Y;for(let y=0;y<=g;y++){let C=0,b=0,I=0,T=0;if(y<=n){let L=y/n,S=L*Math.PI/2;b=-h-t*Math.cos(S),I=t*Math.sin(S),T=-t*Math.cos(S),C=L*d}else if(y<=n+r){let L=(y-n)/r;b=-h+L*e,I=t,T=0,C=d+L*u}else{let L=(y-n-r)/n,S=L*Math.PI/2;b=h+t*Math.sin(S),I=t*Math.cos(S),T=t*Math.sin(S),C=d+u+L*d}let _=Math.max(0,Math.min(1,C/p)),w=0;y===0?w=.5/s:y===g&&(w=-.5/s);for(let L=0;L<=s;L++){let S=L/s,P=S*Math.PI*2,F=Math.sin(P),O=Math.cos(P);f.x=-I*O,f.y=b,f.z=I*F,a.push(f.x,f.y,f.z),m.set(-I*O,T,I*F),m.normalize(),l.push(m.x,m.y,m.z),c.push(S+w,_)}if(y>0){let L=(y-1)*x;for(let S=0;S<s;S++){let P=L+S,F=L+S+1,O=y*x+S,D=y*x+S+1;o.push(P,F,O),o.push(F,D,O)}}}this.setIndex(o),this.setAttribute("position",new Xe(a,3)),this.setAttribute("normal",new Xe(l,3)),this.setAttribute("uv",new Xe(c,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.height,t.capSegments,t.radialSegments,t.heightSegments)}};var Ji=class i extends Zn{constructor(t=1,e=1,n=1,s=32,r=1,o=!1,a=0,l=Math.PI*2){super(),this.type="CylinderGeometry",this.parameters={radiusTop:t,radiusBottom:e,height:n,radialSegments:s,heightSegments:r,openEnded:o,thetaStart:a,thetaLength:l};let c=this;s=Math.floor(s),r=Math.floor(r);let h=[],d=[],u=[],p=[],g=0,x=[],m=n/2,f=0;y(),o===!1&&(t>0&&C(!0),e>0&&C(!1)),this.setIndex(h),this.setAttribute("position",new Xe(d,3)),this.setAttribute("normal",new Xe(u,3)),this.setAttribute("uv",new Xe(p,2));function y(){let b=new Y,I=new Y,T=0,_=(e-t)/n;for(let w=0;w<=r;w++){let L=[],S=w/r,P=S*(e-t)+t;for(let F=0;F<=s;F++){let O=F/s,D=O*l+a,V=Math.sin(D),$=Math.cos(D);I.x=P*V,I.y=-S*n+m,I.z=P*$,d.push(I.x,I.y,I.z),b.set(V,_,$).normalize(),u.push(b.x,b.y,b.z),p.push(O,1-S),L.push(g++)}x.push(L)}for(let w=0;w<s;w++)for(let L=0;L<r;L++){let S=x[L][w],P=x[L+1][w],F=x[L+1][w+1],O=x[L][w+1];(t>0||L!==0)&&(h.push(S,P,O),T+=3),(e>0||L!==r-1)&&(h.push(P,F,O),T+=3)}c.addGroup(f,T,0),f+=T}function C(b){let I=g,T=new ce,_=new Y,w=0,L=b===!0?t:e,S=b===!0?1:-1;for(let F=1;F<=s;F++)d.push(0,m*S,0),u.push(0,S,0),p.push(.5,.5),g++;let P=g;for(let F=0;F<=s;F++){let D=F/s*l+a,V=Math.cos(D),$=Math.sin(D);_.x=L*$,_.y=m*S,_.z=L*V,d.push(_.x,_.y,_.z),u.push(0,S,0),T.x=V*.5+.5,T.y=$*.5*S+.5,p.push(T.x,T.y),g++}for(let F=0;F<s;F++){let O=I+F,D=P+F;b===!0?h.push(D,D+1,O):h.push(D+1,D,O),w+=3}c.addGroup(f,w,b===!0?1:2),f+=w}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radiusTop,t.radiusBottom,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}},ma=class i extends Ji{constructor(t=1,e=1,n=32,s=1,r=!1,o=0,a=Math.PI*2){super(0,t,e,n,s,r,o,a),this.type="ConeGeometry",this.parameters={radius:t,height:e,radialSegments:n,heightSegments:s,openEnded:r,thetaStart:o,thetaLength:a}}static fromJSON(t){return new i(t.radius,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}};var vl=new Y,Ml=new Y,hu=new Y,Sl=new ms,ga=class extends Zn{constructor(t=null,e=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:e},t!==null){let s=Math.pow(10,4),r=Math.cos(Qr*e),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],h=["a","b","c"],d=new Array(3),u=new Map,p=[];for(let g=0;g<l;g+=3){o?(c[0]=o.getX(g),c[1]=o.getX(g+1),c[2]=o.getX(g+2)):(c[0]=g,c[1]=g+1,c[2]=g+2);let{a:x,b:m,c:f}=Sl;if(x.fromBufferAttribute(a,c[0]),m.fromBufferAttribute(a,c[1]),f.fromBufferAttribute(a,c[2]),Sl.getNormal(hu),d[0]=`${Math.round(x.x*s)},${Math.round(x.y*s)},${Math.round(x.z*s)}`,d[1]=`${Math.round(m.x*s)},${Math.round(m.y*s)},${Math.round(m.z*s)}`,d[2]=`${Math.round(f.x*s)},${Math.round(f.y*s)},${Math.round(f.z*s)}`,!(d[0]===d[1]||d[1]===d[2]||d[2]===d[0]))for(let y=0;y<3;y++){let C=(y+1)%3,b=d[y],I=d[C],T=Sl[h[y]],_=Sl[h[C]],w=`${b}_${I}`,L=`${I}_${b}`,S=u.get(L);S?(hu.dot(S.normal)<=r&&(p.push(T.x,T.y,T.z),p.push(_.x,_.y,_.z)),u.set(L,null)):u.has(w)||u.set(w,{index0:c[y],index1:c[C],normal:hu.clone()})}}for(let g of u.values())if(g){let{index0:x,index1:m}=g;vl.fromBufferAttribute(a,x),Ml.fromBufferAttribute(a,m),p.push(vl.x,vl.y,vl.z),p.push(Ml.x,Ml.y,Ml.z)}this.setAttribute("position",new Xe(p,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var _a=class i extends Zn{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,h=l+1,d=t/a,u=e/l,p=[],g=[],x=[],m=[];for(let f=0;f<h;f++){let y=f*u-o;for(let C=0;C<c;C++){let b=C*d-r;g.push(b,-y,0),x.push(0,0,1),m.push(C/a),m.push(1-f/l)}}for(let f=0;f<l;f++)for(let y=0;y<a;y++){let C=y+c*f,b=y+c*(f+1),I=y+1+c*(f+1),T=y+1+c*f;p.push(C,b,T),p.push(b,I,T)}this.setIndex(p),this.setAttribute("position",new Xe(g,3)),this.setAttribute("normal",new Xe(x,3)),this.setAttribute("uv",new Xe(m,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var co=class i extends Zn{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,h=[],d=new Y,u=new Y,p=[],g=[],x=[],m=[];for(let f=0;f<=n;f++){let y=[],C=f/n,b=o+C*a,I=t*Math.cos(b),T=Math.sqrt(t*t-I*I),_=0;f===0&&o===0?_=.5/e:f===n&&l===Math.PI&&(_=-.5/e);for(let w=0;w<=e;w++){let L=w/e,S=s+L*r;d.x=-T*Math.cos(S),d.y=I,d.z=T*Math.sin(S),g.push(d.x,d.y,d.z),u.copy(d).normalize(),x.push(u.x,u.y,u.z),m.push(L+_,1-C),y.push(c++)}h.push(y)}for(let f=0;f<n;f++)for(let y=0;y<e;y++){let C=h[f][y+1],b=h[f][y],I=h[f+1][y],T=h[f+1][y+1];(f!==0||o>0)&&p.push(C,b,T),(f!==n-1||l<Math.PI)&&p.push(b,I,T)}this.setIndex(p),this.setAttribute("position",new Xe(g,3)),this.setAttribute("normal",new Xe(x,3)),this.setAttribute("uv",new Xe(m,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function mr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(rp(s))s.isRenderTargetTexture?(re("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(rp(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function zn(i){let t={};for(let e=0;e<i.length;e++){let n=mr(i[e]);for(let s in n)t[s]=n[s]}return t}function rp(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function X_(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function Yu(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:Re.workingColorSpace}var jp={clone:mr,merge:zn},q_=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Y_=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Ki=class extends vs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=q_,this.fragmentShader=Y_,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=mr(t.uniforms),this.uniformsGroups=X_(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new ye().setHex(s.value);break;case"v2":this.uniforms[n].value=new ce().fromArray(s.value);break;case"v3":this.uniforms[n].value=new Y().fromArray(s.value);break;case"v4":this.uniforms[n].value=new en().fromArray(s.value);break;case"m3":this.uniforms[n].value=new de().fromArray(s.value);break;case"m4":this.uniforms[n].value=new Ue().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Wl=class extends Ki{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var xa=class extends vs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new ye(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new ye(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Xc,this.normalScale=new ce(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new xs,this.combine=rc,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},$l=class extends vs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Fp,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Xl=class extends vs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Jr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function bl(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Vs=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},ql=class extends Vs{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:fu,endingEnd:fu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case pu:r=t,a=2*e-n;break;case mu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case pu:o=t,l=2*n-e;break;case mu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,h=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this._offsetPrev,d=this._offsetNext,u=this._weightPrev,p=this._weightNext,g=(n-e)/(s-e),x=g*g,m=x*g,f=-u*m+2*u*x-u*g,y=(1+u)*m+(-1.5-2*u)*x+(-.5+u)*g+1,C=(-1-p)*m+(1.5+p)*x+.5*g,b=p*m-p*x;for(let I=0;I!==a;++I)r[I]=f*o[h+I]+y*o[c+I]+C*o[l+I]+b*o[d+I];return r}},Yl=class extends Vs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=(n-e)/(s-e),d=1-h;for(let u=0;u!==a;++u)r[u]=o[c+u]*d+o[l+u]*h;return r}},Zl=class extends Vs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},Jl=class extends Vs{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this.inTangents,d=this.outTangents;if(!h||!d){let g=(n-e)/(s-e),x=1-g;for(let m=0;m!==a;++m)r[m]=o[c+m]*x+o[l+m]*g;return r}let u=a*2,p=t-1;for(let g=0;g!==a;++g){let x=o[c+g],m=o[l+g],f=p*u+g*2,y=d[f],C=d[f+1],b=t*u+g*2,I=h[b],T=h[b+1],_=J_(n,e,y,I,s);r[g]=Qp(_,x,C,T,m)}return r}};function Qp(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function Z_(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function J_(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=Qp(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=Z_(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var hi=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Jr(e,this.TimeBufferType),this.values=Jr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Jr(t.times,Array),values:Jr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),bl(t.settings)&&(n.settings={inTangents:Jr(t.settings.inTangents,Array),outTangents:Jr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new Zl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Yl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new ql(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new Jl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case Qo:e=this.InterpolantFactoryMethodDiscrete;break;case Fl:e=this.InterpolantFactoryMethodLinear;break;case Tl:e=this.InterpolantFactoryMethodSmooth;break;case du:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return re("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Qo;case this.InterpolantFactoryMethodLinear:return Fl;case this.InterpolantFactoryMethodSmooth:return Tl;case this.InterpolantFactoryMethodBezier:return du}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;bl(this.settings)&&(op(this.settings.inTangents,t),op(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;bl(this.settings)&&(ap(this.settings.inTangents,t),ap(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(ue("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ue("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){ue("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){ue("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&u_(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){ue("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Tl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],h=t[a+1];if(c!==h&&(a!==1||c!==t[0]))if(s)l=!0;else{let d=a*n,u=d-n,p=d+n;for(let g=0;g!==n;++g){let x=e[d+g];if(x!==e[u+g]||x!==e[p+g]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let d=a*n,u=o*n;for(let p=0;p!==n;++p)e[u+p]=e[d+p]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,bl(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function op(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function ap(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}hi.prototype.ValueTypeName="";hi.prototype.TimeBufferType=Float32Array;hi.prototype.ValueBufferType=Float32Array;hi.prototype.DefaultInterpolation=Fl;var Hs=class extends hi{constructor(t,e,n){super(t,e,n)}};Hs.prototype.ValueTypeName="bool";Hs.prototype.ValueBufferType=Array;Hs.prototype.DefaultInterpolation=Qo;Hs.prototype.InterpolantFactoryMethodLinear=void 0;Hs.prototype.InterpolantFactoryMethodSmooth=void 0;var Kl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};Kl.prototype.ValueTypeName="color";var jl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};jl.prototype.ValueTypeName="number";var Ql=class extends Vs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let h=c+a;c!==h;c+=4)Dn.slerpFlat(r,0,o,c-a,o,c,l);return r}},ya=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new Ql(this.times,this.values,this.getValueSize(),t)}};ya.prototype.ValueTypeName="quaternion";ya.prototype.InterpolantFactoryMethodSmooth=void 0;var Gs=class extends hi{constructor(t,e,n){super(t,e,n)}};Gs.prototype.ValueTypeName="string";Gs.prototype.ValueBufferType=Array;Gs.prototype.DefaultInterpolation=Qo;Gs.prototype.InterpolantFactoryMethodLinear=void 0;Gs.prototype.InterpolantFactoryMethodSmooth=void 0;var tc=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};tc.prototype.ValueTypeName="vector";var ec=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,d){return c.push(h,d),this},this.removeHandler=function(h){let d=c.indexOf(h);return d!==-1&&c.splice(d,2),this},this.getHandler=function(h){for(let d=0,u=c.length;d<u;d+=2){let p=c[d],g=c[d+1];if(p.global&&(p.lastIndex=0),p.test(h))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},tm=new ec,nc=class{constructor(t){this.manager=t!==void 0?t:tm,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};nc.DEFAULT_MATERIAL_NAME="__DEFAULT";var va=class extends Nn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new ye(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}},Ma=class extends va{constructor(t,e,n){super(t,n),this.isHemisphereLight=!0,this.type="HemisphereLight",this.position.copy(Nn.DEFAULT_UP),this.updateMatrix(),this.groundColor=new ye(e)}copy(t,e){return super.copy(t,e),this.groundColor.copy(t.groundColor),this}toJSON(t){let e=super.toJSON(t);return e.object.groundColor=this.groundColor.getHex(),e}},uu=new Ue,lp=new Y,cp=new Y,ic=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new ce(512,512),this.mapType=jn,this.map=null,this.mapPass=null,this.matrix=new Ue,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new zs,this._frameExtents=new ce(1,1),this._viewportCount=1,this._viewports=[new en(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;lp.setFromMatrixPosition(t.matrixWorld),e.position.copy(lp),cp.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(cp),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){uu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(uu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===io||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(uu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},wl=new Y,El=new Dn,Xi=new Y,Sa=class extends Nn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Ue,this.projectionMatrix=new Ue,this.projectionMatrixInverse=new Ue,this.coordinateSystem=_i,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(wl,El,Xi),Xi.x===1&&Xi.y===1&&Xi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(wl,El,Xi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(wl,El,Xi),Xi.x===1&&Xi.y===1&&Xi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(wl,El,Xi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Bs=new Y,hp=new ce,up=new ce,li=class extends Sa{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=ro*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(Qr*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return ro*2*Math.atan(Math.tan(Qr*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Bs.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Bs.x,Bs.y).multiplyScalar(-t/Bs.z),Bs.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Bs.x,Bs.y).multiplyScalar(-t/Bs.z)}getViewSize(t,e){return this.getViewBounds(t,hp,up),e.subVectors(up,hp)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(Qr*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var hr=class extends Sa{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},gu=class extends ic{constructor(){super(new hr(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},ba=class extends va{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Nn.DEFAULT_UP),this.updateMatrix(),this.target=new Nn,this.shadow=new gu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}};var Kr=-90,jr=1,ho=class extends Nn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new li(Kr,jr,t,e);s.layers=this.layers,this.add(s);let r=new li(Kr,jr,t,e);r.layers=this.layers,this.add(r);let o=new li(Kr,jr,t,e);o.layers=this.layers,this.add(o);let a=new li(Kr,jr,t,e);a.layers=this.layers,this.add(a);let l=new li(Kr,jr,t,e);l.layers=this.layers,this.add(l);let c=new li(Kr,jr,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===_i)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===io)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,d=t.getRenderTarget(),u=t.getActiveCubeFace(),p=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let x=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let m=!1;t.isWebGLRenderer===!0?m=t.state.buffers.depth.getReversed():m=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=x,t.setRenderTarget(n,5,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,h),t.setRenderTarget(d,u,p),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},sc=class extends li{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var Zu="\\[\\]\\.:\\/",K_=new RegExp("["+Zu+"]","g"),Ju="[^"+Zu+"]",j_="[^"+Zu.replace("\\.","")+"]",Q_=/((?:WC+[\/:])*)/.source.replace("WC",Ju),tx=/(WCOD+)?/.source.replace("WCOD",j_),ex=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Ju),nx=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Ju),ix=new RegExp("^"+Q_+tx+ex+nx+"$"),sx=["material","materials","bones","map"],_u=class{constructor(t,e,n){let s=n||je.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},je=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(K_,"")}static parseTrackName(t){let e=ix.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);sx.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){re("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){ue("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){ue("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){ue("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let h=0;h<t.length;h++)if(t[h].name===c){c=h;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){ue("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){ue("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){ue("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){ue("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;ue("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){ue("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){ue("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};je.Composite=_u;je.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};je.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};je.prototype.GetterByBindingType=[je.prototype._getValue_direct,je.prototype._getValue_array,je.prototype._getValue_arrayElement,je.prototype._getValue_toArray];je.prototype.SetterByBindingTypeAndVersioning=[[je.prototype._setValue_direct,je.prototype._setValue_direct_setNeedsUpdate,je.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[je.prototype._setValue_array,je.prototype._setValue_array_setNeedsUpdate,je.prototype._setValue_array_setMatrixWorldNeedsUpdate],[je.prototype._setValue_arrayElement,je.prototype._setValue_arrayElement_setNeedsUpdate,je.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[je.prototype._setValue_fromArray,je.prototype._setValue_fromArray_setNeedsUpdate,je.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var aE=new Float32Array(1);var uo=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=we(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(we(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var xu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var wa=class extends Ci{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function Ku(i,t,e,n){let s=rx(n);switch(e){case Ou:return i*t;case dc:return i*t/s.components*s.byteLength;case fc:return i*t/s.components*s.byteLength;case qs:return i*t*2/s.components*s.byteLength;case pc:return i*t*2/s.components*s.byteLength;case Bu:return i*t*3/s.components*s.byteLength;case Li:return i*t*4/s.components*s.byteLength;case mc:return i*t*4/s.components*s.byteLength;case Aa:case Ra:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Ca:case Pa:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case _c:case yc:return Math.max(i,16)*Math.max(t,8)/4;case gc:case xc:return Math.max(i,8)*Math.max(t,8)/2;case vc:case Mc:case bc:case wc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Sc:case Ia:case Ec:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Tc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Ac:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case Rc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case Cc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Pc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Ic:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Lc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Dc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Nc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Uc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Fc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Oc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Bc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case kc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case zc:case Vc:case Hc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case Gc:case Wc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case La:case $c:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function rx(i){switch(i){case jn:case Du:return{byteLength:1,components:1};case go:case Nu:case Ii:return{byteLength:2,components:1};case hc:case uc:return{byteLength:2,components:4};case Pi:case cc:case xi:return{byteLength:4,components:1};case Uu:case Fu:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?re("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function Sm(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function ax(i){let t=new WeakMap;function e(a,l){let c=a.array,h=a.usage,d=c.byteLength,u=i.createBuffer();i.bindBuffer(l,u),i.bufferData(l,c,h),a.onUploadCallback();let p;if(c instanceof Float32Array)p=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)p=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?p=i.HALF_FLOAT:p=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)p=i.SHORT;else if(c instanceof Uint32Array)p=i.UNSIGNED_INT;else if(c instanceof Int32Array)p=i.INT;else if(c instanceof Int8Array)p=i.BYTE;else if(c instanceof Uint8Array)p=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)p=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:u,type:p,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:d}}function n(a,l,c){let h=l.array,d=l.updateRanges;if(i.bindBuffer(c,a),d.length===0)i.bufferSubData(c,0,h);else{d.sort((p,g)=>p.start-g.start);let u=0;for(let p=1;p<d.length;p++){let g=d[u],x=d[p];x.start<=g.start+g.count+1?g.count=Math.max(g.count,x.start+x.count-g.start):(++u,d[u]=x)}d.length=u+1;for(let p=0,g=d.length;p<g;p++){let x=d[p];i.bufferSubData(c,x.start*h.BYTES_PER_ELEMENT,h,x.start,x.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=t.get(a);(!h||h.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var lx=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,cx=`#ifdef USE_ALPHAHASH
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
#endif`,hx=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,ux=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,dx=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,fx=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,px=`#ifdef USE_AOMAP
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
#endif`,mx=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,gx=`#ifdef USE_BATCHING
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
#endif`,_x=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,xx=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,yx=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,vx=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,Mx=`#ifdef USE_IRIDESCENCE
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
#endif`,Sx=`#ifdef USE_BUMPMAP
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
#endif`,bx=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,wx=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Ex=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Tx=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Ax=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,Rx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Cx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Px=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,Ix=`#define PI 3.141592653589793
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
} // validated`,Lx=`vec3 transformedNormal = objectNormal;
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
#endif`,Dx=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Nx=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,Ux=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Fx=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Ox="gl_FragColor = linearToOutputTexel( gl_FragColor );",Bx=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,kx=`#ifdef USE_ENVMAP
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
#endif`,zx=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Vx=`#ifdef USE_ENVMAP
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
#endif`,Hx=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Gx=`#ifdef USE_ENVMAP
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
#endif`,Wx=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,$x=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Xx=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,qx=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Yx=`#ifdef USE_GRADIENTMAP
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
}`,Zx=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Jx=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,Kx=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,jx=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,Qx=`#ifdef USE_ENVMAP
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
#endif`,ty=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,ey=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,ny=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,iy=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,sy=`PhysicalMaterial material;
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
#endif`,ry=`uniform sampler2D dfgLUT;
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
}`,oy=`
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
#endif`,ay=`#if defined( RE_IndirectDiffuse )
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
#endif`,ly=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,cy=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,hy=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,uy=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,dy=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,fy=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,py=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,my=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,gy=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,_y=`#if defined( USE_POINTS_UV )
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
#endif`,xy=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,yy=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,vy=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,My=`#if defined( USE_MORPHCOLORS )
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
#endif`,Sy=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,by=`#ifdef USE_MORPHTARGETS
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
#endif`,wy=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Ey=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,Ty=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,Ay=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Ry=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Cy=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Py=`#ifdef USE_NORMALMAP
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
#endif`,Iy=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Ly=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Dy=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Ny=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,Uy=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Fy=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,Oy=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,By=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,ky=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,zy=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Vy=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,Hy=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Gy=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,Wy=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,$y=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,Xy=`float getShadowMask() {
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
}`,qy=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,Yy=`#ifdef USE_SKINNING
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
#endif`,Zy=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,Jy=`#ifdef USE_SKINNING
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
#endif`,Ky=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,jy=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,Qy=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,tv=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,ev=`#ifdef USE_TRANSMISSION
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
#endif`,nv=`#ifdef USE_TRANSMISSION
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
#endif`,iv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,sv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,rv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,ov=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,av=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,lv=`uniform sampler2D t2D;
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
}`,cv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,hv=`uniform float backgroundBlurriness;
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
}`,uv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,dv=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,fv=`#include <common>
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
}`,pv=`#if DEPTH_PACKING == 3200
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
}`,mv=`#define DISTANCE
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
}`,gv=`#define DISTANCE
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
}`,_v=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,xv=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,yv=`uniform float scale;
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
}`,vv=`uniform vec3 diffuse;
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
}`,Mv=`#include <common>
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
}`,Sv=`uniform vec3 diffuse;
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
}`,bv=`#define LAMBERT
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
}`,wv=`#define LAMBERT
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
}`,Ev=`#define MATCAP
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
}`,Tv=`#define MATCAP
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
}`,Av=`#define NORMAL
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
}`,Rv=`#define NORMAL
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
}`,Cv=`#define PHONG
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
}`,Pv=`#define PHONG
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
}`,Iv=`#define STANDARD
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
}`,Lv=`#define STANDARD
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
}`,Dv=`#define TOON
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
}`,Nv=`#define TOON
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
}`,Uv=`uniform float size;
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
}`,Fv=`uniform vec3 diffuse;
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
}`,Ov=`#include <common>
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
}`,Bv=`uniform vec3 color;
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
}`,kv=`uniform float rotation;
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
}`,zv=`uniform vec3 diffuse;
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
}`,Me={alphahash_fragment:lx,alphahash_pars_fragment:cx,alphamap_fragment:hx,alphamap_pars_fragment:ux,alphatest_fragment:dx,alphatest_pars_fragment:fx,aomap_fragment:px,aomap_pars_fragment:mx,batching_pars_vertex:gx,batching_vertex:_x,begin_vertex:xx,beginnormal_vertex:yx,bsdfs:vx,iridescence_fragment:Mx,bumpmap_pars_fragment:Sx,clipping_planes_fragment:bx,clipping_planes_pars_fragment:wx,clipping_planes_pars_vertex:Ex,clipping_planes_vertex:Tx,color_fragment:Ax,color_pars_fragment:Rx,color_pars_vertex:Cx,color_vertex:Px,common:Ix,defaultnormal_vertex:Lx,displacementmap_pars_vertex:Dx,displacementmap_vertex:Nx,emissivemap_fragment:Ux,emissivemap_pars_fragment:Fx,colorspace_fragment:Ox,colorspace_pars_fragment:Bx,envmap_fragment:kx,envmap_common_pars_fragment:zx,envmap_pars_fragment:Vx,envmap_pars_vertex:Hx,envmap_physical_pars_fragment:Qx,envmap_vertex:Gx,fog_vertex:Wx,fog_pars_vertex:$x,fog_fragment:Xx,fog_pars_fragment:qx,gradientmap_pars_fragment:Yx,lightmap_pars_fragment:Zx,lights_lambert_fragment:Jx,lights_lambert_pars_fragment:Kx,lights_pars_begin:jx,lights_toon_fragment:ty,lights_toon_pars_fragment:ey,lights_phong_fragment:ny,lights_phong_pars_fragment:iy,lights_physical_fragment:sy,lights_physical_pars_fragment:ry,lights_fragment_begin:oy,lights_fragment_maps:ay,lights_fragment_end:ly,lightprobes_pars_fragment:cy,logdepthbuf_fragment:hy,logdepthbuf_pars_fragment:uy,logdepthbuf_pars_vertex:dy,logdepthbuf_vertex:fy,map_fragment:py,map_pars_fragment:my,map_particle_fragment:gy,map_particle_pars_fragment:_y,metalnessmap_fragment:xy,metalnessmap_pars_fragment:yy,morphinstance_vertex:vy,morphcolor_vertex:My,morphnormal_vertex:Sy,morphtarget_pars_vertex:by,morphtarget_vertex:wy,normal_fragment_begin:Ey,normal_fragment_maps:Ty,normal_pars_fragment:Ay,normal_pars_vertex:Ry,normal_vertex:Cy,normalmap_pars_fragment:Py,clearcoat_normal_fragment_begin:Iy,clearcoat_normal_fragment_maps:Ly,clearcoat_pars_fragment:Dy,iridescence_pars_fragment:Ny,opaque_fragment:Uy,packing:Fy,premultiplied_alpha_fragment:Oy,project_vertex:By,dithering_fragment:ky,dithering_pars_fragment:zy,roughnessmap_fragment:Vy,roughnessmap_pars_fragment:Hy,shadowmap_pars_fragment:Gy,shadowmap_pars_vertex:Wy,shadowmap_vertex:$y,shadowmask_pars_fragment:Xy,skinbase_vertex:qy,skinning_pars_vertex:Yy,skinning_vertex:Zy,skinnormal_vertex:Jy,specularmap_fragment:Ky,specularmap_pars_fragment:jy,tonemapping_fragment:Qy,tonemapping_pars_fragment:tv,transmission_fragment:ev,transmission_pars_fragment:nv,uv_pars_fragment:iv,uv_pars_vertex:sv,uv_vertex:rv,worldpos_vertex:ov,background_vert:av,background_frag:lv,backgroundCube_vert:cv,backgroundCube_frag:hv,cube_vert:uv,cube_frag:dv,depth_vert:fv,depth_frag:pv,distance_vert:mv,distance_frag:gv,equirect_vert:_v,equirect_frag:xv,linedashed_vert:yv,linedashed_frag:vv,meshbasic_vert:Mv,meshbasic_frag:Sv,meshlambert_vert:bv,meshlambert_frag:wv,meshmatcap_vert:Ev,meshmatcap_frag:Tv,meshnormal_vert:Av,meshnormal_frag:Rv,meshphong_vert:Cv,meshphong_frag:Pv,meshphysical_vert:Iv,meshphysical_frag:Lv,meshtoon_vert:Dv,meshtoon_frag:Nv,points_vert:Uv,points_frag:Fv,shadow_vert:Ov,shadow_frag:Bv,sprite_vert:kv,sprite_frag:zv},zt={common:{diffuse:{value:new ye(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new de},alphaMap:{value:null},alphaMapTransform:{value:new de},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new de}},envmap:{envMap:{value:null},envMapRotation:{value:new de},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new de}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new de}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new de},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new de},normalScale:{value:new ce(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new de},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new de}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new de}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new de}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new ye(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new ye(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new de},alphaTest:{value:0},uvTransform:{value:new de}},sprite:{diffuse:{value:new ye(16777215)},opacity:{value:1},center:{value:new ce(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new de},alphaMap:{value:null},alphaMapTransform:{value:new de},alphaTest:{value:0}}},es={basic:{uniforms:zn([zt.common,zt.specularmap,zt.envmap,zt.aomap,zt.lightmap,zt.fog]),vertexShader:Me.meshbasic_vert,fragmentShader:Me.meshbasic_frag},lambert:{uniforms:zn([zt.common,zt.specularmap,zt.envmap,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.fog,zt.lights,{emissive:{value:new ye(0)},envMapIntensity:{value:1}}]),vertexShader:Me.meshlambert_vert,fragmentShader:Me.meshlambert_frag},phong:{uniforms:zn([zt.common,zt.specularmap,zt.envmap,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.fog,zt.lights,{emissive:{value:new ye(0)},specular:{value:new ye(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:Me.meshphong_vert,fragmentShader:Me.meshphong_frag},standard:{uniforms:zn([zt.common,zt.envmap,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.roughnessmap,zt.metalnessmap,zt.fog,zt.lights,{emissive:{value:new ye(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:Me.meshphysical_vert,fragmentShader:Me.meshphysical_frag},toon:{uniforms:zn([zt.common,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.gradientmap,zt.fog,zt.lights,{emissive:{value:new ye(0)}}]),vertexShader:Me.meshtoon_vert,fragmentShader:Me.meshtoon_frag},matcap:{uniforms:zn([zt.common,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.fog,{matcap:{value:null}}]),vertexShader:Me.meshmatcap_vert,fragmentShader:Me.meshmatcap_frag},points:{uniforms:zn([zt.points,zt.fog]),vertexShader:Me.points_vert,fragmentShader:Me.points_frag},dashed:{uniforms:zn([zt.common,zt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:Me.linedashed_vert,fragmentShader:Me.linedashed_frag},depth:{uniforms:zn([zt.common,zt.displacementmap]),vertexShader:Me.depth_vert,fragmentShader:Me.depth_frag},normal:{uniforms:zn([zt.common,zt.bumpmap,zt.normalmap,zt.displacementmap,{opacity:{value:1}}]),vertexShader:Me.meshnormal_vert,fragmentShader:Me.meshnormal_frag},sprite:{uniforms:zn([zt.sprite,zt.fog]),vertexShader:Me.sprite_vert,fragmentShader:Me.sprite_frag},background:{uniforms:{uvTransform:{value:new de},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:Me.background_vert,fragmentShader:Me.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new de}},vertexShader:Me.backgroundCube_vert,fragmentShader:Me.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:Me.cube_vert,fragmentShader:Me.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:Me.equirect_vert,fragmentShader:Me.equirect_frag},distance:{uniforms:zn([zt.common,zt.displacementmap,{referencePosition:{value:new Y},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:Me.distance_vert,fragmentShader:Me.distance_frag},shadow:{uniforms:zn([zt.lights,zt.fog,{color:{value:new ye(0)},opacity:{value:1}}]),vertexShader:Me.shadow_vert,fragmentShader:Me.shadow_frag}};es.physical={uniforms:zn([es.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new de},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new de},clearcoatNormalScale:{value:new ce(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new de},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new de},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new de},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new de},sheen:{value:0},sheenColor:{value:new ye(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new de},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new de},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new de},transmissionSamplerSize:{value:new ce},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new de},attenuationDistance:{value:0},attenuationColor:{value:new ye(0)},specularColor:{value:new ye(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new de},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new de},anisotropyVector:{value:new ce},anisotropyMap:{value:null},anisotropyMapTransform:{value:new de}}]),vertexShader:Me.meshphysical_vert,fragmentShader:Me.meshphysical_frag};var qc={r:0,b:0,g:0},Vv=new Ue,bm=new de;bm.set(-1,0,0,0,1,0,0,0,1);function Hv(i,t,e,n,s,r){let o=new ye(0),a=s===!0?0:1,l,c,h=null,d=0,u=null;function p(y){let C=y.isScene===!0?y.background:null;if(C&&C.isTexture){let b=y.backgroundBlurriness>0;C=t.get(C,b)}return C}function g(y){let C=!1,b=p(y);b===null?m(o,a):b&&b.isColor&&(m(b,1),C=!0);let I=i.xr.getEnvironmentBlendMode();I==="additive"?e.buffers.color.setClear(0,0,0,1,r):I==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||C)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function x(y,C){let b=p(C);b&&b.isCubeTexture?(c===void 0&&(c=new gn(new Ss(1,1,1),new Ki({name:"BackgroundCubeMaterial",uniforms:mr(es.backgroundCube.uniforms),vertexShader:es.backgroundCube.vertexShader,fragmentShader:es.backgroundCube.fragmentShader,side:Un,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(I,T,_){this.matrixWorld.copyPosition(_.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=b,c.material.uniforms.backgroundBlurriness.value=C.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(Vv.makeRotationFromEuler(C.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(bm),c.material.toneMapped=Re.getTransfer(b.colorSpace)!==Be,(h!==b||d!==b.version||u!==i.toneMapping)&&(c.material.needsUpdate=!0,h=b,d=b.version,u=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null)):b&&b.isTexture&&(l===void 0&&(l=new gn(new _a(2,2),new Ki({name:"BackgroundMaterial",uniforms:mr(es.background.uniforms),vertexShader:es.background.vertexShader,fragmentShader:es.background.fragmentShader,side:Xs,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=b,l.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,l.material.toneMapped=Re.getTransfer(b.colorSpace)!==Be,b.matrixAutoUpdate===!0&&b.updateMatrix(),l.material.uniforms.uvTransform.value.copy(b.matrix),(h!==b||d!==b.version||u!==i.toneMapping)&&(l.material.needsUpdate=!0,h=b,d=b.version,u=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null))}function m(y,C){y.getRGB(qc,Yu(i)),e.buffers.color.setClear(qc.r,qc.g,qc.b,C,r)}function f(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,C=1){o.set(y),a=C,m(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,m(o,a)},render:g,addToRenderList:x,dispose:f}}function Gv(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=u(null),r=s,o=!1;function a(P,F,O,D,V){let $=!1,H=d(P,D,O,F);r!==H&&(r=H,c(r.object)),$=p(P,D,O,V),$&&g(P,D,O,V),V!==null&&t.update(V,i.ELEMENT_ARRAY_BUFFER),($||o)&&(o=!1,b(P,F,O,D),V!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(V).buffer))}function l(){return i.createVertexArray()}function c(P){return i.bindVertexArray(P)}function h(P){return i.deleteVertexArray(P)}function d(P,F,O,D){let V=D.wireframe===!0,$=n[F.id];$===void 0&&($={},n[F.id]=$);let H=P.isInstancedMesh===!0?P.id:0,K=$[H];K===void 0&&(K={},$[H]=K);let X=K[O.id];X===void 0&&(X={},K[O.id]=X);let Z=X[V];return Z===void 0&&(Z=u(l()),X[V]=Z),Z}function u(P){let F=[],O=[],D=[];for(let V=0;V<e;V++)F[V]=0,O[V]=0,D[V]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:F,enabledAttributes:O,attributeDivisors:D,object:P,attributes:{},index:null}}function p(P,F,O,D){let V=r.attributes,$=F.attributes,H=0,K=O.getAttributes();for(let X in K)if(K[X].location>=0){let nt=V[X],dt=$[X];if(dt===void 0&&(X==="instanceMatrix"&&P.instanceMatrix&&(dt=P.instanceMatrix),X==="instanceColor"&&P.instanceColor&&(dt=P.instanceColor)),nt===void 0||nt.attribute!==dt||dt&&nt.data!==dt.data)return!0;H++}return r.attributesNum!==H||r.index!==D}function g(P,F,O,D){let V={},$=F.attributes,H=0,K=O.getAttributes();for(let X in K)if(K[X].location>=0){let nt=$[X];nt===void 0&&(X==="instanceMatrix"&&P.instanceMatrix&&(nt=P.instanceMatrix),X==="instanceColor"&&P.instanceColor&&(nt=P.instanceColor));let dt={};dt.attribute=nt,nt&&nt.data&&(dt.data=nt.data),V[X]=dt,H++}r.attributes=V,r.attributesNum=H,r.index=D}function x(){let P=r.newAttributes;for(let F=0,O=P.length;F<O;F++)P[F]=0}function m(P){f(P,0)}function f(P,F){let O=r.newAttributes,D=r.enabledAttributes,V=r.attributeDivisors;O[P]=1,D[P]===0&&(i.enableVertexAttribArray(P),D[P]=1),V[P]!==F&&(i.vertexAttribDivisor(P,F),V[P]=F)}function y(){let P=r.newAttributes,F=r.enabledAttributes;for(let O=0,D=F.length;O<D;O++)F[O]!==P[O]&&(i.disableVertexAttribArray(O),F[O]=0)}function C(P,F,O,D,V,$,H){H===!0?i.vertexAttribIPointer(P,F,O,V,$):i.vertexAttribPointer(P,F,O,D,V,$)}function b(P,F,O,D){x();let V=D.attributes,$=O.getAttributes(),H=F.defaultAttributeValues;for(let K in $){let X=$[K];if(X.location>=0){let Z=V[K];if(Z===void 0&&(K==="instanceMatrix"&&P.instanceMatrix&&(Z=P.instanceMatrix),K==="instanceColor"&&P.instanceColor&&(Z=P.instanceColor)),Z!==void 0){let nt=Z.normalized,dt=Z.itemSize,ft=t.get(Z);if(ft===void 0)continue;let et=ft.buffer,Mt=ft.type,q=ft.bytesPerElement,it=Mt===i.INT||Mt===i.UNSIGNED_INT||Z.gpuType===cc;if(Z.isInterleavedBufferAttribute){let st=Z.data,gt=st.isInterleavedBuffer===!0?st.stride:st.itemSize,Ut=Z.offset;if(st.isInstancedInterleavedBuffer||st.isInstancedBufferAttribute){for(let wt=0;wt<X.locationSize;wt++)f(X.location+wt,st.meshPerAttribute);P.isInstancedMesh!==!0&&D._maxInstanceCount===void 0&&(D._maxInstanceCount=st.meshPerAttribute*st.count)}else for(let wt=0;wt<X.locationSize;wt++)m(X.location+wt);i.bindBuffer(i.ARRAY_BUFFER,et);for(let wt=0;wt<X.locationSize;wt++)C(X.location+wt,dt/X.locationSize,Mt,nt,gt*q,(Ut+dt/X.locationSize*wt)*q,it)}else{if(Z.isInstancedBufferAttribute){for(let st=0;st<X.locationSize;st++)f(X.location+st,Z.meshPerAttribute);P.isInstancedMesh!==!0&&D._maxInstanceCount===void 0&&(D._maxInstanceCount=Z.meshPerAttribute*Z.count)}else for(let st=0;st<X.locationSize;st++)m(X.location+st);i.bindBuffer(i.ARRAY_BUFFER,et);for(let st=0;st<X.locationSize;st++)C(X.location+st,dt/X.locationSize,Mt,nt,dt*q,dt/X.locationSize*st*q,it)}}else if(H!==void 0){let nt=H[K];if(nt!==void 0)switch(nt.length){case 2:i.vertexAttrib2fv(X.location,nt);break;case 3:i.vertexAttrib3fv(X.location,nt);break;case 4:i.vertexAttrib4fv(X.location,nt);break;default:i.vertexAttrib1fv(X.location,nt)}}}}y()}function I(){L();for(let P in n){let F=n[P];for(let O in F){let D=F[O];for(let V in D){let $=D[V];for(let H in $)h($[H].object),delete $[H];delete D[V]}}delete n[P]}}function T(P){if(n[P.id]===void 0)return;let F=n[P.id];for(let O in F){let D=F[O];for(let V in D){let $=D[V];for(let H in $)h($[H].object),delete $[H];delete D[V]}}delete n[P.id]}function _(P){for(let F in n){let O=n[F];for(let D in O){let V=O[D];if(V[P.id]===void 0)continue;let $=V[P.id];for(let H in $)h($[H].object),delete $[H];delete V[P.id]}}}function w(P){for(let F in n){let O=n[F],D=P.isInstancedMesh===!0?P.id:0,V=O[D];if(V!==void 0){for(let $ in V){let H=V[$];for(let K in H)h(H[K].object),delete H[K];delete V[$]}delete O[D],Object.keys(O).length===0&&delete n[F]}}}function L(){S(),o=!0,r!==s&&(r=s,c(r.object))}function S(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:L,resetDefaultState:S,dispose:I,releaseStatesOfGeometry:T,releaseStatesOfObject:w,releaseStatesOfProgram:_,initAttributes:x,enableAttribute:m,disableUnusedAttributes:y}}function Wv(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),e.update(c,n,h))}function a(l,c,h){if(h===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let u=0;for(let p=0;p<h;p++)u+=c[p];e.update(u,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function $v(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let _=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(_.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(_){return!(_!==Li&&n.convert(_)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(_){let w=_===Ii&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(_!==jn&&_!==xi&&!w&&n.convert(_)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(_){if(_==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";_="mediump"}return _==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",h=l(c);h!==c&&(re("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let d=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),u=e.logarithmicDepthBuffer===!0&&d===!1;e.reversedDepthBuffer===!0&&d===!1&&re("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&d===!0&&re("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let p=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),x=i.getParameter(i.MAX_TEXTURE_SIZE),m=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),f=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),C=i.getParameter(i.MAX_VARYING_VECTORS),b=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),I=i.getParameter(i.MAX_SAMPLES),T=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:u,reversedDepthBuffer:d,maxTextures:p,maxVertexTextures:g,maxTextureSize:x,maxCubemapSize:m,maxAttributes:f,maxVertexUniforms:y,maxVaryings:C,maxFragmentUniforms:b,maxSamples:I,samples:T}}function Xv(i){let t=this,e=null,n=0,s=!1,r=!1,o=new ai,a=new de,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(d,u){let p=d.length!==0||u||n!==0||s;return s=u,n=d.length,p},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(d,u){e=h(d,u,0)},this.setState=function(d,u,p){let g=d.clippingPlanes,x=d.clipIntersection,m=d.clipShadows,f=i.get(d);if(!s||g===null||g.length===0||r&&!m)r?h(null):c();else{let y=r?0:n,C=y*4,b=f.clippingState||null;l.value=b,b=h(g,u,C,p);for(let I=0;I!==C;++I)b[I]=e[I];f.clippingState=b,this.numIntersection=x?this.numPlanes:0,this.numPlanes+=y}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function h(d,u,p,g){let x=d!==null?d.length:0,m=null;if(x!==0){if(m=l.value,g!==!0||m===null){let f=p+x*4,y=u.matrixWorldInverse;a.getNormalMatrix(y),(m===null||m.length<f)&&(m=new Float32Array(f));for(let C=0,b=p;C!==x;++C,b+=4)o.copy(d[C]).applyMatrix4(y,a),o.normal.toArray(m,b),m[b+3]=o.constant}l.value=m,l.needsUpdate=!0}return t.numPlanes=x,t.numIntersection=0,m}}var Ua=class extends ci{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new ua(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},s=new Ss(5,5,5),r=new Ki({name:"CubemapFromEquirect",uniforms:mr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Un,blending:ur});r.uniforms.tEquirect.value=e;let o=new gn(s,r),a=e.minFilter;return e.minFilter===bs&&(e.minFilter=Yn),new ho(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},em=256,qv=3,Yv=20,wm=256,Em=16,Zv=3,Jv=new Y,Kv=new ye,Zc=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new ho(1,10,null),this._boxMesh=new gn(new Ss(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=Jv}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);e>0&&(h.texture.mipmapsAutoUpdate=!1);let d=l.autoClear,u=l.autoClearColor,p=l.autoClearDepth,g=l.autoClearStencil,x=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,x===null&&(t.background=l.getClearColor(Kv));let m=new ho(n,s,h);return m.position.copy(a),m.update(l,t),l.autoClear=d,l.autoClearColor=u,l.autoClearDepth=p,l.autoClearStencil=g,t.background=x,e>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=sm(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=im(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(em,$u(t))}_fromTexture(t,e){t.mapping===fr||t.mapping===mo?this._setSize(t.image.length===0?em:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=nm(t,!1,!1),n=Math.log2(t)-qv;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=nm(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===fr||t.mapping===mo?(this._cubemapMaterial===null&&(this._cubemapMaterial=sm()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=im()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=jv(),this._integrationMaterial=Qv());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Em);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-Zv)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(wm*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=tM());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function nm(i,t,e){return new Ua(i,{minFilter:bs,generateMipmaps:t,type:Ii,colorSpace:ta,depthBuffer:e})}function Fa(i,t,e){return new Ki({name:i,uniforms:t,vertexShader:Me.cube_vert,fragmentShader:e,side:Un,blending:ur,depthTest:!1,depthWrite:!1})}function jv(){return Fa("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${wm}u

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
	`)}function Qv(){return Fa("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Em}},`

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
	`)}function tM(){return Fa("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${Yv}
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
	`)}function im(){return Fa("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function sm(){return Fa("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function eM(i){let t=new WeakMap,e=new WeakMap,n=null;function s(u,p=!1){return u==null?null:p?o(u):r(u)}function r(u){if(u&&u.isTexture){let p=u.mapping;if(p===oc||p===ac)if(t.has(u)){let g=t.get(u).texture;return a(g,u.mapping)}else{let g=u.image;if(g&&g.height>0){let x=new Ua(g.height);return x.fromEquirectangularTexture(i,u),t.set(u,x),u.addEventListener("dispose",c),a(x.texture,u.mapping)}else return null}}return u}function o(u){if(u&&u.isTexture&&u.isPMREMTexture!==!0){let p=u.mapping,g=p===oc||p===ac,x=p===fr||p===mo;if(g||x){let m=e.get(u),f=m!==void 0?m.texture.pmremVersion:0;if(u.isRenderTargetTexture&&u.pmremVersion!==f)return n===null&&(n=new Zc(i)),m=g?n.fromEquirectangular(u,m):n.fromCubemap(u,m),m.texture.pmremVersion=u.pmremVersion,e.set(u,m),m.texture;if(m!==void 0)return m.texture;{let y=u.image;return g&&y&&y.height>0||x&&y&&l(y)?(n===null&&(n=new Zc(i)),m=g?n.fromEquirectangular(u):n.fromCubemap(u),m.texture.pmremVersion=u.pmremVersion,e.set(u,m),u.addEventListener("dispose",h),m.texture):null}}}return u}function a(u,p){return p===oc?u.mapping=fr:p===ac&&(u.mapping=mo),u}function l(u){let p=0,g=6;for(let x=0;x<g;x++)u[x]!==void 0&&p++;return p===g}function c(u){let p=u.target;p.removeEventListener("dispose",c);let g=t.get(p);g!==void 0&&(t.delete(p),g.dispose())}function h(u){let p=u.target;p.removeEventListener("dispose",h);let g=e.get(p);g!==void 0&&(e.delete(p),g.dispose())}function d(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:d}}function nM(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Ko("WebGLRenderer: "+n+" extension not supported."),s}}}function iM(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){l(g.target)}function l(g){g.index!==null&&t.remove(g.index);for(let m in g.attributes)t.remove(g.attributes[m]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let x=r.get(g);x&&(t.remove(x),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function c(g,x){return s[x.id]!==void 0||(x.addEventListener("dispose",a),s[x.id]=new WeakRef(x),o.register(x,x.id,x),e.memory.geometries++),x}function h(g){let x=g.attributes;for(let m in x)t.update(x[m],i.ARRAY_BUFFER)}function d(g){let x=g.index,m=g.attributes.position,f=0;if(m===void 0)return;let y=x!==null?x.array.length:m.array.length/3-1,C=m.count>=65535?aa:oa,b=new C(Math.ceil(y/3)*6,1),I=b.array;if(x!==null){let _=x.array;f=x.version;for(let w=0,L=0;w<y;w+=3){let S=_[w+0],P=_[w+1],F=_[w+2];I[L++]=S,I[L++]=P,I[L++]=P,I[L++]=F,I[L++]=F,I[L++]=S}}else{f=m.version;for(let _=0,w=0;_<y;_+=3){let L=_+0,S=_+1,P=_+2;I[w++]=L,I[w++]=S,I[w++]=S,I[w++]=P,I[w++]=P,I[w++]=L}}b.version=f;let T=r.get(g);T&&t.remove(T),r.set(g,b)}function u(g){let x=r.get(g);if(x){let m=g.index;m!==null&&x.version<m.version&&d(g)}else d(g);return r.get(g)}function p(){for(let g in s){let x=s[g].deref();x!==void 0&&l(x)}}return{get:c,update:h,getWireframeAttribute:u,dispose:p}}function sM(i,t,e){let n;function s(d){n=d}let r,o;function a(d){r=d.type,o=d.bytesPerElement}function l(d,u){i.drawElements(n,u,r,d*o),e.update(u,n,1)}function c(d,u,p){p!==0&&(i.drawElementsInstanced(n,u,r,d*o,p),e.update(u,n,p))}function h(d,u,p){if(p===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,u,0,r,d,0,p);let x=0;for(let m=0;m<p;m++)x+=u[m];e.update(x,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function rM(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:ue("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function oM(i,t,e){let n=new WeakMap,s=new en;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,d=h!==void 0?h.length:0,u=n.get(a);if(u===void 0||u.count!==d){let L=function(){_.dispose(),n.delete(a),a.removeEventListener("dispose",L)};u!==void 0&&u.texture.dispose();let p=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,x=a.morphAttributes.color!==void 0,m=a.morphAttributes.position||[],f=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],C=0;p===!0&&(C=1),g===!0&&(C=2),x===!0&&(C=3);let b=a.attributes.position.count*C,I=1;b>t.maxTextureSize&&(I=Math.ceil(b/t.maxTextureSize),b=t.maxTextureSize);let T=new Float32Array(b*I*4*d),_=new ia(T,b,I,d);_.type=xi,_.needsUpdate=!0;let w=C*4;for(let S=0;S<d;S++){let P=m[S],F=f[S],O=y[S],D=b*I*4*S;for(let V=0;V<P.count;V++){let $=V*w;p===!0&&(s.fromBufferAttribute(P,V),T[D+$+0]=s.x,T[D+$+1]=s.y,T[D+$+2]=s.z,T[D+$+3]=0),g===!0&&(s.fromBufferAttribute(F,V),T[D+$+4]=s.x,T[D+$+5]=s.y,T[D+$+6]=s.z,T[D+$+7]=0),x===!0&&(s.fromBufferAttribute(O,V),T[D+$+8]=s.x,T[D+$+9]=s.y,T[D+$+10]=s.z,T[D+$+11]=O.itemSize===4?s.w:1)}}u={count:d,texture:_,size:new ce(b,I)},n.set(a,u),a.addEventListener("dispose",L)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let p=0;for(let x=0;x<c.length;x++)p+=c[x];let g=a.morphTargetsRelative?1:1-p;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",u.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",u.size)}return{update:r}}function aM(i,t,e,n,s){let r=new WeakMap;function o(c){let h=s.render.frame,d=c.geometry,u=t.get(c,d);if(r.get(u)!==h&&(t.update(u),r.set(u,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let p=c.skeleton;r.get(p)!==h&&(p.update(),r.set(p,h))}return u}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),e.remove(h.instanceMatrix),h.instanceColor!==null&&e.remove(h.instanceColor)}return{update:o,dispose:a}}var lM={[Eu]:"LINEAR_TONE_MAPPING",[Tu]:"REINHARD_TONE_MAPPING",[Au]:"CINEON_TONE_MAPPING",[Ru]:"ACES_FILMIC_TONE_MAPPING",[Pu]:"AGX_TONE_MAPPING",[Iu]:"NEUTRAL_TONE_MAPPING",[Cu]:"CUSTOM_TONE_MAPPING"};function cM(i,t,e,n,s,r){let o=new ci(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new Zn;h.setAttribute("position",new Xe([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new Xe([0,2,0,0,2,0],2));let d=new Wl({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),u=new gn(h,d),p=new hr(-1,1,1,-1,0,1),g=null,x=null,m=!1,f,y=null,C=[],b=!1;this.setSize=function(I,T){o.setSize(I,T),a!==null&&a.setSize(I,T),l!==null&&l.setSize(I,T);for(let _=0;_<C.length;_++){let w=C[_];w.setSize&&w.setSize(I,T)}},this.setEffects=function(I){C=I,b=C.length>0&&C[0].isRenderPass===!0;let T=o.width,_=o.height;C.length>0&&a===null&&(a=new ci(T,_,{type:Ii,depthBuffer:!1,stencilBuffer:!1}),l=new ci(T,_,{type:Ii,depthBuffer:!1,stencilBuffer:!1}));let w=s===!0&&C.some(L=>L.needsDepthTexture===!0);w!==(o.depthTexture!==null)&&(w===!0&&c===null&&(c=new Ms(T,_),r===!0&&(c.format=ws,c.type=pr)),o.dispose(),o.depthTexture=w?c:null,o.resolveDepthBuffer=w,o.storeMultisampledDepthBuffer=w);for(let L=0;L<C.length;L++){let S=C[L];S.setSize&&S.setSize(T,_),w&&S.needsDepthTexture===!0&&S.setDepthTexture&&S.setDepthTexture(c)}},this.begin=function(I,T){if(m||I.toneMapping===Qi&&C.length===0)return!1;if(y=T,T!==null){let _=T.width,w=T.height;(o.width!==_||o.height!==w)&&this.setSize(_,w)}return b===!1&&I.setRenderTarget(o),f=I.toneMapping,I.toneMapping=Qi,!0},this.hasRenderPass=function(){return b},this.end=function(I,T){I.toneMapping=f,m=!0;let _=o,w=a;for(let L=0;L<C.length;L++){let S=C[L];S.enabled!==!1&&(S.render(I,w,_,T),S.needsSwap!==!1&&(_=w,w=w===a?l:a))}if(g!==I.outputColorSpace||x!==I.toneMapping){g=I.outputColorSpace,x=I.toneMapping,d.defines={},Re.getTransfer(g)===Be&&(d.defines.SRGB_TRANSFER="");let L=lM[x];L&&(d.defines[L]=""),d.needsUpdate=!0}d.uniforms.tDiffuse.value=_.texture,I.setRenderTarget(y),I.render(u,p),y=null,m=!1},this.isCompositing=function(){return m},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),d.dispose()}}var Tm=new Kn,Am=new Ms(1,1),Rm=new da(1),Cm=new ia,Pm=new kl,Im=new ua,rm=[],om=[],am=new Float32Array(16),lm=new Float32Array(9),cm=new Float32Array(4);function yo(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=rm[s];if(r===void 0&&(r=new Float32Array(s),rm[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function yn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function vn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function Kc(i,t){let e=om[t];e===void 0&&(e=new Int32Array(t),om[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function hM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function uM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2fv(this.addr,t),vn(e,t)}}function dM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(yn(e,t))return;i.uniform3fv(this.addr,t),vn(e,t)}}function fM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4fv(this.addr,t),vn(e,t)}}function pM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;cm.set(n),i.uniformMatrix2fv(this.addr,!1,cm),vn(e,n)}}function mM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;lm.set(n),i.uniformMatrix3fv(this.addr,!1,lm),vn(e,n)}}function gM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;am.set(n),i.uniformMatrix4fv(this.addr,!1,am),vn(e,n)}}function _M(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function xM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2iv(this.addr,t),vn(e,t)}}function yM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3iv(this.addr,t),vn(e,t)}}function vM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4iv(this.addr,t),vn(e,t)}}function MM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function SM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2uiv(this.addr,t),vn(e,t)}}function bM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3uiv(this.addr,t),vn(e,t)}}function wM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4uiv(this.addr,t),vn(e,t)}}function jc(i){return i.version===0&&(i.compareFunction=Vu,i.needsUpdate=!0),i}function EM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=jc(Am):r=Tm,e.setTexture2D(t||r,s)}function TM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||Pm,s)}function AM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=jc(Rm):r=Im,e.setTextureCube(t||r,s)}function RM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||Cm,s)}function CM(i){switch(i){case 5126:return hM;case 35664:return uM;case 35665:return dM;case 35666:return fM;case 35674:return pM;case 35675:return mM;case 35676:return gM;case 5124:case 35670:return _M;case 35667:case 35671:return xM;case 35668:case 35672:return yM;case 35669:case 35673:return vM;case 5125:return MM;case 36294:return SM;case 36295:return bM;case 36296:return wM;case 35678:case 36198:case 36298:case 36306:case 35682:return EM;case 35679:case 36299:case 36307:return TM;case 35680:case 36300:case 36308:case 36293:return AM;case 36289:case 36303:case 36311:case 36292:return RM}}function PM(i,t){i.uniform1fv(this.addr,t)}function IM(i,t){let e=yo(t,this.size,2);i.uniform2fv(this.addr,e)}function LM(i,t){let e=yo(t,this.size,3);i.uniform3fv(this.addr,e)}function DM(i,t){let e=yo(t,this.size,4);i.uniform4fv(this.addr,e)}function NM(i,t){let e=yo(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function UM(i,t){let e=yo(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function FM(i,t){let e=yo(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function OM(i,t){i.uniform1iv(this.addr,t)}function BM(i,t){i.uniform2iv(this.addr,t)}function kM(i,t){i.uniform3iv(this.addr,t)}function zM(i,t){i.uniform4iv(this.addr,t)}function VM(i,t){i.uniform1uiv(this.addr,t)}function HM(i,t){i.uniform2uiv(this.addr,t)}function GM(i,t){i.uniform3uiv(this.addr,t)}function WM(i,t){i.uniform4uiv(this.addr,t)}function $M(i,t,e){let n=this.cache,s=t.length,r=Kc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=jc(Am):o=Tm;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function XM(i,t,e){let n=this.cache,s=t.length,r=Kc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||Pm,r[o])}function qM(i,t,e){let n=this.cache,s=t.length,r=Kc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=jc(Rm):o=Im;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function YM(i,t,e){let n=this.cache,s=t.length,r=Kc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||Cm,r[o])}function ZM(i){switch(i){case 5126:return PM;case 35664:return IM;case 35665:return LM;case 35666:return DM;case 35674:return NM;case 35675:return UM;case 35676:return FM;case 5124:case 35670:return OM;case 35667:case 35671:return BM;case 35668:case 35672:return kM;case 35669:case 35673:return zM;case 5125:return VM;case 36294:return HM;case 36295:return GM;case 36296:return WM;case 35678:case 36198:case 36298:case 36306:case 35682:return $M;case 35679:case 36299:case 36307:return XM;case 35680:case 36300:case 36308:case 36293:return qM;case 36289:case 36303:case 36311:case 36292:return YM}}var td=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=CM(e.type)}},ed=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=ZM(e.type)}},nd=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},ju=/(\w+)(\])?(\[|\.)?/g;function hm(i,t){i.seq.push(t),i.map[t.id]=t}function JM(i,t,e){let n=i.name,s=n.length;for(ju.lastIndex=0;;){let r=ju.exec(n),o=ju.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){hm(e,c===void 0?new td(a,i,t):new ed(a,i,t));break}else{let d=e.map[a];d===void 0&&(d=new nd(a),hm(e,d)),e=d}}}var xo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);JM(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function um(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var KM=37297,jM=0;function QM(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var dm=new de;function tS(i){Re._getMatrix(dm,Re.workingColorSpace,i);let t=`mat3( ${dm.elements.map(e=>e.toFixed(4))} )`;switch(Re.getTransfer(i)){case ea:return[t,"LinearTransferOETF"];case Be:return[t,"sRGBTransferOETF"];default:return re("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function fm(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+QM(i.getShaderSource(t),a)}else return r}function eS(i,t){let e=tS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var nS={[Eu]:"Linear",[Tu]:"Reinhard",[Au]:"Cineon",[Ru]:"ACESFilmic",[Pu]:"AgX",[Iu]:"Neutral",[Cu]:"Custom"};function iS(i,t){let e=nS[t];return e===void 0?(re("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var Yc=new Y;function sS(){Re.getLuminanceCoefficients(Yc);let i=Yc.x.toFixed(4),t=Yc.y.toFixed(4),e=Yc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function rS(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Na).join(`
`)}function oS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function aS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Na(i){return i!==""}function pm(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function mm(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var lS=/^[ \t]*#include +<([\w\d./]+)>/gm;function id(i){return i.replace(lS,cS)}function cS(i,t){let e=Me[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return id(e)}var hS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function gm(i){return i.replace(hS,uS)}function uS(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function _m(i){let t=`precision ${i.precision} float;
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
#define LOW_PRECISION`),t}var dS={[Ea]:"SHADOWMAP_TYPE_PCF",[fo]:"SHADOWMAP_TYPE_VSM"};function fS(i){return dS[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var pS={[mo]:"ENVMAP_MODE_REFRACTION"};function mS(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":pS[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var gS={[rc]:"ENVMAP_BLENDING_MULTIPLY",[Dp]:"ENVMAP_BLENDING_MIX",[Np]:"ENVMAP_BLENDING_ADD"};function _S(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":gS[i.combine]||"ENVMAP_BLENDING_NONE"}function xS(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=fS(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=mS(e),d=_S(e),u=rS(e),p=oS(r),g=s.createProgram(),x,m,f=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(x=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p].filter(Na).join(`
`),x.length>0&&(x+=`
`),m=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p].filter(Na).join(`
`),m.length>0&&(m+=`
`)):(x=[_m(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+h:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Na).join(`
`),m=[_m(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,p,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+h:"",e.envMap?"#define "+d:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Qi?"#define TONE_MAPPING":"",e.toneMapping!==Qi?Me.tonemapping_pars_fragment:"",e.toneMapping!==Qi?iS("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",Me.colorspace_pars_fragment,eS("linearToOutputTexel",e.outputColorSpace),sS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Na).join(`
`)),o=id(o),o=pm(o,e),o=mm(o,e),a=id(a),a=pm(a,e),a=mm(a,e),o=gm(o),a=gm(a),e.isRawShaderMaterial!==!0&&(f=`#version 300 es
`,x=[u,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+x,m=["#define varying in",e.glslVersion===Hu?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===Hu?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+m);let y=f+x+o,C=f+m+a,b=um(s,s.VERTEX_SHADER,y),I=um(s,s.FRAGMENT_SHADER,C);s.attachShader(g,b),s.attachShader(g,I),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function T(S){if(i.debug.checkShaderErrors){let P=s.getProgramInfoLog(g)||"",F=s.getShaderInfoLog(b)||"",O=s.getShaderInfoLog(I)||"",D=P.trim(),V=F.trim(),$=O.trim(),H=!0,K=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(H=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,b,I);else{let X=fm(s,b,"vertex"),Z=fm(s,I,"fragment");ue("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+S.name+`
Material Type: `+S.type+`

Program Info Log: `+D+`
`+X+`
`+Z)}else D!==""?re("WebGLProgram: Program Info Log:",D):(V===""||$==="")&&(K=!1);K&&(S.diagnostics={runnable:H,programLog:D,vertexShader:{log:V,prefix:x},fragmentShader:{log:$,prefix:m}})}s.deleteShader(b),s.deleteShader(I),_=new xo(s,g),w=aS(s,g)}let _;this.getUniforms=function(){return _===void 0&&T(this),_};let w;this.getAttributes=function(){return w===void 0&&T(this),w};let L=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return L===!1&&(L=s.getProgramParameter(g,KM)),L},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=jM++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=b,this.fragmentShader=I,this}var yS=0,sd=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new rd(t),e.set(t,n)),n}},rd=class{constructor(t){this.id=yS++,this.code=t,this.usedTimes=0}};function vS(i){return i===qs||i===Ia||i===La}function MS(i,t,e,n,s,r){let o=new sa,a=new sd,l=new Set,c=[],h=new Map,d=n.logarithmicDepthBuffer,u={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function p(_){return l.add(_),_===0?"uv":`uv${_}`}function g(_,w,L,S,P,F){let O=S.fog,D=P.geometry,V=_.isMeshStandardMaterial||_.isMeshLambertMaterial||_.isMeshPhongMaterial?S.environment:null,$=_.isMeshStandardMaterial||_.isMeshLambertMaterial&&!_.envMap||_.isMeshPhongMaterial&&!_.envMap,H=t.get(_.envMap||V,$),K=u[_.type],X=n.precision;_.precision!==null&&(X=n.getMaxPrecision(_.precision),X!==_.precision&&re("WebGLProgram.getParameters:",_.precision,"not supported, using",X,"instead."));let Z=D.morphAttributes.position||D.morphAttributes.normal||D.morphAttributes.color,nt=Z!==void 0?Z.length:0,dt=0;D.morphAttributes.position!==void 0&&(dt=1),D.morphAttributes.normal!==void 0&&(dt=2),D.morphAttributes.color!==void 0&&(dt=3);let ft,et,Mt,q;if(K){let Ft=es[K];ft=Ft.vertexShader,et=Ft.fragmentShader}else{ft=_.vertexShader,et=_.fragmentShader;let Ft=a.getVertexShaderStage(_),ge=a.getFragmentShaderStage(_);a.update(_,Ft,ge),Mt=Ft.id,q=ge.id}let it=i.getRenderTarget(),st=i.state.buffers.depth.getReversed(),gt=P.isInstancedMesh===!0,Ut=P.isBatchedMesh===!0,wt=!!_.map,ne=!!_.matcap,se=!!H,Kt=se&&H.isPMREMTexture===!0,Ee=!!_.aoMap,Qt=!!_.lightMap,xe=!!_.bumpMap&&_.wireframe===!1,pe=!!_.normalMap,Pe=!!_.displacementMap,lt=!!_.emissiveMap,Tt=!!_.metalnessMap,Ot=!!_.roughnessMap,Jt=_.anisotropy>0,k=_.clearcoat>0,_t=_.diffuseRoughness>0,Wt=_.dispersion>0,Ht=_.retroreflectivity>0,St=_.iridescence>0,Ie=_.sheen>0,jt=_.transmission>0,ie=Jt&&!!_.anisotropyMap,N=k&&!!_.clearcoatMap,E=k&&!!_.clearcoatNormalMap,J=k&&!!_.clearcoatRoughnessMap,yt=_t&&!!_.diffuseRoughnessMap,pt=St&&!!_.iridescenceMap,Rt=St&&!!_.iridescenceThicknessMap,Ct=Ie&&!!_.sheenColorMap,ot=Ie&&!!_.sheenRoughnessMap,ct=!!_.specularMap,Et=!!_.specularColorMap,z=!!_.specularIntensityMap,ut=jt&&!!_.transmissionMap,at=jt&&!!_.thicknessMap,Lt=!!_.gradientMap,At=!!_.alphaMap,It=_.alphaTest>0,te=!!_.alphaHash,ae=!!_.extensions,xt=Qi;_.toneMapped&&(it===null||it.isXRRenderTarget===!0)&&(xt=i.toneMapping);let qt=Kt?H.isCompressedCubeTexture?H.image[0].mipmaps:H.mipmaps:null,le={shaderID:K,shaderType:_.type,shaderName:_.name,vertexShader:ft,fragmentShader:et,defines:_.defines,customVertexShaderID:Mt,customFragmentShaderID:q,isRawShaderMaterial:_.isRawShaderMaterial===!0,glslVersion:_.glslVersion,precision:X,batching:Ut,batchingColor:Ut&&P._colorsTexture!==null,instancing:gt,instancingColor:gt&&P.instanceColor!==null,instancingMorph:gt&&P.morphTexture!==null,outputColorSpace:it===null?i.outputColorSpace:it.isXRRenderTarget===!0?it.texture.colorSpace:Re.workingColorSpace,alphaToCoverage:!!_.alphaToCoverage,map:wt,matcap:ne,envMap:se,envMapMode:se&&H.mapping,envMapPMREM:Kt,envMapMaxLod:Kt?qt.length-1:null,envMapSize:Kt?qt[0].width:null,aoMap:Ee,lightMap:Qt,bumpMap:xe,normalMap:pe,displacementMap:Pe,emissiveMap:lt,normalMapObjectSpace:pe&&_.normalMapType===Op,normalMapTangentSpace:pe&&_.normalMapType===Xc,packedNormalMap:pe&&_.normalMapType===Xc&&vS(_.normalMap.format),metalnessMap:Tt,roughnessMap:Ot,anisotropy:Jt,anisotropyMap:ie,clearcoat:k,clearcoatMap:N,clearcoatNormalMap:E,clearcoatRoughnessMap:J,diffuseRoughness:_t,diffuseRoughnessMap:yt,dispersion:Wt,retroreflection:Ht,iridescence:St,iridescenceMap:pt,iridescenceThicknessMap:Rt,sheen:Ie,sheenColorMap:Ct,sheenRoughnessMap:ot,specularMap:ct,specularColorMap:Et,specularIntensityMap:z,transmission:jt,transmissionMap:ut,thicknessMap:at,gradientMap:Lt,opaque:_.transparent===!1&&_.blending===po&&_.alphaToCoverage===!1,alphaMap:At,alphaTest:It,alphaHash:te,combine:_.combine,mapUv:wt&&p(_.map.channel),aoMapUv:Ee&&p(_.aoMap.channel),lightMapUv:Qt&&p(_.lightMap.channel),bumpMapUv:xe&&p(_.bumpMap.channel),normalMapUv:pe&&p(_.normalMap.channel),displacementMapUv:Pe&&p(_.displacementMap.channel),emissiveMapUv:lt&&p(_.emissiveMap.channel),metalnessMapUv:Tt&&p(_.metalnessMap.channel),roughnessMapUv:Ot&&p(_.roughnessMap.channel),anisotropyMapUv:ie&&p(_.anisotropyMap.channel),clearcoatMapUv:N&&p(_.clearcoatMap.channel),clearcoatNormalMapUv:E&&p(_.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:J&&p(_.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:yt&&p(_.diffuseRoughnessMap.channel),iridescenceMapUv:pt&&p(_.iridescenceMap.channel),iridescenceThicknessMapUv:Rt&&p(_.iridescenceThicknessMap.channel),sheenColorMapUv:Ct&&p(_.sheenColorMap.channel),sheenRoughnessMapUv:ot&&p(_.sheenRoughnessMap.channel),specularMapUv:ct&&p(_.specularMap.channel),specularColorMapUv:Et&&p(_.specularColorMap.channel),specularIntensityMapUv:z&&p(_.specularIntensityMap.channel),transmissionMapUv:ut&&p(_.transmissionMap.channel),thicknessMapUv:at&&p(_.thicknessMap.channel),alphaMapUv:At&&p(_.alphaMap.channel),vertexTangents:!!D.attributes.tangent&&(pe||Jt),vertexNormals:!!D.attributes.normal,vertexColors:_.vertexColors,vertexAlphas:_.vertexColors===!0&&!!D.attributes.color&&D.attributes.color.itemSize===4,pointsUvs:P.isPoints===!0&&!!D.attributes.uv&&(wt||At),fog:!!O,useFog:_.fog===!0,fogExp2:!!O&&O.isFogExp2,flatShading:_.wireframe===!1&&(_.flatShading===!0||D.attributes.normal===void 0&&pe===!1&&(_.isMeshLambertMaterial||_.isMeshPhongMaterial||_.isMeshStandardMaterial||_.isMeshPhysicalMaterial)),sizeAttenuation:_.sizeAttenuation===!0,logarithmicDepthBuffer:d,reversedDepthBuffer:st,skinning:P.isSkinnedMesh===!0,hasPositionAttribute:D.attributes.position!==void 0,morphTargets:D.morphAttributes.position!==void 0,morphNormals:D.morphAttributes.normal!==void 0,morphColors:D.morphAttributes.color!==void 0,morphTargetsCount:nt,morphTextureStride:dt,numSunLights:w.sun.length,numDirLights:w.directional.length,numPointLights:w.point.length,numSpotLights:w.spot.length,numSpotLightMaps:w.spotLightMap.length,numRectAreaLights:w.rectArea.length,numHemiLights:w.hemi.length,numSunLightShadows:w.sunShadowMap.length,numDirLightShadows:w.directionalShadowMap.length,numPointLightShadows:w.pointShadowMap.length,numSpotLightShadows:w.spotShadowMap.length,numSpotLightShadowsWithMaps:w.numSpotLightShadowsWithMaps,numLightProbes:w.numLightProbes,numLightProbeGrids:F.filter(Ft=>Ft.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:_.dithering,shadowMapEnabled:i.shadowMap.enabled&&L.length>0,shadowMapType:i.shadowMap.type,toneMapping:xt,decodeVideoTexture:wt&&_.map.isVideoTexture===!0&&Re.getTransfer(_.map.colorSpace)===Be,decodeVideoTextureEmissive:lt&&_.emissiveMap.isVideoTexture===!0&&Re.getTransfer(_.emissiveMap.colorSpace)===Be,premultipliedAlpha:_.premultipliedAlpha,doubleSided:_.side===ji,flipSided:_.side===Un,useDepthPacking:_.depthPacking>=0,depthPacking:_.depthPacking||0,index0AttributeName:_.index0AttributeName,extensionClipCullDistance:ae&&_.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(ae&&_.extensions.multiDraw===!0||Ut)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:_.customProgramCacheKey()};return le.vertexUv1s=l.has(1),le.vertexUv2s=l.has(2),le.vertexUv3s=l.has(3),l.clear(),le}function x(_){let w=[];if(_.shaderID?w.push(_.shaderID):(w.push(_.customVertexShaderID),w.push(_.customFragmentShaderID)),_.defines!==void 0)for(let L in _.defines)w.push(L),w.push(_.defines[L]);return _.isRawShaderMaterial===!1&&(m(w,_),f(w,_),w.push(i.outputColorSpace)),w.push(_.customProgramCacheKey),w.join()}function m(_,w){_.push(w.precision),_.push(w.outputColorSpace),_.push(w.envMapMode),_.push(w.envMapPMREM),_.push(w.envMapMaxLod),_.push(w.envMapSize),_.push(w.mapUv),_.push(w.alphaMapUv),_.push(w.lightMapUv),_.push(w.aoMapUv),_.push(w.bumpMapUv),_.push(w.normalMapUv),_.push(w.displacementMapUv),_.push(w.emissiveMapUv),_.push(w.metalnessMapUv),_.push(w.roughnessMapUv),_.push(w.anisotropyMapUv),_.push(w.clearcoatMapUv),_.push(w.clearcoatNormalMapUv),_.push(w.clearcoatRoughnessMapUv),_.push(w.diffuseRoughnessMapUv),_.push(w.iridescenceMapUv),_.push(w.iridescenceThicknessMapUv),_.push(w.sheenColorMapUv),_.push(w.sheenRoughnessMapUv),_.push(w.specularMapUv),_.push(w.specularColorMapUv),_.push(w.specularIntensityMapUv),_.push(w.transmissionMapUv),_.push(w.thicknessMapUv),_.push(w.combine),_.push(w.fogExp2),_.push(w.sizeAttenuation),_.push(w.morphTargetsCount),_.push(w.numSunLights),_.push(w.numDirLights),_.push(w.numPointLights),_.push(w.numSpotLights),_.push(w.numSpotLightMaps),_.push(w.numHemiLights),_.push(w.numRectAreaLights),_.push(w.numSunLightShadows),_.push(w.numDirLightShadows),_.push(w.numPointLightShadows),_.push(w.numSpotLightShadows),_.push(w.numSpotLightShadowsWithMaps),_.push(w.numLightProbes),_.push(w.numLightProbeGrids),_.push(w.shadowMapType),_.push(w.toneMapping),_.push(w.numClippingPlanes),_.push(w.numClipIntersection),_.push(w.depthPacking)}function f(_,w){o.disableAll(),w.instancing&&o.enable(0),w.instancingColor&&o.enable(1),w.instancingMorph&&o.enable(2),w.matcap&&o.enable(3),w.envMap&&o.enable(4),w.normalMapObjectSpace&&o.enable(5),w.normalMapTangentSpace&&o.enable(6),w.clearcoat&&o.enable(7),w.iridescence&&o.enable(8),w.alphaTest&&o.enable(9),w.vertexColors&&o.enable(10),w.vertexAlphas&&o.enable(11),w.vertexUv1s&&o.enable(12),w.vertexUv2s&&o.enable(13),w.vertexUv3s&&o.enable(14),w.vertexTangents&&o.enable(15),w.anisotropy&&o.enable(16),w.alphaHash&&o.enable(17),w.batching&&o.enable(18),w.dispersion&&o.enable(19),w.retroreflection&&o.enable(24),w.diffuseRoughness&&o.enable(25),w.batchingColor&&o.enable(20),w.gradientMap&&o.enable(21),w.packedNormalMap&&o.enable(22),w.vertexNormals&&o.enable(23),_.push(o.mask),o.disableAll(),w.fog&&o.enable(0),w.useFog&&o.enable(1),w.flatShading&&o.enable(2),w.logarithmicDepthBuffer&&o.enable(3),w.reversedDepthBuffer&&o.enable(4),w.skinning&&o.enable(5),w.morphTargets&&o.enable(6),w.morphNormals&&o.enable(7),w.morphColors&&o.enable(8),w.premultipliedAlpha&&o.enable(9),w.shadowMapEnabled&&o.enable(10),w.doubleSided&&o.enable(11),w.flipSided&&o.enable(12),w.useDepthPacking&&o.enable(13),w.dithering&&o.enable(14),w.transmission&&o.enable(15),w.sheen&&o.enable(16),w.opaque&&o.enable(17),w.pointsUvs&&o.enable(18),w.decodeVideoTexture&&o.enable(19),w.decodeVideoTextureEmissive&&o.enable(20),w.alphaToCoverage&&o.enable(21),w.numLightProbeGrids>0&&o.enable(22),w.hasPositionAttribute&&o.enable(23),_.push(o.mask)}function y(_){let w=u[_.type],L;if(w){let S=es[w];L=jp.clone(S.uniforms)}else L=_.uniforms;return L}function C(_,w){let L=h.get(w);return L!==void 0?++L.usedTimes:(L=new xS(i,w,_,s),c.push(L),h.set(w,L)),L}function b(_){if(--_.usedTimes===0){let w=c.indexOf(_);c[w]=c[c.length-1],c.pop(),h.delete(_.cacheKey),_.destroy()}}function I(_){a.remove(_)}function T(){a.dispose()}return{getParameters:g,getProgramCacheKey:x,getUniforms:y,acquireProgram:C,releaseProgram:b,releaseShaderCache:I,programs:c,dispose:T}}function SS(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function bS(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function xm(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function ym(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(u){let p=0;return u.isInstancedMesh&&(p+=2),u.isSkinnedMesh&&(p+=1),p}function a(u,p,g,x,m,f){let y=i[t];return y===void 0?(y={id:u.id,object:u,geometry:p,material:g,materialVariant:o(u),groupOrder:x,renderOrder:u.renderOrder,z:m,group:f},i[t]=y):(y.id=u.id,y.object=u,y.geometry=p,y.material=g,y.materialVariant=o(u),y.groupOrder=x,y.renderOrder=u.renderOrder,y.z=m,y.group=f),t++,y}function l(u,p,g,x,m,f,y){y.reversedDepth===!0&&(m=-m);let C=a(u,p,g,x,m,f);g.transmission>0?n.push(C):g.transparent===!0?s.push(C):e.push(C)}function c(u,p,g,x,m,f){let y=a(u,p,g,x,m,f);g.transmission>0?n.unshift(y):g.transparent===!0?s.unshift(y):e.unshift(y)}function h(u,p){e.length>1&&e.sort(u||bS),n.length>1&&n.sort(p||xm),s.length>1&&s.sort(p||xm)}function d(){for(let u=t,p=i.length;u<p;u++){let g=i[u];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:d,sort:h}}function wS(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new ym,i.set(n,[o])):s>=r.length?(o=new ym,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function ES(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new Y,color:new ye};break;case"SpotLight":e={position:new Y,direction:new Y,color:new ye,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new Y,color:new ye,distance:0,decay:0};break;case"HemisphereLight":e={direction:new Y,skyColor:new ye,groundColor:new ye};break;case"RectAreaLight":e={color:new ye,position:new Y,halfWidth:new Y,halfHeight:new Y};break}return i[t.id]=e,e}}}function TS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ce};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ce};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ce,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var AS=0;function RS(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function CS(i){let t=new ES,e=TS(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new Y);let s=new Y,r=new Ue,o=new Ue;function a(c){let h=0,d=0,u=0;for(let F=0;F<9;F++)n.probe[F].set(0,0,0);let p=0,g=0,x=0,m=0,f=0,y=0,C=0,b=0,I=0,T=0,_=0,w=0,L=0,S=0;c.sort(RS);for(let F=0,O=c.length;F<O;F++){let D=c[F],V=D.color,$=D.intensity,H=D.distance,K=null;if(D.shadow&&D.shadow.map&&(D.shadow.map.texture.format===qs?K=D.shadow.map.texture:K=D.shadow.map.depthTexture||D.shadow.map.texture),D.isAmbientLight)h+=V.r*$,d+=V.g*$,u+=V.b*$;else if(D.isLightProbe){for(let X=0;X<9;X++)n.probe[X].addScaledVector(D.sh.coefficients[X],$);S++}else if(D.isSunLight){let X=t.get(D);if(X.color.copy(D.color).multiplyScalar(D.intensity),D.castShadow){let Z=D.shadow,nt=e.get(D);nt.shadowIntensity=Z.intensity,nt.shadowBias=Z.bias,nt.shadowNormalBias=Z.normalBias,nt.shadowRadius=Z.radius,nt.shadowMapSize.copy(Z.mapSize).multiply(Z.getFrameExtents()),n.sunShadow[g]=nt,n.sunShadowMap[g]=K;let dt=Z.getViewportCount();for(let ft=0;ft<dt;ft++)n.sunShadowMatrix[x+ft]=Z.getMatrix(ft),n.sunShadowCascade[x+ft]=Z._cascadeData[ft];x+=dt,g++}n.sun[p]=X,p++}else if(D.isDirectionalLight){let X=t.get(D);if(X.color.copy(D.color).multiplyScalar(D.intensity),D.castShadow){let Z=D.shadow,nt=e.get(D);nt.shadowIntensity=Z.intensity,nt.shadowBias=Z.bias,nt.shadowNormalBias=Z.normalBias,nt.shadowRadius=Z.radius,nt.shadowMapSize=Z.mapSize,n.directionalShadow[m]=nt,n.directionalShadowMap[m]=K,n.directionalShadowMatrix[m]=D.shadow.matrix,I++}n.directional[m]=X,m++}else if(D.isSpotLight){let X=t.get(D);X.position.setFromMatrixPosition(D.matrixWorld),X.color.copy(V).multiplyScalar($),X.distance=H,X.coneCos=Math.cos(D.angle),X.penumbraCos=Math.cos(D.angle*(1-D.penumbra)),X.decay=D.decay,n.spot[y]=X;let Z=D.shadow;if(D.map&&(n.spotLightMap[w]=D.map,w++,Z.updateMatrices(D),D.castShadow&&L++),n.spotLightMatrix[y]=Z.matrix,D.castShadow){let nt=e.get(D);nt.shadowIntensity=Z.intensity,nt.shadowBias=Z.bias,nt.shadowNormalBias=Z.normalBias,nt.shadowRadius=Z.radius,nt.shadowMapSize=Z.mapSize,n.spotShadow[y]=nt,n.spotShadowMap[y]=K,_++}y++}else if(D.isRectAreaLight){let X=t.get(D);X.color.copy(V).multiplyScalar($),X.halfWidth.set(D.width*.5,0,0),X.halfHeight.set(0,D.height*.5,0),n.rectArea[C]=X,C++}else if(D.isPointLight){let X=t.get(D);if(X.color.copy(D.color).multiplyScalar(D.intensity),X.distance=D.distance,X.decay=D.decay,D.castShadow){let Z=D.shadow,nt=e.get(D);nt.shadowIntensity=Z.intensity,nt.shadowBias=Z.bias,nt.shadowNormalBias=Z.normalBias,nt.shadowRadius=Z.radius,nt.shadowMapSize=Z.mapSize,nt.shadowCameraNear=Z.camera.near,nt.shadowCameraFar=Z.camera.far,n.pointShadow[f]=nt,n.pointShadowMap[f]=K,n.pointShadowMatrix[f]=D.shadow.matrix,T++}n.point[f]=X,f++}else if(D.isHemisphereLight){let X=t.get(D);X.skyColor.copy(D.color).multiplyScalar($),X.groundColor.copy(D.groundColor).multiplyScalar($),n.hemi[b]=X,b++}}C>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=zt.LTC_FLOAT_1,n.rectAreaLTC2=zt.LTC_FLOAT_2):(n.rectAreaLTC1=zt.LTC_HALF_1,n.rectAreaLTC2=zt.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=d,n.ambient[2]=u;let P=n.hash;(P.sunLength!==p||P.directionalLength!==m||P.pointLength!==f||P.spotLength!==y||P.rectAreaLength!==C||P.hemiLength!==b||P.numSunShadows!==g||P.numDirectionalShadows!==I||P.numPointShadows!==T||P.numSpotShadows!==_||P.numSpotMaps!==w||P.numLightProbes!==S)&&(n.sun.length=p,n.directional.length=m,n.spot.length=y,n.rectArea.length=C,n.point.length=f,n.hemi.length=b,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=x,n.sunShadowCascade.length=x,n.directionalShadow.length=I,n.directionalShadowMap.length=I,n.directionalShadowMatrix.length=I,n.pointShadow.length=T,n.pointShadowMap.length=T,n.pointShadowMatrix.length=T,n.spotShadow.length=_,n.spotShadowMap.length=_,n.spotLightMatrix.length=_+w-L,n.spotLightMap.length=w,n.numSpotLightShadowsWithMaps=L,n.numLightProbes=S,P.sunLength=p,P.directionalLength=m,P.pointLength=f,P.spotLength=y,P.rectAreaLength=C,P.hemiLength=b,P.numSunShadows=g,P.numDirectionalShadows=I,P.numPointShadows=T,P.numSpotShadows=_,P.numSpotMaps=w,P.numLightProbes=S,n.version=AS++)}function l(c,h){let d=0,u=0,p=0,g=0,x=0,m=0,f=h.matrixWorldInverse;for(let y=0,C=c.length;y<C;y++){let b=c[y];if(b.isSunLight){let I=n.sun[d];I.direction.setFromMatrixPosition(b.matrixWorld),I.direction.transformDirection(f),d++}else if(b.isDirectionalLight){let I=n.directional[u];I.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),I.direction.sub(s),I.direction.transformDirection(f),u++}else if(b.isSpotLight){let I=n.spot[g];I.position.setFromMatrixPosition(b.matrixWorld),I.position.applyMatrix4(f),I.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),I.direction.sub(s),I.direction.transformDirection(f),g++}else if(b.isRectAreaLight){let I=n.rectArea[x];I.position.setFromMatrixPosition(b.matrixWorld),I.position.applyMatrix4(f),o.identity(),r.copy(b.matrixWorld),r.premultiply(f),o.extractRotation(r),I.halfWidth.set(b.width*.5,0,0),I.halfHeight.set(0,b.height*.5,0),I.halfWidth.applyMatrix4(o),I.halfHeight.applyMatrix4(o),x++}else if(b.isPointLight){let I=n.point[p];I.position.setFromMatrixPosition(b.matrixWorld),I.position.applyMatrix4(f),p++}else if(b.isHemisphereLight){let I=n.hemi[m];I.direction.setFromMatrixPosition(b.matrixWorld),I.direction.transformDirection(f),m++}}}return{setup:a,setupView:l,state:n}}function vm(i){let t=new CS(i),e=[],n=[],s=[];function r(d){h.camera=d,e.length=0,n.length=0,s.length=0}function o(d){d.isLightProbeGrid?s.push(d):e.push(d)}function a(d){n.push(d)}function l(){t.setup(e),s.sort((d,u)=>d.priority-u.priority||d.id-u.id)}function c(d){t.setupView(e,d)}let h={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function PS(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new vm(i),t.set(s,[a])):r>=o.length?(a=new vm(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var IS=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,LS=`uniform sampler2D shadow_pass;
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
}`,DS=[new Y(1,0,0),new Y(-1,0,0),new Y(0,1,0),new Y(0,-1,0),new Y(0,0,1),new Y(0,0,-1)],NS=[new Y(0,-1,0),new Y(0,-1,0),new Y(0,0,1),new Y(0,0,-1),new Y(0,-1,0),new Y(0,-1,0)],Mm=new Ue,Da=new Y,Qu=new Y;function US(i,t,e){let n=new zs,s=new ce,r=new ce,o=new en,a=new $l,l=new Xl,c={},h=e.maxTextureSize,d={[Xs]:Un,[Un]:Xs,[ji]:ji},u=new Ki({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new ce},radius:{value:4}},vertexShader:IS,fragmentShader:LS}),p=u.clone();p.defines.HORIZONTAL_PASS=1;let g=new Zn;g.setAttribute("position",new Ri(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let x=new gn(g,u),m=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Ea;let f=this.type;this.render=function(T,_,w){if(m.enabled===!1||m.autoUpdate===!1&&m.needsUpdate===!1||T.length===0)return;this.type===pp&&(re("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Ea);let L=i.getRenderTarget(),S=i.getActiveCubeFace(),P=i.getActiveMipmapLevel(),F=i.state;F.setBlending(ur),F.buffers.depth.getReversed()===!0?F.buffers.color.setClear(0,0,0,0):F.buffers.color.setClear(1,1,1,1),F.buffers.depth.setTest(!0),F.setScissorTest(!1);let O=f!==this.type;O&&_.traverse(function(D){D.material&&(Array.isArray(D.material)?D.material.forEach(V=>V.needsUpdate=!0):D.material.needsUpdate=!0)});for(let D=0,V=T.length;D<V;D++){let $=T[D],H=$.shadow;if(H===void 0){re("WebGLShadowMap:",$,"has no shadow.");continue}if(H.autoUpdate===!1&&H.needsUpdate===!1)continue;s.copy(H.mapSize);let K=H.getFrameExtents();s.multiply(K),r.copy(H.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/K.x),s.x=r.x*K.x,H.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/K.y),s.y=r.y*K.y,H.mapSize.y=r.y));let X=i.state.buffers.depth.getReversed();if(H.camera._reversedDepth=X,H.map===null||O===!0){if(H.map!==null&&(H.map.depthTexture!==null&&(H.map.depthTexture.dispose(),H.map.depthTexture=null),H.map.dispose()),this.type===fo){if($.isPointLight){re("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}H.map=new ci(s.x,s.y,{format:qs,type:Ii,minFilter:Yn,magFilter:Yn,generateMipmaps:!1}),H.map.texture.name=$.name+".shadowMap",H.map.depthTexture=new Ms(s.x,s.y,xi),H.map.depthTexture.name=$.name+".shadowMapDepth",H.map.depthTexture.format=_s,H.map.depthTexture.compareFunction=null,H.map.depthTexture.minFilter=Pn,H.map.depthTexture.magFilter=Pn}else $.isPointLight?(H.map=new Ua(s.x),H.map.depthTexture=new da(s.x,Pi)):(H.map=new ci(s.x,s.y),H.map.depthTexture=new Ms(s.x,s.y,Pi)),H.map.depthTexture.name=$.name+".shadowMap",H.map.depthTexture.format=_s,this.type===Ea?(H.map.depthTexture.compareFunction=X?zu:ku,H.map.depthTexture.minFilter=Yn,H.map.depthTexture.magFilter=Yn):(H.map.depthTexture.compareFunction=null,H.map.depthTexture.minFilter=Pn,H.map.depthTexture.magFilter=Pn);H.camera.updateProjectionMatrix()}H.map.isWebGLCubeRenderTarget!==!0&&(H.map.width!==s.x||H.map.height!==s.y)&&H.map.setSize(s.x,s.y);let Z=H.map.isWebGLCubeRenderTarget?6:H.getViewportCount();$.isPointLight!==!0&&H.updateMatrices($,w);let nt=(H.camera.layers.mask&4294967294)!==0?H.camera.layers:w.layers;for(let dt=0;dt<Z;dt++){let ft=H.getCamera(dt);if($.isPointLight){let et=H.camera,Mt=H.matrix,q=$.distance||et.far;q!==et.far&&(et.far=q,et.updateProjectionMatrix()),Da.setFromMatrixPosition($.matrixWorld),et.position.copy(Da),Qu.copy(et.position),Qu.add(DS[dt]),et.up.copy(NS[dt]),et.lookAt(Qu),et.updateMatrixWorld(),Mt.makeTranslation(-Da.x,-Da.y,-Da.z),Mm.multiplyMatrices(et.projectionMatrix,et.matrixWorldInverse),H._frustum.setFromProjectionMatrix(Mm,et.coordinateSystem,et.reversedDepth)}if(H.map.isWebGLCubeRenderTarget)i.setRenderTarget(H.map,dt),i.clear();else{dt===0&&(i.setRenderTarget(H.map),i.clear());let et=H.getViewport(dt);o.set(r.x*et.x,r.y*et.y,r.x*et.z,r.y*et.w),F.viewport(o)}n=H.getFrustum(dt),b(_,w,ft,$,nt,this.type)}H.isPointLightShadow!==!0&&this.type===fo&&y(H,w),H.needsUpdate=!1}f=this.type,m.needsUpdate=!1,i.setRenderTarget(L,S,P)};function y(T,_){let w=t.update(x);u.defines.VSM_SAMPLES!==T.blurSamples&&(u.defines.VSM_SAMPLES=T.blurSamples,p.defines.VSM_SAMPLES=T.blurSamples,u.needsUpdate=!0,p.needsUpdate=!0),T.mapPass===null?T.mapPass=new ci(s.x,s.y,{format:qs,type:Ii}):(T.mapPass.width!==T.map.width||T.mapPass.height!==T.map.height)&&T.mapPass.setSize(T.map.width,T.map.height),u.uniforms.shadow_pass.value=T.map.depthTexture,u.uniforms.resolution.value.set(T.map.width,T.map.height),u.uniforms.radius.value=T.radius,i.setRenderTarget(T.mapPass),i.clear(),i.renderBufferDirect(_,null,w,u,x,null),p.uniforms.shadow_pass.value=T.mapPass.texture,p.uniforms.resolution.value.set(T.map.width,T.map.height),p.uniforms.radius.value=T.radius,i.setRenderTarget(T.map),i.clear(),i.renderBufferDirect(_,null,w,p,x,null)}function C(T,_,w,L){let S=null,P=w.isPointLight===!0?T.customDistanceMaterial:T.customDepthMaterial;if(P!==void 0)S=P;else if(S=w.isPointLight===!0?l:a,i.localClippingEnabled&&_.clipShadows===!0&&Array.isArray(_.clippingPlanes)&&_.clippingPlanes.length!==0||_.displacementMap&&_.displacementScale!==0||_.alphaMap&&_.alphaTest>0||_.map&&_.alphaTest>0||_.alphaToCoverage===!0){let F=S.uuid,O=_.uuid,D=c[F];D===void 0&&(D={},c[F]=D);let V=D[O];V===void 0&&(V=S.clone(),D[O]=V,_.addEventListener("dispose",I)),S=V}if(S.visible=_.visible,S.wireframe=_.wireframe,L===fo?S.side=_.shadowSide!==null?_.shadowSide:_.side:S.side=_.shadowSide!==null?_.shadowSide:d[_.side],S.alphaMap=_.alphaMap,S.alphaTest=_.alphaToCoverage===!0?.5:_.alphaTest,S.map=_.map,S.clipShadows=_.clipShadows,S.clippingPlanes=_.clippingPlanes,S.clipIntersection=_.clipIntersection,S.displacementMap=_.displacementMap,S.displacementScale=_.displacementScale,S.displacementBias=_.displacementBias,S.wireframeLinewidth=_.wireframeLinewidth,S.linewidth=_.linewidth,w.isPointLight===!0&&S.isMeshDistanceMaterial===!0){let F=i.properties.get(S);F.light=w}return S}function b(T,_,w,L,S,P){if(T.visible===!1)return;if(T.layers.test(S)&&(T.isMesh||T.isLine||T.isPoints)&&(T.castShadow||T.receiveShadow&&P===fo)&&(!T.frustumCulled||T.intersectsFrustum(n))){T.modelViewMatrix.multiplyMatrices(w.matrixWorldInverse,T.matrixWorld);let D=t.update(T),V=T.material;if(Array.isArray(V)){let $=D.groups;for(let H=0,K=$.length;H<K;H++){let X=$[H],Z=V[X.materialIndex];if(Z&&Z.visible){let nt=C(T,Z,L,P);T.onBeforeShadow(i,T,_,w,D,nt,X),i.renderBufferDirect(w,null,D,nt,T,X),T.onAfterShadow(i,T,_,w,D,nt,X)}}}else if(V.visible){let $=C(T,V,L,P);T.onBeforeShadow(i,T,_,w,D,$,null),i.renderBufferDirect(w,null,D,$,T,null),T.onAfterShadow(i,T,_,w,D,$,null)}}let O=T.children;for(let D=0,V=O.length;D<V;D++)b(O[D],_,w,L,S,P)}function I(T){T.target.removeEventListener("dispose",I);for(let w in c){let L=c[w],S=T.target.uuid;S in L&&(L[S].dispose(),delete L[S])}}}function FS(i,t){function e(){let z=!1,ut=new en,at=null,Lt=new en(0,0,0,0);return{setMask:function(At){at!==At&&!z&&(i.colorMask(At,At,At,At),at=At)},setLocked:function(At){z=At},setClear:function(At,It,te,ae,xt){xt===!0&&(At*=ae,It*=ae,te*=ae),ut.set(At,It,te,ae),Lt.equals(ut)===!1&&(i.clearColor(At,It,te,ae),Lt.copy(ut))},reset:function(){z=!1,at=null,Lt.set(-1,0,0,0)}}}function n(){let z=!1,ut=!1,at=null,Lt=null,At=null;return{setReversed:function(It){if(ut!==It){let te=t.get("EXT_clip_control");It?te.clipControlEXT(te.LOWER_LEFT_EXT,te.ZERO_TO_ONE_EXT):te.clipControlEXT(te.LOWER_LEFT_EXT,te.NEGATIVE_ONE_TO_ONE_EXT),ut=It;let ae=At;At=null,this.setClear(ae)}},getReversed:function(){return ut},setTest:function(It){It?st(i.DEPTH_TEST):gt(i.DEPTH_TEST)},setMask:function(It){at!==It&&!z&&(i.depthMask(It),at=It)},setFunc:function(It){if(ut&&(It=Yp[It]),Lt!==It){switch(It){case Rl:i.depthFunc(i.NEVER);break;case Cl:i.depthFunc(i.ALWAYS);break;case Pl:i.depthFunc(i.LESS);break;case eo:i.depthFunc(i.LEQUAL);break;case Il:i.depthFunc(i.EQUAL);break;case Ll:i.depthFunc(i.GEQUAL);break;case no:i.depthFunc(i.GREATER);break;case Dl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Lt=It}},setLocked:function(It){z=It},setClear:function(It){At!==It&&(At=It,ut&&(It=1-It),i.clearDepth(It))},reset:function(){z=!1,at=null,Lt=null,At=null,ut=!1}}}function s(){let z=!1,ut=null,at=null,Lt=null,At=null,It=null,te=null,ae=null,xt=null;return{setTest:function(qt){z||(qt?st(i.STENCIL_TEST):gt(i.STENCIL_TEST))},setMask:function(qt){ut!==qt&&!z&&(i.stencilMask(qt),ut=qt)},setFunc:function(qt,le,Ft){(at!==qt||Lt!==le||At!==Ft)&&(i.stencilFunc(qt,le,Ft),at=qt,Lt=le,At=Ft)},setOp:function(qt,le,Ft){(It!==qt||te!==le||ae!==Ft)&&(i.stencilOp(qt,le,Ft),It=qt,te=le,ae=Ft)},setLocked:function(qt){z=qt},setClear:function(qt){xt!==qt&&(i.clearStencil(qt),xt=qt)},reset:function(){z=!1,ut=null,at=null,Lt=null,At=null,It=null,te=null,ae=null,xt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,h={},d={},u={},p=new WeakMap,g=[],x=null,m=!1,f=null,y=null,C=null,b=null,I=null,T=null,_=null,w=new ye(0,0,0),L=0,S=!1,P=null,F=null,O=null,D=null,V=null,$=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),H=!1,K=0,X=i.getParameter(i.VERSION);X.indexOf("WebGL")!==-1?(K=parseFloat(/^WebGL (\d)/.exec(X)[1]),H=K>=1):X.indexOf("OpenGL ES")!==-1&&(K=parseFloat(/^OpenGL ES (\d)/.exec(X)[1]),H=K>=2);let Z=null,nt={},dt=i.getParameter(i.SCISSOR_BOX),ft=i.getParameter(i.VIEWPORT),et=new en().fromArray(dt),Mt=new en().fromArray(ft);function q(z,ut,at,Lt){let At=new Uint8Array(4),It=i.createTexture();i.bindTexture(z,It),i.texParameteri(z,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(z,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let te=0;te<at;te++)z===i.TEXTURE_3D||z===i.TEXTURE_2D_ARRAY?i.texImage3D(ut,0,i.RGBA,1,1,Lt,0,i.RGBA,i.UNSIGNED_BYTE,At):i.texImage2D(ut+te,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,At);return It}let it={};it[i.TEXTURE_2D]=q(i.TEXTURE_2D,i.TEXTURE_2D,1),it[i.TEXTURE_CUBE_MAP]=q(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),it[i.TEXTURE_2D_ARRAY]=q(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),it[i.TEXTURE_3D]=q(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),st(i.DEPTH_TEST),o.setFunc(eo),xe(!1),pe(yu),st(i.CULL_FACE),Ee(ur);function st(z){h[z]!==!0&&(i.enable(z),h[z]=!0)}function gt(z){h[z]!==!1&&(i.disable(z),h[z]=!1)}function Ut(z,ut){return u[z]!==ut?(i.bindFramebuffer(z,ut),u[z]=ut,z===i.DRAW_FRAMEBUFFER&&(u[i.FRAMEBUFFER]=ut),z===i.FRAMEBUFFER&&(u[i.DRAW_FRAMEBUFFER]=ut),!0):!1}function wt(z,ut){let at=g,Lt=!1;if(z){at=p.get(ut),at===void 0&&(at=[],p.set(ut,at));let At=z.textures;if(at.length!==At.length||at[0]!==i.COLOR_ATTACHMENT0){for(let It=0,te=At.length;It<te;It++)at[It]=i.COLOR_ATTACHMENT0+It;at.length=At.length,Lt=!0}}else at[0]!==i.BACK&&(at[0]=i.BACK,Lt=!0);Lt&&i.drawBuffers(at)}function ne(z){return x!==z?(i.useProgram(z),x=z,!0):!1}let se={[dr]:i.FUNC_ADD,[gp]:i.FUNC_SUBTRACT,[_p]:i.FUNC_REVERSE_SUBTRACT};se[xp]=i.MIN,se[yp]=i.MAX;let Kt={[vp]:i.ZERO,[Mp]:i.ONE,[Sp]:i.SRC_COLOR,[bu]:i.SRC_ALPHA,[Rp]:i.SRC_ALPHA_SATURATE,[Tp]:i.DST_COLOR,[wp]:i.DST_ALPHA,[bp]:i.ONE_MINUS_SRC_COLOR,[wu]:i.ONE_MINUS_SRC_ALPHA,[Ap]:i.ONE_MINUS_DST_COLOR,[Ep]:i.ONE_MINUS_DST_ALPHA,[Cp]:i.CONSTANT_COLOR,[Pp]:i.ONE_MINUS_CONSTANT_COLOR,[Ip]:i.CONSTANT_ALPHA,[Lp]:i.ONE_MINUS_CONSTANT_ALPHA};function Ee(z,ut,at,Lt,At,It,te,ae,xt,qt){if(z===ur){m===!0&&(gt(i.BLEND),m=!1);return}if(m===!1&&(st(i.BLEND),m=!0),z!==mp){if(z!==f||qt!==S){if((y!==dr||I!==dr)&&(i.blendEquation(i.FUNC_ADD),y=dr,I=dr),qt)switch(z){case po:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case vu:i.blendFunc(i.ONE,i.ONE);break;case Mu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Su:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ue("WebGLState: Invalid blending: ",z);break}else switch(z){case po:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case vu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Mu:ue("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Su:ue("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ue("WebGLState: Invalid blending: ",z);break}C=null,b=null,T=null,_=null,w.set(0,0,0),L=0,f=z,S=qt}return}At=At||ut,It=It||at,te=te||Lt,(ut!==y||At!==I)&&(i.blendEquationSeparate(se[ut],se[At]),y=ut,I=At),(at!==C||Lt!==b||It!==T||te!==_)&&(i.blendFuncSeparate(Kt[at],Kt[Lt],Kt[It],Kt[te]),C=at,b=Lt,T=It,_=te),(ae.equals(w)===!1||xt!==L)&&(i.blendColor(ae.r,ae.g,ae.b,xt),w.copy(ae),L=xt),f=z,S=!1}function Qt(z,ut){z.side===ji?gt(i.CULL_FACE):st(i.CULL_FACE);let at=z.side===Un;ut&&(at=!at),xe(at),z.blending===po&&z.transparent===!1?Ee(ur):Ee(z.blending,z.blendEquation,z.blendSrc,z.blendDst,z.blendEquationAlpha,z.blendSrcAlpha,z.blendDstAlpha,z.blendColor,z.blendAlpha,z.premultipliedAlpha),o.setFunc(z.depthFunc),o.setTest(z.depthTest),o.setMask(z.depthWrite),r.setMask(z.colorWrite);let Lt=z.stencilWrite;a.setTest(Lt),Lt&&(a.setMask(z.stencilWriteMask),a.setFunc(z.stencilFunc,z.stencilRef,z.stencilFuncMask),a.setOp(z.stencilFail,z.stencilZFail,z.stencilZPass)),lt(z.polygonOffset,z.polygonOffsetFactor,z.polygonOffsetUnits),z.alphaToCoverage===!0?st(i.SAMPLE_ALPHA_TO_COVERAGE):gt(i.SAMPLE_ALPHA_TO_COVERAGE)}function xe(z){P!==z&&(z?i.frontFace(i.CW):i.frontFace(i.CCW),P=z)}function pe(z){z!==dp?(st(i.CULL_FACE),z!==F&&(z===yu?i.cullFace(i.BACK):z===fp?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):gt(i.CULL_FACE),F=z}function Pe(z){z!==O&&(H&&i.lineWidth(z),O=z)}function lt(z,ut,at){z?(st(i.POLYGON_OFFSET_FILL),(D!==ut||V!==at)&&(D=ut,V=at,o.getReversed()&&(ut=-ut,at=-at),i.polygonOffset(ut,at))):gt(i.POLYGON_OFFSET_FILL)}function Tt(z){z?st(i.SCISSOR_TEST):gt(i.SCISSOR_TEST)}function Ot(z){z===void 0&&(z=i.TEXTURE0+$-1),Z!==z&&(i.activeTexture(z),Z=z)}function Jt(z,ut,at){at===void 0&&(Z===null?at=i.TEXTURE0+$-1:at=Z);let Lt=nt[at];Lt===void 0&&(Lt={type:void 0,texture:void 0},nt[at]=Lt),(Lt.type!==z||Lt.texture!==ut)&&(Z!==at&&(i.activeTexture(at),Z=at),i.bindTexture(z,ut||it[z]),Lt.type=z,Lt.texture=ut)}function k(){let z=nt[Z];z!==void 0&&z.type!==void 0&&(i.bindTexture(z.type,null),z.type=void 0,z.texture=void 0)}function _t(){try{i.compressedTexImage2D(...arguments)}catch(z){ue("WebGLState:",z)}}function Wt(){try{i.compressedTexImage3D(...arguments)}catch(z){ue("WebGLState:",z)}}function Ht(){try{i.texSubImage2D(...arguments)}catch(z){ue("WebGLState:",z)}}function St(){try{i.texSubImage3D(...arguments)}catch(z){ue("WebGLState:",z)}}function Ie(){try{i.compressedTexSubImage2D(...arguments)}catch(z){ue("WebGLState:",z)}}function jt(){try{i.compressedTexSubImage3D(...arguments)}catch(z){ue("WebGLState:",z)}}function ie(){try{i.texStorage2D(...arguments)}catch(z){ue("WebGLState:",z)}}function N(){try{i.texStorage3D(...arguments)}catch(z){ue("WebGLState:",z)}}function E(){try{i.texImage2D(...arguments)}catch(z){ue("WebGLState:",z)}}function J(){try{i.texImage3D(...arguments)}catch(z){ue("WebGLState:",z)}}function yt(z){return d[z]!==void 0?d[z]:i.getParameter(z)}function pt(z,ut){d[z]!==ut&&(i.pixelStorei(z,ut),d[z]=ut)}function Rt(z){et.equals(z)===!1&&(i.scissor(z.x,z.y,z.z,z.w),et.copy(z))}function Ct(z){Mt.equals(z)===!1&&(i.viewport(z.x,z.y,z.z,z.w),Mt.copy(z))}function ot(z,ut){let at=c.get(ut);at===void 0&&(at=new WeakMap,c.set(ut,at));let Lt=at.get(z);Lt===void 0&&(Lt=i.getUniformBlockIndex(ut,z.name),i.uniformBlockBinding(ut,Lt,Lt),at.set(z,Lt))}function ct(z,ut,at){let At=c.get(ut).get(z);l[At]!==at&&(i.bindBufferBase(i.UNIFORM_BUFFER,At,at),l[At]=at)}function Et(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},d={},Z=null,nt={},u={},l={},p=new WeakMap,g=[],x=null,m=!1,f=null,y=null,C=null,b=null,I=null,T=null,_=null,w=new ye(0,0,0),L=0,S=!1,P=null,F=null,O=null,D=null,V=null,et.set(0,0,i.canvas.width,i.canvas.height),Mt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:st,disable:gt,bindFramebuffer:Ut,drawBuffers:wt,useProgram:ne,setBlending:Ee,setMaterial:Qt,setFlipSided:xe,setCullFace:pe,setLineWidth:Pe,setPolygonOffset:lt,setScissorTest:Tt,activeTexture:Ot,bindTexture:Jt,unbindTexture:k,compressedTexImage2D:_t,compressedTexImage3D:Wt,texImage2D:E,texImage3D:J,pixelStorei:pt,getParameter:yt,updateUBOMapping:ot,uniformBlockBinding:ct,texStorage2D:ie,texStorage3D:N,texSubImage2D:Ht,texSubImage3D:St,compressedTexSubImage2D:Ie,compressedTexSubImage3D:jt,scissor:Rt,viewport:Ct,reset:Et}}function OS(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new ce,h=new WeakMap,d=new Set,u,p=new WeakMap,g=new Set,x=new FinalizationRegistry(N=>g.delete(N)),m=!1;try{m=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function f(N,E){return m?new OffscreenCanvas(N,E):na("canvas")}function y(N,E,J){let yt=1,pt=ie(N);if((pt.width>J||pt.height>J)&&(yt=J/Math.max(pt.width,pt.height)),yt<1)if(typeof HTMLImageElement<"u"&&N instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&N instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&N instanceof ImageBitmap||typeof VideoFrame<"u"&&N instanceof VideoFrame){let Rt=Math.floor(yt*pt.width),Ct=Math.floor(yt*pt.height);u===void 0&&(u=f(Rt,Ct));let ot=E?f(Rt,Ct):u;return ot.width=Rt,ot.height=Ct,ot.getContext("2d").drawImage(N,0,0,Rt,Ct),re("WebGLRenderer: Texture has been resized from ("+pt.width+"x"+pt.height+") to ("+Rt+"x"+Ct+")."),ot}else return"data"in N&&re("WebGLRenderer: Image in DataTexture is too big ("+pt.width+"x"+pt.height+")."),N;return N}function C(N){return N.generateMipmaps}function b(N){i.generateMipmap(N)}function I(N){return N.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:N.isWebGL3DRenderTarget?i.TEXTURE_3D:N.isWebGLArrayRenderTarget||N.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function T(N,E,J,yt,pt,Rt=!1){if(N!==null){if(i[N]!==void 0)return i[N];re("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+N+"'")}let Ct;yt&&(Ct=t.get("EXT_texture_norm16"),Ct||re("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let ot=E;if(E===i.RED&&(J===i.FLOAT&&(ot=i.R32F),J===i.HALF_FLOAT&&(ot=i.R16F),J===i.UNSIGNED_BYTE&&(ot=i.R8),J===i.UNSIGNED_SHORT&&Ct&&(ot=Ct.R16_EXT),J===i.SHORT&&Ct&&(ot=Ct.R16_SNORM_EXT)),E===i.RED_INTEGER&&(J===i.UNSIGNED_BYTE&&(ot=i.R8UI),J===i.UNSIGNED_SHORT&&(ot=i.R16UI),J===i.UNSIGNED_INT&&(ot=i.R32UI),J===i.BYTE&&(ot=i.R8I),J===i.SHORT&&(ot=i.R16I),J===i.INT&&(ot=i.R32I)),E===i.RG&&(J===i.FLOAT&&(ot=i.RG32F),J===i.HALF_FLOAT&&(ot=i.RG16F),J===i.UNSIGNED_BYTE&&(ot=i.RG8),J===i.UNSIGNED_SHORT&&Ct&&(ot=Ct.RG16_EXT),J===i.SHORT&&Ct&&(ot=Ct.RG16_SNORM_EXT)),E===i.RG_INTEGER&&(J===i.UNSIGNED_BYTE&&(ot=i.RG8UI),J===i.UNSIGNED_SHORT&&(ot=i.RG16UI),J===i.UNSIGNED_INT&&(ot=i.RG32UI),J===i.BYTE&&(ot=i.RG8I),J===i.SHORT&&(ot=i.RG16I),J===i.INT&&(ot=i.RG32I)),E===i.RGB_INTEGER&&(J===i.UNSIGNED_BYTE&&(ot=i.RGB8UI),J===i.UNSIGNED_SHORT&&(ot=i.RGB16UI),J===i.UNSIGNED_INT&&(ot=i.RGB32UI),J===i.BYTE&&(ot=i.RGB8I),J===i.SHORT&&(ot=i.RGB16I),J===i.INT&&(ot=i.RGB32I)),E===i.RGBA_INTEGER&&(J===i.UNSIGNED_BYTE&&(ot=i.RGBA8UI),J===i.UNSIGNED_SHORT&&(ot=i.RGBA16UI),J===i.UNSIGNED_INT&&(ot=i.RGBA32UI),J===i.BYTE&&(ot=i.RGBA8I),J===i.SHORT&&(ot=i.RGBA16I),J===i.INT&&(ot=i.RGBA32I)),E===i.RGB&&(J===i.UNSIGNED_SHORT&&Ct&&(ot=Ct.RGB16_EXT),J===i.SHORT&&Ct&&(ot=Ct.RGB16_SNORM_EXT),J===i.UNSIGNED_INT_5_9_9_9_REV&&(ot=i.RGB9_E5),J===i.UNSIGNED_INT_10F_11F_11F_REV&&(ot=i.R11F_G11F_B10F)),E===i.RGBA){let ct=Rt?ea:Re.getTransfer(pt);J===i.FLOAT&&(ot=i.RGBA32F),J===i.HALF_FLOAT&&(ot=i.RGBA16F),J===i.UNSIGNED_BYTE&&(ot=ct===Be?i.SRGB8_ALPHA8:i.RGBA8),J===i.UNSIGNED_SHORT&&Ct&&(ot=Ct.RGBA16_EXT),J===i.SHORT&&Ct&&(ot=Ct.RGBA16_SNORM_EXT),J===i.UNSIGNED_SHORT_4_4_4_4&&(ot=i.RGBA4),J===i.UNSIGNED_SHORT_5_5_5_1&&(ot=i.RGB5_A1)}return(ot===i.R16F||ot===i.R32F||ot===i.RG16F||ot===i.RG32F||ot===i.RGBA16F||ot===i.RGBA32F)&&t.get("EXT_color_buffer_float"),ot}function _(N,E){let J;return N?E===null||E===Pi||E===pr?J=i.DEPTH24_STENCIL8:E===xi?J=i.DEPTH32F_STENCIL8:E===go&&(J=i.DEPTH24_STENCIL8,re("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):E===null||E===Pi||E===pr?J=i.DEPTH_COMPONENT24:E===xi?J=i.DEPTH_COMPONENT32F:E===go&&(J=i.DEPTH_COMPONENT16),J}function w(N,E){return C(N)===!0||N.isFramebufferTexture&&N.minFilter!==Pn&&N.minFilter!==Yn?Math.log2(Math.max(E.width,E.height))+1:N.mipmaps.length>0?N.mipmaps.length:N.isCompressedTexture&&Array.isArray(N.image)?E.mipmaps.length:1}function L(N){let E=new WeakRef(N);n.get(N).__ref=E,g.add(E),x.register(N,E,E)}function S(N){let E=n.get(N).__ref;E!==void 0&&(g.delete(E),x.unregister(E))}function P(N){O(N.target)}function F(N){D(N.target)}function O(N){N.removeEventListener("dispose",P),S(N),$(N),N.isVideoTexture&&h.delete(N),N.isHTMLTexture&&d.delete(N)}function D(N){N.removeEventListener("dispose",F),S(N),K(N)}function V(){for(let N of g){let E=N.deref();E!==void 0&&(E.isRenderTarget===!0?D(E):O(E))}g.clear(),d.clear()}function $(N){let E=n.get(N);if(E.__webglInit===void 0)return;let J=N.source,yt=p.get(J);if(yt){let pt=yt[E.__cacheKey];pt.usedTimes--,pt.usedTimes===0&&H(N),Object.keys(yt).length===0&&p.delete(J)}n.remove(N)}function H(N){let E=n.get(N);i.deleteTexture(E.__webglTexture);let J=N.source,yt=p.get(J);delete yt[E.__cacheKey],o.memory.textures--}function K(N){let E=n.get(N);E.__depthDisposeCallback&&E.__depthDisposeCallback();let J=N.depthTexture;if(J&&J.renderTarget===N&&O(J),N.isWebGLCubeRenderTarget)for(let pt=0;pt<6;pt++){if(Array.isArray(E.__webglFramebuffer[pt]))for(let Rt=0;Rt<E.__webglFramebuffer[pt].length;Rt++)i.deleteFramebuffer(E.__webglFramebuffer[pt][Rt]);else i.deleteFramebuffer(E.__webglFramebuffer[pt]);E.__webglDepthbuffer&&i.deleteRenderbuffer(E.__webglDepthbuffer[pt])}else{if(Array.isArray(E.__webglFramebuffer))for(let pt=0;pt<E.__webglFramebuffer.length;pt++)i.deleteFramebuffer(E.__webglFramebuffer[pt]);else i.deleteFramebuffer(E.__webglFramebuffer);if(E.__webglDepthbuffer&&i.deleteRenderbuffer(E.__webglDepthbuffer),E.__webglMultisampledFramebuffer&&i.deleteFramebuffer(E.__webglMultisampledFramebuffer),E.__webglColorRenderbuffer)for(let pt=0;pt<E.__webglColorRenderbuffer.length;pt++)E.__webglColorRenderbuffer[pt]&&i.deleteRenderbuffer(E.__webglColorRenderbuffer[pt]);E.__webglDepthRenderbuffer&&i.deleteRenderbuffer(E.__webglDepthRenderbuffer)}let yt=N.textures;for(let pt=0,Rt=yt.length;pt<Rt;pt++){let Ct=n.get(yt[pt]);Ct.__webglTexture&&(i.deleteTexture(Ct.__webglTexture),o.memory.textures--),n.remove(yt[pt])}n.remove(N)}let X=0;function Z(){X=0}function nt(){return X}function dt(N){X=N}function ft(){let N=X;return N>=s.maxTextures&&re("WebGLTextures: Trying to use "+(N+1)+" texture units while this GPU supports only "+s.maxTextures),X+=1,N}function et(N){let E=[];return E.push(N.wrapS),E.push(N.wrapT),E.push(N.wrapR||0),E.push(N.magFilter),E.push(N.minFilter),E.push(N.anisotropy),E.push(N.internalFormat),E.push(N.format),E.push(N.type),E.push(N.generateMipmaps),E.push(N.mipmapsAutoUpdate),E.push(N.premultiplyAlpha),E.push(N.flipY),E.push(N.unpackAlignment),E.push(N.colorSpace),E.join()}function Mt(N,E){let J=n.get(N);if(N.isVideoTexture&&Ie(N),N.isRenderTargetTexture===!1&&N.isExternalTexture!==!0&&N.version>0&&J.__version!==N.version){let yt=N.image;if(yt===null)re("WebGLRenderer: Texture marked for update but no image data found.");else if(yt.complete===!1)re("WebGLRenderer: Texture marked for update but image is incomplete");else{Qt(J,N,E);return}}else N.isExternalTexture&&(J.__webglTexture=N.sourceTexture?N.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,J.__webglTexture,i.TEXTURE0+E)}function q(N,E){let J=n.get(N);if(N.isRenderTargetTexture===!1&&N.version>0&&J.__version!==N.version){Qt(J,N,E);return}else N.isExternalTexture&&(J.__webglTexture=N.sourceTexture?N.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,J.__webglTexture,i.TEXTURE0+E)}function it(N,E){let J=n.get(N);if(N.isRenderTargetTexture===!1&&N.version>0&&J.__version!==N.version){Qt(J,N,E);return}e.bindTexture(i.TEXTURE_3D,J.__webglTexture,i.TEXTURE0+E)}function st(N,E){let J=n.get(N);if(N.version>0&&J.__version!==N.version){xe(J,N,E);return}e.bindTexture(i.TEXTURE_CUBE_MAP,J.__webglTexture,i.TEXTURE0+E)}let gt={[Nl]:i.REPEAT,[qi]:i.CLAMP_TO_EDGE,[Ul]:i.MIRRORED_REPEAT},Ut={[Pn]:i.NEAREST,[Up]:i.NEAREST_MIPMAP_NEAREST,[Ta]:i.NEAREST_MIPMAP_LINEAR,[Yn]:i.LINEAR,[lc]:i.LINEAR_MIPMAP_NEAREST,[bs]:i.LINEAR_MIPMAP_LINEAR},wt={[kp]:i.NEVER,[Vu]:i.ALWAYS,[zp]:i.LESS,[ku]:i.LEQUAL,[Vp]:i.EQUAL,[zu]:i.GEQUAL,[Hp]:i.GREATER,[Gp]:i.NOTEQUAL};function ne(N,E){if(E.type===xi&&t.has("OES_texture_float_linear")===!1&&(E.magFilter===Yn||E.magFilter===lc||E.magFilter===Ta||E.magFilter===bs||E.minFilter===Yn||E.minFilter===lc||E.minFilter===Ta||E.minFilter===bs)&&re("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(N,i.TEXTURE_WRAP_S,gt[E.wrapS]),i.texParameteri(N,i.TEXTURE_WRAP_T,gt[E.wrapT]),(N===i.TEXTURE_3D||N===i.TEXTURE_2D_ARRAY)&&i.texParameteri(N,i.TEXTURE_WRAP_R,gt[E.wrapR]),i.texParameteri(N,i.TEXTURE_MAG_FILTER,Ut[E.magFilter]),i.texParameteri(N,i.TEXTURE_MIN_FILTER,Ut[E.minFilter]),E.compareFunction&&(i.texParameteri(N,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(N,i.TEXTURE_COMPARE_FUNC,wt[E.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(E.magFilter===Pn||E.minFilter!==Ta&&E.minFilter!==bs||E.type===xi&&t.has("OES_texture_float_linear")===!1)return;if(E.anisotropy>1||n.get(E).__currentAnisotropy){let J=t.get("EXT_texture_filter_anisotropic");i.texParameterf(N,J.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(E.anisotropy,s.getMaxAnisotropy())),n.get(E).__currentAnisotropy=E.anisotropy}}}function se(N,E){let J=!1;N.__webglInit===void 0&&(N.__webglInit=!0,E.addEventListener("dispose",P),L(E));let yt=E.source,pt=p.get(yt);pt===void 0&&(pt={},p.set(yt,pt));let Rt=et(E);if(Rt!==N.__cacheKey){pt[Rt]===void 0&&(pt[Rt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,J=!0),pt[Rt].usedTimes++;let Ct=pt[N.__cacheKey];Ct!==void 0&&(pt[N.__cacheKey].usedTimes--,Ct.usedTimes===0&&H(E)),N.__cacheKey=Rt,N.__webglTexture=pt[Rt].texture}return J}function Kt(N,E,J){return Math.floor(Math.floor(N/J)/E)}function Ee(N,E,J,yt){let Rt=N.updateRanges;if(Rt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,E.width,E.height,J,yt,E.data);else{Rt.sort((z,ut)=>z.start-ut.start);let Ct=0;for(let z=1;z<Rt.length;z++){let ut=Rt[Ct],at=Rt[z],Lt=ut.start+ut.count,At=Kt(at.start,E.width,4),It=Kt(ut.start,E.width,4);at.start<=Lt+1&&At===It&&Kt(at.start+at.count-1,E.width,4)===At?ut.count=Math.max(ut.count,at.start+at.count-ut.start):(++Ct,Rt[Ct]=at)}Rt.length=Ct+1;let ot=e.getParameter(i.UNPACK_ROW_LENGTH),ct=e.getParameter(i.UNPACK_SKIP_PIXELS),Et=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,E.width);for(let z=0,ut=Rt.length;z<ut;z++){let at=Rt[z],Lt=Math.floor(at.start/4),At=Math.ceil(at.count/4),It=Lt%E.width,te=Math.floor(Lt/E.width),ae=At,xt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,It),e.pixelStorei(i.UNPACK_SKIP_ROWS,te),e.texSubImage2D(i.TEXTURE_2D,0,It,te,ae,xt,J,yt,E.data)}N.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,ot),e.pixelStorei(i.UNPACK_SKIP_PIXELS,ct),e.pixelStorei(i.UNPACK_SKIP_ROWS,Et)}}function Qt(N,E,J){let yt=i.TEXTURE_2D;(E.isDataArrayTexture||E.isCompressedArrayTexture)&&(yt=i.TEXTURE_2D_ARRAY),E.isData3DTexture&&(yt=i.TEXTURE_3D);let pt=se(N,E),Rt=E.source;e.bindTexture(yt,N.__webglTexture,i.TEXTURE0+J);let Ct=n.get(Rt);if(Rt.version!==Ct.__version||pt===!0){if(e.activeTexture(i.TEXTURE0+J),(typeof ImageBitmap<"u"&&E.image instanceof ImageBitmap)===!1){let xt=Re.getPrimaries(Re.workingColorSpace),qt=E.colorSpace===Es?null:Re.getPrimaries(E.colorSpace),le=E.colorSpace===Es||xt===qt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,E.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,E.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,le)}e.pixelStorei(i.UNPACK_ALIGNMENT,E.unpackAlignment);let ct=y(E.image,!1,s.maxTextureSize);ct=jt(E,ct);let Et=r.convert(E.format,E.colorSpace),z=r.convert(E.type),ut=T(E.internalFormat,Et,z,E.normalized,E.colorSpace,E.isVideoTexture);ne(yt,E);let at,Lt=E.mipmaps,At=E.isVideoTexture!==!0,It=Ct.__version===void 0||pt===!0,te=Rt.dataReady,ae=w(E,ct);if(E.isDepthTexture)ut=_(E.format===ws,E.type),It&&(At?e.texStorage2D(i.TEXTURE_2D,1,ut,ct.width,ct.height):e.texImage2D(i.TEXTURE_2D,0,ut,ct.width,ct.height,0,Et,z,null));else if(E.isDataTexture)if(Lt.length>0){At&&It&&e.texStorage2D(i.TEXTURE_2D,ae,ut,Lt[0].width,Lt[0].height);for(let xt=0,qt=Lt.length;xt<qt;xt++)at=Lt[xt],At?te&&e.texSubImage2D(i.TEXTURE_2D,xt,0,0,at.width,at.height,Et,z,at.data):e.texImage2D(i.TEXTURE_2D,xt,ut,at.width,at.height,0,Et,z,at.data);E.generateMipmaps=!1}else At?(It&&e.texStorage2D(i.TEXTURE_2D,ae,ut,ct.width,ct.height),te&&Ee(E,ct,Et,z)):e.texImage2D(i.TEXTURE_2D,0,ut,ct.width,ct.height,0,Et,z,ct.data);else if(E.isCompressedTexture)if(E.isCompressedArrayTexture){At&&It&&e.texStorage3D(i.TEXTURE_2D_ARRAY,ae,ut,Lt[0].width,Lt[0].height,ct.depth);for(let xt=0,qt=Lt.length;xt<qt;xt++)if(at=Lt[xt],E.format!==Li)if(Et!==null)if(At){if(te)if(E.layerUpdates.size>0){let le=Ku(at.width,at.height,E.format,E.type);for(let Ft of E.layerUpdates){let ge=at.data.subarray(Ft*le/at.data.BYTES_PER_ELEMENT,(Ft+1)*le/at.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,xt,0,0,Ft,at.width,at.height,1,Et,ge)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,xt,0,0,0,at.width,at.height,ct.depth,Et,at.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,xt,ut,at.width,at.height,ct.depth,0,at.data,0,0);else re("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else At?te&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,xt,0,0,0,at.width,at.height,ct.depth,Et,z,at.data):e.texImage3D(i.TEXTURE_2D_ARRAY,xt,ut,at.width,at.height,ct.depth,0,Et,z,at.data);E.layerUpdates.size>0&&E.clearLayerUpdates()}else{At&&It&&e.texStorage2D(i.TEXTURE_2D,ae,ut,Lt[0].width,Lt[0].height);for(let xt=0,qt=Lt.length;xt<qt;xt++)at=Lt[xt],E.format!==Li?Et!==null?At?te&&e.compressedTexSubImage2D(i.TEXTURE_2D,xt,0,0,at.width,at.height,Et,at.data):e.compressedTexImage2D(i.TEXTURE_2D,xt,ut,at.width,at.height,0,at.data):re("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):At?te&&e.texSubImage2D(i.TEXTURE_2D,xt,0,0,at.width,at.height,Et,z,at.data):e.texImage2D(i.TEXTURE_2D,xt,ut,at.width,at.height,0,Et,z,at.data)}else if(E.isDataArrayTexture)if(At){if(It&&e.texStorage3D(i.TEXTURE_2D_ARRAY,ae,ut,ct.width,ct.height,ct.depth),te)if(E.layerUpdates.size>0){let xt=Ku(ct.width,ct.height,E.format,E.type);for(let qt of E.layerUpdates){let le=ct.data.subarray(qt*xt/ct.data.BYTES_PER_ELEMENT,(qt+1)*xt/ct.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,qt,ct.width,ct.height,1,Et,z,le)}E.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,ct.width,ct.height,ct.depth,Et,z,ct.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,ut,ct.width,ct.height,ct.depth,0,Et,z,ct.data);else if(E.isData3DTexture)At?(It&&e.texStorage3D(i.TEXTURE_3D,ae,ut,ct.width,ct.height,ct.depth),te&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,ct.width,ct.height,ct.depth,Et,z,ct.data)):e.texImage3D(i.TEXTURE_3D,0,ut,ct.width,ct.height,ct.depth,0,Et,z,ct.data);else if(E.isFramebufferTexture){if(It)if(At)e.texStorage2D(i.TEXTURE_2D,ae,ut,ct.width,ct.height);else{let xt=ct.width,qt=ct.height;for(let le=0;le<ae;le++)e.texImage2D(i.TEXTURE_2D,le,ut,xt,qt,0,Et,z,null),xt>>=1,qt>>=1}}else if(E.isHTMLTexture){if("texElementImage2D"in i){let xt=i.canvas;if(xt.hasAttribute("layoutsubtree")||xt.setAttribute("layoutsubtree","true"),ct.parentNode!==xt){xt.appendChild(ct),d.add(E),xt.onpaint=qt=>{let le=qt.changedElements;for(let Ft of d)le.includes(Ft.image)&&(Ft.needsUpdate=!0)},xt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,ct);else{let le=i.RGBA,Ft=i.RGBA,ge=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,le,Ft,ge,ct)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Lt.length>0){if(At&&It){let xt=ie(Lt[0]);e.texStorage2D(i.TEXTURE_2D,ae,ut,xt.width,xt.height)}for(let xt=0,qt=Lt.length;xt<qt;xt++)at=Lt[xt],At?te&&e.texSubImage2D(i.TEXTURE_2D,xt,0,0,Et,z,at):e.texImage2D(i.TEXTURE_2D,xt,ut,Et,z,at);E.generateMipmaps=!1}else if(At){if(It){let xt=ie(ct);e.texStorage2D(i.TEXTURE_2D,ae,ut,xt.width,xt.height)}te&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,Et,z,ct)}else e.texImage2D(i.TEXTURE_2D,0,ut,Et,z,ct);C(E)&&E.mipmapsAutoUpdate===!0&&b(yt),Ct.__version=Rt.version,E.onUpdate&&E.onUpdate(E)}N.__version=E.version}function xe(N,E,J){if(E.image.length!==6)return;let yt=se(N,E),pt=E.source;e.bindTexture(i.TEXTURE_CUBE_MAP,N.__webglTexture,i.TEXTURE0+J);let Rt=n.get(pt);if(pt.version!==Rt.__version||yt===!0){e.activeTexture(i.TEXTURE0+J);let Ct=Re.getPrimaries(Re.workingColorSpace),ot=E.colorSpace===Es?null:Re.getPrimaries(E.colorSpace),ct=E.colorSpace===Es||Ct===ot?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,E.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,E.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,E.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,ct);let Et=E.isCompressedTexture||E.image[0].isCompressedTexture,z=E.image[0]&&E.image[0].isDataTexture,ut=[];for(let Ft=0;Ft<6;Ft++)!Et&&!z?ut[Ft]=y(E.image[Ft],!0,s.maxCubemapSize):ut[Ft]=z?E.image[Ft].image:E.image[Ft],ut[Ft]=jt(E,ut[Ft]);let at=ut[0],Lt=r.convert(E.format,E.colorSpace),At=r.convert(E.type),It=T(E.internalFormat,Lt,At,E.normalized,E.colorSpace),te=E.isVideoTexture!==!0,ae=Rt.__version===void 0||yt===!0,xt=pt.dataReady,qt=w(E,at);ne(i.TEXTURE_CUBE_MAP,E);let le;if(E.isDepthTexture){if(It=_(E.format===ws,E.type),ae)if(te)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,It,at.width,at.height);else for(let Ft=0;Ft<6;Ft++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,0,It,at.width,at.height,0,Lt,At,null)}else if(Et){te&&ae&&e.texStorage2D(i.TEXTURE_CUBE_MAP,qt,It,at.width,at.height);for(let Ft=0;Ft<6;Ft++){le=ut[Ft].mipmaps;for(let ge=0;ge<le.length;ge++){let qe=le[ge];E.format!==Li?Lt!==null?te?xt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge,0,0,qe.width,qe.height,Lt,qe.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge,It,qe.width,qe.height,0,qe.data):re("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):te?xt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge,0,0,qe.width,qe.height,Lt,At,qe.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge,It,qe.width,qe.height,0,Lt,At,qe.data)}}}else{if(le=E.mipmaps,te&&ae){le.length>0&&qt++;let Ft=ie(ut[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,qt,It,Ft.width,Ft.height)}for(let Ft=0;Ft<6;Ft++)if(z){te?xt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,0,0,0,ut[Ft].width,ut[Ft].height,Lt,At,ut[Ft].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,0,It,ut[Ft].width,ut[Ft].height,0,Lt,At,ut[Ft].data);for(let ge=0;ge<le.length;ge++){let Vn=le[ge].image[Ft].image;te?xt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge+1,0,0,Vn.width,Vn.height,Lt,At,Vn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge+1,It,Vn.width,Vn.height,0,Lt,At,Vn.data)}}else{te?xt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,0,0,0,Lt,At,ut[Ft]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,0,It,Lt,At,ut[Ft]);for(let ge=0;ge<le.length;ge++){let qe=le[ge];te?xt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge+1,0,0,Lt,At,qe.image[Ft]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ft,ge+1,It,Lt,At,qe.image[Ft])}}}C(E)&&E.mipmapsAutoUpdate===!0&&b(i.TEXTURE_CUBE_MAP),Rt.__version=pt.version,E.onUpdate&&E.onUpdate(E)}N.__version=E.version}function pe(N,E,J,yt,pt,Rt){let Ct=r.convert(J.format,J.colorSpace),ot=r.convert(J.type),ct=T(J.internalFormat,Ct,ot,J.normalized,J.colorSpace),Et=n.get(E),z=n.get(J);if(z.__renderTarget=E,!Et.__hasExternalTextures){let ut=Math.max(1,E.width>>Rt),at=Math.max(1,E.height>>Rt);pt===i.TEXTURE_3D||pt===i.TEXTURE_2D_ARRAY?e.texImage3D(pt,Rt,ct,ut,at,E.depth,0,Ct,ot,null):e.texImage2D(pt,Rt,ct,ut,at,0,Ct,ot,null)}e.bindFramebuffer(i.FRAMEBUFFER,N),St(E)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,pt,z.__webglTexture,0,Ht(E)):(pt===i.TEXTURE_2D||pt>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&pt<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,yt,pt,z.__webglTexture,Rt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function Pe(N,E,J){if(i.bindRenderbuffer(i.RENDERBUFFER,N),E.depthBuffer){let yt=E.depthTexture,pt=yt&&yt.isDepthTexture?yt.type:null,Rt=_(E.stencilBuffer,pt),Ct=E.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;St(E)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,Ht(E),Rt,E.width,E.height):J?i.renderbufferStorageMultisample(i.RENDERBUFFER,Ht(E),Rt,E.width,E.height):i.renderbufferStorage(i.RENDERBUFFER,Rt,E.width,E.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,Ct,i.RENDERBUFFER,N)}else{let yt=E.textures;for(let pt=0;pt<yt.length;pt++){let Rt=yt[pt],Ct=r.convert(Rt.format,Rt.colorSpace),ot=r.convert(Rt.type),ct=T(Rt.internalFormat,Ct,ot,Rt.normalized,Rt.colorSpace);St(E)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,Ht(E),ct,E.width,E.height):J?i.renderbufferStorageMultisample(i.RENDERBUFFER,Ht(E),ct,E.width,E.height):i.renderbufferStorage(i.RENDERBUFFER,ct,E.width,E.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function lt(N,E,J){let yt=E.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,N),!(E.depthTexture&&E.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let pt=n.get(E.depthTexture);pt.__renderTarget=E;let Rt=yt?E.depthTexture.image[0]:E.depthTexture.image;(!pt.__webglTexture||Rt.width!==E.width||Rt.height!==E.height)&&(Rt.width=E.width,Rt.height=E.height,E.depthTexture.needsUpdate=!0),yt?st(E.depthTexture,0):Mt(E.depthTexture,0);let Ct=pt.__webglTexture,ot=Ht(E),ct=yt?i.TEXTURE_CUBE_MAP_POSITIVE_X+J:i.TEXTURE_2D,Et=E.depthTexture.format===ws?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(E.depthTexture.format===_s)St(E)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Et,ct,Ct,0,ot):i.framebufferTexture2D(i.FRAMEBUFFER,Et,ct,Ct,0);else if(E.depthTexture.format===ws)St(E)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Et,ct,Ct,0,ot):i.framebufferTexture2D(i.FRAMEBUFFER,Et,ct,Ct,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function Tt(N){let E=n.get(N),J=N.isWebGLCubeRenderTarget===!0;if(E.__boundDepthTexture!==N.depthTexture){let yt=N.depthTexture;if(E.__depthDisposeCallback&&E.__depthDisposeCallback(),yt){let pt=()=>{delete E.__boundDepthTexture,delete E.__depthDisposeCallback,yt.removeEventListener("dispose",pt)};yt.addEventListener("dispose",pt),E.__depthDisposeCallback=pt}E.__boundDepthTexture=yt}if(N.depthTexture&&!E.__autoAllocateDepthBuffer)if(J)for(let yt=0;yt<6;yt++)lt(E.__webglFramebuffer[yt],N,yt);else N.texture.mipmaps.length>0?lt(E.__webglFramebuffer[0],N,0):lt(E.__webglFramebuffer,N,0);else if(J){E.__webglDepthbuffer=[];for(let yt=0;yt<6;yt++)if(e.bindFramebuffer(i.FRAMEBUFFER,E.__webglFramebuffer[yt]),E.__webglDepthbuffer[yt]===void 0)E.__webglDepthbuffer[yt]=i.createRenderbuffer(),Pe(E.__webglDepthbuffer[yt],N,!1);else{let pt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Rt=E.__webglDepthbuffer[yt];i.bindRenderbuffer(i.RENDERBUFFER,Rt),i.framebufferRenderbuffer(i.FRAMEBUFFER,pt,i.RENDERBUFFER,Rt)}}else if(N.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,E.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,E.__webglFramebuffer),E.__webglDepthbuffer===void 0)E.__webglDepthbuffer=i.createRenderbuffer(),Pe(E.__webglDepthbuffer,N,!1);else{let pt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Rt=E.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,Rt),i.framebufferRenderbuffer(i.FRAMEBUFFER,pt,i.RENDERBUFFER,Rt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Ot(N,E,J){let yt=n.get(N);E!==void 0&&pe(yt.__webglFramebuffer,N,N.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),J!==void 0&&Tt(N)}function Jt(N){let E=N.texture,J=n.get(N),yt=n.get(E);N.addEventListener("dispose",F),L(N);let pt=N.textures,Rt=N.isWebGLCubeRenderTarget===!0,Ct=pt.length>1;if(Ct||(yt.__webglTexture===void 0&&(yt.__webglTexture=i.createTexture()),yt.__version=E.version,o.memory.textures++),Rt){J.__webglFramebuffer=[];for(let ot=0;ot<6;ot++)if(E.mipmaps.length>0){J.__webglFramebuffer[ot]=[];for(let ct=0;ct<E.mipmaps.length;ct++)J.__webglFramebuffer[ot][ct]=i.createFramebuffer()}else J.__webglFramebuffer[ot]=i.createFramebuffer()}else{if(E.mipmaps.length>0){J.__webglFramebuffer=[];for(let ot=0;ot<E.mipmaps.length;ot++)J.__webglFramebuffer[ot]=i.createFramebuffer()}else J.__webglFramebuffer=i.createFramebuffer();if(Ct)for(let ot=0,ct=pt.length;ot<ct;ot++){let Et=n.get(pt[ot]);Et.__webglTexture===void 0&&(Et.__webglTexture=i.createTexture(),o.memory.textures++)}if(N.samples>0&&St(N)===!1){J.__webglMultisampledFramebuffer=i.createFramebuffer(),J.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,J.__webglMultisampledFramebuffer);for(let ot=0;ot<pt.length;ot++){let ct=pt[ot];J.__webglColorRenderbuffer[ot]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,J.__webglColorRenderbuffer[ot]);let Et=r.convert(ct.format,ct.colorSpace),z=r.convert(ct.type),ut=T(ct.internalFormat,Et,z,ct.normalized,ct.colorSpace,N.isXRRenderTarget===!0),at=Ht(N);i.renderbufferStorageMultisample(i.RENDERBUFFER,at,ut,N.width,N.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+ot,i.RENDERBUFFER,J.__webglColorRenderbuffer[ot])}i.bindRenderbuffer(i.RENDERBUFFER,null),N.depthBuffer&&(J.__webglDepthRenderbuffer=i.createRenderbuffer(),Pe(J.__webglDepthRenderbuffer,N,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(Rt){e.bindTexture(i.TEXTURE_CUBE_MAP,yt.__webglTexture),ne(i.TEXTURE_CUBE_MAP,E);for(let ot=0;ot<6;ot++)if(E.mipmaps.length>0)for(let ct=0;ct<E.mipmaps.length;ct++)pe(J.__webglFramebuffer[ot][ct],N,E,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+ot,ct);else pe(J.__webglFramebuffer[ot],N,E,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+ot,0);C(E)?b(i.TEXTURE_CUBE_MAP):E.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,E.mipmaps.length-1),e.unbindTexture()}else if(Ct){for(let ot=0,ct=pt.length;ot<ct;ot++){let Et=pt[ot],z=n.get(Et),ut=i.TEXTURE_2D;(N.isWebGL3DRenderTarget||N.isWebGLArrayRenderTarget)&&(ut=N.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(ut,z.__webglTexture),ne(ut,Et),pe(J.__webglFramebuffer,N,Et,i.COLOR_ATTACHMENT0+ot,ut,0),C(Et)&&b(ut)}e.unbindTexture()}else{let ot=i.TEXTURE_2D;if((N.isWebGL3DRenderTarget||N.isWebGLArrayRenderTarget)&&(ot=N.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(ot,yt.__webglTexture),ne(ot,E),E.mipmaps.length>0)for(let ct=0;ct<E.mipmaps.length;ct++)pe(J.__webglFramebuffer[ct],N,E,i.COLOR_ATTACHMENT0,ot,ct);else pe(J.__webglFramebuffer,N,E,i.COLOR_ATTACHMENT0,ot,0);C(E)?b(ot):E.mipmaps.length>0&&i.texParameteri(ot,i.TEXTURE_MAX_LEVEL,E.mipmaps.length-1),e.unbindTexture()}N.depthBuffer&&Tt(N)}function k(N){let E=N.textures;for(let J=0,yt=E.length;J<yt;J++){let pt=E[J];if(C(pt)&&pt.mipmapsAutoUpdate===!0){let Rt=I(N),Ct=n.get(pt).__webglTexture;e.bindTexture(Rt,Ct),b(Rt),e.unbindTexture()}}}let _t=[];function Wt(N){if(N.samples>0){if(St(N)===!1){let E=N.textures,J=N.width,yt=N.height,pt=i.COLOR_BUFFER_BIT,Rt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Ct=n.get(N),ot=E.length>1;if(ot)for(let Et=0;Et<E.length;Et++)e.bindFramebuffer(i.FRAMEBUFFER,Ct.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,Ct.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,Ct.__webglMultisampledFramebuffer),N.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Ct.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Ct.__webglFramebuffer);for(let Et=0;Et<E.length;Et++){if(N.resolveDepthBuffer&&(N.depthBuffer&&(pt|=i.DEPTH_BUFFER_BIT),N.stencilBuffer&&N.resolveStencilBuffer&&(pt|=i.STENCIL_BUFFER_BIT)),ot){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,Ct.__webglColorRenderbuffer[Et]);let z=n.get(E[Et]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,z,0)}i.blitFramebuffer(0,0,J,yt,0,0,J,yt,pt,i.NEAREST),l===!0&&(_t.length=0,_t.push(i.COLOR_ATTACHMENT0+Et),N.depthBuffer&&N.storeMultisampledDepthBuffer===!1&&_t.push(Rt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,_t))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),ot)for(let Et=0;Et<E.length;Et++){e.bindFramebuffer(i.FRAMEBUFFER,Ct.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.RENDERBUFFER,Ct.__webglColorRenderbuffer[Et]);let z=n.get(E[Et]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,Ct.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.TEXTURE_2D,z,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Ct.__webglMultisampledFramebuffer)}else if(N.depthBuffer&&N.storeMultisampledDepthBuffer===!1&&l){let E=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[E])}}}function Ht(N){return Math.min(s.maxSamples,N.samples)}function St(N){let E=n.get(N);return N.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&E.__useRenderToTexture!==!1}function Ie(N){let E=o.render.frame;h.get(N)!==E&&(h.set(N,E),N.update())}function jt(N,E){let J=N.colorSpace,yt=N.format,pt=N.type;return N.isCompressedTexture===!0||N.isVideoTexture===!0||J!==ta&&J!==Es&&(Re.getTransfer(J)===Be?(yt!==Li||pt!==jn)&&re("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ue("WebGLTextures: Unsupported texture color space:",J)),E}function ie(N){return typeof HTMLImageElement<"u"&&N instanceof HTMLImageElement?(c.width=N.naturalWidth||N.width,c.height=N.naturalHeight||N.height):typeof VideoFrame<"u"&&N instanceof VideoFrame?(c.width=N.displayWidth,c.height=N.displayHeight):(c.width=N.width,c.height=N.height),c}this.allocateTextureUnit=ft,this.resetTextureUnits=Z,this.getTextureUnits=nt,this.setTextureUnits=dt,this.setTexture2D=Mt,this.setTexture2DArray=q,this.setTexture3D=it,this.setTextureCube=st,this.rebindTextures=Ot,this.setupRenderTarget=Jt,this.updateRenderTargetMipmap=k,this.updateMultisampleRenderTarget=Wt,this.setupDepthRenderbuffer=Tt,this.setupFrameBufferTexture=pe,this.useMultisampledRTT=St,this.dispose=V}function BS(i,t){function e(n,s=Es){let r,o=Re.getTransfer(s);if(n===jn)return i.UNSIGNED_BYTE;if(n===hc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===uc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Uu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Fu)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===Du)return i.BYTE;if(n===Nu)return i.SHORT;if(n===go)return i.UNSIGNED_SHORT;if(n===cc)return i.INT;if(n===Pi)return i.UNSIGNED_INT;if(n===xi)return i.FLOAT;if(n===Ii)return i.HALF_FLOAT;if(n===Ou)return i.ALPHA;if(n===Bu)return i.RGB;if(n===Li)return i.RGBA;if(n===_s)return i.DEPTH_COMPONENT;if(n===ws)return i.DEPTH_STENCIL;if(n===dc)return i.RED;if(n===fc)return i.RED_INTEGER;if(n===qs)return i.RG;if(n===pc)return i.RG_INTEGER;if(n===mc)return i.RGBA_INTEGER;if(n===Aa||n===Ra||n===Ca||n===Pa)if(o===Be)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Aa)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Ra)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Ca)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Pa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Aa)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Ra)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Ca)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Pa)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===gc||n===_c||n===xc||n===yc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===gc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===_c)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===xc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===yc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===vc||n===Mc||n===Sc||n===bc||n===wc||n===Ia||n===Ec)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===vc||n===Mc)return o===Be?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===Sc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===bc)return r.COMPRESSED_R11_EAC;if(n===wc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Ia)return r.COMPRESSED_RG11_EAC;if(n===Ec)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Tc||n===Ac||n===Rc||n===Cc||n===Pc||n===Ic||n===Lc||n===Dc||n===Nc||n===Uc||n===Fc||n===Oc||n===Bc||n===kc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Tc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Ac)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Rc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Cc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Pc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Ic)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Lc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Dc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Nc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Uc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Fc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Oc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Bc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===kc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===zc||n===Vc||n===Hc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===zc)return o===Be?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Vc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Hc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Gc||n===Wc||n===La||n===$c)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===Gc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Wc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===La)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===$c)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===pr?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var kS=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,zS=`
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

}`,od=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new fa(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Ki({vertexShader:kS,fragmentShader:zS,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new gn(new _a(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},ad=class extends Ci{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,d=null,u=null,p=null,g=null,x=typeof XRWebGLBinding<"u",m=new od,f={},y=e.getContextAttributes(),C=null,b=null,I=[],T=[],_=new ce,w=null,L=null,S=new li;S.viewport=new en;let P=new li;P.viewport=new en;let F=[S,P],O=new sc,D=null,V=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(et){let Mt=I[et];return Mt===void 0&&(Mt=new ao,I[et]=Mt),Mt.getTargetRaySpace()},this.getControllerGrip=function(et){let Mt=I[et];return Mt===void 0&&(Mt=new ao,I[et]=Mt),Mt.getGripSpace()},this.getHand=function(et){let Mt=I[et];return Mt===void 0&&(Mt=new ao,I[et]=Mt),Mt.getHandSpace()};function $(et){let Mt=T.indexOf(et.inputSource);if(Mt===-1)return;let q=I[Mt];q!==void 0&&(q.update(et.inputSource,et.frame,c||o),q.dispatchEvent({type:et.type,data:et.inputSource}))}function H(){s.removeEventListener("select",$),s.removeEventListener("selectstart",$),s.removeEventListener("selectend",$),s.removeEventListener("squeeze",$),s.removeEventListener("squeezestart",$),s.removeEventListener("squeezeend",$),s.removeEventListener("end",H),s.removeEventListener("inputsourceschange",K);for(let et=0;et<I.length;et++){let Mt=T[et];Mt!==null&&(T[et]=null,I[et].disconnect(Mt))}D=null,V=null,m.reset();for(let et in f)delete f[et];if(t.setRenderTarget(C),p=null,u=null,d=null,s=null,b=null,ft.stop(),n.isPresenting=!1,t.setPixelRatio(w),t.setSize(_.width,_.height,!1),L!==null){let et=L.camera;et.fov=L.fov,et.zoom=L.zoom,et.updateProjectionMatrix(),L=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(et){r=et,n.isPresenting===!0&&re("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(et){a=et,n.isPresenting===!0&&re("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(et){c=et},this.getBaseLayer=function(){return u!==null?u:p},this.getBinding=function(){return d===null&&x&&(d=new XRWebGLBinding(s,e)),d},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(et){if(s=et,s!==null){if(C=t.getRenderTarget(),s.addEventListener("select",$),s.addEventListener("selectstart",$),s.addEventListener("selectend",$),s.addEventListener("squeeze",$),s.addEventListener("squeezestart",$),s.addEventListener("squeezeend",$),s.addEventListener("end",H),s.addEventListener("inputsourceschange",K),y.xrCompatible!==!0&&await e.makeXRCompatible(),w=t.getPixelRatio(),t.getSize(_),x&&"createProjectionLayer"in XRWebGLBinding.prototype){let q=null,it=null,st=null;y.depth&&(st=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,q=y.stencil?ws:_s,it=y.stencil?pr:Pi);let gt={colorFormat:e.RGBA8,depthFormat:st,scaleFactor:r};d=this.getBinding(),u=d.createProjectionLayer(gt),s.updateRenderState({layers:[u]}),t.setPixelRatio(1),t.setSize(u.textureWidth,u.textureHeight,!1),b=new ci(u.textureWidth,u.textureHeight,{format:Li,type:jn,depthTexture:new Ms(u.textureWidth,u.textureHeight,it,void 0,void 0,void 0,void 0,void 0,void 0,q),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:u.ignoreDepthValues===!1,resolveStencilBuffer:u.ignoreDepthValues===!1,storeMultisampledDepthBuffer:u.ignoreDepthValues===!1,storeMultisampledStencilBuffer:u.ignoreDepthValues===!1})}else{let q={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};p=new XRWebGLLayer(s,e,q),s.updateRenderState({baseLayer:p}),t.setPixelRatio(1),t.setSize(p.framebufferWidth,p.framebufferHeight,!1),b=new ci(p.framebufferWidth,p.framebufferHeight,{format:Li,type:jn,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:p.ignoreDepthValues===!1,resolveStencilBuffer:p.ignoreDepthValues===!1,storeMultisampledDepthBuffer:p.ignoreDepthValues===!1,storeMultisampledStencilBuffer:p.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),ft.setContext(s),ft.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return m.getDepthTexture()};function K(et){for(let Mt=0;Mt<et.removed.length;Mt++){let q=et.removed[Mt],it=T.indexOf(q);it>=0&&(T[it]=null,I[it].disconnect(q))}for(let Mt=0;Mt<et.added.length;Mt++){let q=et.added[Mt],it=T.indexOf(q);if(it===-1){for(let gt=0;gt<I.length;gt++)if(gt>=T.length){T.push(q),it=gt;break}else if(T[gt]===null){T[gt]=q,it=gt;break}if(it===-1)break}let st=I[it];st&&st.connect(q)}}function X(et,Mt){Mt===null?et.matrixWorld.copy(et.matrix):et.matrixWorld.multiplyMatrices(Mt.matrixWorld,et.matrix),et.matrixWorldInverse.copy(et.matrixWorld).invert()}this.updateCamera=function(et){if(s===null)return;let Mt=et.near,q=et.far;m.texture!==null&&(m.depthNear>0&&(Mt=m.depthNear),m.depthFar>0&&(q=m.depthFar)),O.near=P.near=S.near=Mt,O.far=P.far=S.far=q,(D!==O.near||V!==O.far)&&(s.updateRenderState({depthNear:O.near,depthFar:O.far}),D=O.near,V=O.far),O.layers.mask=et.layers.mask|6,S.layers.mask=O.layers.mask&-5,P.layers.mask=O.layers.mask&-3;let it=et.parent,st=O.cameras;X(O,it);for(let gt=0;gt<st.length;gt++)X(st[gt],it);O.projectionMatrix.copy(S.projectionMatrix),O.projectionMatrixInverse.copy(S.projectionMatrixInverse),L===null&&et.isPerspectiveCamera&&(L={camera:et,fov:et.fov,zoom:et.zoom}),Z(et,O,it)};function Z(et,Mt,q){q===null?et.matrix.copy(Mt.matrixWorld):(et.matrix.copy(q.matrixWorld),et.matrix.invert(),et.matrix.multiply(Mt.matrixWorld)),et.matrix.decompose(et.position,et.quaternion,et.scale),et.updateMatrixWorld(!0),et.projectionMatrix.copy(Mt.projectionMatrix),et.projectionMatrixInverse.copy(Mt.projectionMatrixInverse),et.isPerspectiveCamera&&(et.fov=ro*2*Math.atan(1/et.projectionMatrix.elements[5]),et.zoom=1)}this.getCamera=function(){return O},this.getFoveation=function(){if(!(u===null&&p===null))return l},this.setFoveation=function(et){l=et,u!==null&&(u.fixedFoveation=et),p!==null&&p.fixedFoveation!==void 0&&(p.fixedFoveation=et)},this.hasDepthSensing=function(){return m.texture!==null},this.getDepthSensingMesh=function(){return m.getMesh(O)},this.getCameraTexture=function(et){return f[et]};let nt=null;function dt(et,Mt){if(h=Mt.getViewerPose(c||o),g=Mt,h!==null){let q=h.views;p!==null&&(t.setRenderTargetFramebuffer(b,p.framebuffer),t.setRenderTarget(b));let it=!1;q.length!==O.cameras.length&&(O.cameras.length=0,it=!0);for(let wt=0;wt<q.length;wt++){let ne=q[wt],se=null;if(p!==null)se=p.getViewport(ne);else{let Ee=d.getViewSubImage(u,ne);se=Ee.viewport,wt===0&&(t.setRenderTargetTextures(b,Ee.colorTexture,Ee.depthStencilTexture),t.setRenderTarget(b))}let Kt=F[wt];Kt===void 0&&(Kt=new li,Kt.layers.enable(wt),Kt.viewport=new en,F[wt]=Kt),Kt.matrix.fromArray(ne.transform.matrix),Kt.matrix.decompose(Kt.position,Kt.quaternion,Kt.scale),Kt.projectionMatrix.fromArray(ne.projectionMatrix),Kt.projectionMatrixInverse.copy(Kt.projectionMatrix).invert(),Kt.viewport.set(se.x,se.y,se.width,se.height),wt===0&&(O.matrix.copy(Kt.matrix),O.matrix.decompose(O.position,O.quaternion,O.scale)),it===!0&&O.cameras.push(Kt)}let st=s.enabledFeatures;if(st&&st.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&x){d=n.getBinding();let wt=d.getDepthInformation(q[0]);wt&&wt.isValid&&wt.texture&&m.init(wt,s.renderState)}if(st&&st.includes("camera-access")&&x){t.state.unbindTexture(),d=n.getBinding();for(let wt=0;wt<q.length;wt++){let ne=q[wt].camera;if(ne){let se=f[ne];se||(se=new fa,f[ne]=se);let Kt=d.getCameraImage(ne);se.sourceTexture=Kt}}}}for(let q=0;q<I.length;q++){let it=T[q],st=I[q];it!==null&&st!==void 0&&st.update(it,Mt,c||o)}nt&&nt(et,Mt),Mt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:Mt}),g=null}let ft=new Sm;ft.setAnimationLoop(dt),this.setAnimationLoop=function(et){nt=et},this.dispose=function(){}}},VS=new Ue,Lm=new de;Lm.set(-1,0,0,0,1,0,0,0,1);function HS(i,t){function e(m,f){m.matrixAutoUpdate===!0&&m.updateMatrix(),f.value.copy(m.matrix)}function n(m,f){f.color.getRGB(m.fogColor.value,Yu(i)),f.isFog?(m.fogNear.value=f.near,m.fogFar.value=f.far):f.isFogExp2&&(m.fogDensity.value=f.density)}function s(m,f,y,C,b){f.isNodeMaterial?f.uniformsNeedUpdate=!1:f.isMeshBasicMaterial?r(m,f):f.isMeshLambertMaterial?(r(m,f),f.envMap&&(m.envMapIntensity.value=f.envMapIntensity)):f.isMeshToonMaterial?(r(m,f),d(m,f)):f.isMeshPhongMaterial?(r(m,f),h(m,f),f.envMap&&(m.envMapIntensity.value=f.envMapIntensity)):f.isMeshStandardMaterial?(r(m,f),u(m,f),f.isMeshPhysicalMaterial&&p(m,f,b)):f.isMeshMatcapMaterial?(r(m,f),g(m,f)):f.isMeshDepthMaterial?r(m,f):f.isMeshDistanceMaterial?(r(m,f),x(m,f)):f.isMeshNormalMaterial?r(m,f):f.isLineBasicMaterial?(o(m,f),f.isLineDashedMaterial&&a(m,f)):f.isPointsMaterial?l(m,f,y,C):f.isSpriteMaterial?c(m,f):f.isShadowMaterial?(m.color.value.copy(f.color),m.opacity.value=f.opacity):f.isShaderMaterial&&(f.uniformsNeedUpdate=!1)}function r(m,f){m.opacity.value=f.opacity,f.color&&m.diffuse.value.copy(f.color),f.emissive&&m.emissive.value.copy(f.emissive).multiplyScalar(f.emissiveIntensity),f.map&&(m.map.value=f.map,e(f.map,m.mapTransform)),f.alphaMap&&(m.alphaMap.value=f.alphaMap,e(f.alphaMap,m.alphaMapTransform)),f.bumpMap&&(m.bumpMap.value=f.bumpMap,e(f.bumpMap,m.bumpMapTransform),m.bumpScale.value=f.bumpScale,f.side===Un&&(m.bumpScale.value*=-1)),f.normalMap&&(m.normalMap.value=f.normalMap,e(f.normalMap,m.normalMapTransform),m.normalScale.value.copy(f.normalScale),f.side===Un&&m.normalScale.value.negate()),f.displacementMap&&(m.displacementMap.value=f.displacementMap,e(f.displacementMap,m.displacementMapTransform),m.displacementScale.value=f.displacementScale,m.displacementBias.value=f.displacementBias),f.emissiveMap&&(m.emissiveMap.value=f.emissiveMap,e(f.emissiveMap,m.emissiveMapTransform)),f.specularMap&&(m.specularMap.value=f.specularMap,e(f.specularMap,m.specularMapTransform)),f.alphaTest>0&&(m.alphaTest.value=f.alphaTest);let y=t.get(f),C=y.envMap,b=y.envMapRotation;C&&(m.envMap.value=C,m.envMapRotation.value.setFromMatrix4(VS.makeRotationFromEuler(b)).transpose(),C.isCubeTexture&&C.isRenderTargetTexture===!1&&m.envMapRotation.value.premultiply(Lm),m.reflectivity.value=f.reflectivity,m.ior.value=f.ior,m.refractionRatio.value=f.refractionRatio),f.lightMap&&(m.lightMap.value=f.lightMap,m.lightMapIntensity.value=f.lightMapIntensity,e(f.lightMap,m.lightMapTransform)),f.aoMap&&(m.aoMap.value=f.aoMap,m.aoMapIntensity.value=f.aoMapIntensity,e(f.aoMap,m.aoMapTransform))}function o(m,f){m.diffuse.value.copy(f.color),m.opacity.value=f.opacity,f.map&&(m.map.value=f.map,e(f.map,m.mapTransform))}function a(m,f){m.dashSize.value=f.dashSize,m.totalSize.value=f.dashSize+f.gapSize,m.scale.value=f.scale}function l(m,f,y,C){m.diffuse.value.copy(f.color),m.opacity.value=f.opacity,m.size.value=f.size*y,m.scale.value=C*.5,f.map&&(m.map.value=f.map,e(f.map,m.uvTransform)),f.alphaMap&&(m.alphaMap.value=f.alphaMap,e(f.alphaMap,m.alphaMapTransform)),f.alphaTest>0&&(m.alphaTest.value=f.alphaTest)}function c(m,f){m.diffuse.value.copy(f.color),m.opacity.value=f.opacity,m.rotation.value=f.rotation,f.map&&(m.map.value=f.map,e(f.map,m.mapTransform)),f.alphaMap&&(m.alphaMap.value=f.alphaMap,e(f.alphaMap,m.alphaMapTransform)),f.alphaTest>0&&(m.alphaTest.value=f.alphaTest)}function h(m,f){m.specular.value.copy(f.specular),m.shininess.value=Math.max(f.shininess,1e-4)}function d(m,f){f.gradientMap&&(m.gradientMap.value=f.gradientMap)}function u(m,f){m.metalness.value=f.metalness,f.metalnessMap&&(m.metalnessMap.value=f.metalnessMap,e(f.metalnessMap,m.metalnessMapTransform)),m.roughness.value=f.roughness,f.roughnessMap&&(m.roughnessMap.value=f.roughnessMap,e(f.roughnessMap,m.roughnessMapTransform)),f.envMap&&(m.envMapIntensity.value=f.envMapIntensity)}function p(m,f,y){m.ior.value=f.ior,f.diffuseRoughness>0&&(m.diffuseRoughness.value=f.diffuseRoughness,f.diffuseRoughnessMap&&(m.diffuseRoughnessMap.value=f.diffuseRoughnessMap,e(f.diffuseRoughnessMap,m.diffuseRoughnessMapTransform))),f.sheen>0&&(m.sheenColor.value.copy(f.sheenColor).multiplyScalar(f.sheen),m.sheenRoughness.value=f.sheenRoughness,f.sheenColorMap&&(m.sheenColorMap.value=f.sheenColorMap,e(f.sheenColorMap,m.sheenColorMapTransform)),f.sheenRoughnessMap&&(m.sheenRoughnessMap.value=f.sheenRoughnessMap,e(f.sheenRoughnessMap,m.sheenRoughnessMapTransform))),f.clearcoat>0&&(m.clearcoat.value=f.clearcoat,m.clearcoatRoughness.value=f.clearcoatRoughness,f.clearcoatMap&&(m.clearcoatMap.value=f.clearcoatMap,e(f.clearcoatMap,m.clearcoatMapTransform)),f.clearcoatRoughnessMap&&(m.clearcoatRoughnessMap.value=f.clearcoatRoughnessMap,e(f.clearcoatRoughnessMap,m.clearcoatRoughnessMapTransform)),f.clearcoatNormalMap&&(m.clearcoatNormalMap.value=f.clearcoatNormalMap,e(f.clearcoatNormalMap,m.clearcoatNormalMapTransform),m.clearcoatNormalScale.value.copy(f.clearcoatNormalScale),f.side===Un&&m.clearcoatNormalScale.value.negate())),f.dispersion>0&&(m.dispersion.value=f.dispersion),f.retroreflectivity>0&&(m.retroreflectivity.value=f.retroreflectivity),f.iridescence>0&&(m.iridescence.value=f.iridescence,m.iridescenceIOR.value=f.iridescenceIOR,m.iridescenceThicknessMinimum.value=f.iridescenceThicknessMinimum,m.iridescenceThicknessMaximum.value=f.iridescenceThicknessMaximum,f.iridescenceMap&&(m.iridescenceMap.value=f.iridescenceMap,e(f.iridescenceMap,m.iridescenceMapTransform)),f.iridescenceThicknessMap&&(m.iridescenceThicknessMap.value=f.iridescenceThicknessMap,e(f.iridescenceThicknessMap,m.iridescenceThicknessMapTransform))),f.transmission>0&&(m.transmission.value=f.transmission,m.transmissionSamplerMap.value=y.texture,m.transmissionSamplerSize.value.set(y.width,y.height),f.transmissionMap&&(m.transmissionMap.value=f.transmissionMap,e(f.transmissionMap,m.transmissionMapTransform)),m.thickness.value=f.thickness,f.thicknessMap&&(m.thicknessMap.value=f.thicknessMap,e(f.thicknessMap,m.thicknessMapTransform)),m.attenuationDistance.value=f.attenuationDistance,m.attenuationColor.value.copy(f.attenuationColor)),f.anisotropy>0&&(m.anisotropyVector.value.set(f.anisotropy*Math.cos(f.anisotropyRotation),f.anisotropy*Math.sin(f.anisotropyRotation)),f.anisotropyMap&&(m.anisotropyMap.value=f.anisotropyMap,e(f.anisotropyMap,m.anisotropyMapTransform))),m.specularIntensity.value=f.specularIntensity,m.specularColor.value.copy(f.specularColor),f.specularColorMap&&(m.specularColorMap.value=f.specularColorMap,e(f.specularColorMap,m.specularColorMapTransform)),f.specularIntensityMap&&(m.specularIntensityMap.value=f.specularIntensityMap,e(f.specularIntensityMap,m.specularIntensityMapTransform))}function g(m,f){f.matcap&&(m.matcap.value=f.matcap)}function x(m,f){let y=t.get(f).light;m.referencePosition.value.setFromMatrixPosition(y.matrixWorld),m.nearDistance.value=y.shadow.camera.near,m.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function GS(i,t,e,n){let s={},r={};function o(y,C){let b=C.program;n.uniformBlockBinding(y,b,s[y.id])}function a(y,C){let b=s[y.id];b===void 0&&(g(y),b=l(y),s[y.id]=b,y.addEventListener("dispose",m));let I=C.program;n.updateUBOMapping(y,I);let T=t.render.frame;r[y.id]!==T&&(c(y),r[y.id]=T)}function l(y){let C=i.createBuffer(),b=y.__size,I=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,C),i.bufferData(i.UNIFORM_BUFFER,b,I),i.bindBuffer(i.UNIFORM_BUFFER,null),C}function c(y){let C=s[y.id],b=y.uniforms,I=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,C);for(let T=0,_=b.length;T<_;T++){let w=b[T];if(Array.isArray(w))for(let L=0,S=w.length;L<S;L++)h(w[L],T,L,I);else h(w,T,0,I)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(y,C,b,I){if(u(y,C,b,I)===!0){let T=y.__offset,_=y.value;if(Array.isArray(_)){let w=0;for(let L=0;L<_.length;L++){let S=_[L],P=x(S,!0);d(S,y.__data,w),w+=P.storage/Float32Array.BYTES_PER_ELEMENT}}else d(_,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,T,y.__data)}}function d(y,C,b){typeof y=="number"||typeof y=="boolean"?C[b]=y:y.isMatrix3?(C[b]=y.elements[0],C[b+1]=y.elements[1],C[b+2]=y.elements[2],C[b+3]=0,C[b+4]=y.elements[3],C[b+5]=y.elements[4],C[b+6]=y.elements[5],C[b+7]=0,C[b+8]=y.elements[6],C[b+9]=y.elements[7],C[b+10]=y.elements[8],C[b+11]=0):ArrayBuffer.isView(y)?C.set(y.subarray(0,C.length-b),b):y.toArray(C,b)}function u(y,C,b,I){let T=y.value,_=C+"_"+b;if(Array.isArray(T)){I[_]===void 0&&(I[_]=[]);let w=I[_],L=!1;for(let S=0;S<T.length;S++)p(T[S],w,S)===!0&&(L=!0);return L}return p(T,I,_)}function p(y,C,b){if(C[b]===void 0)return typeof y=="number"||typeof y=="boolean"?C[b]=y:ArrayBuffer.isView(y)?C[b]=y.slice():C[b]=y.clone(),!0;{let I=C[b];if(typeof y=="number"||typeof y=="boolean"){if(I!==y)return C[b]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(I.equals(y)===!1)return I.copy(y),!0}}return!1}function g(y){let C=y.uniforms,b=0,I=16;for(let _=0,w=C.length;_<w;_++){let L=Array.isArray(C[_])?C[_]:[C[_]];for(let S=0,P=L.length;S<P;S++){let F=L[S],O=Array.isArray(F.value)?F.value:[F.value],D=Array.isArray(C[_])||Array.isArray(F.value),V=b;for(let H=0,K=O.length;H<K;H++){let X=O[H],Z=x(X,D),nt=b%I,dt=nt%Z.boundary,ft=nt+dt;b+=dt,ft!==0&&I-ft<Z.storage&&(b+=I-ft),H===0&&(V=b),b+=Z.storage}let $=F.type==="int"?Int32Array:F.type==="uint"?Uint32Array:Float32Array;F.__data=new $((b-V)/Float32Array.BYTES_PER_ELEMENT),F.__offset=V}}let T=b%I;return T>0&&(b+=I-T),y.__size=b,y.__cache={},this}function x(y,C){let b={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(b.boundary=4,b.storage=4):y.isVector2?(b.boundary=8,b.storage=8):y.isVector3||y.isColor?(b.boundary=16,b.storage=12):y.isVector4?(b.boundary=16,b.storage=16):y.isMatrix3?(b.boundary=16,b.storage=48):y.isMatrix4?(b.boundary=16,b.storage=64):y.isTexture?re("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(b.boundary=16,b.storage=y.byteLength):re("WebGLRenderer: Unsupported uniform value type.",y),C===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function m(y){let C=y.target;C.removeEventListener("dispose",m),i.deleteBuffer(s[C.id]),delete s[C.id],delete r[C.id]}function f(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:f}}var WS=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),ts=null;function $S(){return ts===null&&(ts=new la(WS,16,16,qs,Ii),ts.name="DFG_LUT",ts.minFilter=Yn,ts.magFilter=Yn,ts.wrapS=qi,ts.wrapT=qi,ts.generateMipmaps=!1,ts.needsUpdate=!0),ts}var Jc=class{constructor(t={}){let{canvas:e=$p(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:d=!1,reversedDepthBuffer:u=!1,outputBufferType:p=jn}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let x=p,m=new Set([mc,pc,fc]),f=new Set([jn,Pi,go,pr,hc,uc]),y=new Uint32Array(4),C=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},I=null,T=null,_=[],w=[],L=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Qi,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let S=this,P=!1,F=null,O=null,D=null,V=null;this._outputColorSpace=qn;let $=0,H=0,K=null,X=-1,Z=null,nt=new en,dt=new en,ft=null,et=new ye(0),Mt=0,q=e.width,it=e.height,st=1,gt=null,Ut=null,wt=new en(0,0,q,it),ne=new en(0,0,q,it),se=!1,Kt=new zs,Ee=new zl,Qt=!1,xe=!1,pe=new Ue,Pe=new Y,lt=new en,Tt={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Ot=!1;function Jt(){return K===null?st:1}let k=n;function _t(R,G){return e.getContext(R,G)}let Wt,Ht,St,Ie,jt,ie,N,E,J,yt,pt,Rt,Ct,ot,ct,Et,z,ut,at,Lt,At,It,te;try{let R={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:d};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",qt,!1),e.addEventListener("webglcontextrestored",le,!1),e.addEventListener("webglcontextcreationerror",Ft,!1),k===null){let G="webgl2";if(k=_t(G,R),k===null)throw _t(G)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}ae()}catch(R){throw e.removeEventListener("webglcontextlost",qt,!1),e.removeEventListener("webglcontextrestored",le,!1),e.removeEventListener("webglcontextcreationerror",Ft,!1),ue("WebGLRenderer: "+R.message),R}function ae(){Wt=new nM(k),Wt.init(),At=new BS(k,Wt),Ht=new $v(k,Wt,t,At),St=new FS(k,Wt),Ht.reversedDepthBuffer&&u&&St.buffers.depth.setReversed(!0),O=k.createFramebuffer(),D=k.createFramebuffer(),V=k.createFramebuffer(),Ie=new rM(k),jt=new SS,ie=new OS(k,Wt,St,jt,Ht,At,Ie),N=new eM(S),E=new ax(k),It=new Gv(k,E),J=new iM(k,E,Ie,It),yt=new aM(k,J,E,It,Ie),ut=new oM(k,Ht,ie),ct=new Xv(jt),pt=new MS(S,N,Wt,Ht,It,ct),Rt=new HS(S,jt),Ct=new wS,ot=new PS(Wt),z=new Hv(S,N,St,yt,g,l),Et=new US(S,yt,Ht),te=new GS(k,Ie,Ht,St),at=new Wv(k,Wt,Ie),Lt=new sM(k,Wt,Ie),Ie.programs=pt.programs,S.capabilities=Ht,S.extensions=Wt,S.properties=jt,S.renderLists=Ct,S.shadowMap=Et,S.state=St,S.info=Ie}x!==jn&&(L=new cM(x,e.width,e.height,a,s,r));let xt=new ad(S,k);this.xr=xt,this.getContext=function(){return k},this.getContextAttributes=function(){return k.getContextAttributes()},this.forceContextLoss=function(){let R=Wt.get("WEBGL_lose_context");R&&R.loseContext()},this.forceContextRestore=function(){let R=Wt.get("WEBGL_lose_context");R&&R.restoreContext()},this.getPixelRatio=function(){return st},this.setPixelRatio=function(R){R!==void 0&&(st=R,this.setSize(q,it,!1))},this.getSize=function(R){return R.set(q,it)},this.setSize=function(R,G,rt=!0){if(xt.isPresenting){re("WebGLRenderer: Can't change size while VR device is presenting.");return}q=R,it=G,e.width=Math.floor(R*st),e.height=Math.floor(G*st),rt===!0&&(e.style.width=R+"px",e.style.height=G+"px"),L!==null&&L.setSize(e.width,e.height),this.setViewport(0,0,R,G)},this.getDrawingBufferSize=function(R){return R.set(q*st,it*st).floor()},this.setDrawingBufferSize=function(R,G,rt){q=R,it=G,st=rt,e.width=Math.floor(R*rt),e.height=Math.floor(G*rt),this.setViewport(0,0,R,G)},this.setEffects=function(R){if(x===jn){ue("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(R){for(let G=0;G<R.length;G++)if(R[G].isOutputPass===!0){re("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}L.setEffects(R||[])},this.getCurrentViewport=function(R){return R.copy(nt)},this.getViewport=function(R){return R.copy(wt)},this.setViewport=function(R,G,rt,j){R.isVector4?wt.set(R.x,R.y,R.z,R.w):wt.set(R,G,rt,j),St.viewport(nt.copy(wt).multiplyScalar(Jt()).round())},this.getScissor=function(R){return R.copy(ne)},this.setScissor=function(R,G,rt,j){R.isVector4?ne.set(R.x,R.y,R.z,R.w):ne.set(R,G,rt,j),St.scissor(dt.copy(ne).multiplyScalar(Jt()).round())},this.getScissorTest=function(){return se},this.setScissorTest=function(R){St.setScissorTest(se=R)},this.setOpaqueSort=function(R){gt=R},this.setTransparentSort=function(R){Ut=R},this.getClearColor=function(R){return R.copy(z.getClearColor())},this.setClearColor=function(){z.setClearColor(...arguments)},this.getClearAlpha=function(){return z.getClearAlpha()},this.setClearAlpha=function(){z.setClearAlpha(...arguments)},this.clear=function(R=!0,G=!0,rt=!0){let j=0;if(R){let Q=!1;if(K!==null){let Dt=K.texture.format;Q=m.has(Dt)}if(Q){let Dt=K.texture.type,Bt=f.has(Dt),Nt=z.getClearColor(),kt=z.getClearAlpha(),Zt=Nt.r,he=Nt.g,Se=Nt.b;Bt?(y[0]=Zt,y[1]=he,y[2]=Se,y[3]=kt,k.clearBufferuiv(k.COLOR,0,y)):(C[0]=Zt,C[1]=he,C[2]=Se,C[3]=kt,k.clearBufferiv(k.COLOR,0,C))}else j|=k.COLOR_BUFFER_BIT}G&&(j|=k.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),rt&&(j|=k.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),j!==0&&k.clear(j)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(R){R.setRenderer(this),F=R},this.dispose=function(){e.removeEventListener("webglcontextlost",qt,!1),e.removeEventListener("webglcontextrestored",le,!1),e.removeEventListener("webglcontextcreationerror",Ft,!1),z.dispose(),Ct.dispose(),ot.dispose(),ie.dispose(),jt.dispose(),N.dispose(),yt.dispose(),J.dispose(),It.dispose(),te.dispose(),pt.dispose(),xt.dispose(),xt.removeEventListener("sessionstart",qa),xt.removeEventListener("sessionend",Fi),rs.stop()};function qt(R){R.preventDefault(),Gu("WebGLRenderer: Context Lost."),P=!0}function le(){Gu("WebGLRenderer: Context Restored."),P=!1;let R=Ie.autoReset,G=Et.enabled,rt=Et.autoUpdate,j=Et.needsUpdate,Q=Et.type;ae(),Ie.autoReset=R,Et.enabled=G,Et.autoUpdate=rt,Et.needsUpdate=j,Et.type=Q}function Ft(R){ue("WebGLRenderer: A WebGL context could not be created. Reason: ",R.statusMessage)}function ge(R){let G=R.target;G.removeEventListener("dispose",ge),qe(G)}function qe(R){Vn(R),jt.remove(R)}function Vn(R){let G=jt.get(R).programs;G!==void 0&&(G.forEach(function(rt){pt.releaseProgram(rt)}),R.isShaderMaterial&&pt.releaseShaderCache(R))}this.renderBufferDirect=function(R,G,rt,j,Q,Dt){G===null&&(G=Tt);let Bt=Q.isMesh&&Q.matrixWorld.determinantAffine()<0,Nt=Fo(R,G,rt,j,Q);St.setMaterial(j,Bt);let kt=rt.index,Zt=1;if(j.wireframe===!0){if(kt=J.getWireframeAttribute(rt),kt===void 0)return;Zt=2}let he=rt.drawRange,Se=rt.attributes.position,Yt=he.start*Zt,be=(he.start+he.count)*Zt;Dt!==null&&(Yt=Math.max(Yt,Dt.start*Zt),be=Math.min(be,(Dt.start+Dt.count)*Zt)),kt!==null?(Yt=Math.max(Yt,0),be=Math.min(be,kt.count)):Se!=null&&(Yt=Math.max(Yt,0),be=Math.min(be,Se.count));let nn=be-Yt;if(nn<0||nn===1/0)return;It.setup(Q,j,Nt,rt,kt);let ze,Ve=at;if(kt!==null&&(ze=E.get(kt),Ve=Lt,Ve.setIndex(ze)),Q.isMesh)j.wireframe===!0?(St.setLineWidth(j.wireframeLinewidth*Jt()),Ve.setMode(k.LINES)):Ve.setMode(k.TRIANGLES);else if(Q.isLine){let xn=j.linewidth;xn===void 0&&(xn=1),St.setLineWidth(xn*Jt()),Q.isLineSegments?Ve.setMode(k.LINES):Q.isLineLoop?Ve.setMode(k.LINE_LOOP):Ve.setMode(k.LINE_STRIP)}else Q.isPoints?Ve.setMode(k.POINTS):Q.isSprite&&Ve.setMode(k.TRIANGLES);if(Q.isBatchedMesh)if(Wt.get("WEBGL_multi_draw"))Ve.renderMultiDraw(Q._multiDrawStarts,Q._multiDrawCounts,Q._multiDrawCount);else{let xn=Q._multiDrawStarts,$t=Q._multiDrawCounts,un=Q._multiDrawCount,Ae=kt?E.get(kt).bytesPerElement:1,as=jt.get(j).currentProgram.getUniforms();for(let dn=0;dn<un;dn++)as.setValue(k,"_gl_DrawID",dn),Ve.render(xn[dn]/Ae,$t[dn])}else if(Q.isInstancedMesh)Ve.renderInstances(Yt,nn,Q.count);else if(rt.isInstancedBufferGeometry){let xn=rt._maxInstanceCount!==void 0?rt._maxInstanceCount:1/0,$t=Math.min(rt.instanceCount,xn);Ve.renderInstances(Yt,nn,$t)}else Ve.render(Yt,nn)};function Do(R,G,rt,j){F!==null&&R.isNodeMaterial&&F.setObject(j,R),Qt===!0&&ct.setState(R,rt,!1),R.transparent===!0&&R.side===ji&&R.forceSinglePass===!1?(R.side=Un,R.needsUpdate=!0,Oi(R,G,j),R.side=Xs,R.needsUpdate=!0,Oi(R,G,j),R.side=ji):Oi(R,G,j)}this.compile=function(R,G,rt=null){rt===null&&(rt=R),F!==null&&F.renderStart(R,G,rt),T=ot.get(rt),T.init(G),w.push(T),rt.traverseVisible(function(Q){Q.isLight&&Q.layers.test(G.layers)&&(T.pushLight(Q),Q.castShadow&&T.pushShadow(Q))}),R!==rt&&R.traverseVisible(function(Q){Q.isLight&&Q.layers.test(G.layers)&&(T.pushLight(Q),Q.castShadow&&T.pushShadow(Q))}),T.setupLights(),F!==null&&F.updateLights(T.state.lightsArray),xe=this.localClippingEnabled,Qt=ct.init(this.clippingPlanes,xe),Qt===!0&&ct.setGlobalState(this.clippingPlanes,G),F!==null&&Et.render(T.state.shadowsArray,rt,G);let j=new Set;return R.traverse(function(Q){if(!(Q.isMesh||Q.isPoints||Q.isLine||Q.isSprite))return;let Dt=Q.material;if(Dt)if(Array.isArray(Dt))for(let Bt=0;Bt<Dt.length;Bt++){let Nt=Dt[Bt];Do(Nt,rt,G,Q),j.add(Nt)}else Do(Dt,rt,G,Q),j.add(Dt)}),T=w.pop(),F!==null&&F.renderEnd(),j},this.compileAsync=function(R,G,rt=null){let j=this.compile(R,G,rt);return new Promise(Q=>{function Dt(){if(j.forEach(function(Bt){let kt=jt.get(Bt).currentProgram;(kt===void 0||kt.isReady())&&j.delete(Bt)}),j.size===0){Q(R);return}setTimeout(Dt,10)}Wt.get("KHR_parallel_shader_compile")!==null?Dt():setTimeout(Dt,10)})};let br=null;function Ph(R){br&&br(R)}function qa(){rs.stop()}function Fi(){rs.start()}let rs=new Sm;rs.setAnimationLoop(Ph),typeof self<"u"&&rs.setContext(self),this.setAnimationLoop=function(R){br=R,xt.setAnimationLoop(R),R===null?rs.stop():rs.start()},xt.addEventListener("sessionstart",qa),xt.addEventListener("sessionend",Fi),this.render=function(R,G){if(G!==void 0&&G.isCamera!==!0){ue("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(P===!0)return;F!==null&&F.renderStart(R,G);let rt=xt.enabled===!0&&xt.isPresenting===!0,j=L!==null&&(K===null||rt)&&L.begin(S,K);if(R.matrixWorldAutoUpdate===!0&&R.updateMatrixWorld(),G.parent===null&&G.matrixWorldAutoUpdate===!0&&G.updateMatrixWorld(),xt.enabled===!0&&xt.isPresenting===!0&&(L===null||L.isCompositing()===!1)&&(xt.cameraAutoUpdate===!0&&xt.updateCamera(G),G=xt.getCamera()),R.isScene===!0&&R.onBeforeRender(S,R,G,K),T=ot.get(R,w.length),T.init(G),T.state.textureUnits=ie.getTextureUnits(),w.push(T),pe.multiplyMatrices(G.projectionMatrix,G.matrixWorldInverse),G.isArrayCamera?Ee.setFromArrayCamera(G):Kt.setFromProjectionMatrix(pe,_i,G.reversedDepth),xe=this.localClippingEnabled,Qt=ct.init(this.clippingPlanes,xe),I=Ct.get(R,_.length),I.init(),_.push(I),this.info.render.frame++,xt.enabled===!0&&xt.isPresenting===!0){let Bt=S.xr.getDepthSensingMesh();Bt!==null&&os(Bt,G,-1/0,S.sortObjects)}os(R,G,0,S.sortObjects),I.finish(),F!==null&&F.updateLights(T.state.lightsArray),S.sortObjects===!0&&I.sort(gt,Ut),Ot=xt.enabled===!1||xt.isPresenting===!1||xt.hasDepthSensing()===!1,Ot&&z.addToRenderList(I,R),this.info.autoReset===!0&&this.info.reset(),Qt===!0&&ct.beginShadows();let Q=T.state.shadowsArray;if(Et.render(Q,R,G),Qt===!0&&ct.endShadows(),(j&&L.hasRenderPass())===!1){let Bt=I.opaque,Nt=I.transmissive;if(T.setupLights(),G.isArrayCamera){let kt=G.cameras;if(Nt.length>0)for(let Zt=0,he=kt.length;Zt<he;Zt++){let Se=kt[Zt];Mi(Bt,Nt,R,Se)}Ot&&z.render(R);for(let Zt=0,he=kt.length;Zt<he;Zt++){let Se=kt[Zt];No(I,R,Se,Se.viewport)}}else Nt.length>0&&Mi(Bt,Nt,R,G),Ot&&z.render(R),No(I,R,G)}K!==null&&H===0&&(ie.updateMultisampleRenderTarget(K),ie.updateRenderTargetMipmap(K)),j&&L.end(S),R.isScene===!0&&R.onAfterRender(S,R,G),It.resetDefaultState(),X=-1,Z=null,w.pop(),w.length>0?(T=w[w.length-1],ie.setTextureUnits(T.state.textureUnits),Qt===!0&&ct.setGlobalState(S.clippingPlanes,T.state.camera)):T=null,_.pop(),_.length>0?I=_[_.length-1]:I=null,F!==null&&F.renderEnd()};function os(R,G,rt,j){if(R.visible===!1)return;if(R.layers.test(G.layers)){if(R.isGroup)rt=R.renderOrder;else if(R.isLOD)R.autoUpdate===!0&&R.update(G);else if(R.isLight)T.pushLight(R),R.castShadow&&T.pushShadow(R);else if(R.isSprite){let Bt=G.isArrayCamera?Ee:Kt;if(!R.frustumCulled||R.intersectsFrustum(Bt)){j&&lt.setFromMatrixPosition(R.matrixWorld).applyMatrix4(pe);let Nt=yt.update(R),kt=R.material;kt.visible&&I.push(R,Nt,kt,rt,lt.z,null,G)}}else if(R.isMesh||R.isLine||R.isPoints){let Bt=G.isArrayCamera?Ee:Kt;if(!R.frustumCulled||R.intersectsFrustum(Bt)){let Nt=yt.update(R),kt=R.material;if(j&&(R.boundingSphere!==void 0?(R.boundingSphere===null&&R.computeBoundingSphere(),lt.copy(R.boundingSphere.center)):(Nt.boundingSphere===null&&Nt.computeBoundingSphere(),lt.copy(Nt.boundingSphere.center)),lt.applyMatrix4(R.matrixWorld).applyMatrix4(pe)),Array.isArray(kt)){let Zt=Nt.groups;for(let he=0,Se=Zt.length;he<Se;he++){let Yt=Zt[he],be=kt[Yt.materialIndex];be&&be.visible&&I.push(R,Nt,be,rt,lt.z,Yt,G)}}else kt.visible&&I.push(R,Nt,kt,rt,lt.z,null,G)}}}let Dt=R.children;for(let Bt=0,Nt=Dt.length;Bt<Nt;Bt++)os(Dt[Bt],G,rt,j)}function No(R,G,rt,j){let{opaque:Q,transmissive:Dt,transparent:Bt}=R;T.setupLightsView(rt),Qt===!0&&ct.setGlobalState(S.clippingPlanes,rt),j&&St.viewport(nt.copy(j)),Q.length>0&&rn(Q,G,rt),Dt.length>0&&rn(Dt,G,rt),Bt.length>0&&rn(Bt,G,rt),St.buffers.depth.setTest(!0),St.buffers.depth.setMask(!0),St.buffers.color.setMask(!0),St.setPolygonOffset(!1)}function Mi(R,G,rt,j){if((rt.isScene===!0?rt.overrideMaterial:null)!==null)return;if(T.state.transmissionRenderTarget[j.id]===void 0){let Yt=Wt.has("EXT_color_buffer_half_float")||Wt.has("EXT_color_buffer_float");T.state.transmissionRenderTarget[j.id]=new ci(1,1,{generateMipmaps:!0,type:Yt?Ii:jn,minFilter:bs,samples:Math.max(4,Ht.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Re.workingColorSpace})}let Dt=T.state.transmissionRenderTarget[j.id],Bt=j.viewport||nt;Dt.setSize(Bt.z*S.transmissionResolutionScale,Bt.w*S.transmissionResolutionScale);let Nt=S.getRenderTarget(),kt=S.getActiveCubeFace(),Zt=S.getActiveMipmapLevel();S.setRenderTarget(Dt),S.getClearColor(et),Mt=S.getClearAlpha(),Mt<1&&S.setClearColor(16777215,.5),S.clear(),Ot&&z.render(rt);let he=S.toneMapping;S.toneMapping=Qi;let Se=j.viewport;if(j.viewport!==void 0&&(j.viewport=void 0),T.setupLightsView(j),Qt===!0&&ct.setGlobalState(S.clippingPlanes,j),rn(R,rt,j),ie.updateMultisampleRenderTarget(Dt),ie.updateRenderTargetMipmap(Dt),Wt.has("WEBGL_multisampled_render_to_texture")===!1){let Yt=!1;for(let be=0,nn=G.length;be<nn;be++){let ze=G[be],{object:Ve,geometry:xn,material:$t,group:un}=ze;if($t.side===ji&&Ve.layers.test(j.layers)){let Ae=$t.side;$t.side=Un,$t.needsUpdate=!0,cn(Ve,rt,j,xn,$t,un),$t.side=Ae,$t.needsUpdate=!0,Yt=!0}}Yt===!0&&(ie.updateMultisampleRenderTarget(Dt),ie.updateRenderTargetMipmap(Dt))}S.setRenderTarget(Nt,kt,Zt),S.setClearColor(et,Mt),Se!==void 0&&(j.viewport=Se),S.toneMapping=he}function rn(R,G,rt){let j=G.isScene===!0?G.overrideMaterial:null;for(let Q=0,Dt=R.length;Q<Dt;Q++){let Bt=R[Q],{object:Nt,geometry:kt,group:Zt}=Bt,he=Bt.material;he.allowOverride===!0&&j!==null&&(he=j),Nt.layers.test(rt.layers)&&cn(Nt,G,rt,kt,he,Zt)}}function cn(R,G,rt,j,Q,Dt){F!==null&&Q.isNodeMaterial&&F.setObject(R,Q),R.onBeforeRender(S,G,rt,j,Q,Dt),R.modelViewMatrix.multiplyMatrices(rt.matrixWorldInverse,R.matrixWorld),R.normalMatrix.getNormalMatrix(R.modelViewMatrix),Q.onBeforeRender(S,G,rt,j,R,Dt),Q.transparent===!0&&Q.side===ji&&Q.forceSinglePass===!1?(Q.side=Un,Q.needsUpdate=!0,S.renderBufferDirect(rt,G,j,Q,R,Dt),Q.side=Xs,Q.needsUpdate=!0,S.renderBufferDirect(rt,G,j,Q,R,Dt),Q.side=ji):S.renderBufferDirect(rt,G,j,Q,R,Dt),R.onAfterRender(S,G,rt,j,Q,Dt)}function hn(R){let G=0;for(let rt of R)rt.texture!==null&&G++;return G}function Oi(R,G,rt){G.isScene!==!0&&(G=Tt);let j=jt.get(R),Q=T.state.lights,Dt=T.state.shadowsArray,Bt=Q.state.version,Nt=pt.getParameters(R,Q.state,Dt,G,rt,T.state.lightProbeGridArray),kt=pt.getProgramCacheKey(Nt),Zt=j.programs;j.environment=R.isMeshStandardMaterial||R.isMeshLambertMaterial||R.isMeshPhongMaterial?G.environment:null,j.fog=G.fog;let he=R.isMeshStandardMaterial||R.isMeshLambertMaterial&&!R.envMap||R.isMeshPhongMaterial&&!R.envMap;j.envMap=N.get(R.envMap||j.environment,he),j.envMapRotation=j.environment!==null&&R.envMap===null?G.environmentRotation:R.envMapRotation,Zt===void 0&&(R.addEventListener("dispose",ge),Zt=new Map,j.programs=Zt,j.programVariants=new Map);let Se=Zt.get(kt);if(Se!==void 0){if(j.currentProgram===Se&&j.lightsStateVersion===Bt)return Uo(R,Nt),Se}else Nt.uniforms=pt.getUniforms(R),F!==null&&R.isNodeMaterial&&F.build(R,rt,Nt),R.onBeforeCompile(Nt,S),Se=pt.acquireProgram(Nt,kt),Zt.set(kt,Se),j.uniforms=Nt.uniforms;let Yt=j.uniforms;return(!R.isShaderMaterial&&!R.isRawShaderMaterial||R.clipping===!0)&&(Yt.clippingPlanes=ct.uniform),Uo(R,Nt),j.needsLights=Cs(R),j.lightsStateVersion=Bt,j.needsLights&&(Yt.ambientLightColor.value=Q.state.ambient,Yt.lightProbe.value=Q.state.probe,Yt.sunLights.value=Q.state.sun,Yt.sunLightShadows.value=Q.state.sunShadow,Yt.directionalLights.value=Q.state.directional,Yt.directionalLightShadows.value=Q.state.directionalShadow,Yt.spotLights.value=Q.state.spot,Yt.spotLightShadows.value=Q.state.spotShadow,Yt.rectAreaLights.value=Q.state.rectArea,Yt.ltc_1.value=Q.state.rectAreaLTC1,Yt.ltc_2.value=Q.state.rectAreaLTC2,Yt.pointLights.value=Q.state.point,Yt.pointLightShadows.value=Q.state.pointShadow,Yt.hemisphereLights.value=Q.state.hemi,Yt.sunShadowMatrix.value=Q.state.sunShadowMatrix,Yt.sunShadowCascade.value=Q.state.sunShadowCascade,Yt.directionalShadowMatrix.value=Q.state.directionalShadowMatrix,Yt.spotLightMatrix.value=Q.state.spotLightMatrix,Yt.spotLightMap.value=Q.state.spotLightMap,Yt.pointShadowMatrix.value=Q.state.pointShadowMatrix),j.numLightProbeGrids=hn(T.state.lightProbeGridArray),j.currentProgram=Se,j.uniformsList=null,Se}function ti(R,G,rt,j,Q){let Dt=jt.get(R),Bt=Dt.currentProgram.id+","+j+","+Q,Nt=Dt.programVariants.get(Bt);return Nt===void 0?(Nt=Oi(R,G,rt),Dt.programVariants.set(Bt,Nt)):(Dt.currentProgram=Nt,Dt.uniformsList=null,Dt.outputColorSpace=j,Dt.toneMapping=Q),Nt}function Rs(R){if(R.uniformsList===null){let G=R.currentProgram.getUniforms();R.uniformsList=xo.seqWithValue(G.seq,R.uniforms)}return R.uniformsList}function Uo(R,G){let rt=jt.get(R);rt.outputColorSpace=G.outputColorSpace,rt.batching=G.batching,rt.batchingColor=G.batchingColor,rt.instancing=G.instancing,rt.instancingColor=G.instancingColor,rt.instancingMorph=G.instancingMorph,rt.skinning=G.skinning,rt.morphTargets=G.morphTargets,rt.morphNormals=G.morphNormals,rt.morphColors=G.morphColors,rt.morphTargetsCount=G.morphTargetsCount,rt.numClippingPlanes=G.numClippingPlanes,rt.numIntersection=G.numClipIntersection,rt.vertexAlphas=G.vertexAlphas,rt.vertexTangents=G.vertexTangents,rt.toneMapping=G.toneMapping}function Fo(R,G,rt,j,Q){G.isScene!==!0&&(G=Tt),ie.resetTextureUnits();let Dt=G.fog,Bt=j.isMeshStandardMaterial||j.isMeshLambertMaterial||j.isMeshPhongMaterial?G.environment:null,Nt=K===null?S.outputColorSpace:K.isXRRenderTarget===!0?K.texture.colorSpace:Re.workingColorSpace,kt=j.isMeshStandardMaterial||j.isMeshLambertMaterial&&!j.envMap||j.isMeshPhongMaterial&&!j.envMap,Zt=N.get(j.envMap||Bt,kt),he=j.vertexColors===!0&&!!rt.attributes.color&&rt.attributes.color.itemSize===4,Se=!!rt.attributes.tangent&&(!!j.normalMap||j.anisotropy>0),Yt=!!rt.morphAttributes.position,be=!!rt.morphAttributes.normal,nn=!!rt.morphAttributes.color,ze=Qi;j.toneMapped&&(K===null||K.isXRRenderTarget===!0)&&(ze=S.toneMapping);let Ve=rt.morphAttributes.position||rt.morphAttributes.normal||rt.morphAttributes.color,xn=Ve!==void 0?Ve.length:0,$t=jt.get(j),un=T.state.lights;if(Qt===!0&&(xe===!0||R!==Z)){let He=R===Z&&j.id===X;ct.setState(j,R,He)}let Ae=!1,as=!1;j.version===$t.__version?$t.needsLights&&$t.lightsStateVersion!==un.state.version||Q.isBatchedMesh&&$t.batching===!1||!Q.isBatchedMesh&&$t.batching===!0||Q.isBatchedMesh&&$t.batchingColor===!0&&Q._colorsTexture===null||Q.isBatchedMesh&&$t.batchingColor===!1&&Q._colorsTexture!==null||Q.isInstancedMesh&&$t.instancing===!1||!Q.isInstancedMesh&&$t.instancing===!0||Q.isSkinnedMesh&&$t.skinning===!1||!Q.isSkinnedMesh&&$t.skinning===!0||Q.isInstancedMesh&&$t.instancingColor===!0&&Q.instanceColor===null||Q.isInstancedMesh&&$t.instancingColor===!1&&Q.instanceColor!==null||Q.isInstancedMesh&&$t.instancingMorph===!0&&Q.morphTexture===null||Q.isInstancedMesh&&$t.instancingMorph===!1&&Q.morphTexture!==null||$t.envMap!==Zt||j.fog===!0&&$t.fog!==Dt||$t.numClippingPlanes!==void 0&&($t.numClippingPlanes!==ct.numPlanes||$t.numIntersection!==ct.numIntersection)||$t.vertexAlphas!==he||$t.vertexTangents!==Se||$t.morphTargets!==Yt||$t.morphNormals!==be||$t.morphColors!==nn||$t.morphTargetsCount!==xn||$t.numLightProbeGrids!==hn(T.state.lightProbeGridArray)?Ae=!0:($t.outputColorSpace!==Nt||$t.toneMapping!==ze)&&(as=!0):(Ae=!0,$t.__version=j.version);let dn=$t.currentProgram;(Ae===!0||as===!0)&&(dn=as===!0?ti(j,G,Q,Nt,ze):Oi(j,G,Q),F&&j.isNodeMaterial&&F.onUpdateProgram(j,dn,$t));let Tr=!1,Bi=!1,ls=!1,ve=dn.getUniforms(),on=$t.uniforms;if(St.useProgram(dn.program)&&(Tr=!0,Bi=!0,ls=!0),j.id!==X&&(X=j.id,Bi=!0),Tr||Z!==R){St.buffers.depth.getReversed()&&R.reversedDepth!==!0&&(R._reversedDepth=!0,R.updateProjectionMatrix()),ve.setValue(k,"projectionMatrix",R.projectionMatrix),ve.setValue(k,"viewMatrix",R.matrixWorldInverse);let fn=ve.map.cameraPosition;fn!==void 0&&fn.setValue(k,Pe.setFromMatrixPosition(R.matrixWorld)),Ht.logarithmicDepthBuffer&&ve.setValue(k,"logDepthBufFC",2/(Math.log(R.far+1)/Math.LN2)),(j.isMeshPhongMaterial||j.isMeshToonMaterial||j.isMeshLambertMaterial||j.isMeshBasicMaterial||j.isMeshStandardMaterial||j.isShaderMaterial)&&ve.setValue(k,"isOrthographic",R.isOrthographicCamera===!0),Z!==R&&(Z=R,Bi=!0,ls=!0)}if($t.needsLights&&(un.state.sunShadowMap.length>0&&ve.setValue(k,"sunShadowMap",un.state.sunShadowMap,ie),un.state.directionalShadowMap.length>0&&ve.setValue(k,"directionalShadowMap",un.state.directionalShadowMap,ie),un.state.spotShadowMap.length>0&&ve.setValue(k,"spotShadowMap",un.state.spotShadowMap,ie),un.state.pointShadowMap.length>0&&ve.setValue(k,"pointShadowMap",un.state.pointShadowMap,ie)),Q.isSkinnedMesh){ve.setOptional(k,Q,"bindMatrix"),ve.setOptional(k,Q,"bindMatrixInverse");let He=Q.skeleton;He&&(He.boneTexture===null&&He.computeBoneTexture(),ve.setValue(k,"boneTexture",He.boneTexture,ie))}Q.isBatchedMesh&&(ve.setOptional(k,Q,"batchingTexture"),ve.setValue(k,"batchingTexture",Q._matricesTexture,ie),ve.setOptional(k,Q,"batchingIdTexture"),ve.setValue(k,"batchingIdTexture",Q._indirectTexture,ie),ve.setOptional(k,Q,"batchingColorTexture"),Q._colorsTexture!==null&&ve.setValue(k,"batchingColorTexture",Q._colorsTexture,ie));let Hn=rt.morphAttributes;if((Hn.position!==void 0||Hn.normal!==void 0||Hn.color!==void 0)&&ut.update(Q,rt,dn),(Bi||$t.receiveShadow!==Q.receiveShadow)&&($t.receiveShadow=Q.receiveShadow,ve.setValue(k,"receiveShadow",Q.receiveShadow)),(j.isMeshStandardMaterial||j.isMeshLambertMaterial||j.isMeshPhongMaterial)&&j.envMap===null&&G.environment!==null&&(on.envMapIntensity.value=G.environmentIntensity),on.dfgLUT!==void 0&&(on.dfgLUT.value=$S()),Bi){if(ve.setValue(k,"toneMappingExposure",S.toneMappingExposure),$t.needsLights&&wr(on,ls),Dt&&j.fog===!0&&Rt.refreshFogUniforms(on,Dt),Rt.refreshMaterialUniforms(on,j,st,it,T.state.transmissionRenderTarget[R.id]),$t.needsLights&&$t.numLightProbeGrids>0){let He=b,fn=0;for(let Fn of T.state.lightProbeGridArray)Fn.texture!==null&&(He.textures[fn]=Fn.texture,He.min[fn]=Fn.boundingBox.min,He.max[fn]=Fn.boundingBox.max,He.resolution[fn]=Fn.resolution,fn++);for(let Fn in He)He[Fn].length=fn;on.probesSH.value=He.textures,on.probesMin.value=He.min,on.probesMax.value=He.max,on.probesResolution.value=He.resolution}xo.upload(k,Rs($t),on,ie)}if(j.isShaderMaterial&&j.uniformsNeedUpdate===!0&&(xo.upload(k,Rs($t),on,ie),j.uniformsNeedUpdate=!1),j.isSpriteMaterial&&ve.setValue(k,"center",Q.center),ve.setValue(k,"modelViewMatrix",Q.modelViewMatrix),ve.setValue(k,"normalMatrix",Q.normalMatrix),ve.setValue(k,"modelMatrix",Q.matrixWorld),j.uniformsGroups!==void 0){let He=j.uniformsGroups;for(let fn=0,Fn=He.length;fn<Fn;fn++){let Ya=He[fn];te.update(Ya,dn),te.bind(Ya,dn)}}return dn}function wr(R,G){R.ambientLightColor.needsUpdate=G,R.lightProbe.needsUpdate=G,R.sunLights.needsUpdate=G,R.sunLightShadows.needsUpdate=G,R.directionalLights.needsUpdate=G,R.directionalLightShadows.needsUpdate=G,R.pointLights.needsUpdate=G,R.pointLightShadows.needsUpdate=G,R.spotLights.needsUpdate=G,R.spotLightShadows.needsUpdate=G,R.rectAreaLights.needsUpdate=G,R.hemisphereLights.needsUpdate=G}function Cs(R){return R.isMeshLambertMaterial||R.isMeshToonMaterial||R.isMeshPhongMaterial||R.isMeshStandardMaterial||R.isShadowMaterial||R.isShaderMaterial&&R.lights===!0}this.getActiveCubeFace=function(){return $},this.getActiveMipmapLevel=function(){return H},this.getRenderTarget=function(){return K},this.setRenderTargetTextures=function(R,G,rt){let j=jt.get(R);j.__autoAllocateDepthBuffer=R.resolveDepthBuffer===!1,j.__autoAllocateDepthBuffer===!1&&(j.__useRenderToTexture=!1),jt.get(R.texture).__webglTexture=G,jt.get(R.depthTexture).__webglTexture=j.__autoAllocateDepthBuffer?void 0:rt,j.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(R,G){let rt=jt.get(R);rt.__webglFramebuffer=G,rt.__useDefaultFramebuffer=G===void 0},this.setRenderTarget=function(R,G=0,rt=0){K=R,$=G,H=rt;let j=null,Q=!1,Dt=!1;if(R){let Nt=jt.get(R);if(Nt.__useDefaultFramebuffer!==void 0){St.bindFramebuffer(k.FRAMEBUFFER,Nt.__webglFramebuffer),nt.copy(R.viewport),dt.copy(R.scissor),ft=R.scissorTest,St.viewport(nt),St.scissor(dt),St.setScissorTest(ft),X=-1;return}else if(Nt.__webglFramebuffer===void 0)ie.setupRenderTarget(R);else if(Nt.__hasExternalTextures)ie.rebindTextures(R,jt.get(R.texture).__webglTexture,jt.get(R.depthTexture).__webglTexture);else if(R.depthBuffer){let he=R.depthTexture;if(Nt.__boundDepthTexture!==he){if(he!==null&&jt.has(he)&&(R.width!==he.image.width||R.height!==he.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");ie.setupDepthRenderbuffer(R)}}let kt=R.texture;(kt.isData3DTexture||kt.isDataArrayTexture||kt.isCompressedArrayTexture)&&(Dt=!0);let Zt=jt.get(R).__webglFramebuffer;R.isWebGLCubeRenderTarget?(Array.isArray(Zt[G])?j=Zt[G][rt]:j=Zt[G],Q=!0):R.samples>0&&ie.useMultisampledRTT(R)===!1?j=jt.get(R).__webglMultisampledFramebuffer:Array.isArray(Zt)?j=Zt[rt]:j=Zt,nt.copy(R.viewport),dt.copy(R.scissor),ft=R.scissorTest}else nt.copy(wt).multiplyScalar(st).floor(),dt.copy(ne).multiplyScalar(st).floor(),ft=se;if(rt!==0&&(j=O),St.bindFramebuffer(k.FRAMEBUFFER,j)&&St.drawBuffers(R,j),St.viewport(nt),St.scissor(dt),St.setScissorTest(ft),Q){let Nt=jt.get(R.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_CUBE_MAP_POSITIVE_X+G,Nt.__webglTexture,rt)}else if(Dt){let Nt=G;for(let kt=0;kt<R.textures.length;kt++){let Zt=jt.get(R.textures[kt]);k.framebufferTextureLayer(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0+kt,Zt.__webglTexture,rt,Nt)}}else if(R!==null&&rt!==0){let Nt=jt.get(R.texture);k.framebufferTexture2D(k.FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,Nt.__webglTexture,rt)}X=-1};function Er(R){let G=jt.get(R);return(G.__readFormat!==R.format||G.__readType!==R.type)&&(G.__readFormat=R.format,G.__readType=R.type,G.__formatReadable=Ht.textureFormatReadable(R.format),G.__typeReadable=Ht.textureTypeReadable(R.type)),G}this.readRenderTargetPixels=function(R,G,rt,j,Q,Dt,Bt,Nt=0){if(!(R&&R.isWebGLRenderTarget)){ue("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let kt=jt.get(R).__webglFramebuffer;if(R.isWebGLCubeRenderTarget&&Bt!==void 0&&(kt=kt[Bt],Array.isArray(kt)&&(kt=kt[0])),kt){St.bindFramebuffer(k.FRAMEBUFFER,kt);try{let Zt=R.textures[Nt],he=Zt.format,Se=Zt.type;R.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+Nt);let Yt=Er(Zt);if(Yt.__formatReadable===!1){ue("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Yt.__typeReadable===!1){ue("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}G>=0&&G<=R.width-j&&rt>=0&&rt<=R.height-Q&&k.readPixels(G,rt,j,Q,At.convert(he),At.convert(Se),Dt)}finally{let Zt=K!==null?jt.get(K).__webglFramebuffer:null;St.bindFramebuffer(k.FRAMEBUFFER,Zt)}}},this.readRenderTargetPixelsAsync=async function(R,G,rt,j,Q,Dt,Bt,Nt=0){if(!(R&&R.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let kt=jt.get(R).__webglFramebuffer;if(R.isWebGLCubeRenderTarget&&Bt!==void 0&&(kt=kt[Bt],Array.isArray(kt)&&(kt=kt[0])),kt)if(G>=0&&G<=R.width-j&&rt>=0&&rt<=R.height-Q){St.bindFramebuffer(k.FRAMEBUFFER,kt);let Zt=R.textures[Nt],he=Zt.format,Se=Zt.type;R.textures.length>1&&k.readBuffer(k.COLOR_ATTACHMENT0+Nt);let Yt=Er(Zt);if(Yt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Yt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let be=k.createBuffer();k.bindBuffer(k.PIXEL_PACK_BUFFER,be),k.bufferData(k.PIXEL_PACK_BUFFER,Dt.byteLength,k.STREAM_READ),k.readPixels(G,rt,j,Q,At.convert(he),At.convert(Se),0),k.bindBuffer(k.PIXEL_PACK_BUFFER,null);let nn=K!==null?jt.get(K).__webglFramebuffer:null;St.bindFramebuffer(k.FRAMEBUFFER,nn);let ze=k.fenceSync(k.SYNC_GPU_COMMANDS_COMPLETE,0);return k.flush(),await qp(k,ze,4),k.bindBuffer(k.PIXEL_PACK_BUFFER,be),k.getBufferSubData(k.PIXEL_PACK_BUFFER,0,Dt),k.bindBuffer(k.PIXEL_PACK_BUFFER,null),k.deleteBuffer(be),k.deleteSync(ze),Dt}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(R,G=null,rt=0){let j=Math.pow(2,-rt),Q=Math.floor(R.image.width*j),Dt=Math.floor(R.image.height*j),Bt=G!==null?G.x:0,Nt=G!==null?G.y:0;ie.setTexture2D(R,0),k.copyTexSubImage2D(k.TEXTURE_2D,rt,0,0,Bt,Nt,Q,Dt),St.unbindTexture()},this.copyTextureToTexture=function(R,G,rt=null,j=null,Q=0,Dt=0){let Bt,Nt,kt,Zt,he,Se,Yt,be,nn,ze=R.isCompressedTexture?R.mipmaps[Dt]:R.image;if(rt!==null)Bt=rt.max.x-rt.min.x,Nt=rt.max.y-rt.min.y,kt=rt.isBox3?rt.max.z-rt.min.z:1,Zt=rt.min.x,he=rt.min.y,Se=rt.isBox3?rt.min.z:0;else{let ve=Math.pow(2,-Q);Bt=Math.floor(ze.width*ve),Nt=Math.floor(ze.height*ve),R.isDataArrayTexture?kt=ze.depth:R.isData3DTexture?kt=Math.floor(ze.depth*ve):kt=1,Zt=0,he=0,Se=0}j!==null?(Yt=j.x,be=j.y,nn=j.z):(Yt=0,be=0,nn=0);let Ve=At.convert(G.format),xn=At.convert(G.type),$t;G.isData3DTexture?(ie.setTexture3D(G,0),$t=k.TEXTURE_3D):G.isDataArrayTexture||G.isCompressedArrayTexture?(ie.setTexture2DArray(G,0),$t=k.TEXTURE_2D_ARRAY):(ie.setTexture2D(G,0),$t=k.TEXTURE_2D),St.activeTexture(k.TEXTURE0),St.pixelStorei(k.UNPACK_FLIP_Y_WEBGL,G.flipY),St.pixelStorei(k.UNPACK_PREMULTIPLY_ALPHA_WEBGL,G.premultiplyAlpha),St.pixelStorei(k.UNPACK_ALIGNMENT,G.unpackAlignment);let un=St.getParameter(k.UNPACK_ROW_LENGTH),Ae=St.getParameter(k.UNPACK_IMAGE_HEIGHT),as=St.getParameter(k.UNPACK_SKIP_PIXELS),dn=St.getParameter(k.UNPACK_SKIP_ROWS),Tr=St.getParameter(k.UNPACK_SKIP_IMAGES);St.pixelStorei(k.UNPACK_ROW_LENGTH,ze.width),St.pixelStorei(k.UNPACK_IMAGE_HEIGHT,ze.height),St.pixelStorei(k.UNPACK_SKIP_PIXELS,Zt),St.pixelStorei(k.UNPACK_SKIP_ROWS,he),St.pixelStorei(k.UNPACK_SKIP_IMAGES,Se);let Bi=R.isDataArrayTexture||R.isData3DTexture,ls=G.isDataArrayTexture||G.isData3DTexture;if(R.isDepthTexture){let ve=jt.get(R),on=jt.get(G),Hn=jt.get(ve.__renderTarget),He=jt.get(on.__renderTarget);St.bindFramebuffer(k.READ_FRAMEBUFFER,Hn.__webglFramebuffer),St.bindFramebuffer(k.DRAW_FRAMEBUFFER,He.__webglFramebuffer);for(let fn=0;fn<kt;fn++)Bi&&(k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,jt.get(R).__webglTexture,Q,Se+fn),k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,jt.get(G).__webglTexture,Dt,nn+fn)),k.blitFramebuffer(Zt,he,Zt+Bt,he+Nt,Yt,be,Yt+Bt,be+Nt,k.DEPTH_BUFFER_BIT,k.NEAREST);St.bindFramebuffer(k.READ_FRAMEBUFFER,null),St.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else if(Q!==0||R.isRenderTargetTexture||jt.has(R)){let ve=jt.get(R),on=jt.get(G);St.bindFramebuffer(k.READ_FRAMEBUFFER,D),St.bindFramebuffer(k.DRAW_FRAMEBUFFER,V);for(let Hn=0;Hn<kt;Hn++)Bi?k.framebufferTextureLayer(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,ve.__webglTexture,Q,Se+Hn):k.framebufferTexture2D(k.READ_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,ve.__webglTexture,Q),ls?k.framebufferTextureLayer(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,on.__webglTexture,Dt,nn+Hn):k.framebufferTexture2D(k.DRAW_FRAMEBUFFER,k.COLOR_ATTACHMENT0,k.TEXTURE_2D,on.__webglTexture,Dt),Q!==0?k.blitFramebuffer(Zt,he,Zt+Bt,he+Nt,Yt,be,Yt+Bt,be+Nt,k.COLOR_BUFFER_BIT,k.NEAREST):ls?k.copyTexSubImage3D($t,Dt,Yt,be,nn+Hn,Zt,he,Bt,Nt):k.copyTexSubImage2D($t,Dt,Yt,be,Zt,he,Bt,Nt);St.bindFramebuffer(k.READ_FRAMEBUFFER,null),St.bindFramebuffer(k.DRAW_FRAMEBUFFER,null)}else ls?R.isDataTexture||R.isData3DTexture?k.texSubImage3D($t,Dt,Yt,be,nn,Bt,Nt,kt,Ve,xn,ze.data):G.isCompressedArrayTexture?k.compressedTexSubImage3D($t,Dt,Yt,be,nn,Bt,Nt,kt,Ve,ze.data):k.texSubImage3D($t,Dt,Yt,be,nn,Bt,Nt,kt,Ve,xn,ze):R.isDataTexture?k.texSubImage2D(k.TEXTURE_2D,Dt,Yt,be,Bt,Nt,Ve,xn,ze.data):R.isCompressedTexture?k.compressedTexSubImage2D(k.TEXTURE_2D,Dt,Yt,be,ze.width,ze.height,Ve,ze.data):k.texSubImage2D(k.TEXTURE_2D,Dt,Yt,be,Bt,Nt,Ve,xn,ze);St.pixelStorei(k.UNPACK_ROW_LENGTH,un),St.pixelStorei(k.UNPACK_IMAGE_HEIGHT,Ae),St.pixelStorei(k.UNPACK_SKIP_PIXELS,as),St.pixelStorei(k.UNPACK_SKIP_ROWS,dn),St.pixelStorei(k.UNPACK_SKIP_IMAGES,Tr),Dt===0&&G.generateMipmaps===!0&&G.mipmapsAutoUpdate===!0&&k.generateMipmap($t),St.unbindTexture()},this.initRenderTarget=function(R){jt.get(R).__webglFramebuffer===void 0&&ie.setupRenderTarget(R)},this.initTexture=function(R){R.isCubeTexture?ie.setTextureCube(R,0):R.isData3DTexture?ie.setTexture3D(R,0):R.isDataArrayTexture||R.isCompressedArrayTexture?ie.setTexture2DArray(R,0):ie.setTexture2D(R,0),St.unbindTexture()},this.resetState=function(){$=0,H=0,K=null,St.reset(),It.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return _i}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=Re._getDrawingBufferColorSpace(t),e.unpackColorSpace=Re._getUnpackColorSpace()}};var Dm={type:"change"},cd={type:"start"},Um={type:"end"},Qc=new lr,Nm=new ai,qS=Math.cos(70*qu.DEG2RAD),Mn=new Y,Qn=2*Math.PI,Fe={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},ld=1e-6,th=class extends wa{constructor(t,e=null){super(t,e),this.state=Fe.NONE,this.target=new Y,this.cursor=new Y,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Ws.ROTATE,MIDDLE:Ws.DOLLY,RIGHT:Ws.PAN},this.touches={ONE:$s.ROTATE,TWO:$s.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new Y,this._lastQuaternion=new Dn,this._lastTargetPosition=new Y,this._quat=new Dn().setFromUnitVectors(t.up,new Y(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new uo,this._sphericalDelta=new uo,this._scale=1,this._panOffset=new Y,this._rotateStart=new ce,this._rotateEnd=new ce,this._rotateDelta=new ce,this._panStart=new ce,this._panEnd=new ce,this._panDelta=new ce,this._dollyStart=new ce,this._dollyEnd=new ce,this._dollyDelta=new ce,this._dollyDirection=new Y,this._mouse=new ce,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=ZS.bind(this),this._onPointerDown=YS.bind(this),this._onPointerUp=JS.bind(this),this._onContextMenu=ib.bind(this),this._onMouseWheel=QS.bind(this),this._onKeyDown=tb.bind(this),this._onTouchStart=eb.bind(this),this._onTouchMove=nb.bind(this),this._onMouseDown=KS.bind(this),this._onMouseMove=jS.bind(this),this._interceptControlDown=sb.bind(this),this._interceptControlUp=rb.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Fe.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(Dm),this.update(),this.state=Fe.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;Mn.copy(e).sub(this.target),Mn.applyQuaternion(this._quat),this._spherical.setFromVector3(Mn),this.autoRotate&&this.state===Fe.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Qn:n>Math.PI&&(n-=Qn),s<-Math.PI?s+=Qn:s>Math.PI&&(s-=Qn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(Mn.setFromSpherical(this._spherical),Mn.applyQuaternion(this._quatInverse),e.copy(this.target).add(Mn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=Mn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new Y(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new Y(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=Mn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Qc.origin.copy(this.object.position),Qc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Qc.direction))<qS?this.object.lookAt(this.target):(Nm.setFromNormalAndCoplanarPoint(this.object.up,this.target),Qc.intersectPlane(Nm,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>ld||8*(1-this._lastQuaternion.dot(this.object.quaternion))>ld||this._lastTargetPosition.distanceToSquared(this.target)>ld?(this.dispatchEvent(Dm),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Qn/60*this.autoRotateSpeed*t:Qn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){Mn.setFromMatrixColumn(e,0),Mn.multiplyScalar(-t),this._panOffset.add(Mn)}_panUp(t,e){this.screenSpacePanning===!0?Mn.setFromMatrixColumn(e,1):(Mn.setFromMatrixColumn(e,0),Mn.crossVectors(this.object.up,Mn)),Mn.multiplyScalar(t),this._panOffset.add(Mn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;Mn.copy(s).sub(this.target);let r=Mn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new ce,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function YS(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function ZS(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function JS(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(Um),this.state=Fe.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function KS(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Ws.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Fe.DOLLY;break;case Ws.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Fe.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Fe.ROTATE}break;case Ws.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Fe.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Fe.PAN}break;default:this.state=Fe.NONE}this.state!==Fe.NONE&&this.dispatchEvent(cd)}function jS(i){switch(this.state){case Fe.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Fe.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Fe.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function QS(i){this.enabled===!1||this.enableZoom===!1||this.state!==Fe.NONE||(i.preventDefault(),this.dispatchEvent(cd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(Um))}function tb(i){this.enabled!==!1&&this._handleKeyDown(i)}function eb(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case $s.ROTATE:if(this.enableRotate===!1){this.state=Fe.NONE;break}this._handleTouchStartRotate(i),this.state=Fe.TOUCH_ROTATE;break;case $s.PAN:if(this.enablePan===!1){this.state=Fe.NONE;break}this._handleTouchStartPan(i),this.state=Fe.TOUCH_PAN;break;default:this.state=Fe.NONE}break;case 2:switch(this.touches.TWO){case $s.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Fe.TOUCH_DOLLY_PAN;break;case $s.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Fe.TOUCH_DOLLY_ROTATE;break;default:this.state=Fe.NONE}break;default:this.state=Fe.NONE}this.state!==Fe.NONE&&this.dispatchEvent(cd)}function nb(i){switch(this._trackPointer(i),this.state){case Fe.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Fe.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Fe.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Fe.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Fe.NONE}}function ib(i){this.enabled!==!1&&i.preventDefault()}function sb(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function rb(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var eh=i=>{let t=Math.max(i.points.width/3-1,0);return{data:new Float64Array(t*5*8),count:0,slackAt:-1,slackPoint:[0,0,0]}};function nh(i,t){let e=i.points.now,n=e.length/3-1,s=i.slack.now[0]||0,r=.002*(i.most_tension||1),o=u=>i.tension.now[i.span_of?.[u]??0]??0,a=u=>Math.hypot(e[3*u+3]-e[3*u],e[3*u+4]-e[3*u+1],e[3*u+5]-e[3*u+2]),l=0,c=0;if(t.slackAt=-1,s>.02){for(let u=0;u<n;++u)if(o(u)<r){let p=a(u);l+=p,p>c&&(c=p,t.slackAt=u)}}let h=0,d=(u,p,g,x,m,f,y)=>{let C=h++*8,b=t.data;b[C]=u,b[C+1]=p,b[C+2]=g,b[C+3]=x,b[C+4]=m,b[C+5]=f,b[C+6]=y,b[C+7]=Math.hypot(x-u,m-p,f-g)};for(let u=0;u<n;++u){let p=3*u,g=o(u);if(e[p]!==e[p]||e[p+3]!==e[p+3])continue;if(!(l>0&&g<r)){d(e[p],e[p+1],e[p+2],e[p+3],e[p+4],e[p+5],g);continue}let x=a(u),m=Math.sqrt(3/8*x*s*x/l);if(u===t.slackAt)for(let f=0;f<3;++f)t.slackPoint[f]=.5*(e[p+f]+e[p+3+f])-(f===1?m:0);for(let f=0;f<5;++f){let y=f/5,C=(f+.6)/5,b=T=>m*4*T*(1-T),I=(T,_)=>e[p+_]+T*(e[p+3+_]-e[p+_]);d(I(y,0),I(y,1)-b(y),I(y,2),I(C,0),I(C,1)-b(C),I(C,2),-1)}}t.count=h}function ih(i,t,e=.004){let n=[];for(let r of i.pins)n.push({kind:"pin",at:[0,0,0],text:r.joint,shown:!0,source:r});for(let r of i.arrows)n.push({kind:r.kind,at:[0,0,0],text:"",shown:!1,source:r});for(let r of i.cords)n.push({kind:"slack",at:[0,0,0],text:"",shown:!1,source:r});function s(r){for(let o of n){let{source:a}=o;if(o.kind==="pin"){let l=i.bodies[a.body];l&&Wi(l.pose.now,a.at,o.at)}else if(o.kind==="slack"){let l=a.slack.now[0]||0,c=r(a);if(o.shown=l>.02,!o.shown)continue;if(o.text=`${a.name}: ${sn(l,2)} mm slack`,c.slackAt>=0)for(let h=0;h<3;++h)o.at[h]=c.slackPoint[h];else for(let h=0;h<3;++h)o.at[h]=a.points.now[h]}else{let l=a.force.now,c=a.point.now,h=Math.hypot(l[0],l[1],l[2]);if(o.shown=h>e*t.mostForce,!o.shown)continue;let d=t.mmPerNewton+3.5/h;for(let u=0;u<3;++u)o.at[u]=c[u]+l[u]*d;o.text=`${sn(h,2)} N`}}}return{labels:n,update:s}}var ob=.3,ab=.6;function Om(){try{let i=document.createElement("canvas").getContext("webgl2");return i?.getExtension("WEBGL_lose_context")?.loseContext(),!!i}catch{return!1}}var hd=(i,t)=>new Dn().setFromUnitVectors(new Y(0,1,0),new Y(t[0]-i[0],t[1]-i[1],t[2]-i[2]).normalize());function Fm(i,t){let e;switch(i.kind){case"capsule":{let{from:n,to:s,radius:r}=i,o=Math.hypot(s[0]-n[0],s[1]-n[1],s[2]-n[2]);e=new pa(r+t,o,12,40),o>0&&e.applyQuaternion(hd(n,s)),e.translate((n[0]+s[0])/2,(n[1]+s[1])/2,(n[2]+s[2])/2);break}case"sphere":e=new co(i.radius+t,40,24),e.translate(...i.center);break;case"cylinder":e=new Ji(i.radius+t,i.radius+t,i.length+2*t,64),e.applyQuaternion(hd([0,0,0],i.axis)),e.translate(...i.center);break;case"box":{e=new Ss(...i.size.map(s=>s+2*t));let n=i.rotation??[1,0,0,0,1,0,0,0,1];e.applyMatrix4(new Ue().set(n[0],n[1],n[2],i.center[0],n[3],n[4],n[5],i.center[1],n[6],n[7],n[8],i.center[2],0,0,0,1));break}case"hull":{let n=[0,1,2].map(r=>i.points.reduce((o,a)=>o+a[r],0)/i.points.length),s=r=>{let o=i.points[r].map((l,c)=>l-n[c]),a=Math.hypot(...o)||1;return o.map((l,c)=>n[c]+l*(1+t/a))};e=new Zn,e.setAttribute("position",new Xe(i.faces.flatMap(r=>r.flatMap(s)),3)),e.computeVertexNormals();break}default:return null}return e}function Bm(i,t,e,{labelText:n}){let s=new Jc({antialias:!0,alpha:!0});s.setPixelRatio(Math.min(devicePixelRatio,2));let r=s.domElement;r.setAttribute("aria-hidden","true");let o=M("div",{class:"labels","aria-hidden":"true"});i.append(r,o);let a=new ra,l=new hr(-1,1,1,-1,.1,4e3),c=new Ma(16777215,12895428,2.5),h=new ba(16777215,.9);h.position.set(-.4,1,.8),a.add(c,h);let d=(lt,Tt)=>{let Ot=new xa(Tt);return Ot.userData.variable=lt,Ot},u=(lt,Tt)=>{let Ot=new ks(Tt);return Ot.userData.variable=lt,Ot},p={phalanx:d("--phalanx"),pad:d("--pad"),palm:d("--palm"),object:d("--object",{transparent:!0,opacity:.5,depthWrite:!1}),outline:u("--outline",{side:Un}),edge:new lo,metal:d("--metal",{depthTest:!1,transparent:!0}),ring:u("--outline",{depthTest:!1,transparent:!0}),pulley:d("--pulley",{depthTest:!1,transparent:!0}),contact:u("--force",{depthTest:!1,transparent:!0}),load:u("--load",{depthTest:!1,transparent:!0})};p.edge.userData.variable="--object-edge";let g=t.bodies.map(lt=>{let Tt=new Yi;for(let Ot of lt.shapes??[]){let Jt=Fm(Ot,0);if(!Jt)continue;let k=lt.role==="object"?"object":lt.role==="palm"?"palm":Ot.role==="contact"?"pad":"phalanx";Tt.add(new gn(Jt,p[k])),k==="object"?Tt.add(new ha(new ga(Jt,30),p.edge)):Tt.add(new gn(Fm(Ot,ob),p.outline))}return a.add(Tt),Tt}),x=(lt,Tt,Ot,Jt,k)=>(Tt.position.set(...Ot),Tt.quaternion.copy(hd([0,0,0],Jt)),Tt.renderOrder=k,(g[lt]??a).add(Tt),Tt),m=(lt,Tt,Ot)=>(x(lt.body,new gn(new Ji(lt.radius+.25,lt.radius+.25,lt.length,32),p.ring),lt.at,lt.axis,Ot),x(lt.body,new gn(new Ji(lt.radius,lt.radius,lt.length+.2,32),Tt),lt.at,lt.axis,Ot+1));for(let lt of t.pins)m(lt,p.metal,10);for(let lt of t.guides)m(lt,p.metal,10);let f=t.pulleys.map(lt=>{m(lt,p.pulley,6);let Tt=new Yi,Ot=new gn(new Ss(lt.radius,lt.length+.4,.7),p.ring);return Ot.position.x=lt.radius/2,Tt.add(Ot),Ot.renderOrder=8,x(lt.body,Tt,lt.at,lt.axis,8),{mark:Tt,rest:Tt.quaternion.clone(),angle:lt.angle}}),y=new Ji(1,1,1,12),C=new co(1,12,8),b=t.cords.map(lt=>{let Tt=eh(lt),Ot=Math.max(Tt.data.length/8,1),Jt=(Wt,Ht,St)=>{let Ie=new ca(Wt,Ht,Ot);return Ie.instanceColor=new cr(new Float32Array(3*Ot),3),Ie.frustumCulled=!1,Ie.renderOrder=St,a.add(Ie),Ie},k=new ks,_t=new ks({transparent:!0,opacity:.8,depthFunc:no,depthWrite:!1});return{cord:lt,pieces:Tt,radius:Math.max(lt.radius||0,ab)*(lt.kind==="rubber"?1.15:1),rods:[Jt(y,_t,2),Jt(y,k,3)],balls:[Jt(C,_t,2),Jt(C,k,3)]}}),I=lt=>b.find(Tt=>Tt.cord===lt).pieces,T=t.arrows.map(lt=>{let Tt=p[lt.kind],Ot=new gn(new Ji(.55,.55,1,12),Tt),Jt=new gn(new ma(1.7,4.2,20),Tt);return Ot.renderOrder=Jt.renderOrder=20,a.add(Ot,Jt),{arrow:lt,shaft:Ot,head:Jt}}),{labels:_,update:w}=ih(t,e),L=_.map(lt=>{let Tt=ht(lt.text,{class:`tag tag-${lt.kind}`});return o.append(Tt),Tt}),S=new th(l,r);S.enableDamping=!1,S.zoomSpeed=1.2,r.style.touchAction="pan-y",r.addEventListener("wheel",lt=>{!lt.ctrlKey&&!lt.metaKey&&lt.stopImmediatePropagation()},{capture:!0});let P={side:[0,0,1],iso:[.75,.55,1],palm:[0,-1,1e-4],back:[-.6,.5,1]},F=4*Math.hypot(...e.high.map((lt,Tt)=>lt-e.low[Tt])),O=new Y(...e.centre),D=1,V=1,$=1,H=!1,K=new Y;function X(){l.updateMatrixWorld();let lt=1,Tt=1;for(let Jt=0;Jt<8;++Jt)K.set(Jt&1?e.high[0]:e.low[0],Jt&2?e.high[1]:e.low[1],Jt&4?e.high[2]:e.low[2]),K.applyMatrix4(l.matrixWorldInverse),lt=Math.max(lt,Math.abs(K.x)),Tt=Math.max(Tt,Math.abs(K.y));$=Math.max(2*lt/D,2*Tt/V)*1.05,Z()}function Z(){l.left=-D*$/2,l.right=D*$/2,l.top=V*$/2,l.bottom=-V*$/2,l.updateProjectionMatrix(),xe()}function nt(lt){l.up.set(0,1,0);let[Tt,Ot,Jt]=P[lt]??P.side;S.target.copy(O),l.position.set(Tt,Ot,Jt).normalize().multiplyScalar(F).add(O),l.zoom=1,l.lookAt(O),S.update(),X()}let dt=[];S.addEventListener("change",()=>{xe();for(let lt of dt)lt(l,S)});let ft=new Y(0,1,0),et=new Y,Mt=new Ue,q=new Dn,it=new Y,st=new Y,gt=new Y(0,1,0),Ut=new Dn,wt=[0,0,0],ne=new ye,se=new ye;function Kt(){t.bodies.forEach((lt,Tt)=>{let Ot=lt.pose.now;g[Tt].position.set(Ot[0],Ot[1],Ot[2]),g[Tt].quaternion.set(Ot[3],Ot[4],Ot[5],Ot[6])});for(let lt of f)Ut.setFromAxisAngle(gt,(lt.angle.now[0]||0)*Math.PI/180),lt.mark.quaternion.copy(lt.rest).multiply(Ut);for(let{cord:lt,pieces:Tt,radius:Ot,rods:Jt,balls:k}of b){nh(lt,Tt);let _t=Tt.data;for(let Wt=0;Wt<Tt.count;++Wt){let Ht=Wt*8;et.set(_t[Ht+3]-_t[Ht],_t[Ht+4]-_t[Ht+1],_t[Ht+5]-_t[Ht+2]).normalize(),q.setFromUnitVectors(ft,et),it.set((_t[Ht]+_t[Ht+3])/2,(_t[Ht+1]+_t[Ht+4])/2,(_t[Ht+2]+_t[Ht+5])/2),st.set(Ot,_t[Ht+7],Ot),Mt.compose(it,q,st),_t[Ht+6]<0?ne.copy(se):(Gh(_t[Ht+6]/e.mostTension,wt),ne.setRGB(wt[0],wt[1],wt[2],qn));for(let St of Jt)St.setMatrixAt(Wt,Mt),St.setColorAt(Wt,ne);it.set(_t[Ht+3],_t[Ht+4],_t[Ht+5]),st.set(Ot,Ot,Ot),Mt.compose(it,q,st);for(let St of k)St.setMatrixAt(Wt,Mt),St.setColorAt(Wt,ne)}for(let Wt of[Jt[0],Jt[1],k[0],k[1]])Wt.count=Tt.count,Wt.instanceMatrix.needsUpdate=!0,Wt.instanceColor.needsUpdate=!0}for(let{arrow:lt,shaft:Tt,head:Ot}of T){let Jt=lt.force.now,k=lt.point.now,_t=Math.hypot(Jt[0],Jt[1],Jt[2]),Wt=_t>.004*e.mostForce&&k[0]===k[0];if(Tt.visible=Ot.visible=Wt,!Wt)continue;let Ht=_t*e.mmPerNewton,St=Math.min(4.2,.6*Ht);et.set(Jt[0]/_t,Jt[1]/_t,Jt[2]/_t),Tt.quaternion.setFromUnitVectors(ft,et),Ot.quaternion.copy(Tt.quaternion),Tt.position.set(k[0],k[1],k[2]).addScaledVector(et,(Ht-St)/2),Tt.scale.set(1,Math.max(Ht-St,.001),1),Ot.position.set(k[0],k[1],k[2]).addScaledVector(et,Ht-St/2),Ot.scale.setScalar(St/4.2)}w(I),xe()}function Ee(){let lt=n();for(let Tt=0;Tt<_.length;++Tt){let Ot=_[Tt],Jt=L[Tt],k=Ot.shown&&lt;Jt.hidden===k&&(Jt.hidden=!k),k&&(it.set(Ot.at[0],Ot.at[1],Ot.at[2]).project(l),On(Jt,Ot.text),Jt.style.transform=`translate(-50%, -50%) translate(${((it.x+1)/2*D).toFixed(1)}px, ${((1-it.y)/2*V).toFixed(1)}px)`)}}function Qt(){H=!1,s.render(a,l),Ee()}function xe(){H||(H=!0,requestAnimationFrame(Qt))}function pe(){for(let lt of Object.values(p))lt.color.set(nr(lt.userData.variable));se.set(nr("--slack")),Kt()}return $i(pe),new ResizeObserver(()=>{let lt=i.getBoundingClientRect();if(lt.width<1||lt.height<1)return;let Tt=l.zoom;D=lt.width,V=lt.height,s.setSize(D,V,!1),l.zoom=1,X(),l.zoom=Tt,l.updateProjectionMatrix()}).observe(i),pe(),nt("side"),{kind:"3d",update:Kt,look:nt,invalidate:xe,zoomBy(lt){l.zoom=Math.min(Math.max(l.zoom*lt,.3),20),l.updateProjectionMatrix(),S.update();for(let Tt of dt)Tt(l,S);xe()},pixelsPerMm:()=>l.zoom/$,onCamera(lt){dt.push(lt)},follow(lt,Tt){l.position.equals(lt.position)&&l.zoom===lt.zoom&&S.target.equals(Tt.target)||(l.position.copy(lt.position),l.quaternion.copy(lt.quaternion),S.target.copy(Tt.target),l.zoom=lt.zoom,l.updateProjectionMatrix(),S.update(),xe())}}}function lb(i){let t=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),e=n=>{let s=[];for(let r of n){for(;s.length>1;){let[o,a]=[s[s.length-2],s[s.length-1]];if((a[0]-o[0])*(r[1]-o[1])-(a[1]-o[1])*(r[0]-o[0])>0)break;s.pop()}s.push(r)}return s.pop(),s};return[...e(t),...e(t.reverse())]}var me=i=>i.toFixed(2),cb=i=>i.map((t,e)=>`${e?"L":"M"}${me(t[0])} ${me(-t[1])}`).join("")+"Z";function Vm(i,t){let e=i[0],n=-i[1];return`M${me(e-t)} ${me(n)}a${me(t)} ${me(t)} 0 1 0 ${me(2*t)} 0a${me(t)} ${me(t)} 0 1 0 ${me(-2*t)} 0Z`}function hb(i,t,e){let n=t[0]-i[0],s=t[1]-i[1],r=Math.hypot(n,s);if(r<1e-6)return Vm(i,e);let o=n/r*e,a=s/r*e,l=(h,d,u)=>`${me(h[0]+d)} ${me(-h[1]-u)}`,c=(h,d,u)=>`A${me(e)} ${me(e)} 0 0 1 ${l(h,d,u)}`;return`M${l(i,-a,o)}L${l(t,-a,o)}${c(t,o,a)}${c(t,a,-o)}L${l(i,a,-o)}${c(i,-o,-a)}${c(i,-a,o)}Z`}function ub(i){if(i.kind==="hull")return i.points;if(i.kind==="box"){let t=i.rotation??[1,0,0,0,1,0,0,0,1];return[0,1,2,3,4,5,6,7].map(e=>{let n=[e&1?.5:-.5,e&2?.5:-.5,e&4?.5:-.5].map((s,r)=>s*i.size[r]);return[0,1,2].map(s=>i.center[s]+t[3*s]*n[0]+t[3*s+1]*n[1]+t[3*s+2]*n[2])})}if(i.kind==="cylinder"){let t=Math.hypot(...i.axis),e=i.axis.map(c=>c/t),n=Math.abs(e[0])<.8?[1,0,0]:[0,1,0],s=(c,h)=>[c[1]*h[2]-c[2]*h[1],c[2]*h[0]-c[0]*h[2],c[0]*h[1]-c[1]*h[0]],r=s(e,n),o=Math.hypot(...r);r=r.map(c=>c/o);let a=s(e,r),l=[];for(let c=0;c<48;++c)for(let h of[-.5,.5]){let d=2*Math.PI*c/48;l.push([0,1,2].map(u=>i.center[u]+h*i.length*e[u]+i.radius*(Math.cos(d)*r[u]+Math.sin(d)*a[u])))}return l}return null}function db(i,t){let e=[0,0,0],n=[0,0,0];if(i.kind==="capsule")return hb(Wi(t,i.from,e),Wi(t,i.to,n),i.radius);if(i.kind==="sphere")return Vm(Wi(t,i.center,e),i.radius);let s=ub(i);return s?cb(lb(s.map(r=>Wi(t,r,[0,0,0])))):""}var km={palm:0,object:1,phalanx:2},zm=i=>Ke(i,"stroke",i.share<0?"currentColor":Ho(i.share));function ud(i,t,e,{textSize:n=3.2,labelText:s=()=>!0,live:r=!0}={}){let a=e.low[0]-4,l=-e.high[1]-4,c=e.high[0]-e.low[0]+8,h=e.high[1]-e.low[1]+8,d=vt("svg",{class:"side-view",viewBox:`${me(a)} ${me(l)} ${me(c)} ${me(h)}`,"aria-hidden":"true","font-size":n});i.append(d);let u=[],p=t.bodies.map(L=>L).sort((L,S)=>(km[L.role]??0)-(km[S.role]??0));for(let L of["contact","solid"])for(let S of p)for(let P of S.shapes??[]){if((S.role==="phalanx"?P.role??"solid":"contact")!==L)continue;let F=vt("path",{class:`shape ${S.role} ${S.role==="phalanx"?L:""}`});d.append(F),u.push({path:F,shape:P,body:S})}let g=t.pulleys.map(L=>{let S=vt("circle",{class:"pulley",r:L.radius}),P=vt("line",{class:"pulley-mark"});return d.append(S,P),{pulley:L,disc:S,mark:P}}),x=t.cords.map(L=>{let S=eh(L),P=vt("g",{class:`cord ${L.kind}`,"stroke-width":me(Math.max(2*(L.radius||0),1.1))});return d.append(P),{cord:L,pieces:S,group:P,lines:[]}}),m=L=>x.find(S=>S.cord===L).pieces,f=[...t.pins,...t.guides].map(L=>{let S=vt("circle",{class:"pin",r:L.radius});return d.append(S),{pin:L,disc:S}}),y=t.arrows.map(L=>{let S=vt("path",{class:`arrow ${L.kind}`});return d.append(S),{arrow:L,path:S}}),{labels:C,update:b}=ih(t,e,r?void 0:.1),I=C.map(L=>{let S=vt("text",{class:`tag-${L.kind}`});return d.append(S),S}),T=[0,0,0],_=[0,0,0];function w(){for(let{path:S,shape:P,body:F}of u)Ke(S,"d",db(P,F.pose.now));for(let{pulley:S,disc:P,mark:F}of g){let O=t.bodies[S.body]?.pose.now;if(!O)continue;Wi(O,S.at,T),_f(O,S.axis,_);let D=(S.angle.now[0]||0)*Math.PI/180*(_[2]<0?-1:1);Ke(P,"cx",me(T[0])),Ke(P,"cy",me(-T[1])),Ke(F,"x1",me(T[0])),Ke(F,"y1",me(-T[1])),Ke(F,"x2",me(T[0]+S.radius*Math.cos(D))),Ke(F,"y2",me(-T[1]-S.radius*Math.sin(D)))}for(let S of x){nh(S.cord,S.pieces);let P=S.pieces.data;for(let F=0;F<S.pieces.count;++F){let O=S.lines[F];O||(O=vt("line"),S.group.append(O),S.lines.push(O));let D=F*8;Ke(O,"x1",me(P[D])),Ke(O,"y1",me(-P[D+1])),Ke(O,"x2",me(P[D+3])),Ke(O,"y2",me(-P[D+4]));let V=P[D+6]<0;Ke(O,"class",V?"slack":"taut"),O.share=V?-1:P[D+6]/e.mostTension,zm(O),Ke(O,"visibility","visible")}for(let F=S.pieces.count;F<S.lines.length;++F)Ke(S.lines[F],"visibility","hidden")}for(let{pin:S,disc:P}of f){let F=t.bodies[S.body]?.pose.now;F&&(Wi(F,S.at,T),Ke(P,"cx",me(T[0])),Ke(P,"cy",me(-T[1])))}for(let{arrow:S,path:P}of y){let F=S.force.now,O=S.point.now,D=Math.hypot(F[0],F[1]);if(!(D>.004*e.mostForce)||O[0]!==O[0]){Ke(P,"d","");continue}let V=D*e.mmPerNewton,$=Math.min(4,.6*V),H=F[0]/D,K=F[1]/D,X=O[0]+H*V,Z=O[1]+K*V,nt=X-H*$,dt=Z-K*$,ft=.4*$;Ke(P,"d",`M${me(O[0])} ${me(-O[1])}L${me(nt)} ${me(-dt)}M${me(X)} ${me(-Z)}L${me(nt-K*ft)} ${me(-dt-H*ft)}L${me(nt+K*ft)} ${me(-dt+H*ft)}Z`)}b(m);let L=s();C.forEach((S,P)=>{let F=S.shown&&L;if(Ke(I[P],"visibility",F?"visible":"hidden"),!F)return;On(I[P],S.text);let O=.3*n*S.text.length;Ke(I[P],"x",me(Math.min(Math.max(S.at[0],a+O),a+c-O))),Ke(I[P],"y",me(-S.at[1]+.35*n+(S.kind==="pin"?-2.2-.2*n:S.kind==="slack"?n:0)))})}return $i(r?w:()=>{for(let L of x)L.lines.forEach(zm)}),{kind:"2d",root:d,update:w,look(){},invalidate(){},zoomBy(){},onCamera(){},follow(){},pixelsPerMm:()=>{let L=d.getBoundingClientRect();return Math.min(L.width/c,L.height/h)}}}var fb=4;function Hm(i,t,{onKey:e}){let{records:n}=i,s=n.length>1,{duration:r}=t.state,o=pb(n,r),a=y=>r>0?y/r:0,l=M("div",{class:"lanes"}),c=M("div",{class:"event-marks"}),h=M("input",{type:"range",min:0,max:r,step:"any",value:0,class:"scrub","aria-label":"time of the run",on:{input:()=>{t.seek(h.valueAsNumber)},keydown:e}}),d=M("div",{class:"time-line"},l,M("div",{class:"track"},c,h)),u=y=>`${s?`${y.letters}: `:""}${y.text}`,p=y=>()=>{t.seek(y.time)},g=o.filter(y=>y.weight>=3).sort((y,C)=>y.time-C.time),x=g.map(y=>M("button",{type:"button",class:"event","data-jump":y.time,title:`${u(y)}, ${Ln(y.time,r)}`,on:{click:p(y)}},ht(u(y))));l.append(...x);for(let y of o.filter(C=>C.weight>=2))c.append(M("span",{class:`event-mark weight-${y.weight}`,style:{left:`${100*a(y.time)}%`}}));function m(){let y=l.clientWidth;if(!y)return;let C=y<500?3:fb,b=new Array(C).fill(1/0),I=[];for(let _=x.length-1;_>=0;--_){let w=x[_];w.hidden=!1;let L=w.offsetWidth,S=a(g[_].time)*y,P=S+L>y,F=P?Math.max(S-L,0):S,O=b.findIndex((D,V)=>F+L+4<=D&&I.every($=>$.lane<=V||$.x<F||$.x>F+L));w.hidden=O<0,!(O<0)&&(b[O]=F,I.push({lane:O,x:S}),w.classList.toggle("flip",P),w.style.left=`${F}px`,w.style.bottom=`${O*22}px`,w.style.setProperty("--leader",`${O*22+6}px`))}let T=b.filter(_=>_<1/0).length;l.style.height=`${T*22}px`}new ResizeObserver(m).observe(l);let f=g.map(y=>y.time);return t.listen(({time:y})=>{h.value=y;let C=g.findLast(b=>b.time<=y+1e-9);h.setAttribute("aria-valuetext",`${Ln(y,r)}${C?`, after ${u(C)}`:""}`)}),{box:d,slider:h,labelled:g,text:u,next:()=>f.find(y=>y>t.state.time+1e-6),previous:()=>f.findLast(y=>y<t.state.time-1e-6)}}function pb(i,t){let e=[];for(let n of i)for(let s of n.events??[]){if(s.weight<2)continue;let r=e.find(o=>o.text===s.text&&!o.letters.includes(n.label)&&Math.abs(o.time-s.time)<.005*t);r?(r.letters+=` ${n.label}`,r.weight=Math.max(r.weight,s.weight)):e.push({...s,letters:n.label})}return e}function Gm(i,t){let{records:e}=i,{duration:n}=t.state;return e.map(s=>{let r=[...s.events??[]].sort((l,c)=>l.time-c.time);if(!r.length)return null;let o=400,a=r.length>o?r.filter(l=>l.weight>1).slice(0,o):r;return M("details",{class:"events"},M("summary",{},e.length>1?`Events of ${s.label}`:"All events",` (${r.length}${a.length<r.length?`, the ${a.length} main ones shown`:""})`),M("ul",{},a.map(l=>M("li",{},M("button",{type:"button",class:"jump","data-jump":l.time,on:{click:()=>{t.seek(l.time)}}},Ln(l.time,n))," ",ht(l.text)))))})}function Wm(i,t){return e=>{if(e.defaultPrevented||e.altKey||e.ctrlKey||e.metaKey)return;let n=e.target.tagName,s=n==="INPUT"&&e.target.type==="range";if(n==="SELECT"||n==="SUMMARY"||n==="INPUT"&&!s||n==="BUTTON"&&(e.key===" "||e.key==="Enter"))return;let r=o=>{o!==void 0&&i.seek(o)};switch(e.key){case" ":i.toggle();break;case"ArrowLeft":i.step(e.shiftKey?-10:-1);break;case"ArrowRight":i.step(e.shiftKey?10:1);break;case"PageUp":case",":r(t().previous()??0);break;case"PageDown":case".":r(t().next()??i.state.duration);break;case"Home":r(0);break;case"End":r(i.state.duration);break;default:return}e.preventDefault()}}var $m=[.02,.05,.1,.25,.5,1,2,5,10,60],mb=i=>$m.reduce((t,e)=>Math.abs(Math.log(i/e/8))<Math.abs(Math.log(i/t/8))?e:t,1);function gb(i,t,e){let n=M("span",{class:"tension-bar"});$i(()=>{n.style.background=Go()}),n.style.background=Go();let s=r=>vt("svg",{class:"arrow-sample",viewBox:"0 -5 34 10",width:34,height:10},vt("path",{class:`arrow ${r}`,d:"M0 0H26M34 0L25 -4L25 4Z"}));return M("div",{class:"legend"},M("div",{class:"legend-tension"},M("span",{class:"cell-title"},"cord tension"),n,M("span",{class:"tension-ends"},M("span",{},"0"),M("span",{},sn(i.mostTension/2,3)),M("span",{},`${sn(i.mostTension,3)} N`))),M("ul",{},t&&M("li",{},vt("svg",{class:"slack-sample",viewBox:"0 0 34 10",width:34,height:10},vt("path",{d:"M0 2Q17 14 34 2"})),"slack cord: sag shows the loose length"),i.mostForce>0&&M("li",{},s("contact"),`force on the finger, ${sn(i.mmPerNewton,1)}\xA0mm\xA0per\xA0N`),e&&M("li",{},s("load"),"load from outside, same scale"),M("li",{},M("span",{class:"swatch pad"}),"pad that touches"),M("li",{},M("span",{class:"swatch pulley"}),"pulley, mark turns with it"),M("li",{class:"muted"},"All to scale except thin cords, drawn at least 1.2 mm thick")))}function Xm(i,t,e,n,s){let{records:r}=t,o=r.length>1,{duration:a}=s.state,l=!0,c=Om(),h=[],d=M("div",{class:`pictures count-${Math.min(r.length,3)}`});r.forEach((K,X)=>{let Z=M("div",{class:"picture-holder"}),nt=M("div",{class:"scale-bar","aria-hidden":"true"},M("span",{}),M("b",{})),dt=M("figure",{class:"picture",tabindex:0,role:"group","data-view":c?"3d":"2d","aria-label":`${o?`${K.label}: `:""}the finger in motion; space plays, arrow keys step, Home and End go to the ends`},Z,nt,o&&M("figcaption",{class:"picture-name"},M("span",{class:"record-letter"},K.label)," ",ht(K.name)),M("span",{class:"picture-state","aria-hidden":"true"}));d.append(dt);let ft={labelText:()=>l},et=null;if(c)try{et=Bm(Z,e[X],n,ft)}catch{Z.textContent=""}et??=ud(Z,e[X],n,ft),dt.dataset.view=et.kind,h.push({view:et,motion:e[X],picture:dt,scale:nt,end:e[X].times.at(-1)??0})});for(let{view:K}of h)K.onCamera((X,Z)=>{for(let nt of h)nt.view!==K&&nt.view.follow(X,Z);u()});function u(){for(let{view:K,scale:X}of h){let Z=K.pixelsPerMm();if(!(Z>0)||!Number.isFinite(Z))continue;let nt=tr(110/Z);X.firstChild.style.width=`${(nt*Z).toFixed(1)}px`,On(X.lastChild,`${nt} mm`)}}let p=(K,X,Z,nt,dt)=>M("button",{type:"button",id:K,title:Z,"aria-label":Z,on:{click:nt},...dt},X),g=K=>vt("svg",{viewBox:"0 0 16 16",width:16,height:16,"aria-hidden":"true"},vt("path",{d:K})),x="M4 2L14 8L4 14Z",m="M3 2H7V14H3ZM9 2H13V14H9Z",f=g(x),y=M("span",{},"Play"),C=M("button",{type:"button",id:"play",class:"play",on:{click:()=>s.toggle()}},f,y),b=Wm(s,()=>I),I=Hm(t,s,{onKey:b}),T=K=>{K!==void 0&&s.seek(K)},_=M("select",{id:"speed","aria-label":"speed of the playback",on:{change:()=>s.setSpeed(Number(_.value))}},$m.filter(K=>a/K>.7&&a/K<600||K>=.1&&K<=2).map(K=>M("option",{value:K},K===1?"real time":K<1?`${K}\xD7 slow`:`${K}\xD7 fast`)));s.setSpeed(mb(a)),_.value=String(s.state.speed);let w=M("input",{type:"checkbox",id:"loop",on:{change:()=>s.setLoop(w.checked)}}),L=M("output",{class:"clock","aria-live":"off"}),S=M("input",{type:"checkbox",id:"names",checked:!0,on:{change:()=>{l=S.checked,D()}}}),P=[["side","Side"],["iso","Oblique"],["palm","Palm"]].map(([K,X])=>M("button",{type:"button",class:"look","data-look":K,"aria-pressed":K==="side",on:{click:()=>{h[0].view.look(K);for(let{view:Z}of h.slice(1))Z.look(K);for(let Z of P)Z.setAttribute("aria-pressed",String(Z.dataset.look===K));u()}}},X)),F=c?M("div",{class:"view-tools controls",role:"group","aria-label":"view"},P,p("closer","+","closer",()=>{h[0].view.zoomBy(1.25)}),p("farther","\u2212","farther",()=>{h[0].view.zoomBy(.8)}),M("label",{},S," names"),M("span",{class:"hint"},"drag to turn, Ctrl + wheel to zoom")):M("div",{class:"view-tools controls"},M("label",{},S," names"),M("span",{class:"hint no-webgl"},"This browser has no WebGL, so the finger is drawn from the side only.")),O=M("div",{class:"transport controls"},M("div",{class:"transport-buttons"},C,p("to-previous",g("M3 2H5V14H3ZM14 2L6 8L14 14Z"),"to the event before",()=>T(I.previous()??0)),p("step-back",g("M12 2L4 8L12 14Z"),"one row of the record back",()=>s.step(-1)),p("step-on",g("M4 2L12 8L4 14Z"),"one row of the record on",()=>s.step(1)),p("to-next",g("M2 2L10 8L2 14ZM11 2H13V14H11Z"),"to the next event",()=>T(I.next()??a)),L,M("label",{class:"speed"},_),M("label",{},w," repeat")),I.box);function D(){let{time:K}=s.state;for(let{view:X,motion:Z,picture:nt,end:dt}of h)Z.at(K),X.update(),On(nt.querySelector(".picture-state"),K>dt+1e-9?`ended at ${Ln(dt,a)}`:"")}s.listen(K=>{D();let X=I.labelled.findLast(nt=>nt.time<=K.time+1e-9);On(L,Ln(K.time,a)),L.title=X?`after: ${I.text(X)}`:"",On(y,K.playing?"Pause":"Play"),f.firstChild.setAttribute("d",K.playing?m:x);let Z=document.getElementById("review");Z.dataset.time=K.time.toFixed(6),Z.dataset.playing=String(K.playing)}),new ResizeObserver(u).observe(d);let V=r.some(K=>(K.scene?.cords??[]).length>0),$=e.some(K=>K.arrows.some(X=>X.kind==="load")),H=i.section("motion","The finger in motion",F,M("div",{class:`stage-body ${o?"several":""}`},d,gb(n,V,$)),_b(r,e,n,s),Gm(t,s));return H.addEventListener("keydown",b),requestAnimationFrame(u),{section:H,controls:O,onKey:b}}function _b(i,t,e,n){return i.map((s,r)=>{let o=s.instants??[];if(!o.length)return null;let a=M("div",{class:"instants"},o.map(l=>{let c=M("button",{type:"button",class:"instant","data-jump":l.time,on:{click:()=>{n.seek(l.time)}}}),h=M("span",{class:"instant-picture"});return c.append(h,M("span",{class:"instant-text"},M("b",{},Ln(l.time,n.state.duration))," ",ht(l.what))),t[r].at(l.time),ud(h,t[r],e,{textSize:7.5,live:!1,labelText:()=>!0}).update(),c}));return[M("h4",{class:"sub"},i.length>1?`Key instants of ${s.label}`:"Key instants"),a]})}var xb="uplot",yb="u-hz",vb="u-vt",Mb="u-title",Sb="u-wrap",bb="u-under",wb="u-over",Eb="u-axis",xr="u-off",Tb="u-select",Ab="u-cursor-x",Rb="u-cursor-y",Cb="u-cursor-pt",Pb="u-legend",Ib="u-live",Lb="u-inline",Db="u-series",Nb="u-marker",qm="u-label",Ub="u-value",Ba="width",ka="height";var Ym="bottom",vo="left",dd="right",Cd="#000",Zm=Cd+"0",fd="mousemove",Jm="mousedown",pd="mouseup",Km="mouseenter",jm="mouseleave",Qm="dblclick",Fb="resize",Ob="scroll",tg="change",ch="dppxchange",Pd="--",Ao=typeof window<"u",yd=Ao?document:null,So=Ao?window:null,Bb=Ao?navigator:null,Oe,rh;function vd(){let i=devicePixelRatio;Oe!=i&&(Oe=i,rh&&Sd(tg,rh,vd),rh=matchMedia(`(min-resolution: ${Oe-.001}dppx) and (max-resolution: ${Oe+.001}dppx)`),yr(tg,rh,vd),So.dispatchEvent(new CustomEvent(ch)))}function ui(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Md(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function Qe(i,t,e){i.style[t]=e+"px"}function Di(i,t,e,n){let s=yd.createElement(i);return t!=null&&ui(s,t),e?.insertBefore(s,n),s}function yi(i,t){return Di("div",i,t)}var eg=new WeakMap;function ns(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=eg.get(i);r!=o&&(i.style.transform=r,eg.set(i,r),t<0||e<0||t>n||e>s?ui(i,xr):Md(i,xr))}var ng=new WeakMap;function ig(i,t,e){let n=t+e,s=ng.get(i);n!=s&&(ng.set(i,n),i.style.background=t,i.style.borderColor=e)}var sg=new WeakMap;function rg(i,t,e,n){let s=t+""+e,r=sg.get(i);s!=r&&(sg.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var Id={passive:!0},kb={...Id,capture:!0};function yr(i,t,e,n){t.addEventListener(i,e,n?kb:Id)}function Sd(i,t,e,n){t.removeEventListener(i,e,Id)}Ao&&vd();function Ni(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:di((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function Dg(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var Ng=i=>i!=null,Ug=i=>i!=null&&i>0,dh=Dg(Ng),zb=Dg(Ug);function Vb(i,t,e,n=0,s=!1){let r=s?zb:dh,o=s?Ug:Ng;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let h=i[c];o(h)&&(h<a?a=h:h>l&&(l=h))}return[a??We,l??-We]}function fh(i,t,e,n){let s=lg(i),r=lg(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?Ts:Fg,a=s==1?di:vi,l=r==1?vi:di,c=a(o(bn(i))),h=l(o(bn(t))),d=bo(e,c),u=bo(e,h);return e==10&&(c<0&&(d=$e(d,-c)),h<0&&(u=$e(u,-h))),n||e==2?(i=d*s,t=u*r):(i=zg(i,d),t=ph(t,u)),[i,t]}function Ld(i,t,e,n){let s=fh(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Dd=.1,og={mode:3,pad:Dd},Va={pad:0,soft:null,mode:0},Hb={min:Va,max:Va};function hh(i,t,e,n){return mh(e)?ag(i,t,e):(Va.pad=e,Va.soft=n?0:null,Va.mode=n?3:0,ag(i,t,Hb))}function De(i,t){return i??t}function Gb(i,t,e){for(t=De(t,0),e=De(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function ag(i,t,e){let n=e.min,s=e.max,r=De(n.pad,0),o=De(s.pad,0),a=De(n.hard,-We),l=De(s.hard,We),c=De(n.soft,We),h=De(s.soft,-We),d=De(n.mode,0),u=De(s.mode,0),p=t-i,g=Ts(p),x=Jn(bn(i),bn(t)),m=Ts(x),f=bn(m-g);(p<1e-24||f>10)&&(p=0,(i==0||t==0)&&(p=1e-24,d==2&&c!=We&&(r=0),u==2&&h!=-We&&(o=0)));let y=p||x||1e3,C=Ts(y),b=bo(10,di(C)),I=y*(p==0?i==0?.1:1:r),T=$e(zg(i-I,b/10),24),_=i>=c&&(d==1||d==3&&T<=c||d==2&&T>=c)?c:We,w=Jn(a,T<_&&i>=_?_:Ui(_,T)),L=y*(p==0?t==0?.1:1:o),S=$e(ph(t+L,b/10),24),P=t<=h&&(u==1||u==3&&S>=h||u==2&&S<=h)?h:-We,F=Ui(l,S>P&&t<=P?P:Jn(P,S));return w==F&&w==0&&(F=100),[w,F]}var Wb=new Intl.NumberFormat(Ao?Bb.language:"en-US"),Nd=i=>Wb.format(i),fi=Math,lh=fi.PI,bn=fi.abs,di=fi.floor,Sn=fi.round,vi=fi.ceil,Ui=fi.min,Jn=fi.max,bo=fi.pow,lg=fi.sign,Ts=fi.log10,Fg=fi.log2,$b=(i,t=1)=>fi.sinh(i)*t,md=(i,t=1)=>fi.asinh(i/t),We=1/0;function cg(i){return(Ts((i^i>>31)-(i>>31))|0)+1}function bd(i,t,e){return Ui(Jn(i,t),e)}function Og(i){return typeof i=="function"}function Ce(i){return Og(i)?i:()=>i}var Xb=()=>{},Bg=i=>i,kg=(i,t)=>t,qb=i=>null,hg=i=>!0,ug=(i,t)=>i==t,Yb=/\.\d*?(?=9{6,}|0{6,})/gm,vr=i=>{if(Hg(i)||Zs.has(i))return i;let t=`${i}`,e=t.match(Yb);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${vr(s)}e${r}`}return $e(i,n)};function gr(i,t){return vr($e(vr(i/t))*t)}function ph(i,t){return vr(vi(vr(i/t))*t)}function zg(i,t){return vr(di(vr(i/t))*t)}function $e(i,t=0){if(Hg(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return Sn(n)/e}var Zs=new Map;function Vg(i){return((""+i).split(".")[1]||"").length}function Ga(i,t,e,n){let s=[],r=n.map(Vg);for(let o=t;o<e;o++){let a=bn(o),l=$e(bo(i,o),a);for(let c=0;c<n.length;c++){let h=i==10?+`${n[c]}e${o}`:n[c]*l,d=(o>=0?0:a)+(o>=r[c]?0:r[c]),u=i==10?h:$e(h,d);s.push(u),Zs.set(u,d)}}return s}var Ha={},Ud=[],wo=[null,null],Ys=Array.isArray,Hg=Number.isInteger,Zb=i=>i===void 0;function dg(i){return typeof i=="string"}function mh(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function Jb(i){return i!=null&&typeof i=="object"}var Kb=Object.getPrototypeOf(Uint8Array),Gg="__proto__";function Eo(i,t=mh){let e;if(Ys(i)){let n=i.find(s=>s!=null);if(Ys(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Eo(i[s],t)}else e=i.slice()}else if(i instanceof Kb)e=i.slice();else if(t(i)){e={};for(let n in i)n!=Gg&&(e[n]=Eo(i[n],t))}else e=i;return e}function _n(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=Gg&&(mh(i[s])?_n(i[s],Eo(n[s])):i[s]=Eo(n[s]))}return i}var jb=0,Qb=1,tw=2;function ew(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function nw(i,t){if(rw(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return ow(o[0])||(o=sw(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let h=0;h<c;h++)e.add(l[h])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let h=a[c],d=Array(s).fill(void 0),u=t?t[o][c]:Qb,p=[];for(let g=0;g<h.length;g++){let x=h[g],m=r.get(l[g]);x===null?u!=jb&&(d[m]=x,u==tw&&p.push(m)):d[m]=x}ew(d,p,s),n.push(d)}}return n}var iw=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function sw(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function rw(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function ow(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Jn(1,di((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var Wg=["January","February","March","April","May","June","July","August","September","October","November","December"],$g=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Xg(i){return i.slice(0,3)}var aw=$g.map(Xg),lw=Wg.map(Xg),cw={MMMM:Wg,MMM:lw,WWWW:$g,WWW:aw};function Oa(i){return(i<10?"0":"")+i}function hw(i){return(i<10?"00":i<100?"0":"")+i}var uw={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Oa(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Oa(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Oa(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Oa(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Oa(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>hw(i.getMilliseconds())};function Fd(i,t){t=t||cw;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?uw[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var dw=new Intl.DateTimeFormat().resolvedOptions().timeZone;function fw(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==dw?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var qg=i=>i%1==0,uh=[1,2,2.5,5],pw=Ga(10,-32,0,uh),Yg=Ga(10,0,32,uh),mw=Yg.filter(qg),_r=pw.concat(Yg),Od=`
`,Zg="{YYYY}",fg=Od+Zg,Jg="{M}/{D}",za=Od+Jg,oh=za+"/{YY}",Kg="{aa}",gw="{h}:{mm}",Mo=gw+Kg,pg=Od+Mo,mg=":{ss}",ke=null;function jg(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Ga(10,0,3,uh).filter(qg):Ga(10,-3,0,uh)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,Zg,ke,ke,ke,ke,ke,ke,1],[s*28,"{MMM}",fg,ke,ke,ke,ke,ke,1],[s,Jg,fg,ke,ke,ke,ke,ke,1],[n,"{h}"+Kg,oh,ke,za,ke,ke,ke,1],[e,Mo,oh,ke,za,ke,ke,ke,1],[t,mg,oh+" "+Mo,ke,za+" "+Mo,ke,pg,ke,1],[i,mg+".{fff}",oh+" "+Mo,ke,za+" "+Mo,ke,pg,ke,1]];function h(d){return(u,p,g,x,m,f)=>{let y=[],C=m>=o,b=m>=r&&m<o,I=d(g),T=$e(I*i,3),_=gd(I.getFullYear(),C?0:I.getMonth(),b||C?1:I.getDate()),w=$e(_*i,3);if(b||C){let L=b?m/r:0,S=C?m/o:0,P=T==w?T:$e(gd(_.getFullYear()+S,_.getMonth()+L,1)*i,3),F=new Date(Sn(P/i)),O=F.getFullYear(),D=F.getMonth();for(let V=0;P<=x;V++){let $=gd(O+S*V,D+L*V,1),H=$-d($e($*i,3));P=$e((+$+H)*i,3),P<=x&&y.push(P)}}else{let L=m>=s?s:m,S=di(g)-di(T),P=w+S+ph(T-w,L);y.push(P);let F=d(P),O=F.getHours()+F.getMinutes()/e+F.getSeconds()/n,D=m/n,V=u.axes[p]._space,$=f/V;for(;P=$e(P+m,i==1?0:3),!(P>x);)if(D>1){let H=di($e(O+D,6))%24,Z=d(P).getHours()-H;Z>1&&(Z=-1),P-=Z*n,O=(O+D)%24;let nt=y[y.length-1];$e((P-nt)/m,3)*$>=.7&&y.push(P)}else y.push(P)}return y}}return[l,c,h]}var[_w,xw,yw]=jg(1),[vw,Mw,Sw]=jg(.001);Ga(2,-53,53,[1]);function gg(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function _g(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],l,c,h,d,u,p;return n.map(g=>{let x=i(g),m=x.getFullYear(),f=x.getMonth(),y=x.getDate(),C=x.getHours(),b=x.getMinutes(),I=x.getSeconds(),T=m!=l&&a[2]||f!=c&&a[3]||y!=h&&a[4]||C!=d&&a[5]||b!=u&&a[6]||I!=p&&a[7]||a[1];return l=m,c=f,h=y,d=C,u=b,p=I,T(x)})}}function bw(i,t){let e=Fd(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function gd(i,t,e){return new Date(i,t,e)}function xg(i,t){return t(i)}var ww="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function yg(i,t){return(e,n,s,r)=>r==null?Pd:t(i(n))}function Ew(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function Tw(i,t){return i.series[t].fill(i,t)}var Aw={show:!0,live:!0,isolate:!1,mount:Xb,markers:{show:!0,width:2,stroke:Ew,fill:Tw,dash:"solid"},idx:null,idxs:null,values:[]};function Rw(i,t){let e=i.cursor.points,n=yi(),s=e.size(i,t);Qe(n,Ba,s),Qe(n,ka,s);let r=s/-2;Qe(n,"marginLeft",r),Qe(n,"marginTop",r);let o=e.width(i,t,s);return o&&Qe(n,"borderWidth",o),n}function Cw(i,t){let e=i.series[t].points;return e._fill||e._stroke}function Pw(i,t){let e=i.series[t].points;return e._stroke||e._fill}function Iw(i,t){return i.series[t].points.size}var _d=[0,0];function Lw(i,t,e){return _d[0]=t,_d[1]=e,_d}function ah(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function xd(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var Dw={show:!0,x:!0,y:!0,lock:!1,move:Lw,points:{one:!1,show:Rw,size:Iw,width:0,stroke:Pw,fill:Cw},bind:{mousedown:ah,mouseup:ah,click:ah,dblclick:ah,mousemove:xd,mouseleave:xd,mouseenter:xd},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Qg={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},Bd=_n({},Qg,{filter:kg}),t0=_n({},Bd,{size:10}),e0=_n({},Qg,{show:!1}),kd='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',n0="bold "+kd,i0=1.5,vg={show:!0,scale:"x",stroke:Cd,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:n0,side:2,grid:Bd,ticks:t0,border:e0,font:kd,lineGap:i0,rotate:0},Nw="Value",Uw="Time",Mg={show:!0,scale:"x",auto:!1,sorted:1,min:We,max:-We,idxs:[]};function Fw(i,t,e,n,s){return t.map(r=>r==null?"":Nd(r))}function Ow(i,t,e,n,s,r,o){let a=[],l=Zs.get(s)||0;e=o?e:$e(ph(e,s),l);for(let c=e;c<=n;c=$e(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function wd(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?Ts:Fg,h=di(c(e));s=bo(l,h),l==10&&(s=_r[Ni(s,_r)]);let d=e,u=s*l;l==10&&(u=_r[Ni(u,_r)]);do a.push(d),d=d+s,l==10&&!Zs.has(d)&&(d=$e(d,Zs.get(s))),d>=u&&(s=d,u=s*l,l==10&&(u=_r[Ni(u,_r)]));while(d<=n);return a}function Bw(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?wd(i,t,Jn(l,e),n,s):[l],h=n>=0&&e<=0?[0]:[];return(e<-l?wd(i,t,Jn(l,-n),-e,s):[l]).reverse().map(u=>-u).concat(h,c)}var s0=/./,kw=/[12357]/,zw=/[125]/,Sg=/1/,Ed=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function Vw(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,h=l(10,o),d=l(9,o)-h>=c?s0:l(7,o)-h>=c?kw:l(5,o)-h>=c?zw:Sg;if(d==Sg){let u=bn(l(1,o)-h);if(u<c)return Ed(t.slice().reverse(),a.distr,d,vi(c/u)).reverse()}return Ed(t,a.distr,d,1)}function Hw(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=bn(l(1,o)-l(2,o));return c<a?Ed(t.slice().reverse(),3,s0,vi(a/c)).reverse():t}function Gw(i,t,e,n){return n==null?Pd:t==null?"":Nd(t)}var bg={show:!0,scale:"y",stroke:Cd,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:n0,side:3,grid:Bd,ticks:t0,border:e0,font:kd,lineGap:i0,rotate:0};function Ww(i,t){let e=3+(i||1)*2;return $e(e*t,3)}function $w(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=bn(o-r),l=i.series[t],c=a/(l.points.space*Oe);return n[1]-n[0]<=c}var wg={scale:null,auto:!0,sorted:0,min:We,max:-We},r0=(i,t,e,n,s)=>s,Eg={show:!0,auto:!0,sorted:0,gaps:r0,alpha:1,facets:[_n({},wg,{scale:"x"}),_n({},wg,{scale:"y"})]},Tg={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:r0,alpha:1,points:{show:$w,filter:null},values:null,min:We,max:-We,idxs:[],path:null,clip:null};function Xw(i,t,e,n,s){return e/10}var o0={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},qw=_n({},o0,{time:!1,ori:1}),Ag={};function a0(i,t){let e=Ag[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let h=0;h<e.plots.length;h++)e.plots[h]!=s&&e.plots[h].pub(n,s,r,o,a,l,c)}},i!=null&&(Ag[i]=e)),e}var To=1,Td=2;function Mr(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],h=n==2?o[s.facets[0].scale]:o[i.series[0].scale],d=n==2?o[s.facets[1].scale]:o[s.scale],u=a.left,p=a.top,g=a.width,x=a.height,m=i.valToPosH,f=i.valToPosV;return h.ori==0?e(s,l,c,h,d,m,f,u,p,g,x,_h,Ro,yh,c0,u0):e(s,l,c,h,d,f,m,p,u,x,g,xh,Co,Hd,h0,d0)}function zd(i,t){let e=0,n=0,s=De(i.bands,Ud);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function Yw(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function As(i,t,e,n,s,r){return Mr(i,t,(o,a,l,c,h,d,u,p,g,x,m)=>{let f=o.pxRound,y=c.dir*(c.ori==0?1:-1),C=c.ori==0?Ro:Co,b,I;y==1?(b=e,I=n):(b=n,I=e);let T=f(d(a[b],c,x,p)),_=f(u(l[b],h,m,g)),w=f(d(a[I],c,x,p)),L=f(u(r==1?h.max:h.min,h,m,g)),S=new Path2D(s);return C(S,w,L),C(S,T,L),C(S,T,_),S})}function gh(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?yh:Hd,l=e;for(let d=0;d<i.length;d++){let u=i[d];if(u[1]>u[0]){let p=u[0]-l;p>0&&a(o,l,n,p,n+r),l=u[1]}}let c=e+s-l,h=10;c>0&&a(o,l,n-h/2,c,n+r+h)}return o}function Zw(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function Vd(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let d=c,u=c;if(s==1)for(;++c<=n&&t[c]===null;)u=c;else for(;--c>=e&&t[c]===null;)u=c;let p=r(i[d]),g=u==d?p:r(i[u]),x=d-s;p=o<=0&&x>=0&&x<l?r(i[x]):p;let f=u+s;g=o>=0&&f>=0&&f<l?r(i[f]):g,g>=p&&a.push([p,g])}return a}function Rg(i){return i==0?Bg:i==1?Sn:t=>gr(t,i)}function l0(i){let t=i==0?_h:xh,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,h=0)=>{c==0&&h==0?n(s,r,o,a,l):(c=Ui(c,a/2,l/2),h=Ui(h,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,h),e(s,r,o+l,r,o,h),e(s,r,o,r+a,o,c),s.closePath())}}var _h=(i,t,e)=>{i.moveTo(t,e)},xh=(i,t,e)=>{i.moveTo(e,t)},Ro=(i,t,e)=>{i.lineTo(t,e)},Co=(i,t,e)=>{i.lineTo(e,t)},yh=l0(0),Hd=l0(1),c0=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},h0=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},u0=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},d0=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function f0(i){return(t,e,n,s,r)=>Mr(t,e,(o,a,l,c,h,d,u,p,g,x,m)=>{let{pxRound:f,points:y}=o,C,b;c.ori==0?(C=_h,b=c0):(C=xh,b=h0);let I=$e(y.width*Oe,3),T=(y.size-y.width)/2*Oe,_=$e(T*2,3),w=new Path2D,L=new Path2D,{left:S,top:P,width:F,height:O}=t.bbox;yh(L,S-_,P-_,F+_*2,O+_*2);let D=V=>{if(l[V]!=null){let $=f(d(a[V],c,x,p)),H=f(u(l[V],h,m,g));C(w,$+T,H),b(w,$,H,T,0,lh*2)}};if(r)r.forEach(D);else for(let V=n;V<=s;V++)D(V);return{stroke:I>0?w:null,fill:w,clip:L,flags:To|Td}})}function p0(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var Jw=p0(Ro),Kw=p0(Co);function m0(i){let t=De(i?.alignGaps,0);return(e,n,s,r)=>Mr(e,n,(o,a,l,c,h,d,u,p,g,x,m)=>{[s,r]=dh(l,s,r);let f=o.pxRound,y=O=>f(d(O,c,x,p)),C=O=>f(u(O,h,m,g)),b,I;c.ori==0?(b=Ro,I=Jw):(b=Co,I=Kw);let T=c.dir*(c.ori==0?1:-1),_={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:To},w=_.stroke,L=!1;if(r-s>=x*4){let O=ft=>e.posToVal(ft,c.key,!0),D=null,V=null,$,H,K,X=y(a[T==1?s:r]),Z=y(a[s]),nt=y(a[r]),dt=O(T==1?Z+1:nt-1);for(let ft=T==1?s:r;ft>=s&&ft<=r;ft+=T){let et=a[ft],q=(T==1?et<dt:et>dt)?X:y(et),it=l[ft];q==X?it!=null?(H=it,D==null?(b(w,q,C(H)),$=D=V=H):H<D?D=H:H>V&&(V=H)):it===null&&(L=!0):(D!=null&&I(w,X,C(D),C(V),C($),C(H)),it!=null?(H=it,b(w,q,C(H)),D=V=$=H):(D=V=null,it===null&&(L=!0)),X=q,dt=O(X+T))}D!=null&&D!=V&&K!=X&&I(w,X,C(D),C(V),C($),C(H))}else for(let O=T==1?s:r;O>=s&&O<=r;O+=T){let D=l[O];D===null?L=!0:D!=null&&b(w,y(a[O]),C(D))}let[P,F]=zd(e,n);if(o.fill!=null||P!=0){let O=_.fill=new Path2D(w),D=o.fillTo(e,n,o.min,o.max,P),V=C(D),$=y(a[s]),H=y(a[r]);T==-1&&([H,$]=[$,H]),b(O,H,V),b(O,$,V)}if(!o.spanGaps){let O=[];L&&O.push(...Vd(a,l,s,r,T,y,t)),_.gaps=O=o.gaps(e,n,s,r,O),_.clip=gh(O,c.ori,p,g,x,m)}return F!=0&&(_.band=F==2?[As(e,n,s,r,w,-1),As(e,n,s,r,w,1)]:As(e,n,s,r,w,F)),_})}function jw(i){let t=De(i.align,1),e=De(i.ascDesc,!1),n=De(i.alignGaps,0),s=De(i.extend,!1);return(r,o,a,l)=>Mr(r,o,(c,h,d,u,p,g,x,m,f,y,C)=>{[a,l]=dh(d,a,l);let b=c.pxRound,{left:I,width:T}=r.bbox,_=Z=>b(g(Z,u,y,m)),w=Z=>b(x(Z,p,C,f)),L=u.ori==0?Ro:Co,S={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:To},P=S.stroke,F=u.dir*(u.ori==0?1:-1),O=w(d[F==1?a:l]),D=_(h[F==1?a:l]),V=D,$=D;s&&t==-1&&($=I,L(P,$,O)),L(P,D,O);for(let Z=F==1?a:l;Z>=a&&Z<=l;Z+=F){let nt=d[Z];if(nt==null)continue;let dt=_(h[Z]),ft=w(nt);t==1?L(P,dt,O):L(P,V,ft),L(P,dt,ft),O=ft,V=dt}let H=V;s&&t==1&&(H=I+T,L(P,H,O));let[K,X]=zd(r,o);if(c.fill!=null||K!=0){let Z=S.fill=new Path2D(P),nt=c.fillTo(r,o,c.min,c.max,K),dt=w(nt);L(Z,H,dt),L(Z,$,dt)}if(!c.spanGaps){let Z=[];Z.push(...Vd(h,d,a,l,F,_,n));let nt=c.width*Oe/2,dt=e||t==1?nt:-nt,ft=e||t==-1?-nt:nt;Z.forEach(et=>{et[0]+=dt,et[1]+=ft}),S.gaps=Z=c.gaps(r,o,a,l,Z),S.clip=gh(Z,u.ori,m,f,y,C)}return X!=0&&(S.band=X==2?[As(r,o,a,l,P,-1),As(r,o,a,l,P,1)]:As(r,o,a,l,P,X)),S})}function Cg(i,t,e,n,s,r,o=We){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let h=bn(i[l]-i[a]);h<c&&(c=h,o=bn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function Qw(i){i=i||Ha;let t=De(i.size,[.6,We,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=Ce(s),o=1-t[0],a=De(t[1],We),l=De(t[2],1),c=De(i.disp,Ha),h=De(i.each,p=>{}),{fill:d,stroke:u}=c;return(p,g,x,m)=>Mr(p,g,(f,y,C,b,I,T,_,w,L,S,P)=>{let F=f.pxRound,O=e,D=n*Oe,V=a*Oe,$=l*Oe,H,K;b.ori==0?[H,K]=r(p,g):[K,H]=r(p,g);let X=b.dir*(b.ori==0?1:-1),Z=b.ori==0?yh:Hd,nt=b.ori==0?h:(_t,Wt,Ht,St,Ie,jt,ie)=>{h(_t,Wt,Ht,Ie,St,ie,jt)},dt=De(p.bands,Ud).find(_t=>_t.series[0]==g),ft=dt!=null?dt.dir:0,et=f.fillTo(p,g,f.min,f.max,ft),Mt=F(_(et,I,P,L)),q,it,st,gt=S,Ut=F(f.width*Oe),wt=!1,ne=null,se=null,Kt=null,Ee=null;d!=null&&(Ut==0||u!=null)&&(wt=!0,ne=d.values(p,g,x,m),se=new Map,new Set(ne).forEach(_t=>{_t!=null&&se.set(_t,new Path2D)}),Ut>0&&(Kt=u.values(p,g,x,m),Ee=new Map,new Set(Kt).forEach(_t=>{_t!=null&&Ee.set(_t,new Path2D)})));let{x0:Qt,size:xe}=c;if(Qt!=null&&xe!=null){O=1,y=Qt.values(p,g,x,m),Qt.unit==2&&(y=y.map(Ht=>p.posToVal(w+Ht*S,b.key,!0)));let _t=xe.values(p,g,x,m);xe.unit==2?it=_t[0]*S:it=T(_t[0],b,S,w)-T(0,b,S,w),gt=Cg(y,C,T,b,S,w,gt),st=gt-it+D}else gt=Cg(y,C,T,b,S,w,gt),st=gt*o+D,it=gt-st;st<1&&(st=0),Ut>=it/2&&(Ut=0),st<5&&(F=Bg);let pe=st>0,Pe=gt-st-(pe?Ut:0);it=F(bd(Pe,$,V)),q=(O==0?it/2:O==X?0:it)-O*X*((O==0?D/2:0)+(pe?Ut/2:0));let lt={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},Tt=wt?null:new Path2D,Ot=null;if(dt!=null)Ot=p.data[dt.series[1]];else{let{y0:_t,y1:Wt}=c;_t!=null&&Wt!=null&&(C=Wt.values(p,g,x,m),Ot=_t.values(p,g,x,m))}let Jt=H*it,k=K*it;for(let _t=X==1?x:m;_t>=x&&_t<=m;_t+=X){let Wt=C[_t];if(Wt==null)continue;if(Ot!=null){let J=Ot[_t]??0;if(Wt-J==0)continue;Mt=_(J,I,P,L)}let Ht=b.distr!=2||c!=null?y[_t]:_t,St=T(Ht,b,S,w),Ie=_(De(Wt,et),I,P,L),jt=F(St-q),ie=F(Jn(Ie,Mt)),N=F(Ui(Ie,Mt)),E=ie-N;if(Wt!=null){let J=Wt<0?k:Jt,yt=Wt<0?Jt:k;wt?(Ut>0&&Kt[_t]!=null&&Z(Ee.get(Kt[_t]),jt,N+di(Ut/2),it,Jn(0,E-Ut),J,yt),ne[_t]!=null&&Z(se.get(ne[_t]),jt,N+di(Ut/2),it,Jn(0,E-Ut),J,yt)):Z(Tt,jt,N+di(Ut/2),it,Jn(0,E-Ut),J,yt),nt(p,g,_t,jt-Ut/2,N,it+Ut,E)}}return Ut>0?lt.stroke=wt?Ee:Tt:wt||(lt._fill=f.width==0?f._fill:f._stroke??f._fill,lt.width=0),lt.fill=wt?se:Tt,lt})}function t1(i,t){let e=De(t?.alignGaps,0);return(n,s,r,o)=>Mr(n,s,(a,l,c,h,d,u,p,g,x,m,f)=>{[r,o]=dh(c,r,o);let y=a.pxRound,C=H=>y(u(H,h,m,g)),b=H=>y(p(H,d,f,x)),I,T,_;h.ori==0?(I=_h,_=Ro,T=u0):(I=xh,_=Co,T=d0);let w=h.dir*(h.ori==0?1:-1),L=C(l[w==1?r:o]),S=L,P=[],F=[];for(let H=w==1?r:o;H>=r&&H<=o;H+=w)if(c[H]!=null){let X=l[H],Z=C(X);P.push(S=Z),F.push(b(c[H]))}let O={stroke:i(P,F,I,_,T,y),fill:null,clip:null,band:null,gaps:null,flags:To},D=O.stroke,[V,$]=zd(n,s);if(a.fill!=null||V!=0){let H=O.fill=new Path2D(D),K=a.fillTo(n,s,a.min,a.max,V),X=b(K);_(H,S,X),_(H,L,X)}if(!a.spanGaps){let H=[];H.push(...Vd(l,c,r,o,w,C,e)),O.gaps=H=a.gaps(n,s,r,o,H),O.clip=gh(H,h.ori,g,x,m,f)}return $!=0&&(O.band=$==2?[As(n,s,r,o,D,-1),As(n,s,r,o,D,1)]:As(n,s,r,o,D,$)),O})}function e1(i){return t1(n1,i)}function n1(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),h=Array(o-1),d=Array(o-1);for(let u=0;u<o-1;u++)h[u]=t[u+1]-t[u],d[u]=i[u+1]-i[u],c[u]=h[u]/d[u];l[0]=c[0];for(let u=1;u<o-1;u++)c[u]===0||c[u-1]===0||c[u-1]>0!=c[u]>0?l[u]=0:(l[u]=3*(d[u-1]+d[u])/((2*d[u]+d[u-1])/c[u-1]+(d[u]+2*d[u-1])/c[u]),isFinite(l[u])||(l[u]=0));l[o-1]=c[o-2];for(let u=0;u<o-1;u++)s(a,i[u]+d[u]/3,t[u]+l[u]*d[u]/3,i[u+1]-d[u]/3,t[u+1]-l[u+1]*d[u]/3,i[u+1],t[u+1])}return a}var Ad=new Set;function Pg(){for(let i of Ad)i.syncRect(!0)}Ao&&(yr(Fb,So,Pg),yr(Ob,So,Pg,!0),yr(ch,So,()=>{wn.pxRatio=Oe}));var i1=m0(),s1=f0();function Ig(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Rd(r,o,t,e))}function r1(i,t){return i.map((e,n)=>n==0?{}:_n({},t,e))}function Rd(i,t,e,n){return _n({},t==0?e:n,i)}function g0(i,t,e){return t==null?wo:[t,e]}var o1=g0;function a1(i,t,e){return t==null?wo:hh(t,e,Dd,!0)}function _0(i,t,e,n){return t==null?wo:fh(t,e,i.scales[n].log,!1)}var l1=_0;function x0(i,t,e,n){return t==null?wo:Ld(t,e,i.scales[n].log,!1)}var c1=x0;function h1(i,t,e,n,s){let r=Jn(cg(i),cg(t)),o=t-i,a=Ni(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Zs.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function Lg(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=Sn((e=+s)*Oe))+"px"),[i,t,e]}function u1(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=$e(t[2]*Oe,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function wn(i,t,e){let n={mode:De(i.mode,1)},s=n.mode;function r(v,A,U,B){let W=A.valToPct(v);return B+U*(A.dir==-1?1-W:W)}function o(v,A,U,B){let W=A.valToPct(v);return B+U*(A.dir==-1?W:1-W)}function a(v,A,U,B){return A.ori==0?r(v,A,U,B):o(v,A,U,B)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=yi(xb);if(i.id!=null&&(c.id=i.id),ui(c,i.class),i.title){let v=yi(Mb,c);v.textContent=i.title}let h=Di("canvas"),d=n.ctx=h.getContext("2d"),u=yi(Sb,c);yr("click",u,v=>{v.target===g&&(Ye!=Cr||tn!=Pr)&&In.click(n,v)},!0);let p=n.under=yi(bb,u);u.appendChild(h);let g=n.over=yi(wb,u);i=Eo(i);let x=+De(i.pxAlign,1),m=Rg(x);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let f=i.ms||.001,y=n.series=s==1?Ig(i.series||[],Mg,Tg,!1):r1(i.series||[null],Eg),C=n.axes=Ig(i.axes||[],vg,bg,!0),b=n.scales={},I=n.bands=i.bands||[];I.forEach(v=>{v.fill=Ce(v.fill||null),v.dir=De(v.dir,-1)});let T=s==2?y[1].facets[0].scale:y[0].scale,_={axes:ls,series:be},w=(i.drawOrder||["axes","series"]).map(v=>_[v]);function L(v){let A=v.distr==3?U=>Ts(U>0?U:v.clamp(n,U,v.min,v.max,v.key)):v.distr==4?U=>md(U,v.asinh):v.distr==100?U=>v.fwd(U):U=>U;return U=>{let B=A(U),{_min:W,_max:tt}=v,mt=tt-W;return(B-W)/mt}}function S(v){let A=b[v];if(A==null){let U=(i.scales||Ha)[v]||Ha;if(U.from!=null){S(U.from);let B=_n({},b[U.from],U,{key:v});B.valToPct=L(B),b[v]=B}else{A=b[v]=_n({},v==T?o0:qw,U),A.key=v;let B=A.time,W=A.range,tt=Ys(W);if((v!=T||s==2&&!B)&&(tt&&(W[0]==null||W[1]==null)&&(W={min:W[0]==null?og:{mode:1,hard:W[0],soft:W[0]},max:W[1]==null?og:{mode:1,hard:W[1],soft:W[1]}},tt=!1),!tt&&mh(W))){let mt=W;W=(bt,Pt,Vt)=>Pt==null?wo:hh(Pt,Vt,mt)}A.range=Ce(W||(B?o1:v==T?A.distr==3?l1:A.distr==4?c1:g0:A.distr==3?_0:A.distr==4?x0:a1)),A.auto=Ce(tt?!1:A.auto),A.clamp=Ce(A.clamp||Xw),A._min=A._max=null,A.valToPct=L(A)}}}S("x"),S("y"),s==1&&y.forEach(v=>{S(v.scale)}),C.forEach(v=>{S(v.scale)});for(let v in i.scales)S(v);let P=b[T],F=P.distr,O,D;P.ori==0?(ui(c,yb),O=r,D=o):(ui(c,vb),O=o,D=r);let V={};for(let v in b){let A=b[v];(A.min!=null||A.max!=null)&&(V[v]={min:A.min,max:A.max},A.min=A.max=null)}let $=i.tzDate||(v=>new Date(Sn(v/f))),H=i.fmtDate||Fd,K=f==1?yw($):Sw($),X=_g($,gg(f==1?xw:Mw,H)),Z=yg($,xg(ww,H)),nt=[],dt=n.legend=_n({},Aw,i.legend),ft=n.cursor=_n({},Dw,{drag:{y:s==2}},i.cursor),et=dt.show,Mt=ft.show,q=dt.markers;dt.idxs=nt,q.width=Ce(q.width),q.dash=Ce(q.dash),q.stroke=Ce(q.stroke),q.fill=Ce(q.fill);let it,st,gt,Ut=[],wt=[],ne,se=!1,Kt={};if(dt.live){let v=y[1]?y[1].values:null;se=v!=null,ne=se?v(n,1,0):{_:0};for(let A in ne)Kt[A]=Pd}if(et)if(it=Di("table",Pb,c),gt=Di("tbody",null,it),dt.mount(n,it),se){st=Di("thead",null,it,gt);let v=Di("tr",null,st);Di("th",null,v);for(var Ee in ne)Di("th",qm,v).textContent=Ee}else ui(it,Lb),dt.live&&ui(it,Ib);let Qt={show:!0},xe={show:!1};function pe(v,A){if(A==0&&(se||!dt.live||s==2))return wo;let U=[],B=Di("tr",Db,gt,gt.childNodes[A]);ui(B,v.class),v.show||ui(B,xr);let W=Di("th",null,B);if(q.show){let bt=yi(Nb,W);if(A>0){let Pt=q.width(n,A);Pt&&(bt.style.border=Pt+"px "+q.dash(n,A)+" "+q.stroke(n,A)),bt.style.background=q.fill(n,A)}}let tt=yi(qm,W);v.label instanceof HTMLElement?tt.appendChild(v.label):tt.textContent=v.label,A>0&&(q.show||(tt.style.color=v.width>0?q.stroke(n,A):q.fill(n,A)),lt("click",W,bt=>{if(ft._lock)return;ae(bt);let Pt=y.indexOf(v);if((bt.ctrlKey||bt.metaKey)!=dt.isolate){let Vt=y.some((Gt,Xt)=>Xt>0&&Xt!=Pt&&Gt.show);y.forEach((Gt,Xt)=>{Xt>0&&ki(Xt,Vt?Xt==Pt?Qt:xe:Qt,!0,pn.setSeries)})}else ki(Pt,{show:!v.show},!0,pn.setSeries)},!1),le&&lt(Km,W,bt=>{ft._lock||(ae(bt),ki(y.indexOf(v),Lr,!0,pn.setSeries))},!1));for(var mt in ne){let bt=Di("td",Ub,B);bt.textContent="--",U.push(bt)}return[B,U]}let Pe=new Map;function lt(v,A,U,B=!0){let W=Pe.get(A)||{},tt=ft.bind[v](n,A,U,B);tt&&(yr(v,A,W[v]=tt),Pe.set(A,W))}function Tt(v,A,U){let B=Pe.get(A)||{};for(let W in B)(v==null||W==v)&&(Sd(W,A,B[W]),delete B[W]);v==null&&Pe.delete(A)}let Ot=0,Jt=0,k=0,_t=0,Wt=0,Ht=0,St=Wt,Ie=Ht,jt=k,ie=_t,N=0,E=0,J=0,yt=0;n.bbox={};let pt=!1,Rt=!1,Ct=!1,ot=!1,ct=!1,Et=!1;function z(v,A,U){(U||v!=n.width||A!=n.height)&&ut(v,A),ve(!1),Ct=!0,Rt=!0,Fn()}function ut(v,A){n.width=Ot=k=v,n.height=Jt=_t=A,Wt=Ht=0,It(),te();let U=n.bbox;N=U.left=gr(Wt*Oe,.5),E=U.top=gr(Ht*Oe,.5),J=U.width=gr(k*Oe,.5),yt=U.height=gr(_t*Oe,.5)}let at=3;function Lt(){let v=!1,A=0;for(;!v;){A++;let U=Tr(A),B=Bi(A);v=A==at||U&&B,v||(ut(n.width,n.height),Rt=!0)}}function At({width:v,height:A}){z(v,A)}n.setSize=At;function It(){let v=!1,A=!1,U=!1,B=!1;C.forEach((W,tt)=>{if(W.show&&W._show){let{side:mt,_size:bt}=W,Pt=mt%2,Vt=W.label!=null?W.labelSize:0,Gt=bt+Vt;Gt>0&&(Pt?(k-=Gt,mt==3?(Wt+=Gt,B=!0):U=!0):(_t-=Gt,mt==0?(Ht+=Gt,v=!0):A=!0))}}),Fi[0]=v,Fi[1]=U,Fi[2]=A,Fi[3]=B,k-=Mi[1]+Mi[3],Wt+=Mi[3],_t-=Mi[2]+Mi[0],Ht+=Mi[0]}function te(){let v=Wt+k,A=Ht+_t,U=Wt,B=Ht;function W(tt,mt){switch(tt){case 1:return v+=mt,v-mt;case 2:return A+=mt,A-mt;case 3:return U-=mt,U+mt;case 0:return B-=mt,B+mt}}C.forEach((tt,mt)=>{if(tt.show&&tt._show){let bt=tt.side;tt._pos=W(bt,tt._size),tt.label!=null&&(tt._lpos=W(bt,tt.labelSize))}})}if(ft.dataIdx==null){let v=ft.hover,A=v.skip=new Set(v.skip??[]);A.add(void 0);let U=v.prox=Ce(v.prox),B=v.bias??=0;ft.dataIdx=(W,tt,mt,bt)=>{if(tt==0)return mt;let Pt=mt,Vt=U(W,tt,mt,bt)??We,Gt=Vt>=0&&Vt<We,Xt=P.ori==0?k:_t,fe=ft.left,Ne=t[0],Le=t[tt];if(A.has(Le[mt])){Pt=null;let Te=null,oe=null,ee;if(B==0||B==-1)for(ee=mt;Te==null&&ee-- >0;)A.has(Le[ee])||(Te=ee);if(B==0||B==1)for(ee=mt;oe==null&&ee++<Le.length;)A.has(Le[ee])||(oe=ee);if(Te!=null||oe!=null)if(Gt){let Je=Te==null?-1/0:O(Ne[Te],P,Xt,0),an=oe==null?1/0:O(Ne[oe],P,Xt,0),Rn=fe-Je,Ge=an-fe;Rn<=Ge?Rn<=Vt&&(Pt=Te):Ge<=Vt&&(Pt=oe)}else Pt=oe==null?Te:Te==null?oe:mt-Te<=oe-mt?Te:oe}else Gt&&bn(fe-O(Ne[mt],P,Xt,0))>Vt&&(Pt=null);return Pt}}let ae=v=>{ft.event=v};ft.idxs=nt,ft._lock=!1;let xt=ft.points;xt.show=Ce(xt.show),xt.size=Ce(xt.size),xt.stroke=Ce(xt.stroke),xt.width=Ce(xt.width),xt.fill=Ce(xt.fill);let qt=n.focus=_n({},i.focus||{alpha:.3},ft.focus),le=qt.prox>=0,Ft=le&&xt.one,ge=[],qe=[],Vn=[];function Do(v,A){let U=xt.show(n,A);if(U instanceof HTMLElement)return ui(U,Cb),ui(U,v.class),ns(U,-10,-10,k,_t),g.insertBefore(U,ge[A]),U}function br(v,A){if(s==1||A>0){let U=s==1&&b[v.scale].time,B=v.value;v.value=U?dg(B)?yg($,xg(B,H)):B||Z:B||Gw,v.label=v.label||(U?Uw:Nw)}if(Ft||A>0){v.width=v.width==null?1:v.width,v.paths=v.paths||i1||qb,v.fillTo=Ce(v.fillTo||Yw),v.pxAlign=+De(v.pxAlign,x),v.pxRound=Rg(v.pxAlign),v.stroke=Ce(v.stroke||null),v.fill=Ce(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let U=Ww(Jn(1,v.width),1),B=v.points=_n({},{size:U,width:Jn(1,U*.2),stroke:v.stroke,space:U*2,paths:s1,_stroke:null,_fill:null},v.points);B.show=Ce(B.show),B.filter=Ce(B.filter),B.fill=Ce(B.fill),B.stroke=Ce(B.stroke),B.paths=Ce(B.paths),B.pxAlign=v.pxAlign}if(et){let U=pe(v,A);Ut.splice(A,0,U[0]),wt.splice(A,0,U[1]),dt.values.push(null)}if(Mt){nt.splice(A,0,null);let U=null;Ft?A==0&&(U=Do(v,A)):A>0&&(U=Do(v,A)),ge.splice(A,0,U),qe.splice(A,0,0),Vn.splice(A,0,0)}An("addSeries",A)}function Ph(v,A){A=A??y.length,v=s==1?Rd(v,A,Mg,Tg):Rd(v,A,{},Eg),y.splice(A,0,v),br(y[A],A)}n.addSeries=Ph;function qa(v){if(y.splice(v,1),et){dt.values.splice(v,1),wt.splice(v,1);let A=Ut.splice(v,1)[0];Tt(null,A.firstChild),A.remove()}Mt&&(nt.splice(v,1),ge.splice(v,1)[0].remove(),qe.splice(v,1),Vn.splice(v,1)),An("delSeries",v)}n.delSeries=qa;let Fi=[!1,!1,!1,!1];function rs(v,A){if(v._show=v.show,v.show){let U=v.side%2,B=b[v.scale];B==null&&(v.scale=U?y[1].scale:T,B=b[v.scale]);let W=B.time;v.size=Ce(v.size),v.space=Ce(v.space),v.rotate=Ce(v.rotate),Ys(v.incrs)&&v.incrs.forEach(mt=>{!Zs.has(mt)&&Zs.set(mt,Vg(mt))}),v.incrs=Ce(v.incrs||(B.distr==2?mw:W?f==1?_w:vw:_r)),v.splits=Ce(v.splits||(W&&B.distr==1?K:B.distr==3?wd:B.distr==4?Bw:Ow)),v.stroke=Ce(v.stroke),v.grid.stroke=Ce(v.grid.stroke),v.ticks.stroke=Ce(v.ticks.stroke),v.border.stroke=Ce(v.border.stroke);let tt=v.values;v.values=Ys(tt)&&!Ys(tt[0])?Ce(tt):W?Ys(tt)?_g($,gg(tt,H)):dg(tt)?bw($,tt):tt||X:tt||Fw,v.filter=Ce(v.filter||(B.distr>=3&&B.log==10?Vw:B.distr==3&&B.log==2?Hw:kg)),v.font=Lg(v.font),v.labelFont=Lg(v.labelFont),v._size=v.size(n,null,A,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(Fi[A]=!0,v._el=yi(Eb,u))}}function os(v,A,U,B){let[W,tt,mt,bt]=U,Pt=A%2,Vt=0;return Pt==0&&(bt||tt)&&(Vt=A==0&&!W||A==2&&!mt?Sn(vg.size/3):0),Pt==1&&(W||mt)&&(Vt=A==1&&!tt||A==3&&!bt?Sn(bg.size/2):0),Vt}let No=n.padding=(i.padding||[os,os,os,os]).map(v=>Ce(De(v,os))),Mi=n._padding=No.map((v,A)=>v(n,A,Fi,0)),rn,cn=null,hn=null,Oi=s==1?y[0].idxs:null,ti=null,Rs=!1;function Uo(v,A){if(t=v??[],n.data=n._data=t,s==2){rn=0;for(let U=1;U<y.length;U++)rn+=t[U][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),ti=t[0],rn=ti.length;let U=t;if(F==2){U=t.slice();let B=U[0]=Array(rn);for(let W=0;W<rn;W++)B[W]=W}n._data=t=U}if(ve(!0),An("setData"),F==2&&(Ct=!0),A!==!1){let U=P;U.auto(n,Rs)?Fo():Is(T,U.min,U.max),ot=ot||ft.left>=0,Et=!0,Fn()}}n.setData=Uo;function Fo(){Rs=!0;let v,A;s==1&&(rn>0?(cn=Oi[0]=0,hn=Oi[1]=rn-1,v=t[0][cn],A=t[0][hn],F==2?(v=cn,A=hn):v==A&&(F==3?[v,A]=fh(v,v,P.log,!1):F==4?[v,A]=Ld(v,v,P.log,!1):P.time?A=v+Sn(86400/f):[v,A]=hh(v,A,Dd,!0))):(cn=Oi[0]=v=null,hn=Oi[1]=A=null)),Is(T,v,A)}let wr,Cs,Er,R,G,rt,j,Q,Dt,Bt;function Nt(v,A,U,B,W,tt){v??=Zm,U??=Ud,B??="butt",W??=Zm,tt??="round",v!=wr&&(d.strokeStyle=wr=v),W!=Cs&&(d.fillStyle=Cs=W),A!=Er&&(d.lineWidth=Er=A),tt!=G&&(d.lineJoin=G=tt),B!=rt&&(d.lineCap=rt=B),U!=R&&d.setLineDash(R=U)}function kt(v,A,U,B){A!=Cs&&(d.fillStyle=Cs=A),v!=j&&(d.font=j=v),U!=Q&&(d.textAlign=Q=U),B!=Dt&&(d.textBaseline=Dt=B)}function Zt(v,A,U,B,W=0){if(B.length>0&&v.auto(n,Rs)&&(A==null||A.min==null)){let tt=De(cn,0),mt=De(hn,B.length-1),bt=U.min==null?Vb(B,tt,mt,W,v.distr==3):[U.min,U.max];v.min=Ui(v.min,U.min=bt[0]),v.max=Jn(v.max,U.max=bt[1])}}let he={min:null,max:null};function Se(){for(let B in b){let W=b[B];V[B]==null&&(W.min==null||V[T]!=null&&W.auto(n,Rs))&&(V[B]=he)}for(let B in b){let W=b[B];V[B]==null&&W.from!=null&&V[W.from]!=null&&(V[B]=he)}V[T]!=null&&ve(!0);let v={};for(let B in V){let W=V[B];if(W!=null){let tt=v[B]=Eo(b[B],Jb);if(W.min!=null)_n(tt,W);else if(B!=T||s==2)if(rn==0&&tt.from==null){let mt=tt.range(n,null,null,B);tt.min=mt[0],tt.max=mt[1]}else tt.min=We,tt.max=-We}}if(rn>0){y.forEach((B,W)=>{if(s==1){let tt=B.scale,mt=V[tt];if(mt==null)return;let bt=v[tt];if(W==0){let Pt=bt.range(n,bt.min,bt.max,tt);bt.min=Pt[0],bt.max=Pt[1],cn=Ni(bt.min,t[0]),hn=Ni(bt.max,t[0]),hn-cn>1&&(t[0][cn]<bt.min&&cn++,t[0][hn]>bt.max&&hn--),B.min=ti[cn],B.max=ti[hn]}else B.show&&B.auto&&Zt(bt,mt,B,t[W],B.sorted);B.idxs[0]=cn,B.idxs[1]=hn}else if(W>0&&B.show&&B.auto){let[tt,mt]=B.facets,bt=tt.scale,Pt=mt.scale,[Vt,Gt]=t[W],Xt=v[bt],fe=v[Pt];Xt!=null&&Zt(Xt,V[bt],tt,Vt,tt.sorted),fe!=null&&Zt(fe,V[Pt],mt,Gt,mt.sorted),B.min=mt.min,B.max=mt.max}});for(let B in v){let W=v[B],tt=V[B];if(W.from==null&&(tt==null||tt.min==null)){let mt=W.range(n,W.min==We?null:W.min,W.max==-We?null:W.max,B);W.min=mt[0],W.max=mt[1]}}}for(let B in v){let W=v[B];if(W.from!=null){let tt=v[W.from];if(tt.min==null)W.min=W.max=null;else{let mt=W.range(n,tt.min,tt.max,B);W.min=mt[0],W.max=mt[1]}}}let A={},U=!1;for(let B in v){let W=v[B],tt=b[B];if(tt.min!=W.min||tt.max!=W.max){tt.min=W.min,tt.max=W.max;let mt=tt.distr;tt._min=mt==3?Ts(tt.min):mt==4?md(tt.min,tt.asinh):mt==100?tt.fwd(tt.min):tt.min,tt._max=mt==3?Ts(tt.max):mt==4?md(tt.max,tt.asinh):mt==100?tt.fwd(tt.max):tt.max,A[B]=U=!0}}if(U){y.forEach((B,W)=>{s==2?W>0&&A.y&&(B._paths=null):A[B.scale]&&(B._paths=null)});for(let B in A)Ct=!0,An("setScale",B);Mt&&ft.left>=0&&(ot=Et=!0)}for(let B in V)V[B]=null}function Yt(v){let A=bd(cn-1,0,rn-1),U=bd(hn+1,0,rn-1);for(;v[A]==null&&A>0;)A--;for(;v[U]==null&&U<rn-1;)U++;return[A,U]}function be(){if(rn>0){let v=y.some(A=>A._focus)&&Bt!=qt.alpha;v&&(d.globalAlpha=Bt=qt.alpha),y.forEach((A,U)=>{if(U>0&&A.show&&(nn(U,!1),nn(U,!0),A._paths==null)){let B=Bt;Bt!=A.alpha&&(d.globalAlpha=Bt=A.alpha);let W=s==2?[0,t[U][0].length-1]:Yt(t[U]);A._paths=A.paths(n,U,W[0],W[1]),Bt!=B&&(d.globalAlpha=Bt=B)}}),y.forEach((A,U)=>{if(U>0&&A.show){let B=Bt;Bt!=A.alpha&&(d.globalAlpha=Bt=A.alpha),A._paths!=null&&ze(U,!1);{let W=A._paths!=null?A._paths.gaps:null,tt=A.points.show(n,U,cn,hn,W),mt=A.points.filter(n,U,tt,W);(tt||mt)&&(A.points._paths=A.points.paths(n,U,cn,hn,mt),ze(U,!0))}Bt!=B&&(d.globalAlpha=Bt=B),An("drawSeries",U)}}),v&&(d.globalAlpha=Bt=1)}}function nn(v,A){let U=A?y[v].points:y[v];U._stroke=U.stroke(n,v),U._fill=U.fill(n,v)}function ze(v,A){let U=A?y[v].points:y[v],{stroke:B,fill:W,clip:tt,flags:mt,_stroke:bt=U._stroke,_fill:Pt=U._fill,_width:Vt=U.width}=U._paths;Vt=$e(Vt*Oe,3);let Gt=null,Xt=Vt%2/2;A&&Pt==null&&(Pt=Vt>0?"#fff":bt);let fe=U.pxAlign==1&&Xt>0;if(fe&&d.translate(Xt,Xt),!A){let Ne=N-Vt/2,Le=E-Vt/2,Te=J+Vt,oe=yt+Vt;Gt=new Path2D,Gt.rect(Ne,Le,Te,oe)}A?$t(bt,Vt,U.dash,U.cap,Pt,B,W,mt,tt):Ve(v,bt,Vt,U.dash,U.cap,Pt,B,W,mt,Gt,tt),fe&&d.translate(-Xt,-Xt)}function Ve(v,A,U,B,W,tt,mt,bt,Pt,Vt,Gt){let Xt=!1;Pt!=0&&I.forEach((fe,Ne)=>{if(fe.series[0]==v){let Le=y[fe.series[1]],Te=t[fe.series[1]],oe=(Le._paths||Ha).band;Ys(oe)&&(oe=fe.dir==1?oe[0]:oe[1]);let ee,Je=null;Le.show&&oe&&Gb(Te,cn,hn)?(Je=fe.fill(n,Ne)||tt,ee=Le._paths.clip):oe=null,$t(A,U,B,W,Je,mt,bt,Pt,Vt,Gt,ee,oe),Xt=!0}}),Xt||$t(A,U,B,W,tt,mt,bt,Pt,Vt,Gt)}let xn=To|Td;function $t(v,A,U,B,W,tt,mt,bt,Pt,Vt,Gt,Xt){Nt(v,A,U,B,W),(Pt||Vt||Xt)&&(d.save(),Pt&&d.clip(Pt),Vt&&d.clip(Vt)),Xt?(bt&xn)==xn?(d.clip(Xt),Gt&&d.clip(Gt),Ae(W,mt),un(v,tt,A)):bt&Td?(Ae(W,mt),d.clip(Xt),un(v,tt,A)):bt&To&&(d.save(),d.clip(Xt),Gt&&d.clip(Gt),Ae(W,mt),d.restore(),un(v,tt,A)):(Ae(W,mt),un(v,tt,A)),(Pt||Vt||Xt)&&d.restore()}function un(v,A,U){U>0&&(A instanceof Map?A.forEach((B,W)=>{d.strokeStyle=wr=W,d.stroke(B)}):A!=null&&v&&d.stroke(A))}function Ae(v,A){A instanceof Map?A.forEach((U,B)=>{d.fillStyle=Cs=B,d.fill(U)}):A!=null&&v&&d.fill(A)}function as(v,A,U,B){let W=C[v],tt;if(B<=0)tt=[0,0];else{let mt=W._space=W.space(n,v,A,U,B),bt=W._incrs=W.incrs(n,v,A,U,B,mt);tt=h1(A,U,bt,B,mt)}return W._found=tt}function dn(v,A,U,B,W,tt,mt,bt,Pt,Vt){let Gt=mt%2/2;x==1&&d.translate(Gt,Gt),Nt(bt,mt,Pt,Vt,bt),d.beginPath();let Xt,fe,Ne,Le,Te=W+(B==0||B==3?-tt:tt);U==0?(fe=W,Le=Te):(Xt=W,Ne=Te);for(let oe=0;oe<v.length;oe++)A[oe]!=null&&(U==0?Xt=Ne=v[oe]:fe=Le=v[oe],d.moveTo(Xt,fe),d.lineTo(Ne,Le));d.stroke(),x==1&&d.translate(-Gt,-Gt)}function Tr(v){let A=!0;return C.forEach((U,B)=>{if(!U.show)return;let W=b[U.scale];if(W.min==null){U._show&&(A=!1,U._show=!1,ve(!1));return}else U._show||(A=!1,U._show=!0,ve(!1));let tt=U.side,mt=tt%2,{min:bt,max:Pt}=W,[Vt,Gt]=as(B,bt,Pt,mt==0?k:_t);if(Gt==0)return;let Xt=W.distr==2,fe=U._splits=U.splits(n,B,bt,Pt,Vt,Gt,Xt),Ne=W.distr==2?fe.map(ee=>ti[ee]):fe,Le=W.distr==2?ti[fe[1]]-ti[fe[0]]:Vt,Te=U._values=U.values(n,U.filter(n,Ne,B,Gt,Le),B,Gt,Le);U._rotate=tt==2?U.rotate(n,Te,B,Gt):0;let oe=U._size;U._size=vi(U.size(n,Te,B,v)),oe!=null&&U._size!=oe&&(A=!1)}),A}function Bi(v){let A=!0;return No.forEach((U,B)=>{let W=U(n,B,Fi,v);W!=Mi[B]&&(A=!1),Mi[B]=W}),A}function ls(){for(let v=0;v<C.length;v++){let A=C[v];if(!A.show||!A._show)continue;let U=A.side,B=U%2,W,tt,mt=A.stroke(n,v),bt=U==0||U==3?-1:1,[Pt,Vt]=A._found;if(A.label!=null){let Wn=A.labelGap*bt,ii=Sn((A._lpos+Wn)*Oe);kt(A.labelFont[0],mt,"center",U==2?"top":Ym),d.save(),B==1?(W=tt=0,d.translate(ii,Sn(E+yt/2)),d.rotate((U==3?-lh:lh)/2)):(W=Sn(N+J/2),tt=ii);let Qs=Og(A.label)?A.label(n,v,Pt,Vt):A.label;d.fillText(Qs,W,tt),d.restore()}if(Vt==0)continue;let Gt=b[A.scale],Xt=B==0?J:yt,fe=B==0?N:E,Ne=A._splits,Le=Gt.distr==2?Ne.map(Wn=>ti[Wn]):Ne,Te=Gt.distr==2?ti[Ne[1]]-ti[Ne[0]]:Pt,oe=A.ticks,ee=A.border,Je=oe.show?oe.size:0,an=Sn(Je*Oe),Rn=Sn((A.alignTo==2?A._size-Je-A.gap:A.gap)*Oe),Ge=A._rotate*-lh/180,ln=m(A._pos*Oe),ei=(an+Rn)*bt,Gn=ln+ei;tt=B==0?Gn:0,W=B==1?Gn:0;let pi=A.font[0],Si=A.align==1?vo:A.align==2?dd:Ge>0?vo:Ge<0?dd:B==0?"center":U==3?dd:vo,Vi=Ge||B==1?"middle":U==2?"top":Ym;kt(pi,mt,Si,Vi);let ni=A.font[1]*A.lineGap,mi=Ne.map(Wn=>m(a(Wn,Gt,Xt,fe))),bi=A._values;for(let Wn=0;Wn<bi.length;Wn++){let ii=bi[Wn];if(ii!=null){B==0?W=mi[Wn]:tt=mi[Wn],ii=""+ii;let Qs=ii.indexOf(`
`)==-1?[ii]:ii.split(/\n/gm);for(let $n=0;$n<Qs.length;$n++){let df=Qs[$n];Ge?(d.save(),d.translate(W,tt+$n*ni),d.rotate(Ge),d.fillText(df,0,0),d.restore()):d.fillText(df,W,tt+$n*ni)}}}oe.show&&dn(mi,oe.filter(n,Le,v,Vt,Te),B,U,ln,an,$e(oe.width*Oe,3),oe.stroke(n,v),oe.dash,oe.cap);let Hi=A.grid;Hi.show&&dn(mi,Hi.filter(n,Le,v,Vt,Te),B,B==0?2:1,B==0?E:N,B==0?yt:J,$e(Hi.width*Oe,3),Hi.stroke(n,v),Hi.dash,Hi.cap),ee.show&&dn([ln],[1],B==0?1:0,B==0?1:2,B==1?E:N,B==1?yt:J,$e(ee.width*Oe,3),ee.stroke(n,v),ee.dash,ee.cap)}An("drawAxes")}function ve(v){y.forEach((A,U)=>{U>0&&(A._paths=null,v&&(s==1?(A.min=null,A.max=null):A.facets.forEach(B=>{B.min=null,B.max=null})))})}let on=!1,Hn=!1,He=[];function fn(){Hn=!1;for(let v=0;v<He.length;v++)An(...He[v]);He.length=0}function Fn(){on||(iw(qd),on=!0)}function Ya(v,A=!1){on=!0,Hn=A,v(n),qd(),A&&He.length>0&&queueMicrotask(fn)}n.batch=Ya;function qd(){if(pt&&(Se(),pt=!1),Ct&&(Lt(),Ct=!1),Rt){if(Qe(p,vo,Wt),Qe(p,"top",Ht),Qe(p,Ba,k),Qe(p,ka,_t),Qe(g,vo,Wt),Qe(g,"top",Ht),Qe(g,Ba,k),Qe(g,ka,_t),Qe(u,Ba,Ot),Qe(u,ka,Jt),h.width=Sn(Ot*Oe),h.height=Sn(Jt*Oe),C.forEach(({_el:v,_show:A,_size:U,_pos:B,side:W})=>{if(v!=null)if(A){let tt=W===3||W===0?U:0,mt=W%2==1;Qe(v,mt?"left":"top",B-tt),Qe(v,mt?"width":"height",U),Qe(v,mt?"top":"left",mt?Ht:Wt),Qe(v,mt?"height":"width",mt?_t:k),Md(v,xr)}else ui(v,xr)}),wr=Cs=Er=G=rt=j=Q=Dt=R=null,Bt=1,ko(!0),Wt!=St||Ht!=Ie||k!=jt||_t!=ie){ve(!1);let v=k/jt,A=_t/ie;if(Mt&&!ot&&ft.left>=0){ft.left*=v,ft.top*=A,Ar&&ns(Ar,Sn(ft.left),0,k,_t),Rr&&ns(Rr,0,Sn(ft.top),k,_t);for(let U=0;U<ge.length;U++){let B=ge[U];B!=null&&(qe[U]*=v,Vn[U]*=A,ns(B,vi(qe[U]),vi(Vn[U]),k,_t))}}if(Ze.show&&!ct&&Ze.left>=0&&Ze.width>0){Ze.left*=v,Ze.width*=v,Ze.top*=A,Ze.height*=A;for(let U in Fh)Qe(Ir,U,Ze[U])}St=Wt,Ie=Ht,jt=k,ie=_t}An("setSize"),Rt=!1}Ot>0&&Jt>0&&(d.clearRect(0,0,h.width,h.height),An("drawClear"),w.forEach(v=>v()),An("draw")),Ze.show&&ct&&(Za(Ze),ct=!1),Mt&&ot&&(js(null,!0,!1),ot=!1),dt.show&&dt.live&&Et&&(Nh(),Et=!1),l||(l=!0,n.status=1,An("ready")),Rs=!1,on=!1}n.redraw=(v,A)=>{Ct=A||!1,v!==!1?Is(T,P.min,P.max):Fn()};function Ih(v,A){let U=b[v];if(U.from==null){if(rn==0){let B=U.range(n,A.min,A.max,v);A.min=B[0],A.max=B[1]}if(A.min>A.max){let B=A.min;A.min=A.max,A.max=B}if(rn>1&&A.min!=null&&A.max!=null&&A.max-A.min<1e-16)return;v==T&&U.distr==2&&rn>0&&(A.min=Ni(A.min,t[0]),A.max=Ni(A.max,t[0]),A.min==A.max&&A.max++),V[v]=A,pt=!0,Fn()}}n.setScale=Ih;let Lh,Dh,Ar,Rr,Yd,Zd,Cr,Pr,Jd,Kd,Ye,tn,Ps=!1,In=ft.drag,En=In.x,Tn=In.y;Mt&&(ft.x&&(Lh=yi(Ab,g)),ft.y&&(Dh=yi(Rb,g)),P.ori==0?(Ar=Lh,Rr=Dh):(Ar=Dh,Rr=Lh),Ye=ft.left,tn=ft.top);let Ze=n.select=_n({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Ir=Ze.show?yi(Tb,Ze.over?g:p):null;function Za(v,A){if(Ze.show){for(let U in v)Ze[U]=v[U],U in Fh&&Qe(Ir,U,v[U]);A!==!1&&An("setSelect")}}n.setSelect=Za;function H0(v){if(y[v].show)et&&Md(Ut[v],xr);else if(et&&ui(Ut[v],xr),Mt){let U=Ft?ge[0]:ge[v];U!=null&&ns(U,-10,-10,k,_t)}}function Is(v,A,U){Ih(v,{min:A,max:U})}function ki(v,A,U,B){A.focus!=null&&q0(v),A.show!=null&&y.forEach((W,tt)=>{tt>0&&(v==tt||v==null)&&(W.show=A.show,H0(tt),s==2?(Is(W.facets[0].scale,null,null),Is(W.facets[1].scale,null,null)):Is(W.scale,null,null),Fn())}),U!==!1&&An("setSeries",v,A),B&&zo("setSeries",n,v,A)}n.setSeries=ki;function G0(v,A){_n(I[v],A)}function W0(v,A){v.fill=Ce(v.fill||null),v.dir=De(v.dir,-1),A=A??I.length,I.splice(A,0,v)}function $0(v){v==null?I.length=0:I.splice(v,1)}n.addBand=W0,n.setBand=G0,n.delBand=$0;function X0(v,A){y[v].alpha=A,Mt&&ge[v]!=null&&(ge[v].style.opacity=A),et&&Ut[v]&&(Ut[v].style.opacity=A)}let cs,Ls,Ks,Lr={focus:!0};function q0(v){if(v!=Ks){let A=v==null,U=qt.alpha!=1;y.forEach((B,W)=>{if(s==1||W>0){let tt=A||W==0||W==v;B._focus=A?null:tt,U&&X0(W,tt?1:qt.alpha)}}),Ks=v,U&&Fn()}}et&&le&&lt(jm,it,v=>{ft._lock||(ae(v),Ks!=null&&ki(null,Lr,!0,pn.setSeries))});function zi(v,A,U){let B=b[A];U&&(v=v/Oe-(B.ori==1?Ht:Wt));let W=k;B.ori==1&&(W=_t,v=W-v),B.dir==-1&&(v=W-v);let tt=B._min,mt=B._max,bt=v/W,Pt=tt+(mt-tt)*bt,Vt=B.distr;return Vt==3?bo(10,Pt):Vt==4?$b(Pt,B.asinh):Vt==100?B.bwd(Pt):Pt}function Y0(v,A){let U=zi(v,T,A);return Ni(U,t[0],cn,hn)}n.valToIdx=v=>Ni(v,t[0]),n.posToIdx=Y0,n.posToVal=zi,n.valToPos=(v,A,U)=>b[A].ori==0?r(v,b[A],U?J:k,U?N:0):o(v,b[A],U?yt:_t,U?E:0),n.setCursor=(v,A,U)=>{Ye=v.left,tn=v.top,js(null,A,U)};function jd(v,A){Qe(Ir,vo,Ze.left=v),Qe(Ir,Ba,Ze.width=A)}function Qd(v,A){Qe(Ir,"top",Ze.top=v),Qe(Ir,ka,Ze.height=A)}let Oo=P.ori==0?jd:Qd,Bo=P.ori==1?jd:Qd;function Z0(){if(et&&dt.live)for(let v=s==2?1:0;v<y.length;v++){if(v==0&&se)continue;let A=dt.values[v],U=0;for(let B in A)wt[v][U++].firstChild.nodeValue=A[B]}}function Nh(v,A){if(v!=null&&(v.idxs?v.idxs.forEach((U,B)=>{nt[B]=U}):Zb(v.idx)||nt.fill(v.idx),dt.idx=nt[0]),et&&dt.live){for(let U=0;U<y.length;U++)(U>0||s==1&&!se)&&J0(U,nt[U]);Z0()}Et=!1,A!==!1&&An("setLegend")}n.setLegend=Nh;function J0(v,A){let U=y[v],B=v==0&&F==2?ti:t[v],W;se?W=U.values(n,v,A)??Kt:(W=U.value(n,A==null?null:B[A],v,A),W=W==null?Kt:{_:W}),dt.values[v]=W}function js(v,A,U){Jd=Ye,Kd=tn,[Ye,tn]=ft.move(n,Ye,tn),ft.left=Ye,ft.top=tn,Mt&&(Ar&&ns(Ar,Sn(Ye),0,k,_t),Rr&&ns(Rr,0,Sn(tn),k,_t));let B,W=cn>hn;cs=We,Ls=null;let tt=P.ori==0?k:_t,mt=P.ori==1?k:_t;if(Ye<0||rn==0||W){B=ft.idx=null;for(let bt=0;bt<y.length;bt++){let Pt=ge[bt];Pt!=null&&ns(Pt,-10,-10,k,_t)}le&&ki(null,Lr,!0,v==null&&pn.setSeries),dt.live&&(nt.fill(B),Et=!0)}else{let bt,Pt,Vt;s==1&&(bt=P.ori==0?Ye:tn,Pt=zi(bt,T),B=ft.idx=Ni(Pt,t[0],cn,hn),Vt=O(t[0][B],P,tt,0));let Gt=-10,Xt=-10,fe=0,Ne=0,Le=!0,Te="",oe="";for(let ee=s==2?1:0;ee<y.length;ee++){let Je=y[ee],an=nt[ee],Rn=an==null?null:s==1?t[ee][an]:t[ee][1][an],Ge=ft.dataIdx(n,ee,B,Pt),ln=Ge==null?null:s==1?t[ee][Ge]:t[ee][1][Ge];if(Et=Et||ln!=Rn||Ge!=an,nt[ee]=Ge,ee>0&&Je.show){let ei=Ge==null?-10:Ge==B?Vt:O(s==1?t[0][Ge]:t[ee][0][Ge],P,tt,0),Gn=ln==null?-10:D(ln,s==1?b[Je.scale]:b[Je.facets[1].scale],mt,0);if(le&&ln!=null){let pi=P.ori==1?Ye:tn,Si=bn(qt.dist(n,ee,Ge,Gn,pi));if(Si<cs){let Vi=qt.bias;if(Vi!=0){let ni=zi(pi,Je.scale),mi=ln>=0?1:-1,bi=ni>=0?1:-1;bi==mi&&(bi==1?Vi==1?ln>=ni:ln<=ni:Vi==1?ln<=ni:ln>=ni)&&(cs=Si,Ls=ee)}else cs=Si,Ls=ee}}if(Et||Ft){let pi,Si;P.ori==0?(pi=ei,Si=Gn):(pi=Gn,Si=ei);let Vi,ni,mi,bi,Hi,Wn,ii=!0,Qs=xt.bbox;if(Qs!=null){ii=!1;let $n=Qs(n,ee);mi=$n.left,bi=$n.top,Vi=$n.width,ni=$n.height}else mi=pi,bi=Si,Vi=ni=xt.size(n,ee);if(Wn=xt.fill(n,ee),Hi=xt.stroke(n,ee),Ft)ee==Ls&&cs<=qt.prox&&(Gt=mi,Xt=bi,fe=Vi,Ne=ni,Le=ii,Te=Wn,oe=Hi);else{let $n=ge[ee];$n!=null&&(qe[ee]=mi,Vn[ee]=bi,rg($n,Vi,ni,ii),ig($n,Wn,Hi),ns($n,vi(mi),vi(bi),k,_t))}}}}if(Ft){let ee=qt.prox,Je=Ks==null?cs<=ee:cs>ee||Ls!=Ks;if(Et||Je){let an=ge[0];an!=null&&(qe[0]=Gt,Vn[0]=Xt,rg(an,fe,Ne,Le),ig(an,Te,oe),ns(an,vi(Gt),vi(Xt),k,_t))}}}if(Ze.show&&Ps)if(v!=null){let[bt,Pt]=pn.scales,[Vt,Gt]=pn.match,[Xt,fe]=v.cursor.sync.scales,Ne=v.cursor.drag;if(En=Ne._x,Tn=Ne._y,En||Tn){let{left:Le,top:Te,width:oe,height:ee}=v.select,Je=v.scales[Xt].ori,an=v.posToVal,Rn,Ge,ln,ei,Gn,pi=bt!=null&&Vt(bt,Xt),Si=Pt!=null&&Gt(Pt,fe);pi&&En?(Je==0?(Rn=Le,Ge=oe):(Rn=Te,Ge=ee),ln=b[bt],ei=O(an(Rn,Xt),ln,tt,0),Gn=O(an(Rn+Ge,Xt),ln,tt,0),Oo(Ui(ei,Gn),bn(Gn-ei))):Oo(0,tt),Si&&Tn?(Je==1?(Rn=Le,Ge=oe):(Rn=Te,Ge=ee),ln=b[Pt],ei=D(an(Rn,fe),ln,mt,0),Gn=D(an(Rn+Ge,fe),ln,mt,0),Bo(Ui(ei,Gn),bn(Gn-ei))):Bo(0,mt)}else Oh()}else{let bt=bn(Jd-Yd),Pt=bn(Kd-Zd);if(P.ori==1){let fe=bt;bt=Pt,Pt=fe}En=In.x&&bt>=In.dist,Tn=In.y&&Pt>=In.dist;let Vt=In.uni;Vt!=null?En&&Tn&&(En=bt>=Vt,Tn=Pt>=Vt,!En&&!Tn&&(Pt>bt?Tn=!0:En=!0)):In.x&&In.y&&(En||Tn)&&(En=Tn=!0);let Gt,Xt;En&&(P.ori==0?(Gt=Cr,Xt=Ye):(Gt=Pr,Xt=tn),Oo(Ui(Gt,Xt),bn(Xt-Gt)),Tn||Bo(0,mt)),Tn&&(P.ori==1?(Gt=Cr,Xt=Ye):(Gt=Pr,Xt=tn),Bo(Ui(Gt,Xt),bn(Xt-Gt)),En||Oo(0,tt)),!En&&!Tn&&(Oo(0,0),Bo(0,0))}if(In._x=En,In._y=Tn,v==null){if(U){if(uf!=null){let[bt,Pt]=pn.scales;pn.values[0]=bt!=null?zi(P.ori==0?Ye:tn,bt):null,pn.values[1]=Pt!=null?zi(P.ori==1?Ye:tn,Pt):null}zo(fd,n,Ye,tn,k,_t,B)}if(le){let bt=U&&pn.setSeries,Pt=qt.prox;Ks==null?cs<=Pt&&ki(Ls,Lr,!0,bt):cs>Pt?ki(null,Lr,!0,bt):Ls!=Ks&&ki(Ls,Lr,!0,bt)}}Et&&(dt.idx=B,Nh()),A!==!1&&An("setCursor")}let Ds=null;Object.defineProperty(n,"rect",{get(){return Ds==null&&ko(!1),Ds}});function ko(v=!1){v?Ds=null:(Ds=g.getBoundingClientRect(),An("syncRect",Ds))}function tf(v,A,U,B,W,tt,mt){ft._lock||Ps&&v!=null&&v.movementX==0&&v.movementY==0||(Uh(v,A,U,B,W,tt,mt,!1,v!=null),v!=null?js(null,!0,!0):js(A,!0,!1))}function Uh(v,A,U,B,W,tt,mt,bt,Pt){if(Ds==null&&ko(!1),ae(v),v!=null)U=v.clientX-Ds.left,B=v.clientY-Ds.top;else{if(U<0||B<0){Ye=-10,tn=-10;return}let[Vt,Gt]=pn.scales,Xt=A.cursor.sync,[fe,Ne]=Xt.values,[Le,Te]=Xt.scales,[oe,ee]=pn.match,Je=A.axes[0].side%2==1,an=P.ori==0?k:_t,Rn=P.ori==1?k:_t,Ge=Je?tt:W,ln=Je?W:tt,ei=Je?B:U,Gn=Je?U:B;if(Le!=null?U=oe(Vt,Le)?a(fe,b[Vt],an,0):-10:U=an*(ei/Ge),Te!=null?B=ee(Gt,Te)?a(Ne,b[Gt],Rn,0):-10:B=Rn*(Gn/ln),P.ori==1){let pi=U;U=B,B=pi}}Pt&&(A==null||A.cursor.event.type==fd)&&((U<=1||U>=k-1)&&(U=gr(U,k)),(B<=1||B>=_t-1)&&(B=gr(B,_t))),bt?(Yd=U,Zd=B,[Cr,Pr]=ft.move(n,U,B)):(Ye=U,tn=B)}let Fh={width:0,height:0,left:0,top:0};function Oh(){Za(Fh,!1)}let ef,nf,sf,rf;function of(v,A,U,B,W,tt,mt){Ps=!0,En=Tn=In._x=In._y=!1,Uh(v,A,U,B,W,tt,mt,!0,!1),v!=null&&(lt(pd,yd,af,!1),zo(Jm,n,Cr,Pr,k,_t,null));let{left:bt,top:Pt,width:Vt,height:Gt}=Ze;ef=bt,nf=Pt,sf=Vt,rf=Gt}function af(v,A,U,B,W,tt,mt){Ps=In._x=In._y=!1,Uh(v,A,U,B,W,tt,mt,!1,!0);let{left:bt,top:Pt,width:Vt,height:Gt}=Ze,Xt=Vt>0||Gt>0,fe=ef!=bt||nf!=Pt||sf!=Vt||rf!=Gt;if(Xt&&fe&&Za(Ze),In.setScale&&Xt&&fe){let Ne=bt,Le=Vt,Te=Pt,oe=Gt;if(P.ori==1&&(Ne=Pt,Le=Gt,Te=bt,oe=Vt),En&&Is(T,zi(Ne,T),zi(Ne+Le,T)),Tn)for(let ee in b){let Je=b[ee];ee!=T&&Je.from==null&&Je.min!=We&&Is(ee,zi(Te+oe,ee),zi(Te,ee))}Oh()}else ft.lock&&(ft._lock=!ft._lock,js(A,!0,v!=null));v!=null&&(Tt(pd,yd),zo(pd,n,Ye,tn,k,_t,null))}function K0(v,A,U,B,W,tt,mt){if(ft._lock)return;ae(v);let bt=Ps;if(Ps){let Pt=!0,Vt=!0,Gt=10,Xt,fe;P.ori==0?(Xt=En,fe=Tn):(Xt=Tn,fe=En),Xt&&fe&&(Pt=Ye<=Gt||Ye>=k-Gt,Vt=tn<=Gt||tn>=_t-Gt),Xt&&Pt&&(Ye=Ye<Cr?0:k),fe&&Vt&&(tn=tn<Pr?0:_t),js(null,!0,!0),Ps=!1}Ye=-10,tn=-10,nt.fill(null),js(null,!0,!0),bt&&(Ps=bt)}function lf(v,A,U,B,W,tt,mt){ft._lock||(ae(v),Fo(),Oh(),v!=null&&zo(Qm,n,Ye,tn,k,_t,null))}function cf(){C.forEach(u1),z(n.width,n.height,!0)}yr(ch,So,cf);let Dr={};Dr.mousedown=of,Dr.mousemove=tf,Dr.mouseup=af,Dr.dblclick=lf,Dr.setSeries=(v,A,U,B)=>{let W=pn.match[2];U=W(n,A,U),U!=-1&&ki(U,B,!0,!1)},Mt&&(lt(Jm,g,of),lt(fd,g,tf),lt(Km,g,v=>{ae(v),ko(!1)}),lt(jm,g,K0),lt(Qm,g,lf),Ad.add(n),n.syncRect=ko);let Ja=n.hooks=i.hooks||{};function An(v,A,U){Hn?He.push([v,A,U]):v in Ja&&Ja[v].forEach(B=>{B.call(null,n,A,U)})}(i.plugins||[]).forEach(v=>{for(let A in v.hooks)Ja[A]=(Ja[A]||[]).concat(v.hooks[A])});let hf=(v,A,U)=>U,pn=_n({key:null,setSeries:!1,filters:{pub:hg,sub:hg},scales:[T,y[1]?y[1].scale:null],match:[ug,ug,hf],values:[null,null]},ft.sync);pn.match.length==2&&pn.match.push(hf),ft.sync=pn;let uf=pn.key,Bh=a0(uf);function zo(v,A,U,B,W,tt,mt){pn.filters.pub(v,A,U,B,W,tt,mt)&&Bh.pub(v,A,U,B,W,tt,mt)}Bh.sub(n);function j0(v,A,U,B,W,tt,mt){pn.filters.sub(v,A,U,B,W,tt,mt)&&Dr[v](null,A,U,B,W,tt,mt)}n.pub=j0;function Q0(){Bh.unsub(n),Ad.delete(n),Pe.clear(),Sd(ch,So,cf),c.remove(),it?.remove(),An("destroy")}n.destroy=Q0;function kh(){An("init",i,t),Uo(t||i.data,!1),V[T]?Ih(T,V[T]):Fo(),ct=Ze.show&&(Ze.width>0||Ze.height>0),ot=Et=!0,z(i.width,i.height)}return y.forEach(br),C.forEach(rs),e?e instanceof HTMLElement?(e.appendChild(c),kh()):e(n,kh):kh(),n}wn.assign=_n;wn.fmtNum=Nd;wn.rangeNum=hh;wn.rangeLog=fh;wn.rangeAsinh=Ld;wn.orient=Mr;wn.pxRatio=Oe;wn.join=nw;wn.fmtDate=Fd,wn.tzDate=fw;wn.sync=a0;{wn.addGap=Zw,wn.clipGaps=gh;let i=wn.paths={points:f0};i.linear=m0,i.stepped=jw,i.bars=Qw,i.spline=e1}function d1(i,t){let e=[],n=[],s=new Map,r="",o="";for(let[l,c]of i.entries()){let h=(c.charts??[]).find(u=>u.id===t);if(!h)continue;r=h.title,o=h.unit;let d=[Array.from(Gi(c.time))];for(let u of h.series)s.has(u.name)||s.set(u.name,s.size),d.push(Array.from(Gi(u.data),p=>p===p?p:null)),n.push({...u,record:l,label:c.label,colour:s.get(u.name)});e.push(d)}let a=e.length>1?wn.join(e,e.map(l=>l.map(()=>1))):e[0];return{id:t,title:r,unit:o,series:n,columns:a}}var f1=i=>[...new Set(i.flatMap(t=>(t.charts??[]).map(e=>e.id)))];function y0(i,t){let e=i.length>1,{duration:n}=t.state,s=wn.sync("curves"),r=[],o=M("div",{class:"curves"}),a=[[],[7,4],[2,3],[10,3,2,3]],l=!1,c=M("button",{type:"button",id:"zoom-out",hidden:!0,on:{click:()=>h(0,n)}},"Show the whole run");function h(x,m){l=!0;for(let{plot:f}of r)f.setScale("x",{min:x,max:m});l=!1,c.hidden=x<=0&&m>=n,u()}for(let x of f1(i)){let m=d1(i,x),f=M("div",{class:"chart-plot"}),y=M("div",{class:"chart-legend"}),C=M("span",{class:"chart-time"}),b=M("figure",{class:"chart","data-chart":x},M("figcaption",{},M("span",{},ht(m.title),M("span",{class:"muted"},` [${m.unit}]`)),C),f,y);o.append(b);let I=S=>({stroke:()=>nr("--ink-soft"),grid:{stroke:()=>nr("--grid"),width:1},ticks:{stroke:()=>nr("--grid"),width:1,size:4},font:"11px system-ui, sans-serif",...S}),T=new wn({width:400,height:190,legend:{show:!1},padding:[8,10,0,0],scales:{x:{time:!1,range:(S,P,F)=>[P,Math.max(F,P+1e-6)]}},axes:[I({size:26,space:60,values:(S,P)=>P.map((F,O)=>(P.length-1,`${+F.toPrecision(6)} s`))}),I({size:48,space:30,values:(S,P)=>P.map(F=>String(+F.toPrecision(6)).replace("-","\u2212"))})],series:[{},...m.series.map(S=>({label:S.name,show:S.shown!==!1,stroke:()=>Br(S.colour),width:1.6,dash:a[S.record%a.length],spanGaps:e,points:{show:!1}}))],cursor:{sync:{key:s.key,setSeries:!1},drag:{x:!0,y:!1,dist:5},y:!1,points:{size:6}},hooks:{setScale:[(S,P)=>{P==="x"&&!l&&r.length&&h(S.scales.x.min,S.scales.x.max)}],setCursor:[()=>p()]}},m.columns,f),_=M("div",{class:"time-cursor"},M("span",{class:"time-grip"}));T.over.append(_);let w=m.series.map((S,P)=>{let F=M("span",{class:"figure"}),O=M("span",{class:"swatch-line","data-record":S.record}),D=M("button",{type:"button",class:"series","aria-pressed":String(S.shown!==!1),title:S.description||S.name,on:{click:()=>{let V=!T.series[P+1].show;T.setSeries(P+1,{show:V}),D.setAttribute("aria-pressed",String(V)),p()}}},O,e?`${S.label} `:"",ht(S.name),F);return y.append(D),{value:F,swatch:O,colour:S.colour}});if(w.length>10){y.classList.add("folded");let S=M("button",{type:"button",class:"more","aria-expanded":"false",on:{click:()=>{let P=y.classList.toggle("folded");S.setAttribute("aria-expanded",String(!P)),S.textContent=P?`all ${w.length} curves`:"fewer"}}},`all ${w.length} curves`);y.append(S)}let L={id:x,plot:T,group:m,figure:b,hand:_,entries:w,note:C,holder:f,time:NaN};r.push(L),m1(T,_,t),new ResizeObserver(()=>{let S=Math.floor(f.clientWidth);S>50&&S!==T.width&&(T.setSize({width:S,height:T.height}),u())}).observe(f)}function d(){for(let{plot:x,entries:m}of r){for(let f of m)f.swatch.style.color=Br(f.colour);x.redraw(!1)}}$i(d);function u(){let{time:x}=t.state;for(let{plot:m,hand:f,figure:y}of r){let{min:C,max:b}=m.scales.x,I=x>=C-1e-9&&x<=b+1e-9;f.hidden=!I,I&&(f.style.transform=`translateX(${m.valToPos(x,"x").toFixed(2)}px)`),Ke(y,"data-time",x.toFixed(6))}}function p(){for(let{plot:x,group:m,entries:f,note:y}of r){let C=x.cursor.left>=0&&x.cursor.idx!==null&&x.cursor.idx!==void 0,b=m.columns[0],I=C?b[x.cursor.idx]:t.state.time;On(y,C?`mouse: ${Ln(I,n)}`:Ln(I,n));for(let[T,_]of f.entries()){if(!x.series[T+1].show){On(_.value,"");continue}let w=C&&!e?m.columns[T+1][x.cursor.idx]:p1(b,m.columns[T+1],I);On(_.value,w==null?"\u2013":`${sn(w)} ${m.unit}`)}}}let g=0;return t.listen(({playing:x})=>{u();let m=performance.now();x&&m-g<100||(g=m,p())}),d(),{box:o,reset:c,charts:r}}function p1(i,t,e){let n=0,s=i.length-1;for(;n<s;){let a=n+s+1>>1;i[a]<=e?n=a:s=a-1}let r=n,o=Math.min(n+1,i.length-1);for(;r>0&&t[r]===void 0;)--r;for(;o<i.length-1&&t[o]===void 0;)++o;return t[r]===null||t[r]===void 0?null:t[o]===null||t[o]===void 0||i[o]<=i[r]?t[r]:t[r]+(t[o]-t[r])*Math.min(Math.max((e-i[r])/(i[o]-i[r]),0),1)}function m1(i,t,e){let{over:n}=i,s=l=>i.posToVal(l.clientX-n.getBoundingClientRect().left,"x"),r=l=>{e.seek(s(l))};n.style.touchAction="pan-y";let o=null;n.addEventListener("pointerdown",l=>{o={x:l.clientX,touch:l.pointerType!=="mouse"}}),n.addEventListener("pointermove",l=>{o?.touch&&r(l)}),n.addEventListener("pointerup",l=>{o&&Math.abs(l.clientX-o.x)<4&&r(l),o=null}),n.addEventListener("pointercancel",()=>{o=null});let a=t.firstChild;a.addEventListener("mousedown",l=>l.stopPropagation()),a.addEventListener("pointerdown",l=>{l.stopPropagation(),l.preventDefault(),a.setPointerCapture(l.pointerId)}),a.addEventListener("pointermove",l=>{a.hasPointerCapture(l.pointerId)&&(l.stopPropagation(),r(l))}),a.addEventListener("pointerup",l=>l.stopPropagation()),a.addEventListener("click",l=>l.stopPropagation())}var is=150,Gd=34,Wd=i=>i>=.0995?`${(100*i).toFixed(0)} %`:`${sn(100*i,2)} %`;function g1(i,t,e){let n=Math.max(t,1.2),s=i,r=i-n,o=n+6,a=n+12,l=is+Gd-14,c=`M${r} 0A${o} ${o} 0 0 0 ${r+o} ${o}H${l}v6l13 ${-(n/2+6)}l-13 ${-(n/2+6)}v6H${s+6}A6 6 0 0 1 ${s} 0Z`;return vt("svg",{class:`branch ${e}`,width:is+Gd,height:a,viewBox:`0 0 ${is+Gd} ${a}`,"aria-hidden":"true"},vt("path",{d:c}))}function _1(i,t){let e=(i??[]).filter(n=>n.share>0).sort((n,s)=>s.share-n.share);return e.length?M("ul",{class:"parts"},e.map(n=>M("li",{},ht(n.name)," ",M("span",{class:"figure"},Wd(n.share))))):null}function x1(i){let{unit:t,total:e}=i,n=(o,a,l)=>{let c=Math.max(o.share,0)*is;return M("div",{class:`flow-row ${l}`,style:{"--least":`${Math.ceil(c)+26}px`,"--drop":`${Math.max(c/2-5,0).toFixed(1)}px`}},M("div",{class:"stream-cell"},M("div",{class:"stream",style:{width:`${Math.max(a-c,0).toFixed(2)}px`}}),g1(a,c,l)),M("div",{class:"flow-text"},M("p",{},M("b",{},ht(o.name))," ",M("span",{class:"figure"},Wd(o.share))," ",M("span",{class:"figure muted"},`${sn(o.value,3)} ${t}`)),_1(o.parts,t)))},s=[],r=is;for(let o of i.flows??[])o.share>0&&(s.push(n(o,r,"loss")),r-=o.share*is);for(let o of i.useful??[])o.share>0&&(s.push(n(o,r,"useful")),r-=o.share*is);return Math.abs(r)>.005*is&&s.push(M("p",{class:"muted"},`The parts named do not add up to the whole: ${Wd(Math.abs(r)/is)} ${r>0?"is missing":"too much"}.`)),M("div",{class:"flow"},M("div",{class:"flow-row source"},M("div",{class:"stream-cell"},M("div",{class:"stream",style:{width:`${is}px`}})),M("div",{class:"flow-text"},M("p",{},M("b",{},"from the supply")," ",M("span",{class:"figure"},"100 %")," ",M("span",{class:"figure muted"},`${sn(e,4)} ${t}`)))),s)}function v0(i,t){let{records:e}=t,n=e.length>1;e.some(s=>s.losses)&&i.section("losses","Where the energy goes",M("div",{class:n?"columns":""},e.map(s=>M("div",{},n&&Fr(s),s.losses?[M("p",{class:"lead"},ht(s.losses.title)),x1(s.losses)]:M("p",{class:"muted"},"This run draws nothing from a supply, so there is no energy to follow.")))))}var $d=12;function y1(i){let t=new Map;return i.forEach((e,n)=>{for(let s of e.margins?.values??[]){t.has(s.name)||t.set(s.name,{check:s.check,least:1/0,of:[]});let r=t.get(s.name);r.of[n]=s,r.least=Math.min(r.least,s.ratio)}}),[...t.values()].sort((e,n)=>e.least-n.least)}function v1(i){let t=[],e=(n,s)=>["time","load","posture","lost_at","lost_load"].every(r=>n[r]===s[r]);return i.forEach((n,s)=>{if(!n)return;let r=t.find(o=>e(o.value,n));r?r.of.push(s):t.push({value:n,of:[s]})}),t}function M0(i,t,e){let{records:n}=t,s=n.length>1,r=y1(n),{duration:o}=e.state,a=n.flatMap(x=>(x.margins?.not_checked??[]).map(m=>({...m,label:x.label}))),l=(x,m)=>[...new Map(x.map(f=>[m(f),f])).values()],c=l(a,x=>x.check+"|"+(x.missing??[]).join()),h=l(n.flatMap(x=>x.margins?.cautions??[]),x=>x),d=l(n.flatMap(x=>x.margins?.unloaded??[]),x=>x),u=r.map((x,m)=>M("tr",{class:`${x.least<1?"missed":""} ${m>=$d?"later":""}`},M("td",{class:"figure number-cell"},m+1),M("th",{scope:"row"},ht(x.check)),M("td",{class:"margin-cell"},x.of.map((f,y)=>f&&M("div",{class:"bar-line"},s&&M("span",{class:"record-letter"},n[y].label),Qa(f.ratio),M("span",{class:`figure ${f.ratio<1?"short":""}`},ht(f.ratio_text))))),M("td",{class:"figure"},x.of.map(f=>f&&M("div",{class:"pair"},ht(f.capacity),M("span",{class:"muted"}," / "),ht(f.demand)))),M("td",{},v1(x.of).map(({value:f,of:y})=>M("div",{class:"governs"},s&&y.map(C=>[M("span",{class:"record-letter"},n[C].label)," "]),Number.isFinite(f.time)&&Ur(e,f.time,Ln(f.time,o))," ",M("span",{class:"small"},ht(f.load),f.posture?M("span",{class:"muted posture"}," \xB7 ",ht(f.posture)):""),f.lost_at!==null&&Number.isFinite(f.lost_at)&&M("div",{class:"lost"},si("bad")," falls below 1 at ",Ur(e,f.lost_at,Ln(f.lost_at,o))," ",M("span",{class:"small"},ht(f.lost_load??"")))))))),p=r.length?Xn(["","what could fail","margin","capacity / demand","governed at, by"],u,{class:"margins short",label:"margins"}):M("p",{class:"muted"},"The record holds no margins."),g=r.length>$d&&M("button",{type:"button",class:"more controls","aria-expanded":"false",on:{click:()=>{let x=p.querySelector("table").classList.toggle("short");g.textContent=x?`Show all ${r.length} margins`:`Show the ${$d} smallest`,g.setAttribute("aria-expanded",String(!x))}}},`Show all ${r.length} margins`);return i.section("margins","Margins: what breaks first",M("p",{class:"lead"},"How many times over each part would bear what the run asked of it, at the worst instant of the run. Below 1 it fails. Bars on a logarithmic axis from 0.5 to 20, starting at 1; smallest first."),p,g,M("div",{class:"not-checked"},M("h3",{},si("unknown")," Not checked"),c.length?[M("p",{},`${c.length===1?"This check was":`These ${c.length} checks were`} not made, because the model lacks the data. Nothing is known about them: they are not safe, they are unknown.`),M("ul",{},c.map(x=>M("li",{},ht(x.check),x.missing?.length?M("span",{class:"muted"}," \u2014 needs ",x.missing.map((m,f)=>[f?", ":"",ht(m)])):"")))]:M("p",{},r.length?"Every check that the program knows of had the data it needs. Failures that it does not know of are not covered.":"No part was checked in this record.")),d.length>0&&M("details",{},M("summary",{},`Never loaded in this run (${d.length})`),M("p",{class:"small"},d.map((x,m)=>[m?" \xB7 ":"",ht(x)]))),h.length>0&&M("div",{class:"caution-list"},M("h3",{},"Cautions about the margins"),M("ul",{},h.map(x=>M("li",{},ht(x))))))}function M1(i){if((i.axes??[]).length!==1)return null;let t=i.rows.filter(g=>g.found!==!1&&Number.isFinite(g.value)).map(g=>({x:parseFloat(g.place[0]),y:g.value})).filter(g=>Number.isFinite(g.x)).sort((g,x)=>g.x-x.x);if(t.length<2)return null;let e=420,n=200,s=50,r=36,o=10,a=14,l=t.map(g=>g.x),c=Math.min(...l),h=Math.max(...l),d=1.1*Math.max(...t.map(g=>g.y),1e-12);if(!(h>c))return null;let u=g=>s+(g-c)/(h-c)*(e-s-a),p=g=>n-r-g/d*(n-r-o);return vt("svg",{class:"limit-chart",viewBox:`0 0 ${e} ${n}`,width:e,height:n,role:"img","aria-label":`${i.name} over ${i.axes[0].name}`},vt("path",{class:"grid",d:[0,.25,.5,.75,1].map(g=>`M${s} ${p(g*d/1.1)}H${e-a}`).join("")}),[0,.5,1].map(g=>vt("text",{x:s-6,y:p(g*d/1.1)+4,"text-anchor":"end"},sn(g*d/1.1,3))),t.map(g=>vt("text",{x:u(g.x),y:n-r+15,"text-anchor":"middle"},String(g.x))),vt("text",{x:(s+e-a)/2,y:n-4,"text-anchor":"middle"},i.axes[0].name),vt("path",{class:"line",d:t.map((g,x)=>`${x?"L":"M"}${u(g.x)} ${p(g.y)}`).join("")}),t.map(g=>vt("circle",{cx:u(g.x),cy:p(g.y),r:3})))}function S1(i){if(i.method!=="directions"||!i.in_plane)return null;let t=i.axes[i.axes.length-1].values.length,e=i.rows.filter(h=>h.found!==!1&&Number.isFinite(h.value));if(!e.length)return null;let n=300,s=112,r=n/2,o=1.08*Math.max(...e.map(h=>h.value),1e-12),a=(h,d)=>[r+d/o*s*Math.cos(2*Math.PI*h/t),r-d/o*s*Math.sin(2*Math.PI*h/t)],l=h=>`M${r+h} ${r}A${h} ${h} 0 1 0 ${r-h} ${r}A${h} ${h} 0 1 0 ${r+h} ${r}`,c=[vt("path",{class:"grid",d:[.25,.5,.75,1].map(h=>l(h*s)).join("")+[0,1,2,3].map(h=>`M${r} ${r}L${r+s*Math.cos(h*Math.PI/2)} ${r-s*Math.sin(h*Math.PI/2)}`).join("")})];for(let[h,d]of["0\xB0","90\xB0","180\xB0","270\xB0"].entries())c.push(vt("text",{x:r+(s+18)*Math.cos(h*Math.PI/2),y:r+4-(s+14)*Math.sin(h*Math.PI/2),"text-anchor":"middle"},d));for(let h of[.5,1])c.push(vt("text",{x:r+h*s*Math.cos(1.25)+3,y:r-h*s*Math.sin(1.25),"text-anchor":"start"},sn(h*o,2)));for(let h=0;h<i.rows.length;h+=t){let d=i.rows.slice(h,h+t),u=d.map((x,m)=>({row:x,k:m})).filter(({row:x})=>x.found!==!1&&Number.isFinite(x.value)),p="";for(let x=0;x<=t;++x){let m=d[x%t];if(m.found===!1||!Number.isFinite(m.value))continue;let f=x>0&&d[x-1].found!==!1&&Number.isFinite(d[x-1].value);p+=`${f?"L":"M"}${a(x,m.value).map(y=>y.toFixed(2)).join(" ")}`}c.push(vt("path",{class:"line",d:p}));for(let{row:x,k:m}of u)c.push(vt("circle",{cx:a(m,x.value)[0],cy:a(m,x.value)[1],r:2.5}));let g=u.reduce((x,m)=>m.row.value<x.row.value?m:x,u[0]);g&&c.push(vt("circle",{class:"worst",cx:a(g.k,g.row.value)[0],cy:a(g.k,g.row.value)[1],r:6}))}return vt("svg",{class:"limit-chart",viewBox:`0 0 ${n} ${n}`,width:n,height:n,role:"img","aria-label":`${i.name}, by direction`},c)}function S0(i,t){t.limits?.length&&i.section("limits","Limits",t.limits.map(e=>M("div",{class:"limit"},M("h3",{},ht(e.name)),M("p",{class:"lead"},ht(e.quantity),e.unit?` [${e.unit}]`:"",e.method?M("span",{class:"muted"},", found by ",ht(e.method)):""),M("div",{class:"limit-body"},Xn([...(e.axes??[]).map(n=>ht(n.name)),"limit","error",e.method==="directions"?"the finger that gives first":"remark"],e.rows.map(n=>M("tr",{class:n.found===!1?"missed":""},(n.place??[]).map(s=>M("td",{class:"figure"},ht(s))),M("td",{class:"figure"},M("b",{},ht(n.text))),M("td",{class:"figure"},ht(n.error_text)),M("td",{class:"small"},ht([n.gave,n.note].filter(Boolean).join("; "))))),{label:`limit ${e.name}`}),S1(e)??M1(e)))))}function b1(i,t,e){let n=(t-i)/Math.max(1,e);if(!(n>0)||!Number.isFinite(n))return[i];let s=10**Math.floor(Math.log10(n)),r=s*([1,2,5,10].find(a=>a*s>=n*.999)??10),o=[];for(let a=Math.ceil(i/r-1e-9);a*r<=t+1e-9*r;++a)o.push(+(a*r).toPrecision(12));return o}function Po(i,t=[]){let e=1/0,n=-1/0;for(let a of i)Number.isFinite(a)&&(a<e&&(e=a),a>n&&(n=a));let s=n-e;for(let{value:a}of t){let l=Math.min(e,a),c=Math.max(n,a);(!(s>0)||s>=.25*(c-l))&&(e=l,n=c)}if(!(e<=n))return{low:0,high:1};let r=Math.max(Math.abs(e),Math.abs(n)),o=r>0?.02*r:1;return n-e<o?{low:(e+n)/2-o,high:(e+n)/2+o}:{low:e-.07*(n-e),high:n+.07*(n-e)}}var Io=i=>Math.min(i,Math.max(320,document.documentElement.clientWidth-44)),vh=(i,t)=>i.length>t?`${i.slice(0,t-1)}\u2026`:i;function Sr({width:i=420,height:t=210,x:e,y:n,label:s,left:r=58,right:o=14,top:a=12,bottom:l=40,className:c=""}){let h=y=>r+(y-e.low)/(e.high-e.low)*(i-r-o),d=y=>t-l-(y-n.low)/(n.high-n.low)*(t-a-l),u=y=>y.format??(C=>Nr(C)),p=(y,C)=>y.options?y.options.map((b,I)=>I):b1(y.low,y.high,C),g=p(e,(i-r-o)/80),x=p(n,(t-a-l)/40),m=e.options?Math.max(3,Math.floor((i-r-o)/e.options.length/7)):0;return{node:vt("svg",{class:`study-chart ${c}`,viewBox:`0 0 ${i} ${t}`,width:i,height:t,role:"img","aria-label":s},vt("path",{class:"grid",d:g.map(y=>`M${h(y).toFixed(1)} ${a}V${t-l}`).join("")+x.map(y=>`M${r} ${d(y).toFixed(1)}H${i-o}`).join("")}),g.map((y,C)=>vt("text",{x:h(y).toFixed(1),y:t-l+15,"text-anchor":"middle"},e.options?vh(e.options[C],m):u(e)(y))),x.map((y,C)=>vt("text",{x:r-6,y:(d(y)+4).toFixed(1),"text-anchor":"end"},n.options?vh(n.options[C],8):u(n)(y))),vt("text",{class:"axis-name",x:(r+i-o)/2,y:t-5,"text-anchor":"middle"},vh(e.label??"",Math.floor((i-r-o)/6.4))),n.label&&vt("text",{class:"axis-name",transform:`translate(12 ${(a+t-l)/2}) rotate(-90)`,"text-anchor":"middle"},vh(n.label,Math.floor((t-a-l+30)/6.4))),vt("path",{class:"frame",d:`M${r} ${a}V${t-l}H${i-o}`})),px:h,py:d,left:r,right:i-o,top:a,bottom:t-l,width:i,height:t}}function Wa(i,t,e,n){return(e??[]).map((s,r)=>{if(s.value<t.low||s.value>t.high)return null;let o=n?i.px(s.value):i.py(s.value),a=n?s.at_least?i.left:i.right:s.at_least?i.bottom:i.top,l=n?{x:Math.min(o,a),y:i.top,width:Math.abs(o-a),height:i.bottom-i.top}:{x:i.left,y:Math.min(o,a),width:i.right-i.left,height:Math.abs(o-a)},c=n?`M${o} ${i.top}V${i.bottom}`:`M${i.left} ${o}H${i.right}`,h=n?{x:o+(s.at_least?4:-4),y:i.top+10+12*r,"text-anchor":s.at_least?"start":"end"}:{x:i.right-3,y:o+(s.at_least?11:-4),"text-anchor":"end"};return[vt("rect",{class:"not-allowed",...l}),vt("path",{class:"bound",d:c}),vt("text",{class:"bound-text",...h},s.text)]})}var ss=i=>i.unit?`${i.title} [${i.unit}]`:i.title,b0=i=>`${Nr(100*i)} %`,Js=(i,t,...e)=>M("figure",{class:"study-figure"},M("figcaption",{},ht(i)),t,e);function w0(i,t,e){let{low:n,high:s,counts:r}=t.histogram;if(!r.length)return Js(ss(i),M("p",{class:"muted small"},"No row has it."));let o=Number.isFinite(t.drawn)&&s-n>.25*(Math.max(s,t.drawn)-Math.min(n,t.drawn)),a={...Po(o?[n,s,t.drawn]:[n,s],i.bounds),label:ss(i)},l=Math.max(...r)/e,c=Sr({x:a,y:{low:0,high:1.2*l,format:u=>b0(u)},label:`spread of ${i.title}`,left:50}),h=s>n?(s-n)/r.length:.04*(a.high-a.low),d=s>n?n:n-h/2;return c.node.append(...Wa(c,a,i.bounds,!0).flat().filter(Boolean),...r.map((u,p)=>vt("rect",{class:"bar",x:c.px(d+h*p).toFixed(2),width:Math.max(.5,c.px(d+h)-c.px(d)-.6).toFixed(2),y:c.py(u/e).toFixed(2),height:(c.bottom-c.py(u/e)).toFixed(2)}))),Number.isFinite(t.drawn)&&t.drawn>a.low&&t.drawn<a.high&&c.node.append(vt("path",{class:"as-drawn",d:`M${c.px(t.drawn)} ${c.top}V${c.bottom}`})),Js(i.title,c.node)}function E0(i,t){let e=Gi(t.points),n=[];for(let h=0;h+4<e.length;h+=5)n.push(e.subarray(h,h+5));let s={low:n[0][0],high:n.at(-1)[0],label:`${ss(i)}: ${t.at_least?"at least":"at most"}`},r=Sr({x:s,y:{low:0,high:1.04,format:h=>b0(h)},label:`yield over the bound of ${i.title}`,left:50}),o=h=>n.map((d,u)=>`${u?"L":"M"}${r.px(d[0]).toFixed(1)} ${r.py(d[h]).toFixed(1)}`).join(""),a=[...n].reverse().map(h=>`L${r.px(h[0]).toFixed(1)} ${r.py(h[3]).toFixed(1)}`).join(""),l=r.px(t.value),c=l>(r.left+r.right)/2;return r.node.append(vt("path",{class:"band",d:`${o(4)}${a}Z`}),vt("path",{class:"alone",d:o(1)}),vt("path",{class:"all",d:o(2)}),vt("path",{class:"bound",d:`M${l} ${r.top}V${r.bottom}`}),vt("text",{class:"bound-text",x:l+(c?-4:4),y:r.bottom-8,"text-anchor":c?"end":"start"},t.text)),Js(`Yield if the bound on ${i.title} stood elsewhere`,r.node)}function Mh(i,{low:t,high:e,label:n,axis:s,textTitle:r}){let o=Io(560),a=30,l=Math.min(150,o/3),c=14,h=6,d=34,u=h+a*i.length+d,p=Sr({width:o,height:u,left:l,right:c,top:h,bottom:d,x:{low:t,high:e,label:s},y:{low:0,high:1,options:[]},label:n}),g=x=>Math.min(Math.max(x,t),e);return i.forEach((x,m)=>{let f=h+a*m+3,y=(a-6)/x.bars.length;p.node.append(vt("text",{class:"row-name",x:l-6,y:h+a*m+a/2+4,"text-anchor":"end"},x.title.length>l/7.4?`${x.title.slice(0,Math.floor(l/7.4)-1)}\u2026`:x.title,vt("title",{},`${x.title}${r?`: ${r} `:": "}${x.text}`))),x.bars.forEach((C,b)=>{if(!Number.isFinite(C.value))return;let I=p.px(g(0)),T=p.px(g(C.value));if(p.node.append(vt("rect",{class:`bar ${C.kind}`,x:Math.min(I,T).toFixed(1),width:Math.max(.7,Math.abs(T-I)).toFixed(1),y:(f+y*b+.5).toFixed(1),height:(y-1).toFixed(1)})),Number.isFinite(C.low)&&Number.isFinite(C.high)){let _=f+y*(b+.5);p.node.append(vt("path",{class:"whisker",d:`M${p.px(g(C.low))} ${_}H${p.px(g(C.high))}M${p.px(g(C.low))} ${_-3}v6M${p.px(g(C.high))} ${_-3}v6`}))}})}),p.node}function T0(i,t){if(!t.keys.length)return Js(i.title,M("p",{class:"muted"},ht(t.note),"."));let e=t.keys.flatMap(s=>[s.first,s.total]).flatMap(s=>[s.value,s.low,s.high]).filter(Number.isFinite),n=Mh(t.keys.map(s=>({title:s.key,text:`by itself ${s.first.text}, in all ${s.total.text}`,bars:[{...s.first,kind:"first"},{...s.total,kind:"total"}]})),{low:Math.min(0,...e),high:Math.max(1,...e)*1.02,label:`shares of the variance of ${i.title}`,axis:"share of the variance"});return Js(i.title,n,t.note&&M("p",{class:"small muted"},ht(t.note),"."))}function A0(i,t){let e=Math.max(...t.keys.map(s=>s.size??0));if(!(e>0))return Js(i.title,M("p",{class:"muted"},"Does not change, or too few rows have it."));let n=Mh(t.keys.map(s=>({title:s.key,text:`size ${s.texts[0]}, with sign ${s.texts[1]}, deviation ${s.texts[2]}`,bars:[{value:s.mean,kind:s.mean<0?"less":"more"},{value:s.mean<0?-s.size:s.size,kind:"size"}]})),{low:-1.05*e,high:1.05*e,label:`changes of ${i.title}`,axis:`change over the whole spread of a key${i.unit?` [${i.unit}]`:""}`});return Js(i.title,n)}function R0(i,t,e,n){let s=e.rows.filter(g=>g.number<n),r=s.filter(g=>g.state<2).map(g=>g.values[i.place]),o=s.filter(g=>g.state===0).map(g=>g.values[i.place]),a=r.filter(Number.isFinite).sort((g,x)=>g-x),l=a.length?[a[Math.floor(.05*(a.length-1))],a[Math.ceil(.95*(a.length-1))]]:[],c={...Po([...o,...l,i.drawn]),label:`${ss(i)}, ${t.more?"more":"less"} is better`},h=Sr({width:Io(1110),height:230,x:{low:-.01*n,high:1.01*n,label:"design, in the order of trying"},y:c,label:`search for ${i.title}`}),d=g=>g.values[i.place]>=c.low&&g.values[i.place]<=c.high,u=g=>g.map(x=>`M${h.px(x.number).toFixed(1)} ${h.py(x.values[i.place]).toFixed(1)}h0`).join(""),p=s.filter(g=>Number.isFinite(g.values[i.place])&&!d(g)).length;if(h.node.append(vt("path",{class:"dots missed",d:u(s.filter(g=>g.state===1&&d(g)))}),vt("path",{class:"dots met",d:u(s.filter(g=>g.state===0&&d(g)))})),Number.isFinite(i.drawn)&&h.node.append(vt("path",{class:"as-drawn",d:`M${h.left} ${h.py(i.drawn)}H${h.right}`})),t.steps.length){let g="";t.steps.forEach(([x,m],f)=>{g+=f?`H${h.px(x).toFixed(1)}V${h.py(m).toFixed(1)}`:`M${h.px(x).toFixed(1)} ${h.py(m).toFixed(1)}`}),h.node.append(vt("path",{class:"best-line",d:`${g}H${h.px(n).toFixed(1)}`}))}return Js(ss(i),h.node,p>0&&M("p",{class:"small muted"},`${p} designs lie outside the frame.`))}var Sh=[["good","meets all"],["bad","misses a requirement"],["unknown","no valid model"],["unknown","could not go on"]],$a=50;function wh(i){let t=i.rows.values.map(Gi);return i.columns.forEach((e,n)=>{e.place=n}),{columns:i.columns,rows:i.rows.row.map((e,n)=>({number:e,state:i.rows.state[n],reason:i.rows.reasons[i.rows.reason[n]]??"",values:t.map(s=>s[n])}))}}var Xa=(i,t)=>Number.isNaN(t)?"\u2013":i.options?i.options[t]??"\u2013":sn(t);function bh(i,t,e,n){let s=M("select",{"aria-label":i,on:{change:()=>n(s.value)}},t.map(([r,o])=>M("option",{value:r,selected:String(r)===String(e)},o)));return M("label",{class:"field"},M("span",{class:"cell-title"},i),s)}function w1(i){let t=i.columns.filter(s=>s.role==="outcome"),e=i.goals.map(s=>t[s.outcome]),n=i.columns.filter(s=>s.role==="key");return e.length>1?[e[0].place,e[1].place]:[(n.find(s=>!s.options)??n[0]).place,(e[0]??t[0]).place]}function C0(i,t){let e=wh(i),n=new Set(i.best),[s,r]=w1(i),o=e.rows.some(q=>q.number>=i.designs),a={x:s,y:r,colour:-1,state:"all",text:"",low:[NaN,NaN],high:[NaN,NaN],sort:-1,down:!1,shown:$a,picked:null},l=q=>e.columns[q],c=q=>{if((a.state==="made"?q.number<i.designs:o&&q.number>=i.designs)||a.state==="best"&&!n.has(q.number)||a.state==="met"&&q.state!==0||a.state==="missed"&&q.state!==1||a.state==="broken"&&q.state<2)return!1;for(let[st,gt]of[a.x,a.y].entries())if(a.low[st]>q.values[gt]||a.high[st]<q.values[gt]||(!Number.isNaN(a.low[st])||!Number.isNaN(a.high[st]))&&Number.isNaN(q.values[gt]))return!1;return a.text?[q.reason,Sh[q.state][1],...e.columns.filter(st=>st.options).map(st=>Xa(st,q.values[st.place]))].join(`
`).toLowerCase().includes(a.text.toLowerCase()):!0},h=M("div",{class:"design-chart"}),d=M("p",{class:"small design-legend"}),u=null,p=(q,it)=>it?.5*(q.number*.6180339887%1)-.25:0,g=q=>{let it=q.values[a.x]+p(q,l(a.x).options),st=q.values[a.y];return q.state>=2?Number.isNaN(it)?null:[u.px(it),Number.isNaN(st)?u.bottom-6:u.py(st+p(q,l(a.y).options))]:!Number.isFinite(it)||!Number.isFinite(st)?null:[u.px(it),u.py(st+p(q,l(a.y).options))]},x=(q,it)=>{let st=l(q);return{...st.options?{low:-.6,high:st.options.length-.4}:Po([...it.map(Ut=>Ut.values[q]),st.drawn],st.bounds),label:ss(st),options:st.options}};function m(){let q=e.rows.filter(Qt=>a.state==="made"===(o&&Qt.number>=i.designs)||!o),it=x(a.x,q),st=x(a.y,q);u=Sr({width:Io(1110),height:Math.min(430,Io(1110)),x:it,y:st,label:`${st.label} over ${it.label}, a point for each design`,left:66,className:"designs"}),u.node.append(...Wa(u,st,l(a.y).bounds,!1).flat().filter(Boolean),...Wa(u,it,l(a.x).bounds,!0).flat().filter(Boolean));let gt=new Map,Ut=(Qt,xe,pe)=>{let Pe=gt.get(Qt)??{attributes:xe,d:""};Pe.d+=pe,gt.set(Qt,Pe)},wt=a.colour>=0?Po(q.map(Qt=>Qt.values[a.colour])):null;for(let Qt of q){let xe=g(Qt);if(!xe)continue;let[pe,Pe]=xe.map(Ot=>Ot.toFixed(1));if(!c(Qt)){Ut("0",{class:"dots faint"},`M${pe} ${Pe}h0`);continue}if(Qt.state>=2){Ut("1",{class:"crosses"},`M${pe-3} ${Pe-3}l6 6m0 -6l-6 6`);continue}let lt=Qt.state===0?`M${pe} ${Pe}h0`:`M${pe-3} ${Pe}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0`,Tt=Qt.state===0?"dots met":"rings missed";if(!wt)Ut(Qt.state===0?"3":"2",{class:Tt},lt);else{let Ot=Qt.values[a.colour],Jt=Number.isFinite(Ot)?Math.round(9*(Ot-wt.low)/(wt.high-wt.low)):-1;Ut(`${Qt.state===0?3:2}:${Jt}`,{class:Tt,style:Jt<0?{}:{stroke:Ho(Jt/9)}},lt)}n.has(Qt.number)&&Ut("4",{class:"rings best"},`M${pe-5.5} ${Pe}a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0`),Qt.number===i.chosen&&Ut("5",{class:"rings chosen"},`M${pe-9} ${Pe}a9 9 0 1 0 18 0a9 9 0 1 0 -18 0`)}for(let Qt of[...gt.keys()].sort()){let xe=gt.get(Qt);u.node.append(vt("path",{...xe.attributes,d:xe.d}))}let{drawn:ne}=l(a.x),{drawn:se}=l(a.y);Number.isFinite(ne)&&Number.isFinite(se)&&u.node.append(vt("path",{class:"drawn-design",d:`M${u.px(ne)} ${u.py(se)-7}l7 7l-7 7l-7 -7z`}));let Kt=a.picked&&g(a.picked);Kt&&u.node.append(vt("path",{class:"rings picked",d:`M${Kt[0]-8} ${Kt[1]}a8 8 0 1 0 16 0a8 8 0 1 0 -16 0`})),u.node.append(f),y(u.node),h.replaceChildren(u.node);let Ee=(Qt,xe)=>M("span",{class:"legend-entry"},vt("svg",{class:"study-chart",width:20,height:20,viewBox:"0 0 20 20","aria-hidden":"true"},Qt),xe);d.replaceChildren(Ee(vt("path",{class:"dots met",d:"M10 10h0"}),"meets all requirements"),Ee(vt("path",{class:"rings missed",d:"M7 10a3 3 0 1 0 6 0a3 3 0 1 0 -6 0"}),"misses one"),...q.some(Qt=>Qt.state>=2)?[Ee(vt("path",{class:"crosses",d:"M7 7l6 6m0 -6l-6 6"}),"could not be run")]:[],...n.size?[Ee(vt("path",{class:"rings best",d:"M4.5 10a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0"}),n.size>1?"on the front":"the best")]:[],...i.chosen!==null?[Ee(vt("path",{class:"rings chosen",d:"M1 10a9 9 0 1 0 18 0a9 9 0 1 0 -18 0"}),"checked as made")]:[],...Number.isFinite(ne)&&Number.isFinite(se)?[Ee(vt("path",{class:"drawn-design",d:"M10 3l7 7l-7 7l-7 -7z"}),"as drawn")]:[],...wt?[M("span",{class:"legend-entry"},M("span",{class:"tension-bar",style:{background:Go()}}),ht(`${ss(l(a.colour))}, ${Xa({},wt.low)} to ${Xa({},wt.high)}`))]:[])}let f=vt("rect",{class:"brush",width:0,height:0});function y(q){let it=null,st=Ut=>{let wt=q.getBoundingClientRect();return[(Ut.clientX-wt.left)*u.width/wt.width,(Ut.clientY-wt.top)*u.height/wt.height]};q.addEventListener("pointerdown",Ut=>{it=st(Ut),q.setPointerCapture(Ut.pointerId)}),q.addEventListener("pointermove",Ut=>{if(!it)return;let wt=st(Ut);for(let[ne,se]of Object.entries({x:Math.min(it[0],wt[0]),y:Math.min(it[1],wt[1]),width:Math.abs(wt[0]-it[0]),height:Math.abs(wt[1]-it[1])}))f.setAttribute(ne,se)});let gt=()=>{it=null,f.setAttribute("width",0)};q.addEventListener("pointercancel",gt),q.addEventListener("pointerup",Ut=>{if(!it)return;let wt=it,ne=st(Ut);if(gt(),Math.abs(ne[0]-wt[0])<5||Math.abs(ne[1]-wt[1])<5){C(ne);return}let se=(Kt,Ee)=>{let[Qt,xe]=Kt===0?[u.left,u.right]:[u.bottom,u.top],pe=Kt===0?x(a.x,e.rows.filter(Pe=>o?a.state==="made"==Pe.number>=i.designs:!0)):x(a.y,e.rows.filter(Pe=>o?a.state==="made"==Pe.number>=i.designs:!0));return pe.low+(Ee-Qt)/(xe-Qt)*(pe.high-pe.low)};for(let Kt of[0,1]){let Ee=[se(Kt,wt[Kt]),se(Kt,ne[Kt])].sort((Qt,xe)=>Qt-xe);[a.low[Kt],a.high[Kt]]=Ee.map(Qt=>+Qt.toPrecision(4))}ft()})}function C(q){let it=null,st=18;for(let gt of e.rows){let Ut=c(gt)&&g(gt),wt=Ut?Math.hypot(Ut[0]-q[0],Ut[1]-q[1]):1/0;wt<st&&(st=wt,it=gt)}I(it)}let b=M("p",{class:"picked-design small",role:"status"});function I(q){a.picked=q,m(),b.replaceChildren(...q?[M("b",{},`Design ${q.number}`),` ${Sh[q.state][1]}: `,...e.columns.filter(it=>!Number.isNaN(q.values[it.place])).flatMap((it,st)=>[st?", ":"",ht(it.title)," ",ht(Xa(it,q.values[it.place])),it.unit?` ${it.unit}`:""]),q.reason?[". ",ht(q.reason)].flat():""].flat():["Click a point for its numbers; drag a box to keep only what lies in it."]);for(let it of T.children)it.classList.toggle("picked",q!==null&&it.dataset.row===String(q.number))}let T=M("tbody"),_=M("span",{class:"muted",role:"status"}),w=[],L=()=>e.columns.filter(q=>q.role!=="made"||a.state==="made").filter(q=>q.role!=="key"||a.state!=="made"),S=M("tr"),P=M("button",{type:"button",class:"more controls",on:{click:()=>{a.shown+=$a,O()}}}),F=()=>{let q=e.rows.filter(c),it=a.sort===-1?st=>st.number:a.sort===-2?st=>st.state:st=>st.values[a.sort];return q.sort((st,gt)=>{let[Ut,wt]=[it(st),it(gt)];return Number.isNaN(Ut)||Number.isNaN(wt)?Number.isNaN(Ut)-Number.isNaN(wt)||st.number-gt.number:(a.down?wt-Ut:Ut-wt)||st.number-gt.number})};function O(){let q=L();w.length=0;let it=(gt,Ut,wt)=>M("th",{scope:"col",class:wt?"figure":"","aria-sort":a.sort===gt?a.down?"descending":"ascending":"none"},M("button",{type:"button",class:"sort",on:{click:()=>{a.down=a.sort===gt&&!a.down,a.sort=gt,O(),S.querySelector(`[data-sort="${gt}"]`)?.focus()}},"data-sort":gt},ht(Ut),M("span",{class:"arrow-mark","aria-hidden":"true"},a.sort===gt?a.down?" \u25BE":" \u25B4":"")));S.replaceChildren(it(-1,"row",!0),it(-2,"state",!1),...q.map(gt=>it(gt.place,ss(gt),!gt.options)));let st=F();T.replaceChildren(...st.slice(0,a.shown).map(gt=>M("tr",{"data-row":gt.number,class:`${gt.state===1?"misses":gt.state>=2?"broke":""} ${n.has(gt.number)?"best":""} ${a.picked===gt?"picked":""}`,on:{click:()=>{I(gt)}}},M("th",{scope:"row",class:"figure nowrap"},gt.number,gt.number===i.chosen?" \u2605":n.has(gt.number)?" \u25CF":""),M("td",{class:"nowrap",title:gt.reason||null},si(Sh[gt.state][0]),Sh[gt.state][1]),q.map(Ut=>M("td",{class:Ut.options?"":"figure"},ht(Xa(Ut,gt.values[Ut.place]))))))),On(_,`${st.length} of ${e.rows.length} rows`),P.hidden=st.length<=a.shown,On(P,`Show ${Math.min($a,st.length-a.shown)} more`)}let D=[0,1].map(q=>["low","high"].map(it=>{let st=M("input",{type:"number",step:"any",class:"bound-field",on:{change:()=>{a[it][q]=st.value===""?NaN:Number(st.value),ft()}}});return st})),V=M("button",{type:"button",on:{click:()=>{a.low=[NaN,NaN],a.high=[NaN,NaN],a.state="all",a.text="",$.value="",K.querySelector("select").value="all",ft()}}},"Show all"),$=M("input",{type:"search","aria-label":"words in a row's options, state or reason",on:{input:()=>{a.text=$.value,a.shown=$a,ft()}}}),H=q=>e.columns.filter(it=>q.includes(it.role)).map(it=>[it.place,ss(it)]),K=bh("rows",[["all",o?"all designs tried":"all"],["met","that meet all requirements"],["missed","that miss one"],["broken","that could not be run"],...n.size?[["best",n.size>1?"on the front":"the best"]]:[],...o?[["made","the chosen one as made"]]:[]],"all",q=>{let it=a.state==="made";if(a.state=q,a.shown=$a,it!==(q==="made")){let st=e.columns.find(gt=>gt.role==="made");dt("x",q==="made"&&st?st.place:s),dt("y",q==="made"?e.columns.find(gt=>gt.role==="outcome").place:r),a.sort=-1}ft()}),X=H(["key","made","outcome"]),Z=bh("along",X,a.x,q=>dt("x",Number(q),!0)),nt=bh("up",X,a.y,q=>dt("y",Number(q),!0));function dt(q,it,st){a[q]=it,(q==="x"?Z:nt).querySelector("select").value=String(it);let gt=q==="x"?0:1;a.low[gt]=a.high[gt]=NaN,st&&ft()}function ft(){D.forEach((q,it)=>q.forEach((st,gt)=>{let Ut=a[gt?"high":"low"][it];st.value=Number.isNaN(Ut)?"":Ut,st.setAttribute("aria-label",`${l(it?a.y:a.x).title}, ${gt?"at most":"at least"}`)})),m(),O()}let et=(q,it)=>M("div",{class:"field"},M("span",{class:"cell-title"},q),M("span",{class:"range-fields"},it[0]," to ",it[1])),Mt=[M("p",{class:"lead"},ht(i.rows.text)),M("div",{class:"fields controls"},Z,et("along, from",D[0]),nt,et("up, from",D[1]),bh("colour",[[-1,"none"],...X],-1,q=>{a.colour=Number(q),m()}),K,M("label",{class:"field"},M("span",{class:"cell-title"},"words"),$),V),h,d,b,M("p",{class:"controls"},_),M("div",{class:"table-box",tabindex:0,role:"group","aria-label":"designs"},M("table",{class:"designs-table",id:t},M("thead",{},S),T)),P];return I(null),ft(),$i(m),addEventListener("resize",m),Mt}var E1={key:"varied",made:"varied in the making"};function T1(i){let t=i.columns.filter(e=>e.role!=="outcome");return[i.about&&M("p",{},ht(i.about)),M("p",{},ht(i.kind_text[0].toUpperCase()+i.kind_text.slice(1)),"."),M("p",{class:"muted"},i.facts.map((e,n)=>[n?" \xB7 ":"",ht(e.title),": ",M("b",{},ht(e.text))])),Xn(["what varies","","values","as drawn","in the files"],t.map(e=>M("tr",{},M("th",{scope:"row"},ht(e.title)),M("td",{class:"muted"},E1[e.role]),M("td",{},ht(e.range)),M("td",{},ht(e.drawn_text??"\u2014")),M("td",{class:"path"},ht(e.description)))),{label:"what varies"}),i.requirements.length?Xn(["required of","","rows that miss it"],i.requirements.map(e=>M("tr",{class:e.missed>0?"":"met"},M("th",{scope:"row"},ht(e.title)),M("td",{},ht(e.demand)),M("td",{class:"figure"},`${e.missed} of ${i.of}`))),{label:"requirements of the study"}):M("p",{class:"muted"},"Nothing was required.")]}function A1(i){let{causes:t,met:e,of:n}=i.yield;return t.length?[M("p",{class:"lead small"},"Distance: how far the key's values differ between what fails and what passes, from 0 (alike) to 1 (one value parts them). What goes with failing need not cause it."),Mh(t.map(s=>({title:s.key,text:sn(s.distance,2),bars:[{value:s.distance,kind:s.sure?"first":"unsure"}]})),{low:0,high:1,label:"what goes with failing",axis:"distance [-]"}),Xn(["what goes with failing","distance","by chance","","lowest fifth fails","2nd","3rd","4th","highest"],t.map(s=>M("tr",{},M("th",{scope:"row"},ht(s.key)),M("td",{class:"figure"},sn(s.distance,2)),M("td",{class:"figure"},ht(s.chance_text)),M("td",{class:s.sure?"nowrap":"nowrap muted"},ht(s.side)),s.shares.map(r=>M("td",{class:"figure share nowrap",style:{"--share":r??0}},r===null?"\u2013":`${sn(100*r,2)} %`)))),{class:"causes",label:"what goes with failing"})]:M("p",{class:"muted"},e===n?"No failure, so no cause to be found.":"Nothing passes, so no cause can be told from the rest.")}function R1(i,t){return[M("div",{class:"study-figures"},i.spread.map(e=>w0(t[e.outcome],e,i.of))),M("p",{class:"small muted"},"Bars: share of the rows; dashed: as drawn; tinted: not allowed by a requirement.")]}var C1=(i,t)=>Xn(["outcome","as drawn","mean","deviation","least","5 %","50 %","95 %","greatest","without it"],i.spread.map(e=>M("tr",{},M("th",{scope:"row"},ht(t[e.outcome].title)),e.texts.map(n=>M("td",{class:"figure nowrap"},ht(n))),M("td",{class:"figure"},e.missing||"\u2013"))),{label:"outcomes"});function P1(i,t){let e=wh(i),n=i.kind==="optimise"&&i.yield;return[M("p",{class:`verdict ${i.verdict.state==="plain"?"":i.verdict.state}`},si(i.verdict.state)," ",ht(i.verdict.text)),i.reasons.length>0&&M("div",{class:"not-checked"},M("h3",{},si("unknown")," Rows that could not be run"),M("ul",{},i.reasons.map(s=>M("li",{},`${s.count} times: `,ht(s.text))))),i.progress.length>0&&[M("h3",{},"The search"),i.progress.map(s=>R0(t[s.outcome],s,e,i.designs))],n&&M("p",{class:"verdict"},`Design ${i.chosen} as it would be made: `,ht(i.yield.text),"."),i.yield&&[i.yield.note&&M("p",{class:"muted"},ht(i.yield.note)),i.yield.curves.length>0&&[M("h3",{},"Yield over where a bound is put"),M("div",{class:"study-figures"},i.yield.curves.map(s=>E0(t[s.outcome],s))),M("p",{class:"small muted"},`Thick: share that meets the bound at this place and all other requirements, with its ${Nr(100*i.yield.confidence)} % interval at each place; dashed: share that meets this bound alone.`)],M("h3",{},"What goes with failing"),A1(i)],i.indices.length>0&&[M("h3",{},"Shares of each outcome's variance"),M("p",{class:"lead small"},"Upper bar: what a key causes by itself; lower bar: with all its interplay; lines: intervals."),M("div",{class:"study-figures wide"},i.indices.map(s=>T0(t[s.outcome],s)))],i.effects.length>0&&[M("h3",{},"Change of each outcome over the whole spread of each key"),M("p",{class:"lead small"},"Filled: the mean change with its sign; outlined: the mean size. An outline longer than its bar: the sign differs from place to place."),M("div",{class:"study-figures wide"},i.effects.map(s=>A0(t[s.outcome],s)))],M("h3",{},n?"Outcomes of the chosen design as made":"Outcomes of all rows"),i.yield&&R1(i,t),C1(i,t)]}function I1(i){let{design:t}=i,e=i.best.length===0?`The nearest design, row ${t.row}, beside the files as drawn`:i.best.length>1?`Design ${t.row} of the front${i.chosen===t.row?", which was checked as made":", the middle one"}, beside the files as drawn`:`The best design, row ${t.row}, beside the files as drawn`,n=(s,r)=>M("tr",{class:s.change==="same"||s.change==="\u2014"?"":"differs"},M("th",{scope:"row"},ht(s.title)),M("td",{class:"muted"},r),M("td",{class:"figure"},ht(s.drawn)),M("td",{class:"figure"},ht(s.text)),M("td",{class:"figure"},ht(s.change)));return[M("h3",{},e),Xn(["","","as drawn",`design ${t.row}`,"change"],[...t.keys.map(s=>n(s,"made of")),...t.outcomes.map(s=>n(s,"outcome"))],{class:"beside",label:"the design beside the files as drawn"}),t.missed.length>0&&M("ul",{class:"missed-list"},t.missed.map(s=>M("li",{},si("bad")," missed: ",ht(s))))]}function P0(i,t){let e=t.studies??[];e.forEach((n,s)=>{let r=l=>s?`${l}-${s+1}`:l,o=e.length>1||t.records.length?`: \u2068${n.name}\u2069`:"",a=n.columns.filter(l=>l.role==="outcome");wh(n),i.section(r("study"),`What was varied${o}`,T1(n)),i.section(r("findings"),`Findings${o}`,P1(n,a),n.design&&I1(n)),i.section(r("designs"),`Designs${o}`,C0(n,r("designs-table")))})}var Eh=900,Th=24,I0=13,_e=i=>i.toFixed(2);function L1(i){let t=[...(i.polygons??[]).flatMap(s=>s.points),...(i.cords??[]).flatMap(s=>s.points),...(i.circles??[]).flatMap(s=>[[s.at[0]-s.radius,s.at[1]-s.radius],[s.at[0]+s.radius,s.at[1]+s.radius]]),...(i.dimensions??[]).flatMap(s=>[s.from,s.to])],e=t.map(s=>s[0]),n=t.map(s=>s[1]);return{left:Math.min(...e),right:Math.max(...e),bottom:Math.min(...n),top:Math.max(...n)}}function L0(i,t,e){for(let n=0;;++n)if(i[n]??=[],i[n].every(([s,r])=>e<=s+.01||t>=r-.01))return i[n].push([t,e]),n}function D1(i){let t=L1(i);if(!Number.isFinite(t.left))return null;let e=(_,w)=>Math.abs(_.to[w]-_.from[w]),n=(i.dimensions??[]).filter(_=>_.axis!=="y").sort((_,w)=>e(_,0)-e(w,0)),s=(i.dimensions??[]).filter(_=>_.axis==="y").sort((_,w)=>e(_,1)-e(w,1)),r=[],o=[],a=n.map(_=>({d:_,lane:L0(r,Math.min(_.from[0],_.to[0]),Math.max(_.from[0],_.to[0]))})),l=s.map(_=>({d:_,lane:L0(o,Math.min(_.from[1],_.to[1]),Math.max(_.from[1],_.to[1]))})),c=[...i.notes??[]].sort((_,w)=>_.at[0]-w.at[0]),h=20+(o.length?o.length*(Th+14)+16:0),d=(Eh-h-30)/(t.right-t.left||1),u=_=>h+(_-t.left)*d,p=_=>.6*I0*_.length+12,g=[],x=c.map(_=>{let w=p(_.text),L=Math.min(u(_.at[0])+10,Eh-w-4),S=g.findIndex(F=>F<=L);S<0&&(S=g.length<4?g.length:g.indexOf(Math.min(...g)));let P=Math.max(L,g[S]??0);return g[S]=P+w,{note:_,x:P,row:S,width:w}}),m=14+g.length*20+(g.length?14:0),f=_=>m+(t.top-_)*d,y=f(t.bottom),C=y+20+r.length*Th+14,b=(_,w)=>_.map((L,S)=>`${S?"L":"M"}${_e(u(L[0]))} ${_e(f(L[1]))}`).join("")+(w?"Z":""),I=(_,w,L,S)=>{let P=Math.hypot(L-_,S-w),F=(L-_)/(P||1),O=(S-w)/(P||1),D=(V,$,H)=>`M${_e(V)} ${_e($)}L${_e(V+H*8*F-2.4*O)} ${_e($+H*8*O+2.4*F)}L${_e(V+H*8*F+2.4*O)} ${_e($+H*8*O-2.4*F)}Z`;return P>20?D(_,w,1)+D(L,S,-1):D(_,w,-1)+D(L,S,1)},T=(_,w,L,S,P,F,O)=>{let D=(_+L)/2,V=(w+S)/2;return vt("g",{class:"dimension"},vt("path",{class:"thin",d:`${P}M${_e(_)} ${_e(w)}L${_e(L)} ${_e(S)}`}),vt("path",{class:"head",d:I(_,w,L,S)}),vt("text",{x:_e(D),y:_e(V-4),"text-anchor":"middle",...O?{transform:`rotate(-90 ${_e(D)} ${_e(V)})`}:{}},F))};return vt("svg",{class:"model-drawing",viewBox:`0 0 ${Eh} ${_e(C)}`,width:Eh,height:_e(C),role:"img","aria-label":`drawing of the model, ${i.name}`,"font-size":I0},(i.polygons??[]).filter(_=>_.role==="contact").map(_=>vt("path",{class:"outline contact",d:b(_.points,!0)})),(i.polygons??[]).filter(_=>_.role!=="contact").map(_=>vt("path",{class:"outline solid",d:b(_.points,!0)})),(i.cords??[]).map(_=>vt("path",{class:`drawn-cord ${_.kind}`,d:b(_.points,!1)})),(i.circles??[]).map(_=>{let w=u(_.at[0]),L=f(_.at[1]),S=Math.max(_.radius*d,1.5),P=S+6;return vt("g",{},vt("circle",{class:`round ${_.role}`,cx:_e(w),cy:_e(L),r:_e(S)}),vt("path",{class:"centre-line",d:`M${_e(w-P)} ${_e(L)}H${_e(w+P)}M${_e(w)} ${_e(L-P)}V${_e(L+P)}`}))}),a.map(({d:_,lane:w})=>{let L=y+24+w*Th,S=_.from[0]<=_.to[0]?_.from:_.to,P=S===_.from?_.to:_.from,F=[S,P].map(O=>`M${_e(u(O[0]))} ${_e(f(O[1])+4)}V${_e(L+5)}`).join("");return T(u(S[0]),L,u(P[0]),L,F,_.text,!1)}),l.map(({d:_,lane:w})=>{let L=h-18-w*(Th+14),S=_.from[1]<=_.to[1]?_.from:_.to,P=S===_.from?_.to:_.from,F=[S,P].map(O=>`M${_e(u(O[0])-4)} ${_e(f(O[1]))}H${_e(L-5)}`).join("");return T(L,f(S[1]),L,f(P[1]),F,_.text,!0)}),x.map(({note:_,x:w,row:L,width:S})=>{let P=16+L*20,F=u(_.at[0]),O=f(_.at[1]);return vt("g",{class:"note"},vt("path",{class:"thin",d:`M${_e(F)} ${_e(O)}L${_e(w)} ${_e(P+4)}H${_e(w+S-8)}`}),vt("circle",{class:"dot",cx:_e(F),cy:_e(O),r:2}),vt("text",{x:_e(w+2),y:_e(P)},_.text))}))}function D0(i,t){let{records:e}=t,n=e.length>1,s=l=>(l.drawing?.views??[]).map(c=>M("figure",{class:"drawing-figure"},M("div",{class:"drawing-box",tabindex:0,role:"group","aria-label":"drawing, can be scrolled sideways"},D1(c)),M("figcaption",{},"View: ",ht(c.name),", posture straight; mm"))),r=n&&e.every(l=>JSON.stringify(l.drawing)===JSON.stringify(e[0].drawing)),o=new Map;e.forEach((l,c)=>{for(let h of l.facts??[]){o.has(h.group)||o.set(h.group,new Map);let d=o.get(h.group);d.has(h.title)||d.set(h.title,new Array(e.length).fill("\u2013")),d.get(h.title)[c]=h.text}});let a=[...o].map(([l,c])=>M("div",{class:"fact-group"},M("h4",{class:"sub"},ht(l)),M("table",{class:"facts"},n&&M("thead",{},M("tr",{},M("th",{}),e.map(h=>M("th",{scope:"col"},h.label)))),M("tbody",{},[...c].map(([h,d])=>M("tr",{class:n&&new Set(d).size>1?"differs":""},M("th",{scope:"row"},ht(h)),d.map(u=>M("td",{class:"figure"},ht(u)))))))));!a.length&&!e.some(l=>l.drawing?.views?.length)||i.section("model","The model",r||!n?s(e[0]):e.map(l=>[Fr(l),s(l)]),n&&r&&M("p",{class:"muted small"},"The drawing is the same for all records."),a.length>0&&M("div",{class:"fact-groups"},a))}function N0(i,t){let e=s=>M("ul",{},(s??[]).map(r=>M("li",{},ht(r)))),n=[...new Set(t.records.map(s=>s.demo_data).filter(Boolean))];i.section("validity","Cautions and limits of validity",M("div",{class:"columns"},M("div",{},M("h3",{},"Cautions"),e([...t.cautions??[],...n])),M("div",{},M("h3",{},"What is simplified"),e(t.validity))),t.records.length>0&&M("h3",{},"How the pictures were made"),t.records.length>0&&M("ul",{},t.records.map(s=>M("li",{},t.records.length>1?`${s.label}: `:"",`${s.rows?.kept??"?"} of ${s.rows?.of??"?"} rows of the record are drawn: `,ht(s.rows?.bound_text??"no bound stated"),". The numbers in the tables come from the whole record."))))}function U0(i,t){let{records:e}=t,n=e.length>1;if(!e.some(o=>o.summary?.length))return;let s=e.map(o=>{let a=new Map;for(let l of o.summary??[])a.set(l.group,[...a.get(l.group)??[],l]);return M("details",{},M("summary",{},n?`All values of ${o.label}`:`All ${o.summary?.length??0} values of the summary`),M("div",{class:"fact-groups"},[...a].map(([l,c])=>M("div",{class:"fact-group"},M("h4",{class:"sub"},ht(l)),M("table",{class:"facts"},M("tbody",{},c.map(h=>M("tr",{},M("th",{scope:"row"},ht(h.title)),M("td",{class:"figure"},ht(h.text))))))))))});n||(s[0].dataset.print="");let r=i.section("values","All values",s);n&&r.classList.add("only-screen")}function F0(i,t){let e=(t.studies??[]).map(o=>({label:t.studies.length>1||t.records.length?o.file:"",inputs:o.inputs,of:"Study"})),n=[...t.records,...e],s=n.length>1,r=new Map;for(let o of n)for(let a of o.inputs?.files??[]){let l=`${a.path}
${a.text}`;r.has(l)||r.set(l,{...a,of:[]}),r.get(l).of.push(o.label)}i.section("inputs","All inputs",n.map(o=>M("p",{},s&&[M("span",{class:"record-letter"},o.label)," "],`${o.of??"Scenario"} `,M("code",{},ht(o.inputs?.scenario)),`, Sinewright ${o.inputs?.engine_version??"?"}, seed ${o.inputs?.seed??0}`,o.inputs?.overrides?.length?[", changed on the command line: ",o.inputs.overrides.map((a,l)=>[l?", ":"",M("code",{},ht(a))])]:"",".")),M("p",{class:"only-print small"},"The full texts of these files are in the HTML file and in the record:"),[...r.values()].map(o=>M("details",{class:"input-file"},M("summary",{},s?`${o.of.join(", ")}: `:"",M("code",{},ht(o.path)),M("span",{class:"muted"},`, ${o.text.split(`
`).length} lines`)),M("pre",{tabindex:0},M("code",{},o.text)))))}var Ah=700,Lo=165,Rh=52,Xd=20,O0=6,B0=6,Ch=["","7 4","2 3","10 3 2 3"];function k0(i,t,e){if(!(t>i))return[i];let n=[1,2,2.5,5,10].map(r=>r*tr((t-i)/e)).find(r=>(t-i)/r<=e+1),s=[];for(let r=Math.ceil(i/n-1e-9)*n;r<=t+1e-9*n;r+=n)s.push(+r.toPrecision(10));return s}function z0({group:i,plot:t},e){let n=i.series.map((x,m)=>({...x,data:i.columns[m+1]})).filter((x,m)=>t.series[m+1].show),s=i.columns[0],{min:r,max:o}=t.scales.x,a=1/0,l=-1/0;for(let{data:x}of n)x.forEach((m,f)=>{m!=null&&s[f]>=r&&s[f]<=o&&(a=Math.min(a,m),l=Math.max(l,m))});if(!(l>=a))return null;l-a<1e-9&&(a-=1,l+=1);let c=.06*(l-a);a-=c,l+=c;let h=x=>Rh+(x-r)/(o-r||1)*(Ah-Rh-B0),d=x=>Lo-Xd-(x-a)/(l-a)*(Lo-Xd-O0),u=k0(r,o,10),p=k0(a,l,5),g=n.map(x=>{let m="",f=!1;return x.data.forEach((y,C)=>{if(y===null){f=!1;return}y===void 0||s[C]<r||s[C]>o||(m+=`${f?"L":"M"}${h(s[C]).toFixed(1)} ${d(y).toFixed(1)}`,f=!0)}),vt("path",{d:m,stroke:Br(x.colour),"stroke-dasharray":Ch[x.record%Ch.length],class:"curve"})});return M("figure",{class:"printed-curve"},M("figcaption",{},ht(i.title),` [${i.unit}] over time [s]`),vt("svg",{viewBox:`0 0 ${Ah} ${Lo}`,width:Ah,height:Lo},vt("path",{class:"grid",d:u.map(x=>`M${h(x).toFixed(1)} ${O0}V${Lo-Xd}`).join("")+p.map(x=>`M${Rh} ${d(x).toFixed(1)}H${Ah-B0}`).join("")}),u.map(x=>vt("text",{x:h(x).toFixed(1),y:Lo-6,"text-anchor":"middle"},String(x))),p.map(x=>vt("text",{x:Rh-6,y:(d(x)+4).toFixed(1),"text-anchor":"end"},String(x).replace("-","\u2212"))),g),M("p",{class:"printed-legend"},n.map(x=>M("span",{},vt("svg",{width:26,height:8,viewBox:"0 0 26 8"},vt("path",{class:"curve",d:"M0 4H26",stroke:Br(x.colour),"stroke-dasharray":Ch[x.record%Ch.length]})),e?`${x.label} `:"",ht(x.name)))))}function V0(i,t){let e=[];addEventListener("beforeprint",()=>{Hh(!0);for(let n of i.charts){let s=z0(n,t);s&&n.figure.before(s)}e=[...document.querySelectorAll("details[data-print]:not([open])")];for(let n of e)n.open=!0}),addEventListener("afterprint",()=>{for(let n of document.querySelectorAll(".printed-curve"))n.remove();for(let n of e)n.open=!1;Hh(!1)})}function N1(){let i=JSON.parse(document.getElementById("data").textContent),t=document.getElementById("review"),{records:e}=i,n=e.length>1;wf(),t.append(Cf(i),Pf(i));let s=Af(t),r=e.length?U1(t,s,i):{charts:[]};S0(s,i),P0(s,i),e.length&&D0(s,i),N0(s,i),U0(s,i),F0(s,i),t.querySelector(".caution").after(If(s.index)),t.append(M("footer",{class:"sheet-foot"},M("span",{},"Design predictions, not certification."),M("span",{},i.made_by??""))),V0(r,n),t.dataset.ready=String(Math.round(performance.now()))}function U1(i,t,e){let{records:n}=e,s=n.length>1,r=n.map(gf),o=xf(r),a=r.reduce((x,m)=>(m.times.at(-1)??0)>(x.times.at(-1)??0)?m:x),l=yf(a.times.at(-1)??0,a.times);Df(t,e,l),Nf(t,e);let c=Xm(t,e,r,o,l),h=y0(n,l),d=n.map(x=>`${s?`${x.label}: `:""}${x.rows?.bound_text??""}`).join("; "),u=t.section("curves","Curves",M("p",{class:"lead controls"},"Click in a chart to show that instant, drag across it to look closer (all charts follow), switch curves on and off below it."," ",h.reset),h.box,M("p",{class:"small muted"},s&&"A drawn solid, B dashed. ","Drawn rows: ",M("bdi",{},d),"."));u.addEventListener("keydown",c.onKey);let p=M("div",{class:"with-transport"});c.section.before(p),p.append(c.section,u,c.controls),v0(t,e),M0(t,e,l);let g=/^#t=([0-9.]+)$/.exec(location.hash);return g&&l.seek(Number(g[1])),h}N1();})();
