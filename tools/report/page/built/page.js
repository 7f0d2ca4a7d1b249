(()=>{var d_="http://www.w3.org/2000/svg";function xf(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1))if(n==="on")for(let[r,o]of Object.entries(s))i.addEventListener(r,o);else if(n==="style")for(let[r,o]of Object.entries(s))i.style.setProperty(r,o);else i.setAttribute(n,s===!0?"":String(s));for(let n of e.flat(1/0))n==null||n===!1||i.append(n instanceof Node?n:document.createTextNode(String(n)));return i}var M=(i,t,...e)=>xf(document.createElement(i),t,e),pt=(i,t,...e)=>xf(document.createElementNS(d_,i),t,e),ut=(i,t)=>M("bdi",t,i??"");function Cn(i,t){i.firstChild?.data!==t&&(i.textContent=t)}function Xe(i,t,e){i.getAttribute(t)!==e&&i.setAttribute(t,e)}function Xi(i){if(!i?.base64)return new Float32Array(0);let t=atob(i.base64),e=new Uint8Array(t.length);for(let n=0;n<t.length;++n)e[n]=t.charCodeAt(n);return new Float32Array(e.buffer,0,e.length>>2)}var _i=(i,t=3)=>qe(i,t).replace(/(\.\d*?)0+(?=$|×)/,"$1").replace(/\.(?=$|×)/,""),f_={"-":"\u207B",0:"\u2070",1:"\xB9",2:"\xB2",3:"\xB3",4:"\u2074",5:"\u2075",6:"\u2076",7:"\u2077",8:"\u2078",9:"\u2079"};function qe(i,t=4){if(i==null||Number.isNaN(i))return"\u2013";if(i===0)return"0";let e=Math.abs(i),n;if(e>=1e6||e<1e-4){let[s,r]=i.toExponential(t-1).split("e");n=`${s}\xD710${[...String(Number(r))].map(o=>f_[o]).join("")}`}else{let s=Math.max(0,t-1-Math.floor(Math.log10(e)));n=i.toFixed(Math.min(s,8))}return n.replace("-","\u2212")}var Dn=(i,t=1)=>`${i.toFixed(t>=1e3?1:t>=100?2:t>=20?3:4)} s`;function nr(i){let t=10**Math.floor(Math.log10(i)),e=i/t;return(e>=5?5:e>=2?2:1)*t}function yf(i,t,e){let n=i.length-2;if(n<0||!(t>i[0])){e.row=0,e.part=0;return}if(t>=i[n+1]){e.row=n,e.part=1;return}let s=Math.min(e.row,n);if(!(i[s]<=t&&t<i[s+1])){let o=0,a=n;for(;o<a;){let l=o+a+1>>1;i[l]<=t?o=l:a=l-1}s=o}e.row=s;let r=i[s+1]-i[s];e.part=r>0?(t-i[s])/r:0}function ir(i){let t=Xi(i),e=i?.width??1;return{data:t,width:e,now:new Float64Array(e)}}function vf({data:i,width:t,now:e},{row:n,part:s}){let r=n*t,o=r+t;for(let a=0;a<t;++a){let l=i[r+a],c=o+a<i.length?i[o+a]:l;e[a]=l!==l?c:c!==c?l:l+s*(c-l)}}function p_(i,{row:t,part:e}){vf(i,{row:t,part:e});let{data:n,now:s}=i,r=t*7+3,o=r+7;if(o+3<n.length&&n[r]*n[o]+n[r+1]*n[o+1]+n[r+2]*n[o+2]+n[r+3]*n[o+3]<0)for(let c=0;c<4;++c)s[3+c]=(1-e)*n[r+c]-e*n[o+c];let a=Math.hypot(s[3],s[4],s[5],s[6])||1;for(let l=3;l<7;++l)s[l]/=a}function Mf(i){let t=i.scene??{},e=Xi(i.time),n={row:0,part:0},s=(t.bodies??[]).map(c=>({...c,pose:ir(c.poses)})),r=(t.cords??[]).map(c=>({...c,points:ir(c.points),tension:ir(c.tension),slack:ir(c.slack)})),o=[...(t.contacts??[]).map(c=>({...c,kind:"contact"})),...(t.loads??[]).map(c=>({...c,kind:"load"}))].map(c=>({...c,point:ir(c.point),force:ir(c.force)})),a=(t.pulleys??[]).map(c=>({...c,angle:ir(c.angle)})),l=[...r.flatMap(c=>[c.points,c.tension,c.slack]),...o.flatMap(c=>[c.point,c.force]),...a.map(c=>c.angle)];return{times:e,fingers:i.fingers??[],bodies:s,cords:r,arrows:o,pulleys:a,pins:t.pins??[],guides:t.guides??[],box:t.box,at(c){yf(e,c,n);for(let u of s)p_(u.pose,n);for(let u of l)vf(u,n)}}}function Ns(i,t,e){let[n,s,r,o,a,l,c]=i,[u,d,h]=t,f=2*(a*h-l*d),m=2*(l*u-o*h),x=2*(o*d-a*u);return e[0]=n+u+c*f+a*x-l*m,e[1]=s+d+c*m+l*f-o*x,e[2]=r+h+c*x+o*m-a*f,e}function Gh(i,t,e){return Ns(i,t,e),e[0]-=i[0],e[1]-=i[1],e[2]-=i[2],e}function m_({point:i,force:t},e,n,s){for(let r=0;r<t.data.length;++r){let o=i.data[r]+t.data[r]*e*1.08;o<n[r%3]&&(n[r%3]=o),o>s[r%3]&&(s[r%3]=o)}}function Sf(i){let t=0,e=0,n=[1/0,1/0,1/0],s=[-1/0,-1/0,-1/0];for(let a of i){for(let l of a.cords)t=Math.max(t,l.most_tension||0);for(let l of a.arrows)e=Math.max(e,l.most||0);for(let l=0;l<3;++l)n[l]=Math.min(n[l],a.box?.low?.[l]??-50),s[l]=Math.max(s[l],a.box?.high?.[l]??50)}let r=Math.hypot(s[0]-n[0],s[1]-n[1]),o=e>0?nr(.26*r/e):1;for(let a of i)for(let l of a.arrows)m_(l,o,n,s);return{mostTension:t||1,mostForce:e,mmPerNewton:o,sampleForce:e>0?nr(e):0,low:n,high:s,centre:n.map((a,l)=>.5*(a+s[l])),within(a){let l={low:[1/0,1/0,1/0],high:[-1/0,-1/0,-1/0]};for(let c=0;c<8;++c){let u=a([0,1,2].map(d=>c>>d&1?s[d]:n[d]));for(let d=0;d<3;++d)l.low[d]=Math.min(l.low[d],u[d]),l.high[d]=Math.max(l.high[d],u[d])}return l}}}function bf(i,t){let e=[],n={time:0,duration:i,playing:!1,speed:1,loop:!1},s=0,r=()=>{for(let a of e)a(n)};function o(a){if(!n.playing)return;let l=Math.min((a-s)/1e3,.1);s=a;let c=n.time+l*n.speed;c>=i&&(n.loop?c=0:(c=i,n.playing=!1)),n.time=c,r(),n.playing&&requestAnimationFrame(o)}return{state:n,listen(a){e.push(a),a(n)},seek(a){n.playing=!1,n.time=Math.min(Math.max(Number(a)||0,0),i),r()},play(){n.playing||(n.time>=i&&(n.time=0),n.playing=!0,s=performance.now(),r(),requestAnimationFrame(o))},pause(){n.playing=!1,r()},toggle(){n.playing?this.pause():this.play()},setSpeed(a){n.speed=a,r()},setLoop(a){n.loop=a,r()},step(a){let l=a>0,c=n.time;for(let u=0;u<Math.abs(a);++u){let d=l?t.find(h=>h>c+1e-7):t.findLast(h=>h<c-1e-7);if(d===void 0)break;c=d}this.seek(c)}}}var wf=[],Ef=!1,Tf=null,Af=matchMedia("(prefers-color-scheme: dark)"),Wh=()=>!Ef&&(Tf??(Af.matches?"dark":"light"))==="dark";function ja(){document.documentElement.dataset.theme=Wh()?"dark":"light";for(let i of wf)i()}function Rf(){Af.addEventListener("change",ja),ja()}var $h=Wh;function Cf(){Tf=Wh()?"light":"dark",ja()}function Xh(i){Ef=i,ja()}function xi(i){wf.push(i)}var sr=i=>getComputedStyle(document.documentElement).getPropertyValue(i).trim();function If(i){let t=[];return{index:t,section(e,n,...s){let r=t.length+1;t.push({id:e,title:n,number:r});let o=M("section",{id:e,"aria-labelledby":`${e}-title`},M("h2",{id:`${e}-title`},M("span",{class:"balloon","aria-hidden":"true"},r),M("span",{},n)),...s);return i.append(o),o}}}var Pf={good:["M2 8.5 L6.5 13 L14 3.5","open"],bad:["M3 3 L13 13 M13 3 L3 13","open"],unknown:["M3 8 L13 8","open"]};function ri(i){return Pf[i]?pt("svg",{class:`mark ${i}`,viewBox:"0 0 16 16",width:14,height:14,"aria-hidden":"true"},pt("path",{d:Pf[i][0]})):null}var Br=(i,t,e,n)=>M("button",{type:"button",class:"jump","data-jump":t,title:"show this instant",...n,on:{click:()=>{i.seek(t)}}},e);var Xn=(i,t,e)=>M("div",{class:"table-box",tabindex:0,role:"group","aria-label":e?.label??"table"},M("table",{class:e?.class},M("thead",{},M("tr",{},i.map(n=>M("th",{scope:"col"},n)))),M("tbody",{},t))),kr=i=>M("h3",{class:"record-heading"},M("span",{class:"record-letter"},i.label)," ",ut(i.name),M("span",{class:"muted"}," \xB7 ",ut(i.file)));var Ai=(i,t,e)=>M("div",{class:"cell",...e},M("span",{class:"cell-title"},i),M("span",{class:"cell-text"},t)),Qa=i=>[...new Set(i.filter(Boolean))],Go=i=>Qa(i).map((t,e)=>[e?", ":"",ut(t)]);function g_(i,t){return[M("div",{class:"title-main"},M("p",{class:"kind"},t.length>1?`Review of ${t.length} studies`:"Review of a study"),M("h1",{},ut(i.title)),Lf()),M("div",{class:"cells"},Ai(t.length>1?"Studies":"Study",Go(t.map(e=>e.name))),Ai(t.length>1?"Tables":"Table",Go(t.map(e=>e.file))),Ai("Kind",Go(t.map(e=>e.kind))),Ai("Designs",t.map((e,n)=>[n?", ":"",String(e.designs)])),Ai("Computed by",ut(i.made_by)))]}var Lf=()=>M("div",{class:"sheet-buttons controls"},M("button",{type:"button",id:"theme",on:{click:Cf}},"Light / dark"),M("button",{type:"button",on:{click:()=>print()}},"Print"));function Df(i){let{records:t}=i;if(!t.length)return M("header",{class:"title-block"},g_(i,i.studies??[]));let e=t.length>1;return M("header",{class:"title-block"},M("div",{class:"title-main"},M("p",{class:"kind"},e?`Design review \xB7 ${t.length} records side by side`:"Design review"),M("h1",{},e?t.map((n,s)=>[s?M("span",{class:"against"}," against "):"",M("span",{class:"record-letter"},n.label)," ",ut(n.name)]):ut(i.title||t[0].name)),Qa(t.map(n=>n.description)).map(n=>M("p",{class:"about"},ut(n))),Lf()),M("div",{class:"cells"},Ai("Model",Go(t.map(n=>n.model))),Ai(e?"Records":"Record",e?t.map((n,s)=>[s?", ":"",`${n.label} `,ut(n.file)]):ut(t[0].file)),Ai("Outcome",e&&Qa(t.map(n=>n.outcome)).length>1?t.map((n,s)=>[s?", ":"",`${n.label} `,ut(n.outcome)]):Go(t.map(n=>n.outcome))),Ai("Computed by",ut(i.made_by)),Ai("Dimensions","mm, unless stated"),Ai("Pictures","to scale, orthographic")))}function Nf(i){let t=Qa(i.records.map(e=>e.demo_data));return M("p",{class:"caution",role:"note"},M("strong",{},ut(i.cautions?.[0]??"The numbers are design predictions, not certification."))," ",t.map(e=>[ut(e)," "]),M("a",{href:"#validity"},"Cautions and limits of validity"))}var Ff=i=>M("nav",{class:"contents","aria-label":"sections of this sheet"},i.map(({id:t,title:e,number:n})=>M("a",{href:`#${t}`},M("span",{class:"balloon small","aria-hidden":"true"},n),e)));var zr=120,rr=14;function tl(i,{low:t=.5,high:e=20}={}){let n=l=>zr*Math.log(Math.min(Math.max(l,t),e)/t)/Math.log(e/t),s=n(1),r=n(i),o=i>=1,a=[.2,.5,2,5,10,20].filter(l=>l>t&&l<e);return pt("svg",{class:`log-bar ${o?"good":"bad"}`,viewBox:`0 0 ${zr} ${rr}`,width:zr,height:rr,"aria-hidden":"true"},pt("path",{class:"ticks",d:a.map(l=>`M${n(l).toFixed(1)} 0V${rr}`).join("")}),Number.isFinite(i)&&pt("rect",{class:"bar",x:Math.min(s,r).toFixed(1),y:3,width:Math.max(Math.abs(r-s),1).toFixed(1),height:rr-6}),i>e&&pt("path",{class:"beyond",d:`M${zr-5} 1L${zr} ${rr/2}L${zr-5} ${rr-1}`}),pt("path",{class:"one",d:`M${s.toFixed(1)} 0V${rr}`}))}var Uf={good:"within the limit",bad:"beyond the limit",unknown:"not known",plain:""};function __(i,t){return M("div",{class:"five"},(i.headline??[]).map(e=>M("div",{class:`number ${e.state}`,"data-headline":e.id},M("h4",{},ut(e.title)),M("p",{class:"value"},M("span",{class:"figure"},ut(e.text)),e.unit&&e.state!=="unknown"?[" ",M("span",{class:"unit"},e.unit)]:""),M("p",{class:"state"},ri(e.state),Uf[e.state]?M("span",{},Uf[e.state]):null),M("p",{class:"threshold"},ut(e.threshold)),M("p",{class:"detail"},ut(e.detail)),M("p",{class:"sure"},M("span",{class:"cell-title"},"how sure"),ut(e.sure)),Number.isFinite(e.time)?Br(t,e.time,`at ${Dn(e.time,t.state.duration)}`):null)))}function x_(i,t){let e=i.requirements??[];return e.length?Xn(["","requirement","asked","found","margin (found against asked)","at"],e.map(n=>M("tr",{class:n.met?"met":"missed"},M("td",{class:"nowrap"},ri(n.met?"good":"bad"),n.met?" met":" not met"),M("th",{scope:"row"},ut(n.title)),M("td",{},ut(n.demand)),M("td",{class:"figure"},ut(n.value)),M("td",{class:"margin-cell"},M("div",{class:"bar-line"},tl(n.margin,{low:.5,high:10}),M("span",{class:"figure"},ut(n.margin_text)))),M("td",{class:"nowrap"},Number.isFinite(n.time)?Br(t,n.time,Dn(n.time,t.state.duration)):"\u2013"))),{class:"requirements",label:"requirements"}):M("p",{class:"muted"},"The scenario states no requirements.")}function Of(i,t,e){let{records:n}=t,s=n.length>1,r=n.flatMap(d=>d.requirements??[]),o=r.filter(d=>!d.met),a=r.length?o.length===0?`all ${r.length} requirements are met`:`${o.length} of ${r.length} requirements ${o.length===1?"is":"are"} not met`:"no requirement was stated",l=s&&n.every(d=>JSON.stringify(d.asked)===JSON.stringify(n[0].asked)),c=d=>M("ol",{class:`asked ${(d.asked??[]).length>6?"many":""}`},(d.asked??[]).map(h=>M("li",{},ut(h)))),u=[l||!s?[M("h4",{class:"sub first"},s?"What was asked, of each alike":"What was asked"),c(n[0])]:null,M("p",{class:`verdict ${o.length?"bad":r.length?"good":""}`},r.length?ri(o.length?"bad":"good"):null," ",a[0].toUpperCase()+a.slice(1)+".")];for(let d of n)s&&u.push(kr(d)),s&&!l&&u.push(M("h4",{class:"sub first"},"What was asked"),c(d)),u.push(__(d,e),M("h4",{class:"sub"},"Requirements"),x_(d,e));return i.section("verdict","Verdict",u)}function Bf(i,t){let{records:e}=t;if(e.length<2||!t.comparison)return;let{values:n=[],inputs:s=[]}=t.comparison,r=n.filter(u=>u.notable),o=u=>M("span",{class:"record-letter"},e[u].label),a=r.length?M("ul",{class:"callouts"},r.slice(0,12).map(u=>M("li",{},M("span",{class:"callout-title"},ut(u.title)),M("span",{class:"callout-values"},u.texts.map((d,h)=>M("span",{class:"figure"},o(h)," ",ut(d)))),M("span",{class:"callout-change"},u.change.slice(1).map((d,h)=>[h?", ":"",ut(d)]))))):M("p",{},"No reported value differs notably."),l=Xn(["value",...e.map((u,d)=>o(d)),...e.slice(1).map(u=>`${u.label} against ${e[0].label}`)],n.map((u,d)=>[u.group&&u.group!==n[d-1]?.group&&M("tr",{class:"group-row"},M("th",{colspan:2*e.length,scope:"rowgroup"},ut(u.group))),M("tr",{class:u.notable?"differs":""},M("th",{scope:"row"},ut(u.title)),u.texts.map(h=>M("td",{class:"figure"},ut(h))),u.change.slice(1).map(h=>M("td",{class:"figure"},ut(h))))]),{class:"comparison",label:"all values compared"}),c=s.length?Xn(["what the inputs say",...e.map((u,d)=>o(d))],s.map(u=>M("tr",{},M("th",{scope:"row",class:"path"},ut(u.place)),u.texts.map(d=>M("td",{class:"figure"},ut(d))))),{label:"differences of the inputs"}):M("p",{class:"muted"},"The inputs do not differ.");i.section("differences",`What differs: ${e.map(u=>u.label).join(" against ")}`,M("h3",{},"Changed on purpose, in the inputs"),c,M("h3",{},"Notable in the results"),a,n.length>0&&M("details",{"data-print":!0},M("summary",{},`All ${n.length} values compared`),l))}var y_=[[.82,.6,.1],[.87,.4,.16],[.72,.21,.33],[.42,.13,.42],[.16,.08,.32]],v_=[[.4,.36,.72],[.64,.38,.74],[.88,.46,.58],[.97,.68,.42],[1,.92,.62]];function Wo(i,t){let e=$h()?v_:y_,n=Math.min(Math.max(i||0,0),1)*(e.length-1),s=Math.min(Math.floor(n),e.length-2);for(let r=0;r<3;++r)t[r]=e[s][r]+(n-s)*(e[s+1][r]-e[s][r]);return t}function or(i){let[t,e,n]=Wo(i,[0,0,0]).map(s=>Math.round(255*s));return`rgb(${t},${e},${n})`}var ar=()=>`linear-gradient(to right, ${[0,.25,.5,.75,1].map(or).join(", ")})`,kf=["#123f6d","#c4551b","#2a8c82","#8b2f6b","#b08a00","#5b6b7a","#3f7fd0","#7a4a1e"],M_=["#8ec5ff","#ff9a5c","#5fd3c3","#e18bd0","#e6cf5a","#b6c2cc","#4f8fe6","#d0a070"],Vr=i=>($h()?M_:kf)[i%kf.length];/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var $s={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Xs={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},gp=0,Su=1,_p=2;var Ta=1,xp=2,go=3,qs=0,Un=1,Qi=2,mr=0,_o=1,bu=2,wu=3,Eu=4,yp=5;var gr=100,vp=101,Mp=102,Sp=103,bp=104,wp=200,Ep=201,Tp=202,Ap=203,Tu=204,Au=205,Rp=206,Cp=207,Pp=208,Ip=209,Lp=210,Dp=211,Np=212,Fp=213,Up=214,Cl=0,Pl=1,Il=2,so=3,Ll=4,Dl=5,ro=6,Nl=7,oc=0,Op=1,Bp=2,ts=0,Ru=1,Cu=2,Pu=3,Iu=4,Lu=5,Du=6,Nu=7;var Fu=300,_r=301,xo=302,ac=303,lc=304,Fl=1e3,Yi=1001,Ul=1002,In=1003,kp=1004;var Aa=1005;var Yn=1006,cc=1007;var bs=1008;var jn=1009,Uu=1010,Ou=1011,yo=1012,hc=1013,Di=1014,Mi=1015,Ni=1016,uc=1017,dc=1018,xr=1020,Bu=35902,ku=35899,zu=1021,Vu=1022,Fi=1023,_s=1026,ws=1027,fc=1028,pc=1029,Ys=1030,mc=1031;var gc=1033,Ra=33776,Ca=33777,Pa=33778,Ia=33779,_c=35840,xc=35841,yc=35842,vc=35843,Mc=36196,Sc=37492,bc=37496,wc=37488,Ec=37489,La=37490,Tc=37491,Ac=37808,Rc=37809,Cc=37810,Pc=37811,Ic=37812,Lc=37813,Dc=37814,Nc=37815,Fc=37816,Uc=37817,Oc=37818,Bc=37819,kc=37820,zc=37821,Vc=36492,Hc=36494,Gc=36495,Wc=36283,$c=36284,Da=36285,Xc=36286;var ta=2300,Ol=2301,Al=2302,mu=2303,gu=2400,_u=2401,xu=2402;var zp=3200;var qc=0,Vp=1,Es="",qn="srgb",ea="srgb-linear",na="linear",Be="srgb";var Rl=7680;var Hp=519,Gp=512,Wp=513,$p=514,Hu=515,Xp=516,qp=517,Gu=518,Wu=519,Yp=35044;var $u="300 es",vi=2e3,oo=2001;function S_(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function b_(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function ia(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function Zp(){let i=ia("canvas");return i.style.display="block",i}var zf={},ao=null;function Xu(...i){let t="THREE."+i.shift();ao?ao("log",t,...i):console.log(t,...i)}function Jp(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function re(...i){i=Jp(i);let t="THREE."+i.shift();if(ao)ao("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function ue(...i){i=Jp(i);let t="THREE."+i.shift();if(ao)ao("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function jo(...i){let t=i.join(" ");t in zf||(zf[t]=!0,re(...i))}function Kp(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var jp={[Cl]:Cl,[Il]:ro,[Ll]:Ll,[so]:Dl,[Pl]:Pl,[ro]:Il,[Nl]:Nl,[Dl]:so},Li=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Bn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Vf=1234567,no=Math.PI/180,lo=180/Math.PI;function vo(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Bn[i&255]+Bn[i>>8&255]+Bn[i>>16&255]+Bn[i>>24&255]+"-"+Bn[t&255]+Bn[t>>8&255]+"-"+Bn[t>>16&15|64]+Bn[t>>24&255]+"-"+Bn[e&63|128]+Bn[e>>8&255]+"-"+Bn[e>>16&255]+Bn[e>>24&255]+Bn[n&255]+Bn[n>>8&255]+Bn[n>>16&255]+Bn[n>>24&255]).toLowerCase()}function we(i,t,e){return Math.max(t,Math.min(e,i))}function qu(i,t){return(i%t+t)%t}function w_(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function E_(i,t,e){return i!==t?(e-i)/(t-i):0}function Qo(i,t,e){return(1-e)*i+e*t}function T_(i,t,e,n){return Qo(i,t,1-Math.exp(-e*n))}function A_(i,t=1){return t-Math.abs(qu(i,t*2)-t)}function R_(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function C_(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function P_(i,t){return i+Math.floor(Math.random()*(t-i+1))}function I_(i,t){return i+Math.random()*(t-i)}function L_(i){return i*(.5-Math.random())}function D_(i){i!==void 0&&(Vf=i);let t=Vf+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function N_(i){return i*no}function F_(i){return i*lo}function U_(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function O_(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function Yu(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function B_(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),u=o((t+n)/2),d=r((t-n)/2),h=o((t-n)/2),f=r((n-t)/2),m=o((n-t)/2);switch(s){case"XYX":i.set(a*u,l*d,l*h,a*c);break;case"YZY":i.set(l*h,a*u,l*d,a*c);break;case"ZXZ":i.set(l*d,l*h,a*u,a*c);break;case"XZX":i.set(a*u,l*m,l*f,a*c);break;case"YXY":i.set(l*f,a*u,l*m,a*c);break;case"ZYZ":i.set(l*m,l*f,a*u,a*c);break;default:re("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function Zu(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Qp(i,t){if(t.constructor===Float32Array)return i;let e=Zu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function tm(i,t){if(t.constructor===Float32Array)return i;let e=Zu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var Ju={DEG2RAD:no,RAD2DEG:lo,generateUUID:vo,clamp:we,euclideanModulo:qu,mapLinear:w_,inverseLerp:E_,lerp:Qo,damp:T_,pingpong:A_,smoothstep:R_,smootherstep:C_,randInt:P_,randFloat:I_,randFloatSpread:L_,seededRandom:D_,degToRad:N_,radToDeg:F_,isPowerOfTwo:U_,ceilPowerOfTwo:O_,floorPowerOfTwo:Yu,setQuaternionFromProperEuler:B_,normalize:tm,denormalize:Qp},ce=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=we(this.x,t.x,e.x),this.y=we(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=we(this.x,t,e),this.y=we(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(we(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(we(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},Nn=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],u=n[s+2],d=n[s+3],h=r[o+0],f=r[o+1],m=r[o+2],x=r[o+3];if(d!==x||l!==h||c!==f||u!==m){let _=l*h+c*f+u*m+d*x;_<0&&(h=-h,f=-f,m=-m,x=-x,_=-_);let p=1-a;if(_<.9995){let y=Math.acos(_),T=Math.sin(y);p=Math.sin(p*y)/T,a=Math.sin(a*y)/T,l=l*p+h*a,c=c*p+f*a,u=u*p+m*a,d=d*p+x*a}else{l=l*p+h*a,c=c*p+f*a,u=u*p+m*a,d=d*p+x*a;let y=1/Math.sqrt(l*l+c*c+u*u+d*d);l*=y,c*=y,u*=y,d*=y}}t[e]=l,t[e+1]=c,t[e+2]=u,t[e+3]=d}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],u=n[s+3],d=r[o],h=r[o+1],f=r[o+2],m=r[o+3];return t[e]=a*m+u*d+l*f-c*h,t[e+1]=l*m+u*h+c*d-a*f,t[e+2]=c*m+u*f+a*h-l*d,t[e+3]=u*m-a*d-l*h-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),u=a(s/2),d=a(r/2),h=l(n/2),f=l(s/2),m=l(r/2);switch(o){case"XYZ":this._x=h*u*d+c*f*m,this._y=c*f*d-h*u*m,this._z=c*u*m+h*f*d,this._w=c*u*d-h*f*m;break;case"YXZ":this._x=h*u*d+c*f*m,this._y=c*f*d-h*u*m,this._z=c*u*m-h*f*d,this._w=c*u*d+h*f*m;break;case"ZXY":this._x=h*u*d-c*f*m,this._y=c*f*d+h*u*m,this._z=c*u*m+h*f*d,this._w=c*u*d-h*f*m;break;case"ZYX":this._x=h*u*d-c*f*m,this._y=c*f*d+h*u*m,this._z=c*u*m-h*f*d,this._w=c*u*d+h*f*m;break;case"YZX":this._x=h*u*d+c*f*m,this._y=c*f*d+h*u*m,this._z=c*u*m-h*f*d,this._w=c*u*d-h*f*m;break;case"XZY":this._x=h*u*d-c*f*m,this._y=c*f*d-h*u*m,this._z=c*u*m+h*f*d,this._w=c*u*d+h*f*m;break;default:re("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],u=e[6],d=e[10],h=n+a+d;if(h>0){let f=.5/Math.sqrt(h+1);this._w=.25/f,this._x=(u-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>d){let f=2*Math.sqrt(1+n-a-d);this._w=(u-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>d){let f=2*Math.sqrt(1+a-n-d);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+u)/f}else{let f=2*Math.sqrt(1+d-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+u)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(we(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,u=e._w;return this._x=n*u+o*a+s*c-r*l,this._y=s*u+o*l+r*a-n*c,this._z=r*u+o*c+n*l-s*a,this._w=o*u-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),u=Math.sin(c);l=Math.sin(l*c)/u,e=Math.sin(e*c)/u,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},J=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(Hf.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(Hf.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),u=2*(a*e-r*s),d=2*(r*n-o*e);return this.x=e+l*c+o*d-a*u,this.y=n+l*u+a*c-r*d,this.z=s+l*d+r*u-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=we(this.x,t.x,e.x),this.y=we(this.y,t.y,e.y),this.z=we(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=we(this.x,t,e),this.y=we(this.y,t,e),this.z=we(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(we(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return qh.copy(this).projectOnVector(t),this.sub(qh)}reflect(t){return this.sub(qh.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(we(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},qh=new J,Hf=new Nn,de=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let u=this.elements;return u[0]=t,u[1]=s,u[2]=a,u[3]=e,u[4]=r,u[5]=l,u[6]=n,u[7]=o,u[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],u=n[4],d=n[7],h=n[2],f=n[5],m=n[8],x=s[0],_=s[3],p=s[6],y=s[1],T=s[4],b=s[7],I=s[2],w=s[5],g=s[8];return r[0]=o*x+a*y+l*I,r[3]=o*_+a*T+l*w,r[6]=o*p+a*b+l*g,r[1]=c*x+u*y+d*I,r[4]=c*_+u*T+d*w,r[7]=c*p+u*b+d*g,r[2]=h*x+f*y+m*I,r[5]=h*_+f*T+m*w,r[8]=h*p+f*b+m*g,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8];return e*o*u-e*a*c-n*r*u+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],d=u*o-a*c,h=a*l-u*r,f=c*r-o*l,m=e*d+n*h+s*f;if(m===0)return this.set(0,0,0,0,0,0,0,0,0);let x=1/m;return t[0]=d*x,t[1]=(s*c-u*n)*x,t[2]=(a*n-s*o)*x,t[3]=h*x,t[4]=(u*e-s*l)*x,t[5]=(s*r-a*e)*x,t[6]=f*x,t[7]=(n*l-c*e)*x,t[8]=(o*e-n*r)*x,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return jo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Yh.makeScale(t,e)),this}rotate(t){return jo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Yh.makeRotation(-t)),this}translate(t,e){return jo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Yh.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},Yh=new de,Gf=new de().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Wf=new de().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function k_(){let i={enabled:!0,workingColorSpace:ea,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Be&&(s.r=gs(s.r),s.g=gs(s.g),s.b=gs(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Be&&(s.r=io(s.r),s.g=io(s.g),s.b=io(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===Es?na:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[ea]:{primaries:t,whitePoint:n,transfer:na,toXYZ:Gf,fromXYZ:Wf,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:qn},outputColorSpaceConfig:{drawingBufferColorSpace:qn}},[qn]:{primaries:t,whitePoint:n,transfer:Be,toXYZ:Gf,fromXYZ:Wf,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:qn}}}),i}var Re=k_();function gs(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function io(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Hr,Bl=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Hr===void 0&&(Hr=ia("canvas")),Hr.width=t.width,Hr.height=t.height;let s=Hr.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Hr}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=ia("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=gs(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(gs(e[n]/255)*255):e[n]=gs(e[n]);return{data:e,width:t.width,height:t.height}}else return re("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},z_=0,co=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:z_++}),this.uuid=vo(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(Zh(s[o].image)):r.push(Zh(s[o]))}else r=Zh(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function Zh(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Bl.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(re("Texture: Unable to serialize Texture."),{})}var V_=0,Jh=new J,Kn=class i extends Li{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Yi,s=Yi,r=Yn,o=bs,a=Fi,l=jn,c=i.DEFAULT_ANISOTROPY,u=Es){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:V_++}),this.uuid=vo(),this.name="",this.source=new co(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new ce(0,0),this.repeat=new ce(1,1),this.center=new ce(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new de,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Jh).x}get height(){return this.source.getSize(Jh).y}get depth(){return this.source.getSize(Jh).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){re(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){re(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==Fu)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Fl:t.x=t.x-Math.floor(t.x);break;case Yi:t.x=t.x<0?0:1;break;case Ul:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Fl:t.y=t.y-Math.floor(t.y);break;case Yi:t.y=t.y<0?0:1;break;case Ul:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Kn.DEFAULT_IMAGE=null;Kn.DEFAULT_MAPPING=Fu;Kn.DEFAULT_ANISOTROPY=1;var nn=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],u=l[4],d=l[8],h=l[1],f=l[5],m=l[9],x=l[2],_=l[6],p=l[10];if(Math.abs(u-h)<.01&&Math.abs(d-x)<.01&&Math.abs(m-_)<.01){if(Math.abs(u+h)<.1&&Math.abs(d+x)<.1&&Math.abs(m+_)<.1&&Math.abs(c+f+p-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let T=(c+1)/2,b=(f+1)/2,I=(p+1)/2,w=(u+h)/4,g=(d+x)/4,S=(m+_)/4;return T>b&&T>I?T<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(T),s=w/n,r=g/n):b>I?b<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(b),n=w/s,r=S/s):I<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(I),n=g/r,s=S/r),this.set(n,s,r,e),this}let y=Math.sqrt((_-m)*(_-m)+(d-x)*(d-x)+(h-u)*(h-u));return Math.abs(y)<.001&&(y=1),this.x=(_-m)/y,this.y=(d-x)/y,this.z=(h-u)/y,this.w=Math.acos((c+f+p-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=we(this.x,t.x,e.x),this.y=we(this.y,t.y,e.y),this.z=we(this.z,t.z,e.z),this.w=we(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=we(this.x,t,e),this.y=we(this.y,t,e),this.z=we(this.z,t,e),this.w=we(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(we(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},kl=class extends Li{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Yn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new nn(0,0,t,e),this.scissorTest=!1,this.viewport=new nn(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Kn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Yn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new co(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},hi=class extends kl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},sa=class extends Kn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=In,this.minFilter=In,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var zl=class extends Kn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=In,this.minFilter=In,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var Fe=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,u,d,h,f,m,x,_){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,u,d,h,f,m,x,_)}set(t,e,n,s,r,o,a,l,c,u,d,h,f,m,x,_){let p=this.elements;return p[0]=t,p[4]=e,p[8]=n,p[12]=s,p[1]=r,p[5]=o,p[9]=a,p[13]=l,p[2]=c,p[6]=u,p[10]=d,p[14]=h,p[3]=f,p[7]=m,p[11]=x,p[15]=_,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Gr.setFromMatrixColumn(t,0).length(),r=1/Gr.setFromMatrixColumn(t,1).length(),o=1/Gr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),u=Math.cos(r),d=Math.sin(r);if(t.order==="XYZ"){let h=o*u,f=o*d,m=a*u,x=a*d;e[0]=l*u,e[4]=-l*d,e[8]=c,e[1]=f+m*c,e[5]=h-x*c,e[9]=-a*l,e[2]=x-h*c,e[6]=m+f*c,e[10]=o*l}else if(t.order==="YXZ"){let h=l*u,f=l*d,m=c*u,x=c*d;e[0]=h+x*a,e[4]=m*a-f,e[8]=o*c,e[1]=o*d,e[5]=o*u,e[9]=-a,e[2]=f*a-m,e[6]=x+h*a,e[10]=o*l}else if(t.order==="ZXY"){let h=l*u,f=l*d,m=c*u,x=c*d;e[0]=h-x*a,e[4]=-o*d,e[8]=m+f*a,e[1]=f+m*a,e[5]=o*u,e[9]=x-h*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let h=o*u,f=o*d,m=a*u,x=a*d;e[0]=l*u,e[4]=m*c-f,e[8]=h*c+x,e[1]=l*d,e[5]=x*c+h,e[9]=f*c-m,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let h=o*l,f=o*c,m=a*l,x=a*c;e[0]=l*u,e[4]=x-h*d,e[8]=m*d+f,e[1]=d,e[5]=o*u,e[9]=-a*u,e[2]=-c*u,e[6]=f*d+m,e[10]=h-x*d}else if(t.order==="XZY"){let h=o*l,f=o*c,m=a*l,x=a*c;e[0]=l*u,e[4]=-d,e[8]=c*u,e[1]=h*d+x,e[5]=o*u,e[9]=f*d-m,e[2]=m*d-f,e[6]=a*u,e[10]=x*d+h}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(H_,t,G_)}lookAt(t,e,n){let s=this.elements;return oi.subVectors(t,e),oi.lengthSq()===0&&(oi.z=1),oi.normalize(),Fs.crossVectors(n,oi),Fs.lengthSq()===0&&(Math.abs(n.z)===1?oi.x+=1e-4:oi.z+=1e-4,oi.normalize(),Fs.crossVectors(n,oi)),Fs.normalize(),el.crossVectors(oi,Fs),s[0]=Fs.x,s[4]=el.x,s[8]=oi.x,s[1]=Fs.y,s[5]=el.y,s[9]=oi.y,s[2]=Fs.z,s[6]=el.z,s[10]=oi.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],u=n[1],d=n[5],h=n[9],f=n[13],m=n[2],x=n[6],_=n[10],p=n[14],y=n[3],T=n[7],b=n[11],I=n[15],w=s[0],g=s[4],S=s[8],F=s[12],C=s[1],L=s[5],k=s[9],z=s[13],P=s[2],V=s[6],H=s[10],B=s[14],q=s[3],X=s[7],K=s[11],$=s[15];return r[0]=o*w+a*C+l*P+c*q,r[4]=o*g+a*L+l*V+c*X,r[8]=o*S+a*k+l*H+c*K,r[12]=o*F+a*z+l*B+c*$,r[1]=u*w+d*C+h*P+f*q,r[5]=u*g+d*L+h*V+f*X,r[9]=u*S+d*k+h*H+f*K,r[13]=u*F+d*z+h*B+f*$,r[2]=m*w+x*C+_*P+p*q,r[6]=m*g+x*L+_*V+p*X,r[10]=m*S+x*k+_*H+p*K,r[14]=m*F+x*z+_*B+p*$,r[3]=y*w+T*C+b*P+I*q,r[7]=y*g+T*L+b*V+I*X,r[11]=y*S+T*k+b*H+I*K,r[15]=y*F+T*z+b*B+I*$,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],u=t[2],d=t[6],h=t[10],f=t[14],m=t[3],x=t[7],_=t[11],p=t[15],y=l*f-c*h,T=a*f-c*d,b=a*h-l*d,I=o*f-c*u,w=o*h-l*u,g=o*d-a*u;return e*(x*y-_*T+p*b)-n*(m*y-_*I+p*w)+s*(m*T-x*I+p*g)-r*(m*b-x*w+_*g)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],u=t[10];return e*(o*u-a*c)-n*(r*u-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],d=t[9],h=t[10],f=t[11],m=t[12],x=t[13],_=t[14],p=t[15],y=e*a-n*o,T=e*l-s*o,b=e*c-r*o,I=n*l-s*a,w=n*c-r*a,g=s*c-r*l,S=u*x-d*m,F=u*_-h*m,C=u*p-f*m,L=d*_-h*x,k=d*p-f*x,z=h*p-f*_,P=y*z-T*k+b*L+I*C-w*F+g*S;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let V=1/P;return t[0]=(a*z-l*k+c*L)*V,t[1]=(s*k-n*z-r*L)*V,t[2]=(x*g-_*w+p*I)*V,t[3]=(h*w-d*g-f*I)*V,t[4]=(l*C-o*z-c*F)*V,t[5]=(e*z-s*C+r*F)*V,t[6]=(_*b-m*g-p*T)*V,t[7]=(u*g-h*b+f*T)*V,t[8]=(o*k-a*C+c*S)*V,t[9]=(n*C-e*k-r*S)*V,t[10]=(m*w-x*b+p*y)*V,t[11]=(d*b-u*w-f*y)*V,t[12]=(a*F-o*L-l*S)*V,t[13]=(e*L-n*F+s*S)*V,t[14]=(x*T-m*I-_*y)*V,t[15]=(u*I-d*T+h*y)*V,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,u=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,u*a+n,u*l-s*o,0,c*l-s*a,u*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,u=o+o,d=a+a,h=r*c,f=r*u,m=r*d,x=o*u,_=o*d,p=a*d,y=l*c,T=l*u,b=l*d,I=n.x,w=n.y,g=n.z;return s[0]=(1-(x+p))*I,s[1]=(f+b)*I,s[2]=(m-T)*I,s[3]=0,s[4]=(f-b)*w,s[5]=(1-(h+p))*w,s[6]=(_+y)*w,s[7]=0,s[8]=(m+T)*g,s[9]=(_-y)*g,s[10]=(1-(h+x))*g,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Gr.set(s[0],s[1],s[2]).length(),a=Gr.set(s[4],s[5],s[6]).length(),l=Gr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ri.copy(this);let c=1/o,u=1/a,d=1/l;return Ri.elements[0]*=c,Ri.elements[1]*=c,Ri.elements[2]*=c,Ri.elements[4]*=u,Ri.elements[5]*=u,Ri.elements[6]*=u,Ri.elements[8]*=d,Ri.elements[9]*=d,Ri.elements[10]*=d,e.setFromRotationMatrix(Ri),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=vi,l=!1){let c=this.elements,u=2*r/(e-t),d=2*r/(n-s),h=(e+t)/(e-t),f=(n+s)/(n-s),m,x;if(l)m=r/(o-r),x=o*r/(o-r);else if(a===vi)m=-(o+r)/(o-r),x=-2*o*r/(o-r);else if(a===oo)m=-o/(o-r),x=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=h,c[12]=0,c[1]=0,c[5]=d,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=m,c[14]=x,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=vi,l=!1){let c=this.elements,u=2/(e-t),d=2/(n-s),h=-(e+t)/(e-t),f=-(n+s)/(n-s),m,x;if(l)m=1/(o-r),x=o/(o-r);else if(a===vi)m=-2/(o-r),x=-(o+r)/(o-r);else if(a===oo)m=-1/(o-r),x=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=0,c[12]=h,c[1]=0,c[5]=d,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=m,c[14]=x,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Gr=new J,Ri=new Fe,H_=new J(0,0,0),G_=new J(1,1,1),Fs=new J,el=new J,oi=new J,$f=new Fe,Xf=new Nn,xs=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],u=s[9],d=s[2],h=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(we(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(h,c),this._z=0);break;case"YXZ":this._x=Math.asin(-we(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-d,r),this._z=0);break;case"ZXY":this._x=Math.asin(we(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(-d,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-we(d,-1,1)),Math.abs(d)<.9999999?(this._x=Math.atan2(h,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(we(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-u,c),this._y=Math.atan2(-d,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-we(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(h,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-u,f),this._y=0);break;default:re("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return $f.makeRotationFromQuaternion(t),this.setFromRotationMatrix($f,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return Xf.setFromEuler(this),this.setFromQuaternion(Xf,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};xs.DEFAULT_ORDER="XYZ";var ra=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},W_=0,qf=new J,Wr=new Nn,hs=new Fe,nl=new J,$o=new J,$_=new J,X_=new Nn,Yf=new J(1,0,0),Zf=new J(0,1,0),Jf=new J(0,0,1),Kf={type:"added"},q_={type:"removed"},$r={type:"childadded",child:null},Kh={type:"childremoved",child:null},Fn=class i extends Li{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:W_++}),this.uuid=vo(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new J,e=new xs,n=new Nn,s=new J(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Fe},normalMatrix:{value:new de}}),this.matrix=new Fe,this.matrixWorld=new Fe,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new ra,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Wr.setFromAxisAngle(t,e),this.quaternion.multiply(Wr),this}rotateOnWorldAxis(t,e){return Wr.setFromAxisAngle(t,e),this.quaternion.premultiply(Wr),this}rotateX(t){return this.rotateOnAxis(Yf,t)}rotateY(t){return this.rotateOnAxis(Zf,t)}rotateZ(t){return this.rotateOnAxis(Jf,t)}translateOnAxis(t,e){return qf.copy(t).applyQuaternion(this.quaternion),this.position.add(qf.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(Yf,t)}translateY(t){return this.translateOnAxis(Zf,t)}translateZ(t){return this.translateOnAxis(Jf,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(hs.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?nl.copy(t):nl.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),$o.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?hs.lookAt($o,nl,this.up):hs.lookAt(nl,$o,this.up),this.quaternion.setFromRotationMatrix(hs),s&&(hs.extractRotation(s.matrixWorld),Wr.setFromRotationMatrix(hs),this.quaternion.premultiply(Wr.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(ue("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(Kf),$r.child=t,this.dispatchEvent($r),$r.child=null):ue("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(q_),Kh.child=t,this.dispatchEvent(Kh),Kh.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),hs.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),hs.multiply(t.parent.matrixWorld)),t.applyMatrix4(hs),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(Kf),$r.child=t,this.dispatchEvent($r),$r.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose($o,t,$_),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose($o,X_,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,u=l.length;c<u;c++){let d=l[c];r(t.shapes,d)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),u=o(t.images),d=o(t.shapes),h=o(t.skeletons),f=o(t.animations),m=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),u.length>0&&(n.images=u),d.length>0&&(n.shapes=d),h.length>0&&(n.skeletons=h),f.length>0&&(n.animations=f),m.length>0&&(n.nodes=m)}return n.object=s,n;function o(a){let l=[];for(let c in a){let u=a[c];delete u.metadata,l.push(u)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Fn.DEFAULT_UP=new J(0,1,0);Fn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Fn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Zi=class extends Fn{constructor(){super(),this.isGroup=!0,this.type="Group"}},Y_={type:"move"},ho=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Zi,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Zi,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new J,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new J),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Zi,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new J,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new J,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let x of t.hand.values()){let _=e.getJointPose(x,n),p=this._getHandJoint(c,x);_!==null&&(p.matrix.fromArray(_.transform.matrix),p.matrix.decompose(p.position,p.quaternion,p.scale),p.matrixWorldNeedsUpdate=!0,p.jointRadius=_.radius),p.visible=_!==null}let u=c.joints["index-finger-tip"],d=c.joints["thumb-tip"],h=u.position.distanceTo(d.position),f=.02,m=.005;c.inputState.pinching&&h>f+m?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&h<=f-m&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(Y_)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Zi;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},em={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Us={h:0,s:0,l:0},il={h:0,s:0,l:0};function jh(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var xe=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=qn){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,Re.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=Re.workingColorSpace){return this.r=t,this.g=e,this.b=n,Re.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=Re.workingColorSpace){if(t=qu(t,1),e=we(e,0,1),n=we(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=jh(o,r,t+1/3),this.g=jh(o,r,t),this.b=jh(o,r,t-1/3)}return Re.colorSpaceToWorking(this,s),this}setStyle(t,e=qn){function n(r){r!==void 0&&parseFloat(r)<1&&re("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:re("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);re("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=qn){let n=em[t.toLowerCase()];return n!==void 0?this.setHex(n,e):re("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=gs(t.r),this.g=gs(t.g),this.b=gs(t.b),this}copyLinearToSRGB(t){return this.r=io(t.r),this.g=io(t.g),this.b=io(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=qn){return Re.workingToColorSpace(kn.copy(this),t),Math.round(we(kn.r*255,0,255))*65536+Math.round(we(kn.g*255,0,255))*256+Math.round(we(kn.b*255,0,255))}getHexString(t=qn){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=Re.workingColorSpace){Re.workingToColorSpace(kn.copy(this),e);let n=kn.r,s=kn.g,r=kn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,u=(a+o)/2;if(a===o)l=0,c=0;else{let d=o-a;switch(c=u<=.5?d/(o+a):d/(2-o-a),o){case n:l=(s-r)/d+(s<r?6:0);break;case s:l=(r-n)/d+2;break;case r:l=(n-s)/d+4;break}l/=6}return t.h=l,t.s=c,t.l=u,t}getRGB(t,e=Re.workingColorSpace){return Re.workingToColorSpace(kn.copy(this),e),t.r=kn.r,t.g=kn.g,t.b=kn.b,t}getStyle(t=qn){Re.workingToColorSpace(kn.copy(this),t);let e=kn.r,n=kn.g,s=kn.b;return t!==qn?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Us),this.setHSL(Us.h+t,Us.s+e,Us.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Us),t.getHSL(il);let n=Qo(Us.h,il.h,e),s=Qo(Us.s,il.s,e),r=Qo(Us.l,il.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},kn=new xe;xe.NAMES=em;var oa=class extends Fn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new xs,this.environmentIntensity=1,this.environmentRotation=new xs,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Ci=new J,us=new J,Qh=new J,ds=new J,Xr=new J,qr=new J,jf=new J,tu=new J,eu=new J,nu=new J,iu=new nn,su=new nn,ru=new nn,ms=class i{constructor(t=new J,e=new J,n=new J){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Ci.subVectors(t,e),s.cross(Ci);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Ci.subVectors(s,e),us.subVectors(n,e),Qh.subVectors(t,e);let o=Ci.dot(Ci),a=Ci.dot(us),l=Ci.dot(Qh),c=us.dot(us),u=us.dot(Qh),d=o*c-a*a;if(d===0)return r.set(0,0,0),null;let h=1/d,f=(c*l-a*u)*h,m=(o*u-a*l)*h;return r.set(1-f-m,m,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,ds)===null?!1:ds.x>=0&&ds.y>=0&&ds.x+ds.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,ds)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,ds.x),l.addScaledVector(o,ds.y),l.addScaledVector(a,ds.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return iu.setScalar(0),su.setScalar(0),ru.setScalar(0),iu.fromBufferAttribute(t,e),su.fromBufferAttribute(t,n),ru.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(iu,r.x),o.addScaledVector(su,r.y),o.addScaledVector(ru,r.z),o}static isFrontFacing(t,e,n,s){return Ci.subVectors(n,e),us.subVectors(t,e),Ci.cross(us).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Ci.subVectors(this.c,this.b),us.subVectors(this.a,this.b),Ci.cross(us).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Xr.subVectors(s,n),qr.subVectors(r,n),tu.subVectors(t,n);let l=Xr.dot(tu),c=qr.dot(tu);if(l<=0&&c<=0)return e.copy(n);eu.subVectors(t,s);let u=Xr.dot(eu),d=qr.dot(eu);if(u>=0&&d<=u)return e.copy(s);let h=l*d-u*c;if(h<=0&&l>=0&&u<=0&&l-u>0)return o=l/(l-u),e.copy(n).addScaledVector(Xr,o);nu.subVectors(t,r);let f=Xr.dot(nu),m=qr.dot(nu);if(m>=0&&f<=m)return e.copy(r);let x=f*c-l*m;if(x<=0&&c>=0&&m<=0)return a=c/(c-m),e.copy(n).addScaledVector(qr,a);let _=u*m-f*d;if(_<=0&&d-u>=0&&f-m>=0)return jf.subVectors(r,s),a=(d-u)/(d-u+(f-m)),e.copy(s).addScaledVector(jf,a);let p=1/(_+x+h);return o=x*p,a=h*p,e.copy(n).addScaledVector(Xr,o).addScaledVector(qr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Ji=class{constructor(t=new J(1/0,1/0,1/0),e=new J(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Pi.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Pi.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Pi.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Pi):Pi.fromBufferAttribute(r,o),Pi.applyMatrix4(t.matrixWorld),this.expandByPoint(Pi);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),sl.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),sl.copy(n.boundingBox)),sl.applyMatrix4(t.matrixWorld),this.union(sl)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Pi),Pi.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Xo),rl.subVectors(this.max,Xo),Yr.subVectors(t.a,Xo),Zr.subVectors(t.b,Xo),Jr.subVectors(t.c,Xo),Os.subVectors(Zr,Yr),Bs.subVectors(Jr,Zr),lr.subVectors(Yr,Jr);let e=[0,-Os.z,Os.y,0,-Bs.z,Bs.y,0,-lr.z,lr.y,Os.z,0,-Os.x,Bs.z,0,-Bs.x,lr.z,0,-lr.x,-Os.y,Os.x,0,-Bs.y,Bs.x,0,-lr.y,lr.x,0];return!ou(e,Yr,Zr,Jr,rl)||(e=[1,0,0,0,1,0,0,0,1],!ou(e,Yr,Zr,Jr,rl))?!1:(ol.crossVectors(Os,Bs),e=[ol.x,ol.y,ol.z],ou(e,Yr,Zr,Jr,rl))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Pi).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Pi).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(fs[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),fs[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),fs[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),fs[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),fs[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),fs[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),fs[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),fs[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(fs),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},fs=[new J,new J,new J,new J,new J,new J,new J,new J],Pi=new J,sl=new Ji,Yr=new J,Zr=new J,Jr=new J,Os=new J,Bs=new J,lr=new J,Xo=new J,rl=new J,ol=new J,cr=new J;function ou(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){cr.fromArray(i,r);let a=s.x*Math.abs(cr.x)+s.y*Math.abs(cr.y)+s.z*Math.abs(cr.z),l=t.dot(cr),c=e.dot(cr),u=n.dot(cr);if(Math.max(-Math.max(l,c,u),Math.min(l,c,u))>a)return!1}return!0}var mn=new J,al=new ce,Z_=0,Ii=class extends Li{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Z_++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=Yp,this.updateRanges=[],this.gpuType=Mi,this.version=0,this._normalizationScale=t!==void 0?Zu(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)al.fromBufferAttribute(this,e),al.applyMatrix3(t),this.setXY(e,al.x,al.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyMatrix3(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyMatrix4(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyNormalMatrix(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.transformDirection(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):Qp(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):tm(t,this.array)}};var aa=class extends Ii{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var la=class extends Ii{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Ye=class extends Ii{constructor(t,e,n){super(new Float32Array(t),e,n)}},J_=new Ji,qo=new J,au=new J,ys=class{constructor(t=new J,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):J_.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;qo.subVectors(t,this.center);let e=qo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(qo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(au.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(qo.copy(t.center).add(au)),this.expandByPoint(qo.copy(t.center).sub(au))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},K_=0,yi=new Fe,lu=new Fn,Kr=new J,ai=new Ji,Yo=new Ji,Pn=new J,Zn=class i extends Li{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:K_++}),this.uuid=vo(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(S_(t)?la:aa)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new de().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return yi.makeRotationFromQuaternion(t),this.applyMatrix4(yi),this}rotateX(t){return yi.makeRotationX(t),this.applyMatrix4(yi),this}rotateY(t){return yi.makeRotationY(t),this.applyMatrix4(yi),this}rotateZ(t){return yi.makeRotationZ(t),this.applyMatrix4(yi),this}translate(t,e,n){return yi.makeTranslation(t,e,n),this.applyMatrix4(yi),this}scale(t,e,n){return yi.makeScale(t,e,n),this.applyMatrix4(yi),this}lookAt(t){return lu.lookAt(t),lu.updateMatrix(),this.applyMatrix4(lu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Kr).negate(),this.translate(Kr.x,Kr.y,Kr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Ye(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&re("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Ji);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ue("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new J(-1/0,-1/0,-1/0),new J(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];ai.setFromBufferAttribute(r),this.morphTargetsRelative?(Pn.addVectors(this.boundingBox.min,ai.min),this.boundingBox.expandByPoint(Pn),Pn.addVectors(this.boundingBox.max,ai.max),this.boundingBox.expandByPoint(Pn)):(this.boundingBox.expandByPoint(ai.min),this.boundingBox.expandByPoint(ai.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ue('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ys);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ue("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new J,1/0);return}if(t){let n=this.boundingSphere.center;if(ai.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Yo.setFromBufferAttribute(a),this.morphTargetsRelative?(Pn.addVectors(ai.min,Yo.min),ai.expandByPoint(Pn),Pn.addVectors(ai.max,Yo.max),ai.expandByPoint(Pn)):(ai.expandByPoint(Yo.min),ai.expandByPoint(Yo.max))}ai.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Pn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Pn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,u=a.count;c<u;c++)Pn.fromBufferAttribute(a,c),l&&(Kr.fromBufferAttribute(t,c),Pn.add(Kr)),s=Math.max(s,n.distanceToSquared(Pn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ue('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){ue("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Ii(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let F=0;F<n.count;F++)a[F]=new J,l[F]=new J;let u=new J,d=new J,h=new J,f=new ce,m=new ce,x=new ce,_=new J,p=new J;function y(F,C,L){c[F]=c[C]=c[L]=1,u.fromBufferAttribute(n,F),d.fromBufferAttribute(n,C),h.fromBufferAttribute(n,L),f.fromBufferAttribute(r,F),m.fromBufferAttribute(r,C),x.fromBufferAttribute(r,L),d.sub(u),h.sub(u),m.sub(f),x.sub(f);let k=1/(m.x*x.y-x.x*m.y);isFinite(k)&&(_.copy(d).multiplyScalar(x.y).addScaledVector(h,-m.y).multiplyScalar(k),p.copy(h).multiplyScalar(m.x).addScaledVector(d,-x.x).multiplyScalar(k),a[F].add(_),a[C].add(_),a[L].add(_),l[F].add(p),l[C].add(p),l[L].add(p))}let T=this.groups;T.length===0&&(T=[{start:0,count:t.count}]);for(let F=0,C=T.length;F<C;++F){let L=T[F],k=L.start,z=L.count;for(let P=k,V=k+z;P<V;P+=3)y(t.getX(P+0),t.getX(P+1),t.getX(P+2))}let b=new J,I=new J,w=new J,g=new J;function S(F){w.fromBufferAttribute(s,F),g.copy(w);let C=a[F];b.copy(C),b.sub(w.multiplyScalar(w.dot(C))).normalize(),I.crossVectors(g,C);let k=I.dot(l[F])<0?-1:1;o.setXYZW(F,b.x,b.y,b.z,k)}for(let F=0,C=n.count;F<C;++F)c[F]&&S(F);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Ii(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let h=0,f=n.count;h<f;h++)n.setXYZ(h,0,0,0);let s=new J,r=new J,o=new J,a=new J,l=new J,c=new J,u=new J,d=new J;if(t)for(let h=0,f=t.count;h<f;h+=3){let m=t.getX(h+0),x=t.getX(h+1),_=t.getX(h+2);s.fromBufferAttribute(e,m),r.fromBufferAttribute(e,x),o.fromBufferAttribute(e,_),u.subVectors(o,r),d.subVectors(s,r),u.cross(d),a.fromBufferAttribute(n,m),l.fromBufferAttribute(n,x),c.fromBufferAttribute(n,_),a.add(u),l.add(u),c.add(u),n.setXYZ(m,a.x,a.y,a.z),n.setXYZ(x,l.x,l.y,l.z),n.setXYZ(_,c.x,c.y,c.z)}else for(let h=0,f=e.count;h<f;h+=3)s.fromBufferAttribute(e,h+0),r.fromBufferAttribute(e,h+1),o.fromBufferAttribute(e,h+2),u.subVectors(o,r),d.subVectors(s,r),u.cross(d),n.setXYZ(h+0,u.x,u.y,u.z),n.setXYZ(h+1,u.x,u.y,u.z),n.setXYZ(h+2,u.x,u.y,u.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Pn.fromBufferAttribute(t,e),Pn.normalize(),t.setXYZ(e,Pn.x,Pn.y,Pn.z)}toNonIndexed(){function t(a,l){let c=a.array,u=a.itemSize,d=a.normalized,h=new c.constructor(l.length*u),f=0,m=0;for(let x=0,_=l.length;x<_;x++){a.isInterleavedBufferAttribute?f=l[x]*a.data.stride+a.offset:f=l[x]*u;for(let p=0;p<u;p++)h[m++]=c[f++]}return new Ii(h,u,d)}if(this.index===null)return re("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let u=0,d=c.length;u<d;u++){let h=c[u],f=t(h,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],u=[];for(let d=0,h=c.length;d<h;d++){let f=c[d];u.push(f.toJSON(t.data))}u.length>0&&(s[l]=u,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let u=s[c];this.setAttribute(c,u.clone(e))}let r=t.morphAttributes;for(let c in r){let u=[],d=r[c];for(let h=0,f=d.length;h<f;h++)u.push(d[h].clone(e));this.morphAttributes[c]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,u=o.length;c<u;c++){let d=o[c];this.addGroup(d.start,d.count,d.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var cu=new J,j_=new J,Q_=new de,li=class{constructor(t=new J(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=cu.subVectors(n,e).cross(j_.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(cu),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||Q_.getNormalMatrix(t),s=this.coplanarPoint(cu).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},tx=0,vs=class extends Li{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:tx++}),this.uuid=vo(),this.name="",this.type="Material",this.blending=_o,this.side=qs,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=Tu,this.blendDst=Au,this.blendEquation=gr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new xe(0,0,0),this.blendAlpha=0,this.depthFunc=so,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=Hp,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=Rl,this.stencilZFail=Rl,this.stencilZPass=Rl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){re(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){re(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new xe().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new li().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new ce().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new ce().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ps=new J,hu=new J,ll=new J,cl=new J,dr=class{constructor(t=new J,e=new J(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ps)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=ps.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(ps.copy(this.origin).addScaledVector(this.direction,e),ps.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){hu.copy(t).add(e).multiplyScalar(.5),ll.copy(e).sub(t).normalize(),cl.copy(this.origin).sub(hu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(ll),a=cl.dot(this.direction),l=-cl.dot(ll),c=cl.lengthSq(),u=Math.abs(1-o*o),d,h,f,m;if(u>0)if(d=o*l-a,h=o*a-l,m=r*u,d>=0)if(h>=-m)if(h<=m){let x=1/u;d*=x,h*=x,f=d*(d+o*h+2*a)+h*(o*d+h+2*l)+c}else h=r,d=Math.max(0,-(o*h+a)),f=-d*d+h*(h+2*l)+c;else h=-r,d=Math.max(0,-(o*h+a)),f=-d*d+h*(h+2*l)+c;else h<=-m?(d=Math.max(0,-(-o*r+a)),h=d>0?-r:Math.min(Math.max(-r,-l),r),f=-d*d+h*(h+2*l)+c):h<=m?(d=0,h=Math.min(Math.max(-r,-l),r),f=h*(h+2*l)+c):(d=Math.max(0,-(o*r+a)),h=d>0?r:Math.min(Math.max(-r,-l),r),f=-d*d+h*(h+2*l)+c);else h=o>0?-r:r,d=Math.max(0,-(o*h+a)),f=-d*d+h*(h+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,d),s&&s.copy(hu).addScaledVector(ll,h),f}intersectSphere(t,e){if(t.radius<0)return null;ps.subVectors(t.center,this.origin);let n=ps.dot(this.direction),s=ps.dot(ps)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,u=1/this.direction.y,d=1/this.direction.z,h=this.origin;return c>=0?(n=(t.min.x-h.x)*c,s=(t.max.x-h.x)*c):(n=(t.max.x-h.x)*c,s=(t.min.x-h.x)*c),u>=0?(r=(t.min.y-h.y)*u,o=(t.max.y-h.y)*u):(r=(t.max.y-h.y)*u,o=(t.min.y-h.y)*u),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),d>=0?(a=(t.min.z-h.z)*d,l=(t.max.z-h.z)*d):(a=(t.max.z-h.z)*d,l=(t.min.z-h.z)*d),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,ps)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,u=a.z,d=t.x-o.x,h=t.y-o.y,f=t.z-o.z,m=e.x-o.x,x=e.y-o.y,_=e.z-o.z,p=n.x-o.x,y=n.y-o.y,T=n.z-o.z,b=Math.abs(l),I=Math.abs(c),w=Math.abs(u),g,S,F,C,L,k,z,P,V,H,B,q;if(b>=I&&b>=w?(F=l,k=d,V=m,q=p,l>=0?(g=c,S=u,C=h,L=f,z=x,P=_,H=y,B=T):(g=u,S=c,C=f,L=h,z=_,P=x,H=T,B=y)):I>=w?(F=c,k=h,V=x,q=y,c>=0?(g=u,S=l,C=f,L=d,z=_,P=m,H=T,B=p):(g=l,S=u,C=d,L=f,z=m,P=_,H=p,B=T)):(F=u,k=f,V=_,q=T,u>=0?(g=l,S=c,C=d,L=h,z=m,P=x,H=p,B=y):(g=c,S=l,C=h,L=d,z=x,P=m,H=y,B=p)),F===0)return null;let X=g/F,K=S/F,$=1/F,ot=C-X*k,at=L-K*k,Q=z-X*V,xt=P-K*V,Z=H-X*q,nt=B-K*q,st=Z*xt-nt*Q,gt=ot*nt-at*Z,Ct=Q*at-xt*ot;if(s){if(st<0||gt<0||Ct<0)return null}else if((st<0||gt<0||Ct<0)&&(st>0||gt>0||Ct>0))return null;let St=st+gt+Ct;if(St===0)return null;let ne=$*(st*k+gt*V+Ct*q);return(St>0?ne<0:ne>0)?null:this.at(ne/St,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},zs=class extends vs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new xe(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new xs,this.combine=oc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},Qf=new Fe,hr=new dr,hl=new ys,tp=new J,ul=new J,dl=new J,fl=new J,uu=new J,pl=new J,ep=new J,ml=new J,gn=class extends Fn{constructor(t=new Zn,e=new zs){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){pl.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let u=a[l],d=r[l];u!==0&&(uu.fromBufferAttribute(d,t),o?pl.addScaledVector(uu,u):pl.addScaledVector(uu.sub(e),u))}e.add(pl)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),hl.copy(n.boundingSphere),hl.applyMatrix4(r),hr.copy(t.ray).recast(t.near),!(hl.containsPoint(hr.origin)===!1&&(hr.intersectSphere(hl,tp)===null||hr.origin.distanceToSquared(tp)>(t.far-t.near)**2))&&(Qf.copy(r).invert(),hr.copy(t.ray).applyMatrix4(Qf),!(n.boundingBox!==null&&hr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,hr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,u=r.attributes.uv1,d=r.attributes.normal,h=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let m=0,x=h.length;m<x;m++){let _=h[m],p=o[_.materialIndex],y=Math.max(_.start,f.start),T=Math.min(a.count,Math.min(_.start+_.count,f.start+f.count));for(let b=y,I=T;b<I;b+=3){let w=a.getX(b),g=a.getX(b+1),S=a.getX(b+2);s=gl(this,p,t,n,c,u,d,w,g,S),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=_.materialIndex,e.push(s))}}else{let m=Math.max(0,f.start),x=Math.min(a.count,f.start+f.count);for(let _=m,p=x;_<p;_+=3){let y=a.getX(_),T=a.getX(_+1),b=a.getX(_+2);s=gl(this,o,t,n,c,u,d,y,T,b),s&&(s.faceIndex=Math.floor(_/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let m=0,x=h.length;m<x;m++){let _=h[m],p=o[_.materialIndex],y=Math.max(_.start,f.start),T=Math.min(l.count,Math.min(_.start+_.count,f.start+f.count));for(let b=y,I=T;b<I;b+=3){let w=b,g=b+1,S=b+2;s=gl(this,p,t,n,c,u,d,w,g,S),s&&(s.faceIndex=Math.floor(b/3),s.face.materialIndex=_.materialIndex,e.push(s))}}else{let m=Math.max(0,f.start),x=Math.min(l.count,f.start+f.count);for(let _=m,p=x;_<p;_+=3){let y=_,T=_+1,b=_+2;s=gl(this,o,t,n,c,u,d,y,T,b),s&&(s.faceIndex=Math.floor(_/3),e.push(s))}}}};function ex(i,t,e,n,s,r,o,a){let l;if(t.side===Un?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===qs,a),l===null)return null;ml.copy(a),ml.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(ml);return c<e.near||c>e.far?null:{distance:c,point:ml.clone(),object:i}}function gl(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,ul),i.getVertexPosition(l,dl),i.getVertexPosition(c,fl);let u=ex(i,t,e,n,ul,dl,fl,ep);if(u){let d=new J;ms.getBarycoord(ep,ul,dl,fl,d),s&&(u.uv=ms.getInterpolatedAttribute(s,a,l,c,d,new ce)),r&&(u.uv1=ms.getInterpolatedAttribute(r,a,l,c,d,new ce)),o&&(u.normal=ms.getInterpolatedAttribute(o,a,l,c,d,new J),u.normal.dot(n.direction)>0&&u.normal.multiplyScalar(-1));let h={a,b:l,c,normal:new J,materialIndex:0};ms.getNormal(ul,dl,fl,h.normal),u.face=h,u.barycoord=d}return u}var ca=class extends Kn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=In,u=In,d,h){super(null,o,a,l,c,u,s,r,d,h),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var fr=class extends Ii{constructor(t,e,n,s=1){super(t,e,n),this.isInstancedBufferAttribute=!0,this.meshPerAttribute=s}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}toJSON(){let t=super.toJSON();return t.meshPerAttribute=this.meshPerAttribute,t.isInstancedBufferAttribute=!0,t}},jr=new Fe,np=new Fe,_l=[],ip=new Ji,nx=new Fe,Zo=new gn,Jo=new ys,ha=class extends gn{constructor(t,e,n){super(t,e),this.isInstancedMesh=!0,this.instanceMatrix=new fr(new Float32Array(n*16),16),this.instanceColor=null,this.morphTexture=null,this.count=n,this.boundingBox=null,this.boundingSphere=null;for(let s=0;s<n;s++)this.setMatrixAt(s,nx)}computeBoundingBox(){let t=this.geometry,e=this.count;this.boundingBox===null&&(this.boundingBox=new Ji),t.boundingBox===null&&t.computeBoundingBox(),this.boundingBox.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,jr),ip.copy(t.boundingBox).applyMatrix4(jr),this.boundingBox.union(ip)}computeBoundingSphere(){let t=this.geometry,e=this.count;this.boundingSphere===null&&(this.boundingSphere=new ys),t.boundingSphere===null&&t.computeBoundingSphere(),this.boundingSphere.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,jr),Jo.copy(t.boundingSphere).applyMatrix4(jr),this.boundingSphere.union(Jo)}copy(t,e){return super.copy(t,e),this.instanceMatrix.copy(t.instanceMatrix),this.morphTexture=t.morphTexture!==null?t.morphTexture.clone():null,this.instanceColor=t.instanceColor!==null?t.instanceColor.clone():null,this.count=t.count,this.boundingBox=t.boundingBox!==null?t.boundingBox.clone():null,this.boundingSphere=t.boundingSphere!==null?t.boundingSphere.clone():null,this}getColorAt(t,e){return this.instanceColor===null?e.setRGB(1,1,1):e.fromArray(this.instanceColor.array,t*3)}getMatrixAt(t,e){return e.fromArray(this.instanceMatrix.array,t*16)}getMorphAt(t,e){let n=e.morphTargetInfluences,s=this.morphTexture.source.data.data,r=n.length+1,o=t*r+1;for(let a=0;a<n.length;a++)n[a]=s[o+a]}raycast(t,e){let n=this.matrixWorld,s=this.count;if(Zo.geometry=this.geometry,Zo.material=this.material,Zo.material!==void 0&&(this.boundingSphere===null&&this.computeBoundingSphere(),Jo.copy(this.boundingSphere),Jo.applyMatrix4(n),t.ray.intersectsSphere(Jo)!==!1))for(let r=0;r<s;r++){this.getMatrixAt(r,jr),np.multiplyMatrices(n,jr),Zo.matrixWorld=np,Zo.raycast(t,_l);for(let o=0,a=_l.length;o<a;o++){let l=_l[o];l.instanceId=r,l.object=this,e.push(l)}_l.length=0}}setColorAt(t,e){return this.instanceColor===null&&(this.instanceColor=new fr(new Float32Array(this.instanceMatrix.count*3).fill(1),3)),e.toArray(this.instanceColor.array,t*3),this}setMatrixAt(t,e){return e.toArray(this.instanceMatrix.array,t*16),this}setMorphAt(t,e){let n=e.morphTargetInfluences,s=n.length+1;this.morphTexture===null&&(this.morphTexture=new ca(new Float32Array(s*this.count),s,this.count,fc,Mi));let r=this.morphTexture.source.data.data,o=0;for(let c=0;c<n.length;c++)o+=n[c];let a=this.geometry.morphTargetsRelative?1:1-o,l=s*t;return r[l]=a,r.set(n,l+1),this}updateMorphTargets(){}dispose(){super.dispose(),this.instanceMatrix.dispose(),this.instanceColor!==null&&this.instanceColor.dispose(),this.morphTexture!==null&&(this.morphTexture.dispose(),this.morphTexture=null)}},ur=new ys,ix=new ce(.5,.5),xl=new J,Vs=class{constructor(t=new li,e=new li,n=new li,s=new li,r=new li,o=new li){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=vi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],u=r[4],d=r[5],h=r[6],f=r[7],m=r[8],x=r[9],_=r[10],p=r[11],y=r[12],T=r[13],b=r[14],I=r[15];if(s[0].setComponents(c-o,f-u,p-m,I-y).normalize(),s[1].setComponents(c+o,f+u,p+m,I+y).normalize(),s[2].setComponents(c+a,f+d,p+x,I+T).normalize(),s[3].setComponents(c-a,f-d,p-x,I-T).normalize(),n)s[4].setComponents(l,h,_,b).normalize(),s[5].setComponents(c-l,f-h,p-_,I-b).normalize();else if(s[4].setComponents(c-l,f-h,p-_,I-b).normalize(),e===vi)s[5].setComponents(c+l,f+h,p+_,I+b).normalize();else if(e===oo)s[5].setComponents(l,h,_,b).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),ur.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),ur.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(ur)}intersectsSprite(t){ur.center.set(0,0,0);let e=ix.distanceTo(t.center);return ur.radius=.7071067811865476+e,ur.applyMatrix4(t.matrixWorld),this.intersectsSphere(ur)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(xl.x=s.normal.x>0?t.max.x:t.min.x,xl.y=s.normal.y>0?t.max.y:t.min.y,xl.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(xl)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},sp=new Fe,Vl=class i{constructor(){this.coordinateSystem=vi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];sp.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Vs),n[s].setFromProjectionMatrix(sp,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new Vs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var uo=class extends vs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new xe(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Hl=new J,Gl=new J,rp=new Fe,Ko=new dr,yl=new ys,du=new J,op=new J,Wl=class extends Fn{constructor(t=new Zn,e=new uo){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Hl.fromBufferAttribute(e,s-1),Gl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Hl.distanceTo(Gl);t.setAttribute("lineDistance",new Ye(n,1))}else re("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),yl.copy(n.boundingSphere),yl.applyMatrix4(s),yl.radius+=r,t.ray.intersectsSphere(yl)===!1)return;rp.copy(s).invert(),Ko.copy(t.ray).applyMatrix4(rp);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,u=n.index,h=n.attributes.position;if(u!==null){let f=Math.max(0,o.start),m=Math.min(u.count,o.start+o.count);for(let x=f,_=m-1;x<_;x+=c){let p=u.getX(x),y=u.getX(x+1),T=vl(this,t,Ko,l,p,y,x);T&&e.push(T)}if(this.isLineLoop){let x=u.getX(m-1),_=u.getX(f),p=vl(this,t,Ko,l,x,_,m-1);p&&e.push(p)}}else{let f=Math.max(0,o.start),m=Math.min(h.count,o.start+o.count);for(let x=f,_=m-1;x<_;x+=c){let p=vl(this,t,Ko,l,x,x+1,x);p&&e.push(p)}if(this.isLineLoop){let x=vl(this,t,Ko,l,m-1,f,m-1);x&&e.push(x)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function vl(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Hl.fromBufferAttribute(a,s),Gl.fromBufferAttribute(a,r),e.distanceSqToSegment(Hl,Gl,du,op)>n)return;du.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(du);if(!(c<t.near||c>t.far))return{distance:c,point:op.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var ap=new J,lp=new J,ua=class extends Wl{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)ap.fromBufferAttribute(e,s),lp.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+ap.distanceTo(lp);t.setAttribute("lineDistance",new Ye(n,1))}else re("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var da=class extends Kn{constructor(t=[],e=_r,n,s,r,o,a,l,c,u){super(t,e,n,s,r,o,a,l,c,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var Ms=class extends Kn{constructor(t,e,n=Di,s,r,o,a=In,l=In,c,u=_s,d=1){if(u!==_s&&u!==ws)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let h={width:t,height:e,depth:d};super(h,s,r,o,a,l,u,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new co(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},fa=class extends Ms{constructor(t,e=Di,n=_r,s,r,o=In,a=In,l,c=_s){let u={width:t,height:t,depth:1},d=[u,u,u,u,u,u];super(t,t,e,n,s,r,o,a,l,c),this.image=d,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},pa=class extends Kn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},Ss=class i extends Zn{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],u=[],d=[],h=0,f=0;m("z","y","x",-1,-1,n,e,t,o,r,0),m("z","y","x",1,-1,n,e,-t,o,r,1),m("x","z","y",1,1,t,n,e,s,o,2),m("x","z","y",1,-1,t,n,-e,s,o,3),m("x","y","z",1,-1,t,e,n,s,r,4),m("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Ye(c,3)),this.setAttribute("normal",new Ye(u,3)),this.setAttribute("uv",new Ye(d,2));function m(x,_,p,y,T,b,I,w,g,S,F){let C=b/g,L=I/S,k=b/2,z=I/2,P=w/2,V=g+1,H=S+1,B=0,q=0,X=new J;for(let K=0;K<H;K++){let $=K*L-z;for(let ot=0;ot<V;ot++){let at=ot*C-k;X[x]=at*y,X[_]=$*T,X[p]=P,c.push(X.x,X.y,X.z),X[x]=0,X[_]=0,X[p]=w>0?1:-1,u.push(X.x,X.y,X.z),d.push(ot/g),d.push(1-K/S),B+=1}}for(let K=0;K<S;K++)for(let $=0;$<g;$++){let ot=h+$+V*K,at=h+$+V*(K+1),Q=h+($+1)+V*(K+1),xt=h+($+1)+V*K;l.push(ot,at,xt),l.push(at,Q,xt),q+=6}a.addGroup(f,q,F),f+=q,h+=B}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}},ma=class i extends Zn{constructor(t=1,e=1,n=4,s=8,r=1){super(),this.type="CapsuleGeometry",this.parameters={radius:t,height:e,capSegments:n,radialSegments:s,heightSegments:r},e=Math.max(0,e),n=Math.max(1,Math.floor(n)),s=Math.max(3,Math.floor(s)),r=Math.max(1,Math.floor(r));let o=[],a=[],l=[],c=[],u=e/2,d=Math.PI/2*t,h=e,f=2*d+h,m=n*2+r,x=s+1,_=new J,p=new J;for(let y=0;y<=m;y++){let T=0,b=0,I=0,w=0;if(y<=n){let F=y/n,C=F*Math.PI/2;b=-u-t*Math.cos(C),I=t*Math.sin(C),w=-t*Math.cos(C),T=F*d}else if(y<=n+r){let F=(y-n)/r;b=-u+F*e,I=t,w=0,T=d+F*h}else{let F=(y-n-r)/n,C=F*Math.PI/2;b=u+t*Math.sin(C),I=t*Math.cos(C),w=t*Math.sin(C),T=d+h+F*d}let g=Math.max(0,Math.min(1,T/f)),S=0;y===0?S=.5/s:y===m&&(S=-.5/s);for(let F=0;F<=s;F++){let C=F/s,L=C*Math.PI*2,k=Math.sin(L),z=Math.cos(L);p.x=-I*z,p.y=b,p.z=I*k,a.push(p.x,p.y,p.z),_.set(-I*z,w,I*k),_.normalize(),l.push(_.x,_.y,_.z),c.push(C+S,g)}if(y>0){let F=(y-1)*x;for(let C=0;C<s;C++){let L=F+C,k=F+C+1,z=y*x+C,P=y*x+C+1;o.push(L,k,z),o.push(k,P,z)}}}this.setIndex(o),this.setAttribute("position",new Ye(a,3)),this.setAttribute("normal",new Ye(l,3)),this.setAttribute("uv",new Ye(c,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.height,t.capSegments,t.radialSegments,t.heightSegments)}};var Ki=class i extends Zn{constructor(t=1,e=1,n=1,s=32,r=1,o=!1,a=0,l=Math.PI*2){super(),this.type="CylinderGeometry",this.parameters={radiusTop:t,radiusBottom:e,height:n,radialSegments:s,heightSegments:r,openEnded:o,thetaStart:a,thetaLength:l};let c=this;s=Math.floor(s),r=Math.floor(r);let u=[],d=[],h=[],f=[],m=0,x=[],_=n/2,p=0;y(),o===!1&&(t>0&&T(!0),e>0&&T(!1)),this.setIndex(u),this.setAttribute("position",new Ye(d,3)),this.setAttribute("normal",new Ye(h,3)),this.setAttribute("uv",new Ye(f,2));function y(){let b=new J,I=new J,w=0,g=(e-t)/n;for(let S=0;S<=r;S++){let F=[],C=S/r,L=C*(e-t)+t;for(let k=0;k<=s;k++){let z=k/s,P=z*l+a,V=Math.sin(P),H=Math.cos(P);I.x=L*V,I.y=-C*n+_,I.z=L*H,d.push(I.x,I.y,I.z),b.set(V,g,H).normalize(),h.push(b.x,b.y,b.z),f.push(z,1-C),F.push(m++)}x.push(F)}for(let S=0;S<s;S++)for(let F=0;F<r;F++){let C=x[F][S],L=x[F+1][S],k=x[F+1][S+1],z=x[F][S+1];(t>0||F!==0)&&(u.push(C,L,z),w+=3),(e>0||F!==r-1)&&(u.push(L,k,z),w+=3)}c.addGroup(p,w,0),p+=w}function T(b){let I=m,w=new ce,g=new J,S=0,F=b===!0?t:e,C=b===!0?1:-1;for(let k=1;k<=s;k++)d.push(0,_*C,0),h.push(0,C,0),f.push(.5,.5),m++;let L=m;for(let k=0;k<=s;k++){let P=k/s*l+a,V=Math.cos(P),H=Math.sin(P);g.x=F*H,g.y=_*C,g.z=F*V,d.push(g.x,g.y,g.z),h.push(0,C,0),w.x=V*.5+.5,w.y=H*.5*C+.5,f.push(w.x,w.y),m++}for(let k=0;k<s;k++){let z=I+k,P=L+k;b===!0?u.push(P,P+1,z):u.push(P+1,P,z),S+=3}c.addGroup(p,S,b===!0?1:2),p+=S}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radiusTop,t.radiusBottom,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}},ga=class i extends Ki{constructor(t=1,e=1,n=32,s=1,r=!1,o=0,a=Math.PI*2){super(0,t,e,n,s,r,o,a),this.type="ConeGeometry",this.parameters={radius:t,height:e,radialSegments:n,heightSegments:s,openEnded:r,thetaStart:o,thetaLength:a}}static fromJSON(t){return new i(t.radius,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}};var Ml=new J,Sl=new J,fu=new J,bl=new ms,_a=class extends Zn{constructor(t=null,e=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:e},t!==null){let s=Math.pow(10,4),r=Math.cos(no*e),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],u=["a","b","c"],d=new Array(3),h=new Map,f=[];for(let m=0;m<l;m+=3){o?(c[0]=o.getX(m),c[1]=o.getX(m+1),c[2]=o.getX(m+2)):(c[0]=m,c[1]=m+1,c[2]=m+2);let{a:x,b:_,c:p}=bl;if(x.fromBufferAttribute(a,c[0]),_.fromBufferAttribute(a,c[1]),p.fromBufferAttribute(a,c[2]),bl.getNormal(fu),d[0]=`${Math.round(x.x*s)},${Math.round(x.y*s)},${Math.round(x.z*s)}`,d[1]=`${Math.round(_.x*s)},${Math.round(_.y*s)},${Math.round(_.z*s)}`,d[2]=`${Math.round(p.x*s)},${Math.round(p.y*s)},${Math.round(p.z*s)}`,!(d[0]===d[1]||d[1]===d[2]||d[2]===d[0]))for(let y=0;y<3;y++){let T=(y+1)%3,b=d[y],I=d[T],w=bl[u[y]],g=bl[u[T]],S=`${b}_${I}`,F=`${I}_${b}`,C=h.get(F);C?(fu.dot(C.normal)<=r&&(f.push(w.x,w.y,w.z),f.push(g.x,g.y,g.z)),h.set(F,null)):h.has(S)||h.set(S,{index0:c[y],index1:c[T],normal:fu.clone()})}}for(let m of h.values())if(m){let{index0:x,index1:_}=m;Ml.fromBufferAttribute(a,x),Sl.fromBufferAttribute(a,_),f.push(Ml.x,Ml.y,Ml.z),f.push(Sl.x,Sl.y,Sl.z)}this.setAttribute("position",new Ye(f,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var xa=class i extends Zn{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,u=l+1,d=t/a,h=e/l,f=[],m=[],x=[],_=[];for(let p=0;p<u;p++){let y=p*h-o;for(let T=0;T<c;T++){let b=T*d-r;m.push(b,-y,0),x.push(0,0,1),_.push(T/a),_.push(1-p/l)}}for(let p=0;p<l;p++)for(let y=0;y<a;y++){let T=y+c*p,b=y+c*(p+1),I=y+1+c*(p+1),w=y+1+c*p;f.push(T,b,w),f.push(b,I,w)}this.setIndex(f),this.setAttribute("position",new Ye(m,3)),this.setAttribute("normal",new Ye(x,3)),this.setAttribute("uv",new Ye(_,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var fo=class i extends Zn{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,u=[],d=new J,h=new J,f=[],m=[],x=[],_=[];for(let p=0;p<=n;p++){let y=[],T=p/n,b=o+T*a,I=t*Math.cos(b),w=Math.sqrt(t*t-I*I),g=0;p===0&&o===0?g=.5/e:p===n&&l===Math.PI&&(g=-.5/e);for(let S=0;S<=e;S++){let F=S/e,C=s+F*r;d.x=-w*Math.cos(C),d.y=I,d.z=w*Math.sin(C),m.push(d.x,d.y,d.z),h.copy(d).normalize(),x.push(h.x,h.y,h.z),_.push(F+g,1-T),y.push(c++)}u.push(y)}for(let p=0;p<n;p++)for(let y=0;y<e;y++){let T=u[p][y+1],b=u[p][y],I=u[p+1][y],w=u[p+1][y+1];(p!==0||o>0)&&f.push(T,b,w),(p!==n-1||l<Math.PI)&&f.push(b,I,w)}this.setIndex(f),this.setAttribute("position",new Ye(m,3)),this.setAttribute("normal",new Ye(x,3)),this.setAttribute("uv",new Ye(_,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function yr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(cp(s))s.isRenderTargetTexture?(re("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(cp(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function zn(i){let t={};for(let e=0;e<i.length;e++){let n=yr(i[e]);for(let s in n)t[s]=n[s]}return t}function cp(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function sx(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function Ku(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:Re.workingColorSpace}var nm={clone:yr,merge:zn},rx=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,ox=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,ji=class extends vs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=rx,this.fragmentShader=ox,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=yr(t.uniforms),this.uniformsGroups=sx(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new xe().setHex(s.value);break;case"v2":this.uniforms[n].value=new ce().fromArray(s.value);break;case"v3":this.uniforms[n].value=new J().fromArray(s.value);break;case"v4":this.uniforms[n].value=new nn().fromArray(s.value);break;case"m3":this.uniforms[n].value=new de().fromArray(s.value);break;case"m4":this.uniforms[n].value=new Fe().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},$l=class extends ji{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var ya=class extends vs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new xe(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new xe(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=qc,this.normalScale=new ce(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new xs,this.combine=oc,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Xl=class extends vs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=zp,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},ql=class extends vs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Qr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function wl(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Hs=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Yl=class extends Hs{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:gu,endingEnd:gu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case _u:r=t,a=2*e-n;break;case xu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case _u:o=t,l=2*n-e;break;case xu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,u=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*u,this._offsetNext=o*u}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this._offsetPrev,d=this._offsetNext,h=this._weightPrev,f=this._weightNext,m=(n-e)/(s-e),x=m*m,_=x*m,p=-h*_+2*h*x-h*m,y=(1+h)*_+(-1.5-2*h)*x+(-.5+h)*m+1,T=(-1-f)*_+(1.5+f)*x+.5*m,b=f*_-f*x;for(let I=0;I!==a;++I)r[I]=p*o[u+I]+y*o[c+I]+T*o[l+I]+b*o[d+I];return r}},Zl=class extends Hs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=(n-e)/(s-e),d=1-u;for(let h=0;h!==a;++h)r[h]=o[c+h]*d+o[l+h]*u;return r}},Jl=class extends Hs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},Kl=class extends Hs{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this.inTangents,d=this.outTangents;if(!u||!d){let m=(n-e)/(s-e),x=1-m;for(let _=0;_!==a;++_)r[_]=o[c+_]*x+o[l+_]*m;return r}let h=a*2,f=t-1;for(let m=0;m!==a;++m){let x=o[c+m],_=o[l+m],p=f*h+m*2,y=d[p],T=d[p+1],b=t*h+m*2,I=u[b],w=u[b+1],g=lx(n,e,y,I,s);r[m]=im(g,x,T,w,_)}return r}};function im(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function ax(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function lx(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=im(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=ax(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var ui=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Qr(e,this.TimeBufferType),this.values=Qr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Qr(t.times,Array),values:Qr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),wl(t.settings)&&(n.settings={inTangents:Qr(t.settings.inTangents,Array),outTangents:Qr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new Jl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Zl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Yl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new Kl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case ta:e=this.InterpolantFactoryMethodDiscrete;break;case Ol:e=this.InterpolantFactoryMethodLinear;break;case Al:e=this.InterpolantFactoryMethodSmooth;break;case mu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return re("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return ta;case this.InterpolantFactoryMethodLinear:return Ol;case this.InterpolantFactoryMethodSmooth:return Al;case this.InterpolantFactoryMethodBezier:return mu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;wl(this.settings)&&(hp(this.settings.inTangents,t),hp(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;wl(this.settings)&&(up(this.settings.inTangents,t),up(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(ue("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ue("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){ue("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){ue("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&b_(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){ue("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Al,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],u=t[a+1];if(c!==u&&(a!==1||c!==t[0]))if(s)l=!0;else{let d=a*n,h=d-n,f=d+n;for(let m=0;m!==n;++m){let x=e[d+m];if(x!==e[h+m]||x!==e[f+m]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let d=a*n,h=o*n;for(let f=0;f!==n;++f)e[h+f]=e[d+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,wl(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function hp(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function up(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}ui.prototype.ValueTypeName="";ui.prototype.TimeBufferType=Float32Array;ui.prototype.ValueBufferType=Float32Array;ui.prototype.DefaultInterpolation=Ol;var Gs=class extends ui{constructor(t,e,n){super(t,e,n)}};Gs.prototype.ValueTypeName="bool";Gs.prototype.ValueBufferType=Array;Gs.prototype.DefaultInterpolation=ta;Gs.prototype.InterpolantFactoryMethodLinear=void 0;Gs.prototype.InterpolantFactoryMethodSmooth=void 0;var jl=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}};jl.prototype.ValueTypeName="color";var Ql=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}};Ql.prototype.ValueTypeName="number";var tc=class extends Hs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let u=c+a;c!==u;c+=4)Nn.slerpFlat(r,0,o,c-a,o,c,l);return r}},va=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new tc(this.times,this.values,this.getValueSize(),t)}};va.prototype.ValueTypeName="quaternion";va.prototype.InterpolantFactoryMethodSmooth=void 0;var Ws=class extends ui{constructor(t,e,n){super(t,e,n)}};Ws.prototype.ValueTypeName="string";Ws.prototype.ValueBufferType=Array;Ws.prototype.DefaultInterpolation=ta;Ws.prototype.InterpolantFactoryMethodLinear=void 0;Ws.prototype.InterpolantFactoryMethodSmooth=void 0;var ec=class extends ui{constructor(t,e,n,s){super(t,e,n,s)}};ec.prototype.ValueTypeName="vector";var nc=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(u){a++,r===!1&&s.onStart!==void 0&&s.onStart(u,o,a),r=!0},this.itemEnd=function(u){o++,s.onProgress!==void 0&&s.onProgress(u,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(u){s.onError!==void 0&&s.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),l?l(u):u},this.setURLModifier=function(u){return l=u,this},this.addHandler=function(u,d){return c.push(u,d),this},this.removeHandler=function(u){let d=c.indexOf(u);return d!==-1&&c.splice(d,2),this},this.getHandler=function(u){for(let d=0,h=c.length;d<h;d+=2){let f=c[d],m=c[d+1];if(f.global&&(f.lastIndex=0),f.test(u))return m}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},sm=new nc,ic=class{constructor(t){this.manager=t!==void 0?t:sm,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};ic.DEFAULT_MATERIAL_NAME="__DEFAULT";var Ma=class extends Fn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new xe(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}},Sa=class extends Ma{constructor(t,e,n){super(t,n),this.isHemisphereLight=!0,this.type="HemisphereLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.groundColor=new xe(e)}copy(t,e){return super.copy(t,e),this.groundColor.copy(t.groundColor),this}toJSON(t){let e=super.toJSON(t);return e.object.groundColor=this.groundColor.getHex(),e}},pu=new Fe,dp=new J,fp=new J,sc=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new ce(512,512),this.mapType=jn,this.map=null,this.mapPass=null,this.matrix=new Fe,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Vs,this._frameExtents=new ce(1,1),this._viewportCount=1,this._viewports=[new nn(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;dp.setFromMatrixPosition(t.matrixWorld),e.position.copy(dp),fp.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(fp),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){pu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(pu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===oo||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(pu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},El=new J,Tl=new Nn,qi=new J,ba=class extends Fn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Fe,this.projectionMatrix=new Fe,this.projectionMatrixInverse=new Fe,this.coordinateSystem=vi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(El,Tl,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(El,Tl,qi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(El,Tl,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(El,Tl,qi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},ks=new J,pp=new ce,mp=new ce,ci=class extends ba{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=lo*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(no*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return lo*2*Math.atan(Math.tan(no*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){ks.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(ks.x,ks.y).multiplyScalar(-t/ks.z),ks.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(ks.x,ks.y).multiplyScalar(-t/ks.z)}getViewSize(t,e){return this.getViewBounds(t,pp,mp),e.subVectors(mp,pp)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(no*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var pr=class extends ba{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=u*this.view.offsetY,l=a-u*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},yu=class extends sc{constructor(){super(new pr(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},wa=class extends Ma{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.target=new Fn,this.shadow=new yu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}};var to=-90,eo=1,po=class extends Fn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new ci(to,eo,t,e);s.layers=this.layers,this.add(s);let r=new ci(to,eo,t,e);r.layers=this.layers,this.add(r);let o=new ci(to,eo,t,e);o.layers=this.layers,this.add(o);let a=new ci(to,eo,t,e);a.layers=this.layers,this.add(a);let l=new ci(to,eo,t,e);l.layers=this.layers,this.add(l);let c=new ci(to,eo,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===vi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===oo)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,u]=this.children,d=t.getRenderTarget(),h=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),m=t.xr.enabled;t.xr.enabled=!1;let x=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let _=!1;t.isWebGLRenderer===!0?_=t.state.buffers.depth.getReversed():_=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),_&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),_&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),_&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),_&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),_&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=x,t.setRenderTarget(n,5,s),_&&t.autoClear===!1&&t.clearDepth(),t.render(e,u),t.setRenderTarget(d,h,f),t.xr.enabled=m,n.texture.needsPMREMUpdate=!0}},rc=class extends ci{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var ju="\\[\\]\\.:\\/",cx=new RegExp("["+ju+"]","g"),Qu="[^"+ju+"]",hx="[^"+ju.replace("\\.","")+"]",ux=/((?:WC+[\/:])*)/.source.replace("WC",Qu),dx=/(WCOD+)?/.source.replace("WCOD",hx),fx=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Qu),px=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Qu),mx=new RegExp("^"+ux+dx+fx+px+"$"),gx=["material","materials","bones","map"],vu=class{constructor(t,e,n){let s=n||Qe.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},Qe=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(cx,"")}static parseTrackName(t){let e=mx.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);gx.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){re("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){ue("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){ue("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){ue("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===c){c=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){ue("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){ue("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){ue("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){ue("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;ue("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){ue("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){ue("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Qe.Composite=vu;Qe.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Qe.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Qe.prototype.GetterByBindingType=[Qe.prototype._getValue_direct,Qe.prototype._getValue_array,Qe.prototype._getValue_arrayElement,Qe.prototype._getValue_toArray];Qe.prototype.SetterByBindingTypeAndVersioning=[[Qe.prototype._setValue_direct,Qe.prototype._setValue_direct_setNeedsUpdate,Qe.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Qe.prototype._setValue_array,Qe.prototype._setValue_array_setNeedsUpdate,Qe.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Qe.prototype._setValue_arrayElement,Qe.prototype._setValue_arrayElement_setNeedsUpdate,Qe.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Qe.prototype._setValue_fromArray,Qe.prototype._setValue_fromArray_setNeedsUpdate,Qe.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var wE=new Float32Array(1);var mo=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=we(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(we(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Mu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var Ea=class extends Li{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function td(i,t,e,n){let s=_x(n);switch(e){case zu:return i*t;case fc:return i*t/s.components*s.byteLength;case pc:return i*t/s.components*s.byteLength;case Ys:return i*t*2/s.components*s.byteLength;case mc:return i*t*2/s.components*s.byteLength;case Vu:return i*t*3/s.components*s.byteLength;case Fi:return i*t*4/s.components*s.byteLength;case gc:return i*t*4/s.components*s.byteLength;case Ra:case Ca:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Pa:case Ia:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case xc:case vc:return Math.max(i,16)*Math.max(t,8)/4;case _c:case yc:return Math.max(i,8)*Math.max(t,8)/2;case Mc:case Sc:case wc:case Ec:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case bc:case La:case Tc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Ac:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Rc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case Cc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case Pc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Ic:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Lc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Dc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Nc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Fc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Uc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Oc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Bc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case kc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case zc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Vc:case Hc:case Gc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case Wc:case $c:return Math.ceil(i/4)*Math.ceil(t/4)*8;case Da:case Xc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function _x(i){switch(i){case jn:case Uu:return{byteLength:1,components:1};case yo:case Ou:case Ni:return{byteLength:2,components:1};case uc:case dc:return{byteLength:2,components:4};case Di:case hc:case Mi:return{byteLength:4,components:1};case Bu:case ku:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?re("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function Tm(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function yx(i){let t=new WeakMap;function e(a,l){let c=a.array,u=a.usage,d=c.byteLength,h=i.createBuffer();i.bindBuffer(l,h),i.bufferData(l,c,u),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:h,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:d}}function n(a,l,c){let u=l.array,d=l.updateRanges;if(i.bindBuffer(c,a),d.length===0)i.bufferSubData(c,0,u);else{d.sort((f,m)=>f.start-m.start);let h=0;for(let f=1;f<d.length;f++){let m=d[h],x=d[f];x.start<=m.start+m.count+1?m.count=Math.max(m.count,x.start+x.count-m.start):(++h,d[h]=x)}d.length=h+1;for(let f=0,m=d.length;f<m;f++){let x=d[f];i.bufferSubData(c,x.start*u.BYTES_PER_ELEMENT,u,x.start,x.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var vx=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Mx=`#ifdef USE_ALPHAHASH
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
#endif`,Sx=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,bx=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,wx=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,Ex=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,Tx=`#ifdef USE_AOMAP
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
#endif`,Ax=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,Rx=`#ifdef USE_BATCHING
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
#endif`,Cx=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,Px=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,Ix=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,Lx=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,Dx=`#ifdef USE_IRIDESCENCE
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
#endif`,Nx=`#ifdef USE_BUMPMAP
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
#endif`,Fx=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,Ux=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Ox=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Bx=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,kx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,zx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Vx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Hx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,Gx=`#define PI 3.141592653589793
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
} // validated`,Wx=`vec3 transformedNormal = objectNormal;
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
#endif`,$x=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Xx=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,qx=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Yx=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Zx="gl_FragColor = linearToOutputTexel( gl_FragColor );",Jx=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Kx=`#ifdef USE_ENVMAP
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
#endif`,jx=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Qx=`#ifdef USE_ENVMAP
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
#endif`,ty=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,ey=`#ifdef USE_ENVMAP
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
#endif`,ny=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,iy=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,sy=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,ry=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,oy=`#ifdef USE_GRADIENTMAP
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
}`,ay=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,ly=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,cy=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,hy=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,uy=`#ifdef USE_ENVMAP
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
#endif`,dy=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,fy=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,py=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,my=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,gy=`PhysicalMaterial material;
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
#endif`,_y=`uniform sampler2D dfgLUT;
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
}`,xy=`
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
#endif`,yy=`#if defined( RE_IndirectDiffuse )
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
#endif`,vy=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,My=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,Sy=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,by=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,wy=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Ey=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Ty=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Ay=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,Ry=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,Cy=`#if defined( USE_POINTS_UV )
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
#endif`,Py=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,Iy=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Ly=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Dy=`#if defined( USE_MORPHCOLORS )
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
#endif`,Ny=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Fy=`#ifdef USE_MORPHTARGETS
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
#endif`,Uy=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Oy=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,By=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,ky=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,zy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Vy=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Hy=`#ifdef USE_NORMALMAP
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
#endif`,Gy=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Wy=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,$y=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Xy=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,qy=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Yy=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,Zy=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Jy=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,Ky=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,jy=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Qy=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,tv=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,ev=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,nv=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,iv=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,sv=`float getShadowMask() {
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
}`,rv=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,ov=`#ifdef USE_SKINNING
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
#endif`,av=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,lv=`#ifdef USE_SKINNING
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
#endif`,cv=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,hv=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,uv=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,dv=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,fv=`#ifdef USE_TRANSMISSION
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
#endif`,pv=`#ifdef USE_TRANSMISSION
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
#endif`,mv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,gv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,_v=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,xv=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,yv=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,vv=`uniform sampler2D t2D;
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
}`,Mv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Sv=`uniform float backgroundBlurriness;
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
}`,bv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,wv=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Ev=`#include <common>
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
}`,Tv=`#if DEPTH_PACKING == 3200
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
}`,Av=`#define DISTANCE
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
}`,Rv=`#define DISTANCE
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
}`,Cv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,Pv=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Iv=`uniform float scale;
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
}`,Lv=`uniform vec3 diffuse;
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
}`,Dv=`#include <common>
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
}`,Nv=`uniform vec3 diffuse;
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
}`,Fv=`#define LAMBERT
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
}`,Uv=`#define LAMBERT
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
}`,Ov=`#define MATCAP
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
}`,Bv=`#define MATCAP
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
}`,kv=`#define NORMAL
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
}`,zv=`#define NORMAL
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
}`,Vv=`#define PHONG
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
}`,Hv=`#define PHONG
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
}`,Gv=`#define STANDARD
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
}`,Wv=`#define STANDARD
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
}`,$v=`#define TOON
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
}`,Xv=`#define TOON
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
}`,qv=`uniform float size;
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
}`,Yv=`uniform vec3 diffuse;
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
}`,Zv=`#include <common>
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
}`,Jv=`uniform vec3 color;
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
}`,Kv=`uniform float rotation;
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
}`,jv=`uniform vec3 diffuse;
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
}`,ve={alphahash_fragment:vx,alphahash_pars_fragment:Mx,alphamap_fragment:Sx,alphamap_pars_fragment:bx,alphatest_fragment:wx,alphatest_pars_fragment:Ex,aomap_fragment:Tx,aomap_pars_fragment:Ax,batching_pars_vertex:Rx,batching_vertex:Cx,begin_vertex:Px,beginnormal_vertex:Ix,bsdfs:Lx,iridescence_fragment:Dx,bumpmap_pars_fragment:Nx,clipping_planes_fragment:Fx,clipping_planes_pars_fragment:Ux,clipping_planes_pars_vertex:Ox,clipping_planes_vertex:Bx,color_fragment:kx,color_pars_fragment:zx,color_pars_vertex:Vx,color_vertex:Hx,common:Gx,defaultnormal_vertex:Wx,displacementmap_pars_vertex:$x,displacementmap_vertex:Xx,emissivemap_fragment:qx,emissivemap_pars_fragment:Yx,colorspace_fragment:Zx,colorspace_pars_fragment:Jx,envmap_fragment:Kx,envmap_common_pars_fragment:jx,envmap_pars_fragment:Qx,envmap_pars_vertex:ty,envmap_physical_pars_fragment:uy,envmap_vertex:ey,fog_vertex:ny,fog_pars_vertex:iy,fog_fragment:sy,fog_pars_fragment:ry,gradientmap_pars_fragment:oy,lightmap_pars_fragment:ay,lights_lambert_fragment:ly,lights_lambert_pars_fragment:cy,lights_pars_begin:hy,lights_toon_fragment:dy,lights_toon_pars_fragment:fy,lights_phong_fragment:py,lights_phong_pars_fragment:my,lights_physical_fragment:gy,lights_physical_pars_fragment:_y,lights_fragment_begin:xy,lights_fragment_maps:yy,lights_fragment_end:vy,lightprobes_pars_fragment:My,logdepthbuf_fragment:Sy,logdepthbuf_pars_fragment:by,logdepthbuf_pars_vertex:wy,logdepthbuf_vertex:Ey,map_fragment:Ty,map_pars_fragment:Ay,map_particle_fragment:Ry,map_particle_pars_fragment:Cy,metalnessmap_fragment:Py,metalnessmap_pars_fragment:Iy,morphinstance_vertex:Ly,morphcolor_vertex:Dy,morphnormal_vertex:Ny,morphtarget_pars_vertex:Fy,morphtarget_vertex:Uy,normal_fragment_begin:Oy,normal_fragment_maps:By,normal_pars_fragment:ky,normal_pars_vertex:zy,normal_vertex:Vy,normalmap_pars_fragment:Hy,clearcoat_normal_fragment_begin:Gy,clearcoat_normal_fragment_maps:Wy,clearcoat_pars_fragment:$y,iridescence_pars_fragment:Xy,opaque_fragment:qy,packing:Yy,premultiplied_alpha_fragment:Zy,project_vertex:Jy,dithering_fragment:Ky,dithering_pars_fragment:jy,roughnessmap_fragment:Qy,roughnessmap_pars_fragment:tv,shadowmap_pars_fragment:ev,shadowmap_pars_vertex:nv,shadowmap_vertex:iv,shadowmask_pars_fragment:sv,skinbase_vertex:rv,skinning_pars_vertex:ov,skinning_vertex:av,skinnormal_vertex:lv,specularmap_fragment:cv,specularmap_pars_fragment:hv,tonemapping_fragment:uv,tonemapping_pars_fragment:dv,transmission_fragment:fv,transmission_pars_fragment:pv,uv_pars_fragment:mv,uv_pars_vertex:gv,uv_vertex:_v,worldpos_vertex:xv,background_vert:yv,background_frag:vv,backgroundCube_vert:Mv,backgroundCube_frag:Sv,cube_vert:bv,cube_frag:wv,depth_vert:Ev,depth_frag:Tv,distance_vert:Av,distance_frag:Rv,equirect_vert:Cv,equirect_frag:Pv,linedashed_vert:Iv,linedashed_frag:Lv,meshbasic_vert:Dv,meshbasic_frag:Nv,meshlambert_vert:Fv,meshlambert_frag:Uv,meshmatcap_vert:Ov,meshmatcap_frag:Bv,meshnormal_vert:kv,meshnormal_frag:zv,meshphong_vert:Vv,meshphong_frag:Hv,meshphysical_vert:Gv,meshphysical_frag:Wv,meshtoon_vert:$v,meshtoon_frag:Xv,points_vert:qv,points_frag:Yv,shadow_vert:Zv,shadow_frag:Jv,sprite_vert:Kv,sprite_frag:jv},zt={common:{diffuse:{value:new xe(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new de},alphaMap:{value:null},alphaMapTransform:{value:new de},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new de}},envmap:{envMap:{value:null},envMapRotation:{value:new de},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new de}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new de}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new de},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new de},normalScale:{value:new ce(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new de},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new de}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new de}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new de}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new xe(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new xe(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new de},alphaTest:{value:0},uvTransform:{value:new de}},sprite:{diffuse:{value:new xe(16777215)},opacity:{value:1},center:{value:new ce(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new de},alphaMap:{value:null},alphaMapTransform:{value:new de},alphaTest:{value:0}}},ns={basic:{uniforms:zn([zt.common,zt.specularmap,zt.envmap,zt.aomap,zt.lightmap,zt.fog]),vertexShader:ve.meshbasic_vert,fragmentShader:ve.meshbasic_frag},lambert:{uniforms:zn([zt.common,zt.specularmap,zt.envmap,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.fog,zt.lights,{emissive:{value:new xe(0)},envMapIntensity:{value:1}}]),vertexShader:ve.meshlambert_vert,fragmentShader:ve.meshlambert_frag},phong:{uniforms:zn([zt.common,zt.specularmap,zt.envmap,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.fog,zt.lights,{emissive:{value:new xe(0)},specular:{value:new xe(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:ve.meshphong_vert,fragmentShader:ve.meshphong_frag},standard:{uniforms:zn([zt.common,zt.envmap,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.roughnessmap,zt.metalnessmap,zt.fog,zt.lights,{emissive:{value:new xe(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:ve.meshphysical_vert,fragmentShader:ve.meshphysical_frag},toon:{uniforms:zn([zt.common,zt.aomap,zt.lightmap,zt.emissivemap,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.gradientmap,zt.fog,zt.lights,{emissive:{value:new xe(0)}}]),vertexShader:ve.meshtoon_vert,fragmentShader:ve.meshtoon_frag},matcap:{uniforms:zn([zt.common,zt.bumpmap,zt.normalmap,zt.displacementmap,zt.fog,{matcap:{value:null}}]),vertexShader:ve.meshmatcap_vert,fragmentShader:ve.meshmatcap_frag},points:{uniforms:zn([zt.points,zt.fog]),vertexShader:ve.points_vert,fragmentShader:ve.points_frag},dashed:{uniforms:zn([zt.common,zt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:ve.linedashed_vert,fragmentShader:ve.linedashed_frag},depth:{uniforms:zn([zt.common,zt.displacementmap]),vertexShader:ve.depth_vert,fragmentShader:ve.depth_frag},normal:{uniforms:zn([zt.common,zt.bumpmap,zt.normalmap,zt.displacementmap,{opacity:{value:1}}]),vertexShader:ve.meshnormal_vert,fragmentShader:ve.meshnormal_frag},sprite:{uniforms:zn([zt.sprite,zt.fog]),vertexShader:ve.sprite_vert,fragmentShader:ve.sprite_frag},background:{uniforms:{uvTransform:{value:new de},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:ve.background_vert,fragmentShader:ve.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new de}},vertexShader:ve.backgroundCube_vert,fragmentShader:ve.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:ve.cube_vert,fragmentShader:ve.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:ve.equirect_vert,fragmentShader:ve.equirect_frag},distance:{uniforms:zn([zt.common,zt.displacementmap,{referencePosition:{value:new J},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:ve.distance_vert,fragmentShader:ve.distance_frag},shadow:{uniforms:zn([zt.lights,zt.fog,{color:{value:new xe(0)},opacity:{value:1}}]),vertexShader:ve.shadow_vert,fragmentShader:ve.shadow_frag}};ns.physical={uniforms:zn([ns.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new de},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new de},clearcoatNormalScale:{value:new ce(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new de},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new de},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new de},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new de},sheen:{value:0},sheenColor:{value:new xe(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new de},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new de},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new de},transmissionSamplerSize:{value:new ce},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new de},attenuationDistance:{value:0},attenuationColor:{value:new xe(0)},specularColor:{value:new xe(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new de},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new de},anisotropyVector:{value:new ce},anisotropyMap:{value:null},anisotropyMapTransform:{value:new de}}]),vertexShader:ve.meshphysical_vert,fragmentShader:ve.meshphysical_frag};var Yc={r:0,b:0,g:0},Qv=new Fe,Am=new de;Am.set(-1,0,0,0,1,0,0,0,1);function tM(i,t,e,n,s,r){let o=new xe(0),a=s===!0?0:1,l,c,u=null,d=0,h=null;function f(y){let T=y.isScene===!0?y.background:null;if(T&&T.isTexture){let b=y.backgroundBlurriness>0;T=t.get(T,b)}return T}function m(y){let T=!1,b=f(y);b===null?_(o,a):b&&b.isColor&&(_(b,1),T=!0);let I=i.xr.getEnvironmentBlendMode();I==="additive"?e.buffers.color.setClear(0,0,0,1,r):I==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||T)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function x(y,T){let b=f(T);b&&b.isCubeTexture?(c===void 0&&(c=new gn(new Ss(1,1,1),new ji({name:"BackgroundCubeMaterial",uniforms:yr(ns.backgroundCube.uniforms),vertexShader:ns.backgroundCube.vertexShader,fragmentShader:ns.backgroundCube.fragmentShader,side:Un,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(I,w,g){this.matrixWorld.copyPosition(g.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=b,c.material.uniforms.backgroundBlurriness.value=T.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=T.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(Qv.makeRotationFromEuler(T.backgroundRotation)).transpose(),b.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Am),c.material.toneMapped=Re.getTransfer(b.colorSpace)!==Be,(u!==b||d!==b.version||h!==i.toneMapping)&&(c.material.needsUpdate=!0,u=b,d=b.version,h=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null)):b&&b.isTexture&&(l===void 0&&(l=new gn(new xa(2,2),new ji({name:"BackgroundMaterial",uniforms:yr(ns.background.uniforms),vertexShader:ns.background.vertexShader,fragmentShader:ns.background.fragmentShader,side:qs,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=b,l.material.uniforms.backgroundIntensity.value=T.backgroundIntensity,l.material.toneMapped=Re.getTransfer(b.colorSpace)!==Be,b.matrixAutoUpdate===!0&&b.updateMatrix(),l.material.uniforms.uvTransform.value.copy(b.matrix),(u!==b||d!==b.version||h!==i.toneMapping)&&(l.material.needsUpdate=!0,u=b,d=b.version,h=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null))}function _(y,T){y.getRGB(Yc,Ku(i)),e.buffers.color.setClear(Yc.r,Yc.g,Yc.b,T,r)}function p(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,T=1){o.set(y),a=T,_(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,_(o,a)},render:m,addToRenderList:x,dispose:p}}function eM(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=h(null),r=s,o=!1;function a(L,k,z,P,V){let H=!1,B=d(L,P,z,k);r!==B&&(r=B,c(r.object)),H=f(L,P,z,V),H&&m(L,P,z,V),V!==null&&t.update(V,i.ELEMENT_ARRAY_BUFFER),(H||o)&&(o=!1,b(L,k,z,P),V!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(V).buffer))}function l(){return i.createVertexArray()}function c(L){return i.bindVertexArray(L)}function u(L){return i.deleteVertexArray(L)}function d(L,k,z,P){let V=P.wireframe===!0,H=n[k.id];H===void 0&&(H={},n[k.id]=H);let B=L.isInstancedMesh===!0?L.id:0,q=H[B];q===void 0&&(q={},H[B]=q);let X=q[z.id];X===void 0&&(X={},q[z.id]=X);let K=X[V];return K===void 0&&(K=h(l()),X[V]=K),K}function h(L){let k=[],z=[],P=[];for(let V=0;V<e;V++)k[V]=0,z[V]=0,P[V]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:k,enabledAttributes:z,attributeDivisors:P,object:L,attributes:{},index:null}}function f(L,k,z,P){let V=r.attributes,H=k.attributes,B=0,q=z.getAttributes();for(let X in q)if(q[X].location>=0){let $=V[X],ot=H[X];if(ot===void 0&&(X==="instanceMatrix"&&L.instanceMatrix&&(ot=L.instanceMatrix),X==="instanceColor"&&L.instanceColor&&(ot=L.instanceColor)),$===void 0||$.attribute!==ot||ot&&$.data!==ot.data)return!0;B++}return r.attributesNum!==B||r.index!==P}function m(L,k,z,P){let V={},H=k.attributes,B=0,q=z.getAttributes();for(let X in q)if(q[X].location>=0){let $=H[X];$===void 0&&(X==="instanceMatrix"&&L.instanceMatrix&&($=L.instanceMatrix),X==="instanceColor"&&L.instanceColor&&($=L.instanceColor));let ot={};ot.attribute=$,$&&$.data&&(ot.data=$.data),V[X]=ot,B++}r.attributes=V,r.attributesNum=B,r.index=P}function x(){let L=r.newAttributes;for(let k=0,z=L.length;k<z;k++)L[k]=0}function _(L){p(L,0)}function p(L,k){let z=r.newAttributes,P=r.enabledAttributes,V=r.attributeDivisors;z[L]=1,P[L]===0&&(i.enableVertexAttribArray(L),P[L]=1),V[L]!==k&&(i.vertexAttribDivisor(L,k),V[L]=k)}function y(){let L=r.newAttributes,k=r.enabledAttributes;for(let z=0,P=k.length;z<P;z++)k[z]!==L[z]&&(i.disableVertexAttribArray(z),k[z]=0)}function T(L,k,z,P,V,H,B){B===!0?i.vertexAttribIPointer(L,k,z,V,H):i.vertexAttribPointer(L,k,z,P,V,H)}function b(L,k,z,P){x();let V=P.attributes,H=z.getAttributes(),B=k.defaultAttributeValues;for(let q in H){let X=H[q];if(X.location>=0){let K=V[q];if(K===void 0&&(q==="instanceMatrix"&&L.instanceMatrix&&(K=L.instanceMatrix),q==="instanceColor"&&L.instanceColor&&(K=L.instanceColor)),K!==void 0){let $=K.normalized,ot=K.itemSize,at=t.get(K);if(at===void 0)continue;let Q=at.buffer,xt=at.type,Z=at.bytesPerElement,nt=xt===i.INT||xt===i.UNSIGNED_INT||K.gpuType===hc;if(K.isInterleavedBufferAttribute){let st=K.data,gt=st.isInterleavedBuffer===!0?st.stride:st.itemSize,Ct=K.offset;if(st.isInstancedInterleavedBuffer||st.isInstancedBufferAttribute){for(let St=0;St<X.locationSize;St++)p(X.location+St,st.meshPerAttribute);L.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=st.meshPerAttribute*st.count)}else for(let St=0;St<X.locationSize;St++)_(X.location+St);i.bindBuffer(i.ARRAY_BUFFER,Q);for(let St=0;St<X.locationSize;St++)T(X.location+St,ot/X.locationSize,xt,$,gt*Z,(Ct+ot/X.locationSize*St)*Z,nt)}else{if(K.isInstancedBufferAttribute){for(let st=0;st<X.locationSize;st++)p(X.location+st,K.meshPerAttribute);L.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=K.meshPerAttribute*K.count)}else for(let st=0;st<X.locationSize;st++)_(X.location+st);i.bindBuffer(i.ARRAY_BUFFER,Q);for(let st=0;st<X.locationSize;st++)T(X.location+st,ot/X.locationSize,xt,$,ot*Z,ot/X.locationSize*st*Z,nt)}}else if(B!==void 0){let $=B[q];if($!==void 0)switch($.length){case 2:i.vertexAttrib2fv(X.location,$);break;case 3:i.vertexAttrib3fv(X.location,$);break;case 4:i.vertexAttrib4fv(X.location,$);break;default:i.vertexAttrib1fv(X.location,$)}}}}y()}function I(){F();for(let L in n){let k=n[L];for(let z in k){let P=k[z];for(let V in P){let H=P[V];for(let B in H)u(H[B].object),delete H[B];delete P[V]}}delete n[L]}}function w(L){if(n[L.id]===void 0)return;let k=n[L.id];for(let z in k){let P=k[z];for(let V in P){let H=P[V];for(let B in H)u(H[B].object),delete H[B];delete P[V]}}delete n[L.id]}function g(L){for(let k in n){let z=n[k];for(let P in z){let V=z[P];if(V[L.id]===void 0)continue;let H=V[L.id];for(let B in H)u(H[B].object),delete H[B];delete V[L.id]}}}function S(L){for(let k in n){let z=n[k],P=L.isInstancedMesh===!0?L.id:0,V=z[P];if(V!==void 0){for(let H in V){let B=V[H];for(let q in B)u(B[q].object),delete B[q];delete V[H]}delete z[P],Object.keys(z).length===0&&delete n[k]}}}function F(){C(),o=!0,r!==s&&(r=s,c(r.object))}function C(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:F,resetDefaultState:C,dispose:I,releaseStatesOfGeometry:w,releaseStatesOfObject:S,releaseStatesOfProgram:g,initAttributes:x,enableAttribute:_,disableUnusedAttributes:y}}function nM(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,u){u!==0&&(i.drawArraysInstanced(n,l,c,u),e.update(c,n,u))}function a(l,c,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,u);let h=0;for(let f=0;f<u;f++)h+=c[f];e.update(h,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function iM(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let g=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(g.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(g){return!(g!==Fi&&n.convert(g)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(g){let S=g===Ni&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(g!==jn&&g!==Mi&&!S&&n.convert(g)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(g){if(g==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";g="mediump"}return g==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",u=l(c);u!==c&&(re("WebGLRenderer:",c,"not supported, using",u,"instead."),c=u);let d=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),h=e.logarithmicDepthBuffer===!0&&d===!1;e.reversedDepthBuffer===!0&&d===!1&&re("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&d===!0&&re("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),m=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),x=i.getParameter(i.MAX_TEXTURE_SIZE),_=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),p=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),T=i.getParameter(i.MAX_VARYING_VECTORS),b=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),I=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:h,reversedDepthBuffer:d,maxTextures:f,maxVertexTextures:m,maxTextureSize:x,maxCubemapSize:_,maxAttributes:p,maxVertexUniforms:y,maxVaryings:T,maxFragmentUniforms:b,maxSamples:I,samples:w}}function sM(i){let t=this,e=null,n=0,s=!1,r=!1,o=new li,a=new de,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(d,h){let f=d.length!==0||h||n!==0||s;return s=h,n=d.length,f},this.beginShadows=function(){r=!0,u(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(d,h){e=u(d,h,0)},this.setState=function(d,h,f){let m=d.clippingPlanes,x=d.clipIntersection,_=d.clipShadows,p=i.get(d);if(!s||m===null||m.length===0||r&&!_)r?u(null):c();else{let y=r?0:n,T=y*4,b=p.clippingState||null;l.value=b,b=u(m,h,T,f);for(let I=0;I!==T;++I)b[I]=e[I];p.clippingState=b,this.numIntersection=x?this.numPlanes:0,this.numPlanes+=y}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function u(d,h,f,m){let x=d!==null?d.length:0,_=null;if(x!==0){if(_=l.value,m!==!0||_===null){let p=f+x*4,y=h.matrixWorldInverse;a.getNormalMatrix(y),(_===null||_.length<p)&&(_=new Float32Array(p));for(let T=0,b=f;T!==x;++T,b+=4)o.copy(d[T]).applyMatrix4(y,a),o.normal.toArray(_,b),_[b+3]=o.constant}l.value=_,l.needsUpdate=!0}return t.numPlanes=x,t.numIntersection=0,_}}var Ua=class extends hi{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new da(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},s=new Ss(5,5,5),r=new ji({name:"CubemapFromEquirect",uniforms:yr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Un,blending:mr});r.uniforms.tEquirect.value=e;let o=new gn(s,r),a=e.minFilter;return e.minFilter===bs&&(e.minFilter=Yn),new po(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},rm=256,rM=3,oM=20,Rm=256,Cm=16,aM=3,lM=new J,cM=new xe,Jc=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new po(1,10,null),this._boxMesh=new gn(new Ss(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=lM}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),u=this._getSourceTarget(!0);e>0&&(u.texture.mipmapsAutoUpdate=!1);let d=l.autoClear,h=l.autoClearColor,f=l.autoClearDepth,m=l.autoClearStencil,x=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,x===null&&(t.background=l.getClearColor(cM));let _=new po(n,s,u);return _.position.copy(a),_.update(l,t),l.autoClear=d,l.autoClearColor=h,l.autoClearDepth=f,l.autoClearStencil=m,t.background=x,e>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=lm(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=am(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(rm,Yu(t))}_fromTexture(t,e){t.mapping===_r||t.mapping===xo?this._setSize(t.image.length===0?rm:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=om(t,!1,!1),n=Math.log2(t)-rM;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=om(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===_r||t.mapping===xo?(this._cubemapMaterial===null&&(this._cubemapMaterial=lm()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=am()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=hM(),this._integrationMaterial=uM());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Cm);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-aM)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(Rm*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=dM());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function om(i,t,e){return new Ua(i,{minFilter:bs,generateMipmaps:t,type:Ni,colorSpace:ea,depthBuffer:e})}function Oa(i,t,e){return new ji({name:i,uniforms:t,vertexShader:ve.cube_vert,fragmentShader:e,side:Un,blending:mr,depthTest:!1,depthWrite:!1})}function hM(){return Oa("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Rm}u

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
	`)}function uM(){return Oa("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Cm}},`

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
	`)}function dM(){return Oa("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${oM}
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
	`)}function am(){return Oa("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function lm(){return Oa("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function fM(i){let t=new WeakMap,e=new WeakMap,n=null;function s(h,f=!1){return h==null?null:f?o(h):r(h)}function r(h){if(h&&h.isTexture){let f=h.mapping;if(f===ac||f===lc)if(t.has(h)){let m=t.get(h).texture;return a(m,h.mapping)}else{let m=h.image;if(m&&m.height>0){let x=new Ua(m.height);return x.fromEquirectangularTexture(i,h),t.set(h,x),h.addEventListener("dispose",c),a(x.texture,h.mapping)}else return null}}return h}function o(h){if(h&&h.isTexture&&h.isPMREMTexture!==!0){let f=h.mapping,m=f===ac||f===lc,x=f===_r||f===xo;if(m||x){let _=e.get(h),p=_!==void 0?_.texture.pmremVersion:0;if(h.isRenderTargetTexture&&h.pmremVersion!==p)return n===null&&(n=new Jc(i)),_=m?n.fromEquirectangular(h,_):n.fromCubemap(h,_),_.texture.pmremVersion=h.pmremVersion,e.set(h,_),_.texture;if(_!==void 0)return _.texture;{let y=h.image;return m&&y&&y.height>0||x&&y&&l(y)?(n===null&&(n=new Jc(i)),_=m?n.fromEquirectangular(h):n.fromCubemap(h),_.texture.pmremVersion=h.pmremVersion,e.set(h,_),h.addEventListener("dispose",u),_.texture):null}}}return h}function a(h,f){return f===ac?h.mapping=_r:f===lc&&(h.mapping=xo),h}function l(h){let f=0,m=6;for(let x=0;x<m;x++)h[x]!==void 0&&f++;return f===m}function c(h){let f=h.target;f.removeEventListener("dispose",c);let m=t.get(f);m!==void 0&&(t.delete(f),m.dispose())}function u(h){let f=h.target;f.removeEventListener("dispose",u);let m=e.get(f);m!==void 0&&(e.delete(f),m.dispose())}function d(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:d}}function pM(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&jo("WebGLRenderer: "+n+" extension not supported."),s}}}function mM(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(m=>delete s[m]);function a(m){l(m.target)}function l(m){m.index!==null&&t.remove(m.index);for(let _ in m.attributes)t.remove(m.attributes[_]);m.removeEventListener("dispose",a),delete s[m.id],o.unregister(m);let x=r.get(m);x&&(t.remove(x),r.delete(m)),n.releaseStatesOfGeometry(m),m.isInstancedBufferGeometry===!0&&delete m._maxInstanceCount,e.memory.geometries--}function c(m,x){return s[x.id]!==void 0||(x.addEventListener("dispose",a),s[x.id]=new WeakRef(x),o.register(x,x.id,x),e.memory.geometries++),x}function u(m){let x=m.attributes;for(let _ in x)t.update(x[_],i.ARRAY_BUFFER)}function d(m){let x=m.index,_=m.attributes.position,p=0;if(_===void 0)return;let y=x!==null?x.array.length:_.array.length/3-1,T=_.count>=65535?la:aa,b=new T(Math.ceil(y/3)*6,1),I=b.array;if(x!==null){let g=x.array;p=x.version;for(let S=0,F=0;S<y;S+=3){let C=g[S+0],L=g[S+1],k=g[S+2];I[F++]=C,I[F++]=L,I[F++]=L,I[F++]=k,I[F++]=k,I[F++]=C}}else{p=_.version;for(let g=0,S=0;g<y;g+=3){let F=g+0,C=g+1,L=g+2;I[S++]=F,I[S++]=C,I[S++]=C,I[S++]=L,I[S++]=L,I[S++]=F}}b.version=p;let w=r.get(m);w&&t.remove(w),r.set(m,b)}function h(m){let x=r.get(m);if(x){let _=m.index;_!==null&&x.version<_.version&&d(m)}else d(m);return r.get(m)}function f(){for(let m in s){let x=s[m].deref();x!==void 0&&l(x)}}return{get:c,update:u,getWireframeAttribute:h,dispose:f}}function gM(i,t,e){let n;function s(d){n=d}let r,o;function a(d){r=d.type,o=d.bytesPerElement}function l(d,h){i.drawElements(n,h,r,d*o),e.update(h,n,1)}function c(d,h,f){f!==0&&(i.drawElementsInstanced(n,h,r,d*o,f),e.update(h,n,f))}function u(d,h,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,h,0,r,d,0,f);let x=0;for(let _=0;_<f;_++)x+=h[_];e.update(x,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=u}function _M(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:ue("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function xM(i,t,e){let n=new WeakMap,s=new nn;function r(o,a,l){let c=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,d=u!==void 0?u.length:0,h=n.get(a);if(h===void 0||h.count!==d){let F=function(){g.dispose(),n.delete(a),a.removeEventListener("dispose",F)};h!==void 0&&h.texture.dispose();let f=a.morphAttributes.position!==void 0,m=a.morphAttributes.normal!==void 0,x=a.morphAttributes.color!==void 0,_=a.morphAttributes.position||[],p=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],T=0;f===!0&&(T=1),m===!0&&(T=2),x===!0&&(T=3);let b=a.attributes.position.count*T,I=1;b>t.maxTextureSize&&(I=Math.ceil(b/t.maxTextureSize),b=t.maxTextureSize);let w=new Float32Array(b*I*4*d),g=new sa(w,b,I,d);g.type=Mi,g.needsUpdate=!0;let S=T*4;for(let C=0;C<d;C++){let L=_[C],k=p[C],z=y[C],P=b*I*4*C;for(let V=0;V<L.count;V++){let H=V*S;f===!0&&(s.fromBufferAttribute(L,V),w[P+H+0]=s.x,w[P+H+1]=s.y,w[P+H+2]=s.z,w[P+H+3]=0),m===!0&&(s.fromBufferAttribute(k,V),w[P+H+4]=s.x,w[P+H+5]=s.y,w[P+H+6]=s.z,w[P+H+7]=0),x===!0&&(s.fromBufferAttribute(z,V),w[P+H+8]=s.x,w[P+H+9]=s.y,w[P+H+10]=s.z,w[P+H+11]=z.itemSize===4?s.w:1)}}h={count:d,texture:g,size:new ce(b,I)},n.set(a,h),a.addEventListener("dispose",F)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let x=0;x<c.length;x++)f+=c[x];let m=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",m),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",h.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",h.size)}return{update:r}}function yM(i,t,e,n,s){let r=new WeakMap;function o(c){let u=s.render.frame,d=c.geometry,h=t.get(c,d);if(r.get(h)!==u&&(t.update(h),r.set(h,u)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==u&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,u))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==u&&(f.update(),r.set(f,u))}return h}function a(){r=new WeakMap}function l(c){let u=c.target;u.removeEventListener("dispose",l),n.releaseStatesOfObject(u),e.remove(u.instanceMatrix),u.instanceColor!==null&&e.remove(u.instanceColor)}return{update:o,dispose:a}}var vM={[Ru]:"LINEAR_TONE_MAPPING",[Cu]:"REINHARD_TONE_MAPPING",[Pu]:"CINEON_TONE_MAPPING",[Iu]:"ACES_FILMIC_TONE_MAPPING",[Du]:"AGX_TONE_MAPPING",[Nu]:"NEUTRAL_TONE_MAPPING",[Lu]:"CUSTOM_TONE_MAPPING"};function MM(i,t,e,n,s,r){let o=new hi(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,u=new Zn;u.setAttribute("position",new Ye([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new Ye([0,2,0,0,2,0],2));let d=new $l({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),h=new gn(u,d),f=new pr(-1,1,1,-1,0,1),m=null,x=null,_=!1,p,y=null,T=[],b=!1;this.setSize=function(I,w){o.setSize(I,w),a!==null&&a.setSize(I,w),l!==null&&l.setSize(I,w);for(let g=0;g<T.length;g++){let S=T[g];S.setSize&&S.setSize(I,w)}},this.setEffects=function(I){T=I,b=T.length>0&&T[0].isRenderPass===!0;let w=o.width,g=o.height;T.length>0&&a===null&&(a=new hi(w,g,{type:Ni,depthBuffer:!1,stencilBuffer:!1}),l=new hi(w,g,{type:Ni,depthBuffer:!1,stencilBuffer:!1}));let S=s===!0&&T.some(F=>F.needsDepthTexture===!0);S!==(o.depthTexture!==null)&&(S===!0&&c===null&&(c=new Ms(w,g),r===!0&&(c.format=ws,c.type=xr)),o.dispose(),o.depthTexture=S?c:null,o.resolveDepthBuffer=S,o.storeMultisampledDepthBuffer=S);for(let F=0;F<T.length;F++){let C=T[F];C.setSize&&C.setSize(w,g),S&&C.needsDepthTexture===!0&&C.setDepthTexture&&C.setDepthTexture(c)}},this.begin=function(I,w){if(_||I.toneMapping===ts&&T.length===0)return!1;if(y=w,w!==null){let g=w.width,S=w.height;(o.width!==g||o.height!==S)&&this.setSize(g,S)}return b===!1&&I.setRenderTarget(o),p=I.toneMapping,I.toneMapping=ts,!0},this.hasRenderPass=function(){return b},this.end=function(I,w){I.toneMapping=p,_=!0;let g=o,S=a;for(let F=0;F<T.length;F++){let C=T[F];C.enabled!==!1&&(C.render(I,S,g,w),C.needsSwap!==!1&&(g=S,S=S===a?l:a))}if(m!==I.outputColorSpace||x!==I.toneMapping){m=I.outputColorSpace,x=I.toneMapping,d.defines={},Re.getTransfer(m)===Be&&(d.defines.SRGB_TRANSFER="");let F=vM[x];F&&(d.defines[F]=""),d.needsUpdate=!0}d.uniforms.tDiffuse.value=g.texture,I.setRenderTarget(y),I.render(h,f),y=null,_=!1},this.isCompositing=function(){return _},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),u.dispose(),d.dispose()}}var Pm=new Kn,Im=new Ms(1,1),Lm=new fa(1),Dm=new sa,Nm=new zl,Fm=new da,cm=[],hm=[],um=new Float32Array(16),dm=new Float32Array(9),fm=new Float32Array(4);function So(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=cm[s];if(r===void 0&&(r=new Float32Array(s),cm[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function yn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function vn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function jc(i,t){let e=hm[t];e===void 0&&(e=new Int32Array(t),hm[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function SM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function bM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2fv(this.addr,t),vn(e,t)}}function wM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(yn(e,t))return;i.uniform3fv(this.addr,t),vn(e,t)}}function EM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4fv(this.addr,t),vn(e,t)}}function TM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;fm.set(n),i.uniformMatrix2fv(this.addr,!1,fm),vn(e,n)}}function AM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;dm.set(n),i.uniformMatrix3fv(this.addr,!1,dm),vn(e,n)}}function RM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;um.set(n),i.uniformMatrix4fv(this.addr,!1,um),vn(e,n)}}function CM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function PM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2iv(this.addr,t),vn(e,t)}}function IM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3iv(this.addr,t),vn(e,t)}}function LM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4iv(this.addr,t),vn(e,t)}}function DM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function NM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2uiv(this.addr,t),vn(e,t)}}function FM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3uiv(this.addr,t),vn(e,t)}}function UM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4uiv(this.addr,t),vn(e,t)}}function Qc(i){return i.version===0&&(i.compareFunction=Wu,i.needsUpdate=!0),i}function OM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=Qc(Im):r=Pm,e.setTexture2D(t||r,s)}function BM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||Nm,s)}function kM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=Qc(Lm):r=Fm,e.setTextureCube(t||r,s)}function zM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||Dm,s)}function VM(i){switch(i){case 5126:return SM;case 35664:return bM;case 35665:return wM;case 35666:return EM;case 35674:return TM;case 35675:return AM;case 35676:return RM;case 5124:case 35670:return CM;case 35667:case 35671:return PM;case 35668:case 35672:return IM;case 35669:case 35673:return LM;case 5125:return DM;case 36294:return NM;case 36295:return FM;case 36296:return UM;case 35678:case 36198:case 36298:case 36306:case 35682:return OM;case 35679:case 36299:case 36307:return BM;case 35680:case 36300:case 36308:case 36293:return kM;case 36289:case 36303:case 36311:case 36292:return zM}}function HM(i,t){i.uniform1fv(this.addr,t)}function GM(i,t){let e=So(t,this.size,2);i.uniform2fv(this.addr,e)}function WM(i,t){let e=So(t,this.size,3);i.uniform3fv(this.addr,e)}function $M(i,t){let e=So(t,this.size,4);i.uniform4fv(this.addr,e)}function XM(i,t){let e=So(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function qM(i,t){let e=So(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function YM(i,t){let e=So(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function ZM(i,t){i.uniform1iv(this.addr,t)}function JM(i,t){i.uniform2iv(this.addr,t)}function KM(i,t){i.uniform3iv(this.addr,t)}function jM(i,t){i.uniform4iv(this.addr,t)}function QM(i,t){i.uniform1uiv(this.addr,t)}function tS(i,t){i.uniform2uiv(this.addr,t)}function eS(i,t){i.uniform3uiv(this.addr,t)}function nS(i,t){i.uniform4uiv(this.addr,t)}function iS(i,t,e){let n=this.cache,s=t.length,r=jc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=Qc(Im):o=Pm;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function sS(i,t,e){let n=this.cache,s=t.length,r=jc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||Nm,r[o])}function rS(i,t,e){let n=this.cache,s=t.length,r=jc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=Qc(Lm):o=Fm;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function oS(i,t,e){let n=this.cache,s=t.length,r=jc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||Dm,r[o])}function aS(i){switch(i){case 5126:return HM;case 35664:return GM;case 35665:return WM;case 35666:return $M;case 35674:return XM;case 35675:return qM;case 35676:return YM;case 5124:case 35670:return ZM;case 35667:case 35671:return JM;case 35668:case 35672:return KM;case 35669:case 35673:return jM;case 5125:return QM;case 36294:return tS;case 36295:return eS;case 36296:return nS;case 35678:case 36198:case 36298:case 36306:case 35682:return iS;case 35679:case 36299:case 36307:return sS;case 35680:case 36300:case 36308:case 36293:return rS;case 36289:case 36303:case 36311:case 36292:return oS}}var id=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=VM(e.type)}},sd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=aS(e.type)}},rd=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},ed=/(\w+)(\])?(\[|\.)?/g;function pm(i,t){i.seq.push(t),i.map[t.id]=t}function lS(i,t,e){let n=i.name,s=n.length;for(ed.lastIndex=0;;){let r=ed.exec(n),o=ed.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){pm(e,c===void 0?new id(a,i,t):new sd(a,i,t));break}else{let d=e.map[a];d===void 0&&(d=new rd(a),pm(e,d)),e=d}}}var Mo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);lS(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function mm(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var cS=37297,hS=0;function uS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var gm=new de;function dS(i){Re._getMatrix(gm,Re.workingColorSpace,i);let t=`mat3( ${gm.elements.map(e=>e.toFixed(4))} )`;switch(Re.getTransfer(i)){case na:return[t,"LinearTransferOETF"];case Be:return[t,"sRGBTransferOETF"];default:return re("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function _m(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+uS(i.getShaderSource(t),a)}else return r}function fS(i,t){let e=dS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var pS={[Ru]:"Linear",[Cu]:"Reinhard",[Pu]:"Cineon",[Iu]:"ACESFilmic",[Du]:"AgX",[Nu]:"Neutral",[Lu]:"Custom"};function mS(i,t){let e=pS[t];return e===void 0?(re("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var Zc=new J;function gS(){Re.getLuminanceCoefficients(Zc);let i=Zc.x.toFixed(4),t=Zc.y.toFixed(4),e=Zc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function _S(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Fa).join(`
`)}function xS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function yS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Fa(i){return i!==""}function xm(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function ym(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var vS=/^[ \t]*#include +<([\w\d./]+)>/gm;function od(i){return i.replace(vS,MS)}function MS(i,t){let e=ve[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return od(e)}var SS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function vm(i){return i.replace(SS,bS)}function bS(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Mm(i){let t=`precision ${i.precision} float;
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
#define LOW_PRECISION`),t}var wS={[Ta]:"SHADOWMAP_TYPE_PCF",[go]:"SHADOWMAP_TYPE_VSM"};function ES(i){return wS[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var TS={[xo]:"ENVMAP_MODE_REFRACTION"};function AS(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":TS[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var RS={[oc]:"ENVMAP_BLENDING_MULTIPLY",[Op]:"ENVMAP_BLENDING_MIX",[Bp]:"ENVMAP_BLENDING_ADD"};function CS(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":RS[i.combine]||"ENVMAP_BLENDING_NONE"}function PS(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=ES(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=AS(e),d=CS(e),h=_S(e),f=xS(r),m=s.createProgram(),x,_,p=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(x=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Fa).join(`
`),x.length>0&&(x+=`
`),_=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Fa).join(`
`),_.length>0&&(_+=`
`)):(x=[Mm(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+u:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Fa).join(`
`),_=[Mm(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+u:"",e.envMap?"#define "+d:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==ts?"#define TONE_MAPPING":"",e.toneMapping!==ts?ve.tonemapping_pars_fragment:"",e.toneMapping!==ts?mS("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",ve.colorspace_pars_fragment,fS("linearToOutputTexel",e.outputColorSpace),gS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Fa).join(`
`)),o=od(o),o=xm(o,e),o=ym(o,e),a=od(a),a=xm(a,e),a=ym(a,e),o=vm(o),a=vm(a),e.isRawShaderMaterial!==!0&&(p=`#version 300 es
`,x=[h,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+x,_=["#define varying in",e.glslVersion===$u?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===$u?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+_);let y=p+x+o,T=p+_+a,b=mm(s,s.VERTEX_SHADER,y),I=mm(s,s.FRAGMENT_SHADER,T);s.attachShader(m,b),s.attachShader(m,I),e.index0AttributeName!==void 0?s.bindAttribLocation(m,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(m,0,"position"),s.linkProgram(m);function w(C){if(i.debug.checkShaderErrors){let L=s.getProgramInfoLog(m)||"",k=s.getShaderInfoLog(b)||"",z=s.getShaderInfoLog(I)||"",P=L.trim(),V=k.trim(),H=z.trim(),B=!0,q=!0;if(s.getProgramParameter(m,s.LINK_STATUS)===!1)if(B=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,m,b,I);else{let X=_m(s,b,"vertex"),K=_m(s,I,"fragment");ue("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(m,s.VALIDATE_STATUS)+`

Material Name: `+C.name+`
Material Type: `+C.type+`

Program Info Log: `+P+`
`+X+`
`+K)}else P!==""?re("WebGLProgram: Program Info Log:",P):(V===""||H==="")&&(q=!1);q&&(C.diagnostics={runnable:B,programLog:P,vertexShader:{log:V,prefix:x},fragmentShader:{log:H,prefix:_}})}s.deleteShader(b),s.deleteShader(I),g=new Mo(s,m),S=yS(s,m)}let g;this.getUniforms=function(){return g===void 0&&w(this),g};let S;this.getAttributes=function(){return S===void 0&&w(this),S};let F=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return F===!1&&(F=s.getProgramParameter(m,cS)),F},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(m),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=hS++,this.cacheKey=t,this.usedTimes=1,this.program=m,this.vertexShader=b,this.fragmentShader=I,this}var IS=0,ad=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new ld(t),e.set(t,n)),n}},ld=class{constructor(t){this.id=IS++,this.code=t,this.usedTimes=0}};function LS(i){return i===Ys||i===La||i===Da}function DS(i,t,e,n,s,r){let o=new ra,a=new ad,l=new Set,c=[],u=new Map,d=n.logarithmicDepthBuffer,h={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(g){return l.add(g),g===0?"uv":`uv${g}`}function m(g,S,F,C,L,k){let z=C.fog,P=L.geometry,V=g.isMeshStandardMaterial||g.isMeshLambertMaterial||g.isMeshPhongMaterial?C.environment:null,H=g.isMeshStandardMaterial||g.isMeshLambertMaterial&&!g.envMap||g.isMeshPhongMaterial&&!g.envMap,B=t.get(g.envMap||V,H),q=h[g.type],X=n.precision;g.precision!==null&&(X=n.getMaxPrecision(g.precision),X!==g.precision&&re("WebGLProgram.getParameters:",g.precision,"not supported, using",X,"instead."));let K=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,$=K!==void 0?K.length:0,ot=0;P.morphAttributes.position!==void 0&&(ot=1),P.morphAttributes.normal!==void 0&&(ot=2),P.morphAttributes.color!==void 0&&(ot=3);let at,Q,xt,Z;if(q){let Ot=ns[q];at=Ot.vertexShader,Q=Ot.fragmentShader}else{at=g.vertexShader,Q=g.fragmentShader;let Ot=a.getVertexShaderStage(g),me=a.getFragmentShaderStage(g);a.update(g,Ot,me),xt=Ot.id,Z=me.id}let nt=i.getRenderTarget(),st=i.state.buffers.depth.getReversed(),gt=L.isInstancedMesh===!0,Ct=L.isBatchedMesh===!0,St=!!g.map,ne=!!g.matcap,se=!!B,Kt=se&&B.isPMREMTexture===!0,Ee=!!g.aoMap,Qt=!!g.lightMap,_e=!!g.bumpMap&&g.wireframe===!1,pe=!!g.normalMap,Pe=!!g.displacementMap,ht=!!g.emissiveMap,Lt=!!g.metalnessMap,Tt=!!g.roughnessMap,Xt=g.anisotropy>0,O=g.clearcoat>0,yt=g.diffuseRoughness>0,Wt=g.dispersion>0,Ht=g.retroreflectivity>0,bt=g.iridescence>0,Ie=g.sheen>0,jt=g.transmission>0,ie=Xt&&!!g.anisotropyMap,D=O&&!!g.clearcoatMap,E=O&&!!g.clearcoatNormalMap,j=O&&!!g.clearcoatRoughnessMap,Mt=yt&&!!g.diffuseRoughnessMap,mt=bt&&!!g.iridescenceMap,Rt=bt&&!!g.iridescenceThicknessMap,Pt=Ie&&!!g.sheenColorMap,lt=Ie&&!!g.sheenRoughnessMap,dt=!!g.specularMap,Et=!!g.specularColorMap,G=!!g.specularIntensityMap,ft=jt&&!!g.transmissionMap,ct=jt&&!!g.thicknessMap,Nt=!!g.gradientMap,At=!!g.alphaMap,Dt=g.alphaTest>0,te=!!g.alphaHash,ae=!!g.extensions,vt=ts;g.toneMapped&&(nt===null||nt.isXRRenderTarget===!0)&&(vt=i.toneMapping);let Yt=Kt?B.isCompressedCubeTexture?B.image[0].mipmaps:B.mipmaps:null,le={shaderID:q,shaderType:g.type,shaderName:g.name,vertexShader:at,fragmentShader:Q,defines:g.defines,customVertexShaderID:xt,customFragmentShaderID:Z,isRawShaderMaterial:g.isRawShaderMaterial===!0,glslVersion:g.glslVersion,precision:X,batching:Ct,batchingColor:Ct&&L._colorsTexture!==null,instancing:gt,instancingColor:gt&&L.instanceColor!==null,instancingMorph:gt&&L.morphTexture!==null,outputColorSpace:nt===null?i.outputColorSpace:nt.isXRRenderTarget===!0?nt.texture.colorSpace:Re.workingColorSpace,alphaToCoverage:!!g.alphaToCoverage,map:St,matcap:ne,envMap:se,envMapMode:se&&B.mapping,envMapPMREM:Kt,envMapMaxLod:Kt?Yt.length-1:null,envMapSize:Kt?Yt[0].width:null,aoMap:Ee,lightMap:Qt,bumpMap:_e,normalMap:pe,displacementMap:Pe,emissiveMap:ht,normalMapObjectSpace:pe&&g.normalMapType===Vp,normalMapTangentSpace:pe&&g.normalMapType===qc,packedNormalMap:pe&&g.normalMapType===qc&&LS(g.normalMap.format),metalnessMap:Lt,roughnessMap:Tt,anisotropy:Xt,anisotropyMap:ie,clearcoat:O,clearcoatMap:D,clearcoatNormalMap:E,clearcoatRoughnessMap:j,diffuseRoughness:yt,diffuseRoughnessMap:Mt,dispersion:Wt,retroreflection:Ht,iridescence:bt,iridescenceMap:mt,iridescenceThicknessMap:Rt,sheen:Ie,sheenColorMap:Pt,sheenRoughnessMap:lt,specularMap:dt,specularColorMap:Et,specularIntensityMap:G,transmission:jt,transmissionMap:ft,thicknessMap:ct,gradientMap:Nt,opaque:g.transparent===!1&&g.blending===_o&&g.alphaToCoverage===!1,alphaMap:At,alphaTest:Dt,alphaHash:te,combine:g.combine,mapUv:St&&f(g.map.channel),aoMapUv:Ee&&f(g.aoMap.channel),lightMapUv:Qt&&f(g.lightMap.channel),bumpMapUv:_e&&f(g.bumpMap.channel),normalMapUv:pe&&f(g.normalMap.channel),displacementMapUv:Pe&&f(g.displacementMap.channel),emissiveMapUv:ht&&f(g.emissiveMap.channel),metalnessMapUv:Lt&&f(g.metalnessMap.channel),roughnessMapUv:Tt&&f(g.roughnessMap.channel),anisotropyMapUv:ie&&f(g.anisotropyMap.channel),clearcoatMapUv:D&&f(g.clearcoatMap.channel),clearcoatNormalMapUv:E&&f(g.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:j&&f(g.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:Mt&&f(g.diffuseRoughnessMap.channel),iridescenceMapUv:mt&&f(g.iridescenceMap.channel),iridescenceThicknessMapUv:Rt&&f(g.iridescenceThicknessMap.channel),sheenColorMapUv:Pt&&f(g.sheenColorMap.channel),sheenRoughnessMapUv:lt&&f(g.sheenRoughnessMap.channel),specularMapUv:dt&&f(g.specularMap.channel),specularColorMapUv:Et&&f(g.specularColorMap.channel),specularIntensityMapUv:G&&f(g.specularIntensityMap.channel),transmissionMapUv:ft&&f(g.transmissionMap.channel),thicknessMapUv:ct&&f(g.thicknessMap.channel),alphaMapUv:At&&f(g.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(pe||Xt),vertexNormals:!!P.attributes.normal,vertexColors:g.vertexColors,vertexAlphas:g.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:L.isPoints===!0&&!!P.attributes.uv&&(St||At),fog:!!z,useFog:g.fog===!0,fogExp2:!!z&&z.isFogExp2,flatShading:g.wireframe===!1&&(g.flatShading===!0||P.attributes.normal===void 0&&pe===!1&&(g.isMeshLambertMaterial||g.isMeshPhongMaterial||g.isMeshStandardMaterial||g.isMeshPhysicalMaterial)),sizeAttenuation:g.sizeAttenuation===!0,logarithmicDepthBuffer:d,reversedDepthBuffer:st,skinning:L.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:$,morphTextureStride:ot,numSunLights:S.sun.length,numDirLights:S.directional.length,numPointLights:S.point.length,numSpotLights:S.spot.length,numSpotLightMaps:S.spotLightMap.length,numRectAreaLights:S.rectArea.length,numHemiLights:S.hemi.length,numSunLightShadows:S.sunShadowMap.length,numDirLightShadows:S.directionalShadowMap.length,numPointLightShadows:S.pointShadowMap.length,numSpotLightShadows:S.spotShadowMap.length,numSpotLightShadowsWithMaps:S.numSpotLightShadowsWithMaps,numLightProbes:S.numLightProbes,numLightProbeGrids:k.filter(Ot=>Ot.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:g.dithering,shadowMapEnabled:i.shadowMap.enabled&&F.length>0,shadowMapType:i.shadowMap.type,toneMapping:vt,decodeVideoTexture:St&&g.map.isVideoTexture===!0&&Re.getTransfer(g.map.colorSpace)===Be,decodeVideoTextureEmissive:ht&&g.emissiveMap.isVideoTexture===!0&&Re.getTransfer(g.emissiveMap.colorSpace)===Be,premultipliedAlpha:g.premultipliedAlpha,doubleSided:g.side===Qi,flipSided:g.side===Un,useDepthPacking:g.depthPacking>=0,depthPacking:g.depthPacking||0,index0AttributeName:g.index0AttributeName,extensionClipCullDistance:ae&&g.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(ae&&g.extensions.multiDraw===!0||Ct)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:g.customProgramCacheKey()};return le.vertexUv1s=l.has(1),le.vertexUv2s=l.has(2),le.vertexUv3s=l.has(3),l.clear(),le}function x(g){let S=[];if(g.shaderID?S.push(g.shaderID):(S.push(g.customVertexShaderID),S.push(g.customFragmentShaderID)),g.defines!==void 0)for(let F in g.defines)S.push(F),S.push(g.defines[F]);return g.isRawShaderMaterial===!1&&(_(S,g),p(S,g),S.push(i.outputColorSpace)),S.push(g.customProgramCacheKey),S.join()}function _(g,S){g.push(S.precision),g.push(S.outputColorSpace),g.push(S.envMapMode),g.push(S.envMapPMREM),g.push(S.envMapMaxLod),g.push(S.envMapSize),g.push(S.mapUv),g.push(S.alphaMapUv),g.push(S.lightMapUv),g.push(S.aoMapUv),g.push(S.bumpMapUv),g.push(S.normalMapUv),g.push(S.displacementMapUv),g.push(S.emissiveMapUv),g.push(S.metalnessMapUv),g.push(S.roughnessMapUv),g.push(S.anisotropyMapUv),g.push(S.clearcoatMapUv),g.push(S.clearcoatNormalMapUv),g.push(S.clearcoatRoughnessMapUv),g.push(S.diffuseRoughnessMapUv),g.push(S.iridescenceMapUv),g.push(S.iridescenceThicknessMapUv),g.push(S.sheenColorMapUv),g.push(S.sheenRoughnessMapUv),g.push(S.specularMapUv),g.push(S.specularColorMapUv),g.push(S.specularIntensityMapUv),g.push(S.transmissionMapUv),g.push(S.thicknessMapUv),g.push(S.combine),g.push(S.fogExp2),g.push(S.sizeAttenuation),g.push(S.morphTargetsCount),g.push(S.numSunLights),g.push(S.numDirLights),g.push(S.numPointLights),g.push(S.numSpotLights),g.push(S.numSpotLightMaps),g.push(S.numHemiLights),g.push(S.numRectAreaLights),g.push(S.numSunLightShadows),g.push(S.numDirLightShadows),g.push(S.numPointLightShadows),g.push(S.numSpotLightShadows),g.push(S.numSpotLightShadowsWithMaps),g.push(S.numLightProbes),g.push(S.numLightProbeGrids),g.push(S.shadowMapType),g.push(S.toneMapping),g.push(S.numClippingPlanes),g.push(S.numClipIntersection),g.push(S.depthPacking)}function p(g,S){o.disableAll(),S.instancing&&o.enable(0),S.instancingColor&&o.enable(1),S.instancingMorph&&o.enable(2),S.matcap&&o.enable(3),S.envMap&&o.enable(4),S.normalMapObjectSpace&&o.enable(5),S.normalMapTangentSpace&&o.enable(6),S.clearcoat&&o.enable(7),S.iridescence&&o.enable(8),S.alphaTest&&o.enable(9),S.vertexColors&&o.enable(10),S.vertexAlphas&&o.enable(11),S.vertexUv1s&&o.enable(12),S.vertexUv2s&&o.enable(13),S.vertexUv3s&&o.enable(14),S.vertexTangents&&o.enable(15),S.anisotropy&&o.enable(16),S.alphaHash&&o.enable(17),S.batching&&o.enable(18),S.dispersion&&o.enable(19),S.retroreflection&&o.enable(24),S.diffuseRoughness&&o.enable(25),S.batchingColor&&o.enable(20),S.gradientMap&&o.enable(21),S.packedNormalMap&&o.enable(22),S.vertexNormals&&o.enable(23),g.push(o.mask),o.disableAll(),S.fog&&o.enable(0),S.useFog&&o.enable(1),S.flatShading&&o.enable(2),S.logarithmicDepthBuffer&&o.enable(3),S.reversedDepthBuffer&&o.enable(4),S.skinning&&o.enable(5),S.morphTargets&&o.enable(6),S.morphNormals&&o.enable(7),S.morphColors&&o.enable(8),S.premultipliedAlpha&&o.enable(9),S.shadowMapEnabled&&o.enable(10),S.doubleSided&&o.enable(11),S.flipSided&&o.enable(12),S.useDepthPacking&&o.enable(13),S.dithering&&o.enable(14),S.transmission&&o.enable(15),S.sheen&&o.enable(16),S.opaque&&o.enable(17),S.pointsUvs&&o.enable(18),S.decodeVideoTexture&&o.enable(19),S.decodeVideoTextureEmissive&&o.enable(20),S.alphaToCoverage&&o.enable(21),S.numLightProbeGrids>0&&o.enable(22),S.hasPositionAttribute&&o.enable(23),g.push(o.mask)}function y(g){let S=h[g.type],F;if(S){let C=ns[S];F=nm.clone(C.uniforms)}else F=g.uniforms;return F}function T(g,S){let F=u.get(S);return F!==void 0?++F.usedTimes:(F=new PS(i,S,g,s),c.push(F),u.set(S,F)),F}function b(g){if(--g.usedTimes===0){let S=c.indexOf(g);c[S]=c[c.length-1],c.pop(),u.delete(g.cacheKey),g.destroy()}}function I(g){a.remove(g)}function w(){a.dispose()}return{getParameters:m,getProgramCacheKey:x,getUniforms:y,acquireProgram:T,releaseProgram:b,releaseShaderCache:I,programs:c,dispose:w}}function NS(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function FS(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function Sm(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function bm(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(h){let f=0;return h.isInstancedMesh&&(f+=2),h.isSkinnedMesh&&(f+=1),f}function a(h,f,m,x,_,p){let y=i[t];return y===void 0?(y={id:h.id,object:h,geometry:f,material:m,materialVariant:o(h),groupOrder:x,renderOrder:h.renderOrder,z:_,group:p},i[t]=y):(y.id=h.id,y.object=h,y.geometry=f,y.material=m,y.materialVariant=o(h),y.groupOrder=x,y.renderOrder=h.renderOrder,y.z=_,y.group=p),t++,y}function l(h,f,m,x,_,p,y){y.reversedDepth===!0&&(_=-_);let T=a(h,f,m,x,_,p);m.transmission>0?n.push(T):m.transparent===!0?s.push(T):e.push(T)}function c(h,f,m,x,_,p){let y=a(h,f,m,x,_,p);m.transmission>0?n.unshift(y):m.transparent===!0?s.unshift(y):e.unshift(y)}function u(h,f){e.length>1&&e.sort(h||FS),n.length>1&&n.sort(f||Sm),s.length>1&&s.sort(f||Sm)}function d(){for(let h=t,f=i.length;h<f;h++){let m=i[h];if(m.id===null)break;m.id=null,m.object=null,m.geometry=null,m.material=null,m.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:d,sort:u}}function US(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new bm,i.set(n,[o])):s>=r.length?(o=new bm,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function OS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new J,color:new xe};break;case"SpotLight":e={position:new J,direction:new J,color:new xe,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new J,color:new xe,distance:0,decay:0};break;case"HemisphereLight":e={direction:new J,skyColor:new xe,groundColor:new xe};break;case"RectAreaLight":e={color:new xe,position:new J,halfWidth:new J,halfHeight:new J};break}return i[t.id]=e,e}}}function BS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ce};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ce};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ce,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var kS=0;function zS(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function VS(i){let t=new OS,e=BS(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new J);let s=new J,r=new Fe,o=new Fe;function a(c){let u=0,d=0,h=0;for(let k=0;k<9;k++)n.probe[k].set(0,0,0);let f=0,m=0,x=0,_=0,p=0,y=0,T=0,b=0,I=0,w=0,g=0,S=0,F=0,C=0;c.sort(zS);for(let k=0,z=c.length;k<z;k++){let P=c[k],V=P.color,H=P.intensity,B=P.distance,q=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===Ys?q=P.shadow.map.texture:q=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)u+=V.r*H,d+=V.g*H,h+=V.b*H;else if(P.isLightProbe){for(let X=0;X<9;X++)n.probe[X].addScaledVector(P.sh.coefficients[X],H);C++}else if(P.isSunLight){let X=t.get(P);if(X.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let K=P.shadow,$=e.get(P);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize.copy(K.mapSize).multiply(K.getFrameExtents()),n.sunShadow[m]=$,n.sunShadowMap[m]=q;let ot=K.getViewportCount();for(let at=0;at<ot;at++)n.sunShadowMatrix[x+at]=K.getMatrix(at),n.sunShadowCascade[x+at]=K._cascadeData[at];x+=ot,m++}n.sun[f]=X,f++}else if(P.isDirectionalLight){let X=t.get(P);if(X.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let K=P.shadow,$=e.get(P);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize=K.mapSize,n.directionalShadow[_]=$,n.directionalShadowMap[_]=q,n.directionalShadowMatrix[_]=P.shadow.matrix,I++}n.directional[_]=X,_++}else if(P.isSpotLight){let X=t.get(P);X.position.setFromMatrixPosition(P.matrixWorld),X.color.copy(V).multiplyScalar(H),X.distance=B,X.coneCos=Math.cos(P.angle),X.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),X.decay=P.decay,n.spot[y]=X;let K=P.shadow;if(P.map&&(n.spotLightMap[S]=P.map,S++,K.updateMatrices(P),P.castShadow&&F++),n.spotLightMatrix[y]=K.matrix,P.castShadow){let $=e.get(P);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize=K.mapSize,n.spotShadow[y]=$,n.spotShadowMap[y]=q,g++}y++}else if(P.isRectAreaLight){let X=t.get(P);X.color.copy(V).multiplyScalar(H),X.halfWidth.set(P.width*.5,0,0),X.halfHeight.set(0,P.height*.5,0),n.rectArea[T]=X,T++}else if(P.isPointLight){let X=t.get(P);if(X.color.copy(P.color).multiplyScalar(P.intensity),X.distance=P.distance,X.decay=P.decay,P.castShadow){let K=P.shadow,$=e.get(P);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize=K.mapSize,$.shadowCameraNear=K.camera.near,$.shadowCameraFar=K.camera.far,n.pointShadow[p]=$,n.pointShadowMap[p]=q,n.pointShadowMatrix[p]=P.shadow.matrix,w++}n.point[p]=X,p++}else if(P.isHemisphereLight){let X=t.get(P);X.skyColor.copy(P.color).multiplyScalar(H),X.groundColor.copy(P.groundColor).multiplyScalar(H),n.hemi[b]=X,b++}}T>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=zt.LTC_FLOAT_1,n.rectAreaLTC2=zt.LTC_FLOAT_2):(n.rectAreaLTC1=zt.LTC_HALF_1,n.rectAreaLTC2=zt.LTC_HALF_2)),n.ambient[0]=u,n.ambient[1]=d,n.ambient[2]=h;let L=n.hash;(L.sunLength!==f||L.directionalLength!==_||L.pointLength!==p||L.spotLength!==y||L.rectAreaLength!==T||L.hemiLength!==b||L.numSunShadows!==m||L.numDirectionalShadows!==I||L.numPointShadows!==w||L.numSpotShadows!==g||L.numSpotMaps!==S||L.numLightProbes!==C)&&(n.sun.length=f,n.directional.length=_,n.spot.length=y,n.rectArea.length=T,n.point.length=p,n.hemi.length=b,n.sunShadow.length=m,n.sunShadowMap.length=m,n.sunShadowMatrix.length=x,n.sunShadowCascade.length=x,n.directionalShadow.length=I,n.directionalShadowMap.length=I,n.directionalShadowMatrix.length=I,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=g,n.spotShadowMap.length=g,n.spotLightMatrix.length=g+S-F,n.spotLightMap.length=S,n.numSpotLightShadowsWithMaps=F,n.numLightProbes=C,L.sunLength=f,L.directionalLength=_,L.pointLength=p,L.spotLength=y,L.rectAreaLength=T,L.hemiLength=b,L.numSunShadows=m,L.numDirectionalShadows=I,L.numPointShadows=w,L.numSpotShadows=g,L.numSpotMaps=S,L.numLightProbes=C,n.version=kS++)}function l(c,u){let d=0,h=0,f=0,m=0,x=0,_=0,p=u.matrixWorldInverse;for(let y=0,T=c.length;y<T;y++){let b=c[y];if(b.isSunLight){let I=n.sun[d];I.direction.setFromMatrixPosition(b.matrixWorld),I.direction.transformDirection(p),d++}else if(b.isDirectionalLight){let I=n.directional[h];I.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),I.direction.sub(s),I.direction.transformDirection(p),h++}else if(b.isSpotLight){let I=n.spot[m];I.position.setFromMatrixPosition(b.matrixWorld),I.position.applyMatrix4(p),I.direction.setFromMatrixPosition(b.matrixWorld),s.setFromMatrixPosition(b.target.matrixWorld),I.direction.sub(s),I.direction.transformDirection(p),m++}else if(b.isRectAreaLight){let I=n.rectArea[x];I.position.setFromMatrixPosition(b.matrixWorld),I.position.applyMatrix4(p),o.identity(),r.copy(b.matrixWorld),r.premultiply(p),o.extractRotation(r),I.halfWidth.set(b.width*.5,0,0),I.halfHeight.set(0,b.height*.5,0),I.halfWidth.applyMatrix4(o),I.halfHeight.applyMatrix4(o),x++}else if(b.isPointLight){let I=n.point[f];I.position.setFromMatrixPosition(b.matrixWorld),I.position.applyMatrix4(p),f++}else if(b.isHemisphereLight){let I=n.hemi[_];I.direction.setFromMatrixPosition(b.matrixWorld),I.direction.transformDirection(p),_++}}}return{setup:a,setupView:l,state:n}}function wm(i){let t=new VS(i),e=[],n=[],s=[];function r(d){u.camera=d,e.length=0,n.length=0,s.length=0}function o(d){d.isLightProbeGrid?s.push(d):e.push(d)}function a(d){n.push(d)}function l(){t.setup(e),s.sort((d,h)=>d.priority-h.priority||d.id-h.id)}function c(d){t.setupView(e,d)}let u={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:u,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function HS(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new wm(i),t.set(s,[a])):r>=o.length?(a=new wm(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var GS=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,WS=`uniform sampler2D shadow_pass;
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
}`,$S=[new J(1,0,0),new J(-1,0,0),new J(0,1,0),new J(0,-1,0),new J(0,0,1),new J(0,0,-1)],XS=[new J(0,-1,0),new J(0,-1,0),new J(0,0,1),new J(0,0,-1),new J(0,-1,0),new J(0,-1,0)],Em=new Fe,Na=new J,nd=new J;function qS(i,t,e){let n=new Vs,s=new ce,r=new ce,o=new nn,a=new Xl,l=new ql,c={},u=e.maxTextureSize,d={[qs]:Un,[Un]:qs,[Qi]:Qi},h=new ji({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new ce},radius:{value:4}},vertexShader:GS,fragmentShader:WS}),f=h.clone();f.defines.HORIZONTAL_PASS=1;let m=new Zn;m.setAttribute("position",new Ii(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let x=new gn(m,h),_=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Ta;let p=this.type;this.render=function(w,g,S){if(_.enabled===!1||_.autoUpdate===!1&&_.needsUpdate===!1||w.length===0)return;this.type===xp&&(re("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Ta);let F=i.getRenderTarget(),C=i.getActiveCubeFace(),L=i.getActiveMipmapLevel(),k=i.state;k.setBlending(mr),k.buffers.depth.getReversed()===!0?k.buffers.color.setClear(0,0,0,0):k.buffers.color.setClear(1,1,1,1),k.buffers.depth.setTest(!0),k.setScissorTest(!1);let z=p!==this.type;z&&g.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(V=>V.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,V=w.length;P<V;P++){let H=w[P],B=H.shadow;if(B===void 0){re("WebGLShadowMap:",H,"has no shadow.");continue}if(B.autoUpdate===!1&&B.needsUpdate===!1)continue;s.copy(B.mapSize);let q=B.getFrameExtents();s.multiply(q),r.copy(B.mapSize),(s.x>u||s.y>u)&&(s.x>u&&(r.x=Math.floor(u/q.x),s.x=r.x*q.x,B.mapSize.x=r.x),s.y>u&&(r.y=Math.floor(u/q.y),s.y=r.y*q.y,B.mapSize.y=r.y));let X=i.state.buffers.depth.getReversed();if(B.camera._reversedDepth=X,B.map===null||z===!0){if(B.map!==null&&(B.map.depthTexture!==null&&(B.map.depthTexture.dispose(),B.map.depthTexture=null),B.map.dispose()),this.type===go){if(H.isPointLight){re("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}B.map=new hi(s.x,s.y,{format:Ys,type:Ni,minFilter:Yn,magFilter:Yn,generateMipmaps:!1}),B.map.texture.name=H.name+".shadowMap",B.map.depthTexture=new Ms(s.x,s.y,Mi),B.map.depthTexture.name=H.name+".shadowMapDepth",B.map.depthTexture.format=_s,B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=In,B.map.depthTexture.magFilter=In}else H.isPointLight?(B.map=new Ua(s.x),B.map.depthTexture=new fa(s.x,Di)):(B.map=new hi(s.x,s.y),B.map.depthTexture=new Ms(s.x,s.y,Di)),B.map.depthTexture.name=H.name+".shadowMap",B.map.depthTexture.format=_s,this.type===Ta?(B.map.depthTexture.compareFunction=X?Gu:Hu,B.map.depthTexture.minFilter=Yn,B.map.depthTexture.magFilter=Yn):(B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=In,B.map.depthTexture.magFilter=In);B.camera.updateProjectionMatrix()}B.map.isWebGLCubeRenderTarget!==!0&&(B.map.width!==s.x||B.map.height!==s.y)&&B.map.setSize(s.x,s.y);let K=B.map.isWebGLCubeRenderTarget?6:B.getViewportCount();H.isPointLight!==!0&&B.updateMatrices(H,S);let $=(B.camera.layers.mask&4294967294)!==0?B.camera.layers:S.layers;for(let ot=0;ot<K;ot++){let at=B.getCamera(ot);if(H.isPointLight){let Q=B.camera,xt=B.matrix,Z=H.distance||Q.far;Z!==Q.far&&(Q.far=Z,Q.updateProjectionMatrix()),Na.setFromMatrixPosition(H.matrixWorld),Q.position.copy(Na),nd.copy(Q.position),nd.add($S[ot]),Q.up.copy(XS[ot]),Q.lookAt(nd),Q.updateMatrixWorld(),xt.makeTranslation(-Na.x,-Na.y,-Na.z),Em.multiplyMatrices(Q.projectionMatrix,Q.matrixWorldInverse),B._frustum.setFromProjectionMatrix(Em,Q.coordinateSystem,Q.reversedDepth)}if(B.map.isWebGLCubeRenderTarget)i.setRenderTarget(B.map,ot),i.clear();else{ot===0&&(i.setRenderTarget(B.map),i.clear());let Q=B.getViewport(ot);o.set(r.x*Q.x,r.y*Q.y,r.x*Q.z,r.y*Q.w),k.viewport(o)}n=B.getFrustum(ot),b(g,S,at,H,$,this.type)}B.isPointLightShadow!==!0&&this.type===go&&y(B,S),B.needsUpdate=!1}p=this.type,_.needsUpdate=!1,i.setRenderTarget(F,C,L)};function y(w,g){let S=t.update(x);h.defines.VSM_SAMPLES!==w.blurSamples&&(h.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,h.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new hi(s.x,s.y,{format:Ys,type:Ni}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),h.uniforms.shadow_pass.value=w.map.depthTexture,h.uniforms.resolution.value.set(w.map.width,w.map.height),h.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(g,null,S,h,x,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(g,null,S,f,x,null)}function T(w,g,S,F){let C=null,L=S.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(L!==void 0)C=L;else if(C=S.isPointLight===!0?l:a,i.localClippingEnabled&&g.clipShadows===!0&&Array.isArray(g.clippingPlanes)&&g.clippingPlanes.length!==0||g.displacementMap&&g.displacementScale!==0||g.alphaMap&&g.alphaTest>0||g.map&&g.alphaTest>0||g.alphaToCoverage===!0){let k=C.uuid,z=g.uuid,P=c[k];P===void 0&&(P={},c[k]=P);let V=P[z];V===void 0&&(V=C.clone(),P[z]=V,g.addEventListener("dispose",I)),C=V}if(C.visible=g.visible,C.wireframe=g.wireframe,F===go?C.side=g.shadowSide!==null?g.shadowSide:g.side:C.side=g.shadowSide!==null?g.shadowSide:d[g.side],C.alphaMap=g.alphaMap,C.alphaTest=g.alphaToCoverage===!0?.5:g.alphaTest,C.map=g.map,C.clipShadows=g.clipShadows,C.clippingPlanes=g.clippingPlanes,C.clipIntersection=g.clipIntersection,C.displacementMap=g.displacementMap,C.displacementScale=g.displacementScale,C.displacementBias=g.displacementBias,C.wireframeLinewidth=g.wireframeLinewidth,C.linewidth=g.linewidth,S.isPointLight===!0&&C.isMeshDistanceMaterial===!0){let k=i.properties.get(C);k.light=S}return C}function b(w,g,S,F,C,L){if(w.visible===!1)return;if(w.layers.test(C)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&L===go)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(S.matrixWorldInverse,w.matrixWorld);let P=t.update(w),V=w.material;if(Array.isArray(V)){let H=P.groups;for(let B=0,q=H.length;B<q;B++){let X=H[B],K=V[X.materialIndex];if(K&&K.visible){let $=T(w,K,F,L);w.onBeforeShadow(i,w,g,S,P,$,X),i.renderBufferDirect(S,null,P,$,w,X),w.onAfterShadow(i,w,g,S,P,$,X)}}}else if(V.visible){let H=T(w,V,F,L);w.onBeforeShadow(i,w,g,S,P,H,null),i.renderBufferDirect(S,null,P,H,w,null),w.onAfterShadow(i,w,g,S,P,H,null)}}let z=w.children;for(let P=0,V=z.length;P<V;P++)b(z[P],g,S,F,C,L)}function I(w){w.target.removeEventListener("dispose",I);for(let S in c){let F=c[S],C=w.target.uuid;C in F&&(F[C].dispose(),delete F[C])}}}function YS(i,t){function e(){let G=!1,ft=new nn,ct=null,Nt=new nn(0,0,0,0);return{setMask:function(At){ct!==At&&!G&&(i.colorMask(At,At,At,At),ct=At)},setLocked:function(At){G=At},setClear:function(At,Dt,te,ae,vt){vt===!0&&(At*=ae,Dt*=ae,te*=ae),ft.set(At,Dt,te,ae),Nt.equals(ft)===!1&&(i.clearColor(At,Dt,te,ae),Nt.copy(ft))},reset:function(){G=!1,ct=null,Nt.set(-1,0,0,0)}}}function n(){let G=!1,ft=!1,ct=null,Nt=null,At=null;return{setReversed:function(Dt){if(ft!==Dt){let te=t.get("EXT_clip_control");Dt?te.clipControlEXT(te.LOWER_LEFT_EXT,te.ZERO_TO_ONE_EXT):te.clipControlEXT(te.LOWER_LEFT_EXT,te.NEGATIVE_ONE_TO_ONE_EXT),ft=Dt;let ae=At;At=null,this.setClear(ae)}},getReversed:function(){return ft},setTest:function(Dt){Dt?st(i.DEPTH_TEST):gt(i.DEPTH_TEST)},setMask:function(Dt){ct!==Dt&&!G&&(i.depthMask(Dt),ct=Dt)},setFunc:function(Dt){if(ft&&(Dt=jp[Dt]),Nt!==Dt){switch(Dt){case Cl:i.depthFunc(i.NEVER);break;case Pl:i.depthFunc(i.ALWAYS);break;case Il:i.depthFunc(i.LESS);break;case so:i.depthFunc(i.LEQUAL);break;case Ll:i.depthFunc(i.EQUAL);break;case Dl:i.depthFunc(i.GEQUAL);break;case ro:i.depthFunc(i.GREATER);break;case Nl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Nt=Dt}},setLocked:function(Dt){G=Dt},setClear:function(Dt){At!==Dt&&(At=Dt,ft&&(Dt=1-Dt),i.clearDepth(Dt))},reset:function(){G=!1,ct=null,Nt=null,At=null,ft=!1}}}function s(){let G=!1,ft=null,ct=null,Nt=null,At=null,Dt=null,te=null,ae=null,vt=null;return{setTest:function(Yt){G||(Yt?st(i.STENCIL_TEST):gt(i.STENCIL_TEST))},setMask:function(Yt){ft!==Yt&&!G&&(i.stencilMask(Yt),ft=Yt)},setFunc:function(Yt,le,Ot){(ct!==Yt||Nt!==le||At!==Ot)&&(i.stencilFunc(Yt,le,Ot),ct=Yt,Nt=le,At=Ot)},setOp:function(Yt,le,Ot){(Dt!==Yt||te!==le||ae!==Ot)&&(i.stencilOp(Yt,le,Ot),Dt=Yt,te=le,ae=Ot)},setLocked:function(Yt){G=Yt},setClear:function(Yt){vt!==Yt&&(i.clearStencil(Yt),vt=Yt)},reset:function(){G=!1,ft=null,ct=null,Nt=null,At=null,Dt=null,te=null,ae=null,vt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,u={},d={},h={},f=new WeakMap,m=[],x=null,_=!1,p=null,y=null,T=null,b=null,I=null,w=null,g=null,S=new xe(0,0,0),F=0,C=!1,L=null,k=null,z=null,P=null,V=null,H=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),B=!1,q=0,X=i.getParameter(i.VERSION);X.indexOf("WebGL")!==-1?(q=parseFloat(/^WebGL (\d)/.exec(X)[1]),B=q>=1):X.indexOf("OpenGL ES")!==-1&&(q=parseFloat(/^OpenGL ES (\d)/.exec(X)[1]),B=q>=2);let K=null,$={},ot=i.getParameter(i.SCISSOR_BOX),at=i.getParameter(i.VIEWPORT),Q=new nn().fromArray(ot),xt=new nn().fromArray(at);function Z(G,ft,ct,Nt){let At=new Uint8Array(4),Dt=i.createTexture();i.bindTexture(G,Dt),i.texParameteri(G,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(G,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let te=0;te<ct;te++)G===i.TEXTURE_3D||G===i.TEXTURE_2D_ARRAY?i.texImage3D(ft,0,i.RGBA,1,1,Nt,0,i.RGBA,i.UNSIGNED_BYTE,At):i.texImage2D(ft+te,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,At);return Dt}let nt={};nt[i.TEXTURE_2D]=Z(i.TEXTURE_2D,i.TEXTURE_2D,1),nt[i.TEXTURE_CUBE_MAP]=Z(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),nt[i.TEXTURE_2D_ARRAY]=Z(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),nt[i.TEXTURE_3D]=Z(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),st(i.DEPTH_TEST),o.setFunc(so),_e(!1),pe(Su),st(i.CULL_FACE),Ee(mr);function st(G){u[G]!==!0&&(i.enable(G),u[G]=!0)}function gt(G){u[G]!==!1&&(i.disable(G),u[G]=!1)}function Ct(G,ft){return h[G]!==ft?(i.bindFramebuffer(G,ft),h[G]=ft,G===i.DRAW_FRAMEBUFFER&&(h[i.FRAMEBUFFER]=ft),G===i.FRAMEBUFFER&&(h[i.DRAW_FRAMEBUFFER]=ft),!0):!1}function St(G,ft){let ct=m,Nt=!1;if(G){ct=f.get(ft),ct===void 0&&(ct=[],f.set(ft,ct));let At=G.textures;if(ct.length!==At.length||ct[0]!==i.COLOR_ATTACHMENT0){for(let Dt=0,te=At.length;Dt<te;Dt++)ct[Dt]=i.COLOR_ATTACHMENT0+Dt;ct.length=At.length,Nt=!0}}else ct[0]!==i.BACK&&(ct[0]=i.BACK,Nt=!0);Nt&&i.drawBuffers(ct)}function ne(G){return x!==G?(i.useProgram(G),x=G,!0):!1}let se={[gr]:i.FUNC_ADD,[vp]:i.FUNC_SUBTRACT,[Mp]:i.FUNC_REVERSE_SUBTRACT};se[Sp]=i.MIN,se[bp]=i.MAX;let Kt={[wp]:i.ZERO,[Ep]:i.ONE,[Tp]:i.SRC_COLOR,[Tu]:i.SRC_ALPHA,[Lp]:i.SRC_ALPHA_SATURATE,[Pp]:i.DST_COLOR,[Rp]:i.DST_ALPHA,[Ap]:i.ONE_MINUS_SRC_COLOR,[Au]:i.ONE_MINUS_SRC_ALPHA,[Ip]:i.ONE_MINUS_DST_COLOR,[Cp]:i.ONE_MINUS_DST_ALPHA,[Dp]:i.CONSTANT_COLOR,[Np]:i.ONE_MINUS_CONSTANT_COLOR,[Fp]:i.CONSTANT_ALPHA,[Up]:i.ONE_MINUS_CONSTANT_ALPHA};function Ee(G,ft,ct,Nt,At,Dt,te,ae,vt,Yt){if(G===mr){_===!0&&(gt(i.BLEND),_=!1);return}if(_===!1&&(st(i.BLEND),_=!0),G!==yp){if(G!==p||Yt!==C){if((y!==gr||I!==gr)&&(i.blendEquation(i.FUNC_ADD),y=gr,I=gr),Yt)switch(G){case _o:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case bu:i.blendFunc(i.ONE,i.ONE);break;case wu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Eu:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ue("WebGLState: Invalid blending: ",G);break}else switch(G){case _o:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case bu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case wu:ue("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Eu:ue("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ue("WebGLState: Invalid blending: ",G);break}T=null,b=null,w=null,g=null,S.set(0,0,0),F=0,p=G,C=Yt}return}At=At||ft,Dt=Dt||ct,te=te||Nt,(ft!==y||At!==I)&&(i.blendEquationSeparate(se[ft],se[At]),y=ft,I=At),(ct!==T||Nt!==b||Dt!==w||te!==g)&&(i.blendFuncSeparate(Kt[ct],Kt[Nt],Kt[Dt],Kt[te]),T=ct,b=Nt,w=Dt,g=te),(ae.equals(S)===!1||vt!==F)&&(i.blendColor(ae.r,ae.g,ae.b,vt),S.copy(ae),F=vt),p=G,C=!1}function Qt(G,ft){G.side===Qi?gt(i.CULL_FACE):st(i.CULL_FACE);let ct=G.side===Un;ft&&(ct=!ct),_e(ct),G.blending===_o&&G.transparent===!1?Ee(mr):Ee(G.blending,G.blendEquation,G.blendSrc,G.blendDst,G.blendEquationAlpha,G.blendSrcAlpha,G.blendDstAlpha,G.blendColor,G.blendAlpha,G.premultipliedAlpha),o.setFunc(G.depthFunc),o.setTest(G.depthTest),o.setMask(G.depthWrite),r.setMask(G.colorWrite);let Nt=G.stencilWrite;a.setTest(Nt),Nt&&(a.setMask(G.stencilWriteMask),a.setFunc(G.stencilFunc,G.stencilRef,G.stencilFuncMask),a.setOp(G.stencilFail,G.stencilZFail,G.stencilZPass)),ht(G.polygonOffset,G.polygonOffsetFactor,G.polygonOffsetUnits),G.alphaToCoverage===!0?st(i.SAMPLE_ALPHA_TO_COVERAGE):gt(i.SAMPLE_ALPHA_TO_COVERAGE)}function _e(G){L!==G&&(G?i.frontFace(i.CW):i.frontFace(i.CCW),L=G)}function pe(G){G!==gp?(st(i.CULL_FACE),G!==k&&(G===Su?i.cullFace(i.BACK):G===_p?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):gt(i.CULL_FACE),k=G}function Pe(G){G!==z&&(B&&i.lineWidth(G),z=G)}function ht(G,ft,ct){G?(st(i.POLYGON_OFFSET_FILL),(P!==ft||V!==ct)&&(P=ft,V=ct,o.getReversed()&&(ft=-ft,ct=-ct),i.polygonOffset(ft,ct))):gt(i.POLYGON_OFFSET_FILL)}function Lt(G){G?st(i.SCISSOR_TEST):gt(i.SCISSOR_TEST)}function Tt(G){G===void 0&&(G=i.TEXTURE0+H-1),K!==G&&(i.activeTexture(G),K=G)}function Xt(G,ft,ct){ct===void 0&&(K===null?ct=i.TEXTURE0+H-1:ct=K);let Nt=$[ct];Nt===void 0&&(Nt={type:void 0,texture:void 0},$[ct]=Nt),(Nt.type!==G||Nt.texture!==ft)&&(K!==ct&&(i.activeTexture(ct),K=ct),i.bindTexture(G,ft||nt[G]),Nt.type=G,Nt.texture=ft)}function O(){let G=$[K];G!==void 0&&G.type!==void 0&&(i.bindTexture(G.type,null),G.type=void 0,G.texture=void 0)}function yt(){try{i.compressedTexImage2D(...arguments)}catch(G){ue("WebGLState:",G)}}function Wt(){try{i.compressedTexImage3D(...arguments)}catch(G){ue("WebGLState:",G)}}function Ht(){try{i.texSubImage2D(...arguments)}catch(G){ue("WebGLState:",G)}}function bt(){try{i.texSubImage3D(...arguments)}catch(G){ue("WebGLState:",G)}}function Ie(){try{i.compressedTexSubImage2D(...arguments)}catch(G){ue("WebGLState:",G)}}function jt(){try{i.compressedTexSubImage3D(...arguments)}catch(G){ue("WebGLState:",G)}}function ie(){try{i.texStorage2D(...arguments)}catch(G){ue("WebGLState:",G)}}function D(){try{i.texStorage3D(...arguments)}catch(G){ue("WebGLState:",G)}}function E(){try{i.texImage2D(...arguments)}catch(G){ue("WebGLState:",G)}}function j(){try{i.texImage3D(...arguments)}catch(G){ue("WebGLState:",G)}}function Mt(G){return d[G]!==void 0?d[G]:i.getParameter(G)}function mt(G,ft){d[G]!==ft&&(i.pixelStorei(G,ft),d[G]=ft)}function Rt(G){Q.equals(G)===!1&&(i.scissor(G.x,G.y,G.z,G.w),Q.copy(G))}function Pt(G){xt.equals(G)===!1&&(i.viewport(G.x,G.y,G.z,G.w),xt.copy(G))}function lt(G,ft){let ct=c.get(ft);ct===void 0&&(ct=new WeakMap,c.set(ft,ct));let Nt=ct.get(G);Nt===void 0&&(Nt=i.getUniformBlockIndex(ft,G.name),i.uniformBlockBinding(ft,Nt,Nt),ct.set(G,Nt))}function dt(G,ft,ct){let At=c.get(ft).get(G);l[At]!==ct&&(i.bindBufferBase(i.UNIFORM_BUFFER,At,ct),l[At]=ct)}function Et(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),u={},d={},K=null,$={},h={},l={},f=new WeakMap,m=[],x=null,_=!1,p=null,y=null,T=null,b=null,I=null,w=null,g=null,S=new xe(0,0,0),F=0,C=!1,L=null,k=null,z=null,P=null,V=null,Q.set(0,0,i.canvas.width,i.canvas.height),xt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:st,disable:gt,bindFramebuffer:Ct,drawBuffers:St,useProgram:ne,setBlending:Ee,setMaterial:Qt,setFlipSided:_e,setCullFace:pe,setLineWidth:Pe,setPolygonOffset:ht,setScissorTest:Lt,activeTexture:Tt,bindTexture:Xt,unbindTexture:O,compressedTexImage2D:yt,compressedTexImage3D:Wt,texImage2D:E,texImage3D:j,pixelStorei:mt,getParameter:Mt,updateUBOMapping:lt,uniformBlockBinding:dt,texStorage2D:ie,texStorage3D:D,texSubImage2D:Ht,texSubImage3D:bt,compressedTexSubImage2D:Ie,compressedTexSubImage3D:jt,scissor:Rt,viewport:Pt,reset:Et}}function ZS(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new ce,u=new WeakMap,d=new Set,h,f=new WeakMap,m=new Set,x=new FinalizationRegistry(D=>m.delete(D)),_=!1;try{_=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function p(D,E){return _?new OffscreenCanvas(D,E):ia("canvas")}function y(D,E,j){let Mt=1,mt=ie(D);if((mt.width>j||mt.height>j)&&(Mt=j/Math.max(mt.width,mt.height)),Mt<1)if(typeof HTMLImageElement<"u"&&D instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&D instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&D instanceof ImageBitmap||typeof VideoFrame<"u"&&D instanceof VideoFrame){let Rt=Math.floor(Mt*mt.width),Pt=Math.floor(Mt*mt.height);h===void 0&&(h=p(Rt,Pt));let lt=E?p(Rt,Pt):h;return lt.width=Rt,lt.height=Pt,lt.getContext("2d").drawImage(D,0,0,Rt,Pt),re("WebGLRenderer: Texture has been resized from ("+mt.width+"x"+mt.height+") to ("+Rt+"x"+Pt+")."),lt}else return"data"in D&&re("WebGLRenderer: Image in DataTexture is too big ("+mt.width+"x"+mt.height+")."),D;return D}function T(D){return D.generateMipmaps}function b(D){i.generateMipmap(D)}function I(D){return D.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:D.isWebGL3DRenderTarget?i.TEXTURE_3D:D.isWebGLArrayRenderTarget||D.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(D,E,j,Mt,mt,Rt=!1){if(D!==null){if(i[D]!==void 0)return i[D];re("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+D+"'")}let Pt;Mt&&(Pt=t.get("EXT_texture_norm16"),Pt||re("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let lt=E;if(E===i.RED&&(j===i.FLOAT&&(lt=i.R32F),j===i.HALF_FLOAT&&(lt=i.R16F),j===i.UNSIGNED_BYTE&&(lt=i.R8),j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.R16_EXT),j===i.SHORT&&Pt&&(lt=Pt.R16_SNORM_EXT)),E===i.RED_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.R8UI),j===i.UNSIGNED_SHORT&&(lt=i.R16UI),j===i.UNSIGNED_INT&&(lt=i.R32UI),j===i.BYTE&&(lt=i.R8I),j===i.SHORT&&(lt=i.R16I),j===i.INT&&(lt=i.R32I)),E===i.RG&&(j===i.FLOAT&&(lt=i.RG32F),j===i.HALF_FLOAT&&(lt=i.RG16F),j===i.UNSIGNED_BYTE&&(lt=i.RG8),j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.RG16_EXT),j===i.SHORT&&Pt&&(lt=Pt.RG16_SNORM_EXT)),E===i.RG_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.RG8UI),j===i.UNSIGNED_SHORT&&(lt=i.RG16UI),j===i.UNSIGNED_INT&&(lt=i.RG32UI),j===i.BYTE&&(lt=i.RG8I),j===i.SHORT&&(lt=i.RG16I),j===i.INT&&(lt=i.RG32I)),E===i.RGB_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.RGB8UI),j===i.UNSIGNED_SHORT&&(lt=i.RGB16UI),j===i.UNSIGNED_INT&&(lt=i.RGB32UI),j===i.BYTE&&(lt=i.RGB8I),j===i.SHORT&&(lt=i.RGB16I),j===i.INT&&(lt=i.RGB32I)),E===i.RGBA_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.RGBA8UI),j===i.UNSIGNED_SHORT&&(lt=i.RGBA16UI),j===i.UNSIGNED_INT&&(lt=i.RGBA32UI),j===i.BYTE&&(lt=i.RGBA8I),j===i.SHORT&&(lt=i.RGBA16I),j===i.INT&&(lt=i.RGBA32I)),E===i.RGB&&(j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.RGB16_EXT),j===i.SHORT&&Pt&&(lt=Pt.RGB16_SNORM_EXT),j===i.UNSIGNED_INT_5_9_9_9_REV&&(lt=i.RGB9_E5),j===i.UNSIGNED_INT_10F_11F_11F_REV&&(lt=i.R11F_G11F_B10F)),E===i.RGBA){let dt=Rt?na:Re.getTransfer(mt);j===i.FLOAT&&(lt=i.RGBA32F),j===i.HALF_FLOAT&&(lt=i.RGBA16F),j===i.UNSIGNED_BYTE&&(lt=dt===Be?i.SRGB8_ALPHA8:i.RGBA8),j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.RGBA16_EXT),j===i.SHORT&&Pt&&(lt=Pt.RGBA16_SNORM_EXT),j===i.UNSIGNED_SHORT_4_4_4_4&&(lt=i.RGBA4),j===i.UNSIGNED_SHORT_5_5_5_1&&(lt=i.RGB5_A1)}return(lt===i.R16F||lt===i.R32F||lt===i.RG16F||lt===i.RG32F||lt===i.RGBA16F||lt===i.RGBA32F)&&t.get("EXT_color_buffer_float"),lt}function g(D,E){let j;return D?E===null||E===Di||E===xr?j=i.DEPTH24_STENCIL8:E===Mi?j=i.DEPTH32F_STENCIL8:E===yo&&(j=i.DEPTH24_STENCIL8,re("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):E===null||E===Di||E===xr?j=i.DEPTH_COMPONENT24:E===Mi?j=i.DEPTH_COMPONENT32F:E===yo&&(j=i.DEPTH_COMPONENT16),j}function S(D,E){return T(D)===!0||D.isFramebufferTexture&&D.minFilter!==In&&D.minFilter!==Yn?Math.log2(Math.max(E.width,E.height))+1:D.mipmaps.length>0?D.mipmaps.length:D.isCompressedTexture&&Array.isArray(D.image)?E.mipmaps.length:1}function F(D){let E=new WeakRef(D);n.get(D).__ref=E,m.add(E),x.register(D,E,E)}function C(D){let E=n.get(D).__ref;E!==void 0&&(m.delete(E),x.unregister(E))}function L(D){z(D.target)}function k(D){P(D.target)}function z(D){D.removeEventListener("dispose",L),C(D),H(D),D.isVideoTexture&&u.delete(D),D.isHTMLTexture&&d.delete(D)}function P(D){D.removeEventListener("dispose",k),C(D),q(D)}function V(){for(let D of m){let E=D.deref();E!==void 0&&(E.isRenderTarget===!0?P(E):z(E))}m.clear(),d.clear()}function H(D){let E=n.get(D);if(E.__webglInit===void 0)return;let j=D.source,Mt=f.get(j);if(Mt){let mt=Mt[E.__cacheKey];mt.usedTimes--,mt.usedTimes===0&&B(D),Object.keys(Mt).length===0&&f.delete(j)}n.remove(D)}function B(D){let E=n.get(D);i.deleteTexture(E.__webglTexture);let j=D.source,Mt=f.get(j);delete Mt[E.__cacheKey],o.memory.textures--}function q(D){let E=n.get(D);E.__depthDisposeCallback&&E.__depthDisposeCallback();let j=D.depthTexture;if(j&&j.renderTarget===D&&z(j),D.isWebGLCubeRenderTarget)for(let mt=0;mt<6;mt++){if(Array.isArray(E.__webglFramebuffer[mt]))for(let Rt=0;Rt<E.__webglFramebuffer[mt].length;Rt++)i.deleteFramebuffer(E.__webglFramebuffer[mt][Rt]);else i.deleteFramebuffer(E.__webglFramebuffer[mt]);E.__webglDepthbuffer&&i.deleteRenderbuffer(E.__webglDepthbuffer[mt])}else{if(Array.isArray(E.__webglFramebuffer))for(let mt=0;mt<E.__webglFramebuffer.length;mt++)i.deleteFramebuffer(E.__webglFramebuffer[mt]);else i.deleteFramebuffer(E.__webglFramebuffer);if(E.__webglDepthbuffer&&i.deleteRenderbuffer(E.__webglDepthbuffer),E.__webglMultisampledFramebuffer&&i.deleteFramebuffer(E.__webglMultisampledFramebuffer),E.__webglColorRenderbuffer)for(let mt=0;mt<E.__webglColorRenderbuffer.length;mt++)E.__webglColorRenderbuffer[mt]&&i.deleteRenderbuffer(E.__webglColorRenderbuffer[mt]);E.__webglDepthRenderbuffer&&i.deleteRenderbuffer(E.__webglDepthRenderbuffer)}let Mt=D.textures;for(let mt=0,Rt=Mt.length;mt<Rt;mt++){let Pt=n.get(Mt[mt]);Pt.__webglTexture&&(i.deleteTexture(Pt.__webglTexture),o.memory.textures--),n.remove(Mt[mt])}n.remove(D)}let X=0;function K(){X=0}function $(){return X}function ot(D){X=D}function at(){let D=X;return D>=s.maxTextures&&re("WebGLTextures: Trying to use "+(D+1)+" texture units while this GPU supports only "+s.maxTextures),X+=1,D}function Q(D){let E=[];return E.push(D.wrapS),E.push(D.wrapT),E.push(D.wrapR||0),E.push(D.magFilter),E.push(D.minFilter),E.push(D.anisotropy),E.push(D.internalFormat),E.push(D.format),E.push(D.type),E.push(D.generateMipmaps),E.push(D.mipmapsAutoUpdate),E.push(D.premultiplyAlpha),E.push(D.flipY),E.push(D.unpackAlignment),E.push(D.colorSpace),E.join()}function xt(D,E){let j=n.get(D);if(D.isVideoTexture&&Ie(D),D.isRenderTargetTexture===!1&&D.isExternalTexture!==!0&&D.version>0&&j.__version!==D.version){let Mt=D.image;if(Mt===null)re("WebGLRenderer: Texture marked for update but no image data found.");else if(Mt.complete===!1)re("WebGLRenderer: Texture marked for update but image is incomplete");else{Qt(j,D,E);return}}else D.isExternalTexture&&(j.__webglTexture=D.sourceTexture?D.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,j.__webglTexture,i.TEXTURE0+E)}function Z(D,E){let j=n.get(D);if(D.isRenderTargetTexture===!1&&D.version>0&&j.__version!==D.version){Qt(j,D,E);return}else D.isExternalTexture&&(j.__webglTexture=D.sourceTexture?D.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,j.__webglTexture,i.TEXTURE0+E)}function nt(D,E){let j=n.get(D);if(D.isRenderTargetTexture===!1&&D.version>0&&j.__version!==D.version){Qt(j,D,E);return}e.bindTexture(i.TEXTURE_3D,j.__webglTexture,i.TEXTURE0+E)}function st(D,E){let j=n.get(D);if(D.version>0&&j.__version!==D.version){_e(j,D,E);return}e.bindTexture(i.TEXTURE_CUBE_MAP,j.__webglTexture,i.TEXTURE0+E)}let gt={[Fl]:i.REPEAT,[Yi]:i.CLAMP_TO_EDGE,[Ul]:i.MIRRORED_REPEAT},Ct={[In]:i.NEAREST,[kp]:i.NEAREST_MIPMAP_NEAREST,[Aa]:i.NEAREST_MIPMAP_LINEAR,[Yn]:i.LINEAR,[cc]:i.LINEAR_MIPMAP_NEAREST,[bs]:i.LINEAR_MIPMAP_LINEAR},St={[Gp]:i.NEVER,[Wu]:i.ALWAYS,[Wp]:i.LESS,[Hu]:i.LEQUAL,[$p]:i.EQUAL,[Gu]:i.GEQUAL,[Xp]:i.GREATER,[qp]:i.NOTEQUAL};function ne(D,E){if(E.type===Mi&&t.has("OES_texture_float_linear")===!1&&(E.magFilter===Yn||E.magFilter===cc||E.magFilter===Aa||E.magFilter===bs||E.minFilter===Yn||E.minFilter===cc||E.minFilter===Aa||E.minFilter===bs)&&re("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(D,i.TEXTURE_WRAP_S,gt[E.wrapS]),i.texParameteri(D,i.TEXTURE_WRAP_T,gt[E.wrapT]),(D===i.TEXTURE_3D||D===i.TEXTURE_2D_ARRAY)&&i.texParameteri(D,i.TEXTURE_WRAP_R,gt[E.wrapR]),i.texParameteri(D,i.TEXTURE_MAG_FILTER,Ct[E.magFilter]),i.texParameteri(D,i.TEXTURE_MIN_FILTER,Ct[E.minFilter]),E.compareFunction&&(i.texParameteri(D,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(D,i.TEXTURE_COMPARE_FUNC,St[E.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(E.magFilter===In||E.minFilter!==Aa&&E.minFilter!==bs||E.type===Mi&&t.has("OES_texture_float_linear")===!1)return;if(E.anisotropy>1||n.get(E).__currentAnisotropy){let j=t.get("EXT_texture_filter_anisotropic");i.texParameterf(D,j.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(E.anisotropy,s.getMaxAnisotropy())),n.get(E).__currentAnisotropy=E.anisotropy}}}function se(D,E){let j=!1;D.__webglInit===void 0&&(D.__webglInit=!0,E.addEventListener("dispose",L),F(E));let Mt=E.source,mt=f.get(Mt);mt===void 0&&(mt={},f.set(Mt,mt));let Rt=Q(E);if(Rt!==D.__cacheKey){mt[Rt]===void 0&&(mt[Rt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,j=!0),mt[Rt].usedTimes++;let Pt=mt[D.__cacheKey];Pt!==void 0&&(mt[D.__cacheKey].usedTimes--,Pt.usedTimes===0&&B(E)),D.__cacheKey=Rt,D.__webglTexture=mt[Rt].texture}return j}function Kt(D,E,j){return Math.floor(Math.floor(D/j)/E)}function Ee(D,E,j,Mt){let Rt=D.updateRanges;if(Rt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,E.width,E.height,j,Mt,E.data);else{Rt.sort((G,ft)=>G.start-ft.start);let Pt=0;for(let G=1;G<Rt.length;G++){let ft=Rt[Pt],ct=Rt[G],Nt=ft.start+ft.count,At=Kt(ct.start,E.width,4),Dt=Kt(ft.start,E.width,4);ct.start<=Nt+1&&At===Dt&&Kt(ct.start+ct.count-1,E.width,4)===At?ft.count=Math.max(ft.count,ct.start+ct.count-ft.start):(++Pt,Rt[Pt]=ct)}Rt.length=Pt+1;let lt=e.getParameter(i.UNPACK_ROW_LENGTH),dt=e.getParameter(i.UNPACK_SKIP_PIXELS),Et=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,E.width);for(let G=0,ft=Rt.length;G<ft;G++){let ct=Rt[G],Nt=Math.floor(ct.start/4),At=Math.ceil(ct.count/4),Dt=Nt%E.width,te=Math.floor(Nt/E.width),ae=At,vt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,Dt),e.pixelStorei(i.UNPACK_SKIP_ROWS,te),e.texSubImage2D(i.TEXTURE_2D,0,Dt,te,ae,vt,j,Mt,E.data)}D.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,lt),e.pixelStorei(i.UNPACK_SKIP_PIXELS,dt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Et)}}function Qt(D,E,j){let Mt=i.TEXTURE_2D;(E.isDataArrayTexture||E.isCompressedArrayTexture)&&(Mt=i.TEXTURE_2D_ARRAY),E.isData3DTexture&&(Mt=i.TEXTURE_3D);let mt=se(D,E),Rt=E.source;e.bindTexture(Mt,D.__webglTexture,i.TEXTURE0+j);let Pt=n.get(Rt);if(Rt.version!==Pt.__version||mt===!0){if(e.activeTexture(i.TEXTURE0+j),(typeof ImageBitmap<"u"&&E.image instanceof ImageBitmap)===!1){let vt=Re.getPrimaries(Re.workingColorSpace),Yt=E.colorSpace===Es?null:Re.getPrimaries(E.colorSpace),le=E.colorSpace===Es||vt===Yt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,E.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,E.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,le)}e.pixelStorei(i.UNPACK_ALIGNMENT,E.unpackAlignment);let dt=y(E.image,!1,s.maxTextureSize);dt=jt(E,dt);let Et=r.convert(E.format,E.colorSpace),G=r.convert(E.type),ft=w(E.internalFormat,Et,G,E.normalized,E.colorSpace,E.isVideoTexture);ne(Mt,E);let ct,Nt=E.mipmaps,At=E.isVideoTexture!==!0,Dt=Pt.__version===void 0||mt===!0,te=Rt.dataReady,ae=S(E,dt);if(E.isDepthTexture)ft=g(E.format===ws,E.type),Dt&&(At?e.texStorage2D(i.TEXTURE_2D,1,ft,dt.width,dt.height):e.texImage2D(i.TEXTURE_2D,0,ft,dt.width,dt.height,0,Et,G,null));else if(E.isDataTexture)if(Nt.length>0){At&&Dt&&e.texStorage2D(i.TEXTURE_2D,ae,ft,Nt[0].width,Nt[0].height);for(let vt=0,Yt=Nt.length;vt<Yt;vt++)ct=Nt[vt],At?te&&e.texSubImage2D(i.TEXTURE_2D,vt,0,0,ct.width,ct.height,Et,G,ct.data):e.texImage2D(i.TEXTURE_2D,vt,ft,ct.width,ct.height,0,Et,G,ct.data);E.generateMipmaps=!1}else At?(Dt&&e.texStorage2D(i.TEXTURE_2D,ae,ft,dt.width,dt.height),te&&Ee(E,dt,Et,G)):e.texImage2D(i.TEXTURE_2D,0,ft,dt.width,dt.height,0,Et,G,dt.data);else if(E.isCompressedTexture)if(E.isCompressedArrayTexture){At&&Dt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,ae,ft,Nt[0].width,Nt[0].height,dt.depth);for(let vt=0,Yt=Nt.length;vt<Yt;vt++)if(ct=Nt[vt],E.format!==Fi)if(Et!==null)if(At){if(te)if(E.layerUpdates.size>0){let le=td(ct.width,ct.height,E.format,E.type);for(let Ot of E.layerUpdates){let me=ct.data.subarray(Ot*le/ct.data.BYTES_PER_ELEMENT,(Ot+1)*le/ct.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,vt,0,0,Ot,ct.width,ct.height,1,Et,me)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,vt,0,0,0,ct.width,ct.height,dt.depth,Et,ct.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,vt,ft,ct.width,ct.height,dt.depth,0,ct.data,0,0);else re("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else At?te&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,vt,0,0,0,ct.width,ct.height,dt.depth,Et,G,ct.data):e.texImage3D(i.TEXTURE_2D_ARRAY,vt,ft,ct.width,ct.height,dt.depth,0,Et,G,ct.data);E.layerUpdates.size>0&&E.clearLayerUpdates()}else{At&&Dt&&e.texStorage2D(i.TEXTURE_2D,ae,ft,Nt[0].width,Nt[0].height);for(let vt=0,Yt=Nt.length;vt<Yt;vt++)ct=Nt[vt],E.format!==Fi?Et!==null?At?te&&e.compressedTexSubImage2D(i.TEXTURE_2D,vt,0,0,ct.width,ct.height,Et,ct.data):e.compressedTexImage2D(i.TEXTURE_2D,vt,ft,ct.width,ct.height,0,ct.data):re("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):At?te&&e.texSubImage2D(i.TEXTURE_2D,vt,0,0,ct.width,ct.height,Et,G,ct.data):e.texImage2D(i.TEXTURE_2D,vt,ft,ct.width,ct.height,0,Et,G,ct.data)}else if(E.isDataArrayTexture)if(At){if(Dt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,ae,ft,dt.width,dt.height,dt.depth),te)if(E.layerUpdates.size>0){let vt=td(dt.width,dt.height,E.format,E.type);for(let Yt of E.layerUpdates){let le=dt.data.subarray(Yt*vt/dt.data.BYTES_PER_ELEMENT,(Yt+1)*vt/dt.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Yt,dt.width,dt.height,1,Et,G,le)}E.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,dt.width,dt.height,dt.depth,Et,G,dt.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,ft,dt.width,dt.height,dt.depth,0,Et,G,dt.data);else if(E.isData3DTexture)At?(Dt&&e.texStorage3D(i.TEXTURE_3D,ae,ft,dt.width,dt.height,dt.depth),te&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,dt.width,dt.height,dt.depth,Et,G,dt.data)):e.texImage3D(i.TEXTURE_3D,0,ft,dt.width,dt.height,dt.depth,0,Et,G,dt.data);else if(E.isFramebufferTexture){if(Dt)if(At)e.texStorage2D(i.TEXTURE_2D,ae,ft,dt.width,dt.height);else{let vt=dt.width,Yt=dt.height;for(let le=0;le<ae;le++)e.texImage2D(i.TEXTURE_2D,le,ft,vt,Yt,0,Et,G,null),vt>>=1,Yt>>=1}}else if(E.isHTMLTexture){if("texElementImage2D"in i){let vt=i.canvas;if(vt.hasAttribute("layoutsubtree")||vt.setAttribute("layoutsubtree","true"),dt.parentNode!==vt){vt.appendChild(dt),d.add(E),vt.onpaint=Yt=>{let le=Yt.changedElements;for(let Ot of d)le.includes(Ot.image)&&(Ot.needsUpdate=!0)},vt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,dt);else{let le=i.RGBA,Ot=i.RGBA,me=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,le,Ot,me,dt)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Nt.length>0){if(At&&Dt){let vt=ie(Nt[0]);e.texStorage2D(i.TEXTURE_2D,ae,ft,vt.width,vt.height)}for(let vt=0,Yt=Nt.length;vt<Yt;vt++)ct=Nt[vt],At?te&&e.texSubImage2D(i.TEXTURE_2D,vt,0,0,Et,G,ct):e.texImage2D(i.TEXTURE_2D,vt,ft,Et,G,ct);E.generateMipmaps=!1}else if(At){if(Dt){let vt=ie(dt);e.texStorage2D(i.TEXTURE_2D,ae,ft,vt.width,vt.height)}te&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,Et,G,dt)}else e.texImage2D(i.TEXTURE_2D,0,ft,Et,G,dt);T(E)&&E.mipmapsAutoUpdate===!0&&b(Mt),Pt.__version=Rt.version,E.onUpdate&&E.onUpdate(E)}D.__version=E.version}function _e(D,E,j){if(E.image.length!==6)return;let Mt=se(D,E),mt=E.source;e.bindTexture(i.TEXTURE_CUBE_MAP,D.__webglTexture,i.TEXTURE0+j);let Rt=n.get(mt);if(mt.version!==Rt.__version||Mt===!0){e.activeTexture(i.TEXTURE0+j);let Pt=Re.getPrimaries(Re.workingColorSpace),lt=E.colorSpace===Es?null:Re.getPrimaries(E.colorSpace),dt=E.colorSpace===Es||Pt===lt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,E.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,E.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,E.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,dt);let Et=E.isCompressedTexture||E.image[0].isCompressedTexture,G=E.image[0]&&E.image[0].isDataTexture,ft=[];for(let Ot=0;Ot<6;Ot++)!Et&&!G?ft[Ot]=y(E.image[Ot],!0,s.maxCubemapSize):ft[Ot]=G?E.image[Ot].image:E.image[Ot],ft[Ot]=jt(E,ft[Ot]);let ct=ft[0],Nt=r.convert(E.format,E.colorSpace),At=r.convert(E.type),Dt=w(E.internalFormat,Nt,At,E.normalized,E.colorSpace),te=E.isVideoTexture!==!0,ae=Rt.__version===void 0||Mt===!0,vt=mt.dataReady,Yt=S(E,ct);ne(i.TEXTURE_CUBE_MAP,E);let le;if(E.isDepthTexture){if(Dt=g(E.format===ws,E.type),ae)if(te)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,Dt,ct.width,ct.height);else for(let Ot=0;Ot<6;Ot++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,0,Dt,ct.width,ct.height,0,Nt,At,null)}else if(Et){te&&ae&&e.texStorage2D(i.TEXTURE_CUBE_MAP,Yt,Dt,ct.width,ct.height);for(let Ot=0;Ot<6;Ot++){le=ft[Ot].mipmaps;for(let me=0;me<le.length;me++){let Ze=le[me];E.format!==Fi?Nt!==null?te?vt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me,0,0,Ze.width,Ze.height,Nt,Ze.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me,Dt,Ze.width,Ze.height,0,Ze.data):re("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):te?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me,0,0,Ze.width,Ze.height,Nt,At,Ze.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me,Dt,Ze.width,Ze.height,0,Nt,At,Ze.data)}}}else{if(le=E.mipmaps,te&&ae){le.length>0&&Yt++;let Ot=ie(ft[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,Yt,Dt,Ot.width,Ot.height)}for(let Ot=0;Ot<6;Ot++)if(G){te?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,0,0,0,ft[Ot].width,ft[Ot].height,Nt,At,ft[Ot].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,0,Dt,ft[Ot].width,ft[Ot].height,0,Nt,At,ft[Ot].data);for(let me=0;me<le.length;me++){let Vn=le[me].image[Ot].image;te?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me+1,0,0,Vn.width,Vn.height,Nt,At,Vn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me+1,Dt,Vn.width,Vn.height,0,Nt,At,Vn.data)}}else{te?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,0,0,0,Nt,At,ft[Ot]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,0,Dt,Nt,At,ft[Ot]);for(let me=0;me<le.length;me++){let Ze=le[me];te?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me+1,0,0,Nt,At,Ze.image[Ot]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ot,me+1,Dt,Nt,At,Ze.image[Ot])}}}T(E)&&E.mipmapsAutoUpdate===!0&&b(i.TEXTURE_CUBE_MAP),Rt.__version=mt.version,E.onUpdate&&E.onUpdate(E)}D.__version=E.version}function pe(D,E,j,Mt,mt,Rt){let Pt=r.convert(j.format,j.colorSpace),lt=r.convert(j.type),dt=w(j.internalFormat,Pt,lt,j.normalized,j.colorSpace),Et=n.get(E),G=n.get(j);if(G.__renderTarget=E,!Et.__hasExternalTextures){let ft=Math.max(1,E.width>>Rt),ct=Math.max(1,E.height>>Rt);mt===i.TEXTURE_3D||mt===i.TEXTURE_2D_ARRAY?e.texImage3D(mt,Rt,dt,ft,ct,E.depth,0,Pt,lt,null):e.texImage2D(mt,Rt,dt,ft,ct,0,Pt,lt,null)}e.bindFramebuffer(i.FRAMEBUFFER,D),bt(E)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Mt,mt,G.__webglTexture,0,Ht(E)):(mt===i.TEXTURE_2D||mt>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&mt<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,Mt,mt,G.__webglTexture,Rt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function Pe(D,E,j){if(i.bindRenderbuffer(i.RENDERBUFFER,D),E.depthBuffer){let Mt=E.depthTexture,mt=Mt&&Mt.isDepthTexture?Mt.type:null,Rt=g(E.stencilBuffer,mt),Pt=E.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;bt(E)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,Ht(E),Rt,E.width,E.height):j?i.renderbufferStorageMultisample(i.RENDERBUFFER,Ht(E),Rt,E.width,E.height):i.renderbufferStorage(i.RENDERBUFFER,Rt,E.width,E.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,Pt,i.RENDERBUFFER,D)}else{let Mt=E.textures;for(let mt=0;mt<Mt.length;mt++){let Rt=Mt[mt],Pt=r.convert(Rt.format,Rt.colorSpace),lt=r.convert(Rt.type),dt=w(Rt.internalFormat,Pt,lt,Rt.normalized,Rt.colorSpace);bt(E)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,Ht(E),dt,E.width,E.height):j?i.renderbufferStorageMultisample(i.RENDERBUFFER,Ht(E),dt,E.width,E.height):i.renderbufferStorage(i.RENDERBUFFER,dt,E.width,E.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function ht(D,E,j){let Mt=E.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,D),!(E.depthTexture&&E.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let mt=n.get(E.depthTexture);mt.__renderTarget=E;let Rt=Mt?E.depthTexture.image[0]:E.depthTexture.image;(!mt.__webglTexture||Rt.width!==E.width||Rt.height!==E.height)&&(Rt.width=E.width,Rt.height=E.height,E.depthTexture.needsUpdate=!0),Mt?st(E.depthTexture,0):xt(E.depthTexture,0);let Pt=mt.__webglTexture,lt=Ht(E),dt=Mt?i.TEXTURE_CUBE_MAP_POSITIVE_X+j:i.TEXTURE_2D,Et=E.depthTexture.format===ws?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(E.depthTexture.format===_s)bt(E)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Et,dt,Pt,0,lt):i.framebufferTexture2D(i.FRAMEBUFFER,Et,dt,Pt,0);else if(E.depthTexture.format===ws)bt(E)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Et,dt,Pt,0,lt):i.framebufferTexture2D(i.FRAMEBUFFER,Et,dt,Pt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function Lt(D){let E=n.get(D),j=D.isWebGLCubeRenderTarget===!0;if(E.__boundDepthTexture!==D.depthTexture){let Mt=D.depthTexture;if(E.__depthDisposeCallback&&E.__depthDisposeCallback(),Mt){let mt=()=>{delete E.__boundDepthTexture,delete E.__depthDisposeCallback,Mt.removeEventListener("dispose",mt)};Mt.addEventListener("dispose",mt),E.__depthDisposeCallback=mt}E.__boundDepthTexture=Mt}if(D.depthTexture&&!E.__autoAllocateDepthBuffer)if(j)for(let Mt=0;Mt<6;Mt++)ht(E.__webglFramebuffer[Mt],D,Mt);else D.texture.mipmaps.length>0?ht(E.__webglFramebuffer[0],D,0):ht(E.__webglFramebuffer,D,0);else if(j){E.__webglDepthbuffer=[];for(let Mt=0;Mt<6;Mt++)if(e.bindFramebuffer(i.FRAMEBUFFER,E.__webglFramebuffer[Mt]),E.__webglDepthbuffer[Mt]===void 0)E.__webglDepthbuffer[Mt]=i.createRenderbuffer(),Pe(E.__webglDepthbuffer[Mt],D,!1);else{let mt=D.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Rt=E.__webglDepthbuffer[Mt];i.bindRenderbuffer(i.RENDERBUFFER,Rt),i.framebufferRenderbuffer(i.FRAMEBUFFER,mt,i.RENDERBUFFER,Rt)}}else if(D.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,E.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,E.__webglFramebuffer),E.__webglDepthbuffer===void 0)E.__webglDepthbuffer=i.createRenderbuffer(),Pe(E.__webglDepthbuffer,D,!1);else{let mt=D.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Rt=E.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,Rt),i.framebufferRenderbuffer(i.FRAMEBUFFER,mt,i.RENDERBUFFER,Rt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Tt(D,E,j){let Mt=n.get(D);E!==void 0&&pe(Mt.__webglFramebuffer,D,D.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),j!==void 0&&Lt(D)}function Xt(D){let E=D.texture,j=n.get(D),Mt=n.get(E);D.addEventListener("dispose",k),F(D);let mt=D.textures,Rt=D.isWebGLCubeRenderTarget===!0,Pt=mt.length>1;if(Pt||(Mt.__webglTexture===void 0&&(Mt.__webglTexture=i.createTexture()),Mt.__version=E.version,o.memory.textures++),Rt){j.__webglFramebuffer=[];for(let lt=0;lt<6;lt++)if(E.mipmaps.length>0){j.__webglFramebuffer[lt]=[];for(let dt=0;dt<E.mipmaps.length;dt++)j.__webglFramebuffer[lt][dt]=i.createFramebuffer()}else j.__webglFramebuffer[lt]=i.createFramebuffer()}else{if(E.mipmaps.length>0){j.__webglFramebuffer=[];for(let lt=0;lt<E.mipmaps.length;lt++)j.__webglFramebuffer[lt]=i.createFramebuffer()}else j.__webglFramebuffer=i.createFramebuffer();if(Pt)for(let lt=0,dt=mt.length;lt<dt;lt++){let Et=n.get(mt[lt]);Et.__webglTexture===void 0&&(Et.__webglTexture=i.createTexture(),o.memory.textures++)}if(D.samples>0&&bt(D)===!1){j.__webglMultisampledFramebuffer=i.createFramebuffer(),j.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,j.__webglMultisampledFramebuffer);for(let lt=0;lt<mt.length;lt++){let dt=mt[lt];j.__webglColorRenderbuffer[lt]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,j.__webglColorRenderbuffer[lt]);let Et=r.convert(dt.format,dt.colorSpace),G=r.convert(dt.type),ft=w(dt.internalFormat,Et,G,dt.normalized,dt.colorSpace,D.isXRRenderTarget===!0),ct=Ht(D);i.renderbufferStorageMultisample(i.RENDERBUFFER,ct,ft,D.width,D.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+lt,i.RENDERBUFFER,j.__webglColorRenderbuffer[lt])}i.bindRenderbuffer(i.RENDERBUFFER,null),D.depthBuffer&&(j.__webglDepthRenderbuffer=i.createRenderbuffer(),Pe(j.__webglDepthRenderbuffer,D,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(Rt){e.bindTexture(i.TEXTURE_CUBE_MAP,Mt.__webglTexture),ne(i.TEXTURE_CUBE_MAP,E);for(let lt=0;lt<6;lt++)if(E.mipmaps.length>0)for(let dt=0;dt<E.mipmaps.length;dt++)pe(j.__webglFramebuffer[lt][dt],D,E,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+lt,dt);else pe(j.__webglFramebuffer[lt],D,E,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+lt,0);T(E)?b(i.TEXTURE_CUBE_MAP):E.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,E.mipmaps.length-1),e.unbindTexture()}else if(Pt){for(let lt=0,dt=mt.length;lt<dt;lt++){let Et=mt[lt],G=n.get(Et),ft=i.TEXTURE_2D;(D.isWebGL3DRenderTarget||D.isWebGLArrayRenderTarget)&&(ft=D.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(ft,G.__webglTexture),ne(ft,Et),pe(j.__webglFramebuffer,D,Et,i.COLOR_ATTACHMENT0+lt,ft,0),T(Et)&&b(ft)}e.unbindTexture()}else{let lt=i.TEXTURE_2D;if((D.isWebGL3DRenderTarget||D.isWebGLArrayRenderTarget)&&(lt=D.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(lt,Mt.__webglTexture),ne(lt,E),E.mipmaps.length>0)for(let dt=0;dt<E.mipmaps.length;dt++)pe(j.__webglFramebuffer[dt],D,E,i.COLOR_ATTACHMENT0,lt,dt);else pe(j.__webglFramebuffer,D,E,i.COLOR_ATTACHMENT0,lt,0);T(E)?b(lt):E.mipmaps.length>0&&i.texParameteri(lt,i.TEXTURE_MAX_LEVEL,E.mipmaps.length-1),e.unbindTexture()}D.depthBuffer&&Lt(D)}function O(D){let E=D.textures;for(let j=0,Mt=E.length;j<Mt;j++){let mt=E[j];if(T(mt)&&mt.mipmapsAutoUpdate===!0){let Rt=I(D),Pt=n.get(mt).__webglTexture;e.bindTexture(Rt,Pt),b(Rt),e.unbindTexture()}}}let yt=[];function Wt(D){if(D.samples>0){if(bt(D)===!1){let E=D.textures,j=D.width,Mt=D.height,mt=i.COLOR_BUFFER_BIT,Rt=D.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Pt=n.get(D),lt=E.length>1;if(lt)for(let Et=0;Et<E.length;Et++)e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,Pt.__webglMultisampledFramebuffer),D.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Pt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Pt.__webglFramebuffer);for(let Et=0;Et<E.length;Et++){if(D.resolveDepthBuffer&&(D.depthBuffer&&(mt|=i.DEPTH_BUFFER_BIT),D.stencilBuffer&&D.resolveStencilBuffer&&(mt|=i.STENCIL_BUFFER_BIT)),lt){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,Pt.__webglColorRenderbuffer[Et]);let G=n.get(E[Et]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,G,0)}i.blitFramebuffer(0,0,j,Mt,0,0,j,Mt,mt,i.NEAREST),l===!0&&(yt.length=0,yt.push(i.COLOR_ATTACHMENT0+Et),D.depthBuffer&&D.storeMultisampledDepthBuffer===!1&&yt.push(Rt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,yt))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),lt)for(let Et=0;Et<E.length;Et++){e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.RENDERBUFFER,Pt.__webglColorRenderbuffer[Et]);let G=n.get(E[Et]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.TEXTURE_2D,G,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Pt.__webglMultisampledFramebuffer)}else if(D.depthBuffer&&D.storeMultisampledDepthBuffer===!1&&l){let E=D.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[E])}}}function Ht(D){return Math.min(s.maxSamples,D.samples)}function bt(D){let E=n.get(D);return D.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&E.__useRenderToTexture!==!1}function Ie(D){let E=o.render.frame;u.get(D)!==E&&(u.set(D,E),D.update())}function jt(D,E){let j=D.colorSpace,Mt=D.format,mt=D.type;return D.isCompressedTexture===!0||D.isVideoTexture===!0||j!==ea&&j!==Es&&(Re.getTransfer(j)===Be?(Mt!==Fi||mt!==jn)&&re("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ue("WebGLTextures: Unsupported texture color space:",j)),E}function ie(D){return typeof HTMLImageElement<"u"&&D instanceof HTMLImageElement?(c.width=D.naturalWidth||D.width,c.height=D.naturalHeight||D.height):typeof VideoFrame<"u"&&D instanceof VideoFrame?(c.width=D.displayWidth,c.height=D.displayHeight):(c.width=D.width,c.height=D.height),c}this.allocateTextureUnit=at,this.resetTextureUnits=K,this.getTextureUnits=$,this.setTextureUnits=ot,this.setTexture2D=xt,this.setTexture2DArray=Z,this.setTexture3D=nt,this.setTextureCube=st,this.rebindTextures=Tt,this.setupRenderTarget=Xt,this.updateRenderTargetMipmap=O,this.updateMultisampleRenderTarget=Wt,this.setupDepthRenderbuffer=Lt,this.setupFrameBufferTexture=pe,this.useMultisampledRTT=bt,this.dispose=V}function JS(i,t){function e(n,s=Es){let r,o=Re.getTransfer(s);if(n===jn)return i.UNSIGNED_BYTE;if(n===uc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===dc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Bu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===ku)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===Uu)return i.BYTE;if(n===Ou)return i.SHORT;if(n===yo)return i.UNSIGNED_SHORT;if(n===hc)return i.INT;if(n===Di)return i.UNSIGNED_INT;if(n===Mi)return i.FLOAT;if(n===Ni)return i.HALF_FLOAT;if(n===zu)return i.ALPHA;if(n===Vu)return i.RGB;if(n===Fi)return i.RGBA;if(n===_s)return i.DEPTH_COMPONENT;if(n===ws)return i.DEPTH_STENCIL;if(n===fc)return i.RED;if(n===pc)return i.RED_INTEGER;if(n===Ys)return i.RG;if(n===mc)return i.RG_INTEGER;if(n===gc)return i.RGBA_INTEGER;if(n===Ra||n===Ca||n===Pa||n===Ia)if(o===Be)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Ra)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Ca)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Pa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Ia)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Ra)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Ca)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Pa)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Ia)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===_c||n===xc||n===yc||n===vc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===_c)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===xc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===yc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===vc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Mc||n===Sc||n===bc||n===wc||n===Ec||n===La||n===Tc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Mc||n===Sc)return o===Be?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===bc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===wc)return r.COMPRESSED_R11_EAC;if(n===Ec)return r.COMPRESSED_SIGNED_R11_EAC;if(n===La)return r.COMPRESSED_RG11_EAC;if(n===Tc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Ac||n===Rc||n===Cc||n===Pc||n===Ic||n===Lc||n===Dc||n===Nc||n===Fc||n===Uc||n===Oc||n===Bc||n===kc||n===zc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Ac)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Rc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Cc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Pc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Ic)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Lc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Dc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Nc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Fc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Uc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Oc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Bc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===kc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===zc)return o===Be?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Vc||n===Hc||n===Gc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Vc)return o===Be?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Hc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Gc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Wc||n===$c||n===Da||n===Xc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===Wc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===$c)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Da)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Xc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===xr?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var KS=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,jS=`
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

}`,cd=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new pa(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new ji({vertexShader:KS,fragmentShader:jS,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new gn(new xa(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},hd=class extends Li{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,u=null,d=null,h=null,f=null,m=null,x=typeof XRWebGLBinding<"u",_=new cd,p={},y=e.getContextAttributes(),T=null,b=null,I=[],w=[],g=new ce,S=null,F=null,C=new ci;C.viewport=new nn;let L=new ci;L.viewport=new nn;let k=[C,L],z=new rc,P=null,V=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(Q){let xt=I[Q];return xt===void 0&&(xt=new ho,I[Q]=xt),xt.getTargetRaySpace()},this.getControllerGrip=function(Q){let xt=I[Q];return xt===void 0&&(xt=new ho,I[Q]=xt),xt.getGripSpace()},this.getHand=function(Q){let xt=I[Q];return xt===void 0&&(xt=new ho,I[Q]=xt),xt.getHandSpace()};function H(Q){let xt=w.indexOf(Q.inputSource);if(xt===-1)return;let Z=I[xt];Z!==void 0&&(Z.update(Q.inputSource,Q.frame,c||o),Z.dispatchEvent({type:Q.type,data:Q.inputSource}))}function B(){s.removeEventListener("select",H),s.removeEventListener("selectstart",H),s.removeEventListener("selectend",H),s.removeEventListener("squeeze",H),s.removeEventListener("squeezestart",H),s.removeEventListener("squeezeend",H),s.removeEventListener("end",B),s.removeEventListener("inputsourceschange",q);for(let Q=0;Q<I.length;Q++){let xt=w[Q];xt!==null&&(w[Q]=null,I[Q].disconnect(xt))}P=null,V=null,_.reset();for(let Q in p)delete p[Q];if(t.setRenderTarget(T),f=null,h=null,d=null,s=null,b=null,at.stop(),n.isPresenting=!1,t.setPixelRatio(S),t.setSize(g.width,g.height,!1),F!==null){let Q=F.camera;Q.fov=F.fov,Q.zoom=F.zoom,Q.updateProjectionMatrix(),F=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(Q){r=Q,n.isPresenting===!0&&re("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(Q){a=Q,n.isPresenting===!0&&re("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(Q){c=Q},this.getBaseLayer=function(){return h!==null?h:f},this.getBinding=function(){return d===null&&x&&(d=new XRWebGLBinding(s,e)),d},this.getFrame=function(){return m},this.getSession=function(){return s},this.setSession=async function(Q){if(s=Q,s!==null){if(T=t.getRenderTarget(),s.addEventListener("select",H),s.addEventListener("selectstart",H),s.addEventListener("selectend",H),s.addEventListener("squeeze",H),s.addEventListener("squeezestart",H),s.addEventListener("squeezeend",H),s.addEventListener("end",B),s.addEventListener("inputsourceschange",q),y.xrCompatible!==!0&&await e.makeXRCompatible(),S=t.getPixelRatio(),t.getSize(g),x&&"createProjectionLayer"in XRWebGLBinding.prototype){let Z=null,nt=null,st=null;y.depth&&(st=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,Z=y.stencil?ws:_s,nt=y.stencil?xr:Di);let gt={colorFormat:e.RGBA8,depthFormat:st,scaleFactor:r};d=this.getBinding(),h=d.createProjectionLayer(gt),s.updateRenderState({layers:[h]}),t.setPixelRatio(1),t.setSize(h.textureWidth,h.textureHeight,!1),b=new hi(h.textureWidth,h.textureHeight,{format:Fi,type:jn,depthTexture:new Ms(h.textureWidth,h.textureHeight,nt,void 0,void 0,void 0,void 0,void 0,void 0,Z),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:h.ignoreDepthValues===!1,resolveStencilBuffer:h.ignoreDepthValues===!1,storeMultisampledDepthBuffer:h.ignoreDepthValues===!1,storeMultisampledStencilBuffer:h.ignoreDepthValues===!1})}else{let Z={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,Z),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),b=new hi(f.framebufferWidth,f.framebufferHeight,{format:Fi,type:jn,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}b.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),at.setContext(s),at.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return _.getDepthTexture()};function q(Q){for(let xt=0;xt<Q.removed.length;xt++){let Z=Q.removed[xt],nt=w.indexOf(Z);nt>=0&&(w[nt]=null,I[nt].disconnect(Z))}for(let xt=0;xt<Q.added.length;xt++){let Z=Q.added[xt],nt=w.indexOf(Z);if(nt===-1){for(let gt=0;gt<I.length;gt++)if(gt>=w.length){w.push(Z),nt=gt;break}else if(w[gt]===null){w[gt]=Z,nt=gt;break}if(nt===-1)break}let st=I[nt];st&&st.connect(Z)}}function X(Q,xt){xt===null?Q.matrixWorld.copy(Q.matrix):Q.matrixWorld.multiplyMatrices(xt.matrixWorld,Q.matrix),Q.matrixWorldInverse.copy(Q.matrixWorld).invert()}this.updateCamera=function(Q){if(s===null)return;let xt=Q.near,Z=Q.far;_.texture!==null&&(_.depthNear>0&&(xt=_.depthNear),_.depthFar>0&&(Z=_.depthFar)),z.near=L.near=C.near=xt,z.far=L.far=C.far=Z,(P!==z.near||V!==z.far)&&(s.updateRenderState({depthNear:z.near,depthFar:z.far}),P=z.near,V=z.far),z.layers.mask=Q.layers.mask|6,C.layers.mask=z.layers.mask&-5,L.layers.mask=z.layers.mask&-3;let nt=Q.parent,st=z.cameras;X(z,nt);for(let gt=0;gt<st.length;gt++)X(st[gt],nt);z.projectionMatrix.copy(C.projectionMatrix),z.projectionMatrixInverse.copy(C.projectionMatrixInverse),F===null&&Q.isPerspectiveCamera&&(F={camera:Q,fov:Q.fov,zoom:Q.zoom}),K(Q,z,nt)};function K(Q,xt,Z){Z===null?Q.matrix.copy(xt.matrixWorld):(Q.matrix.copy(Z.matrixWorld),Q.matrix.invert(),Q.matrix.multiply(xt.matrixWorld)),Q.matrix.decompose(Q.position,Q.quaternion,Q.scale),Q.updateMatrixWorld(!0),Q.projectionMatrix.copy(xt.projectionMatrix),Q.projectionMatrixInverse.copy(xt.projectionMatrixInverse),Q.isPerspectiveCamera&&(Q.fov=lo*2*Math.atan(1/Q.projectionMatrix.elements[5]),Q.zoom=1)}this.getCamera=function(){return z},this.getFoveation=function(){if(!(h===null&&f===null))return l},this.setFoveation=function(Q){l=Q,h!==null&&(h.fixedFoveation=Q),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=Q)},this.hasDepthSensing=function(){return _.texture!==null},this.getDepthSensingMesh=function(){return _.getMesh(z)},this.getCameraTexture=function(Q){return p[Q]};let $=null;function ot(Q,xt){if(u=xt.getViewerPose(c||o),m=xt,u!==null){let Z=u.views;f!==null&&(t.setRenderTargetFramebuffer(b,f.framebuffer),t.setRenderTarget(b));let nt=!1;Z.length!==z.cameras.length&&(z.cameras.length=0,nt=!0);for(let St=0;St<Z.length;St++){let ne=Z[St],se=null;if(f!==null)se=f.getViewport(ne);else{let Ee=d.getViewSubImage(h,ne);se=Ee.viewport,St===0&&(t.setRenderTargetTextures(b,Ee.colorTexture,Ee.depthStencilTexture),t.setRenderTarget(b))}let Kt=k[St];Kt===void 0&&(Kt=new ci,Kt.layers.enable(St),Kt.viewport=new nn,k[St]=Kt),Kt.matrix.fromArray(ne.transform.matrix),Kt.matrix.decompose(Kt.position,Kt.quaternion,Kt.scale),Kt.projectionMatrix.fromArray(ne.projectionMatrix),Kt.projectionMatrixInverse.copy(Kt.projectionMatrix).invert(),Kt.viewport.set(se.x,se.y,se.width,se.height),St===0&&(z.matrix.copy(Kt.matrix),z.matrix.decompose(z.position,z.quaternion,z.scale)),nt===!0&&z.cameras.push(Kt)}let st=s.enabledFeatures;if(st&&st.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&x){d=n.getBinding();let St=d.getDepthInformation(Z[0]);St&&St.isValid&&St.texture&&_.init(St,s.renderState)}if(st&&st.includes("camera-access")&&x){t.state.unbindTexture(),d=n.getBinding();for(let St=0;St<Z.length;St++){let ne=Z[St].camera;if(ne){let se=p[ne];se||(se=new pa,p[ne]=se);let Kt=d.getCameraImage(ne);se.sourceTexture=Kt}}}}for(let Z=0;Z<I.length;Z++){let nt=w[Z],st=I[Z];nt!==null&&st!==void 0&&st.update(nt,xt,c||o)}$&&$(Q,xt),xt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:xt}),m=null}let at=new Tm;at.setAnimationLoop(ot),this.setAnimationLoop=function(Q){$=Q},this.dispose=function(){}}},QS=new Fe,Um=new de;Um.set(-1,0,0,0,1,0,0,0,1);function tb(i,t){function e(_,p){_.matrixAutoUpdate===!0&&_.updateMatrix(),p.value.copy(_.matrix)}function n(_,p){p.color.getRGB(_.fogColor.value,Ku(i)),p.isFog?(_.fogNear.value=p.near,_.fogFar.value=p.far):p.isFogExp2&&(_.fogDensity.value=p.density)}function s(_,p,y,T,b){p.isNodeMaterial?p.uniformsNeedUpdate=!1:p.isMeshBasicMaterial?r(_,p):p.isMeshLambertMaterial?(r(_,p),p.envMap&&(_.envMapIntensity.value=p.envMapIntensity)):p.isMeshToonMaterial?(r(_,p),d(_,p)):p.isMeshPhongMaterial?(r(_,p),u(_,p),p.envMap&&(_.envMapIntensity.value=p.envMapIntensity)):p.isMeshStandardMaterial?(r(_,p),h(_,p),p.isMeshPhysicalMaterial&&f(_,p,b)):p.isMeshMatcapMaterial?(r(_,p),m(_,p)):p.isMeshDepthMaterial?r(_,p):p.isMeshDistanceMaterial?(r(_,p),x(_,p)):p.isMeshNormalMaterial?r(_,p):p.isLineBasicMaterial?(o(_,p),p.isLineDashedMaterial&&a(_,p)):p.isPointsMaterial?l(_,p,y,T):p.isSpriteMaterial?c(_,p):p.isShadowMaterial?(_.color.value.copy(p.color),_.opacity.value=p.opacity):p.isShaderMaterial&&(p.uniformsNeedUpdate=!1)}function r(_,p){_.opacity.value=p.opacity,p.color&&_.diffuse.value.copy(p.color),p.emissive&&_.emissive.value.copy(p.emissive).multiplyScalar(p.emissiveIntensity),p.map&&(_.map.value=p.map,e(p.map,_.mapTransform)),p.alphaMap&&(_.alphaMap.value=p.alphaMap,e(p.alphaMap,_.alphaMapTransform)),p.bumpMap&&(_.bumpMap.value=p.bumpMap,e(p.bumpMap,_.bumpMapTransform),_.bumpScale.value=p.bumpScale,p.side===Un&&(_.bumpScale.value*=-1)),p.normalMap&&(_.normalMap.value=p.normalMap,e(p.normalMap,_.normalMapTransform),_.normalScale.value.copy(p.normalScale),p.side===Un&&_.normalScale.value.negate()),p.displacementMap&&(_.displacementMap.value=p.displacementMap,e(p.displacementMap,_.displacementMapTransform),_.displacementScale.value=p.displacementScale,_.displacementBias.value=p.displacementBias),p.emissiveMap&&(_.emissiveMap.value=p.emissiveMap,e(p.emissiveMap,_.emissiveMapTransform)),p.specularMap&&(_.specularMap.value=p.specularMap,e(p.specularMap,_.specularMapTransform)),p.alphaTest>0&&(_.alphaTest.value=p.alphaTest);let y=t.get(p),T=y.envMap,b=y.envMapRotation;T&&(_.envMap.value=T,_.envMapRotation.value.setFromMatrix4(QS.makeRotationFromEuler(b)).transpose(),T.isCubeTexture&&T.isRenderTargetTexture===!1&&_.envMapRotation.value.premultiply(Um),_.reflectivity.value=p.reflectivity,_.ior.value=p.ior,_.refractionRatio.value=p.refractionRatio),p.lightMap&&(_.lightMap.value=p.lightMap,_.lightMapIntensity.value=p.lightMapIntensity,e(p.lightMap,_.lightMapTransform)),p.aoMap&&(_.aoMap.value=p.aoMap,_.aoMapIntensity.value=p.aoMapIntensity,e(p.aoMap,_.aoMapTransform))}function o(_,p){_.diffuse.value.copy(p.color),_.opacity.value=p.opacity,p.map&&(_.map.value=p.map,e(p.map,_.mapTransform))}function a(_,p){_.dashSize.value=p.dashSize,_.totalSize.value=p.dashSize+p.gapSize,_.scale.value=p.scale}function l(_,p,y,T){_.diffuse.value.copy(p.color),_.opacity.value=p.opacity,_.size.value=p.size*y,_.scale.value=T*.5,p.map&&(_.map.value=p.map,e(p.map,_.uvTransform)),p.alphaMap&&(_.alphaMap.value=p.alphaMap,e(p.alphaMap,_.alphaMapTransform)),p.alphaTest>0&&(_.alphaTest.value=p.alphaTest)}function c(_,p){_.diffuse.value.copy(p.color),_.opacity.value=p.opacity,_.rotation.value=p.rotation,p.map&&(_.map.value=p.map,e(p.map,_.mapTransform)),p.alphaMap&&(_.alphaMap.value=p.alphaMap,e(p.alphaMap,_.alphaMapTransform)),p.alphaTest>0&&(_.alphaTest.value=p.alphaTest)}function u(_,p){_.specular.value.copy(p.specular),_.shininess.value=Math.max(p.shininess,1e-4)}function d(_,p){p.gradientMap&&(_.gradientMap.value=p.gradientMap)}function h(_,p){_.metalness.value=p.metalness,p.metalnessMap&&(_.metalnessMap.value=p.metalnessMap,e(p.metalnessMap,_.metalnessMapTransform)),_.roughness.value=p.roughness,p.roughnessMap&&(_.roughnessMap.value=p.roughnessMap,e(p.roughnessMap,_.roughnessMapTransform)),p.envMap&&(_.envMapIntensity.value=p.envMapIntensity)}function f(_,p,y){_.ior.value=p.ior,p.diffuseRoughness>0&&(_.diffuseRoughness.value=p.diffuseRoughness,p.diffuseRoughnessMap&&(_.diffuseRoughnessMap.value=p.diffuseRoughnessMap,e(p.diffuseRoughnessMap,_.diffuseRoughnessMapTransform))),p.sheen>0&&(_.sheenColor.value.copy(p.sheenColor).multiplyScalar(p.sheen),_.sheenRoughness.value=p.sheenRoughness,p.sheenColorMap&&(_.sheenColorMap.value=p.sheenColorMap,e(p.sheenColorMap,_.sheenColorMapTransform)),p.sheenRoughnessMap&&(_.sheenRoughnessMap.value=p.sheenRoughnessMap,e(p.sheenRoughnessMap,_.sheenRoughnessMapTransform))),p.clearcoat>0&&(_.clearcoat.value=p.clearcoat,_.clearcoatRoughness.value=p.clearcoatRoughness,p.clearcoatMap&&(_.clearcoatMap.value=p.clearcoatMap,e(p.clearcoatMap,_.clearcoatMapTransform)),p.clearcoatRoughnessMap&&(_.clearcoatRoughnessMap.value=p.clearcoatRoughnessMap,e(p.clearcoatRoughnessMap,_.clearcoatRoughnessMapTransform)),p.clearcoatNormalMap&&(_.clearcoatNormalMap.value=p.clearcoatNormalMap,e(p.clearcoatNormalMap,_.clearcoatNormalMapTransform),_.clearcoatNormalScale.value.copy(p.clearcoatNormalScale),p.side===Un&&_.clearcoatNormalScale.value.negate())),p.dispersion>0&&(_.dispersion.value=p.dispersion),p.retroreflectivity>0&&(_.retroreflectivity.value=p.retroreflectivity),p.iridescence>0&&(_.iridescence.value=p.iridescence,_.iridescenceIOR.value=p.iridescenceIOR,_.iridescenceThicknessMinimum.value=p.iridescenceThicknessMinimum,_.iridescenceThicknessMaximum.value=p.iridescenceThicknessMaximum,p.iridescenceMap&&(_.iridescenceMap.value=p.iridescenceMap,e(p.iridescenceMap,_.iridescenceMapTransform)),p.iridescenceThicknessMap&&(_.iridescenceThicknessMap.value=p.iridescenceThicknessMap,e(p.iridescenceThicknessMap,_.iridescenceThicknessMapTransform))),p.transmission>0&&(_.transmission.value=p.transmission,_.transmissionSamplerMap.value=y.texture,_.transmissionSamplerSize.value.set(y.width,y.height),p.transmissionMap&&(_.transmissionMap.value=p.transmissionMap,e(p.transmissionMap,_.transmissionMapTransform)),_.thickness.value=p.thickness,p.thicknessMap&&(_.thicknessMap.value=p.thicknessMap,e(p.thicknessMap,_.thicknessMapTransform)),_.attenuationDistance.value=p.attenuationDistance,_.attenuationColor.value.copy(p.attenuationColor)),p.anisotropy>0&&(_.anisotropyVector.value.set(p.anisotropy*Math.cos(p.anisotropyRotation),p.anisotropy*Math.sin(p.anisotropyRotation)),p.anisotropyMap&&(_.anisotropyMap.value=p.anisotropyMap,e(p.anisotropyMap,_.anisotropyMapTransform))),_.specularIntensity.value=p.specularIntensity,_.specularColor.value.copy(p.specularColor),p.specularColorMap&&(_.specularColorMap.value=p.specularColorMap,e(p.specularColorMap,_.specularColorMapTransform)),p.specularIntensityMap&&(_.specularIntensityMap.value=p.specularIntensityMap,e(p.specularIntensityMap,_.specularIntensityMapTransform))}function m(_,p){p.matcap&&(_.matcap.value=p.matcap)}function x(_,p){let y=t.get(p).light;_.referencePosition.value.setFromMatrixPosition(y.matrixWorld),_.nearDistance.value=y.shadow.camera.near,_.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function eb(i,t,e,n){let s={},r={};function o(y,T){let b=T.program;n.uniformBlockBinding(y,b,s[y.id])}function a(y,T){let b=s[y.id];b===void 0&&(m(y),b=l(y),s[y.id]=b,y.addEventListener("dispose",_));let I=T.program;n.updateUBOMapping(y,I);let w=t.render.frame;r[y.id]!==w&&(c(y),r[y.id]=w)}function l(y){let T=i.createBuffer(),b=y.__size,I=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,T),i.bufferData(i.UNIFORM_BUFFER,b,I),i.bindBuffer(i.UNIFORM_BUFFER,null),T}function c(y){let T=s[y.id],b=y.uniforms,I=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,T);for(let w=0,g=b.length;w<g;w++){let S=b[w];if(Array.isArray(S))for(let F=0,C=S.length;F<C;F++)u(S[F],w,F,I);else u(S,w,0,I)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function u(y,T,b,I){if(h(y,T,b,I)===!0){let w=y.__offset,g=y.value;if(Array.isArray(g)){let S=0;for(let F=0;F<g.length;F++){let C=g[F],L=x(C,!0);d(C,y.__data,S),S+=L.storage/Float32Array.BYTES_PER_ELEMENT}}else d(g,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,y.__data)}}function d(y,T,b){typeof y=="number"||typeof y=="boolean"?T[b]=y:y.isMatrix3?(T[b]=y.elements[0],T[b+1]=y.elements[1],T[b+2]=y.elements[2],T[b+3]=0,T[b+4]=y.elements[3],T[b+5]=y.elements[4],T[b+6]=y.elements[5],T[b+7]=0,T[b+8]=y.elements[6],T[b+9]=y.elements[7],T[b+10]=y.elements[8],T[b+11]=0):ArrayBuffer.isView(y)?T.set(y.subarray(0,T.length-b),b):y.toArray(T,b)}function h(y,T,b,I){let w=y.value,g=T+"_"+b;if(Array.isArray(w)){I[g]===void 0&&(I[g]=[]);let S=I[g],F=!1;for(let C=0;C<w.length;C++)f(w[C],S,C)===!0&&(F=!0);return F}return f(w,I,g)}function f(y,T,b){if(T[b]===void 0)return typeof y=="number"||typeof y=="boolean"?T[b]=y:ArrayBuffer.isView(y)?T[b]=y.slice():T[b]=y.clone(),!0;{let I=T[b];if(typeof y=="number"||typeof y=="boolean"){if(I!==y)return T[b]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(I.equals(y)===!1)return I.copy(y),!0}}return!1}function m(y){let T=y.uniforms,b=0,I=16;for(let g=0,S=T.length;g<S;g++){let F=Array.isArray(T[g])?T[g]:[T[g]];for(let C=0,L=F.length;C<L;C++){let k=F[C],z=Array.isArray(k.value)?k.value:[k.value],P=Array.isArray(T[g])||Array.isArray(k.value),V=b;for(let B=0,q=z.length;B<q;B++){let X=z[B],K=x(X,P),$=b%I,ot=$%K.boundary,at=$+ot;b+=ot,at!==0&&I-at<K.storage&&(b+=I-at),B===0&&(V=b),b+=K.storage}let H=k.type==="int"?Int32Array:k.type==="uint"?Uint32Array:Float32Array;k.__data=new H((b-V)/Float32Array.BYTES_PER_ELEMENT),k.__offset=V}}let w=b%I;return w>0&&(b+=I-w),y.__size=b,y.__cache={},this}function x(y,T){let b={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(b.boundary=4,b.storage=4):y.isVector2?(b.boundary=8,b.storage=8):y.isVector3||y.isColor?(b.boundary=16,b.storage=12):y.isVector4?(b.boundary=16,b.storage=16):y.isMatrix3?(b.boundary=16,b.storage=48):y.isMatrix4?(b.boundary=16,b.storage=64):y.isTexture?re("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(b.boundary=16,b.storage=y.byteLength):re("WebGLRenderer: Unsupported uniform value type.",y),T===!0&&(b.boundary=16,b.storage=Math.ceil(b.storage/16)*16),b}function _(y){let T=y.target;T.removeEventListener("dispose",_),i.deleteBuffer(s[T.id]),delete s[T.id],delete r[T.id]}function p(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:p}}var nb=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),es=null;function ib(){return es===null&&(es=new ca(nb,16,16,Ys,Ni),es.name="DFG_LUT",es.minFilter=Yn,es.magFilter=Yn,es.wrapS=Yi,es.wrapT=Yi,es.generateMipmaps=!1,es.needsUpdate=!0),es}var Kc=class{constructor(t={}){let{canvas:e=Zp(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:d=!1,reversedDepthBuffer:h=!1,outputBufferType:f=jn}=t;this.isWebGLRenderer=!0;let m;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");m=n.getContextAttributes().alpha}else m=o;let x=f,_=new Set([gc,mc,pc]),p=new Set([jn,Di,yo,xr,uc,dc]),y=new Uint32Array(4),T=new Int32Array(4),b={textures:[],min:[],max:[],resolution:[]},I=null,w=null,g=[],S=[],F=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=ts,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let C=this,L=!1,k=null,z=null,P=null,V=null;this._outputColorSpace=qn;let H=0,B=0,q=null,X=-1,K=null,$=new nn,ot=new nn,at=null,Q=new xe(0),xt=0,Z=e.width,nt=e.height,st=1,gt=null,Ct=null,St=new nn(0,0,Z,nt),ne=new nn(0,0,Z,nt),se=!1,Kt=new Vs,Ee=new Vl,Qt=!1,_e=!1,pe=new Fe,Pe=new J,ht=new nn,Lt={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Tt=!1;function Xt(){return q===null?st:1}let O=n;function yt(R,W){return e.getContext(R,W)}let Wt,Ht,bt,Ie,jt,ie,D,E,j,Mt,mt,Rt,Pt,lt,dt,Et,G,ft,ct,Nt,At,Dt,te;try{let R={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:u,failIfMajorPerformanceCaveat:d};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",Yt,!1),e.addEventListener("webglcontextrestored",le,!1),e.addEventListener("webglcontextcreationerror",Ot,!1),O===null){let W="webgl2";if(O=yt(W,R),O===null)throw yt(W)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}ae()}catch(R){throw e.removeEventListener("webglcontextlost",Yt,!1),e.removeEventListener("webglcontextrestored",le,!1),e.removeEventListener("webglcontextcreationerror",Ot,!1),ue("WebGLRenderer: "+R.message),R}function ae(){Wt=new pM(O),Wt.init(),At=new JS(O,Wt),Ht=new iM(O,Wt,t,At),bt=new YS(O,Wt),Ht.reversedDepthBuffer&&h&&bt.buffers.depth.setReversed(!0),z=O.createFramebuffer(),P=O.createFramebuffer(),V=O.createFramebuffer(),Ie=new _M(O),jt=new NS,ie=new ZS(O,Wt,bt,jt,Ht,At,Ie),D=new fM(C),E=new yx(O),Dt=new eM(O,E),j=new mM(O,E,Ie,Dt),Mt=new yM(O,j,E,Dt,Ie),ft=new xM(O,Ht,ie),dt=new sM(jt),mt=new DS(C,D,Wt,Ht,Dt,dt),Rt=new tb(C,jt),Pt=new US,lt=new HS(Wt),G=new tM(C,D,bt,Mt,m,l),Et=new qS(C,Mt,Ht),te=new eb(O,Ie,Ht,bt),ct=new nM(O,Wt,Ie),Nt=new gM(O,Wt,Ie),Ie.programs=mt.programs,C.capabilities=Ht,C.extensions=Wt,C.properties=jt,C.renderLists=Pt,C.shadowMap=Et,C.state=bt,C.info=Ie}x!==jn&&(F=new MM(x,e.width,e.height,a,s,r));let vt=new hd(C,O);this.xr=vt,this.getContext=function(){return O},this.getContextAttributes=function(){return O.getContextAttributes()},this.forceContextLoss=function(){let R=Wt.get("WEBGL_lose_context");R&&R.loseContext()},this.forceContextRestore=function(){let R=Wt.get("WEBGL_lose_context");R&&R.restoreContext()},this.getPixelRatio=function(){return st},this.setPixelRatio=function(R){R!==void 0&&(st=R,this.setSize(Z,nt,!1))},this.getSize=function(R){return R.set(Z,nt)},this.setSize=function(R,W,rt=!0){if(vt.isPresenting){re("WebGLRenderer: Can't change size while VR device is presenting.");return}Z=R,nt=W,e.width=Math.floor(R*st),e.height=Math.floor(W*st),rt===!0&&(e.style.width=R+"px",e.style.height=W+"px"),F!==null&&F.setSize(e.width,e.height),this.setViewport(0,0,R,W)},this.getDrawingBufferSize=function(R){return R.set(Z*st,nt*st).floor()},this.setDrawingBufferSize=function(R,W,rt){Z=R,nt=W,st=rt,e.width=Math.floor(R*rt),e.height=Math.floor(W*rt),this.setViewport(0,0,R,W)},this.setEffects=function(R){if(x===jn){ue("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(R){for(let W=0;W<R.length;W++)if(R[W].isOutputPass===!0){re("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}F.setEffects(R||[])},this.getCurrentViewport=function(R){return R.copy($)},this.getViewport=function(R){return R.copy(St)},this.setViewport=function(R,W,rt,tt){R.isVector4?St.set(R.x,R.y,R.z,R.w):St.set(R,W,rt,tt),bt.viewport($.copy(St).multiplyScalar(Xt()).round())},this.getScissor=function(R){return R.copy(ne)},this.setScissor=function(R,W,rt,tt){R.isVector4?ne.set(R.x,R.y,R.z,R.w):ne.set(R,W,rt,tt),bt.scissor(ot.copy(ne).multiplyScalar(Xt()).round())},this.getScissorTest=function(){return se},this.setScissorTest=function(R){bt.setScissorTest(se=R)},this.setOpaqueSort=function(R){gt=R},this.setTransparentSort=function(R){Ct=R},this.getClearColor=function(R){return R.copy(G.getClearColor())},this.setClearColor=function(){G.setClearColor(...arguments)},this.getClearAlpha=function(){return G.getClearAlpha()},this.setClearAlpha=function(){G.setClearAlpha(...arguments)},this.clear=function(R=!0,W=!0,rt=!0){let tt=0;if(R){let et=!1;if(q!==null){let Ft=q.texture.format;et=_.has(Ft)}if(et){let Ft=q.texture.type,Bt=p.has(Ft),Ut=G.getClearColor(),kt=G.getClearAlpha(),Jt=Ut.r,he=Ut.g,Se=Ut.b;Bt?(y[0]=Jt,y[1]=he,y[2]=Se,y[3]=kt,O.clearBufferuiv(O.COLOR,0,y)):(T[0]=Jt,T[1]=he,T[2]=Se,T[3]=kt,O.clearBufferiv(O.COLOR,0,T))}else tt|=O.COLOR_BUFFER_BIT}W&&(tt|=O.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),rt&&(tt|=O.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),tt!==0&&O.clear(tt)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(R){R.setRenderer(this),k=R},this.dispose=function(){e.removeEventListener("webglcontextlost",Yt,!1),e.removeEventListener("webglcontextrestored",le,!1),e.removeEventListener("webglcontextcreationerror",Ot,!1),G.dispose(),Pt.dispose(),lt.dispose(),ie.dispose(),jt.dispose(),D.dispose(),Mt.dispose(),j.dispose(),Dt.dispose(),te.dispose(),mt.dispose(),vt.dispose(),vt.removeEventListener("sessionstart",Ya),vt.removeEventListener("sessionend",ki),rs.stop()};function Yt(R){R.preventDefault(),Xu("WebGLRenderer: Context Lost."),L=!0}function le(){Xu("WebGLRenderer: Context Restored."),L=!1;let R=Ie.autoReset,W=Et.enabled,rt=Et.autoUpdate,tt=Et.needsUpdate,et=Et.type;ae(),Ie.autoReset=R,Et.enabled=W,Et.autoUpdate=rt,Et.needsUpdate=tt,Et.type=et}function Ot(R){ue("WebGLRenderer: A WebGL context could not be created. Reason: ",R.statusMessage)}function me(R){let W=R.target;W.removeEventListener("dispose",me),Ze(W)}function Ze(R){Vn(R),jt.remove(R)}function Vn(R){let W=jt.get(R).programs;W!==void 0&&(W.forEach(function(rt){mt.releaseProgram(rt)}),R.isShaderMaterial&&mt.releaseShaderCache(R))}this.renderBufferDirect=function(R,W,rt,tt,et,Ft){W===null&&(W=Lt);let Bt=et.isMesh&&et.matrixWorld.determinantAffine()<0,Ut=Bo(R,W,rt,tt,et);bt.setMaterial(tt,Bt);let kt=rt.index,Jt=1;if(tt.wireframe===!0){if(kt=j.getWireframeAttribute(rt),kt===void 0)return;Jt=2}let he=rt.drawRange,Se=rt.attributes.position,Zt=he.start*Jt,be=(he.start+he.count)*Jt;Ft!==null&&(Zt=Math.max(Zt,Ft.start*Jt),be=Math.min(be,(Ft.start+Ft.count)*Jt)),kt!==null?(Zt=Math.max(Zt,0),be=Math.min(be,kt.count)):Se!=null&&(Zt=Math.max(Zt,0),be=Math.min(be,Se.count));let sn=be-Zt;if(sn<0||sn===1/0)return;Dt.setup(et,tt,Ut,rt,kt);let ze,Ve=ct;if(kt!==null&&(ze=E.get(kt),Ve=Nt,Ve.setIndex(ze)),et.isMesh)tt.wireframe===!0?(bt.setLineWidth(tt.wireframeLinewidth*Xt()),Ve.setMode(O.LINES)):Ve.setMode(O.TRIANGLES);else if(et.isLine){let xn=tt.linewidth;xn===void 0&&(xn=1),bt.setLineWidth(xn*Xt()),et.isLineSegments?Ve.setMode(O.LINES):et.isLineLoop?Ve.setMode(O.LINE_LOOP):Ve.setMode(O.LINE_STRIP)}else et.isPoints?Ve.setMode(O.POINTS):et.isSprite&&Ve.setMode(O.TRIANGLES);if(et.isBatchedMesh)if(Wt.get("WEBGL_multi_draw"))Ve.renderMultiDraw(et._multiDrawStarts,et._multiDrawCounts,et._multiDrawCount);else{let xn=et._multiDrawStarts,$t=et._multiDrawCounts,un=et._multiDrawCount,Ae=kt?E.get(kt).bytesPerElement:1,as=jt.get(tt).currentProgram.getUniforms();for(let dn=0;dn<un;dn++)as.setValue(O,"_gl_DrawID",dn),Ve.render(xn[dn]/Ae,$t[dn])}else if(et.isInstancedMesh)Ve.renderInstances(Zt,sn,et.count);else if(rt.isInstancedBufferGeometry){let xn=rt._maxInstanceCount!==void 0?rt._maxInstanceCount:1/0,$t=Math.min(rt.instanceCount,xn);Ve.renderInstances(Zt,sn,$t)}else Ve.render(Zt,sn)};function Fo(R,W,rt,tt){k!==null&&R.isNodeMaterial&&k.setObject(tt,R),Qt===!0&&dt.setState(R,rt,!1),R.transparent===!0&&R.side===Qi&&R.forceSinglePass===!1?(R.side=Un,R.needsUpdate=!0,zi(R,W,tt),R.side=qs,R.needsUpdate=!0,zi(R,W,tt),R.side=Qi):zi(R,W,tt)}this.compile=function(R,W,rt=null){rt===null&&(rt=R),k!==null&&k.renderStart(R,W,rt),w=lt.get(rt),w.init(W),S.push(w),rt.traverseVisible(function(et){et.isLight&&et.layers.test(W.layers)&&(w.pushLight(et),et.castShadow&&w.pushShadow(et))}),R!==rt&&R.traverseVisible(function(et){et.isLight&&et.layers.test(W.layers)&&(w.pushLight(et),et.castShadow&&w.pushShadow(et))}),w.setupLights(),k!==null&&k.updateLights(w.state.lightsArray),_e=this.localClippingEnabled,Qt=dt.init(this.clippingPlanes,_e),Qt===!0&&dt.setGlobalState(this.clippingPlanes,W),k!==null&&Et.render(w.state.shadowsArray,rt,W);let tt=new Set;return R.traverse(function(et){if(!(et.isMesh||et.isPoints||et.isLine||et.isSprite))return;let Ft=et.material;if(Ft)if(Array.isArray(Ft))for(let Bt=0;Bt<Ft.length;Bt++){let Ut=Ft[Bt];Fo(Ut,rt,W,et),tt.add(Ut)}else Fo(Ft,rt,W,et),tt.add(Ft)}),w=S.pop(),k!==null&&k.renderEnd(),tt},this.compileAsync=function(R,W,rt=null){let tt=this.compile(R,W,rt);return new Promise(et=>{function Ft(){if(tt.forEach(function(Bt){let kt=jt.get(Bt).currentProgram;(kt===void 0||kt.isReady())&&tt.delete(Bt)}),tt.size===0){et(R);return}setTimeout(Ft,10)}Wt.get("KHR_parallel_shader_compile")!==null?Ft():setTimeout(Ft,10)})};let Ar=null;function Dh(R){Ar&&Ar(R)}function Ya(){rs.stop()}function ki(){rs.start()}let rs=new Tm;rs.setAnimationLoop(Dh),typeof self<"u"&&rs.setContext(self),this.setAnimationLoop=function(R){Ar=R,vt.setAnimationLoop(R),R===null?rs.stop():rs.start()},vt.addEventListener("sessionstart",Ya),vt.addEventListener("sessionend",ki),this.render=function(R,W){if(W!==void 0&&W.isCamera!==!0){ue("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(L===!0)return;k!==null&&k.renderStart(R,W);let rt=vt.enabled===!0&&vt.isPresenting===!0,tt=F!==null&&(q===null||rt)&&F.begin(C,q);if(R.matrixWorldAutoUpdate===!0&&R.updateMatrixWorld(),W.parent===null&&W.matrixWorldAutoUpdate===!0&&W.updateMatrixWorld(),vt.enabled===!0&&vt.isPresenting===!0&&(F===null||F.isCompositing()===!1)&&(vt.cameraAutoUpdate===!0&&vt.updateCamera(W),W=vt.getCamera()),R.isScene===!0&&R.onBeforeRender(C,R,W,q),w=lt.get(R,S.length),w.init(W),w.state.textureUnits=ie.getTextureUnits(),S.push(w),pe.multiplyMatrices(W.projectionMatrix,W.matrixWorldInverse),W.isArrayCamera?Ee.setFromArrayCamera(W):Kt.setFromProjectionMatrix(pe,vi,W.reversedDepth),_e=this.localClippingEnabled,Qt=dt.init(this.clippingPlanes,_e),I=Pt.get(R,g.length),I.init(),g.push(I),this.info.render.frame++,vt.enabled===!0&&vt.isPresenting===!0){let Bt=C.xr.getDepthSensingMesh();Bt!==null&&os(Bt,W,-1/0,C.sortObjects)}os(R,W,0,C.sortObjects),I.finish(),k!==null&&k.updateLights(w.state.lightsArray),C.sortObjects===!0&&I.sort(gt,Ct),Tt=vt.enabled===!1||vt.isPresenting===!1||vt.hasDepthSensing()===!1,Tt&&G.addToRenderList(I,R),this.info.autoReset===!0&&this.info.reset(),Qt===!0&&dt.beginShadows();let et=w.state.shadowsArray;if(Et.render(et,R,W),Qt===!0&&dt.endShadows(),(tt&&F.hasRenderPass())===!1){let Bt=I.opaque,Ut=I.transmissive;if(w.setupLights(),W.isArrayCamera){let kt=W.cameras;if(Ut.length>0)for(let Jt=0,he=kt.length;Jt<he;Jt++){let Se=kt[Jt];wi(Bt,Ut,R,Se)}Tt&&G.render(R);for(let Jt=0,he=kt.length;Jt<he;Jt++){let Se=kt[Jt];Uo(I,R,Se,Se.viewport)}}else Ut.length>0&&wi(Bt,Ut,R,W),Tt&&G.render(R),Uo(I,R,W)}q!==null&&B===0&&(ie.updateMultisampleRenderTarget(q),ie.updateRenderTargetMipmap(q)),tt&&F.end(C),R.isScene===!0&&R.onAfterRender(C,R,W),Dt.resetDefaultState(),X=-1,K=null,S.pop(),S.length>0?(w=S[S.length-1],ie.setTextureUnits(w.state.textureUnits),Qt===!0&&dt.setGlobalState(C.clippingPlanes,w.state.camera)):w=null,g.pop(),g.length>0?I=g[g.length-1]:I=null,k!==null&&k.renderEnd()};function os(R,W,rt,tt){if(R.visible===!1)return;if(R.layers.test(W.layers)){if(R.isGroup)rt=R.renderOrder;else if(R.isLOD)R.autoUpdate===!0&&R.update(W);else if(R.isLight)w.pushLight(R),R.castShadow&&w.pushShadow(R);else if(R.isSprite){let Bt=W.isArrayCamera?Ee:Kt;if(!R.frustumCulled||R.intersectsFrustum(Bt)){tt&&ht.setFromMatrixPosition(R.matrixWorld).applyMatrix4(pe);let Ut=Mt.update(R),kt=R.material;kt.visible&&I.push(R,Ut,kt,rt,ht.z,null,W)}}else if(R.isMesh||R.isLine||R.isPoints){let Bt=W.isArrayCamera?Ee:Kt;if(!R.frustumCulled||R.intersectsFrustum(Bt)){let Ut=Mt.update(R),kt=R.material;if(tt&&(R.boundingSphere!==void 0?(R.boundingSphere===null&&R.computeBoundingSphere(),ht.copy(R.boundingSphere.center)):(Ut.boundingSphere===null&&Ut.computeBoundingSphere(),ht.copy(Ut.boundingSphere.center)),ht.applyMatrix4(R.matrixWorld).applyMatrix4(pe)),Array.isArray(kt)){let Jt=Ut.groups;for(let he=0,Se=Jt.length;he<Se;he++){let Zt=Jt[he],be=kt[Zt.materialIndex];be&&be.visible&&I.push(R,Ut,be,rt,ht.z,Zt,W)}}else kt.visible&&I.push(R,Ut,kt,rt,ht.z,null,W)}}}let Ft=R.children;for(let Bt=0,Ut=Ft.length;Bt<Ut;Bt++)os(Ft[Bt],W,rt,tt)}function Uo(R,W,rt,tt){let{opaque:et,transmissive:Ft,transparent:Bt}=R;w.setupLightsView(rt),Qt===!0&&dt.setGlobalState(C.clippingPlanes,rt),tt&&bt.viewport($.copy(tt)),et.length>0&&rn(et,W,rt),Ft.length>0&&rn(Ft,W,rt),Bt.length>0&&rn(Bt,W,rt),bt.buffers.depth.setTest(!0),bt.buffers.depth.setMask(!0),bt.buffers.color.setMask(!0),bt.setPolygonOffset(!1)}function wi(R,W,rt,tt){if((rt.isScene===!0?rt.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[tt.id]===void 0){let Zt=Wt.has("EXT_color_buffer_half_float")||Wt.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[tt.id]=new hi(1,1,{generateMipmaps:!0,type:Zt?Ni:jn,minFilter:bs,samples:Math.max(4,Ht.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Re.workingColorSpace})}let Ft=w.state.transmissionRenderTarget[tt.id],Bt=tt.viewport||$;Ft.setSize(Bt.z*C.transmissionResolutionScale,Bt.w*C.transmissionResolutionScale);let Ut=C.getRenderTarget(),kt=C.getActiveCubeFace(),Jt=C.getActiveMipmapLevel();C.setRenderTarget(Ft),C.getClearColor(Q),xt=C.getClearAlpha(),xt<1&&C.setClearColor(16777215,.5),C.clear(),Tt&&G.render(rt);let he=C.toneMapping;C.toneMapping=ts;let Se=tt.viewport;if(tt.viewport!==void 0&&(tt.viewport=void 0),w.setupLightsView(tt),Qt===!0&&dt.setGlobalState(C.clippingPlanes,tt),rn(R,rt,tt),ie.updateMultisampleRenderTarget(Ft),ie.updateRenderTargetMipmap(Ft),Wt.has("WEBGL_multisampled_render_to_texture")===!1){let Zt=!1;for(let be=0,sn=W.length;be<sn;be++){let ze=W[be],{object:Ve,geometry:xn,material:$t,group:un}=ze;if($t.side===Qi&&Ve.layers.test(tt.layers)){let Ae=$t.side;$t.side=Un,$t.needsUpdate=!0,cn(Ve,rt,tt,xn,$t,un),$t.side=Ae,$t.needsUpdate=!0,Zt=!0}}Zt===!0&&(ie.updateMultisampleRenderTarget(Ft),ie.updateRenderTargetMipmap(Ft))}C.setRenderTarget(Ut,kt,Jt),C.setClearColor(Q,xt),Se!==void 0&&(tt.viewport=Se),C.toneMapping=he}function rn(R,W,rt){let tt=W.isScene===!0?W.overrideMaterial:null;for(let et=0,Ft=R.length;et<Ft;et++){let Bt=R[et],{object:Ut,geometry:kt,group:Jt}=Bt,he=Bt.material;he.allowOverride===!0&&tt!==null&&(he=tt),Ut.layers.test(rt.layers)&&cn(Ut,W,rt,kt,he,Jt)}}function cn(R,W,rt,tt,et,Ft){k!==null&&et.isNodeMaterial&&k.setObject(R,et),R.onBeforeRender(C,W,rt,tt,et,Ft),R.modelViewMatrix.multiplyMatrices(rt.matrixWorldInverse,R.matrixWorld),R.normalMatrix.getNormalMatrix(R.modelViewMatrix),et.onBeforeRender(C,W,rt,tt,R,Ft),et.transparent===!0&&et.side===Qi&&et.forceSinglePass===!1?(et.side=Un,et.needsUpdate=!0,C.renderBufferDirect(rt,W,tt,et,R,Ft),et.side=qs,et.needsUpdate=!0,C.renderBufferDirect(rt,W,tt,et,R,Ft),et.side=Qi):C.renderBufferDirect(rt,W,tt,et,R,Ft),R.onAfterRender(C,W,rt,tt,et,Ft)}function hn(R){let W=0;for(let rt of R)rt.texture!==null&&W++;return W}function zi(R,W,rt){W.isScene!==!0&&(W=Lt);let tt=jt.get(R),et=w.state.lights,Ft=w.state.shadowsArray,Bt=et.state.version,Ut=mt.getParameters(R,et.state,Ft,W,rt,w.state.lightProbeGridArray),kt=mt.getProgramCacheKey(Ut),Jt=tt.programs;tt.environment=R.isMeshStandardMaterial||R.isMeshLambertMaterial||R.isMeshPhongMaterial?W.environment:null,tt.fog=W.fog;let he=R.isMeshStandardMaterial||R.isMeshLambertMaterial&&!R.envMap||R.isMeshPhongMaterial&&!R.envMap;tt.envMap=D.get(R.envMap||tt.environment,he),tt.envMapRotation=tt.environment!==null&&R.envMap===null?W.environmentRotation:R.envMapRotation,Jt===void 0&&(R.addEventListener("dispose",me),Jt=new Map,tt.programs=Jt,tt.programVariants=new Map);let Se=Jt.get(kt);if(Se!==void 0){if(tt.currentProgram===Se&&tt.lightsStateVersion===Bt)return Oo(R,Ut),Se}else Ut.uniforms=mt.getUniforms(R),k!==null&&R.isNodeMaterial&&k.build(R,rt,Ut),R.onBeforeCompile(Ut,C),Se=mt.acquireProgram(Ut,kt),Jt.set(kt,Se),tt.uniforms=Ut.uniforms;let Zt=tt.uniforms;return(!R.isShaderMaterial&&!R.isRawShaderMaterial||R.clipping===!0)&&(Zt.clippingPlanes=dt.uniform),Oo(R,Ut),tt.needsLights=Cs(R),tt.lightsStateVersion=Bt,tt.needsLights&&(Zt.ambientLightColor.value=et.state.ambient,Zt.lightProbe.value=et.state.probe,Zt.sunLights.value=et.state.sun,Zt.sunLightShadows.value=et.state.sunShadow,Zt.directionalLights.value=et.state.directional,Zt.directionalLightShadows.value=et.state.directionalShadow,Zt.spotLights.value=et.state.spot,Zt.spotLightShadows.value=et.state.spotShadow,Zt.rectAreaLights.value=et.state.rectArea,Zt.ltc_1.value=et.state.rectAreaLTC1,Zt.ltc_2.value=et.state.rectAreaLTC2,Zt.pointLights.value=et.state.point,Zt.pointLightShadows.value=et.state.pointShadow,Zt.hemisphereLights.value=et.state.hemi,Zt.sunShadowMatrix.value=et.state.sunShadowMatrix,Zt.sunShadowCascade.value=et.state.sunShadowCascade,Zt.directionalShadowMatrix.value=et.state.directionalShadowMatrix,Zt.spotLightMatrix.value=et.state.spotLightMatrix,Zt.spotLightMap.value=et.state.spotLightMap,Zt.pointShadowMatrix.value=et.state.pointShadowMatrix),tt.numLightProbeGrids=hn(w.state.lightProbeGridArray),tt.currentProgram=Se,tt.uniformsList=null,Se}function ei(R,W,rt,tt,et){let Ft=jt.get(R),Bt=Ft.currentProgram.id+","+tt+","+et,Ut=Ft.programVariants.get(Bt);return Ut===void 0?(Ut=zi(R,W,rt),Ft.programVariants.set(Bt,Ut)):(Ft.currentProgram=Ut,Ft.uniformsList=null,Ft.outputColorSpace=tt,Ft.toneMapping=et),Ut}function Rs(R){if(R.uniformsList===null){let W=R.currentProgram.getUniforms();R.uniformsList=Mo.seqWithValue(W.seq,R.uniforms)}return R.uniformsList}function Oo(R,W){let rt=jt.get(R);rt.outputColorSpace=W.outputColorSpace,rt.batching=W.batching,rt.batchingColor=W.batchingColor,rt.instancing=W.instancing,rt.instancingColor=W.instancingColor,rt.instancingMorph=W.instancingMorph,rt.skinning=W.skinning,rt.morphTargets=W.morphTargets,rt.morphNormals=W.morphNormals,rt.morphColors=W.morphColors,rt.morphTargetsCount=W.morphTargetsCount,rt.numClippingPlanes=W.numClippingPlanes,rt.numIntersection=W.numClipIntersection,rt.vertexAlphas=W.vertexAlphas,rt.vertexTangents=W.vertexTangents,rt.toneMapping=W.toneMapping}function Bo(R,W,rt,tt,et){W.isScene!==!0&&(W=Lt),ie.resetTextureUnits();let Ft=W.fog,Bt=tt.isMeshStandardMaterial||tt.isMeshLambertMaterial||tt.isMeshPhongMaterial?W.environment:null,Ut=q===null?C.outputColorSpace:q.isXRRenderTarget===!0?q.texture.colorSpace:Re.workingColorSpace,kt=tt.isMeshStandardMaterial||tt.isMeshLambertMaterial&&!tt.envMap||tt.isMeshPhongMaterial&&!tt.envMap,Jt=D.get(tt.envMap||Bt,kt),he=tt.vertexColors===!0&&!!rt.attributes.color&&rt.attributes.color.itemSize===4,Se=!!rt.attributes.tangent&&(!!tt.normalMap||tt.anisotropy>0),Zt=!!rt.morphAttributes.position,be=!!rt.morphAttributes.normal,sn=!!rt.morphAttributes.color,ze=ts;tt.toneMapped&&(q===null||q.isXRRenderTarget===!0)&&(ze=C.toneMapping);let Ve=rt.morphAttributes.position||rt.morphAttributes.normal||rt.morphAttributes.color,xn=Ve!==void 0?Ve.length:0,$t=jt.get(tt),un=w.state.lights;if(Qt===!0&&(_e===!0||R!==K)){let He=R===K&&tt.id===X;dt.setState(tt,R,He)}let Ae=!1,as=!1;tt.version===$t.__version?$t.needsLights&&$t.lightsStateVersion!==un.state.version||et.isBatchedMesh&&$t.batching===!1||!et.isBatchedMesh&&$t.batching===!0||et.isBatchedMesh&&$t.batchingColor===!0&&et._colorsTexture===null||et.isBatchedMesh&&$t.batchingColor===!1&&et._colorsTexture!==null||et.isInstancedMesh&&$t.instancing===!1||!et.isInstancedMesh&&$t.instancing===!0||et.isSkinnedMesh&&$t.skinning===!1||!et.isSkinnedMesh&&$t.skinning===!0||et.isInstancedMesh&&$t.instancingColor===!0&&et.instanceColor===null||et.isInstancedMesh&&$t.instancingColor===!1&&et.instanceColor!==null||et.isInstancedMesh&&$t.instancingMorph===!0&&et.morphTexture===null||et.isInstancedMesh&&$t.instancingMorph===!1&&et.morphTexture!==null||$t.envMap!==Jt||tt.fog===!0&&$t.fog!==Ft||$t.numClippingPlanes!==void 0&&($t.numClippingPlanes!==dt.numPlanes||$t.numIntersection!==dt.numIntersection)||$t.vertexAlphas!==he||$t.vertexTangents!==Se||$t.morphTargets!==Zt||$t.morphNormals!==be||$t.morphColors!==sn||$t.morphTargetsCount!==xn||$t.numLightProbeGrids!==hn(w.state.lightProbeGridArray)?Ae=!0:($t.outputColorSpace!==Ut||$t.toneMapping!==ze)&&(as=!0):(Ae=!0,$t.__version=tt.version);let dn=$t.currentProgram;(Ae===!0||as===!0)&&(dn=as===!0?ei(tt,W,et,Ut,ze):zi(tt,W,et),k&&tt.isNodeMaterial&&k.onUpdateProgram(tt,dn,$t));let Pr=!1,Vi=!1,ls=!1,ye=dn.getUniforms(),on=$t.uniforms;if(bt.useProgram(dn.program)&&(Pr=!0,Vi=!0,ls=!0),tt.id!==X&&(X=tt.id,Vi=!0),Pr||K!==R){bt.buffers.depth.getReversed()&&R.reversedDepth!==!0&&(R._reversedDepth=!0,R.updateProjectionMatrix()),ye.setValue(O,"projectionMatrix",R.projectionMatrix),ye.setValue(O,"viewMatrix",R.matrixWorldInverse);let fn=ye.map.cameraPosition;fn!==void 0&&fn.setValue(O,Pe.setFromMatrixPosition(R.matrixWorld)),Ht.logarithmicDepthBuffer&&ye.setValue(O,"logDepthBufFC",2/(Math.log(R.far+1)/Math.LN2)),(tt.isMeshPhongMaterial||tt.isMeshToonMaterial||tt.isMeshLambertMaterial||tt.isMeshBasicMaterial||tt.isMeshStandardMaterial||tt.isShaderMaterial)&&ye.setValue(O,"isOrthographic",R.isOrthographicCamera===!0),K!==R&&(K=R,Vi=!0,ls=!0)}if($t.needsLights&&(un.state.sunShadowMap.length>0&&ye.setValue(O,"sunShadowMap",un.state.sunShadowMap,ie),un.state.directionalShadowMap.length>0&&ye.setValue(O,"directionalShadowMap",un.state.directionalShadowMap,ie),un.state.spotShadowMap.length>0&&ye.setValue(O,"spotShadowMap",un.state.spotShadowMap,ie),un.state.pointShadowMap.length>0&&ye.setValue(O,"pointShadowMap",un.state.pointShadowMap,ie)),et.isSkinnedMesh){ye.setOptional(O,et,"bindMatrix"),ye.setOptional(O,et,"bindMatrixInverse");let He=et.skeleton;He&&(He.boneTexture===null&&He.computeBoneTexture(),ye.setValue(O,"boneTexture",He.boneTexture,ie))}et.isBatchedMesh&&(ye.setOptional(O,et,"batchingTexture"),ye.setValue(O,"batchingTexture",et._matricesTexture,ie),ye.setOptional(O,et,"batchingIdTexture"),ye.setValue(O,"batchingIdTexture",et._indirectTexture,ie),ye.setOptional(O,et,"batchingColorTexture"),et._colorsTexture!==null&&ye.setValue(O,"batchingColorTexture",et._colorsTexture,ie));let Hn=rt.morphAttributes;if((Hn.position!==void 0||Hn.normal!==void 0||Hn.color!==void 0)&&ft.update(et,rt,dn),(Vi||$t.receiveShadow!==et.receiveShadow)&&($t.receiveShadow=et.receiveShadow,ye.setValue(O,"receiveShadow",et.receiveShadow)),(tt.isMeshStandardMaterial||tt.isMeshLambertMaterial||tt.isMeshPhongMaterial)&&tt.envMap===null&&W.environment!==null&&(on.envMapIntensity.value=W.environmentIntensity),on.dfgLUT!==void 0&&(on.dfgLUT.value=ib()),Vi){if(ye.setValue(O,"toneMappingExposure",C.toneMappingExposure),$t.needsLights&&Rr(on,ls),Ft&&tt.fog===!0&&Rt.refreshFogUniforms(on,Ft),Rt.refreshMaterialUniforms(on,tt,st,nt,w.state.transmissionRenderTarget[R.id]),$t.needsLights&&$t.numLightProbeGrids>0){let He=b,fn=0;for(let On of w.state.lightProbeGridArray)On.texture!==null&&(He.textures[fn]=On.texture,He.min[fn]=On.boundingBox.min,He.max[fn]=On.boundingBox.max,He.resolution[fn]=On.resolution,fn++);for(let On in He)He[On].length=fn;on.probesSH.value=He.textures,on.probesMin.value=He.min,on.probesMax.value=He.max,on.probesResolution.value=He.resolution}Mo.upload(O,Rs($t),on,ie)}if(tt.isShaderMaterial&&tt.uniformsNeedUpdate===!0&&(Mo.upload(O,Rs($t),on,ie),tt.uniformsNeedUpdate=!1),tt.isSpriteMaterial&&ye.setValue(O,"center",et.center),ye.setValue(O,"modelViewMatrix",et.modelViewMatrix),ye.setValue(O,"normalMatrix",et.normalMatrix),ye.setValue(O,"modelMatrix",et.matrixWorld),tt.uniformsGroups!==void 0){let He=tt.uniformsGroups;for(let fn=0,On=He.length;fn<On;fn++){let Za=He[fn];te.update(Za,dn),te.bind(Za,dn)}}return dn}function Rr(R,W){R.ambientLightColor.needsUpdate=W,R.lightProbe.needsUpdate=W,R.sunLights.needsUpdate=W,R.sunLightShadows.needsUpdate=W,R.directionalLights.needsUpdate=W,R.directionalLightShadows.needsUpdate=W,R.pointLights.needsUpdate=W,R.pointLightShadows.needsUpdate=W,R.spotLights.needsUpdate=W,R.spotLightShadows.needsUpdate=W,R.rectAreaLights.needsUpdate=W,R.hemisphereLights.needsUpdate=W}function Cs(R){return R.isMeshLambertMaterial||R.isMeshToonMaterial||R.isMeshPhongMaterial||R.isMeshStandardMaterial||R.isShadowMaterial||R.isShaderMaterial&&R.lights===!0}this.getActiveCubeFace=function(){return H},this.getActiveMipmapLevel=function(){return B},this.getRenderTarget=function(){return q},this.setRenderTargetTextures=function(R,W,rt){let tt=jt.get(R);tt.__autoAllocateDepthBuffer=R.resolveDepthBuffer===!1,tt.__autoAllocateDepthBuffer===!1&&(tt.__useRenderToTexture=!1),jt.get(R.texture).__webglTexture=W,jt.get(R.depthTexture).__webglTexture=tt.__autoAllocateDepthBuffer?void 0:rt,tt.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(R,W){let rt=jt.get(R);rt.__webglFramebuffer=W,rt.__useDefaultFramebuffer=W===void 0},this.setRenderTarget=function(R,W=0,rt=0){q=R,H=W,B=rt;let tt=null,et=!1,Ft=!1;if(R){let Ut=jt.get(R);if(Ut.__useDefaultFramebuffer!==void 0){bt.bindFramebuffer(O.FRAMEBUFFER,Ut.__webglFramebuffer),$.copy(R.viewport),ot.copy(R.scissor),at=R.scissorTest,bt.viewport($),bt.scissor(ot),bt.setScissorTest(at),X=-1;return}else if(Ut.__webglFramebuffer===void 0)ie.setupRenderTarget(R);else if(Ut.__hasExternalTextures)ie.rebindTextures(R,jt.get(R.texture).__webglTexture,jt.get(R.depthTexture).__webglTexture);else if(R.depthBuffer){let he=R.depthTexture;if(Ut.__boundDepthTexture!==he){if(he!==null&&jt.has(he)&&(R.width!==he.image.width||R.height!==he.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");ie.setupDepthRenderbuffer(R)}}let kt=R.texture;(kt.isData3DTexture||kt.isDataArrayTexture||kt.isCompressedArrayTexture)&&(Ft=!0);let Jt=jt.get(R).__webglFramebuffer;R.isWebGLCubeRenderTarget?(Array.isArray(Jt[W])?tt=Jt[W][rt]:tt=Jt[W],et=!0):R.samples>0&&ie.useMultisampledRTT(R)===!1?tt=jt.get(R).__webglMultisampledFramebuffer:Array.isArray(Jt)?tt=Jt[rt]:tt=Jt,$.copy(R.viewport),ot.copy(R.scissor),at=R.scissorTest}else $.copy(St).multiplyScalar(st).floor(),ot.copy(ne).multiplyScalar(st).floor(),at=se;if(rt!==0&&(tt=z),bt.bindFramebuffer(O.FRAMEBUFFER,tt)&&bt.drawBuffers(R,tt),bt.viewport($),bt.scissor(ot),bt.setScissorTest(at),et){let Ut=jt.get(R.texture);O.framebufferTexture2D(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_CUBE_MAP_POSITIVE_X+W,Ut.__webglTexture,rt)}else if(Ft){let Ut=W;for(let kt=0;kt<R.textures.length;kt++){let Jt=jt.get(R.textures[kt]);O.framebufferTextureLayer(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0+kt,Jt.__webglTexture,rt,Ut)}}else if(R!==null&&rt!==0){let Ut=jt.get(R.texture);O.framebufferTexture2D(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,Ut.__webglTexture,rt)}X=-1};function Cr(R){let W=jt.get(R);return(W.__readFormat!==R.format||W.__readType!==R.type)&&(W.__readFormat=R.format,W.__readType=R.type,W.__formatReadable=Ht.textureFormatReadable(R.format),W.__typeReadable=Ht.textureTypeReadable(R.type)),W}this.readRenderTargetPixels=function(R,W,rt,tt,et,Ft,Bt,Ut=0){if(!(R&&R.isWebGLRenderTarget)){ue("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let kt=jt.get(R).__webglFramebuffer;if(R.isWebGLCubeRenderTarget&&Bt!==void 0&&(kt=kt[Bt],Array.isArray(kt)&&(kt=kt[0])),kt){bt.bindFramebuffer(O.FRAMEBUFFER,kt);try{let Jt=R.textures[Ut],he=Jt.format,Se=Jt.type;R.textures.length>1&&O.readBuffer(O.COLOR_ATTACHMENT0+Ut);let Zt=Cr(Jt);if(Zt.__formatReadable===!1){ue("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Zt.__typeReadable===!1){ue("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}W>=0&&W<=R.width-tt&&rt>=0&&rt<=R.height-et&&O.readPixels(W,rt,tt,et,At.convert(he),At.convert(Se),Ft)}finally{let Jt=q!==null?jt.get(q).__webglFramebuffer:null;bt.bindFramebuffer(O.FRAMEBUFFER,Jt)}}},this.readRenderTargetPixelsAsync=async function(R,W,rt,tt,et,Ft,Bt,Ut=0){if(!(R&&R.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let kt=jt.get(R).__webglFramebuffer;if(R.isWebGLCubeRenderTarget&&Bt!==void 0&&(kt=kt[Bt],Array.isArray(kt)&&(kt=kt[0])),kt)if(W>=0&&W<=R.width-tt&&rt>=0&&rt<=R.height-et){bt.bindFramebuffer(O.FRAMEBUFFER,kt);let Jt=R.textures[Ut],he=Jt.format,Se=Jt.type;R.textures.length>1&&O.readBuffer(O.COLOR_ATTACHMENT0+Ut);let Zt=Cr(Jt);if(Zt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Zt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let be=O.createBuffer();O.bindBuffer(O.PIXEL_PACK_BUFFER,be),O.bufferData(O.PIXEL_PACK_BUFFER,Ft.byteLength,O.STREAM_READ),O.readPixels(W,rt,tt,et,At.convert(he),At.convert(Se),0),O.bindBuffer(O.PIXEL_PACK_BUFFER,null);let sn=q!==null?jt.get(q).__webglFramebuffer:null;bt.bindFramebuffer(O.FRAMEBUFFER,sn);let ze=O.fenceSync(O.SYNC_GPU_COMMANDS_COMPLETE,0);return O.flush(),await Kp(O,ze,4),O.bindBuffer(O.PIXEL_PACK_BUFFER,be),O.getBufferSubData(O.PIXEL_PACK_BUFFER,0,Ft),O.bindBuffer(O.PIXEL_PACK_BUFFER,null),O.deleteBuffer(be),O.deleteSync(ze),Ft}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(R,W=null,rt=0){let tt=Math.pow(2,-rt),et=Math.floor(R.image.width*tt),Ft=Math.floor(R.image.height*tt),Bt=W!==null?W.x:0,Ut=W!==null?W.y:0;ie.setTexture2D(R,0),O.copyTexSubImage2D(O.TEXTURE_2D,rt,0,0,Bt,Ut,et,Ft),bt.unbindTexture()},this.copyTextureToTexture=function(R,W,rt=null,tt=null,et=0,Ft=0){let Bt,Ut,kt,Jt,he,Se,Zt,be,sn,ze=R.isCompressedTexture?R.mipmaps[Ft]:R.image;if(rt!==null)Bt=rt.max.x-rt.min.x,Ut=rt.max.y-rt.min.y,kt=rt.isBox3?rt.max.z-rt.min.z:1,Jt=rt.min.x,he=rt.min.y,Se=rt.isBox3?rt.min.z:0;else{let ye=Math.pow(2,-et);Bt=Math.floor(ze.width*ye),Ut=Math.floor(ze.height*ye),R.isDataArrayTexture?kt=ze.depth:R.isData3DTexture?kt=Math.floor(ze.depth*ye):kt=1,Jt=0,he=0,Se=0}tt!==null?(Zt=tt.x,be=tt.y,sn=tt.z):(Zt=0,be=0,sn=0);let Ve=At.convert(W.format),xn=At.convert(W.type),$t;W.isData3DTexture?(ie.setTexture3D(W,0),$t=O.TEXTURE_3D):W.isDataArrayTexture||W.isCompressedArrayTexture?(ie.setTexture2DArray(W,0),$t=O.TEXTURE_2D_ARRAY):(ie.setTexture2D(W,0),$t=O.TEXTURE_2D),bt.activeTexture(O.TEXTURE0),bt.pixelStorei(O.UNPACK_FLIP_Y_WEBGL,W.flipY),bt.pixelStorei(O.UNPACK_PREMULTIPLY_ALPHA_WEBGL,W.premultiplyAlpha),bt.pixelStorei(O.UNPACK_ALIGNMENT,W.unpackAlignment);let un=bt.getParameter(O.UNPACK_ROW_LENGTH),Ae=bt.getParameter(O.UNPACK_IMAGE_HEIGHT),as=bt.getParameter(O.UNPACK_SKIP_PIXELS),dn=bt.getParameter(O.UNPACK_SKIP_ROWS),Pr=bt.getParameter(O.UNPACK_SKIP_IMAGES);bt.pixelStorei(O.UNPACK_ROW_LENGTH,ze.width),bt.pixelStorei(O.UNPACK_IMAGE_HEIGHT,ze.height),bt.pixelStorei(O.UNPACK_SKIP_PIXELS,Jt),bt.pixelStorei(O.UNPACK_SKIP_ROWS,he),bt.pixelStorei(O.UNPACK_SKIP_IMAGES,Se);let Vi=R.isDataArrayTexture||R.isData3DTexture,ls=W.isDataArrayTexture||W.isData3DTexture;if(R.isDepthTexture){let ye=jt.get(R),on=jt.get(W),Hn=jt.get(ye.__renderTarget),He=jt.get(on.__renderTarget);bt.bindFramebuffer(O.READ_FRAMEBUFFER,Hn.__webglFramebuffer),bt.bindFramebuffer(O.DRAW_FRAMEBUFFER,He.__webglFramebuffer);for(let fn=0;fn<kt;fn++)Vi&&(O.framebufferTextureLayer(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,jt.get(R).__webglTexture,et,Se+fn),O.framebufferTextureLayer(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,jt.get(W).__webglTexture,Ft,sn+fn)),O.blitFramebuffer(Jt,he,Jt+Bt,he+Ut,Zt,be,Zt+Bt,be+Ut,O.DEPTH_BUFFER_BIT,O.NEAREST);bt.bindFramebuffer(O.READ_FRAMEBUFFER,null),bt.bindFramebuffer(O.DRAW_FRAMEBUFFER,null)}else if(et!==0||R.isRenderTargetTexture||jt.has(R)){let ye=jt.get(R),on=jt.get(W);bt.bindFramebuffer(O.READ_FRAMEBUFFER,P),bt.bindFramebuffer(O.DRAW_FRAMEBUFFER,V);for(let Hn=0;Hn<kt;Hn++)Vi?O.framebufferTextureLayer(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,ye.__webglTexture,et,Se+Hn):O.framebufferTexture2D(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,ye.__webglTexture,et),ls?O.framebufferTextureLayer(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,on.__webglTexture,Ft,sn+Hn):O.framebufferTexture2D(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,on.__webglTexture,Ft),et!==0?O.blitFramebuffer(Jt,he,Jt+Bt,he+Ut,Zt,be,Zt+Bt,be+Ut,O.COLOR_BUFFER_BIT,O.NEAREST):ls?O.copyTexSubImage3D($t,Ft,Zt,be,sn+Hn,Jt,he,Bt,Ut):O.copyTexSubImage2D($t,Ft,Zt,be,Jt,he,Bt,Ut);bt.bindFramebuffer(O.READ_FRAMEBUFFER,null),bt.bindFramebuffer(O.DRAW_FRAMEBUFFER,null)}else ls?R.isDataTexture||R.isData3DTexture?O.texSubImage3D($t,Ft,Zt,be,sn,Bt,Ut,kt,Ve,xn,ze.data):W.isCompressedArrayTexture?O.compressedTexSubImage3D($t,Ft,Zt,be,sn,Bt,Ut,kt,Ve,ze.data):O.texSubImage3D($t,Ft,Zt,be,sn,Bt,Ut,kt,Ve,xn,ze):R.isDataTexture?O.texSubImage2D(O.TEXTURE_2D,Ft,Zt,be,Bt,Ut,Ve,xn,ze.data):R.isCompressedTexture?O.compressedTexSubImage2D(O.TEXTURE_2D,Ft,Zt,be,ze.width,ze.height,Ve,ze.data):O.texSubImage2D(O.TEXTURE_2D,Ft,Zt,be,Bt,Ut,Ve,xn,ze);bt.pixelStorei(O.UNPACK_ROW_LENGTH,un),bt.pixelStorei(O.UNPACK_IMAGE_HEIGHT,Ae),bt.pixelStorei(O.UNPACK_SKIP_PIXELS,as),bt.pixelStorei(O.UNPACK_SKIP_ROWS,dn),bt.pixelStorei(O.UNPACK_SKIP_IMAGES,Pr),Ft===0&&W.generateMipmaps===!0&&W.mipmapsAutoUpdate===!0&&O.generateMipmap($t),bt.unbindTexture()},this.initRenderTarget=function(R){jt.get(R).__webglFramebuffer===void 0&&ie.setupRenderTarget(R)},this.initTexture=function(R){R.isCubeTexture?ie.setTextureCube(R,0):R.isData3DTexture?ie.setTexture3D(R,0):R.isDataArrayTexture||R.isCompressedArrayTexture?ie.setTexture2DArray(R,0):ie.setTexture2D(R,0),bt.unbindTexture()},this.resetState=function(){H=0,B=0,q=null,bt.reset(),Dt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return vi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=Re._getDrawingBufferColorSpace(t),e.unpackColorSpace=Re._getUnpackColorSpace()}};var Om={type:"change"},dd={type:"start"},km={type:"end"},th=new dr,Bm=new li,rb=Math.cos(70*Ju.DEG2RAD),Mn=new J,Qn=2*Math.PI,Ue={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},ud=1e-6,eh=class extends Ea{constructor(t,e=null){super(t,e),this.state=Ue.NONE,this.target=new J,this.cursor=new J,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:$s.ROTATE,MIDDLE:$s.DOLLY,RIGHT:$s.PAN},this.touches={ONE:Xs.ROTATE,TWO:Xs.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new J,this._lastQuaternion=new Nn,this._lastTargetPosition=new J,this._quat=new Nn().setFromUnitVectors(t.up,new J(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new mo,this._sphericalDelta=new mo,this._scale=1,this._panOffset=new J,this._rotateStart=new ce,this._rotateEnd=new ce,this._rotateDelta=new ce,this._panStart=new ce,this._panEnd=new ce,this._panDelta=new ce,this._dollyStart=new ce,this._dollyEnd=new ce,this._dollyDelta=new ce,this._dollyDirection=new J,this._mouse=new ce,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=ab.bind(this),this._onPointerDown=ob.bind(this),this._onPointerUp=lb.bind(this),this._onContextMenu=mb.bind(this),this._onMouseWheel=ub.bind(this),this._onKeyDown=db.bind(this),this._onTouchStart=fb.bind(this),this._onTouchMove=pb.bind(this),this._onMouseDown=cb.bind(this),this._onMouseMove=hb.bind(this),this._interceptControlDown=gb.bind(this),this._interceptControlUp=_b.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Ue.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(Om),this.update(),this.state=Ue.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;Mn.copy(e).sub(this.target),Mn.applyQuaternion(this._quat),this._spherical.setFromVector3(Mn),this.autoRotate&&this.state===Ue.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Qn:n>Math.PI&&(n-=Qn),s<-Math.PI?s+=Qn:s>Math.PI&&(s-=Qn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(Mn.setFromSpherical(this._spherical),Mn.applyQuaternion(this._quatInverse),e.copy(this.target).add(Mn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=Mn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new J(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new J(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=Mn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(th.origin.copy(this.object.position),th.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(th.direction))<rb?this.object.lookAt(this.target):(Bm.setFromNormalAndCoplanarPoint(this.object.up,this.target),th.intersectPlane(Bm,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>ud||8*(1-this._lastQuaternion.dot(this.object.quaternion))>ud||this._lastTargetPosition.distanceToSquared(this.target)>ud?(this.dispatchEvent(Om),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Qn/60*this.autoRotateSpeed*t:Qn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){Mn.setFromMatrixColumn(e,0),Mn.multiplyScalar(-t),this._panOffset.add(Mn)}_panUp(t,e){this.screenSpacePanning===!0?Mn.setFromMatrixColumn(e,1):(Mn.setFromMatrixColumn(e,0),Mn.crossVectors(this.object.up,Mn)),Mn.multiplyScalar(t),this._panOffset.add(Mn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;Mn.copy(s).sub(this.target);let r=Mn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new ce,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function ob(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function ab(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function lb(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(km),this.state=Ue.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function cb(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case $s.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Ue.DOLLY;break;case $s.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ue.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ue.ROTATE}break;case $s.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ue.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ue.PAN}break;default:this.state=Ue.NONE}this.state!==Ue.NONE&&this.dispatchEvent(dd)}function hb(i){switch(this.state){case Ue.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Ue.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Ue.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function ub(i){this.enabled===!1||this.enableZoom===!1||this.state!==Ue.NONE||(i.preventDefault(),this.dispatchEvent(dd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(km))}function db(i){this.enabled!==!1&&this._handleKeyDown(i)}function fb(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case Xs.ROTATE:if(this.enableRotate===!1){this.state=Ue.NONE;break}this._handleTouchStartRotate(i),this.state=Ue.TOUCH_ROTATE;break;case Xs.PAN:if(this.enablePan===!1){this.state=Ue.NONE;break}this._handleTouchStartPan(i),this.state=Ue.TOUCH_PAN;break;default:this.state=Ue.NONE}break;case 2:switch(this.touches.TWO){case Xs.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Ue.TOUCH_DOLLY_PAN;break;case Xs.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Ue.TOUCH_DOLLY_ROTATE;break;default:this.state=Ue.NONE}break;default:this.state=Ue.NONE}this.state!==Ue.NONE&&this.dispatchEvent(dd)}function pb(i){switch(this._trackPointer(i),this.state){case Ue.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Ue.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Ue.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Ue.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Ue.NONE}}function mb(i){this.enabled!==!1&&i.preventDefault()}function gb(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function _b(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var nh=i=>{let t=Math.max(i.points.width/3-1,0);return{data:new Float64Array(t*5*8),count:0,slackAt:-1,slackPoint:[0,0,0]}};function ih(i,t){let e=i.points.now,n=e.length/3-1,s=i.slack.now[0]||0,r=.002*(i.most_tension||1),o=h=>i.tension.now[i.span_of?.[h]??0]??0,a=h=>Math.hypot(e[3*h+3]-e[3*h],e[3*h+4]-e[3*h+1],e[3*h+5]-e[3*h+2]),l=0,c=0;if(t.slackAt=-1,s>.02){for(let h=0;h<n;++h)if(o(h)<r){let f=a(h);l+=f,f>c&&(c=f,t.slackAt=h)}}let u=0,d=(h,f,m,x,_,p,y)=>{let T=u++*8,b=t.data;b[T]=h,b[T+1]=f,b[T+2]=m,b[T+3]=x,b[T+4]=_,b[T+5]=p,b[T+6]=y,b[T+7]=Math.hypot(x-h,_-f,p-m)};for(let h=0;h<n;++h){let f=3*h,m=o(h);if(e[f]!==e[f]||e[f+3]!==e[f+3])continue;if(!(l>0&&m<r)){d(e[f],e[f+1],e[f+2],e[f+3],e[f+4],e[f+5],m);continue}let x=a(h),_=Math.sqrt(3/8*x*s*x/l);if(h===t.slackAt)for(let p=0;p<3;++p)t.slackPoint[p]=.5*(e[f+p]+e[f+3+p])-(p===1?_:0);for(let p=0;p<5;++p){let y=p/5,T=(p+.6)/5,b=w=>_*4*w*(1-w),I=(w,g)=>e[f+g]+w*(e[f+3+g]-e[f+g]);d(I(y,0),I(y,1)-b(y),I(y,2),I(T,0),I(T,1)-b(T),I(T,2),-1)}}t.count=u}function xb(i){return i.fingers.map(t=>{let e=i.bodies.findLastIndex(s=>s.role==="phalanx"&&s.name.startsWith(`${t}.`)),n=(i.bodies[e]?.shapes??[]).flatMap(s=>s.kind==="capsule"?[s.from,s.to]:s.points??[s.center]);return{text:t,body:e,at:n.reduce((s,r)=>Math.hypot(...r)>Math.hypot(...s)?r:s,[0,0,0])}}).filter(({body:t})=>t>=0)}var zm={finger:3,load:2,contact:1,slack:0};function sh(i,t){let e=[],n=new Set;for(let s of[...i].sort((r,o)=>zm[o.kind]-zm[r.kind]||(o.weight??0)-(r.weight??0))){let r=t(s);e.some(o=>r[0]<o[2]&&o[0]<r[2]&&r[1]<o[3]&&o[1]<r[3])||(e.push(r),n.add(s))}return n}function rh(i,t,e=.004){let n=[];if(i.fingers.length)for(let{text:r,body:o,at:a}of xb(i))n.push({kind:"finger",at:[0,0,0],text:r,shown:!0,source:{body:o,at:a}});else for(let r of i.pins)n.push({kind:"pin",at:[0,0,0],text:r.joint,shown:!0,source:r});for(let r of i.arrows)n.push({kind:r.kind,at:[0,0,0],text:"",shown:!1,source:r});for(let r of i.cords)n.push({kind:"slack",at:[0,0,0],text:"",shown:!1,source:r});function s(r){for(let o of n){let{source:a}=o;if(o.kind==="pin"||o.kind==="finger"){let l=i.bodies[a.body];l&&Ns(l.pose.now,a.at,o.at)}else if(o.kind==="slack"){let l=a.slack.now[0]||0,c=r(a);if(o.shown=l>.02,!o.shown)continue;if(o.text=i.fingers.length?`${qe(l,2)} mm slack`:`${a.name}: ${qe(l,2)} mm slack`,c.slackAt>=0)for(let u=0;u<3;++u)o.at[u]=c.slackPoint[u];else for(let u=0;u<3;++u)o.at[u]=a.points.now[u]}else{let l=a.force.now,c=a.point.now,u=Math.hypot(l[0],l[1],l[2]);if(o.shown=u>e*t.mostForce,!o.shown)continue;let d=t.mmPerNewton+3.5/u;for(let h=0;h<3;++h)o.at[h]=c[h]+l[h]*d;o.text=`${qe(u,2)} N`,o.weight=u/t.mostForce}}}return{labels:n,update:s}}var oh={side:[0,0,1],iso:[.75,.55,1],palm:[0,-1,1e-4],hand:[.75,-1,-.85]};function Vm(i){let t=Math.hypot(...oh[i]),[e,n,s]=oh[i].map(l=>l/t),r=Math.hypot(e,s),o=[s/r,0,-e/r],a=[n*o[2],s*o[0]-e*o[2],-n*o[0]];return l=>{let[c,u,d]=l;return l[0]=o[0]*c+o[2]*d,l[1]=a[0]*c+a[1]*u+a[2]*d,l[2]=e*c+n*u+s*d,l}}var yb=.3,vb=.6;function Gm(){try{let i=document.createElement("canvas").getContext("webgl2");return i?.getExtension("WEBGL_lose_context")?.loseContext(),!!i}catch{return!1}}var fd=(i,t)=>new Nn().setFromUnitVectors(new J(0,1,0),new J(t[0]-i[0],t[1]-i[1],t[2]-i[2]).normalize());function Hm(i,t){let e;switch(i.kind){case"capsule":{let{from:n,to:s,radius:r}=i,o=Math.hypot(s[0]-n[0],s[1]-n[1],s[2]-n[2]);e=new ma(r+t,o,12,40),o>0&&e.applyQuaternion(fd(n,s)),e.translate((n[0]+s[0])/2,(n[1]+s[1])/2,(n[2]+s[2])/2);break}case"sphere":e=new fo(i.radius+t,40,24),e.translate(...i.center);break;case"cylinder":e=new Ki(i.radius+t,i.radius+t,i.length+2*t,64),e.applyQuaternion(fd([0,0,0],i.axis)),e.translate(...i.center);break;case"box":{e=new Ss(...i.size.map(s=>s+2*t));let n=i.rotation??[1,0,0,0,1,0,0,0,1];e.applyMatrix4(new Fe().set(n[0],n[1],n[2],i.center[0],n[3],n[4],n[5],i.center[1],n[6],n[7],n[8],i.center[2],0,0,0,1));break}case"hull":{let n=[0,1,2].map(r=>i.points.reduce((o,a)=>o+a[r],0)/i.points.length),s=r=>{let o=i.points[r].map((l,c)=>l-n[c]),a=Math.hypot(...o)||1;return o.map((l,c)=>n[c]+l*(1+t/a))};e=new Zn,e.setAttribute("position",new Ye(i.faces.flatMap(r=>r.flatMap(s)),3)),e.computeVertexNormals();break}default:return null}return e}function Wm(i,t,e,{labelText:n,from:s="side"}){let r=new Kc({antialias:!0,alpha:!0});r.setPixelRatio(Math.min(devicePixelRatio,2));let o=r.domElement;o.setAttribute("aria-hidden","true");let a=M("div",{class:"labels","aria-hidden":"true"});i.append(o,a);let l=new oa,c=new pr(-1,1,1,-1,.1,4e3),u=new Sa(16777215,12895428,2.5),d=new wa(16777215,.9);d.position.set(-.4,1,.8),l.add(u,d);let h=(ht,Lt)=>{let Tt=new ya(Lt);return Tt.userData.variable=ht,Tt},f=(ht,Lt)=>{let Tt=new zs(Lt);return Tt.userData.variable=ht,Tt},m={phalanx:h("--phalanx"),pad:h("--pad"),palm:h("--palm"),object:h("--object",{transparent:!0,opacity:.5,depthWrite:!1}),outline:f("--outline",{side:Un}),edge:new uo,metal:h("--metal",{depthTest:!1,transparent:!0}),ring:f("--outline",{depthTest:!1,transparent:!0}),pulley:h("--pulley",{depthTest:!1,transparent:!0}),contact:f("--force",{depthTest:!1,transparent:!0}),load:f("--load",{depthTest:!1,transparent:!0})};m.edge.userData.variable="--object-edge";let x=t.bodies.map(ht=>{let Lt=new Zi;for(let Tt of ht.shapes??[]){let Xt=Hm(Tt,0);if(!Xt)continue;let O=ht.role==="object"?"object":ht.role==="palm"?"palm":Tt.role==="contact"?"pad":"phalanx";Lt.add(new gn(Xt,m[O])),O==="object"?Lt.add(new ua(new _a(Xt,30),m.edge)):Lt.add(new gn(Hm(Tt,yb),m.outline))}return l.add(Lt),Lt}),_=(ht,Lt,Tt,Xt,O)=>(Lt.position.set(...Tt),Lt.quaternion.copy(fd([0,0,0],Xt)),Lt.renderOrder=O,(x[ht]??l).add(Lt),Lt),p=(ht,Lt,Tt)=>(_(ht.body,new gn(new Ki(ht.radius+.25,ht.radius+.25,ht.length,32),m.ring),ht.at,ht.axis,Tt),_(ht.body,new gn(new Ki(ht.radius,ht.radius,ht.length+.2,32),Lt),ht.at,ht.axis,Tt+1));for(let ht of t.pins)p(ht,m.metal,10);for(let ht of t.guides)p(ht,m.metal,10);let y=t.pulleys.map(ht=>{p(ht,m.pulley,6);let Lt=new Zi,Tt=new gn(new Ss(ht.radius,ht.length+.4,.7),m.ring);return Tt.position.x=ht.radius/2,Lt.add(Tt),Tt.renderOrder=8,_(ht.body,Lt,ht.at,ht.axis,8),{mark:Lt,rest:Lt.quaternion.clone(),angle:ht.angle}}),T=new Ki(1,1,1,12),b=new fo(1,12,8),I=t.cords.map(ht=>{let Lt=nh(ht),Tt=Math.max(Lt.data.length/8,1),Xt=(Wt,Ht,bt)=>{let Ie=new ha(Wt,Ht,Tt);return Ie.instanceColor=new fr(new Float32Array(3*Tt),3),Ie.frustumCulled=!1,Ie.renderOrder=bt,l.add(Ie),Ie},O=new zs,yt=new zs({transparent:!0,opacity:.8,depthFunc:ro,depthWrite:!1});return{cord:ht,pieces:Lt,radius:Math.max(ht.radius||0,vb)*(ht.kind==="rubber"?1.15:1),rods:[Xt(T,yt,2),Xt(T,O,3)],balls:[Xt(b,yt,2),Xt(b,O,3)]}}),w=ht=>I.find(Lt=>Lt.cord===ht).pieces,g=t.arrows.map(ht=>{let Lt=m[ht.kind],Tt=new gn(new Ki(.55,.55,1,12),Lt),Xt=new gn(new ga(1.7,4.2,20),Lt);return Tt.renderOrder=Xt.renderOrder=20,l.add(Tt,Xt),{arrow:ht,shaft:Tt,head:Xt}}),{labels:S,update:F}=rh(t,e),C=S.map(ht=>{let Lt=ut(ht.text,{class:`tag tag-${ht.kind}`});return a.append(Lt),Lt}),L=new eh(c,o);L.enableDamping=!1,L.zoomSpeed=1.2,o.style.touchAction="pan-y",o.addEventListener("wheel",ht=>{!ht.ctrlKey&&!ht.metaKey&&ht.stopImmediatePropagation()},{capture:!0});let k=4*Math.hypot(...e.high.map((ht,Lt)=>ht-e.low[Lt])),z=new J(...e.centre),P=1,V=1,H=1,B=!1,q=new J;function X(){c.updateMatrixWorld();let ht=1,Lt=1;for(let Xt=0;Xt<8;++Xt)q.set(Xt&1?e.high[0]:e.low[0],Xt&2?e.high[1]:e.low[1],Xt&4?e.high[2]:e.low[2]),q.applyMatrix4(c.matrixWorldInverse),ht=Math.max(ht,Math.abs(q.x)),Lt=Math.max(Lt,Math.abs(q.y));H=Math.max(2*ht/P,2*Lt/V)*1.05,K()}function K(){c.left=-P*H/2,c.right=P*H/2,c.top=V*H/2,c.bottom=-V*H/2,c.updateProjectionMatrix(),_e()}function $(ht){c.up.set(0,1,0);let[Lt,Tt,Xt]=oh[ht];L.target.copy(z),c.position.set(Lt,Tt,Xt).normalize().multiplyScalar(k).add(z),c.zoom=1,c.lookAt(z),L.update(),X()}let ot=[];L.addEventListener("change",()=>{_e();for(let ht of ot)ht(c,L)});let at=new J(0,1,0),Q=new J,xt=new Fe,Z=new Nn,nt=new J,st=new J,gt=new J(0,1,0),Ct=new Nn,St=[0,0,0],ne=new xe,se=new xe;function Kt(){t.bodies.forEach((ht,Lt)=>{let Tt=ht.pose.now;x[Lt].position.set(Tt[0],Tt[1],Tt[2]),x[Lt].quaternion.set(Tt[3],Tt[4],Tt[5],Tt[6])});for(let ht of y)Ct.setFromAxisAngle(gt,(ht.angle.now[0]||0)*Math.PI/180),ht.mark.quaternion.copy(ht.rest).multiply(Ct);for(let{cord:ht,pieces:Lt,radius:Tt,rods:Xt,balls:O}of I){ih(ht,Lt);let yt=Lt.data;for(let Wt=0;Wt<Lt.count;++Wt){let Ht=Wt*8;Q.set(yt[Ht+3]-yt[Ht],yt[Ht+4]-yt[Ht+1],yt[Ht+5]-yt[Ht+2]).normalize(),Z.setFromUnitVectors(at,Q),nt.set((yt[Ht]+yt[Ht+3])/2,(yt[Ht+1]+yt[Ht+4])/2,(yt[Ht+2]+yt[Ht+5])/2),st.set(Tt,yt[Ht+7],Tt),xt.compose(nt,Z,st),yt[Ht+6]<0?ne.copy(se):(Wo(yt[Ht+6]/e.mostTension,St),ne.setRGB(St[0],St[1],St[2],qn));for(let bt of Xt)bt.setMatrixAt(Wt,xt),bt.setColorAt(Wt,ne);nt.set(yt[Ht+3],yt[Ht+4],yt[Ht+5]),st.set(Tt,Tt,Tt),xt.compose(nt,Z,st);for(let bt of O)bt.setMatrixAt(Wt,xt),bt.setColorAt(Wt,ne)}for(let Wt of[Xt[0],Xt[1],O[0],O[1]])Wt.count=Lt.count,Wt.instanceMatrix.needsUpdate=!0,Wt.instanceColor.needsUpdate=!0}for(let{arrow:ht,shaft:Lt,head:Tt}of g){let Xt=ht.force.now,O=ht.point.now,yt=Math.hypot(Xt[0],Xt[1],Xt[2]),Wt=yt>.004*e.mostForce&&O[0]===O[0];if(Lt.visible=Tt.visible=Wt,!Wt)continue;let Ht=yt*e.mmPerNewton,bt=Math.min(4.2,.6*Ht);Q.set(Xt[0]/yt,Xt[1]/yt,Xt[2]/yt),Lt.quaternion.setFromUnitVectors(at,Q),Tt.quaternion.copy(Lt.quaternion),Lt.position.set(O[0],O[1],O[2]).addScaledVector(Q,(Ht-bt)/2),Lt.scale.set(1,Math.max(Ht-bt,.001),1),Tt.position.set(O[0],O[1],O[2]).addScaledVector(Q,Ht-bt/2),Tt.scale.setScalar(bt/4.2)}F(w),_e()}function Ee(){let ht=n()?S.filter(Tt=>Tt.shown):[];for(let Tt of ht)nt.set(Tt.at[0],Tt.at[1],Tt.at[2]).project(c),Tt.x=(nt.x+1)/2*P,Tt.y=(1-nt.y)/2*V;let Lt=t.fingers.length?sh(ht,({x:Tt,y:Xt,text:O})=>[Tt-3.3*O.length,Xt-6,Tt+3.3*O.length,Xt+6]):new Set(ht);for(let Tt=0;Tt<S.length;++Tt){let Xt=S[Tt],O=C[Tt],yt=Lt.has(Xt);O.hidden===yt&&(O.hidden=!yt),yt&&(Cn(O,Xt.text),O.style.transform=`translate(-50%, -50%) translate(${Xt.x.toFixed(1)}px, ${Xt.y.toFixed(1)}px)`)}}function Qt(){B=!1,r.render(l,c),Ee()}function _e(){B||(B=!0,requestAnimationFrame(Qt))}function pe(){for(let ht of Object.values(m))ht.color.set(sr(ht.userData.variable));se.set(sr("--slack")),Kt()}return xi(pe),new ResizeObserver(()=>{let ht=i.getBoundingClientRect();if(ht.width<1||ht.height<1)return;let Lt=c.zoom;P=ht.width,V=ht.height,r.setSize(P,V,!1),c.zoom=1,X(),c.zoom=Lt,c.updateProjectionMatrix()}).observe(i),pe(),$(s),{kind:"3d",update:Kt,look:$,invalidate:_e,zoomBy(ht){c.zoom=Math.min(Math.max(c.zoom*ht,.3),20),c.updateProjectionMatrix(),L.update();for(let Lt of ot)Lt(c,L);_e()},pixelsPerMm:()=>c.zoom/H,onCamera(ht){ot.push(ht)},follow(ht,Lt){c.position.equals(ht.position)&&c.zoom===ht.zoom&&L.target.equals(Lt.target)||(c.position.copy(ht.position),c.quaternion.copy(ht.quaternion),L.target.copy(Lt.target),c.zoom=ht.zoom,c.updateProjectionMatrix(),L.update(),_e())}}}function Mb(i){let t=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),e=n=>{let s=[];for(let r of n){for(;s.length>1;){let[o,a]=[s[s.length-2],s[s.length-1]];if((a[0]-o[0])*(r[1]-o[1])-(a[1]-o[1])*(r[0]-o[0])>0)break;s.pop()}s.push(r)}return s.pop(),s};return[...e(t),...e(t.reverse())]}var Me=i=>i.toFixed(2),Sb=i=>i.map((t,e)=>`${e?"L":"M"}${Me(t[0])} ${Me(-t[1])}`).join("")+"Z";function pd(i,t){let e=i[0],n=-i[1];return`M${Me(e-t)} ${Me(n)}a${Me(t)} ${Me(t)} 0 1 0 ${Me(2*t)} 0a${Me(t)} ${Me(t)} 0 1 0 ${Me(-2*t)} 0Z`}function bb(i,t,e){let n=t[0]-i[0],s=t[1]-i[1],r=Math.hypot(n,s);if(r<1e-6)return pd(i,e);let o=n/r*e,a=s/r*e,l=(u,d,h)=>`${Me(u[0]+d)} ${Me(-u[1]-h)}`,c=(u,d,h)=>`A${Me(e)} ${Me(e)} 0 0 1 ${l(u,d,h)}`;return`M${l(i,-a,o)}L${l(t,-a,o)}${c(t,o,a)}${c(t,a,-o)}L${l(i,a,-o)}${c(i,-o,-a)}${c(i,-a,o)}Z`}function wb(i){if(i.kind==="hull")return i.points;if(i.kind==="box"){let t=i.rotation??[1,0,0,0,1,0,0,0,1];return[0,1,2,3,4,5,6,7].map(e=>{let n=[e&1?.5:-.5,e&2?.5:-.5,e&4?.5:-.5].map((s,r)=>s*i.size[r]);return[0,1,2].map(s=>i.center[s]+t[3*s]*n[0]+t[3*s+1]*n[1]+t[3*s+2]*n[2])})}if(i.kind==="cylinder"){let t=Math.hypot(...i.axis),e=i.axis.map(c=>c/t),n=Math.abs(e[0])<.8?[1,0,0]:[0,1,0],s=(c,u)=>[c[1]*u[2]-c[2]*u[1],c[2]*u[0]-c[0]*u[2],c[0]*u[1]-c[1]*u[0]],r=s(e,n),o=Math.hypot(...r);r=r.map(c=>c/o);let a=s(e,r),l=[];for(let c=0;c<48;++c)for(let u of[-.5,.5]){let d=2*Math.PI*c/48;l.push([0,1,2].map(h=>i.center[h]+u*i.length*e[h]+i.radius*(Math.cos(d)*r[h]+Math.sin(d)*a[h])))}return l}return null}function Ym(i,t,e){let n=r=>e(Ns(t,r,[0,0,0]));if(i.kind==="capsule")return bb(n(i.from),n(i.to),i.radius);if(i.kind==="sphere")return pd(n(i.center),i.radius);let s=wb(i);return s?Sb(Mb(s.map(n))):""}function $m({at:i,axis:t,radius:e,length:n},s,r){let o=r(Gh(s,t,[0,0,0]));return Math.hypot(o[0],o[1])<.001?pd(r(Ns(s,i,[0,0,0])),e):Ym({kind:"cylinder",center:i,axis:t,radius:e,length:n},s,r)}var Xm={palm:0,object:1,phalanx:2};function Eb(i,t){let e=0,n=0;for(let s of i.shapes??[])for(let r of s.kind==="capsule"?[s.from,s.to]:s.points??[s.center])e+=t(Ns(i.pose.now,r,[0,0,0]))[2],++n;return n?e/n:0}var qm=i=>Xe(i,"stroke",i.share<0?"currentColor":or(i.share));function md(i,t,e,{textSize:n=3.2,labelText:s=()=>!0,live:r=!0,from:o="side"}={}){let l=t.fingers.length>0,c,u,d,h,f,m,x=pt("svg",{class:`side-view ${l?"hand":""}`,"aria-hidden":"true"});i.append(x);function _(H){c=Vm(H);let{low:B,high:q}=e.within(c);u=B[0]-4,d=-q[1]-4,h=q[0]-B[0]+8,f=q[1]-B[1]+8,m=l?n*h/150:n,Xe(x,"viewBox",`${Me(u)} ${Me(d)} ${Me(h)} ${Me(f)}`),Xe(x,"font-size",Me(m))}_(o);let p=[],y=pt("g");x.append(y);let T=t.bodies.map(H=>H).sort((H,B)=>(Xm[H.role]??0)-(Xm[B.role]??0));for(let H of["contact","solid"])for(let B of T)for(let q of B.shapes??[]){if((B.role==="phalanx"?q.role??"solid":"contact")!==H)continue;let X=pt("path",{class:`shape ${B.role} ${B.role==="phalanx"?H:""}`});y.append(X),p.push({path:X,shape:q,body:B,pass:H})}function b(){let H=new Map(t.bodies.map(q=>[q,q.role==="palm"?-1/0:Eb(q,c)])),B=[...p].sort((q,X)=>H.get(q.body)-H.get(X.body)||(q.pass<X.pass?-1:q.pass>X.pass?1:0));B.some(({path:q},X)=>y.children[X]!==q)&&y.append(...B.map(({path:q})=>q))}let I=t.pulleys.map(H=>{let B=pt("path",{class:"pulley"}),q=pt("line",{class:"pulley-mark"});return x.append(B,q),{pulley:H,disc:B,mark:q}}),w=t.cords.map(H=>{let B=nh(H),q=pt("g",{class:`cord ${H.kind}`,"stroke-width":Me(Math.max(2*(H.radius||0),1.1))});return x.append(q),{cord:H,pieces:B,group:q,lines:[]}}),g=H=>w.find(B=>B.cord===H).pieces,S=[...t.pins,...t.guides].map(H=>{let B=pt("path",{class:"pin"});return x.append(B),{pin:H,disc:B}}),F=t.arrows.map(H=>{let B=pt("path",{class:`arrow ${H.kind}`});return x.append(B),{arrow:H,path:B}}),{labels:C,update:L}=rh(t,e,r?void 0:.1),k=C.map(H=>{let B=pt("text",{class:`tag-${H.kind}`});return x.append(B),B}),z=[0,0,0],P=[0,0,0];function V(){for(let{path:q,shape:X,body:K}of p)Xe(q,"d",Ym(X,K.pose.now,c));l&&b();for(let{pulley:q,disc:X,mark:K}of I){let $=t.bodies[q.body]?.pose.now;if(!$)continue;Xe(X,"d",$m(q,$,c)),c(Ns($,q.at,z)),c(Gh($,q.axis,P)),Xe(K,"visibility",Math.abs(P[2])>.99?"visible":"hidden");let ot=(q.angle.now[0]||0)*Math.PI/180*(P[2]<0?-1:1);Xe(K,"x1",Me(z[0])),Xe(K,"y1",Me(-z[1])),Xe(K,"x2",Me(z[0]+q.radius*Math.cos(ot))),Xe(K,"y2",Me(-z[1]-q.radius*Math.sin(ot)))}for(let q of w){ih(q.cord,q.pieces);let X=q.pieces.data;for(let K=0;K<q.pieces.count;++K){let $=q.lines[K];$||($=pt("line"),q.group.append($),q.lines.push($));let ot=K*8,at=c([X[ot],X[ot+1],X[ot+2]]),Q=c([X[ot+3],X[ot+4],X[ot+5]]);Xe($,"x1",Me(at[0])),Xe($,"y1",Me(-at[1])),Xe($,"x2",Me(Q[0])),Xe($,"y2",Me(-Q[1]));let xt=X[ot+6]<0;Xe($,"class",xt?"slack":"taut"),$.share=xt?-1:X[ot+6]/e.mostTension,qm($),Xe($,"visibility","visible")}for(let K=q.pieces.count;K<q.lines.length;++K)Xe(q.lines[K],"visibility","hidden")}for(let{pin:q,disc:X}of S){let K=t.bodies[q.body]?.pose.now;K&&Xe(X,"d",$m(q,K,c))}for(let{arrow:q,path:X}of F){let K=c([...q.force.now]),$=c([...q.point.now]),ot=Math.hypot(K[0],K[1]);if(!(ot>.004*e.mostForce)||$[0]!==$[0]){Xe(X,"d","");continue}let at=ot*e.mmPerNewton,Q=Math.min(4,.6*at),xt=K[0]/ot,Z=K[1]/ot,nt=$[0]+xt*at,st=$[1]+Z*at,gt=nt-xt*Q,Ct=st-Z*Q,St=.4*Q;Xe(X,"d",`M${Me($[0])} ${Me(-$[1])}L${Me(gt)} ${Me(-Ct)}M${Me(nt)} ${Me(-st)}L${Me(gt-Z*St)} ${Me(-Ct-xt*St)}L${Me(gt+Z*St)} ${Me(-Ct+xt*St)}Z`)}L(g);let H=s()?C.filter(q=>q.shown):[];for(let q of H){let X=c([...q.at]);q.half=.3*m*q.text.length,q.x=Math.min(Math.max(X[0],u+q.half),u+h-q.half),q.y=-X[1]+.35*m+(q.kind==="pin"?-2.2-.2*m:q.kind==="slack"?m:0)}let B=l?sh(H,q=>[q.x-q.half,q.y-m,q.x+q.half,q.y]):new Set(H);C.forEach((q,X)=>{let K=B.has(q);Xe(k[X],"visibility",K?"visible":"hidden"),K&&(Cn(k[X],q.text),Xe(k[X],"x",Me(q.x)),Xe(k[X],"y",Me(q.y)))})}return xi(r?V:()=>{for(let H of w)H.lines.forEach(qm)}),{kind:"2d",root:x,update:V,look(H){_(H),V()},invalidate(){},zoomBy(){},onCamera(){},follow(){},pixelsPerMm:()=>{let H=x.getBoundingClientRect();return Math.min(H.width/h,H.height/f)}}}var Tb=4;function Zm(i,t,{onKey:e}){let{records:n}=i,s=n.length>1,{duration:r}=t.state,o=Ab(n,r),a=y=>r>0?y/r:0,l=M("div",{class:"lanes"}),c=M("div",{class:"event-marks"}),u=M("input",{type:"range",min:0,max:r,step:"any",value:0,class:"scrub","aria-label":"time of the run",on:{input:()=>{t.seek(u.valueAsNumber)},keydown:e}}),d=M("div",{class:"time-line"},l,M("div",{class:"track"},c,u)),h=y=>`${s?`${y.letters}: `:""}${y.text}`,f=y=>()=>{t.seek(y.time)},m=o.filter(y=>y.weight>=3).sort((y,T)=>y.time-T.time),x=m.map(y=>M("button",{type:"button",class:"event","data-jump":y.time,title:`${h(y)}, ${Dn(y.time,r)}`,on:{click:f(y)}},ut(h(y))));l.append(...x);for(let y of o.filter(T=>T.weight>=2))c.append(M("span",{class:`event-mark weight-${y.weight}`,style:{left:`${100*a(y.time)}%`}}));function _(){let y=l.clientWidth;if(!y)return;let T=y<500?3:Tb,b=new Array(T).fill(1/0),I=[];for(let g=x.length-1;g>=0;--g){let S=x[g];S.hidden=!1;let F=S.offsetWidth,C=a(m[g].time)*y,L=C+F>y,k=L?Math.max(C-F,0):C,z=b.findIndex((P,V)=>k+F+4<=P&&I.every(H=>H.lane<=V||H.x<k||H.x>k+F));S.hidden=z<0,!(z<0)&&(b[z]=k,I.push({lane:z,x:C}),S.classList.toggle("flip",L),S.style.left=`${k}px`,S.style.bottom=`${z*22}px`,S.style.setProperty("--leader",`${z*22+6}px`))}let w=b.filter(g=>g<1/0).length;l.style.height=`${w*22}px`}new ResizeObserver(_).observe(l);let p=m.map(y=>y.time);return t.listen(({time:y})=>{u.value=y;let T=m.findLast(b=>b.time<=y+1e-9);u.setAttribute("aria-valuetext",`${Dn(y,r)}${T?`, after ${h(T)}`:""}`)}),{box:d,slider:u,labelled:m,text:h,next:()=>p.find(y=>y>t.state.time+1e-6),previous:()=>p.findLast(y=>y<t.state.time-1e-6)}}function Ab(i,t){let e=[];for(let n of i)for(let s of n.events??[]){if(s.weight<2)continue;let r=e.find(o=>o.text===s.text&&!o.letters.includes(n.label)&&Math.abs(o.time-s.time)<.005*t);r?(r.letters+=` ${n.label}`,r.weight=Math.max(r.weight,s.weight)):e.push({...s,letters:n.label})}return e}function Jm(i,t){let{records:e}=i,{duration:n}=t.state;return e.map(s=>{let r=[...s.events??[]].sort((l,c)=>l.time-c.time);if(!r.length)return null;let o=400,a=r.length>o?r.filter(l=>l.weight>1).slice(0,o):r;return M("details",{class:"events"},M("summary",{},e.length>1?`Events of ${s.label}`:"All events",` (${r.length}${a.length<r.length?`, the ${a.length} main ones shown`:""})`),M("ul",{},a.map(l=>M("li",{},M("button",{type:"button",class:"jump","data-jump":l.time,on:{click:()=>{t.seek(l.time)}}},Dn(l.time,n))," ",ut(l.text)))))})}function Km(i,t){return e=>{if(e.defaultPrevented||e.altKey||e.ctrlKey||e.metaKey)return;let n=e.target.tagName,s=n==="INPUT"&&e.target.type==="range";if(n==="SELECT"||n==="SUMMARY"||n==="INPUT"&&!s||n==="BUTTON"&&(e.key===" "||e.key==="Enter"))return;let r=o=>{o!==void 0&&i.seek(o)};switch(e.key){case" ":i.toggle();break;case"ArrowLeft":i.step(e.shiftKey?-10:-1);break;case"ArrowRight":i.step(e.shiftKey?10:1);break;case"PageUp":case",":r(t().previous()??0);break;case"PageDown":case".":r(t().next()??i.state.duration);break;case"Home":r(0);break;case"End":r(i.state.duration);break;default:return}e.preventDefault()}}var jm=[.02,.05,.1,.25,.5,1,2,5,10,60],Rb=i=>jm.reduce((t,e)=>Math.abs(Math.log(i/e/8))<Math.abs(Math.log(i/t/8))?e:t,1),Cb=i=>i.map(t=>t.shown_as??"finger").reduce((t,e)=>t===e?t:"fingers");function Pb(i,t,e,n){let s=M("span",{class:"tension-bar"});xi(()=>{s.style.background=ar()}),s.style.background=ar();let r=o=>pt("svg",{class:"arrow-sample",viewBox:"0 -5 34 10",width:34,height:10},pt("path",{class:`arrow ${o}`,d:"M0 0H26M34 0L25 -4L25 4Z"}));return M("div",{class:"legend"},M("div",{class:"legend-tension"},M("span",{class:"cell-title"},"cord tension"),s,M("span",{class:"tension-ends"},M("span",{},"0"),M("span",{},qe(i.mostTension/2,3)),M("span",{},`${qe(i.mostTension,3)} N`))),M("ul",{},t&&M("li",{},pt("svg",{class:"slack-sample",viewBox:"0 0 34 10",width:34,height:10},pt("path",{d:"M0 2Q17 14 34 2"})),"slack cord: sag shows the loose length"),i.mostForce>0&&M("li",{},r("contact"),`force on the ${n}, ${qe(i.mmPerNewton,1)}\xA0mm\xA0per\xA0N`),e&&M("li",{},r("load"),"load from outside, same scale"),M("li",{},M("span",{class:"swatch pad"}),"pad that touches"),M("li",{},M("span",{class:"swatch pulley"}),"pulley, mark turns with it"),M("li",{class:"muted"},"All to scale except thin cords, drawn at least 1.2 mm thick")))}function Qm(i,t,e,n,s){let{records:r}=t,o=r.length>1,{duration:a}=s.state,l=!0,c=Gm(),u=Cb(r),d=u==="fingers"?"are":"is",h=u==="hand"?"hand":"side",f=[],m=M("div",{class:`pictures count-${Math.min(r.length,3)}`});r.forEach(($,ot)=>{let at=M("div",{class:"picture-holder"}),Q=M("div",{class:"scale-bar","aria-hidden":"true"},M("span",{}),M("b",{})),xt=M("figure",{class:"picture",tabindex:0,role:"group","data-view":c?"3d":"2d","aria-label":`${o?`${$.label}: `:""}the ${u} in motion; space plays, arrow keys step, Home and End go to the ends`},at,Q,o&&M("figcaption",{class:"picture-name"},M("span",{class:"record-letter"},$.label)," ",ut($.name)),M("span",{class:"picture-state","aria-hidden":"true"}));m.append(xt);let Z={labelText:()=>l,from:h},nt=null;if(c)try{nt=Wm(at,e[ot],n,Z)}catch{at.textContent=""}nt??=md(at,e[ot],n,Z),xt.dataset.view=nt.kind,f.push({view:nt,motion:e[ot],picture:xt,scale:Q,end:e[ot].times.at(-1)??0})});for(let{view:$}of f)$.onCamera((ot,at)=>{for(let Q of f)Q.view!==$&&Q.view.follow(ot,at);x()});function x(){for(let{view:$,scale:ot}of f){let at=$.pixelsPerMm();if(!(at>0)||!Number.isFinite(at))continue;let Q=nr(110/at);ot.firstChild.style.width=`${(Q*at).toFixed(1)}px`,Cn(ot.lastChild,`${Q} mm`)}}let _=($,ot,at,Q,xt)=>M("button",{type:"button",id:$,title:at,"aria-label":at,on:{click:Q},...xt},ot),p=$=>pt("svg",{viewBox:"0 0 16 16",width:16,height:16,"aria-hidden":"true"},pt("path",{d:$})),y="M4 2L14 8L4 14Z",T="M3 2H7V14H3ZM9 2H13V14H9Z",b=p(y),I=M("span",{},"Play"),w=M("button",{type:"button",id:"play",class:"play",on:{click:()=>s.toggle()}},b,I),g=Km(s,()=>S),S=Zm(t,s,{onKey:g}),F=$=>{$!==void 0&&s.seek($)},C=M("select",{id:"speed","aria-label":"speed of the playback",on:{change:()=>s.setSpeed(Number(C.value))}},jm.filter($=>a/$>.7&&a/$<600||$>=.1&&$<=2).map($=>M("option",{value:$},$===1?"real time":$<1?`${$}\xD7 slow`:`${$}\xD7 fast`)));s.setSpeed(Rb(a)),C.value=String(s.state.speed);let L=M("input",{type:"checkbox",id:"loop",on:{change:()=>s.setLoop(L.checked)}}),k=M("output",{class:"clock","aria-live":"off"}),z=M("input",{type:"checkbox",id:"names",checked:!0,on:{change:()=>{l=z.checked,B()}}}),P=[["side","Side"],[u==="hand"?"hand":"iso","Oblique"],["palm","Palm"]].map(([$,ot])=>M("button",{type:"button",class:"look","data-look":$,"aria-pressed":$===h,on:{click:()=>{f[0].view.look($);for(let{view:at}of f.slice(1))at.look($);for(let at of P)at.setAttribute("aria-pressed",String(at.dataset.look===$));x()}}},ot)),V=c?M("div",{class:"view-tools controls",role:"group","aria-label":"view"},P,_("closer","+","closer",()=>{f[0].view.zoomBy(1.25)}),_("farther","\u2212","farther",()=>{f[0].view.zoomBy(.8)}),M("label",{},z," names"),M("span",{class:"hint"},"drag to turn, Ctrl + wheel to zoom")):M("div",{class:"view-tools controls",role:"group","aria-label":"view"},u==="hand"&&P,M("label",{},z," names"),M("span",{class:"hint no-webgl"},u==="hand"?"This browser has no WebGL, so the hand is drawn as flat outlines.":`This browser has no WebGL, so the ${u} ${d} drawn from the side only.`)),H=M("div",{class:"transport controls"},M("div",{class:"transport-buttons"},w,_("to-previous",p("M3 2H5V14H3ZM14 2L6 8L14 14Z"),"to the event before",()=>F(S.previous()??0)),_("step-back",p("M12 2L4 8L12 14Z"),"one row of the record back",()=>s.step(-1)),_("step-on",p("M4 2L12 8L4 14Z"),"one row of the record on",()=>s.step(1)),_("to-next",p("M2 2L10 8L2 14ZM11 2H13V14H11Z"),"to the next event",()=>F(S.next()??a)),k,M("label",{class:"speed"},C),M("label",{},L," repeat")),S.box);function B(){let{time:$}=s.state;for(let{view:ot,motion:at,picture:Q,end:xt}of f)at.at($),ot.update(),Cn(Q.querySelector(".picture-state"),$>xt+1e-9?`ended at ${Dn(xt,a)}`:"")}s.listen($=>{B();let ot=S.labelled.findLast(Q=>Q.time<=$.time+1e-9);Cn(k,Dn($.time,a)),k.title=ot?`after: ${S.text(ot)}`:"",Cn(I,$.playing?"Pause":"Play"),b.firstChild.setAttribute("d",$.playing?T:y);let at=document.getElementById("review");at.dataset.time=$.time.toFixed(6),at.dataset.playing=String($.playing)}),new ResizeObserver(x).observe(m);let q=r.some($=>($.scene?.cords??[]).length>0),X=e.some($=>$.arrows.some(ot=>ot.kind==="load")),K=i.section("motion",`The ${u} in motion`,V,M("div",{class:`stage-body ${o?"several":""}`},m,Pb(n,q,X,u)),Ib(r,e,n,s),Jm(t,s));return K.addEventListener("keydown",g),requestAnimationFrame(x),{section:K,controls:H,onKey:g}}function Ib(i,t,e,n){return i.map((s,r)=>{let o=s.instants??[];if(!o.length)return null;let a=M("div",{class:"instants"},o.map(l=>{let c=M("button",{type:"button",class:"instant","data-jump":l.time,on:{click:()=>{n.seek(l.time)}}}),u=M("span",{class:"instant-picture"});return c.append(u,M("span",{class:"instant-text"},M("b",{},Dn(l.time,n.state.duration))," ",ut(l.what))),t[r].at(l.time),md(u,t[r],e,{textSize:7.5,live:!1,from:t[r].fingers.length?"hand":"side"}).update(),c}));return[M("h4",{class:"sub"},i.length>1?`Key instants of ${s.label}`:"Key instants"),a]})}var Lb="uplot",Db="u-hz",Nb="u-vt",Fb="u-title",Ub="u-wrap",Ob="u-under",Bb="u-over",kb="u-axis",Sr="u-off",zb="u-select",Vb="u-cursor-x",Hb="u-cursor-y",Gb="u-cursor-pt",Wb="u-legend",$b="u-live",Xb="u-inline",qb="u-series",Yb="u-marker",tg="u-label",Zb="u-value",ka="width",za="height";var eg="bottom",bo="left",gd="right",Dd="#000",ng=Dd+"0",_d="mousemove",ig="mousedown",xd="mouseup",sg="mouseenter",rg="mouseleave",og="dblclick",Jb="resize",Kb="scroll",ag="change",dh="dppxchange",Nd="--",Po=typeof window<"u",bd=Po?document:null,Eo=Po?window:null,jb=Po?navigator:null,Oe,lh;function wd(){let i=devicePixelRatio;Oe!=i&&(Oe=i,lh&&Td(ag,lh,wd),lh=matchMedia(`(min-resolution: ${Oe-.001}dppx) and (max-resolution: ${Oe+.001}dppx)`),br(ag,lh,wd),Eo.dispatchEvent(new CustomEvent(dh)))}function di(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Ed(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function tn(i,t,e){i.style[t]=e+"px"}function Ui(i,t,e,n){let s=bd.createElement(i);return t!=null&&di(s,t),e?.insertBefore(s,n),s}function Si(i,t){return Ui("div",i,t)}var lg=new WeakMap;function is(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=lg.get(i);r!=o&&(i.style.transform=r,lg.set(i,r),t<0||e<0||t>n||e>s?di(i,Sr):Ed(i,Sr))}var cg=new WeakMap;function hg(i,t,e){let n=t+e,s=cg.get(i);n!=s&&(cg.set(i,n),i.style.background=t,i.style.borderColor=e)}var ug=new WeakMap;function dg(i,t,e,n){let s=t+""+e,r=ug.get(i);s!=r&&(ug.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var Fd={passive:!0},Qb={...Fd,capture:!0};function br(i,t,e,n){t.addEventListener(i,e,n?Qb:Fd)}function Td(i,t,e,n){t.removeEventListener(i,e,Fd)}Po&&wd();function Oi(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:fi((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function zg(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var Vg=i=>i!=null,Hg=i=>i!=null&&i>0,mh=zg(Vg),tw=zg(Hg);function ew(i,t,e,n=0,s=!1){let r=s?tw:mh,o=s?Hg:Vg;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let u=i[c];o(u)&&(u<a?a=u:u>l&&(l=u))}return[a??We,l??-We]}function gh(i,t,e,n){let s=mg(i),r=mg(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?Ts:Gg,a=s==1?fi:bi,l=r==1?bi:fi,c=a(o(bn(i))),u=l(o(bn(t))),d=To(e,c),h=To(e,u);return e==10&&(c<0&&(d=$e(d,-c)),u<0&&(h=$e(h,-u))),n||e==2?(i=d*s,t=h*r):(i=qg(i,d),t=_h(t,h)),[i,t]}function Ud(i,t,e,n){let s=gh(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Od=.1,fg={mode:3,pad:Od},Ha={pad:0,soft:null,mode:0},nw={min:Ha,max:Ha};function fh(i,t,e,n){return xh(e)?pg(i,t,e):(Ha.pad=e,Ha.soft=n?0:null,Ha.mode=n?3:0,pg(i,t,nw))}function De(i,t){return i??t}function iw(i,t,e){for(t=De(t,0),e=De(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function pg(i,t,e){let n=e.min,s=e.max,r=De(n.pad,0),o=De(s.pad,0),a=De(n.hard,-We),l=De(s.hard,We),c=De(n.soft,We),u=De(s.soft,-We),d=De(n.mode,0),h=De(s.mode,0),f=t-i,m=Ts(f),x=Jn(bn(i),bn(t)),_=Ts(x),p=bn(_-m);(f<1e-24||p>10)&&(f=0,(i==0||t==0)&&(f=1e-24,d==2&&c!=We&&(r=0),h==2&&u!=-We&&(o=0)));let y=f||x||1e3,T=Ts(y),b=To(10,fi(T)),I=y*(f==0?i==0?.1:1:r),w=$e(qg(i-I,b/10),24),g=i>=c&&(d==1||d==3&&w<=c||d==2&&w>=c)?c:We,S=Jn(a,w<g&&i>=g?g:Bi(g,w)),F=y*(f==0?t==0?.1:1:o),C=$e(_h(t+F,b/10),24),L=t<=u&&(h==1||h==3&&C>=u||h==2&&C<=u)?u:-We,k=Bi(l,C>L&&t<=L?L:Jn(L,C));return S==k&&S==0&&(k=100),[S,k]}var sw=new Intl.NumberFormat(Po?jb.language:"en-US"),Bd=i=>sw.format(i),pi=Math,uh=pi.PI,bn=pi.abs,fi=pi.floor,Sn=pi.round,bi=pi.ceil,Bi=pi.min,Jn=pi.max,To=pi.pow,mg=pi.sign,Ts=pi.log10,Gg=pi.log2,rw=(i,t=1)=>pi.sinh(i)*t,yd=(i,t=1)=>pi.asinh(i/t),We=1/0;function gg(i){return(Ts((i^i>>31)-(i>>31))|0)+1}function Ad(i,t,e){return Bi(Jn(i,t),e)}function Wg(i){return typeof i=="function"}function Ce(i){return Wg(i)?i:()=>i}var ow=()=>{},$g=i=>i,Xg=(i,t)=>t,aw=i=>null,_g=i=>!0,xg=(i,t)=>i==t,lw=/\.\d*?(?=9{6,}|0{6,})/gm,wr=i=>{if(Zg(i)||Js.has(i))return i;let t=`${i}`,e=t.match(lw);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${wr(s)}e${r}`}return $e(i,n)};function vr(i,t){return wr($e(wr(i/t))*t)}function _h(i,t){return wr(bi(wr(i/t))*t)}function qg(i,t){return wr(fi(wr(i/t))*t)}function $e(i,t=0){if(Zg(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return Sn(n)/e}var Js=new Map;function Yg(i){return((""+i).split(".")[1]||"").length}function Wa(i,t,e,n){let s=[],r=n.map(Yg);for(let o=t;o<e;o++){let a=bn(o),l=$e(To(i,o),a);for(let c=0;c<n.length;c++){let u=i==10?+`${n[c]}e${o}`:n[c]*l,d=(o>=0?0:a)+(o>=r[c]?0:r[c]),h=i==10?u:$e(u,d);s.push(h),Js.set(h,d)}}return s}var Ga={},kd=[],Ao=[null,null],Zs=Array.isArray,Zg=Number.isInteger,cw=i=>i===void 0;function yg(i){return typeof i=="string"}function xh(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function hw(i){return i!=null&&typeof i=="object"}var uw=Object.getPrototypeOf(Uint8Array),Jg="__proto__";function Ro(i,t=xh){let e;if(Zs(i)){let n=i.find(s=>s!=null);if(Zs(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Ro(i[s],t)}else e=i.slice()}else if(i instanceof uw)e=i.slice();else if(t(i)){e={};for(let n in i)n!=Jg&&(e[n]=Ro(i[n],t))}else e=i;return e}function _n(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=Jg&&(xh(i[s])?_n(i[s],Ro(n[s])):i[s]=Ro(n[s]))}return i}var dw=0,fw=1,pw=2;function mw(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function gw(i,t){if(yw(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return vw(o[0])||(o=xw(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let u=0;u<c;u++)e.add(l[u])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let u=a[c],d=Array(s).fill(void 0),h=t?t[o][c]:fw,f=[];for(let m=0;m<u.length;m++){let x=u[m],_=r.get(l[m]);x===null?h!=dw&&(d[_]=x,h==pw&&f.push(_)):d[_]=x}mw(d,f,s),n.push(d)}}return n}var _w=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function xw(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function yw(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function vw(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Jn(1,fi((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var Kg=["January","February","March","April","May","June","July","August","September","October","November","December"],jg=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Qg(i){return i.slice(0,3)}var Mw=jg.map(Qg),Sw=Kg.map(Qg),bw={MMMM:Kg,MMM:Sw,WWWW:jg,WWW:Mw};function Ba(i){return(i<10?"0":"")+i}function ww(i){return(i<10?"00":i<100?"0":"")+i}var Ew={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Ba(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Ba(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Ba(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Ba(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Ba(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>ww(i.getMilliseconds())};function zd(i,t){t=t||bw;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?Ew[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var Tw=new Intl.DateTimeFormat().resolvedOptions().timeZone;function Aw(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==Tw?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var t0=i=>i%1==0,ph=[1,2,2.5,5],Rw=Wa(10,-32,0,ph),e0=Wa(10,0,32,ph),Cw=e0.filter(t0),Mr=Rw.concat(e0),Vd=`
`,n0="{YYYY}",vg=Vd+n0,i0="{M}/{D}",Va=Vd+i0,ch=Va+"/{YY}",s0="{aa}",Pw="{h}:{mm}",wo=Pw+s0,Mg=Vd+wo,Sg=":{ss}",ke=null;function r0(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Wa(10,0,3,ph).filter(t0):Wa(10,-3,0,ph)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,n0,ke,ke,ke,ke,ke,ke,1],[s*28,"{MMM}",vg,ke,ke,ke,ke,ke,1],[s,i0,vg,ke,ke,ke,ke,ke,1],[n,"{h}"+s0,ch,ke,Va,ke,ke,ke,1],[e,wo,ch,ke,Va,ke,ke,ke,1],[t,Sg,ch+" "+wo,ke,Va+" "+wo,ke,Mg,ke,1],[i,Sg+".{fff}",ch+" "+wo,ke,Va+" "+wo,ke,Mg,ke,1]];function u(d){return(h,f,m,x,_,p)=>{let y=[],T=_>=o,b=_>=r&&_<o,I=d(m),w=$e(I*i,3),g=vd(I.getFullYear(),T?0:I.getMonth(),b||T?1:I.getDate()),S=$e(g*i,3);if(b||T){let F=b?_/r:0,C=T?_/o:0,L=w==S?w:$e(vd(g.getFullYear()+C,g.getMonth()+F,1)*i,3),k=new Date(Sn(L/i)),z=k.getFullYear(),P=k.getMonth();for(let V=0;L<=x;V++){let H=vd(z+C*V,P+F*V,1),B=H-d($e(H*i,3));L=$e((+H+B)*i,3),L<=x&&y.push(L)}}else{let F=_>=s?s:_,C=fi(m)-fi(w),L=S+C+_h(w-S,F);y.push(L);let k=d(L),z=k.getHours()+k.getMinutes()/e+k.getSeconds()/n,P=_/n,V=h.axes[f]._space,H=p/V;for(;L=$e(L+_,i==1?0:3),!(L>x);)if(P>1){let B=fi($e(z+P,6))%24,K=d(L).getHours()-B;K>1&&(K=-1),L-=K*n,z=(z+P)%24;let $=y[y.length-1];$e((L-$)/_,3)*H>=.7&&y.push(L)}else y.push(L)}return y}}return[l,c,u]}var[Iw,Lw,Dw]=r0(1),[Nw,Fw,Uw]=r0(.001);Wa(2,-53,53,[1]);function bg(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function wg(i,t){return(e,n,s,r,o)=>{let a=t.find(m=>o>=m[0])||t[t.length-1],l,c,u,d,h,f;return n.map(m=>{let x=i(m),_=x.getFullYear(),p=x.getMonth(),y=x.getDate(),T=x.getHours(),b=x.getMinutes(),I=x.getSeconds(),w=_!=l&&a[2]||p!=c&&a[3]||y!=u&&a[4]||T!=d&&a[5]||b!=h&&a[6]||I!=f&&a[7]||a[1];return l=_,c=p,u=y,d=T,h=b,f=I,w(x)})}}function Ow(i,t){let e=zd(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function vd(i,t,e){return new Date(i,t,e)}function Eg(i,t){return t(i)}var Bw="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Tg(i,t){return(e,n,s,r)=>r==null?Nd:t(i(n))}function kw(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function zw(i,t){return i.series[t].fill(i,t)}var Vw={show:!0,live:!0,isolate:!1,mount:ow,markers:{show:!0,width:2,stroke:kw,fill:zw,dash:"solid"},idx:null,idxs:null,values:[]};function Hw(i,t){let e=i.cursor.points,n=Si(),s=e.size(i,t);tn(n,ka,s),tn(n,za,s);let r=s/-2;tn(n,"marginLeft",r),tn(n,"marginTop",r);let o=e.width(i,t,s);return o&&tn(n,"borderWidth",o),n}function Gw(i,t){let e=i.series[t].points;return e._fill||e._stroke}function Ww(i,t){let e=i.series[t].points;return e._stroke||e._fill}function $w(i,t){return i.series[t].points.size}var Md=[0,0];function Xw(i,t,e){return Md[0]=t,Md[1]=e,Md}function hh(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Sd(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var qw={show:!0,x:!0,y:!0,lock:!1,move:Xw,points:{one:!1,show:Hw,size:$w,width:0,stroke:Ww,fill:Gw},bind:{mousedown:hh,mouseup:hh,click:hh,dblclick:hh,mousemove:Sd,mouseleave:Sd,mouseenter:Sd},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},o0={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},Hd=_n({},o0,{filter:Xg}),a0=_n({},Hd,{size:10}),l0=_n({},o0,{show:!1}),Gd='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',c0="bold "+Gd,h0=1.5,Ag={show:!0,scale:"x",stroke:Dd,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:c0,side:2,grid:Hd,ticks:a0,border:l0,font:Gd,lineGap:h0,rotate:0},Yw="Value",Zw="Time",Rg={show:!0,scale:"x",auto:!1,sorted:1,min:We,max:-We,idxs:[]};function Jw(i,t,e,n,s){return t.map(r=>r==null?"":Bd(r))}function Kw(i,t,e,n,s,r,o){let a=[],l=Js.get(s)||0;e=o?e:$e(_h(e,s),l);for(let c=e;c<=n;c=$e(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function Rd(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?Ts:Gg,u=fi(c(e));s=To(l,u),l==10&&(s=Mr[Oi(s,Mr)]);let d=e,h=s*l;l==10&&(h=Mr[Oi(h,Mr)]);do a.push(d),d=d+s,l==10&&!Js.has(d)&&(d=$e(d,Js.get(s))),d>=h&&(s=d,h=s*l,l==10&&(h=Mr[Oi(h,Mr)]));while(d<=n);return a}function jw(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?Rd(i,t,Jn(l,e),n,s):[l],u=n>=0&&e<=0?[0]:[];return(e<-l?Rd(i,t,Jn(l,-n),-e,s):[l]).reverse().map(h=>-h).concat(u,c)}var u0=/./,Qw=/[12357]/,t1=/[125]/,Cg=/1/,Cd=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function e1(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,u=l(10,o),d=l(9,o)-u>=c?u0:l(7,o)-u>=c?Qw:l(5,o)-u>=c?t1:Cg;if(d==Cg){let h=bn(l(1,o)-u);if(h<c)return Cd(t.slice().reverse(),a.distr,d,bi(c/h)).reverse()}return Cd(t,a.distr,d,1)}function n1(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=bn(l(1,o)-l(2,o));return c<a?Cd(t.slice().reverse(),3,u0,bi(a/c)).reverse():t}function i1(i,t,e,n){return n==null?Nd:t==null?"":Bd(t)}var Pg={show:!0,scale:"y",stroke:Dd,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:c0,side:3,grid:Hd,ticks:a0,border:l0,font:Gd,lineGap:h0,rotate:0};function s1(i,t){let e=3+(i||1)*2;return $e(e*t,3)}function r1(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=bn(o-r),l=i.series[t],c=a/(l.points.space*Oe);return n[1]-n[0]<=c}var Ig={scale:null,auto:!0,sorted:0,min:We,max:-We},d0=(i,t,e,n,s)=>s,Lg={show:!0,auto:!0,sorted:0,gaps:d0,alpha:1,facets:[_n({},Ig,{scale:"x"}),_n({},Ig,{scale:"y"})]},Dg={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:d0,alpha:1,points:{show:r1,filter:null},values:null,min:We,max:-We,idxs:[],path:null,clip:null};function o1(i,t,e,n,s){return e/10}var f0={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},a1=_n({},f0,{time:!1,ori:1}),Ng={};function p0(i,t){let e=Ng[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let u=0;u<e.plots.length;u++)e.plots[u]!=s&&e.plots[u].pub(n,s,r,o,a,l,c)}},i!=null&&(Ng[i]=e)),e}var Co=1,Pd=2;function Er(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],u=n==2?o[s.facets[0].scale]:o[i.series[0].scale],d=n==2?o[s.facets[1].scale]:o[s.scale],h=a.left,f=a.top,m=a.width,x=a.height,_=i.valToPosH,p=i.valToPosV;return u.ori==0?e(s,l,c,u,d,_,p,h,f,m,x,vh,Io,Sh,g0,x0):e(s,l,c,u,d,p,_,f,h,x,m,Mh,Lo,Xd,_0,y0)}function Wd(i,t){let e=0,n=0,s=De(i.bands,kd);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function l1(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function As(i,t,e,n,s,r){return Er(i,t,(o,a,l,c,u,d,h,f,m,x,_)=>{let p=o.pxRound,y=c.dir*(c.ori==0?1:-1),T=c.ori==0?Io:Lo,b,I;y==1?(b=e,I=n):(b=n,I=e);let w=p(d(a[b],c,x,f)),g=p(h(l[b],u,_,m)),S=p(d(a[I],c,x,f)),F=p(h(r==1?u.max:u.min,u,_,m)),C=new Path2D(s);return T(C,S,F),T(C,w,F),T(C,w,g),C})}function yh(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?Sh:Xd,l=e;for(let d=0;d<i.length;d++){let h=i[d];if(h[1]>h[0]){let f=h[0]-l;f>0&&a(o,l,n,f,n+r),l=h[1]}}let c=e+s-l,u=10;c>0&&a(o,l,n-u/2,c,n+r+u)}return o}function c1(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function $d(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let d=c,h=c;if(s==1)for(;++c<=n&&t[c]===null;)h=c;else for(;--c>=e&&t[c]===null;)h=c;let f=r(i[d]),m=h==d?f:r(i[h]),x=d-s;f=o<=0&&x>=0&&x<l?r(i[x]):f;let p=h+s;m=o>=0&&p>=0&&p<l?r(i[p]):m,m>=f&&a.push([f,m])}return a}function Fg(i){return i==0?$g:i==1?Sn:t=>vr(t,i)}function m0(i){let t=i==0?vh:Mh,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,u=0)=>{c==0&&u==0?n(s,r,o,a,l):(c=Bi(c,a/2,l/2),u=Bi(u,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,u),e(s,r,o+l,r,o,u),e(s,r,o,r+a,o,c),s.closePath())}}var vh=(i,t,e)=>{i.moveTo(t,e)},Mh=(i,t,e)=>{i.moveTo(e,t)},Io=(i,t,e)=>{i.lineTo(t,e)},Lo=(i,t,e)=>{i.lineTo(e,t)},Sh=m0(0),Xd=m0(1),g0=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},_0=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},x0=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},y0=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function v0(i){return(t,e,n,s,r)=>Er(t,e,(o,a,l,c,u,d,h,f,m,x,_)=>{let{pxRound:p,points:y}=o,T,b;c.ori==0?(T=vh,b=g0):(T=Mh,b=_0);let I=$e(y.width*Oe,3),w=(y.size-y.width)/2*Oe,g=$e(w*2,3),S=new Path2D,F=new Path2D,{left:C,top:L,width:k,height:z}=t.bbox;Sh(F,C-g,L-g,k+g*2,z+g*2);let P=V=>{if(l[V]!=null){let H=p(d(a[V],c,x,f)),B=p(h(l[V],u,_,m));T(S,H+w,B),b(S,H,B,w,0,uh*2)}};if(r)r.forEach(P);else for(let V=n;V<=s;V++)P(V);return{stroke:I>0?S:null,fill:S,clip:F,flags:Co|Pd}})}function M0(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var h1=M0(Io),u1=M0(Lo);function S0(i){let t=De(i?.alignGaps,0);return(e,n,s,r)=>Er(e,n,(o,a,l,c,u,d,h,f,m,x,_)=>{[s,r]=mh(l,s,r);let p=o.pxRound,y=z=>p(d(z,c,x,f)),T=z=>p(h(z,u,_,m)),b,I;c.ori==0?(b=Io,I=h1):(b=Lo,I=u1);let w=c.dir*(c.ori==0?1:-1),g={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Co},S=g.stroke,F=!1;if(r-s>=x*4){let z=at=>e.posToVal(at,c.key,!0),P=null,V=null,H,B,q,X=y(a[w==1?s:r]),K=y(a[s]),$=y(a[r]),ot=z(w==1?K+1:$-1);for(let at=w==1?s:r;at>=s&&at<=r;at+=w){let Q=a[at],Z=(w==1?Q<ot:Q>ot)?X:y(Q),nt=l[at];Z==X?nt!=null?(B=nt,P==null?(b(S,Z,T(B)),H=P=V=B):B<P?P=B:B>V&&(V=B)):nt===null&&(F=!0):(P!=null&&I(S,X,T(P),T(V),T(H),T(B)),nt!=null?(B=nt,b(S,Z,T(B)),P=V=H=B):(P=V=null,nt===null&&(F=!0)),X=Z,ot=z(X+w))}P!=null&&P!=V&&q!=X&&I(S,X,T(P),T(V),T(H),T(B))}else for(let z=w==1?s:r;z>=s&&z<=r;z+=w){let P=l[z];P===null?F=!0:P!=null&&b(S,y(a[z]),T(P))}let[L,k]=Wd(e,n);if(o.fill!=null||L!=0){let z=g.fill=new Path2D(S),P=o.fillTo(e,n,o.min,o.max,L),V=T(P),H=y(a[s]),B=y(a[r]);w==-1&&([B,H]=[H,B]),b(z,B,V),b(z,H,V)}if(!o.spanGaps){let z=[];F&&z.push(...$d(a,l,s,r,w,y,t)),g.gaps=z=o.gaps(e,n,s,r,z),g.clip=yh(z,c.ori,f,m,x,_)}return k!=0&&(g.band=k==2?[As(e,n,s,r,S,-1),As(e,n,s,r,S,1)]:As(e,n,s,r,S,k)),g})}function d1(i){let t=De(i.align,1),e=De(i.ascDesc,!1),n=De(i.alignGaps,0),s=De(i.extend,!1);return(r,o,a,l)=>Er(r,o,(c,u,d,h,f,m,x,_,p,y,T)=>{[a,l]=mh(d,a,l);let b=c.pxRound,{left:I,width:w}=r.bbox,g=K=>b(m(K,h,y,_)),S=K=>b(x(K,f,T,p)),F=h.ori==0?Io:Lo,C={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Co},L=C.stroke,k=h.dir*(h.ori==0?1:-1),z=S(d[k==1?a:l]),P=g(u[k==1?a:l]),V=P,H=P;s&&t==-1&&(H=I,F(L,H,z)),F(L,P,z);for(let K=k==1?a:l;K>=a&&K<=l;K+=k){let $=d[K];if($==null)continue;let ot=g(u[K]),at=S($);t==1?F(L,ot,z):F(L,V,at),F(L,ot,at),z=at,V=ot}let B=V;s&&t==1&&(B=I+w,F(L,B,z));let[q,X]=Wd(r,o);if(c.fill!=null||q!=0){let K=C.fill=new Path2D(L),$=c.fillTo(r,o,c.min,c.max,q),ot=S($);F(K,B,ot),F(K,H,ot)}if(!c.spanGaps){let K=[];K.push(...$d(u,d,a,l,k,g,n));let $=c.width*Oe/2,ot=e||t==1?$:-$,at=e||t==-1?-$:$;K.forEach(Q=>{Q[0]+=ot,Q[1]+=at}),C.gaps=K=c.gaps(r,o,a,l,K),C.clip=yh(K,h.ori,_,p,y,T)}return X!=0&&(C.band=X==2?[As(r,o,a,l,L,-1),As(r,o,a,l,L,1)]:As(r,o,a,l,L,X)),C})}function Ug(i,t,e,n,s,r,o=We){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let u=bn(i[l]-i[a]);u<c&&(c=u,o=bn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function f1(i){i=i||Ga;let t=De(i.size,[.6,We,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=Ce(s),o=1-t[0],a=De(t[1],We),l=De(t[2],1),c=De(i.disp,Ga),u=De(i.each,f=>{}),{fill:d,stroke:h}=c;return(f,m,x,_)=>Er(f,m,(p,y,T,b,I,w,g,S,F,C,L)=>{let k=p.pxRound,z=e,P=n*Oe,V=a*Oe,H=l*Oe,B,q;b.ori==0?[B,q]=r(f,m):[q,B]=r(f,m);let X=b.dir*(b.ori==0?1:-1),K=b.ori==0?Sh:Xd,$=b.ori==0?u:(yt,Wt,Ht,bt,Ie,jt,ie)=>{u(yt,Wt,Ht,Ie,bt,ie,jt)},ot=De(f.bands,kd).find(yt=>yt.series[0]==m),at=ot!=null?ot.dir:0,Q=p.fillTo(f,m,p.min,p.max,at),xt=k(g(Q,I,L,F)),Z,nt,st,gt=C,Ct=k(p.width*Oe),St=!1,ne=null,se=null,Kt=null,Ee=null;d!=null&&(Ct==0||h!=null)&&(St=!0,ne=d.values(f,m,x,_),se=new Map,new Set(ne).forEach(yt=>{yt!=null&&se.set(yt,new Path2D)}),Ct>0&&(Kt=h.values(f,m,x,_),Ee=new Map,new Set(Kt).forEach(yt=>{yt!=null&&Ee.set(yt,new Path2D)})));let{x0:Qt,size:_e}=c;if(Qt!=null&&_e!=null){z=1,y=Qt.values(f,m,x,_),Qt.unit==2&&(y=y.map(Ht=>f.posToVal(S+Ht*C,b.key,!0)));let yt=_e.values(f,m,x,_);_e.unit==2?nt=yt[0]*C:nt=w(yt[0],b,C,S)-w(0,b,C,S),gt=Ug(y,T,w,b,C,S,gt),st=gt-nt+P}else gt=Ug(y,T,w,b,C,S,gt),st=gt*o+P,nt=gt-st;st<1&&(st=0),Ct>=nt/2&&(Ct=0),st<5&&(k=$g);let pe=st>0,Pe=gt-st-(pe?Ct:0);nt=k(Ad(Pe,H,V)),Z=(z==0?nt/2:z==X?0:nt)-z*X*((z==0?P/2:0)+(pe?Ct/2:0));let ht={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},Lt=St?null:new Path2D,Tt=null;if(ot!=null)Tt=f.data[ot.series[1]];else{let{y0:yt,y1:Wt}=c;yt!=null&&Wt!=null&&(T=Wt.values(f,m,x,_),Tt=yt.values(f,m,x,_))}let Xt=B*nt,O=q*nt;for(let yt=X==1?x:_;yt>=x&&yt<=_;yt+=X){let Wt=T[yt];if(Wt==null)continue;if(Tt!=null){let j=Tt[yt]??0;if(Wt-j==0)continue;xt=g(j,I,L,F)}let Ht=b.distr!=2||c!=null?y[yt]:yt,bt=w(Ht,b,C,S),Ie=g(De(Wt,Q),I,L,F),jt=k(bt-Z),ie=k(Jn(Ie,xt)),D=k(Bi(Ie,xt)),E=ie-D;if(Wt!=null){let j=Wt<0?O:Xt,Mt=Wt<0?Xt:O;St?(Ct>0&&Kt[yt]!=null&&K(Ee.get(Kt[yt]),jt,D+fi(Ct/2),nt,Jn(0,E-Ct),j,Mt),ne[yt]!=null&&K(se.get(ne[yt]),jt,D+fi(Ct/2),nt,Jn(0,E-Ct),j,Mt)):K(Lt,jt,D+fi(Ct/2),nt,Jn(0,E-Ct),j,Mt),$(f,m,yt,jt-Ct/2,D,nt+Ct,E)}}return Ct>0?ht.stroke=St?Ee:Lt:St||(ht._fill=p.width==0?p._fill:p._stroke??p._fill,ht.width=0),ht.fill=St?se:Lt,ht})}function p1(i,t){let e=De(t?.alignGaps,0);return(n,s,r,o)=>Er(n,s,(a,l,c,u,d,h,f,m,x,_,p)=>{[r,o]=mh(c,r,o);let y=a.pxRound,T=B=>y(h(B,u,_,m)),b=B=>y(f(B,d,p,x)),I,w,g;u.ori==0?(I=vh,g=Io,w=x0):(I=Mh,g=Lo,w=y0);let S=u.dir*(u.ori==0?1:-1),F=T(l[S==1?r:o]),C=F,L=[],k=[];for(let B=S==1?r:o;B>=r&&B<=o;B+=S)if(c[B]!=null){let X=l[B],K=T(X);L.push(C=K),k.push(b(c[B]))}let z={stroke:i(L,k,I,g,w,y),fill:null,clip:null,band:null,gaps:null,flags:Co},P=z.stroke,[V,H]=Wd(n,s);if(a.fill!=null||V!=0){let B=z.fill=new Path2D(P),q=a.fillTo(n,s,a.min,a.max,V),X=b(q);g(B,C,X),g(B,F,X)}if(!a.spanGaps){let B=[];B.push(...$d(l,c,r,o,S,T,e)),z.gaps=B=a.gaps(n,s,r,o,B),z.clip=yh(B,u.ori,m,x,_,p)}return H!=0&&(z.band=H==2?[As(n,s,r,o,P,-1),As(n,s,r,o,P,1)]:As(n,s,r,o,P,H)),z})}function m1(i){return p1(g1,i)}function g1(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),u=Array(o-1),d=Array(o-1);for(let h=0;h<o-1;h++)u[h]=t[h+1]-t[h],d[h]=i[h+1]-i[h],c[h]=u[h]/d[h];l[0]=c[0];for(let h=1;h<o-1;h++)c[h]===0||c[h-1]===0||c[h-1]>0!=c[h]>0?l[h]=0:(l[h]=3*(d[h-1]+d[h])/((2*d[h]+d[h-1])/c[h-1]+(d[h]+2*d[h-1])/c[h]),isFinite(l[h])||(l[h]=0));l[o-1]=c[o-2];for(let h=0;h<o-1;h++)s(a,i[h]+d[h]/3,t[h]+l[h]*d[h]/3,i[h+1]-d[h]/3,t[h+1]-l[h+1]*d[h]/3,i[h+1],t[h+1])}return a}var Id=new Set;function Og(){for(let i of Id)i.syncRect(!0)}Po&&(br(Jb,Eo,Og),br(Kb,Eo,Og,!0),br(dh,Eo,()=>{wn.pxRatio=Oe}));var _1=S0(),x1=v0();function Bg(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Ld(r,o,t,e))}function y1(i,t){return i.map((e,n)=>n==0?{}:_n({},t,e))}function Ld(i,t,e,n){return _n({},t==0?e:n,i)}function b0(i,t,e){return t==null?Ao:[t,e]}var v1=b0;function M1(i,t,e){return t==null?Ao:fh(t,e,Od,!0)}function w0(i,t,e,n){return t==null?Ao:gh(t,e,i.scales[n].log,!1)}var S1=w0;function E0(i,t,e,n){return t==null?Ao:Ud(t,e,i.scales[n].log,!1)}var b1=E0;function w1(i,t,e,n,s){let r=Jn(gg(i),gg(t)),o=t-i,a=Oi(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Js.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function kg(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=Sn((e=+s)*Oe))+"px"),[i,t,e]}function E1(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=$e(t[2]*Oe,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function wn(i,t,e){let n={mode:De(i.mode,1)},s=n.mode;function r(v,A,N,U){let Y=A.valToPct(v);return U+N*(A.dir==-1?1-Y:Y)}function o(v,A,N,U){let Y=A.valToPct(v);return U+N*(A.dir==-1?Y:1-Y)}function a(v,A,N,U){return A.ori==0?r(v,A,N,U):o(v,A,N,U)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=Si(Lb);if(i.id!=null&&(c.id=i.id),di(c,i.class),i.title){let v=Si(Fb,c);v.textContent=i.title}let u=Ui("canvas"),d=n.ctx=u.getContext("2d"),h=Si(Ub,c);br("click",h,v=>{v.target===m&&(Je!=Dr||en!=Nr)&&Ln.click(n,v)},!0);let f=n.under=Si(Ob,h);h.appendChild(u);let m=n.over=Si(Bb,h);i=Ro(i);let x=+De(i.pxAlign,1),_=Fg(x);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let p=i.ms||.001,y=n.series=s==1?Bg(i.series||[],Rg,Dg,!1):y1(i.series||[null],Lg),T=n.axes=Bg(i.axes||[],Ag,Pg,!0),b=n.scales={},I=n.bands=i.bands||[];I.forEach(v=>{v.fill=Ce(v.fill||null),v.dir=De(v.dir,-1)});let w=s==2?y[1].facets[0].scale:y[0].scale,g={axes:ls,series:be},S=(i.drawOrder||["axes","series"]).map(v=>g[v]);function F(v){let A=v.distr==3?N=>Ts(N>0?N:v.clamp(n,N,v.min,v.max,v.key)):v.distr==4?N=>yd(N,v.asinh):v.distr==100?N=>v.fwd(N):N=>N;return N=>{let U=A(N),{_min:Y,_max:it}=v,_t=it-Y;return(U-Y)/_t}}function C(v){let A=b[v];if(A==null){let N=(i.scales||Ga)[v]||Ga;if(N.from!=null){C(N.from);let U=_n({},b[N.from],N,{key:v});U.valToPct=F(U),b[v]=U}else{A=b[v]=_n({},v==w?f0:a1,N),A.key=v;let U=A.time,Y=A.range,it=Zs(Y);if((v!=w||s==2&&!U)&&(it&&(Y[0]==null||Y[1]==null)&&(Y={min:Y[0]==null?fg:{mode:1,hard:Y[0],soft:Y[0]},max:Y[1]==null?fg:{mode:1,hard:Y[1],soft:Y[1]}},it=!1),!it&&xh(Y))){let _t=Y;Y=(wt,It,Vt)=>It==null?Ao:fh(It,Vt,_t)}A.range=Ce(Y||(U?v1:v==w?A.distr==3?S1:A.distr==4?b1:b0:A.distr==3?w0:A.distr==4?E0:M1)),A.auto=Ce(it?!1:A.auto),A.clamp=Ce(A.clamp||o1),A._min=A._max=null,A.valToPct=F(A)}}}C("x"),C("y"),s==1&&y.forEach(v=>{C(v.scale)}),T.forEach(v=>{C(v.scale)});for(let v in i.scales)C(v);let L=b[w],k=L.distr,z,P;L.ori==0?(di(c,Db),z=r,P=o):(di(c,Nb),z=o,P=r);let V={};for(let v in b){let A=b[v];(A.min!=null||A.max!=null)&&(V[v]={min:A.min,max:A.max},A.min=A.max=null)}let H=i.tzDate||(v=>new Date(Sn(v/p))),B=i.fmtDate||zd,q=p==1?Dw(H):Uw(H),X=wg(H,bg(p==1?Lw:Fw,B)),K=Tg(H,Eg(Bw,B)),$=[],ot=n.legend=_n({},Vw,i.legend),at=n.cursor=_n({},qw,{drag:{y:s==2}},i.cursor),Q=ot.show,xt=at.show,Z=ot.markers;ot.idxs=$,Z.width=Ce(Z.width),Z.dash=Ce(Z.dash),Z.stroke=Ce(Z.stroke),Z.fill=Ce(Z.fill);let nt,st,gt,Ct=[],St=[],ne,se=!1,Kt={};if(ot.live){let v=y[1]?y[1].values:null;se=v!=null,ne=se?v(n,1,0):{_:0};for(let A in ne)Kt[A]=Nd}if(Q)if(nt=Ui("table",Wb,c),gt=Ui("tbody",null,nt),ot.mount(n,nt),se){st=Ui("thead",null,nt,gt);let v=Ui("tr",null,st);Ui("th",null,v);for(var Ee in ne)Ui("th",tg,v).textContent=Ee}else di(nt,Xb),ot.live&&di(nt,$b);let Qt={show:!0},_e={show:!1};function pe(v,A){if(A==0&&(se||!ot.live||s==2))return Ao;let N=[],U=Ui("tr",qb,gt,gt.childNodes[A]);di(U,v.class),v.show||di(U,Sr);let Y=Ui("th",null,U);if(Z.show){let wt=Si(Yb,Y);if(A>0){let It=Z.width(n,A);It&&(wt.style.border=It+"px "+Z.dash(n,A)+" "+Z.stroke(n,A)),wt.style.background=Z.fill(n,A)}}let it=Si(tg,Y);v.label instanceof HTMLElement?it.appendChild(v.label):it.textContent=v.label,A>0&&(Z.show||(it.style.color=v.width>0?Z.stroke(n,A):Z.fill(n,A)),ht("click",Y,wt=>{if(at._lock)return;ae(wt);let It=y.indexOf(v);if((wt.ctrlKey||wt.metaKey)!=ot.isolate){let Vt=y.some((Gt,qt)=>qt>0&&qt!=It&&Gt.show);y.forEach((Gt,qt)=>{qt>0&&Hi(qt,Vt?qt==It?Qt:_e:Qt,!0,pn.setSeries)})}else Hi(It,{show:!v.show},!0,pn.setSeries)},!1),le&&ht(sg,Y,wt=>{at._lock||(ae(wt),Hi(y.indexOf(v),Ur,!0,pn.setSeries))},!1));for(var _t in ne){let wt=Ui("td",Zb,U);wt.textContent="--",N.push(wt)}return[U,N]}let Pe=new Map;function ht(v,A,N,U=!0){let Y=Pe.get(A)||{},it=at.bind[v](n,A,N,U);it&&(br(v,A,Y[v]=it),Pe.set(A,Y))}function Lt(v,A,N){let U=Pe.get(A)||{};for(let Y in U)(v==null||Y==v)&&(Td(Y,A,U[Y]),delete U[Y]);v==null&&Pe.delete(A)}let Tt=0,Xt=0,O=0,yt=0,Wt=0,Ht=0,bt=Wt,Ie=Ht,jt=O,ie=yt,D=0,E=0,j=0,Mt=0;n.bbox={};let mt=!1,Rt=!1,Pt=!1,lt=!1,dt=!1,Et=!1;function G(v,A,N){(N||v!=n.width||A!=n.height)&&ft(v,A),ye(!1),Pt=!0,Rt=!0,On()}function ft(v,A){n.width=Tt=O=v,n.height=Xt=yt=A,Wt=Ht=0,Dt(),te();let N=n.bbox;D=N.left=vr(Wt*Oe,.5),E=N.top=vr(Ht*Oe,.5),j=N.width=vr(O*Oe,.5),Mt=N.height=vr(yt*Oe,.5)}let ct=3;function Nt(){let v=!1,A=0;for(;!v;){A++;let N=Pr(A),U=Vi(A);v=A==ct||N&&U,v||(ft(n.width,n.height),Rt=!0)}}function At({width:v,height:A}){G(v,A)}n.setSize=At;function Dt(){let v=!1,A=!1,N=!1,U=!1;T.forEach((Y,it)=>{if(Y.show&&Y._show){let{side:_t,_size:wt}=Y,It=_t%2,Vt=Y.label!=null?Y.labelSize:0,Gt=wt+Vt;Gt>0&&(It?(O-=Gt,_t==3?(Wt+=Gt,U=!0):N=!0):(yt-=Gt,_t==0?(Ht+=Gt,v=!0):A=!0))}}),ki[0]=v,ki[1]=N,ki[2]=A,ki[3]=U,O-=wi[1]+wi[3],Wt+=wi[3],yt-=wi[2]+wi[0],Ht+=wi[0]}function te(){let v=Wt+O,A=Ht+yt,N=Wt,U=Ht;function Y(it,_t){switch(it){case 1:return v+=_t,v-_t;case 2:return A+=_t,A-_t;case 3:return N-=_t,N+_t;case 0:return U-=_t,U+_t}}T.forEach((it,_t)=>{if(it.show&&it._show){let wt=it.side;it._pos=Y(wt,it._size),it.label!=null&&(it._lpos=Y(wt,it.labelSize))}})}if(at.dataIdx==null){let v=at.hover,A=v.skip=new Set(v.skip??[]);A.add(void 0);let N=v.prox=Ce(v.prox),U=v.bias??=0;at.dataIdx=(Y,it,_t,wt)=>{if(it==0)return _t;let It=_t,Vt=N(Y,it,_t,wt)??We,Gt=Vt>=0&&Vt<We,qt=L.ori==0?O:yt,fe=at.left,Ne=t[0],Le=t[it];if(A.has(Le[_t])){It=null;let Te=null,oe=null,ee;if(U==0||U==-1)for(ee=_t;Te==null&&ee-- >0;)A.has(Le[ee])||(Te=ee);if(U==0||U==1)for(ee=_t;oe==null&&ee++<Le.length;)A.has(Le[ee])||(oe=ee);if(Te!=null||oe!=null)if(Gt){let je=Te==null?-1/0:z(Ne[Te],L,qt,0),an=oe==null?1/0:z(Ne[oe],L,qt,0),Rn=fe-je,Ge=an-fe;Rn<=Ge?Rn<=Vt&&(It=Te):Ge<=Vt&&(It=oe)}else It=oe==null?Te:Te==null?oe:_t-Te<=oe-_t?Te:oe}else Gt&&bn(fe-z(Ne[_t],L,qt,0))>Vt&&(It=null);return It}}let ae=v=>{at.event=v};at.idxs=$,at._lock=!1;let vt=at.points;vt.show=Ce(vt.show),vt.size=Ce(vt.size),vt.stroke=Ce(vt.stroke),vt.width=Ce(vt.width),vt.fill=Ce(vt.fill);let Yt=n.focus=_n({},i.focus||{alpha:.3},at.focus),le=Yt.prox>=0,Ot=le&&vt.one,me=[],Ze=[],Vn=[];function Fo(v,A){let N=vt.show(n,A);if(N instanceof HTMLElement)return di(N,Gb),di(N,v.class),is(N,-10,-10,O,yt),m.insertBefore(N,me[A]),N}function Ar(v,A){if(s==1||A>0){let N=s==1&&b[v.scale].time,U=v.value;v.value=N?yg(U)?Tg(H,Eg(U,B)):U||K:U||i1,v.label=v.label||(N?Zw:Yw)}if(Ot||A>0){v.width=v.width==null?1:v.width,v.paths=v.paths||_1||aw,v.fillTo=Ce(v.fillTo||l1),v.pxAlign=+De(v.pxAlign,x),v.pxRound=Fg(v.pxAlign),v.stroke=Ce(v.stroke||null),v.fill=Ce(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let N=s1(Jn(1,v.width),1),U=v.points=_n({},{size:N,width:Jn(1,N*.2),stroke:v.stroke,space:N*2,paths:x1,_stroke:null,_fill:null},v.points);U.show=Ce(U.show),U.filter=Ce(U.filter),U.fill=Ce(U.fill),U.stroke=Ce(U.stroke),U.paths=Ce(U.paths),U.pxAlign=v.pxAlign}if(Q){let N=pe(v,A);Ct.splice(A,0,N[0]),St.splice(A,0,N[1]),ot.values.push(null)}if(xt){$.splice(A,0,null);let N=null;Ot?A==0&&(N=Fo(v,A)):A>0&&(N=Fo(v,A)),me.splice(A,0,N),Ze.splice(A,0,0),Vn.splice(A,0,0)}An("addSeries",A)}function Dh(v,A){A=A??y.length,v=s==1?Ld(v,A,Rg,Dg):Ld(v,A,{},Lg),y.splice(A,0,v),Ar(y[A],A)}n.addSeries=Dh;function Ya(v){if(y.splice(v,1),Q){ot.values.splice(v,1),St.splice(v,1);let A=Ct.splice(v,1)[0];Lt(null,A.firstChild),A.remove()}xt&&($.splice(v,1),me.splice(v,1)[0].remove(),Ze.splice(v,1),Vn.splice(v,1)),An("delSeries",v)}n.delSeries=Ya;let ki=[!1,!1,!1,!1];function rs(v,A){if(v._show=v.show,v.show){let N=v.side%2,U=b[v.scale];U==null&&(v.scale=N?y[1].scale:w,U=b[v.scale]);let Y=U.time;v.size=Ce(v.size),v.space=Ce(v.space),v.rotate=Ce(v.rotate),Zs(v.incrs)&&v.incrs.forEach(_t=>{!Js.has(_t)&&Js.set(_t,Yg(_t))}),v.incrs=Ce(v.incrs||(U.distr==2?Cw:Y?p==1?Iw:Nw:Mr)),v.splits=Ce(v.splits||(Y&&U.distr==1?q:U.distr==3?Rd:U.distr==4?jw:Kw)),v.stroke=Ce(v.stroke),v.grid.stroke=Ce(v.grid.stroke),v.ticks.stroke=Ce(v.ticks.stroke),v.border.stroke=Ce(v.border.stroke);let it=v.values;v.values=Zs(it)&&!Zs(it[0])?Ce(it):Y?Zs(it)?wg(H,bg(it,B)):yg(it)?Ow(H,it):it||X:it||Jw,v.filter=Ce(v.filter||(U.distr>=3&&U.log==10?e1:U.distr==3&&U.log==2?n1:Xg)),v.font=kg(v.font),v.labelFont=kg(v.labelFont),v._size=v.size(n,null,A,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(ki[A]=!0,v._el=Si(kb,h))}}function os(v,A,N,U){let[Y,it,_t,wt]=N,It=A%2,Vt=0;return It==0&&(wt||it)&&(Vt=A==0&&!Y||A==2&&!_t?Sn(Ag.size/3):0),It==1&&(Y||_t)&&(Vt=A==1&&!it||A==3&&!wt?Sn(Pg.size/2):0),Vt}let Uo=n.padding=(i.padding||[os,os,os,os]).map(v=>Ce(De(v,os))),wi=n._padding=Uo.map((v,A)=>v(n,A,ki,0)),rn,cn=null,hn=null,zi=s==1?y[0].idxs:null,ei=null,Rs=!1;function Oo(v,A){if(t=v??[],n.data=n._data=t,s==2){rn=0;for(let N=1;N<y.length;N++)rn+=t[N][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),ei=t[0],rn=ei.length;let N=t;if(k==2){N=t.slice();let U=N[0]=Array(rn);for(let Y=0;Y<rn;Y++)U[Y]=Y}n._data=t=N}if(ye(!0),An("setData"),k==2&&(Pt=!0),A!==!1){let N=L;N.auto(n,Rs)?Bo():Is(w,N.min,N.max),lt=lt||at.left>=0,Et=!0,On()}}n.setData=Oo;function Bo(){Rs=!0;let v,A;s==1&&(rn>0?(cn=zi[0]=0,hn=zi[1]=rn-1,v=t[0][cn],A=t[0][hn],k==2?(v=cn,A=hn):v==A&&(k==3?[v,A]=gh(v,v,L.log,!1):k==4?[v,A]=Ud(v,v,L.log,!1):L.time?A=v+Sn(86400/p):[v,A]=fh(v,A,Od,!0))):(cn=zi[0]=v=null,hn=zi[1]=A=null)),Is(w,v,A)}let Rr,Cs,Cr,R,W,rt,tt,et,Ft,Bt;function Ut(v,A,N,U,Y,it){v??=ng,N??=kd,U??="butt",Y??=ng,it??="round",v!=Rr&&(d.strokeStyle=Rr=v),Y!=Cs&&(d.fillStyle=Cs=Y),A!=Cr&&(d.lineWidth=Cr=A),it!=W&&(d.lineJoin=W=it),U!=rt&&(d.lineCap=rt=U),N!=R&&d.setLineDash(R=N)}function kt(v,A,N,U){A!=Cs&&(d.fillStyle=Cs=A),v!=tt&&(d.font=tt=v),N!=et&&(d.textAlign=et=N),U!=Ft&&(d.textBaseline=Ft=U)}function Jt(v,A,N,U,Y=0){if(U.length>0&&v.auto(n,Rs)&&(A==null||A.min==null)){let it=De(cn,0),_t=De(hn,U.length-1),wt=N.min==null?ew(U,it,_t,Y,v.distr==3):[N.min,N.max];v.min=Bi(v.min,N.min=wt[0]),v.max=Jn(v.max,N.max=wt[1])}}let he={min:null,max:null};function Se(){for(let U in b){let Y=b[U];V[U]==null&&(Y.min==null||V[w]!=null&&Y.auto(n,Rs))&&(V[U]=he)}for(let U in b){let Y=b[U];V[U]==null&&Y.from!=null&&V[Y.from]!=null&&(V[U]=he)}V[w]!=null&&ye(!0);let v={};for(let U in V){let Y=V[U];if(Y!=null){let it=v[U]=Ro(b[U],hw);if(Y.min!=null)_n(it,Y);else if(U!=w||s==2)if(rn==0&&it.from==null){let _t=it.range(n,null,null,U);it.min=_t[0],it.max=_t[1]}else it.min=We,it.max=-We}}if(rn>0){y.forEach((U,Y)=>{if(s==1){let it=U.scale,_t=V[it];if(_t==null)return;let wt=v[it];if(Y==0){let It=wt.range(n,wt.min,wt.max,it);wt.min=It[0],wt.max=It[1],cn=Oi(wt.min,t[0]),hn=Oi(wt.max,t[0]),hn-cn>1&&(t[0][cn]<wt.min&&cn++,t[0][hn]>wt.max&&hn--),U.min=ei[cn],U.max=ei[hn]}else U.show&&U.auto&&Jt(wt,_t,U,t[Y],U.sorted);U.idxs[0]=cn,U.idxs[1]=hn}else if(Y>0&&U.show&&U.auto){let[it,_t]=U.facets,wt=it.scale,It=_t.scale,[Vt,Gt]=t[Y],qt=v[wt],fe=v[It];qt!=null&&Jt(qt,V[wt],it,Vt,it.sorted),fe!=null&&Jt(fe,V[It],_t,Gt,_t.sorted),U.min=_t.min,U.max=_t.max}});for(let U in v){let Y=v[U],it=V[U];if(Y.from==null&&(it==null||it.min==null)){let _t=Y.range(n,Y.min==We?null:Y.min,Y.max==-We?null:Y.max,U);Y.min=_t[0],Y.max=_t[1]}}}for(let U in v){let Y=v[U];if(Y.from!=null){let it=v[Y.from];if(it.min==null)Y.min=Y.max=null;else{let _t=Y.range(n,it.min,it.max,U);Y.min=_t[0],Y.max=_t[1]}}}let A={},N=!1;for(let U in v){let Y=v[U],it=b[U];if(it.min!=Y.min||it.max!=Y.max){it.min=Y.min,it.max=Y.max;let _t=it.distr;it._min=_t==3?Ts(it.min):_t==4?yd(it.min,it.asinh):_t==100?it.fwd(it.min):it.min,it._max=_t==3?Ts(it.max):_t==4?yd(it.max,it.asinh):_t==100?it.fwd(it.max):it.max,A[U]=N=!0}}if(N){y.forEach((U,Y)=>{s==2?Y>0&&A.y&&(U._paths=null):A[U.scale]&&(U._paths=null)});for(let U in A)Pt=!0,An("setScale",U);xt&&at.left>=0&&(lt=Et=!0)}for(let U in V)V[U]=null}function Zt(v){let A=Ad(cn-1,0,rn-1),N=Ad(hn+1,0,rn-1);for(;v[A]==null&&A>0;)A--;for(;v[N]==null&&N<rn-1;)N++;return[A,N]}function be(){if(rn>0){let v=y.some(A=>A._focus)&&Bt!=Yt.alpha;v&&(d.globalAlpha=Bt=Yt.alpha),y.forEach((A,N)=>{if(N>0&&A.show&&(sn(N,!1),sn(N,!0),A._paths==null)){let U=Bt;Bt!=A.alpha&&(d.globalAlpha=Bt=A.alpha);let Y=s==2?[0,t[N][0].length-1]:Zt(t[N]);A._paths=A.paths(n,N,Y[0],Y[1]),Bt!=U&&(d.globalAlpha=Bt=U)}}),y.forEach((A,N)=>{if(N>0&&A.show){let U=Bt;Bt!=A.alpha&&(d.globalAlpha=Bt=A.alpha),A._paths!=null&&ze(N,!1);{let Y=A._paths!=null?A._paths.gaps:null,it=A.points.show(n,N,cn,hn,Y),_t=A.points.filter(n,N,it,Y);(it||_t)&&(A.points._paths=A.points.paths(n,N,cn,hn,_t),ze(N,!0))}Bt!=U&&(d.globalAlpha=Bt=U),An("drawSeries",N)}}),v&&(d.globalAlpha=Bt=1)}}function sn(v,A){let N=A?y[v].points:y[v];N._stroke=N.stroke(n,v),N._fill=N.fill(n,v)}function ze(v,A){let N=A?y[v].points:y[v],{stroke:U,fill:Y,clip:it,flags:_t,_stroke:wt=N._stroke,_fill:It=N._fill,_width:Vt=N.width}=N._paths;Vt=$e(Vt*Oe,3);let Gt=null,qt=Vt%2/2;A&&It==null&&(It=Vt>0?"#fff":wt);let fe=N.pxAlign==1&&qt>0;if(fe&&d.translate(qt,qt),!A){let Ne=D-Vt/2,Le=E-Vt/2,Te=j+Vt,oe=Mt+Vt;Gt=new Path2D,Gt.rect(Ne,Le,Te,oe)}A?$t(wt,Vt,N.dash,N.cap,It,U,Y,_t,it):Ve(v,wt,Vt,N.dash,N.cap,It,U,Y,_t,Gt,it),fe&&d.translate(-qt,-qt)}function Ve(v,A,N,U,Y,it,_t,wt,It,Vt,Gt){let qt=!1;It!=0&&I.forEach((fe,Ne)=>{if(fe.series[0]==v){let Le=y[fe.series[1]],Te=t[fe.series[1]],oe=(Le._paths||Ga).band;Zs(oe)&&(oe=fe.dir==1?oe[0]:oe[1]);let ee,je=null;Le.show&&oe&&iw(Te,cn,hn)?(je=fe.fill(n,Ne)||it,ee=Le._paths.clip):oe=null,$t(A,N,U,Y,je,_t,wt,It,Vt,Gt,ee,oe),qt=!0}}),qt||$t(A,N,U,Y,it,_t,wt,It,Vt,Gt)}let xn=Co|Pd;function $t(v,A,N,U,Y,it,_t,wt,It,Vt,Gt,qt){Ut(v,A,N,U,Y),(It||Vt||qt)&&(d.save(),It&&d.clip(It),Vt&&d.clip(Vt)),qt?(wt&xn)==xn?(d.clip(qt),Gt&&d.clip(Gt),Ae(Y,_t),un(v,it,A)):wt&Pd?(Ae(Y,_t),d.clip(qt),un(v,it,A)):wt&Co&&(d.save(),d.clip(qt),Gt&&d.clip(Gt),Ae(Y,_t),d.restore(),un(v,it,A)):(Ae(Y,_t),un(v,it,A)),(It||Vt||qt)&&d.restore()}function un(v,A,N){N>0&&(A instanceof Map?A.forEach((U,Y)=>{d.strokeStyle=Rr=Y,d.stroke(U)}):A!=null&&v&&d.stroke(A))}function Ae(v,A){A instanceof Map?A.forEach((N,U)=>{d.fillStyle=Cs=U,d.fill(N)}):A!=null&&v&&d.fill(A)}function as(v,A,N,U){let Y=T[v],it;if(U<=0)it=[0,0];else{let _t=Y._space=Y.space(n,v,A,N,U),wt=Y._incrs=Y.incrs(n,v,A,N,U,_t);it=w1(A,N,wt,U,_t)}return Y._found=it}function dn(v,A,N,U,Y,it,_t,wt,It,Vt){let Gt=_t%2/2;x==1&&d.translate(Gt,Gt),Ut(wt,_t,It,Vt,wt),d.beginPath();let qt,fe,Ne,Le,Te=Y+(U==0||U==3?-it:it);N==0?(fe=Y,Le=Te):(qt=Y,Ne=Te);for(let oe=0;oe<v.length;oe++)A[oe]!=null&&(N==0?qt=Ne=v[oe]:fe=Le=v[oe],d.moveTo(qt,fe),d.lineTo(Ne,Le));d.stroke(),x==1&&d.translate(-Gt,-Gt)}function Pr(v){let A=!0;return T.forEach((N,U)=>{if(!N.show)return;let Y=b[N.scale];if(Y.min==null){N._show&&(A=!1,N._show=!1,ye(!1));return}else N._show||(A=!1,N._show=!0,ye(!1));let it=N.side,_t=it%2,{min:wt,max:It}=Y,[Vt,Gt]=as(U,wt,It,_t==0?O:yt);if(Gt==0)return;let qt=Y.distr==2,fe=N._splits=N.splits(n,U,wt,It,Vt,Gt,qt),Ne=Y.distr==2?fe.map(ee=>ei[ee]):fe,Le=Y.distr==2?ei[fe[1]]-ei[fe[0]]:Vt,Te=N._values=N.values(n,N.filter(n,Ne,U,Gt,Le),U,Gt,Le);N._rotate=it==2?N.rotate(n,Te,U,Gt):0;let oe=N._size;N._size=bi(N.size(n,Te,U,v)),oe!=null&&N._size!=oe&&(A=!1)}),A}function Vi(v){let A=!0;return Uo.forEach((N,U)=>{let Y=N(n,U,ki,v);Y!=wi[U]&&(A=!1),wi[U]=Y}),A}function ls(){for(let v=0;v<T.length;v++){let A=T[v];if(!A.show||!A._show)continue;let N=A.side,U=N%2,Y,it,_t=A.stroke(n,v),wt=N==0||N==3?-1:1,[It,Vt]=A._found;if(A.label!=null){let Wn=A.labelGap*wt,si=Sn((A._lpos+Wn)*Oe);kt(A.labelFont[0],_t,"center",N==2?"top":eg),d.save(),U==1?(Y=it=0,d.translate(si,Sn(E+Mt/2)),d.rotate((N==3?-uh:uh)/2)):(Y=Sn(D+j/2),it=si);let er=Wg(A.label)?A.label(n,v,It,Vt):A.label;d.fillText(er,Y,it),d.restore()}if(Vt==0)continue;let Gt=b[A.scale],qt=U==0?j:Mt,fe=U==0?D:E,Ne=A._splits,Le=Gt.distr==2?Ne.map(Wn=>ei[Wn]):Ne,Te=Gt.distr==2?ei[Ne[1]]-ei[Ne[0]]:It,oe=A.ticks,ee=A.border,je=oe.show?oe.size:0,an=Sn(je*Oe),Rn=Sn((A.alignTo==2?A._size-je-A.gap:A.gap)*Oe),Ge=A._rotate*-uh/180,ln=_(A._pos*Oe),ni=(an+Rn)*wt,Gn=ln+ni;it=U==0?Gn:0,Y=U==1?Gn:0;let mi=A.font[0],Ei=A.align==1?bo:A.align==2?gd:Ge>0?bo:Ge<0?gd:U==0?"center":N==3?gd:bo,Wi=Ge||U==1?"middle":N==2?"top":eg;kt(mi,_t,Ei,Wi);let ii=A.font[1]*A.lineGap,gi=Ne.map(Wn=>_(a(Wn,Gt,qt,fe))),Ti=A._values;for(let Wn=0;Wn<Ti.length;Wn++){let si=Ti[Wn];if(si!=null){U==0?Y=gi[Wn]:it=gi[Wn],si=""+si;let er=si.indexOf(`
`)==-1?[si]:si.split(/\n/gm);for(let $n=0;$n<er.length;$n++){let _f=er[$n];Ge?(d.save(),d.translate(Y,it+$n*ii),d.rotate(Ge),d.fillText(_f,0,0),d.restore()):d.fillText(_f,Y,it+$n*ii)}}}oe.show&&dn(gi,oe.filter(n,Le,v,Vt,Te),U,N,ln,an,$e(oe.width*Oe,3),oe.stroke(n,v),oe.dash,oe.cap);let $i=A.grid;$i.show&&dn(gi,$i.filter(n,Le,v,Vt,Te),U,U==0?2:1,U==0?E:D,U==0?Mt:j,$e($i.width*Oe,3),$i.stroke(n,v),$i.dash,$i.cap),ee.show&&dn([ln],[1],U==0?1:0,U==0?1:2,U==1?E:D,U==1?Mt:j,$e(ee.width*Oe,3),ee.stroke(n,v),ee.dash,ee.cap)}An("drawAxes")}function ye(v){y.forEach((A,N)=>{N>0&&(A._paths=null,v&&(s==1?(A.min=null,A.max=null):A.facets.forEach(U=>{U.min=null,U.max=null})))})}let on=!1,Hn=!1,He=[];function fn(){Hn=!1;for(let v=0;v<He.length;v++)An(...He[v]);He.length=0}function On(){on||(_w(jd),on=!0)}function Za(v,A=!1){on=!0,Hn=A,v(n),jd(),A&&He.length>0&&queueMicrotask(fn)}n.batch=Za;function jd(){if(mt&&(Se(),mt=!1),Pt&&(Nt(),Pt=!1),Rt){if(tn(f,bo,Wt),tn(f,"top",Ht),tn(f,ka,O),tn(f,za,yt),tn(m,bo,Wt),tn(m,"top",Ht),tn(m,ka,O),tn(m,za,yt),tn(h,ka,Tt),tn(h,za,Xt),u.width=Sn(Tt*Oe),u.height=Sn(Xt*Oe),T.forEach(({_el:v,_show:A,_size:N,_pos:U,side:Y})=>{if(v!=null)if(A){let it=Y===3||Y===0?N:0,_t=Y%2==1;tn(v,_t?"left":"top",U-it),tn(v,_t?"width":"height",N),tn(v,_t?"top":"left",_t?Ht:Wt),tn(v,_t?"height":"width",_t?yt:O),Ed(v,Sr)}else di(v,Sr)}),Rr=Cs=Cr=W=rt=tt=et=Ft=R=null,Bt=1,Vo(!0),Wt!=bt||Ht!=Ie||O!=jt||yt!=ie){ye(!1);let v=O/jt,A=yt/ie;if(xt&&!lt&&at.left>=0){at.left*=v,at.top*=A,Ir&&is(Ir,Sn(at.left),0,O,yt),Lr&&is(Lr,0,Sn(at.top),O,yt);for(let N=0;N<me.length;N++){let U=me[N];U!=null&&(Ze[N]*=v,Vn[N]*=A,is(U,bi(Ze[N]),bi(Vn[N]),O,yt))}}if(Ke.show&&!dt&&Ke.left>=0&&Ke.width>0){Ke.left*=v,Ke.width*=v,Ke.top*=A,Ke.height*=A;for(let N in kh)tn(Fr,N,Ke[N])}bt=Wt,Ie=Ht,jt=O,ie=yt}An("setSize"),Rt=!1}Tt>0&&Xt>0&&(d.clearRect(0,0,u.width,u.height),An("drawClear"),S.forEach(v=>v()),An("draw")),Ke.show&&dt&&(Ja(Ke),dt=!1),xt&&lt&&(tr(null,!0,!1),lt=!1),ot.show&&ot.live&&Et&&(Oh(),Et=!1),l||(l=!0,n.status=1,An("ready")),Rs=!1,on=!1}n.redraw=(v,A)=>{Pt=A||!1,v!==!1?Is(w,L.min,L.max):On()};function Nh(v,A){let N=b[v];if(N.from==null){if(rn==0){let U=N.range(n,A.min,A.max,v);A.min=U[0],A.max=U[1]}if(A.min>A.max){let U=A.min;A.min=A.max,A.max=U}if(rn>1&&A.min!=null&&A.max!=null&&A.max-A.min<1e-16)return;v==w&&N.distr==2&&rn>0&&(A.min=Oi(A.min,t[0]),A.max=Oi(A.max,t[0]),A.min==A.max&&A.max++),V[v]=A,mt=!0,On()}}n.setScale=Nh;let Fh,Uh,Ir,Lr,Qd,tf,Dr,Nr,ef,nf,Je,en,Ps=!1,Ln=at.drag,En=Ln.x,Tn=Ln.y;xt&&(at.x&&(Fh=Si(Vb,m)),at.y&&(Uh=Si(Hb,m)),L.ori==0?(Ir=Fh,Lr=Uh):(Ir=Uh,Lr=Fh),Je=at.left,en=at.top);let Ke=n.select=_n({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Fr=Ke.show?Si(zb,Ke.over?m:f):null;function Ja(v,A){if(Ke.show){for(let N in v)Ke[N]=v[N],N in kh&&tn(Fr,N,v[N]);A!==!1&&An("setSelect")}}n.setSelect=Ja;function t_(v){if(y[v].show)Q&&Ed(Ct[v],Sr);else if(Q&&di(Ct[v],Sr),xt){let N=Ot?me[0]:me[v];N!=null&&is(N,-10,-10,O,yt)}}function Is(v,A,N){Nh(v,{min:A,max:N})}function Hi(v,A,N,U){A.focus!=null&&r_(v),A.show!=null&&y.forEach((Y,it)=>{it>0&&(v==it||v==null)&&(Y.show=A.show,t_(it),s==2?(Is(Y.facets[0].scale,null,null),Is(Y.facets[1].scale,null,null)):Is(Y.scale,null,null),On())}),N!==!1&&An("setSeries",v,A),U&&Ho("setSeries",n,v,A)}n.setSeries=Hi;function e_(v,A){_n(I[v],A)}function n_(v,A){v.fill=Ce(v.fill||null),v.dir=De(v.dir,-1),A=A??I.length,I.splice(A,0,v)}function i_(v){v==null?I.length=0:I.splice(v,1)}n.addBand=n_,n.setBand=e_,n.delBand=i_;function s_(v,A){y[v].alpha=A,xt&&me[v]!=null&&(me[v].style.opacity=A),Q&&Ct[v]&&(Ct[v].style.opacity=A)}let cs,Ls,Qs,Ur={focus:!0};function r_(v){if(v!=Qs){let A=v==null,N=Yt.alpha!=1;y.forEach((U,Y)=>{if(s==1||Y>0){let it=A||Y==0||Y==v;U._focus=A?null:it,N&&s_(Y,it?1:Yt.alpha)}}),Qs=v,N&&On()}}Q&&le&&ht(rg,nt,v=>{at._lock||(ae(v),Qs!=null&&Hi(null,Ur,!0,pn.setSeries))});function Gi(v,A,N){let U=b[A];N&&(v=v/Oe-(U.ori==1?Ht:Wt));let Y=O;U.ori==1&&(Y=yt,v=Y-v),U.dir==-1&&(v=Y-v);let it=U._min,_t=U._max,wt=v/Y,It=it+(_t-it)*wt,Vt=U.distr;return Vt==3?To(10,It):Vt==4?rw(It,U.asinh):Vt==100?U.bwd(It):It}function o_(v,A){let N=Gi(v,w,A);return Oi(N,t[0],cn,hn)}n.valToIdx=v=>Oi(v,t[0]),n.posToIdx=o_,n.posToVal=Gi,n.valToPos=(v,A,N)=>b[A].ori==0?r(v,b[A],N?j:O,N?D:0):o(v,b[A],N?Mt:yt,N?E:0),n.setCursor=(v,A,N)=>{Je=v.left,en=v.top,tr(null,A,N)};function sf(v,A){tn(Fr,bo,Ke.left=v),tn(Fr,ka,Ke.width=A)}function rf(v,A){tn(Fr,"top",Ke.top=v),tn(Fr,za,Ke.height=A)}let ko=L.ori==0?sf:rf,zo=L.ori==1?sf:rf;function a_(){if(Q&&ot.live)for(let v=s==2?1:0;v<y.length;v++){if(v==0&&se)continue;let A=ot.values[v],N=0;for(let U in A)St[v][N++].firstChild.nodeValue=A[U]}}function Oh(v,A){if(v!=null&&(v.idxs?v.idxs.forEach((N,U)=>{$[U]=N}):cw(v.idx)||$.fill(v.idx),ot.idx=$[0]),Q&&ot.live){for(let N=0;N<y.length;N++)(N>0||s==1&&!se)&&l_(N,$[N]);a_()}Et=!1,A!==!1&&An("setLegend")}n.setLegend=Oh;function l_(v,A){let N=y[v],U=v==0&&k==2?ei:t[v],Y;se?Y=N.values(n,v,A)??Kt:(Y=N.value(n,A==null?null:U[A],v,A),Y=Y==null?Kt:{_:Y}),ot.values[v]=Y}function tr(v,A,N){ef=Je,nf=en,[Je,en]=at.move(n,Je,en),at.left=Je,at.top=en,xt&&(Ir&&is(Ir,Sn(Je),0,O,yt),Lr&&is(Lr,0,Sn(en),O,yt));let U,Y=cn>hn;cs=We,Ls=null;let it=L.ori==0?O:yt,_t=L.ori==1?O:yt;if(Je<0||rn==0||Y){U=at.idx=null;for(let wt=0;wt<y.length;wt++){let It=me[wt];It!=null&&is(It,-10,-10,O,yt)}le&&Hi(null,Ur,!0,v==null&&pn.setSeries),ot.live&&($.fill(U),Et=!0)}else{let wt,It,Vt;s==1&&(wt=L.ori==0?Je:en,It=Gi(wt,w),U=at.idx=Oi(It,t[0],cn,hn),Vt=z(t[0][U],L,it,0));let Gt=-10,qt=-10,fe=0,Ne=0,Le=!0,Te="",oe="";for(let ee=s==2?1:0;ee<y.length;ee++){let je=y[ee],an=$[ee],Rn=an==null?null:s==1?t[ee][an]:t[ee][1][an],Ge=at.dataIdx(n,ee,U,It),ln=Ge==null?null:s==1?t[ee][Ge]:t[ee][1][Ge];if(Et=Et||ln!=Rn||Ge!=an,$[ee]=Ge,ee>0&&je.show){let ni=Ge==null?-10:Ge==U?Vt:z(s==1?t[0][Ge]:t[ee][0][Ge],L,it,0),Gn=ln==null?-10:P(ln,s==1?b[je.scale]:b[je.facets[1].scale],_t,0);if(le&&ln!=null){let mi=L.ori==1?Je:en,Ei=bn(Yt.dist(n,ee,Ge,Gn,mi));if(Ei<cs){let Wi=Yt.bias;if(Wi!=0){let ii=Gi(mi,je.scale),gi=ln>=0?1:-1,Ti=ii>=0?1:-1;Ti==gi&&(Ti==1?Wi==1?ln>=ii:ln<=ii:Wi==1?ln<=ii:ln>=ii)&&(cs=Ei,Ls=ee)}else cs=Ei,Ls=ee}}if(Et||Ot){let mi,Ei;L.ori==0?(mi=ni,Ei=Gn):(mi=Gn,Ei=ni);let Wi,ii,gi,Ti,$i,Wn,si=!0,er=vt.bbox;if(er!=null){si=!1;let $n=er(n,ee);gi=$n.left,Ti=$n.top,Wi=$n.width,ii=$n.height}else gi=mi,Ti=Ei,Wi=ii=vt.size(n,ee);if(Wn=vt.fill(n,ee),$i=vt.stroke(n,ee),Ot)ee==Ls&&cs<=Yt.prox&&(Gt=gi,qt=Ti,fe=Wi,Ne=ii,Le=si,Te=Wn,oe=$i);else{let $n=me[ee];$n!=null&&(Ze[ee]=gi,Vn[ee]=Ti,dg($n,Wi,ii,si),hg($n,Wn,$i),is($n,bi(gi),bi(Ti),O,yt))}}}}if(Ot){let ee=Yt.prox,je=Qs==null?cs<=ee:cs>ee||Ls!=Qs;if(Et||je){let an=me[0];an!=null&&(Ze[0]=Gt,Vn[0]=qt,dg(an,fe,Ne,Le),hg(an,Te,oe),is(an,bi(Gt),bi(qt),O,yt))}}}if(Ke.show&&Ps)if(v!=null){let[wt,It]=pn.scales,[Vt,Gt]=pn.match,[qt,fe]=v.cursor.sync.scales,Ne=v.cursor.drag;if(En=Ne._x,Tn=Ne._y,En||Tn){let{left:Le,top:Te,width:oe,height:ee}=v.select,je=v.scales[qt].ori,an=v.posToVal,Rn,Ge,ln,ni,Gn,mi=wt!=null&&Vt(wt,qt),Ei=It!=null&&Gt(It,fe);mi&&En?(je==0?(Rn=Le,Ge=oe):(Rn=Te,Ge=ee),ln=b[wt],ni=z(an(Rn,qt),ln,it,0),Gn=z(an(Rn+Ge,qt),ln,it,0),ko(Bi(ni,Gn),bn(Gn-ni))):ko(0,it),Ei&&Tn?(je==1?(Rn=Le,Ge=oe):(Rn=Te,Ge=ee),ln=b[It],ni=P(an(Rn,fe),ln,_t,0),Gn=P(an(Rn+Ge,fe),ln,_t,0),zo(Bi(ni,Gn),bn(Gn-ni))):zo(0,_t)}else zh()}else{let wt=bn(ef-Qd),It=bn(nf-tf);if(L.ori==1){let fe=wt;wt=It,It=fe}En=Ln.x&&wt>=Ln.dist,Tn=Ln.y&&It>=Ln.dist;let Vt=Ln.uni;Vt!=null?En&&Tn&&(En=wt>=Vt,Tn=It>=Vt,!En&&!Tn&&(It>wt?Tn=!0:En=!0)):Ln.x&&Ln.y&&(En||Tn)&&(En=Tn=!0);let Gt,qt;En&&(L.ori==0?(Gt=Dr,qt=Je):(Gt=Nr,qt=en),ko(Bi(Gt,qt),bn(qt-Gt)),Tn||zo(0,_t)),Tn&&(L.ori==1?(Gt=Dr,qt=Je):(Gt=Nr,qt=en),zo(Bi(Gt,qt),bn(qt-Gt)),En||ko(0,it)),!En&&!Tn&&(ko(0,0),zo(0,0))}if(Ln._x=En,Ln._y=Tn,v==null){if(N){if(gf!=null){let[wt,It]=pn.scales;pn.values[0]=wt!=null?Gi(L.ori==0?Je:en,wt):null,pn.values[1]=It!=null?Gi(L.ori==1?Je:en,It):null}Ho(_d,n,Je,en,O,yt,U)}if(le){let wt=N&&pn.setSeries,It=Yt.prox;Qs==null?cs<=It&&Hi(Ls,Ur,!0,wt):cs>It?Hi(null,Ur,!0,wt):Ls!=Qs&&Hi(Ls,Ur,!0,wt)}}Et&&(ot.idx=U,Oh()),A!==!1&&An("setCursor")}let Ds=null;Object.defineProperty(n,"rect",{get(){return Ds==null&&Vo(!1),Ds}});function Vo(v=!1){v?Ds=null:(Ds=m.getBoundingClientRect(),An("syncRect",Ds))}function of(v,A,N,U,Y,it,_t){at._lock||Ps&&v!=null&&v.movementX==0&&v.movementY==0||(Bh(v,A,N,U,Y,it,_t,!1,v!=null),v!=null?tr(null,!0,!0):tr(A,!0,!1))}function Bh(v,A,N,U,Y,it,_t,wt,It){if(Ds==null&&Vo(!1),ae(v),v!=null)N=v.clientX-Ds.left,U=v.clientY-Ds.top;else{if(N<0||U<0){Je=-10,en=-10;return}let[Vt,Gt]=pn.scales,qt=A.cursor.sync,[fe,Ne]=qt.values,[Le,Te]=qt.scales,[oe,ee]=pn.match,je=A.axes[0].side%2==1,an=L.ori==0?O:yt,Rn=L.ori==1?O:yt,Ge=je?it:Y,ln=je?Y:it,ni=je?U:N,Gn=je?N:U;if(Le!=null?N=oe(Vt,Le)?a(fe,b[Vt],an,0):-10:N=an*(ni/Ge),Te!=null?U=ee(Gt,Te)?a(Ne,b[Gt],Rn,0):-10:U=Rn*(Gn/ln),L.ori==1){let mi=N;N=U,U=mi}}It&&(A==null||A.cursor.event.type==_d)&&((N<=1||N>=O-1)&&(N=vr(N,O)),(U<=1||U>=yt-1)&&(U=vr(U,yt))),wt?(Qd=N,tf=U,[Dr,Nr]=at.move(n,N,U)):(Je=N,en=U)}let kh={width:0,height:0,left:0,top:0};function zh(){Ja(kh,!1)}let af,lf,cf,hf;function uf(v,A,N,U,Y,it,_t){Ps=!0,En=Tn=Ln._x=Ln._y=!1,Bh(v,A,N,U,Y,it,_t,!0,!1),v!=null&&(ht(xd,bd,df,!1),Ho(ig,n,Dr,Nr,O,yt,null));let{left:wt,top:It,width:Vt,height:Gt}=Ke;af=wt,lf=It,cf=Vt,hf=Gt}function df(v,A,N,U,Y,it,_t){Ps=Ln._x=Ln._y=!1,Bh(v,A,N,U,Y,it,_t,!1,!0);let{left:wt,top:It,width:Vt,height:Gt}=Ke,qt=Vt>0||Gt>0,fe=af!=wt||lf!=It||cf!=Vt||hf!=Gt;if(qt&&fe&&Ja(Ke),Ln.setScale&&qt&&fe){let Ne=wt,Le=Vt,Te=It,oe=Gt;if(L.ori==1&&(Ne=It,Le=Gt,Te=wt,oe=Vt),En&&Is(w,Gi(Ne,w),Gi(Ne+Le,w)),Tn)for(let ee in b){let je=b[ee];ee!=w&&je.from==null&&je.min!=We&&Is(ee,Gi(Te+oe,ee),Gi(Te,ee))}zh()}else at.lock&&(at._lock=!at._lock,tr(A,!0,v!=null));v!=null&&(Lt(xd,bd),Ho(xd,n,Je,en,O,yt,null))}function c_(v,A,N,U,Y,it,_t){if(at._lock)return;ae(v);let wt=Ps;if(Ps){let It=!0,Vt=!0,Gt=10,qt,fe;L.ori==0?(qt=En,fe=Tn):(qt=Tn,fe=En),qt&&fe&&(It=Je<=Gt||Je>=O-Gt,Vt=en<=Gt||en>=yt-Gt),qt&&It&&(Je=Je<Dr?0:O),fe&&Vt&&(en=en<Nr?0:yt),tr(null,!0,!0),Ps=!1}Je=-10,en=-10,$.fill(null),tr(null,!0,!0),wt&&(Ps=wt)}function ff(v,A,N,U,Y,it,_t){at._lock||(ae(v),Bo(),zh(),v!=null&&Ho(og,n,Je,en,O,yt,null))}function pf(){T.forEach(E1),G(n.width,n.height,!0)}br(dh,Eo,pf);let Or={};Or.mousedown=uf,Or.mousemove=of,Or.mouseup=df,Or.dblclick=ff,Or.setSeries=(v,A,N,U)=>{let Y=pn.match[2];N=Y(n,A,N),N!=-1&&Hi(N,U,!0,!1)},xt&&(ht(ig,m,uf),ht(_d,m,of),ht(sg,m,v=>{ae(v),Vo(!1)}),ht(rg,m,c_),ht(og,m,ff),Id.add(n),n.syncRect=Vo);let Ka=n.hooks=i.hooks||{};function An(v,A,N){Hn?He.push([v,A,N]):v in Ka&&Ka[v].forEach(U=>{U.call(null,n,A,N)})}(i.plugins||[]).forEach(v=>{for(let A in v.hooks)Ka[A]=(Ka[A]||[]).concat(v.hooks[A])});let mf=(v,A,N)=>N,pn=_n({key:null,setSeries:!1,filters:{pub:_g,sub:_g},scales:[w,y[1]?y[1].scale:null],match:[xg,xg,mf],values:[null,null]},at.sync);pn.match.length==2&&pn.match.push(mf),at.sync=pn;let gf=pn.key,Vh=p0(gf);function Ho(v,A,N,U,Y,it,_t){pn.filters.pub(v,A,N,U,Y,it,_t)&&Vh.pub(v,A,N,U,Y,it,_t)}Vh.sub(n);function h_(v,A,N,U,Y,it,_t){pn.filters.sub(v,A,N,U,Y,it,_t)&&Or[v](null,A,N,U,Y,it,_t)}n.pub=h_;function u_(){Vh.unsub(n),Id.delete(n),Pe.clear(),Td(dh,Eo,pf),c.remove(),nt?.remove(),An("destroy")}n.destroy=u_;function Hh(){An("init",i,t),Oo(t||i.data,!1),V[w]?Nh(w,V[w]):Bo(),dt=Ke.show&&(Ke.width>0||Ke.height>0),lt=Et=!0,G(i.width,i.height)}return y.forEach(Ar),T.forEach(rs),e?e instanceof HTMLElement?(e.appendChild(c),Hh()):e(n,Hh):Hh(),n}wn.assign=_n;wn.fmtNum=Bd;wn.rangeNum=fh;wn.rangeLog=gh;wn.rangeAsinh=Ud;wn.orient=Er;wn.pxRatio=Oe;wn.join=gw;wn.fmtDate=zd,wn.tzDate=Aw;wn.sync=p0;{wn.addGap=c1,wn.clipGaps=yh;let i=wn.paths={points:v0};i.linear=S0,i.stepped=d1,i.bars=f1,i.spline=m1}function T1(i,t){let e=[],n=[],s=new Map,r="",o="";for(let[l,c]of i.entries()){let u=(c.charts??[]).find(h=>h.id===t);if(!u)continue;r=u.title,o=u.unit;let d=[Array.from(Xi(c.time))];for(let h of u.series)s.has(h.name)||s.set(h.name,s.size),d.push(Array.from(Xi(h.data),f=>f===f?f:null)),n.push({...h,record:l,label:c.label,colour:s.get(h.name)});e.push(d)}let a=e.length>1?wn.join(e,e.map(l=>l.map(()=>1))):e[0];return{id:t,title:r,unit:o,series:n,columns:a}}var A1=i=>[...new Set(i.flatMap(t=>(t.charts??[]).map(e=>e.id)))];function T0(i,t){let e=i.length>1,{duration:n}=t.state,s=wn.sync("curves"),r=[],o=M("div",{class:"curves"}),a=[[],[7,4],[2,3],[10,3,2,3]],l=!1,c=M("button",{type:"button",id:"zoom-out",hidden:!0,on:{click:()=>u(0,n)}},"Show the whole run");function u(x,_){l=!0;for(let{plot:p}of r)p.setScale("x",{min:x,max:_});l=!1,c.hidden=x<=0&&_>=n,h()}for(let x of A1(i)){let _=T1(i,x),p=M("div",{class:"chart-plot"}),y=M("div",{class:"chart-legend"}),T=M("span",{class:"chart-time"}),b=M("figure",{class:"chart","data-chart":x},M("figcaption",{},M("span",{},ut(_.title),_.unit&&M("span",{class:"muted"},` [${_.unit}]`)),T),p,y);o.append(b);let I=C=>({stroke:()=>sr("--ink-soft"),grid:{stroke:()=>sr("--grid"),width:1},ticks:{stroke:()=>sr("--grid"),width:1,size:4},font:"11px system-ui, sans-serif",...C}),w=new wn({width:400,height:190,legend:{show:!1},padding:[8,10,0,0],scales:{x:{time:!1,range:(C,L,k)=>[L,Math.max(k,L+1e-6)]}},axes:[I({size:26,space:60,values:(C,L)=>L.map((k,z)=>(L.length-1,`${+k.toPrecision(6)} s`))}),I({size:48,space:30,values:(C,L)=>L.map(k=>String(+k.toPrecision(6)).replace("-","\u2212"))})],series:[{},..._.series.map(C=>({label:C.name,show:C.shown!==!1,stroke:()=>Vr(C.colour),width:1.6,dash:a[C.record%a.length],spanGaps:e,points:{show:!1}}))],cursor:{sync:{key:s.key,setSeries:!1},drag:{x:!0,y:!1,dist:5},y:!1,points:{size:6}},hooks:{setScale:[(C,L)=>{L==="x"&&!l&&r.length&&u(C.scales.x.min,C.scales.x.max)}],setCursor:[()=>f()]}},_.columns,p),g=M("div",{class:"time-cursor"},M("span",{class:"time-grip"}));w.over.append(g);let S=_.series.map((C,L)=>{let k=M("span",{class:"figure"}),z=M("span",{class:"swatch-line","data-record":C.record}),P=M("button",{type:"button",class:"series","aria-pressed":String(C.shown!==!1),title:C.description||C.name,on:{click:()=>{let V=!w.series[L+1].show;w.setSeries(L+1,{show:V}),P.setAttribute("aria-pressed",String(V)),f()}}},z,e?`${C.label} `:"",ut(C.name),k);return y.append(P),{value:k,swatch:z,colour:C.colour}});if(S.length>10){y.classList.add("folded");let C=M("button",{type:"button",class:"more","aria-expanded":"false",on:{click:()=>{let L=y.classList.toggle("folded");C.setAttribute("aria-expanded",String(!L)),C.textContent=L?`all ${S.length} curves`:"fewer"}}},`all ${S.length} curves`);y.append(C)}let F={id:x,plot:w,group:_,figure:b,hand:g,entries:S,note:T,holder:p,time:NaN};r.push(F),C1(w,g,t),new ResizeObserver(()=>{let C=Math.floor(p.clientWidth);C>50&&C!==w.width&&(w.setSize({width:C,height:w.height}),h())}).observe(p)}function d(){for(let{plot:x,entries:_}of r){for(let p of _)p.swatch.style.color=Vr(p.colour);x.redraw(!1)}}xi(d);function h(){let{time:x}=t.state;for(let{plot:_,hand:p,figure:y}of r){let{min:T,max:b}=_.scales.x,I=x>=T-1e-9&&x<=b+1e-9;p.hidden=!I,I&&(p.style.transform=`translateX(${_.valToPos(x,"x").toFixed(2)}px)`),Xe(y,"data-time",x.toFixed(6))}}function f(){for(let{plot:x,group:_,entries:p,note:y}of r){let T=x.cursor.left>=0&&x.cursor.idx!==null&&x.cursor.idx!==void 0,b=_.columns[0],I=T?b[x.cursor.idx]:t.state.time;Cn(y,T?`mouse: ${Dn(I,n)}`:Dn(I,n));for(let[w,g]of p.entries()){if(!x.series[w+1].show){Cn(g.value,"");continue}let S=T&&!e?_.columns[w+1][x.cursor.idx]:R1(b,_.columns[w+1],I);Cn(g.value,S==null?"\u2013":`${qe(S)} ${_.unit}`.trim())}}}let m=0;return t.listen(({playing:x})=>{h();let _=performance.now();x&&_-m<100||(m=_,f())}),d(),{box:o,reset:c,charts:r}}function R1(i,t,e){let n=0,s=i.length-1;for(;n<s;){let a=n+s+1>>1;i[a]<=e?n=a:s=a-1}let r=n,o=Math.min(n+1,i.length-1);for(;r>0&&t[r]===void 0;)--r;for(;o<i.length-1&&t[o]===void 0;)++o;return t[r]===null||t[r]===void 0?null:t[o]===null||t[o]===void 0||i[o]<=i[r]?t[r]:t[r]+(t[o]-t[r])*Math.min(Math.max((e-i[r])/(i[o]-i[r]),0),1)}function C1(i,t,e){let{over:n}=i,s=l=>i.posToVal(l.clientX-n.getBoundingClientRect().left,"x"),r=l=>{e.seek(s(l))};n.style.touchAction="pan-y";let o=null;n.addEventListener("pointerdown",l=>{o={x:l.clientX,touch:l.pointerType!=="mouse"}}),n.addEventListener("pointermove",l=>{o?.touch&&r(l)}),n.addEventListener("pointerup",l=>{o&&Math.abs(l.clientX-o.x)<4&&r(l),o=null}),n.addEventListener("pointercancel",()=>{o=null});let a=t.firstChild;a.addEventListener("mousedown",l=>l.stopPropagation()),a.addEventListener("pointerdown",l=>{l.stopPropagation(),l.preventDefault(),a.setPointerCapture(l.pointerId)}),a.addEventListener("pointermove",l=>{a.hasPointerCapture(l.pointerId)&&(l.stopPropagation(),r(l))}),a.addEventListener("pointerup",l=>l.stopPropagation()),a.addEventListener("click",l=>l.stopPropagation())}var ss=150,qd=34,Yd=i=>i>=.0995?`${(100*i).toFixed(0)} %`:`${qe(100*i,2)} %`;function P1(i,t,e){let n=Math.max(t,1.2),s=i,r=i-n,o=n+6,a=n+12,l=ss+qd-14,c=`M${r} 0A${o} ${o} 0 0 0 ${r+o} ${o}H${l}v6l13 ${-(n/2+6)}l-13 ${-(n/2+6)}v6H${s+6}A6 6 0 0 1 ${s} 0Z`;return pt("svg",{class:`branch ${e}`,width:ss+qd,height:a,viewBox:`0 0 ${ss+qd} ${a}`,"aria-hidden":"true"},pt("path",{d:c}))}function I1(i,t){let e=(i??[]).filter(n=>n.share>0).sort((n,s)=>s.share-n.share);return e.length?M("ul",{class:"parts"},e.map(n=>M("li",{},ut(n.name)," ",M("span",{class:"figure"},Yd(n.share))))):null}function L1(i){let{unit:t,total:e}=i,n=(o,a,l)=>{let c=Math.max(o.share,0)*ss;return M("div",{class:`flow-row ${l}`,style:{"--least":`${Math.ceil(c)+26}px`,"--drop":`${Math.max(c/2-5,0).toFixed(1)}px`}},M("div",{class:"stream-cell"},M("div",{class:"stream",style:{width:`${Math.max(a-c,0).toFixed(2)}px`}}),P1(a,c,l)),M("div",{class:"flow-text"},M("p",{},M("b",{},ut(o.name))," ",M("span",{class:"figure"},Yd(o.share))," ",M("span",{class:"figure muted"},`${qe(o.value,3)} ${t}`)),I1(o.parts,t)))},s=[],r=ss;for(let o of i.flows??[])o.share>0&&(s.push(n(o,r,"loss")),r-=o.share*ss);for(let o of i.useful??[])o.share>0&&(s.push(n(o,r,"useful")),r-=o.share*ss);return Math.abs(r)>.005*ss&&s.push(M("p",{class:"muted"},`The parts named do not add up to the whole: ${Yd(Math.abs(r)/ss)} ${r>0?"is missing":"too much"}.`)),M("div",{class:"flow"},M("div",{class:"flow-row source"},M("div",{class:"stream-cell"},M("div",{class:"stream",style:{width:`${ss}px`}})),M("div",{class:"flow-text"},M("p",{},M("b",{},"from the supply")," ",M("span",{class:"figure"},"100 %")," ",M("span",{class:"figure muted"},`${qe(e,4)} ${t}`)))),s)}function A0(i,t){let{records:e}=t,n=e.length>1;e.some(s=>s.losses)&&i.section("losses","Where the energy goes",M("div",{class:n?"columns":""},e.map(s=>M("div",{},n&&kr(s),s.losses?[M("p",{class:"lead"},ut(s.losses.title)),L1(s.losses)]:M("p",{class:"muted"},"This run draws nothing from a supply, so there is no energy to follow.")))))}var Zd=12;function D1(i){let t=new Map;return i.forEach((e,n)=>{for(let s of e.margins?.values??[]){t.has(s.name)||t.set(s.name,{check:s.check,least:1/0,of:[]});let r=t.get(s.name);r.of[n]=s,r.least=Math.min(r.least,s.ratio)}}),[...t.values()].sort((e,n)=>e.least-n.least)}function N1(i){let t=[],e=(n,s)=>["time","load","posture","lost_at","lost_load"].every(r=>n[r]===s[r]);return i.forEach((n,s)=>{if(!n)return;let r=t.find(o=>e(o.value,n));r?r.of.push(s):t.push({value:n,of:[s]})}),t}function R0(i,t,e){let{records:n}=t,s=n.length>1,r=D1(n),{duration:o}=e.state,a=n.flatMap(x=>(x.margins?.not_checked??[]).map(_=>({..._,label:x.label}))),l=(x,_)=>[...new Map(x.map(p=>[_(p),p])).values()],c=l(a,x=>x.check+"|"+(x.missing??[]).join()),u=l(n.flatMap(x=>x.margins?.cautions??[]),x=>x),d=l(n.flatMap(x=>x.margins?.unloaded??[]),x=>x),h=r.map((x,_)=>M("tr",{class:`${x.least<1?"missed":""} ${_>=Zd?"later":""}`},M("td",{class:"figure number-cell"},_+1),M("th",{scope:"row"},ut(x.check)),M("td",{class:"margin-cell"},x.of.map((p,y)=>p&&M("div",{class:"bar-line"},s&&M("span",{class:"record-letter"},n[y].label),tl(p.ratio),M("span",{class:`figure ${p.ratio<1?"short":""}`},ut(p.ratio_text))))),M("td",{class:"figure"},x.of.map(p=>p&&M("div",{class:"pair"},ut(p.capacity),M("span",{class:"muted"}," / "),ut(p.demand)))),M("td",{},N1(x.of).map(({value:p,of:y})=>M("div",{class:"governs"},s&&y.map(T=>[M("span",{class:"record-letter"},n[T].label)," "]),Number.isFinite(p.time)&&Br(e,p.time,Dn(p.time,o))," ",M("span",{class:"small"},ut(p.load),p.posture?M("span",{class:"muted posture"}," \xB7 ",ut(p.posture)):""),p.lost_at!==null&&Number.isFinite(p.lost_at)&&M("div",{class:"lost"},ri("bad")," falls below 1 at ",Br(e,p.lost_at,Dn(p.lost_at,o))," ",M("span",{class:"small"},ut(p.lost_load??"")))))))),f=r.length?Xn(["","what could fail","margin","capacity / demand","governed at, by"],h,{class:"margins short",label:"margins"}):M("p",{class:"muted"},"The record holds no margins."),m=r.length>Zd&&M("button",{type:"button",class:"more controls","aria-expanded":"false",on:{click:()=>{let x=f.querySelector("table").classList.toggle("short");m.textContent=x?`Show all ${r.length} margins`:`Show the ${Zd} smallest`,m.setAttribute("aria-expanded",String(!x))}}},`Show all ${r.length} margins`);return i.section("margins","Margins: what breaks first",M("p",{class:"lead"},"How many times over each part would bear what the run asked of it, at the worst instant of the run. Below 1 it fails. Bars on a logarithmic axis from 0.5 to 20, starting at 1; smallest first."),f,m,M("div",{class:"not-checked"},M("h3",{},ri("unknown")," Not checked"),c.length?[M("p",{},`${c.length===1?"This check was":`These ${c.length} checks were`} not made, because the model lacks the data. Nothing is known about them: they are not safe, they are unknown.`),M("ul",{},c.map(x=>M("li",{},ut(x.check),x.missing?.length?M("span",{class:"muted"}," \u2014 needs ",x.missing.map((_,p)=>[p?", ":"",ut(_)])):"")))]:M("p",{},r.length?"Every check that the program knows of had the data it needs. Failures that it does not know of are not covered.":"No part was checked in this record.")),d.length>0&&M("details",{},M("summary",{},`Never loaded in this run (${d.length})`),M("p",{class:"small"},d.map((x,_)=>[_?" \xB7 ":"",ut(x)]))),u.length>0&&M("div",{class:"caution-list"},M("h3",{},"Cautions about the margins"),M("ul",{},u.map(x=>M("li",{},ut(x))))))}function F1(i){if((i.axes??[]).length!==1)return null;let t=i.rows.filter(m=>m.found!==!1&&Number.isFinite(m.value)).map(m=>({x:parseFloat(m.place[0]),y:m.value})).filter(m=>Number.isFinite(m.x)).sort((m,x)=>m.x-x.x);if(t.length<2)return null;let e=420,n=200,s=50,r=36,o=10,a=14,l=t.map(m=>m.x),c=Math.min(...l),u=Math.max(...l),d=1.1*Math.max(...t.map(m=>m.y),1e-12);if(!(u>c))return null;let h=m=>s+(m-c)/(u-c)*(e-s-a),f=m=>n-r-m/d*(n-r-o);return pt("svg",{class:"limit-chart",viewBox:`0 0 ${e} ${n}`,width:e,height:n,role:"img","aria-label":`${i.name} over ${i.axes[0].name}`},pt("path",{class:"grid",d:[0,.25,.5,.75,1].map(m=>`M${s} ${f(m*d/1.1)}H${e-a}`).join("")}),[0,.5,1].map(m=>pt("text",{x:s-6,y:f(m*d/1.1)+4,"text-anchor":"end"},qe(m*d/1.1,3))),t.map(m=>pt("text",{x:h(m.x),y:n-r+15,"text-anchor":"middle"},String(m.x))),pt("text",{x:(s+e-a)/2,y:n-4,"text-anchor":"middle"},i.axes[0].name),pt("path",{class:"line",d:t.map((m,x)=>`${x?"L":"M"}${h(m.x)} ${f(m.y)}`).join("")}),t.map(m=>pt("circle",{cx:h(m.x),cy:f(m.y),r:3})))}function U1(i){if(i.method!=="directions"||!i.in_plane)return null;let t=i.axes[i.axes.length-1].values.length,e=i.rows.filter(f=>f.found!==!1&&Number.isFinite(f.value));if(!e.length)return null;let n=340,s=112,r=n/2,o=1.08*Math.max(...e.map(f=>f.value),1e-12),a=(f,m)=>[r+m/o*s*Math.cos(2*Math.PI*f/t),r-m/o*s*Math.sin(2*Math.PI*f/t)],l=f=>`M${r+f} ${r}A${f} ${f} 0 1 0 ${r-f} ${r}A${f} ${f} 0 1 0 ${r+f} ${r}`,c=[pt("path",{class:"grid",d:[.25,.5,.75,1].map(f=>l(f*s)).join("")+[0,1,2,3].map(f=>`M${r} ${r}L${r+s*Math.cos(f*Math.PI/2)} ${r-s*Math.sin(f*Math.PI/2)}`).join("")})],u=f=>f.startsWith("+")?f.replace("+","\u2212"):f.replace("\u2212","+"),[d,h]=i.plane?.every(f=>!f.startsWith("("))?i.plane:["",""];for(let[f,m]of[`0\xB0 ${d}`,`90\xB0 ${h}`,`180\xB0 ${u(d)}`,`270\xB0 ${u(h)}`].entries())c.push(pt("text",{x:r+(s+10)*Math.cos(f*Math.PI/2),y:r+4-(s+14)*Math.sin(f*Math.PI/2),"text-anchor":["start","middle","end","middle"][f]},m.trim()));for(let f of[.5,1])c.push(pt("text",{x:r+f*s*Math.cos(1.25)+3,y:r-f*s*Math.sin(1.25),"text-anchor":"start"},qe(f*o,2)));for(let f=0;f<i.rows.length;f+=t){let m=i.rows.slice(f,f+t),x=m.map((y,T)=>({row:y,k:T})).filter(({row:y})=>y.found!==!1&&Number.isFinite(y.value)),_="";for(let y=0;y<=t;++y){let T=m[y%t];if(T.found===!1||!Number.isFinite(T.value))continue;let b=y>0&&m[y-1].found!==!1&&Number.isFinite(m[y-1].value);_+=`${b?"L":"M"}${a(y,T.value).map(I=>I.toFixed(2)).join(" ")}`}c.push(pt("path",{class:"line",d:_}));for(let{row:y,k:T}of x)c.push(pt("circle",{cx:a(T,y.value)[0],cy:a(T,y.value)[1],r:2.5}));let p=x.reduce((y,T)=>T.row.value<y.row.value?T:y,x[0]);p&&c.push(pt("circle",{class:"worst",cx:a(p.k,p.row.value)[0],cy:a(p.k,p.row.value)[1],r:6}))}return pt("svg",{class:"limit-chart",viewBox:`0 0 ${n} ${n}`,width:n,height:n,role:"img","aria-label":`${i.name}, by direction`},c)}function C0(i,t){t.limits?.length&&i.section("limits","Limits",t.limits.map(e=>M("div",{class:"limit"},M("h3",{},ut(e.name)),M("p",{class:"lead"},ut(e.quantity),e.unit?` [${e.unit}]`:"",e.method?M("span",{class:"muted"},", found by ",ut(e.method)):""),M("div",{class:"limit-body"},Xn([...(e.axes??[]).map(n=>ut(n.name)),"limit","error",e.method==="directions"?"the finger that gives first":"remark"],e.rows.map(n=>M("tr",{class:n.found===!1?"missed":""},(n.place??[]).map(s=>M("td",{class:"figure"},ut(s))),M("td",{class:"figure"},M("b",{},ut(n.text))),M("td",{class:"figure"},ut(n.error_text)),M("td",{class:"small"},ut([n.gave,n.note].filter(Boolean).join("; "))))),{label:`limit ${e.name}`}),U1(e)??F1(e)))))}function O1(i,t,e){let n=(t-i)/Math.max(1,e);if(!(n>0)||!Number.isFinite(n))return[i];let s=10**Math.floor(Math.log10(n)),r=s*([1,2,5,10].find(a=>a*s>=n*.999)??10),o=[];for(let a=Math.ceil(i/r-1e-9);a*r<=t+1e-9*r;++a)o.push(+(a*r).toPrecision(12));return o}function Do(i,t=[]){let e=1/0,n=-1/0;for(let a of i)Number.isFinite(a)&&(a<e&&(e=a),a>n&&(n=a));let s=n-e;for(let{value:a}of t){let l=Math.min(e,a),c=Math.max(n,a);(!(s>0)||s>=.25*(c-l))&&(e=l,n=c)}if(!(e<=n))return{low:0,high:1};let r=Math.max(Math.abs(e),Math.abs(n)),o=r>0?.02*r:1;return n-e<o?{low:(e+n)/2-o,high:(e+n)/2+o}:{low:e-.07*(n-e),high:n+.07*(n-e)}}var Ks=i=>Math.min(i,Math.max(320,document.documentElement.clientWidth-44)),bh=(i,t)=>i.length>t?`${i.slice(0,t-1)}\u2026`:i;function Tr({width:i=420,height:t=210,x:e,y:n,label:s,left:r=58,right:o=14,top:a=12,bottom:l=40,className:c=""}){let u=y=>r+(y-e.low)/(e.high-e.low)*(i-r-o),d=y=>t-l-(y-n.low)/(n.high-n.low)*(t-a-l),h=y=>y.format??(T=>_i(T)),f=(y,T)=>y.options?y.options.map((b,I)=>I):O1(y.low,y.high,T),m=f(e,(i-r-o)/80),x=f(n,(t-a-l)/40),_=e.options?Math.max(3,Math.floor((i-r-o)/e.options.length/7)):0;return{node:pt("svg",{class:`study-chart ${c}`,viewBox:`0 0 ${i} ${t}`,width:i,height:t,role:"img","aria-label":s},pt("path",{class:"grid",d:m.map(y=>`M${u(y).toFixed(1)} ${a}V${t-l}`).join("")+x.map(y=>`M${r} ${d(y).toFixed(1)}H${i-o}`).join("")}),m.map((y,T)=>pt("text",{x:u(y).toFixed(1),y:t-l+15,"text-anchor":"middle"},e.options?bh(e.options[T],_):h(e)(y))),x.map((y,T)=>pt("text",{x:r-6,y:(d(y)+4).toFixed(1),"text-anchor":"end"},n.options?bh(n.options[T],8):h(n)(y))),pt("text",{class:"axis-name",x:(r+i-o)/2,y:t-5,"text-anchor":"middle"},bh(e.label??"",Math.floor((i-r-o)/6.4))),n.label&&pt("text",{class:"axis-name",transform:`translate(12 ${(a+t-l)/2}) rotate(-90)`,"text-anchor":"middle"},bh(n.label,Math.floor((t-a-l+30)/6.4))),pt("path",{class:"frame",d:`M${r} ${a}V${t-l}H${i-o}`})),px:u,py:d,left:r,right:i-o,top:a,bottom:t-l,width:i,height:t}}function $a(i,t,e,n){return(e??[]).map((s,r)=>{if(s.value<t.low||s.value>t.high)return null;let o=n?i.px(s.value):i.py(s.value),a=n?s.at_least?i.left:i.right:s.at_least?i.bottom:i.top,l=n?{x:Math.min(o,a),y:i.top,width:Math.abs(o-a),height:i.bottom-i.top}:{x:i.left,y:Math.min(o,a),width:i.right-i.left,height:Math.abs(o-a)},c=n?`M${o} ${i.top}V${i.bottom}`:`M${i.left} ${o}H${i.right}`,u=n?{x:o+(s.at_least?4:-4),y:i.top+10+12*r,"text-anchor":s.at_least?"start":"end"}:{x:i.right-3,y:o+(s.at_least?11:-4),"text-anchor":"end"};return[pt("rect",{class:"not-allowed",...l}),pt("path",{class:"bound",d:c}),pt("text",{class:"bound-text",...u},s.text)]})}var ti=i=>i.unit?`${i.title} [${i.unit}]`:i.title,P0=i=>`${_i(100*i)} %`,js=(i,t,...e)=>M("figure",{class:"study-figure"},M("figcaption",{},ut(i)),t,e);function I0(i,t,e){let{low:n,high:s,counts:r}=t.histogram;if(!r.length)return js(ti(i),M("p",{class:"muted small"},"No row has it."));let o=Number.isFinite(t.drawn)&&s-n>.25*(Math.max(s,t.drawn)-Math.min(n,t.drawn)),a={...Do(o?[n,s,t.drawn]:[n,s],i.bounds),label:ti(i)},l=Math.max(...r)/e,c=Tr({x:a,y:{low:0,high:1.2*l,format:h=>P0(h)},label:`spread of ${i.title}`,left:50}),u=s>n?(s-n)/r.length:.04*(a.high-a.low),d=s>n?n:n-u/2;return c.node.append(...$a(c,a,i.bounds,!0).flat().filter(Boolean),...r.map((h,f)=>pt("rect",{class:"bar",x:c.px(d+u*f).toFixed(2),width:Math.max(.5,c.px(d+u)-c.px(d)-.6).toFixed(2),y:c.py(h/e).toFixed(2),height:(c.bottom-c.py(h/e)).toFixed(2)}))),Number.isFinite(t.drawn)&&t.drawn>a.low&&t.drawn<a.high&&c.node.append(pt("path",{class:"as-drawn",d:`M${c.px(t.drawn)} ${c.top}V${c.bottom}`})),js(i.title,c.node)}function L0(i,t){let e=Xi(t.points),n=[];for(let u=0;u+4<e.length;u+=5)n.push(e.subarray(u,u+5));let s={low:n[0][0],high:n.at(-1)[0],label:`${ti(i)}: ${t.at_least?"at least":"at most"}`},r=Tr({x:s,y:{low:0,high:1.04,format:u=>P0(u)},label:`yield over the bound of ${i.title}`,left:50}),o=u=>n.map((d,h)=>`${h?"L":"M"}${r.px(d[0]).toFixed(1)} ${r.py(d[u]).toFixed(1)}`).join(""),a=[...n].reverse().map(u=>`L${r.px(u[0]).toFixed(1)} ${r.py(u[3]).toFixed(1)}`).join(""),l=r.px(t.value),c=l>(r.left+r.right)/2;return r.node.append(pt("path",{class:"band",d:`${o(4)}${a}Z`}),pt("path",{class:"alone",d:o(1)}),pt("path",{class:"all",d:o(2)}),pt("path",{class:"bound",d:`M${l} ${r.top}V${r.bottom}`}),pt("text",{class:"bound-text",x:l+(c?-4:4),y:r.bottom-8,"text-anchor":c?"end":"start"},t.text)),js(`Yield if the bound on ${i.title} stood elsewhere`,r.node)}function wh(i,{low:t,high:e,label:n,axis:s,textTitle:r}){let o=Ks(560),a=30,l=Math.min(150,o/3),c=14,u=6,d=34,h=u+a*i.length+d,f=Tr({width:o,height:h,left:l,right:c,top:u,bottom:d,x:{low:t,high:e,label:s},y:{low:0,high:1,options:[]},label:n}),m=x=>Math.min(Math.max(x,t),e);return i.forEach((x,_)=>{let p=u+a*_+3,y=(a-6)/x.bars.length;f.node.append(pt("text",{class:"row-name",x:l-6,y:u+a*_+a/2+4,"text-anchor":"end"},x.title.length>l/7.4?`${x.title.slice(0,Math.floor(l/7.4)-1)}\u2026`:x.title,pt("title",{},`${x.title}${r?`: ${r} `:": "}${x.text}`))),x.bars.forEach((T,b)=>{if(!Number.isFinite(T.value))return;let I=f.px(m(0)),w=f.px(m(T.value));if(f.node.append(pt("rect",{class:`bar ${T.kind}`,x:Math.min(I,w).toFixed(1),width:Math.max(.7,Math.abs(w-I)).toFixed(1),y:(p+y*b+.5).toFixed(1),height:(y-1).toFixed(1)})),Number.isFinite(T.low)&&Number.isFinite(T.high)){let g=p+y*(b+.5);f.node.append(pt("path",{class:"whisker",d:`M${f.px(m(T.low))} ${g}H${f.px(m(T.high))}M${f.px(m(T.low))} ${g-3}v6M${f.px(m(T.high))} ${g-3}v6`}))}})}),f.node}function D0(i,t){if(!t.keys.length)return js(i.title,M("p",{class:"muted"},ut(t.note),"."));let e=t.keys.flatMap(s=>[s.first,s.total]).flatMap(s=>[s.value,s.low,s.high]).filter(Number.isFinite),n=wh(t.keys.map(s=>({title:s.key,text:`by itself ${s.first.text}, in all ${s.total.text}`,bars:[{...s.first,kind:"first"},{...s.total,kind:"total"}]})),{low:Math.min(0,...e),high:Math.max(1,...e)*1.02,label:`shares of the variance of ${i.title}`,axis:"share of the variance"});return js(i.title,n,t.note&&M("p",{class:"small muted"},ut(t.note),"."))}function N0(i,t){let e=Math.max(...t.keys.map(s=>s.size??0));if(!(e>0))return js(i.title,M("p",{class:"muted"},"Does not change, or too few rows have it."));let n=wh(t.keys.map(s=>({title:s.key,text:`size ${s.texts[0]}, with sign ${s.texts[1]}, deviation ${s.texts[2]}`,bars:[{value:s.mean,kind:s.mean<0?"less":"more"},{value:s.mean<0?-s.size:s.size,kind:"size"}]})),{low:-1.05*e,high:1.05*e,label:`changes of ${i.title}`,axis:`change over the whole spread of a key${i.unit?` [${i.unit}]`:""}`});return js(i.title,n)}function F0(i,t,e,n){let s=e.rows.filter(m=>m.number<n),r=s.filter(m=>m.state<2).map(m=>m.values[i.place]),o=s.filter(m=>m.state===0).map(m=>m.values[i.place]),a=r.filter(Number.isFinite).sort((m,x)=>m-x),l=a.length?[a[Math.floor(.05*(a.length-1))],a[Math.ceil(.95*(a.length-1))]]:[],c={...Do([...o,...l,i.drawn]),label:`${ti(i)}, ${t.more?"more":"less"} is better`},u=Tr({width:Ks(1110),height:230,x:{low:-.01*n,high:1.01*n,label:"design, in the order of trying"},y:c,label:`search for ${i.title}`}),d=m=>m.values[i.place]>=c.low&&m.values[i.place]<=c.high,h=m=>m.map(x=>`M${u.px(x.number).toFixed(1)} ${u.py(x.values[i.place]).toFixed(1)}h0`).join(""),f=s.filter(m=>Number.isFinite(m.values[i.place])&&!d(m)).length;if(u.node.append(pt("path",{class:"dots missed",d:h(s.filter(m=>m.state===1&&d(m)))}),pt("path",{class:"dots met",d:h(s.filter(m=>m.state===0&&d(m)))})),Number.isFinite(i.drawn)&&u.node.append(pt("path",{class:"as-drawn",d:`M${u.left} ${u.py(i.drawn)}H${u.right}`})),t.steps.length){let m="";t.steps.forEach(([x,_],p)=>{m+=p?`H${u.px(x).toFixed(1)}V${u.py(_).toFixed(1)}`:`M${u.px(x).toFixed(1)} ${u.py(_).toFixed(1)}`}),u.node.append(pt("path",{class:"best-line",d:`${m}H${u.px(n).toFixed(1)}`}))}return js(ti(i),u.node,f>0&&M("p",{class:"small muted"},`${f} designs lie outside the frame.`))}var Eh=[["good","meets all"],["bad","misses a requirement"],["unknown","no valid model"],["unknown","could not go on"]],Xa=50;function Ah(i){let t=i.rows.values.map(Xi);return i.columns.forEach((e,n)=>{e.place=n}),{columns:i.columns,rows:i.rows.row.map((e,n)=>({number:e,state:i.rows.state[n],reason:i.rows.reasons[i.rows.reason[n]]??"",values:t.map(s=>s[n])}))}}var qa=(i,t)=>Number.isNaN(t)?"\u2013":i.options?i.options[t]??"\u2013":qe(t);function Th(i,t,e,n){let s=M("select",{"aria-label":i,on:{change:()=>n(s.value)}},t.map(([r,o])=>M("option",{value:r,selected:String(r)===String(e)},o)));return M("label",{class:"field"},M("span",{class:"cell-title"},i),s)}function B1(i){let t=i.columns.filter(s=>s.role==="outcome"),e=i.goals.map(s=>t[s.outcome]),n=i.columns.filter(s=>s.role==="key");return e.length>1?[e[0].place,e[1].place]:[(n.find(s=>!s.options)??n[0]).place,(e[0]??t[0]).place]}function U0(i,t){let e=Ah(i),n=new Set(i.best),[s,r]=B1(i),o=e.rows.some(Z=>Z.number>=i.designs),a={x:s,y:r,colour:-1,state:"all",text:"",low:[NaN,NaN],high:[NaN,NaN],sort:-1,down:!1,shown:Xa,picked:null},l=Z=>e.columns[Z],c=Z=>{if((a.state==="made"?Z.number<i.designs:o&&Z.number>=i.designs)||a.state==="best"&&!n.has(Z.number)||a.state==="met"&&Z.state!==0||a.state==="missed"&&Z.state!==1||a.state==="broken"&&Z.state<2)return!1;for(let[st,gt]of[a.x,a.y].entries())if(a.low[st]>Z.values[gt]||a.high[st]<Z.values[gt]||(!Number.isNaN(a.low[st])||!Number.isNaN(a.high[st]))&&Number.isNaN(Z.values[gt]))return!1;return a.text?[Z.reason,Eh[Z.state][1],...e.columns.filter(st=>st.options).map(st=>qa(st,Z.values[st.place]))].join(`
`).toLowerCase().includes(a.text.toLowerCase()):!0},u=M("div",{class:"design-chart"}),d=M("p",{class:"small design-legend"}),h=null,f=(Z,nt)=>nt?.5*(Z.number*.6180339887%1)-.25:0,m=Z=>{let nt=Z.values[a.x]+f(Z,l(a.x).options),st=Z.values[a.y];return Z.state>=2?Number.isNaN(nt)?null:[h.px(nt),Number.isNaN(st)?h.bottom-6:h.py(st+f(Z,l(a.y).options))]:!Number.isFinite(nt)||!Number.isFinite(st)?null:[h.px(nt),h.py(st+f(Z,l(a.y).options))]},x=(Z,nt)=>{let st=l(Z);return{...st.options?{low:-.6,high:st.options.length-.4}:Do([...nt.map(Ct=>Ct.values[Z]),st.drawn],st.bounds),label:ti(st),options:st.options}};function _(){let Z=e.rows.filter(Qt=>a.state==="made"===(o&&Qt.number>=i.designs)||!o),nt=x(a.x,Z),st=x(a.y,Z);h=Tr({width:Ks(1110),height:Math.min(430,Ks(1110)),x:nt,y:st,label:`${st.label} over ${nt.label}, a point for each design`,left:66,className:"designs"}),h.node.append(...$a(h,st,l(a.y).bounds,!1).flat().filter(Boolean),...$a(h,nt,l(a.x).bounds,!0).flat().filter(Boolean));let gt=new Map,Ct=(Qt,_e,pe)=>{let Pe=gt.get(Qt)??{attributes:_e,d:""};Pe.d+=pe,gt.set(Qt,Pe)},St=a.colour>=0?Do(Z.map(Qt=>Qt.values[a.colour])):null;for(let Qt of Z){let _e=m(Qt);if(!_e)continue;let[pe,Pe]=_e.map(Tt=>Tt.toFixed(1));if(!c(Qt)){Ct("0",{class:"dots faint"},`M${pe} ${Pe}h0`);continue}if(Qt.state>=2){Ct("1",{class:"crosses"},`M${pe-3} ${Pe-3}l6 6m0 -6l-6 6`);continue}let ht=Qt.state===0?`M${pe} ${Pe}h0`:`M${pe-3} ${Pe}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0`,Lt=Qt.state===0?"dots met":"rings missed";if(!St)Ct(Qt.state===0?"3":"2",{class:Lt},ht);else{let Tt=Qt.values[a.colour],Xt=Number.isFinite(Tt)?Math.round(9*(Tt-St.low)/(St.high-St.low)):-1;Ct(`${Qt.state===0?3:2}:${Xt}`,{class:Lt,style:Xt<0?{}:{stroke:or(Xt/9)}},ht)}n.has(Qt.number)&&Ct("4",{class:"rings best"},`M${pe-5.5} ${Pe}a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0`),Qt.number===i.chosen&&Ct("5",{class:"rings chosen"},`M${pe-9} ${Pe}a9 9 0 1 0 18 0a9 9 0 1 0 -18 0`)}for(let Qt of[...gt.keys()].sort()){let _e=gt.get(Qt);h.node.append(pt("path",{..._e.attributes,d:_e.d}))}let{drawn:ne}=l(a.x),{drawn:se}=l(a.y);Number.isFinite(ne)&&Number.isFinite(se)&&h.node.append(pt("path",{class:"drawn-design",d:`M${h.px(ne)} ${h.py(se)-7}l7 7l-7 7l-7 -7z`}));let Kt=a.picked&&m(a.picked);Kt&&h.node.append(pt("path",{class:"rings picked",d:`M${Kt[0]-8} ${Kt[1]}a8 8 0 1 0 16 0a8 8 0 1 0 -16 0`})),h.node.append(p),y(h.node),u.replaceChildren(h.node);let Ee=(Qt,_e)=>M("span",{class:"legend-entry"},pt("svg",{class:"study-chart",width:20,height:20,viewBox:"0 0 20 20","aria-hidden":"true"},Qt),_e);d.replaceChildren(Ee(pt("path",{class:"dots met",d:"M10 10h0"}),"meets all requirements"),Ee(pt("path",{class:"rings missed",d:"M7 10a3 3 0 1 0 6 0a3 3 0 1 0 -6 0"}),"misses one"),...Z.some(Qt=>Qt.state>=2)?[Ee(pt("path",{class:"crosses",d:"M7 7l6 6m0 -6l-6 6"}),"could not be run")]:[],...n.size?[Ee(pt("path",{class:"rings best",d:"M4.5 10a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0"}),n.size>1?"on the front":"the best")]:[],...i.chosen!==null?[Ee(pt("path",{class:"rings chosen",d:"M1 10a9 9 0 1 0 18 0a9 9 0 1 0 -18 0"}),"checked as made")]:[],...Number.isFinite(ne)&&Number.isFinite(se)?[Ee(pt("path",{class:"drawn-design",d:"M10 3l7 7l-7 7l-7 -7z"}),"as drawn")]:[],...St?[M("span",{class:"legend-entry"},M("span",{class:"tension-bar",style:{background:ar()}}),ut(`${ti(l(a.colour))}, ${qa({},St.low)} to ${qa({},St.high)}`))]:[])}let p=pt("rect",{class:"brush",width:0,height:0});function y(Z){let nt=null,st=Ct=>{let St=Z.getBoundingClientRect();return[(Ct.clientX-St.left)*h.width/St.width,(Ct.clientY-St.top)*h.height/St.height]};Z.addEventListener("pointerdown",Ct=>{nt=st(Ct),Z.setPointerCapture(Ct.pointerId)}),Z.addEventListener("pointermove",Ct=>{if(!nt)return;let St=st(Ct);for(let[ne,se]of Object.entries({x:Math.min(nt[0],St[0]),y:Math.min(nt[1],St[1]),width:Math.abs(St[0]-nt[0]),height:Math.abs(St[1]-nt[1])}))p.setAttribute(ne,se)});let gt=()=>{nt=null,p.setAttribute("width",0)};Z.addEventListener("pointercancel",gt),Z.addEventListener("pointerup",Ct=>{if(!nt)return;let St=nt,ne=st(Ct);if(gt(),Math.abs(ne[0]-St[0])<5||Math.abs(ne[1]-St[1])<5){T(ne);return}let se=(Kt,Ee)=>{let[Qt,_e]=Kt===0?[h.left,h.right]:[h.bottom,h.top],pe=Kt===0?x(a.x,e.rows.filter(Pe=>o?a.state==="made"==Pe.number>=i.designs:!0)):x(a.y,e.rows.filter(Pe=>o?a.state==="made"==Pe.number>=i.designs:!0));return pe.low+(Ee-Qt)/(_e-Qt)*(pe.high-pe.low)};for(let Kt of[0,1]){let Ee=[se(Kt,St[Kt]),se(Kt,ne[Kt])].sort((Qt,_e)=>Qt-_e);[a.low[Kt],a.high[Kt]]=Ee.map(Qt=>+Qt.toPrecision(4))}at()})}function T(Z){let nt=null,st=18;for(let gt of e.rows){let Ct=c(gt)&&m(gt),St=Ct?Math.hypot(Ct[0]-Z[0],Ct[1]-Z[1]):1/0;St<st&&(st=St,nt=gt)}I(nt)}let b=M("p",{class:"picked-design small",role:"status"});function I(Z){a.picked=Z,_(),b.replaceChildren(...Z?[M("b",{},`Design ${Z.number}`),` ${Eh[Z.state][1]}: `,...e.columns.filter(nt=>!Number.isNaN(Z.values[nt.place])).flatMap((nt,st)=>[st?", ":"",ut(nt.title)," ",ut(qa(nt,Z.values[nt.place])),nt.unit?` ${nt.unit}`:""]),Z.reason?[". ",ut(Z.reason)].flat():""].flat():["Click a point for its numbers; drag a box to keep only what lies in it."]);for(let nt of w.children)nt.classList.toggle("picked",Z!==null&&nt.dataset.row===String(Z.number))}let w=M("tbody"),g=M("span",{class:"muted",role:"status"}),S=[],F=()=>e.columns.filter(Z=>Z.role!=="made"||a.state==="made").filter(Z=>Z.role!=="key"||a.state!=="made"),C=M("tr"),L=M("button",{type:"button",class:"more controls",on:{click:()=>{a.shown+=Xa,z()}}}),k=()=>{let Z=e.rows.filter(c),nt=a.sort===-1?st=>st.number:a.sort===-2?st=>st.state:st=>st.values[a.sort];return Z.sort((st,gt)=>{let[Ct,St]=[nt(st),nt(gt)];return Number.isNaN(Ct)||Number.isNaN(St)?Number.isNaN(Ct)-Number.isNaN(St)||st.number-gt.number:(a.down?St-Ct:Ct-St)||st.number-gt.number})};function z(){let Z=F();S.length=0;let nt=(gt,Ct,St)=>M("th",{scope:"col",class:St?"figure":"","aria-sort":a.sort===gt?a.down?"descending":"ascending":"none"},M("button",{type:"button",class:"sort",on:{click:()=>{a.down=a.sort===gt&&!a.down,a.sort=gt,z(),C.querySelector(`[data-sort="${gt}"]`)?.focus()}},"data-sort":gt},ut(Ct),M("span",{class:"arrow-mark","aria-hidden":"true"},a.sort===gt?a.down?" \u25BE":" \u25B4":"")));C.replaceChildren(nt(-1,"row",!0),nt(-2,"state",!1),...Z.map(gt=>nt(gt.place,ti(gt),!gt.options)));let st=k();w.replaceChildren(...st.slice(0,a.shown).map(gt=>M("tr",{"data-row":gt.number,class:`${gt.state===1?"misses":gt.state>=2?"broke":""} ${n.has(gt.number)?"best":""} ${a.picked===gt?"picked":""}`,on:{click:()=>{I(gt)}}},M("th",{scope:"row",class:"figure nowrap"},gt.number,gt.number===i.chosen?" \u2605":n.has(gt.number)?" \u25CF":""),M("td",{class:"nowrap",title:gt.reason||null},ri(Eh[gt.state][0]),Eh[gt.state][1]),Z.map(Ct=>M("td",{class:Ct.options?"":"figure"},ut(qa(Ct,gt.values[Ct.place]))))))),Cn(g,`${st.length} of ${e.rows.length} rows`),L.hidden=st.length<=a.shown,Cn(L,`Show ${Math.min(Xa,st.length-a.shown)} more`)}let P=[0,1].map(Z=>["low","high"].map(nt=>{let st=M("input",{type:"number",step:"any",class:"bound-field",on:{change:()=>{a[nt][Z]=st.value===""?NaN:Number(st.value),at()}}});return st})),V=M("button",{type:"button",on:{click:()=>{a.low=[NaN,NaN],a.high=[NaN,NaN],a.state="all",a.text="",H.value="",q.querySelector("select").value="all",at()}}},"Show all"),H=M("input",{type:"search","aria-label":"words in a row's options, state or reason",on:{input:()=>{a.text=H.value,a.shown=Xa,at()}}}),B=Z=>e.columns.filter(nt=>Z.includes(nt.role)).map(nt=>[nt.place,ti(nt)]),q=Th("rows",[["all",o?"all designs tried":"all"],["met","that meet all requirements"],["missed","that miss one"],["broken","that could not be run"],...n.size?[["best",n.size>1?"on the front":"the best"]]:[],...o?[["made","the chosen one as made"]]:[]],"all",Z=>{let nt=a.state==="made";if(a.state=Z,a.shown=Xa,nt!==(Z==="made")){let st=e.columns.find(gt=>gt.role==="made");ot("x",Z==="made"&&st?st.place:s),ot("y",Z==="made"?e.columns.find(gt=>gt.role==="outcome").place:r),a.sort=-1}at()}),X=B(["key","made","outcome"]),K=Th("along",X,a.x,Z=>ot("x",Number(Z),!0)),$=Th("up",X,a.y,Z=>ot("y",Number(Z),!0));function ot(Z,nt,st){a[Z]=nt,(Z==="x"?K:$).querySelector("select").value=String(nt);let gt=Z==="x"?0:1;a.low[gt]=a.high[gt]=NaN,st&&at()}function at(){P.forEach((Z,nt)=>Z.forEach((st,gt)=>{let Ct=a[gt?"high":"low"][nt];st.value=Number.isNaN(Ct)?"":Ct,st.setAttribute("aria-label",`${l(nt?a.y:a.x).title}, ${gt?"at most":"at least"}`)})),_(),z()}let Q=(Z,nt)=>M("div",{class:"field"},M("span",{class:"cell-title"},Z),M("span",{class:"range-fields"},nt[0]," to ",nt[1])),xt=[M("p",{class:"lead"},ut(i.rows.text)),M("div",{class:"fields controls"},K,Q("along, from",P[0]),$,Q("up, from",P[1]),Th("colour",[[-1,"none"],...X],-1,Z=>{a.colour=Number(Z),_()}),q,M("label",{class:"field"},M("span",{class:"cell-title"},"words"),H),V),u,d,b,M("p",{class:"controls"},g),M("div",{class:"table-box",tabindex:0,role:"group","aria-label":"designs"},M("table",{class:"designs-table",id:t},M("thead",{},C),w)),L];return I(null),at(),xi(_),addEventListener("resize",_),xt}var O0=14,Jd=6,B0=40,k0=8,z0=(i,t)=>i.options?i.options[t]??"\u2013":`${_i(t)}${i.unit?` ${i.unit}`:""}`;function k1(i){let[t,e,n]=Wo(i,[0,0,0]).map(s=>s<=.04045?s/12.92:((s+.055)/1.055)**2.4);return .2126*t+.7152*e+.0722*n>.18}function z1({nx:i,ny:t,whole:e}){let n=[];for(let s=0;s<t;++s)for(let r=0;r<i;++r)r+1<i&&e(r,s)!==e(r+1,s)&&n.push([r+1,s,r+1,s+1]),s+1<t&&e(r,s)!==e(r,s+1)&&n.push([r,s+1,r+1,s+1]);return n}function V1(i,t,e){let{nx:n,ny:s,x:r,y:o}=i,a=58+(o.options?24:0),l=(e-a-k0)/n,c=Math.min(Math.max(180/s,8),30),u=Jd+c*s+B0,d=P=>a+P*l,h=P=>Jd+(s-P)*c,f=t.values.filter(P=>P!==null),m=t.low??Math.min(...f),x=t.high??Math.max(...f),_=P=>x>m?(P-m)/(x-m):.5,p=n<=O0&&s<=O0&&l>26&&c>13,y=t.values.map((P,V)=>{let H=V%n,B=Math.floor(V/n),q={x:d(H).toFixed(2),y:h(B+1).toFixed(2),width:l.toFixed(2),height:c.toFixed(2)};return{value:P,field:pt("rect",{class:P===null?"field none":"field","data-field":V,...q}),text:p&&P!==null&&pt("text",{class:"field-text",x:(d(H)+l/2).toFixed(1),y:(h(B+.5)+4).toFixed(1),"text-anchor":"middle"},_i(P))}}),T=pt("rect",{class:"field-cursor",width:l,height:c,visibility:"hidden"}),b=i.failed.map(P=>{let V=P%n,H=Math.floor(P/n),B=p?3:Math.min(3.5,l/3,c/3),q=p?d(V+1)-B-2.5:d(V+.5),X=p?h(H+1)+B+2.5:h(H+.5);return`M${(q-B).toFixed(1)} ${(X-B).toFixed(1)}l${2*B} ${2*B}m0 ${-2*B}l${-2*B} ${2*B}`}).join(""),I=z1(i).map(([P,V,H,B])=>`M${d(P).toFixed(1)} ${h(V).toFixed(1)}L${d(H).toFixed(1)} ${h(B).toFixed(1)}`).join(""),w=(P,V)=>P.length>V?`${P.slice(0,V-1)}\u2026`:P,g=(P,V)=>P.options?P.options[P.values[V]]??"\u2013":_i(P.values[V]),S=(P,V)=>Math.max(1,Math.ceil(P/V)),F=S(n,(e-a)/(r.options?62:40)),C=S(s,c*s/15),L=pt("svg",{class:"study-chart study-map",viewBox:`0 0 ${e} ${u}`,width:e,height:u,"aria-hidden":"true"},y.map(({field:P})=>P),y.map(({text:P})=>P),pt("path",{class:"cross-ground",d:b}),pt("path",{class:"failed-cross",d:b}),pt("path",{class:"border-ground",d:I}),pt("path",{class:"passing-border",d:I}),T,r.values.map((P,V)=>V%F===0&&pt("text",{x:d(V+.5).toFixed(1),y:u-B0+15,"text-anchor":"middle"},w(g(r,V),10))),o.values.map((P,V)=>V%C===0&&pt("text",{x:a-6,y:(h(V+.5)+4).toFixed(1),"text-anchor":"end"},w(g(o,V),o.options?10:7))),pt("text",{class:"axis-name",x:(a+e-k0)/2,y:u-5,"text-anchor":"middle"},ti(r)),pt("text",{class:"axis-name",transform:`translate(12 ${Jd+c*s/2}) rotate(-90)`,"text-anchor":"middle"},w(ti(o),Math.max(8,Math.floor(c*s/6.4))))),k=M("span",{class:"tension-bar"}),z=()=>{for(let{value:P,field:V,text:H}of y)P!==null&&(V.setAttribute("fill",or(_(P))),H&&H.setAttribute("class",`field-text ${k1(_(P))?"on-light":"on-dark"}`));k.style.background=ar()};return xi(z),z(),{node:L,fields:y,show(P){T.setAttribute("visibility",P<0?"hidden":"visible"),!(P<0)&&(T.setAttribute("x",d(P%n).toFixed(2)),T.setAttribute("y",h(Math.floor(P/n)+1).toFixed(2)))},figure:M("figure",{class:"study-figure"},M("figcaption",{},ut(t.title)),L,f.length?M("div",{class:"map-scale"},M("span",{},_i(m)),k,M("span",{},`${_i(x)}${t.unit?` ${t.unit}`:""}`)):M("p",{class:"muted small"},"No design has it."))}}function V0(i,t){let{map:e}=i;if(!e)return null;let n=({column:w,values:g,all:S})=>({...i.columns[w],values:g,all:S}),s=n(e.x),r=n(e.y),o=s.values.length,a=r.values.length,l=i.requirements.length>0,c=e.over.length>0,d={x:s,y:r,nx:o,ny:a,whole:l?(w,g)=>e.rows[g*o+w]>0&&e.met[g*o+w]===e.rows[g*o+w]:()=>!0,failed:l?e.rows.map((w,g)=>w>0&&e.met[g]===0?g:-1).filter(w=>w>=0):[]},h=t.map((w,g)=>({title:`${c?"mean ":""}${ti(w)}`,unit:w.unit,values:e.means[g]}));c&&l&&h.unshift({title:"meet all requirements [%]",unit:"%",low:0,high:100,values:e.rows.map((w,g)=>w?100*e.met[g]/w:null)});let f=h.map(w=>V1(d,w,Ks(o>20?540:420))),m=-1,x="Point at a field for its numbers, or focus the maps and use the arrow keys.",_=M("p",{class:"picked-design small",role:"status"},x);function p(w){let g=`${s.title} ${z0(s,s.values[w%o])}, ${r.title} ${z0(r,r.values[Math.floor(w/o)])}`,S=h.map(C=>`${C.title.replace(/ \[.*\]$/,"")} ${C.values[w]===null?"none":`${qe(C.values[w])}${C.unit?` ${C.unit}`:""}`}`).join(", "),F=e.rows[w]?l?c?`${e.met[w]} of ${e.rows[w]} designs meet all requirements`:e.met[w]?"meets all requirements":"misses a requirement, or could not be run":"":"not run";return`${g}: ${S}${F?`; ${F}`:""}.`}function y(w){m=w;for(let g of f)g.show(w);Cn(_,w<0?x:p(w))}let T=w=>{let g={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[w.key];if(!g||w.altKey||w.ctrlKey||w.metaKey)return;w.preventDefault();let S=(F,C)=>Math.min(Math.max(F,0),C-1);y(m<0?0:S(Math.floor(m/o)+g[1],a)*o+S(m%o+g[0],o))},b=M("div",{class:"study-figures maps",tabindex:0,role:"application","aria-label":`maps over ${s.title} and ${r.title}; arrow keys go from field to field`,on:{keydown:T,focus:()=>{m<0&&y(0)},pointermove:w=>{let g=w.target.dataset?.field;g!==void 0&&y(Number(g))},pointerdown:w=>{let g=w.target.dataset?.field;g!==void 0&&y(Number(g))}}},f.map(({figure:w})=>w)),I=(...w)=>pt("svg",{class:"study-chart",width:20,height:14,viewBox:"0 0 20 14","aria-hidden":"true"},w);return[M("h3",{},`Outcomes over ${s.title} and ${r.title}`),c&&M("p",{class:"lead small"},"Each field is the mean over ",ut(e.over.join(", ")),"."),(o<s.all||a<r.all)&&M("p",{class:"lead small"},`${o} \xD7 ${a} of ${s.all} \xD7 ${r.all} values are shown.`),b,_,l&&M("p",{class:"small design-legend"},M("span",{class:"legend-entry"},I(pt("path",{class:"failed-cross",d:"M6 3l8 8m0 -8l-8 8"})),c?"no design there meets all requirements":"misses a requirement, or could not be run"),M("span",{class:"legend-entry"},I(pt("path",{class:"passing-border",d:"M1 7H19"})),c?"border of where every design meets them":"border of the designs that meet them all"),M("span",{class:"legend-entry"},I(pt("rect",{class:"field none",x:1,y:1,width:18,height:12})),"no value"))]}var H1={key:"varied",made:"varied in the making"};function G1(i){let t=i.columns.filter(e=>e.role!=="outcome");return[i.about&&M("p",{},ut(i.about)),M("p",{},ut(i.kind_text[0].toUpperCase()+i.kind_text.slice(1)),"."),M("p",{class:"muted"},i.facts.map((e,n)=>[n?" \xB7 ":"",ut(e.title),": ",M("b",{},ut(e.text))])),Xn(["what varies","","values","as drawn","in the files"],t.map(e=>M("tr",{},M("th",{scope:"row"},ut(e.title)),M("td",{class:"muted"},H1[e.role]),M("td",{},ut(e.range)),M("td",{},ut(e.drawn_text??"\u2014")),M("td",{class:"path"},ut(e.description)))),{label:"what varies"}),i.requirements.length?Xn(["required of","","rows that miss it"],i.requirements.map(e=>M("tr",{class:e.missed>0?"":"met"},M("th",{scope:"row"},ut(e.title)),M("td",{},ut(e.demand)),M("td",{class:"figure"},`${e.missed} of ${i.of}`))),{label:"requirements of the study"}):M("p",{class:"muted"},"Nothing was required.")]}function W1(i){let{causes:t,met:e,of:n}=i.yield;return t.length?[M("p",{class:"lead small"},"Distance: how far the key's values differ between what fails and what passes, from 0 (alike) to 1 (one value parts them). What goes with failing need not cause it."),wh(t.map(s=>({title:s.key,text:qe(s.distance,2),bars:[{value:s.distance,kind:s.sure?"first":"unsure"}]})),{low:0,high:1,label:"what goes with failing",axis:"distance [-]"}),Xn(["what goes with failing","distance","by chance","","lowest fifth fails","2nd","3rd","4th","highest"],t.map(s=>M("tr",{},M("th",{scope:"row"},ut(s.key)),M("td",{class:"figure"},qe(s.distance,2)),M("td",{class:"figure"},ut(s.chance_text)),M("td",{class:s.sure?"nowrap":"nowrap muted"},ut(s.side)),s.shares.map(r=>M("td",{class:"figure share nowrap",style:{"--share":r??0}},r===null?"\u2013":`${qe(100*r,2)} %`)))),{class:"causes",label:"what goes with failing"})]:M("p",{class:"muted"},e===n?"No failure, so no cause to be found.":"Nothing passes, so no cause can be told from the rest.")}function $1(i,t){return[M("div",{class:"study-figures"},i.spread.map(e=>I0(t[e.outcome],e,i.of))),M("p",{class:"small muted"},"Bars: share of the rows; dashed: as drawn; tinted: not allowed by a requirement.")]}var X1=(i,t)=>Xn(["outcome","as drawn","mean","deviation","least","5 %","50 %","95 %","greatest","without it"],i.spread.map(e=>M("tr",{},M("th",{scope:"row"},ut(t[e.outcome].title)),e.texts.map(n=>M("td",{class:"figure nowrap"},ut(n))),M("td",{class:"figure"},e.missing||"\u2013"))),{label:"outcomes"});function q1(i,t){let e=Ah(i),n=i.kind==="optimise"&&i.yield;return[M("p",{class:`verdict ${i.verdict.state==="plain"?"":i.verdict.state}`},ri(i.verdict.state)," ",ut(i.verdict.text)),i.reasons.length>0&&M("div",{class:"not-checked"},M("h3",{},ri("unknown")," Rows that could not be run"),M("ul",{},i.reasons.map(s=>M("li",{},`${s.count} times: `,ut(s.text))))),V0(i,t),i.progress.length>0&&[M("h3",{},"The search"),i.progress.map(s=>F0(t[s.outcome],s,e,i.designs))],n&&M("p",{class:"verdict"},`Design ${i.chosen} as it would be made: `,ut(i.yield.text),"."),i.yield&&[i.yield.note&&M("p",{class:"muted"},ut(i.yield.note)),i.yield.curves.length>0&&[M("h3",{},"Yield over where a bound is put"),M("div",{class:"study-figures"},i.yield.curves.map(s=>L0(t[s.outcome],s))),M("p",{class:"small muted"},`Thick: share that meets the bound at this place and all other requirements, with its ${_i(100*i.yield.confidence)} % interval at each place; dashed: share that meets this bound alone.`)],M("h3",{},"What goes with failing"),W1(i)],i.indices.length>0&&[M("h3",{},"Shares of each outcome's variance"),M("p",{class:"lead small"},"Upper bar: what a key causes by itself; lower bar: with all its interplay; lines: intervals."),M("div",{class:"study-figures wide"},i.indices.map(s=>D0(t[s.outcome],s)))],i.effects.length>0&&[M("h3",{},"Change of each outcome over the whole spread of each key"),M("p",{class:"lead small"},"Filled: the mean change with its sign; outlined: the mean size. An outline longer than its bar: the sign differs from place to place."),M("div",{class:"study-figures wide"},i.effects.map(s=>N0(t[s.outcome],s)))],M("h3",{},n?"Outcomes of the chosen design as made":"Outcomes of all rows"),i.yield&&$1(i,t),X1(i,t)]}function Y1(i){let{design:t}=i,e=i.best.length===0?`The nearest design, row ${t.row}, beside the files as drawn`:i.best.length>1?`Design ${t.row} of the front${i.chosen===t.row?", which was checked as made":", the middle one"}, beside the files as drawn`:`The best design, row ${t.row}, beside the files as drawn`,n=(s,r)=>M("tr",{class:s.change==="same"||s.change==="\u2014"?"":"differs"},M("th",{scope:"row"},ut(s.title)),M("td",{class:"muted"},r),M("td",{class:"figure"},ut(s.drawn)),M("td",{class:"figure"},ut(s.text)),M("td",{class:"figure"},ut(s.change)));return[M("h3",{},e),Xn(["","","as drawn",`design ${t.row}`,"change"],[...t.keys.map(s=>n(s,"made of")),...t.outcomes.map(s=>n(s,"outcome"))],{class:"beside",label:"the design beside the files as drawn"}),t.missed.length>0&&M("ul",{class:"missed-list"},t.missed.map(s=>M("li",{},ri("bad")," missed: ",ut(s))))]}function H0(i,t){let e=t.studies??[];e.forEach((n,s)=>{let r=l=>s?`${l}-${s+1}`:l,o=e.length>1||t.records.length?`: \u2068${n.name}\u2069`:"",a=n.columns.filter(l=>l.role==="outcome");Ah(n),i.section(r("study"),`What was varied${o}`,G1(n)),i.section(r("findings"),`Findings${o}`,q1(n,a),n.design&&Y1(n)),i.section(r("designs"),`Designs${o}`,U0(n,r("designs-table")))})}var Rh=900,Ch=24,G0=13,ge=i=>i.toFixed(2);function Z1(i){let t=[...(i.polygons??[]).flatMap(s=>s.points),...(i.cords??[]).flatMap(s=>s.points),...(i.circles??[]).flatMap(s=>[[s.at[0]-s.radius,s.at[1]-s.radius],[s.at[0]+s.radius,s.at[1]+s.radius]]),...(i.dimensions??[]).flatMap(s=>[s.from,s.to])],e=t.map(s=>s[0]),n=t.map(s=>s[1]);return{left:Math.min(...e),right:Math.max(...e),bottom:Math.min(...n),top:Math.max(...n)}}function W0(i,t,e){for(let n=0;;++n)if(i[n]??=[],i[n].every(([s,r])=>e<=s+.01||t>=r-.01))return i[n].push([t,e]),n}function J1(i){let t=Z1(i);if(!Number.isFinite(t.left))return null;let e=(g,S)=>Math.abs(g.to[S]-g.from[S]),n=(i.dimensions??[]).filter(g=>g.axis!=="y").sort((g,S)=>e(g,0)-e(S,0)),s=(i.dimensions??[]).filter(g=>g.axis==="y").sort((g,S)=>e(g,1)-e(S,1)),r=[],o=[],a=n.map(g=>({d:g,lane:W0(r,Math.min(g.from[0],g.to[0]),Math.max(g.from[0],g.to[0]))})),l=s.map(g=>({d:g,lane:W0(o,Math.min(g.from[1],g.to[1]),Math.max(g.from[1],g.to[1]))})),c=[...i.notes??[]].sort((g,S)=>g.at[0]-S.at[0]),u=20+(o.length?o.length*(Ch+14)+16:0),d=(Rh-u-30)/(t.right-t.left||1),h=g=>u+(g-t.left)*d,f=g=>.6*G0*g.length+12,m=[],x=c.map(g=>{let S=f(g.text),F=Math.min(h(g.at[0])+10,Rh-S-4),C=m.findIndex(k=>k<=F);C<0&&(C=m.length<4?m.length:m.indexOf(Math.min(...m)));let L=Math.max(F,m[C]??0);return m[C]=L+S,{note:g,x:L,row:C,width:S}}),_=14+m.length*20+(m.length?14:0),p=g=>_+(t.top-g)*d,y=p(t.bottom),T=y+20+r.length*Ch+14,b=(g,S)=>g.map((F,C)=>`${C?"L":"M"}${ge(h(F[0]))} ${ge(p(F[1]))}`).join("")+(S?"Z":""),I=(g,S,F,C)=>{let L=Math.hypot(F-g,C-S),k=(F-g)/(L||1),z=(C-S)/(L||1),P=(V,H,B)=>`M${ge(V)} ${ge(H)}L${ge(V+B*8*k-2.4*z)} ${ge(H+B*8*z+2.4*k)}L${ge(V+B*8*k+2.4*z)} ${ge(H+B*8*z-2.4*k)}Z`;return L>20?P(g,S,1)+P(F,C,-1):P(g,S,-1)+P(F,C,1)},w=(g,S,F,C,L,k,z)=>{let P=(g+F)/2,V=(S+C)/2;return pt("g",{class:"dimension"},pt("path",{class:"thin",d:`${L}M${ge(g)} ${ge(S)}L${ge(F)} ${ge(C)}`}),pt("path",{class:"head",d:I(g,S,F,C)}),pt("text",{x:ge(P),y:ge(V-4),"text-anchor":"middle",...z?{transform:`rotate(-90 ${ge(P)} ${ge(V)})`}:{}},k))};return pt("svg",{class:"model-drawing",viewBox:`0 0 ${Rh} ${ge(T)}`,width:Rh,height:ge(T),role:"img","aria-label":`drawing of the model, ${i.name}`,"font-size":G0},(i.polygons??[]).filter(g=>g.role==="contact").map(g=>pt("path",{class:"outline contact",d:b(g.points,!0)})),(i.polygons??[]).filter(g=>g.role!=="contact").map(g=>pt("path",{class:"outline solid",d:b(g.points,!0)})),(i.cords??[]).map(g=>pt("path",{class:`drawn-cord ${g.kind}`,d:b(g.points,!1)})),(i.circles??[]).map(g=>{let S=h(g.at[0]),F=p(g.at[1]),C=Math.max(g.radius*d,1.5),L=C+6;return pt("g",{},pt("circle",{class:`round ${g.role}`,cx:ge(S),cy:ge(F),r:ge(C)}),pt("path",{class:"centre-line",d:`M${ge(S-L)} ${ge(F)}H${ge(S+L)}M${ge(S)} ${ge(F-L)}V${ge(F+L)}`}))}),a.map(({d:g,lane:S})=>{let F=y+24+S*Ch,C=g.from[0]<=g.to[0]?g.from:g.to,L=C===g.from?g.to:g.from,k=[C,L].map(z=>`M${ge(h(z[0]))} ${ge(p(z[1])+4)}V${ge(F+5)}`).join("");return w(h(C[0]),F,h(L[0]),F,k,g.text,!1)}),l.map(({d:g,lane:S})=>{let F=u-18-S*(Ch+14),C=g.from[1]<=g.to[1]?g.from:g.to,L=C===g.from?g.to:g.from,k=[C,L].map(z=>`M${ge(h(z[0])-4)} ${ge(p(z[1]))}H${ge(F-5)}`).join("");return w(F,p(C[1]),F,p(L[1]),k,g.text,!0)}),x.map(({note:g,x:S,row:F,width:C})=>{let L=16+F*20,k=h(g.at[0]),z=p(g.at[1]);return pt("g",{class:"note"},pt("path",{class:"thin",d:`M${ge(k)} ${ge(z)}L${ge(S)} ${ge(L+4)}H${ge(S+C-8)}`}),pt("circle",{class:"dot",cx:ge(k),cy:ge(z),r:2}),pt("text",{x:ge(S+2),y:ge(L)},g.text))}))}function $0(i,t){let{records:e}=t,n=e.length>1,s=d=>(d.drawing?.views??[]).map(h=>M("figure",{class:"drawing-figure"},M("div",{class:"drawing-box",tabindex:0,role:"group","aria-label":"drawing, can be scrolled sideways"},J1(h)),M("figcaption",{},"View: ",ut(h.name),", posture straight; mm"))),r=n&&e.every(d=>JSON.stringify(d.drawing)===JSON.stringify(e[0].drawing)),o=new Map;e.forEach((d,h)=>{for(let f of d.facts??[]){o.has(f.group)||o.set(f.group,new Map);let m=o.get(f.group);m.has(f.title)||m.set(f.title,new Array(e.length).fill("\u2013")),m.get(f.title)[h]=f.text}});let a=[...new Set(e.flatMap(d=>d.fingers??[]))],l=new Map;for(let[d,h]of o){let f=a.find(_=>d.includes(` ${_}.`)),m=f?d.replace(` ${f}.`," "):d,x=`${m}
${JSON.stringify([...h])}`;l.has(x)||l.set(x,{part:m,of:[],rows:h}),f&&l.get(x).of.push(f)}let c=({part:d,of:h})=>h.length?`${d} of ${h.join(", ")}`:d,u=[...l.values()].map(d=>[c(d),d.rows]).map(([d,h])=>M("div",{class:"fact-group"},M("h4",{class:"sub"},ut(d)),M("table",{class:"facts"},n&&M("thead",{},M("tr",{},M("th",{}),e.map(f=>M("th",{scope:"col"},f.label)))),M("tbody",{},[...h].map(([f,m])=>M("tr",{class:n&&new Set(m).size>1?"differs":""},M("th",{scope:"row"},ut(f)),m.map(x=>M("td",{class:"figure"},ut(x)))))))));!u.length&&!e.some(d=>d.drawing?.views?.length)||i.section("model","The model",r||!n?s(e[0]):e.map(d=>[kr(d),s(d)]),n&&r&&M("p",{class:"muted small"},"The drawing is the same for all records."),u.length>0&&M("div",{class:"fact-groups"},u))}function X0(i,t){let e=s=>M("ul",{},(s??[]).map(r=>M("li",{},ut(r)))),n=[...new Set(t.records.map(s=>s.demo_data).filter(Boolean))];i.section("validity","Cautions and limits of validity",M("div",{class:"columns"},M("div",{},M("h3",{},"Cautions"),e([...t.cautions??[],...n])),M("div",{},M("h3",{},"What is simplified"),e(t.validity))),t.records.length>0&&M("h3",{},"How the pictures were made"),t.records.length>0&&M("ul",{},t.records.map(s=>M("li",{},t.records.length>1?`${s.label}: `:"",`${s.rows?.kept??"?"} of ${s.rows?.of??"?"} rows of the record are drawn: `,ut(s.rows?.bound_text??"no bound stated"),". The numbers in the tables come from the whole record."))))}function q0(i,t){let{records:e}=t,n=e.length>1;if(!e.some(o=>o.summary?.length))return;let s=e.map(o=>{let a=new Map;for(let l of o.summary??[])a.set(l.group,[...a.get(l.group)??[],l]);return M("details",{},M("summary",{},n?`All values of ${o.label}`:`All ${o.summary?.length??0} values of the summary`),M("div",{class:"fact-groups"},[...a].map(([l,c])=>M("div",{class:"fact-group"},M("h4",{class:"sub"},ut(l)),M("table",{class:"facts"},M("tbody",{},c.map(u=>M("tr",{},M("th",{scope:"row"},ut(u.title)),M("td",{class:"figure"},ut(u.text))))))))))});n||(s[0].dataset.print="");let r=i.section("values","All values",s);n&&r.classList.add("only-screen")}function Y0(i,t){let e=(t.studies??[]).map(o=>({label:t.studies.length>1||t.records.length?o.file:"",inputs:o.inputs,of:"Study"})),n=[...t.records,...e],s=n.length>1,r=new Map;for(let o of n)for(let a of o.inputs?.files??[]){let l=`${a.path}
${a.text}`;r.has(l)||r.set(l,{...a,of:[]}),r.get(l).of.push(o.label)}i.section("inputs","All inputs",n.map(o=>M("p",{},s&&[M("span",{class:"record-letter"},o.label)," "],`${o.of??"Scenario"} `,M("code",{},ut(o.inputs?.scenario)),`, Sinewright ${o.inputs?.engine_version??"?"}, seed ${o.inputs?.seed??0}`,o.inputs?.overrides?.length?[", changed on the command line: ",o.inputs.overrides.map((a,l)=>[l?", ":"",M("code",{},ut(a))])]:"",".")),M("p",{class:"only-print small"},"The full texts of these files are in the HTML file and in the record:"),[...r.values()].map(o=>M("details",{class:"input-file"},M("summary",{},s?`${o.of.join(", ")}: `:"",M("code",{},ut(o.path)),M("span",{class:"muted"},`, ${o.text.split(`
`).length} lines`)),M("pre",{tabindex:0},M("code",{},o.text)))))}var Ph=700,No=165,Ih=52,Kd=20,Z0=6,J0=6,Lh=["","7 4","2 3","10 3 2 3"];function K0(i,t,e){if(!(t>i))return[i];let n=[1,2,2.5,5,10].map(r=>r*nr((t-i)/e)).find(r=>(t-i)/r<=e+1),s=[];for(let r=Math.ceil(i/n-1e-9)*n;r<=t+1e-9*n;r+=n)s.push(+r.toPrecision(10));return s}function j0({group:i,plot:t},e){let n=i.series.map((x,_)=>({...x,data:i.columns[_+1]})).filter((x,_)=>t.series[_+1].show),s=i.columns[0],{min:r,max:o}=t.scales.x,a=1/0,l=-1/0;for(let{data:x}of n)x.forEach((_,p)=>{_!=null&&s[p]>=r&&s[p]<=o&&(a=Math.min(a,_),l=Math.max(l,_))});if(!(l>=a))return null;l-a<1e-9&&(a-=1,l+=1);let c=.06*(l-a);a-=c,l+=c;let u=x=>Ih+(x-r)/(o-r||1)*(Ph-Ih-J0),d=x=>No-Kd-(x-a)/(l-a)*(No-Kd-Z0),h=K0(r,o,10),f=K0(a,l,5),m=n.map(x=>{let _="",p=!1;return x.data.forEach((y,T)=>{if(y===null){p=!1;return}y===void 0||s[T]<r||s[T]>o||(_+=`${p?"L":"M"}${u(s[T]).toFixed(1)} ${d(y).toFixed(1)}`,p=!0)}),pt("path",{d:_,stroke:Vr(x.colour),"stroke-dasharray":Lh[x.record%Lh.length],class:"curve"})});return M("figure",{class:"printed-curve"},M("figcaption",{},ut(i.title),`${i.unit?` [${i.unit}]`:""} over time [s]`),pt("svg",{viewBox:`0 0 ${Ph} ${No}`,width:Ph,height:No},pt("path",{class:"grid",d:h.map(x=>`M${u(x).toFixed(1)} ${Z0}V${No-Kd}`).join("")+f.map(x=>`M${Ih} ${d(x).toFixed(1)}H${Ph-J0}`).join("")}),h.map(x=>pt("text",{x:u(x).toFixed(1),y:No-6,"text-anchor":"middle"},String(x))),f.map(x=>pt("text",{x:Ih-6,y:(d(x)+4).toFixed(1),"text-anchor":"end"},String(x).replace("-","\u2212"))),m),M("p",{class:"printed-legend"},n.map(x=>M("span",{},pt("svg",{width:26,height:8,viewBox:"0 0 26 8"},pt("path",{class:"curve",d:"M0 4H26",stroke:Vr(x.colour),"stroke-dasharray":Lh[x.record%Lh.length]})),e?`${x.label} `:"",ut(x.name)))))}function Q0(i,t){let e=[];addEventListener("beforeprint",()=>{Xh(!0);for(let n of i.charts){let s=j0(n,t);s&&n.figure.before(s)}e=[...document.querySelectorAll("details[data-print]:not([open])")];for(let n of e)n.open=!0}),addEventListener("afterprint",()=>{for(let n of document.querySelectorAll(".printed-curve"))n.remove();for(let n of e)n.open=!1;Xh(!1)})}function K1(){let i=JSON.parse(document.getElementById("data").textContent),t=document.getElementById("review"),{records:e}=i,n=e.length>1;Rf(),t.append(Df(i),Nf(i));let s=If(t),r=e.length?j1(t,s,i):{charts:[]};C0(s,i),H0(s,i),e.length&&$0(s,i),X0(s,i),q0(s,i),Y0(s,i),t.querySelector(".caution").after(Ff(s.index)),t.append(M("footer",{class:"sheet-foot"},M("span",{},"Design predictions, not certification."),M("span",{},i.made_by??""))),Q0(r,n),t.dataset.ready=String(Math.round(performance.now()))}function j1(i,t,e){let{records:n}=e,s=n.length>1,r=n.map(Mf),o=Sf(r),a=r.reduce((x,_)=>(_.times.at(-1)??0)>(x.times.at(-1)??0)?_:x),l=bf(a.times.at(-1)??0,a.times);Of(t,e,l),Bf(t,e);let c=Qm(t,e,r,o,l),u=T0(n,l),d=n.map(x=>`${s?`${x.label}: `:""}${x.rows?.bound_text??""}`).join("; "),h=t.section("curves","Curves",M("p",{class:"lead controls"},"Click in a chart to show that instant, drag across it to look closer (all charts follow), switch curves on and off below it."," ",u.reset),u.box,M("p",{class:"small muted"},s&&"A drawn solid, B dashed. ","Drawn rows: ",M("bdi",{},d),"."));h.addEventListener("keydown",c.onKey);let f=M("div",{class:"with-transport"});c.section.before(f),f.append(c.section,h,c.controls),A0(t,e),R0(t,e,l);let m=/^#t=([0-9.]+)$/.exec(location.hash);return m&&l.seek(Number(m[1])),u}K1();})();
