(()=>{var y_="http://www.w3.org/2000/svg";function Sf(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1))if(n==="on")for(let[r,o]of Object.entries(s))i.addEventListener(r,o);else if(n==="style")for(let[r,o]of Object.entries(s))i.style.setProperty(r,o);else i.setAttribute(n,s===!0?"":String(s));for(let n of e.flat(1/0))n==null||n===!1||i.append(n instanceof Node?n:document.createTextNode(String(n)));return i}var S=(i,t,...e)=>Sf(document.createElement(i),t,e),ut=(i,t,...e)=>Sf(document.createElementNS(y_,i),t,e),ht=(i,t)=>S("bdi",t,i??"");function Cn(i,t){i.firstChild?.data!==t&&(i.textContent=t)}function $e(i,t,e){i.getAttribute(t)!==e&&i.setAttribute(t,e)}function qi(i){if(!i?.base64)return new Float32Array(0);let t=atob(i.base64),e=new Uint8Array(t.length);for(let n=0;n<t.length;++n)e[n]=t.charCodeAt(n);return new Float32Array(e.buffer,0,e.length>>2)}var ri=(i,t=3)=>Xe(i,t).replace(/(\.\d*?)0+(?=$|×)/,"$1").replace(/\.(?=$|×)/,""),v_={"-":"\u207B",0:"\u2070",1:"\xB9",2:"\xB2",3:"\xB3",4:"\u2074",5:"\u2075",6:"\u2076",7:"\u2077",8:"\u2078",9:"\u2079"};function Xe(i,t=4){if(i==null||Number.isNaN(i))return"\u2013";if(i===0)return"0";let e=Math.abs(i),n;if(e>=1e6||e<1e-4){let[s,r]=i.toExponential(t-1).split("e");n=`${s}\xD710${[...String(Number(r))].map(o=>v_[o]).join("")}`}else{let s=Math.max(0,t-1-Math.floor(Math.log10(e)));n=i.toFixed(Math.min(s,8))}return n.replace("-","\u2212")}var Dn=(i,t=1)=>`${i.toFixed(t>=1e3?1:t>=100?2:t>=20?3:4)} s`;function nr(i){let t=10**Math.floor(Math.log10(i)),e=i/t;return(e>=5?5:e>=2?2:1)*t}function bf(i,t,e){let n=i.length-2;if(n<0||!(t>i[0])){e.row=0,e.part=0;return}if(t>=i[n+1]){e.row=n,e.part=1;return}let s=Math.min(e.row,n);if(!(i[s]<=t&&t<i[s+1])){let o=0,a=n;for(;o<a;){let l=o+a+1>>1;i[l]<=t?o=l:a=l-1}s=o}e.row=s;let r=i[s+1]-i[s];e.part=r>0?(t-i[s])/r:0}function ir(i){let t=qi(i),e=i?.width??1;return{data:t,width:e,now:new Float64Array(e)}}function wf({data:i,width:t,now:e},{row:n,part:s}){let r=n*t,o=r+t;for(let a=0;a<t;++a){let l=i[r+a],c=o+a<i.length?i[o+a]:l;e[a]=l!==l?c:c!==c?l:l+s*(c-l)}}function M_(i,{row:t,part:e}){wf(i,{row:t,part:e});let{data:n,now:s}=i,r=t*7+3,o=r+7;if(o+3<n.length&&n[r]*n[o]+n[r+1]*n[o+1]+n[r+2]*n[o+2]+n[r+3]*n[o+3]<0)for(let c=0;c<4;++c)s[3+c]=(1-e)*n[r+c]-e*n[o+c];let a=Math.hypot(s[3],s[4],s[5],s[6])||1;for(let l=3;l<7;++l)s[l]/=a}function Ef(i){let t=i.scene??{},e=qi(i.time),n={row:0,part:0},s=(t.bodies??[]).map(c=>({...c,pose:ir(c.poses)})),r=(t.cords??[]).map(c=>({...c,points:ir(c.points),tension:ir(c.tension),slack:ir(c.slack)})),o=[...(t.contacts??[]).map(c=>({...c,kind:"contact"})),...(t.loads??[]).map(c=>({...c,kind:"load"}))].map(c=>({...c,point:ir(c.point),force:ir(c.force)})),a=(t.pulleys??[]).map(c=>({...c,angle:ir(c.angle)})),l=[...r.flatMap(c=>[c.points,c.tension,c.slack]),...o.flatMap(c=>[c.point,c.force]),...a.map(c=>c.angle)];return{times:e,fingers:i.fingers??[],crowded:(i.shown_as??"finger")!=="finger",bodies:s,cords:r,arrows:o,pulleys:a,pins:t.pins??[],guides:t.guides??[],box:t.box,at(c){bf(e,c,n);for(let h of s)M_(h.pose,n);for(let h of l)wf(h,n)}}}function Ai(i,t,e){let[n,s,r,o,a,l,c]=i,[h,d,u]=t,f=2*(a*u-l*d),p=2*(l*h-o*u),x=2*(o*d-a*h);return e[0]=n+h+c*f+a*x-l*p,e[1]=s+d+c*p+l*f-o*x,e[2]=r+u+c*x+o*p-a*f,e}function $h(i,t,e){return Ai(i,t,e),e[0]-=i[0],e[1]-=i[1],e[2]-=i[2],e}function Xh(i){if(i.kind==="hull")return i.points;if(i.kind==="box"){let t=i.rotation??[1,0,0,0,1,0,0,0,1];return[0,1,2,3,4,5,6,7].map(e=>{let n=[e&1?.5:-.5,e&2?.5:-.5,e&4?.5:-.5].map((s,r)=>s*i.size[r]);return[0,1,2].map(s=>i.center[s]+t[3*s]*n[0]+t[3*s+1]*n[1]+t[3*s+2]*n[2])})}if(i.kind==="cylinder"){let t=Math.hypot(...i.axis),e=i.axis.map(c=>c/t),n=Math.abs(e[0])<.8?[1,0,0]:[0,1,0],s=(c,h)=>[c[1]*h[2]-c[2]*h[1],c[2]*h[0]-c[0]*h[2],c[0]*h[1]-c[1]*h[0]],r=s(e,n),o=Math.hypot(...r);r=r.map(c=>c/o);let a=s(e,r),l=[];for(let c=0;c<48;++c)for(let h of[-.5,.5]){let d=2*Math.PI*c/48;l.push([0,1,2].map(u=>i.center[u]+h*i.length*e[u]+i.radius*(Math.cos(d)*r[u]+Math.sin(d)*a[u])))}return l}return null}var Tf=i=>i.kind==="capsule"?[[...i.from,i.radius],[...i.to,i.radius]]:i.kind==="sphere"?[[...i.center,i.radius]]:(Xh(i)??[]).map(t=>[...t,0]);function S_({point:i,force:t},e,n,s){for(let r=0;r<t.data.length;++r){let o=i.data[r]+t.data[r]*e*1.08;o<n[r%3]&&(n[r%3]=o),o>s[r%3]&&(s[r%3]=o)}}function b_(i,t){let e=[],n=i.times.length,s=Math.max(1,Math.floor(n/40));for(let r=0;r<n;r+=s){i.at(i.times[r]);for(let o of i.bodies)for(let a of o.shapes??[])for(let l of Tf(a))e.push([...Ai(o.pose.now,l,[0,0,0]),l[3]]);for(let o of i.pulleys){let a=i.bodies[o.body]?.pose.now;a&&e.push([...Ai(a,o.at,[0,0,0]),o.radius])}for(let{points:o}of i.cords)for(let a=0;a+2<o.now.length;a+=3)e.push([o.now[a],o.now[a+1],o.now[a+2],1]);for(let{point:o,force:a}of i.arrows)e.push([0,1,2].map(l=>o.now[l]+1.08*t*a.now[l]).concat(0))}return e.filter(r=>r.every(Number.isFinite))}function Af(i){let t=0,e=0,n=[1/0,1/0,1/0],s=[-1/0,-1/0,-1/0];for(let c of i){for(let h of c.cords)t=Math.max(t,h.most_tension||0);for(let h of c.arrows)e=Math.max(e,h.most||0);for(let h=0;h<3;++h)n[h]=Math.min(n[h],c.box?.low?.[h]??-50),s[h]=Math.max(s[h],c.box?.high?.[h]??50)}let r=Math.hypot(s[0]-n[0],s[1]-n[1]),o=e>0?nr(.26*r/e):1;for(let c of i)for(let h of c.arrows)S_(h,o,n,s);let a=[0,1,2,3,4,5,6,7].map(c=>[0,1,2].map(h=>c>>h&1?s[h]:n[h]).concat(0)),l=i.some(c=>c.fingers.length)?i.flatMap(c=>b_(c,o)):a;return{mostTension:t||1,mostForce:e,mmPerNewton:o,sampleForce:e>0?nr(e):0,low:n,high:s,centre:n.map((c,h)=>.5*(c+s[h])),within(c){let h={low:[1/0,1/0,1/0],high:[-1/0,-1/0,-1/0]};for(let[d,u,f,p]of l){let x=c([d,u,f]);for(let g=0;g<3;++g)h.low[g]=Math.min(h.low[g],x[g]-p),h.high[g]=Math.max(h.high[g],x[g]+p)}return h}}}function Rf(i,t){let e=[],n={time:0,duration:i,playing:!1,speed:1,loop:!1},s=0,r=()=>{for(let a of e)a(n)};function o(a){if(!n.playing)return;let l=Math.min((a-s)/1e3,.1);s=a;let c=n.time+l*n.speed;c>=i&&(n.loop?c=0:(c=i,n.playing=!1)),n.time=c,r(),n.playing&&requestAnimationFrame(o)}return{state:n,listen(a){e.push(a),a(n)},seek(a){n.playing=!1,n.time=Math.min(Math.max(Number(a)||0,0),i),r()},play(){n.playing||(n.time>=i&&(n.time=0),n.playing=!0,s=performance.now(),r(),requestAnimationFrame(o))},pause(){n.playing=!1,r()},toggle(){n.playing?this.pause():this.play()},setSpeed(a){n.speed=a,r()},setLoop(a){n.loop=a,r()},step(a){let l=a>0,c=n.time;for(let h=0;h<Math.abs(a);++h){let d=l?t.find(u=>u>c+1e-7):t.findLast(u=>u<c-1e-7);if(d===void 0)break;c=d}this.seek(c)}}}var Cf=[],Pf=!1,If=null,Lf=matchMedia("(prefers-color-scheme: dark)"),qh=()=>!Pf&&(If??(Lf.matches?"dark":"light"))==="dark";function Qa(){document.documentElement.dataset.theme=qh()?"dark":"light";for(let i of Cf)i()}function Df(){Lf.addEventListener("change",Qa),Qa()}var Yh=qh;function Nf(){If=qh()?"light":"dark",Qa()}function Zh(i){Pf=i,Qa()}function xi(i){Cf.push(i)}var sr=i=>getComputedStyle(document.documentElement).getPropertyValue(i).trim();function Uf(i){let t=[];return{index:t,section(e,n,...s){let r=t.length+1;t.push({id:e,title:n,number:r});let o=S("section",{id:e,"aria-labelledby":`${e}-title`},S("h2",{id:`${e}-title`},S("span",{class:"balloon","aria-hidden":"true"},r),S("span",{},n)),...s);return i.append(o),o}}}var Ff={good:["M2 8.5 L6.5 13 L14 3.5","open"],bad:["M3 3 L13 13 M13 3 L3 13","open"],unknown:["M3 8 L13 8","open"]};function oi(i){return Ff[i]?ut("svg",{class:`mark ${i}`,viewBox:"0 0 16 16",width:14,height:14,"aria-hidden":"true"},ut("path",{d:Ff[i][0]})):null}var Br=(i,t,e,n)=>S("button",{type:"button",class:"jump","data-jump":t,title:"show this instant",...n,on:{click:()=>{i.seek(t)}}},e);var Bn=(i,t,e)=>S("div",{class:"table-box",tabindex:0,role:"group","aria-label":e?.label??"table"},S("table",{class:e?.class},S("thead",{},S("tr",{},i.map(n=>S("th",{scope:"col"},n)))),S("tbody",{},t))),kr=i=>S("h3",{class:"record-heading"},S("span",{class:"record-letter"},i.label)," ",ht(i.name),S("span",{class:"muted"}," \xB7 ",ht(i.file)));var Ri=(i,t,e)=>S("div",{class:"cell",...e},S("span",{class:"cell-title"},i),S("span",{class:"cell-text"},t)),tl=i=>[...new Set(i.filter(Boolean))],Go=i=>tl(i).map((t,e)=>[e?", ":"",ht(t)]);function w_(i,t){return[S("div",{class:"title-main"},S("p",{class:"kind"},t.length>1?`Review of ${t.length} studies`:"Review of a study"),S("h1",{},ht(i.title)),Of()),S("div",{class:"cells"},Ri(t.length>1?"Studies":"Study",Go(t.map(e=>e.name))),Ri(t.length>1?"Tables":"Table",Go(t.map(e=>e.file))),Ri("Kind",Go(t.map(e=>e.kind))),Ri("Designs",t.map((e,n)=>[n?", ":"",String(e.designs)])),Ri("Computed by",ht(i.made_by)))]}var Of=()=>S("div",{class:"sheet-buttons controls"},S("button",{type:"button",id:"theme",on:{click:Nf}},"Light / dark"),S("button",{type:"button",on:{click:()=>print()}},"Print"));function Bf(i){let{records:t}=i;if(!t.length)return S("header",{class:"title-block"},w_(i,i.studies??[]));let e=t.length>1;return S("header",{class:"title-block"},S("div",{class:"title-main"},S("p",{class:"kind"},e?`Design review \xB7 ${t.length} records side by side`:"Design review"),S("h1",{},e?t.map((n,s)=>[s?S("span",{class:"against"}," against "):"",S("span",{class:"record-letter"},n.label)," ",ht(n.name)]):ht(i.title||t[0].name)),tl(t.map(n=>n.description)).map(n=>S("p",{class:"about"},ht(n))),Of()),S("div",{class:"cells"},Ri("Model",Go(t.map(n=>n.model))),Ri(e?"Records":"Record",e?t.map((n,s)=>[s?", ":"",`${n.label} `,ht(n.file)]):ht(t[0].file)),Ri("Outcome",e&&tl(t.map(n=>n.outcome)).length>1?t.map((n,s)=>[s?", ":"",`${n.label} `,ht(n.outcome)]):Go(t.map(n=>n.outcome))),Ri("Computed by",ht(i.made_by)),Ri("Dimensions","mm, unless stated"),Ri("Pictures","to scale, orthographic")))}function kf(i){let t=tl(i.records.map(e=>e.demo_data));return S("p",{class:"caution",role:"note"},S("strong",{},ht(i.cautions?.[0]??"The numbers are design predictions, not certification."))," ",t.map(e=>[ht(e)," "]),S("a",{href:"#validity"},"Cautions and limits of validity"))}var zf=i=>S("nav",{class:"contents","aria-label":"sections of this sheet"},i.map(({id:t,title:e,number:n})=>S("a",{href:`#${t}`},S("span",{class:"balloon small","aria-hidden":"true"},n),e)));var zr=120,rr=14;function el(i,{low:t=.5,high:e=20}={}){let n=l=>zr*Math.log(Math.min(Math.max(l,t),e)/t)/Math.log(e/t),s=n(1),r=n(i),o=i>=1,a=[.2,.5,2,5,10,20].filter(l=>l>t&&l<e);return ut("svg",{class:`log-bar ${o?"good":"bad"}`,viewBox:`0 0 ${zr} ${rr}`,width:zr,height:rr,"aria-hidden":"true"},ut("path",{class:"ticks",d:a.map(l=>`M${n(l).toFixed(1)} 0V${rr}`).join("")}),Number.isFinite(i)&&ut("rect",{class:"bar",x:Math.min(s,r).toFixed(1),y:3,width:Math.max(Math.abs(r-s),1).toFixed(1),height:rr-6}),i>e&&ut("path",{class:"beyond",d:`M${zr-5} 1L${zr} ${rr/2}L${zr-5} ${rr-1}`}),ut("path",{class:"one",d:`M${s.toFixed(1)} 0V${rr}`}))}var Vf={good:"within the limit",bad:"beyond the limit",unknown:"not known",plain:""};function E_(i,t){return S("div",{class:"five"},(i.headline??[]).map(e=>S("div",{class:`number ${e.state}`,"data-headline":e.id},S("h4",{},ht(e.title)),S("p",{class:"value"},S("span",{class:"figure"},ht(e.text)),e.unit&&e.state!=="unknown"?[" ",S("span",{class:"unit"},e.unit)]:""),S("p",{class:"state"},oi(e.state),Vf[e.state]?S("span",{},Vf[e.state]):null),S("p",{class:"threshold"},ht(e.threshold)),S("p",{class:"detail"},ht(e.detail)),S("p",{class:"sure"},S("span",{class:"cell-title"},"how sure"),ht(e.sure)),Number.isFinite(e.time)?Br(t,e.time,`at ${Dn(e.time,t.state.duration)}`):null)))}function T_(i,t){let e=i.requirements??[];return e.length?Bn(["","requirement","asked","found","margin (found against asked)","at"],e.map(n=>S("tr",{class:n.met?"met":"missed"},S("td",{class:"nowrap"},oi(n.met?"good":"bad"),n.met?" met":" not met"),S("th",{scope:"row"},ht(n.title)),S("td",{},ht(n.demand)),S("td",{class:"figure"},ht(n.value)),S("td",{class:"margin-cell"},S("div",{class:"bar-line"},el(n.margin,{low:.5,high:10}),S("span",{class:"figure"},ht(n.margin_text)))),S("td",{class:"nowrap"},Number.isFinite(n.time)?Br(t,n.time,Dn(n.time,t.state.duration)):"\u2013"))),{class:"requirements",label:"requirements"}):S("p",{class:"muted"},"The scenario states no requirements.")}function Hf(i,t,e){let{records:n}=t,s=n.length>1,r=n.flatMap(d=>d.requirements??[]),o=r.filter(d=>!d.met),a=r.length?o.length===0?`all ${r.length} requirements are met`:`${o.length} of ${r.length} requirements ${o.length===1?"is":"are"} not met`:"no requirement was stated",l=s&&n.every(d=>JSON.stringify(d.asked)===JSON.stringify(n[0].asked)),c=d=>S("ol",{class:`asked ${(d.asked??[]).length>6?"many":""}`},(d.asked??[]).map(u=>S("li",{},ht(u)))),h=[l||!s?[S("h4",{class:"sub first"},s?"What was asked, of each alike":"What was asked"),c(n[0])]:null,S("p",{class:`verdict ${o.length?"bad":r.length?"good":""}`},r.length?oi(o.length?"bad":"good"):null," ",a[0].toUpperCase()+a.slice(1)+".")];for(let d of n)s&&h.push(kr(d)),s&&!l&&h.push(S("h4",{class:"sub first"},"What was asked"),c(d)),h.push(E_(d,e),S("h4",{class:"sub"},"Requirements"),T_(d,e));return i.section("verdict","Verdict",h)}function Gf(i,t){let{records:e}=t;if(e.length<2||!t.comparison)return;let{values:n=[],inputs:s=[]}=t.comparison,r=n.filter(h=>h.notable),o=h=>S("span",{class:"record-letter"},e[h].label),a=r.length?S("ul",{class:"callouts"},r.slice(0,12).map(h=>S("li",{},S("span",{class:"callout-title"},ht(h.title)),S("span",{class:"callout-values"},h.texts.map((d,u)=>S("span",{class:"figure"},o(u)," ",ht(d)))),S("span",{class:"callout-change"},h.change.slice(1).map((d,u)=>[u?", ":"",ht(d)]))))):S("p",{},"No reported value differs notably."),l=Bn(["value",...e.map((h,d)=>o(d)),...e.slice(1).map(h=>`${h.label} against ${e[0].label}`)],n.map((h,d)=>[h.group&&h.group!==n[d-1]?.group&&S("tr",{class:"group-row"},S("th",{colspan:2*e.length,scope:"rowgroup"},ht(h.group))),S("tr",{class:h.notable?"differs":""},S("th",{scope:"row"},ht(h.title)),h.texts.map(u=>S("td",{class:"figure"},ht(u))),h.change.slice(1).map(u=>S("td",{class:"figure"},ht(u))))]),{class:"comparison",label:"all values compared"}),c=s.length?Bn(["what the inputs say",...e.map((h,d)=>o(d))],s.map(h=>S("tr",{},S("th",{scope:"row",class:"path"},ht(h.place)),h.texts.map(d=>S("td",{class:"figure"},ht(d))))),{label:"differences of the inputs"}):S("p",{class:"muted"},"The inputs do not differ.");i.section("differences",`What differs: ${e.map(h=>h.label).join(" against ")}`,S("h3",{},"Changed on purpose, in the inputs"),c,S("h3",{},"Notable in the results"),a,n.length>0&&S("details",{"data-print":!0},S("summary",{},`All ${n.length} values compared`),l))}var A_=[[.82,.6,.1],[.87,.4,.16],[.72,.21,.33],[.42,.13,.42],[.16,.08,.32]],R_=[[.4,.36,.72],[.64,.38,.74],[.88,.46,.58],[.97,.68,.42],[1,.92,.62]];function Wo(i,t){let e=Yh()?R_:A_,n=Math.min(Math.max(i||0,0),1)*(e.length-1),s=Math.min(Math.floor(n),e.length-2);for(let r=0;r<3;++r)t[r]=e[s][r]+(n-s)*(e[s+1][r]-e[s][r]);return t}function or(i){let[t,e,n]=Wo(i,[0,0,0]).map(s=>Math.round(255*s));return`rgb(${t},${e},${n})`}var ar=()=>`linear-gradient(to right, ${[0,.25,.5,.75,1].map(or).join(", ")})`,Wf=["#123f6d","#c4551b","#2a8c82","#8b2f6b","#b08a00","#5b6b7a","#3f7fd0","#7a4a1e"],C_=["#8ec5ff","#ff9a5c","#5fd3c3","#e18bd0","#e6cf5a","#b6c2cc","#4f8fe6","#d0a070"],Jh=Wf.length,Vr=i=>(Yh()?C_:Wf)[i%Jh];/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var $s={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Xs={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Mp=0,Tu=1,Sp=2;var Ta=1,bp=2,go=3,qs=0,Un=1,ts=2,mr=0,_o=1,Au=2,Ru=3,Cu=4,wp=5;var gr=100,Ep=101,Tp=102,Ap=103,Rp=104,Cp=200,Pp=201,Ip=202,Lp=203,Pu=204,Iu=205,Dp=206,Np=207,Fp=208,Up=209,Op=210,Bp=211,kp=212,zp=213,Vp=214,Pl=0,Il=1,Ll=2,so=3,Dl=4,Nl=5,ro=6,Fl=7,ac=0,Hp=1,Gp=2,es=0,Lu=1,Du=2,Nu=3,Fu=4,Uu=5,Ou=6,Bu=7;var ku=300,_r=301,xo=302,lc=303,cc=304,Ul=1e3,Zi=1001,Ol=1002,In=1003,Wp=1004;var Aa=1005;var Yn=1006,hc=1007;var ws=1008;var jn=1009,zu=1010,Vu=1011,yo=1012,uc=1013,Ni=1014,Mi=1015,Fi=1016,dc=1017,fc=1018,xr=1020,Hu=35902,Gu=35899,Wu=1021,$u=1022,Ui=1023,xs=1026,Es=1027,pc=1028,mc=1029,Ys=1030,gc=1031;var _c=1033,Ra=33776,Ca=33777,Pa=33778,Ia=33779,xc=35840,yc=35841,vc=35842,Mc=35843,Sc=36196,bc=37492,wc=37496,Ec=37488,Tc=37489,La=37490,Ac=37491,Rc=37808,Cc=37809,Pc=37810,Ic=37811,Lc=37812,Dc=37813,Nc=37814,Fc=37815,Uc=37816,Oc=37817,Bc=37818,kc=37819,zc=37820,Vc=37821,Hc=36492,Gc=36494,Wc=36495,$c=36283,Xc=36284,Da=36285,qc=36286;var ta=2300,Bl=2301,Rl=2302,yu=2303,vu=2400,Mu=2401,Su=2402;var $p=3200;var Yc=0,Xp=1,Ts="",qn="srgb",ea="srgb-linear",na="linear",Oe="srgb";var Cl=7680;var qp=519,Yp=512,Zp=513,Jp=514,Xu=515,Kp=516,jp=517,qu=518,Yu=519,Qp=35044;var Zu="300 es",vi=2e3,oo=2001;function P_(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function I_(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function ia(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function tm(){let i=ia("canvas");return i.style.display="block",i}var $f={},ao=null;function Ju(...i){let t="THREE."+i.shift();ao?ao("log",t,...i):console.log(t,...i)}function em(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function se(...i){i=em(i);let t="THREE."+i.shift();if(ao)ao("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function he(...i){i=em(i);let t="THREE."+i.shift();if(ao)ao("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function jo(...i){let t=i.join(" ");t in $f||($f[t]=!0,se(...i))}function nm(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var im={[Pl]:Pl,[Ll]:ro,[Dl]:Dl,[so]:Nl,[Il]:Il,[ro]:Ll,[Fl]:Fl,[Nl]:so},Di=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},kn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Xf=1234567,no=Math.PI/180,lo=180/Math.PI;function vo(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(kn[i&255]+kn[i>>8&255]+kn[i>>16&255]+kn[i>>24&255]+"-"+kn[t&255]+kn[t>>8&255]+"-"+kn[t>>16&15|64]+kn[t>>24&255]+"-"+kn[e&63|128]+kn[e>>8&255]+"-"+kn[e>>16&255]+kn[e>>24&255]+kn[n&255]+kn[n>>8&255]+kn[n>>16&255]+kn[n>>24&255]).toLowerCase()}function Ee(i,t,e){return Math.max(t,Math.min(e,i))}function Ku(i,t){return(i%t+t)%t}function L_(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function D_(i,t,e){return i!==t?(e-i)/(t-i):0}function Qo(i,t,e){return(1-e)*i+e*t}function N_(i,t,e,n){return Qo(i,t,1-Math.exp(-e*n))}function F_(i,t=1){return t-Math.abs(Ku(i,t*2)-t)}function U_(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function O_(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function B_(i,t){return i+Math.floor(Math.random()*(t-i+1))}function k_(i,t){return i+Math.random()*(t-i)}function z_(i){return i*(.5-Math.random())}function V_(i){i!==void 0&&(Xf=i);let t=Xf+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function H_(i){return i*no}function G_(i){return i*lo}function W_(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function $_(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function ju(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function X_(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),h=o((t+n)/2),d=r((t-n)/2),u=o((t-n)/2),f=r((n-t)/2),p=o((n-t)/2);switch(s){case"XYX":i.set(a*h,l*d,l*u,a*c);break;case"YZY":i.set(l*u,a*h,l*d,a*c);break;case"ZXZ":i.set(l*d,l*u,a*h,a*c);break;case"XZX":i.set(a*h,l*p,l*f,a*c);break;case"YXY":i.set(l*f,a*h,l*p,a*c);break;case"ZYZ":i.set(l*p,l*f,a*h,a*c);break;default:se("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function Qu(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function sm(i,t){if(t.constructor===Float32Array)return i;let e=Qu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function rm(i,t){if(t.constructor===Float32Array)return i;let e=Qu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var td={DEG2RAD:no,RAD2DEG:lo,generateUUID:vo,clamp:Ee,euclideanModulo:Ku,mapLinear:L_,inverseLerp:D_,lerp:Qo,damp:N_,pingpong:F_,smoothstep:U_,smootherstep:O_,randInt:B_,randFloat:k_,randFloatSpread:z_,seededRandom:V_,degToRad:H_,radToDeg:G_,isPowerOfTwo:W_,ceilPowerOfTwo:$_,floorPowerOfTwo:ju,setQuaternionFromProperEuler:X_,normalize:rm,denormalize:sm},le=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=Ee(this.x,t.x,e.x),this.y=Ee(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=Ee(this.x,t,e),this.y=Ee(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Ee(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(Ee(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},Nn=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],h=n[s+2],d=n[s+3],u=r[o+0],f=r[o+1],p=r[o+2],x=r[o+3];if(d!==x||l!==u||c!==f||h!==p){let g=l*u+c*f+h*p+d*x;g<0&&(u=-u,f=-f,p=-p,x=-x,g=-g);let _=1-a;if(g<.9995){let y=Math.acos(g),E=Math.sin(y);_=Math.sin(_*y)/E,a=Math.sin(a*y)/E,l=l*_+u*a,c=c*_+f*a,h=h*_+p*a,d=d*_+x*a}else{l=l*_+u*a,c=c*_+f*a,h=h*_+p*a,d=d*_+x*a;let y=1/Math.sqrt(l*l+c*c+h*h+d*d);l*=y,c*=y,h*=y,d*=y}}t[e]=l,t[e+1]=c,t[e+2]=h,t[e+3]=d}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],h=n[s+3],d=r[o],u=r[o+1],f=r[o+2],p=r[o+3];return t[e]=a*p+h*d+l*f-c*u,t[e+1]=l*p+h*u+c*d-a*f,t[e+2]=c*p+h*f+a*u-l*d,t[e+3]=h*p-a*d-l*u-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),h=a(s/2),d=a(r/2),u=l(n/2),f=l(s/2),p=l(r/2);switch(o){case"XYZ":this._x=u*h*d+c*f*p,this._y=c*f*d-u*h*p,this._z=c*h*p+u*f*d,this._w=c*h*d-u*f*p;break;case"YXZ":this._x=u*h*d+c*f*p,this._y=c*f*d-u*h*p,this._z=c*h*p-u*f*d,this._w=c*h*d+u*f*p;break;case"ZXY":this._x=u*h*d-c*f*p,this._y=c*f*d+u*h*p,this._z=c*h*p+u*f*d,this._w=c*h*d-u*f*p;break;case"ZYX":this._x=u*h*d-c*f*p,this._y=c*f*d+u*h*p,this._z=c*h*p-u*f*d,this._w=c*h*d+u*f*p;break;case"YZX":this._x=u*h*d+c*f*p,this._y=c*f*d+u*h*p,this._z=c*h*p-u*f*d,this._w=c*h*d-u*f*p;break;case"XZY":this._x=u*h*d-c*f*p,this._y=c*f*d-u*h*p,this._z=c*h*p+u*f*d,this._w=c*h*d+u*f*p;break;default:se("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],h=e[6],d=e[10],u=n+a+d;if(u>0){let f=.5/Math.sqrt(u+1);this._w=.25/f,this._x=(h-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>d){let f=2*Math.sqrt(1+n-a-d);this._w=(h-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>d){let f=2*Math.sqrt(1+a-n-d);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+h)/f}else{let f=2*Math.sqrt(1+d-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(Ee(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,h=e._w;return this._x=n*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-n*c,this._z=r*h+o*c+n*l-s*a,this._w=o*h-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,e=Math.sin(e*c)/h,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},J=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(qf.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(qf.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),h=2*(a*e-r*s),d=2*(r*n-o*e);return this.x=e+l*c+o*d-a*h,this.y=n+l*h+a*c-r*d,this.z=s+l*d+r*h-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=Ee(this.x,t.x,e.x),this.y=Ee(this.y,t.y,e.y),this.z=Ee(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=Ee(this.x,t,e),this.y=Ee(this.y,t,e),this.z=Ee(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Ee(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return Kh.copy(this).projectOnVector(t),this.sub(Kh)}reflect(t){return this.sub(Kh.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(Ee(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Kh=new J,qf=new Nn,ue=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let h=this.elements;return h[0]=t,h[1]=s,h[2]=a,h[3]=e,h[4]=r,h[5]=l,h[6]=n,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],h=n[4],d=n[7],u=n[2],f=n[5],p=n[8],x=s[0],g=s[3],_=s[6],y=s[1],E=s[4],M=s[7],P=s[2],w=s[5],m=s[8];return r[0]=o*x+a*y+l*P,r[3]=o*g+a*E+l*w,r[6]=o*_+a*M+l*m,r[1]=c*x+h*y+d*P,r[4]=c*g+h*E+d*w,r[7]=c*_+h*M+d*m,r[2]=u*x+f*y+p*P,r[5]=u*g+f*E+p*w,r[8]=u*_+f*M+p*m,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8];return e*o*h-e*a*c-n*r*h+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],d=h*o-a*c,u=a*l-h*r,f=c*r-o*l,p=e*d+n*u+s*f;if(p===0)return this.set(0,0,0,0,0,0,0,0,0);let x=1/p;return t[0]=d*x,t[1]=(s*c-h*n)*x,t[2]=(a*n-s*o)*x,t[3]=u*x,t[4]=(h*e-s*l)*x,t[5]=(s*r-a*e)*x,t[6]=f*x,t[7]=(n*l-c*e)*x,t[8]=(o*e-n*r)*x,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return jo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(jh.makeScale(t,e)),this}rotate(t){return jo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(jh.makeRotation(-t)),this}translate(t,e){return jo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(jh.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},jh=new ue,Yf=new ue().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Zf=new ue().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function q_(){let i={enabled:!0,workingColorSpace:ea,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Oe&&(s.r=_s(s.r),s.g=_s(s.g),s.b=_s(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Oe&&(s.r=io(s.r),s.g=io(s.g),s.b=io(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===Ts?na:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[ea]:{primaries:t,whitePoint:n,transfer:na,toXYZ:Yf,fromXYZ:Zf,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:qn},outputColorSpaceConfig:{drawingBufferColorSpace:qn}},[qn]:{primaries:t,whitePoint:n,transfer:Oe,toXYZ:Yf,fromXYZ:Zf,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:qn}}}),i}var Ce=q_();function _s(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function io(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Hr,kl=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Hr===void 0&&(Hr=ia("canvas")),Hr.width=t.width,Hr.height=t.height;let s=Hr.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Hr}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=ia("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=_s(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(_s(e[n]/255)*255):e[n]=_s(e[n]);return{data:e,width:t.width,height:t.height}}else return se("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},Y_=0,co=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:Y_++}),this.uuid=vo(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(Qh(s[o].image)):r.push(Qh(s[o]))}else r=Qh(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function Qh(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?kl.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(se("Texture: Unable to serialize Texture."),{})}var Z_=0,tu=new J,Kn=class i extends Di{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Zi,s=Zi,r=Yn,o=ws,a=Ui,l=jn,c=i.DEFAULT_ANISOTROPY,h=Ts){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:Z_++}),this.uuid=vo(),this.name="",this.source=new co(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new le(0,0),this.repeat=new le(1,1),this.center=new le(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new ue,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(tu).x}get height(){return this.source.getSize(tu).y}get depth(){return this.source.getSize(tu).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){se(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){se(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==ku)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Ul:t.x=t.x-Math.floor(t.x);break;case Zi:t.x=t.x<0?0:1;break;case Ol:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Ul:t.y=t.y-Math.floor(t.y);break;case Zi:t.y=t.y<0?0:1;break;case Ol:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Kn.DEFAULT_IMAGE=null;Kn.DEFAULT_MAPPING=ku;Kn.DEFAULT_ANISOTROPY=1;var en=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],h=l[4],d=l[8],u=l[1],f=l[5],p=l[9],x=l[2],g=l[6],_=l[10];if(Math.abs(h-u)<.01&&Math.abs(d-x)<.01&&Math.abs(p-g)<.01){if(Math.abs(h+u)<.1&&Math.abs(d+x)<.1&&Math.abs(p+g)<.1&&Math.abs(c+f+_-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let E=(c+1)/2,M=(f+1)/2,P=(_+1)/2,w=(h+u)/4,m=(d+x)/4,b=(p+g)/4;return E>M&&E>P?E<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(E),s=w/n,r=m/n):M>P?M<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(M),n=w/s,r=b/s):P<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(P),n=m/r,s=b/r),this.set(n,s,r,e),this}let y=Math.sqrt((g-p)*(g-p)+(d-x)*(d-x)+(u-h)*(u-h));return Math.abs(y)<.001&&(y=1),this.x=(g-p)/y,this.y=(d-x)/y,this.z=(u-h)/y,this.w=Math.acos((c+f+_-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=Ee(this.x,t.x,e.x),this.y=Ee(this.y,t.y,e.y),this.z=Ee(this.z,t.z,e.z),this.w=Ee(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=Ee(this.x,t,e),this.y=Ee(this.y,t,e),this.z=Ee(this.z,t,e),this.w=Ee(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Ee(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},zl=class extends Di{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Yn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new en(0,0,t,e),this.scissorTest=!1,this.viewport=new en(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Kn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Yn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new co(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},ui=class extends zl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},sa=class extends Kn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=In,this.minFilter=In,this.wrapR=Zi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Vl=class extends Kn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=In,this.minFilter=In,this.wrapR=Zi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var Ne=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,h,d,u,f,p,x,g){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,h,d,u,f,p,x,g)}set(t,e,n,s,r,o,a,l,c,h,d,u,f,p,x,g){let _=this.elements;return _[0]=t,_[4]=e,_[8]=n,_[12]=s,_[1]=r,_[5]=o,_[9]=a,_[13]=l,_[2]=c,_[6]=h,_[10]=d,_[14]=u,_[3]=f,_[7]=p,_[11]=x,_[15]=g,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Gr.setFromMatrixColumn(t,0).length(),r=1/Gr.setFromMatrixColumn(t,1).length(),o=1/Gr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),d=Math.sin(r);if(t.order==="XYZ"){let u=o*h,f=o*d,p=a*h,x=a*d;e[0]=l*h,e[4]=-l*d,e[8]=c,e[1]=f+p*c,e[5]=u-x*c,e[9]=-a*l,e[2]=x-u*c,e[6]=p+f*c,e[10]=o*l}else if(t.order==="YXZ"){let u=l*h,f=l*d,p=c*h,x=c*d;e[0]=u+x*a,e[4]=p*a-f,e[8]=o*c,e[1]=o*d,e[5]=o*h,e[9]=-a,e[2]=f*a-p,e[6]=x+u*a,e[10]=o*l}else if(t.order==="ZXY"){let u=l*h,f=l*d,p=c*h,x=c*d;e[0]=u-x*a,e[4]=-o*d,e[8]=p+f*a,e[1]=f+p*a,e[5]=o*h,e[9]=x-u*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let u=o*h,f=o*d,p=a*h,x=a*d;e[0]=l*h,e[4]=p*c-f,e[8]=u*c+x,e[1]=l*d,e[5]=x*c+u,e[9]=f*c-p,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let u=o*l,f=o*c,p=a*l,x=a*c;e[0]=l*h,e[4]=x-u*d,e[8]=p*d+f,e[1]=d,e[5]=o*h,e[9]=-a*h,e[2]=-c*h,e[6]=f*d+p,e[10]=u-x*d}else if(t.order==="XZY"){let u=o*l,f=o*c,p=a*l,x=a*c;e[0]=l*h,e[4]=-d,e[8]=c*h,e[1]=u*d+x,e[5]=o*h,e[9]=f*d-p,e[2]=p*d-f,e[6]=a*h,e[10]=x*d+u}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(J_,t,K_)}lookAt(t,e,n){let s=this.elements;return ai.subVectors(t,e),ai.lengthSq()===0&&(ai.z=1),ai.normalize(),Fs.crossVectors(n,ai),Fs.lengthSq()===0&&(Math.abs(n.z)===1?ai.x+=1e-4:ai.z+=1e-4,ai.normalize(),Fs.crossVectors(n,ai)),Fs.normalize(),nl.crossVectors(ai,Fs),s[0]=Fs.x,s[4]=nl.x,s[8]=ai.x,s[1]=Fs.y,s[5]=nl.y,s[9]=ai.y,s[2]=Fs.z,s[6]=nl.z,s[10]=ai.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],h=n[1],d=n[5],u=n[9],f=n[13],p=n[2],x=n[6],g=n[10],_=n[14],y=n[3],E=n[7],M=n[11],P=n[15],w=s[0],m=s[4],b=s[8],U=s[12],C=s[1],L=s[5],k=s[9],z=s[13],I=s[2],V=s[6],H=s[10],B=s[14],Y=s[3],X=s[7],K=s[11],$=s[15];return r[0]=o*w+a*C+l*I+c*Y,r[4]=o*m+a*L+l*V+c*X,r[8]=o*b+a*k+l*H+c*K,r[12]=o*U+a*z+l*B+c*$,r[1]=h*w+d*C+u*I+f*Y,r[5]=h*m+d*L+u*V+f*X,r[9]=h*b+d*k+u*H+f*K,r[13]=h*U+d*z+u*B+f*$,r[2]=p*w+x*C+g*I+_*Y,r[6]=p*m+x*L+g*V+_*X,r[10]=p*b+x*k+g*H+_*K,r[14]=p*U+x*z+g*B+_*$,r[3]=y*w+E*C+M*I+P*Y,r[7]=y*m+E*L+M*V+P*X,r[11]=y*b+E*k+M*H+P*K,r[15]=y*U+E*z+M*B+P*$,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],h=t[2],d=t[6],u=t[10],f=t[14],p=t[3],x=t[7],g=t[11],_=t[15],y=l*f-c*u,E=a*f-c*d,M=a*u-l*d,P=o*f-c*h,w=o*u-l*h,m=o*d-a*h;return e*(x*y-g*E+_*M)-n*(p*y-g*P+_*w)+s*(p*E-x*P+_*m)-r*(p*M-x*w+g*m)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],h=t[10];return e*(o*h-a*c)-n*(r*h-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],d=t[9],u=t[10],f=t[11],p=t[12],x=t[13],g=t[14],_=t[15],y=e*a-n*o,E=e*l-s*o,M=e*c-r*o,P=n*l-s*a,w=n*c-r*a,m=s*c-r*l,b=h*x-d*p,U=h*g-u*p,C=h*_-f*p,L=d*g-u*x,k=d*_-f*x,z=u*_-f*g,I=y*z-E*k+M*L+P*C-w*U+m*b;if(I===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let V=1/I;return t[0]=(a*z-l*k+c*L)*V,t[1]=(s*k-n*z-r*L)*V,t[2]=(x*m-g*w+_*P)*V,t[3]=(u*w-d*m-f*P)*V,t[4]=(l*C-o*z-c*U)*V,t[5]=(e*z-s*C+r*U)*V,t[6]=(g*M-p*m-_*E)*V,t[7]=(h*m-u*M+f*E)*V,t[8]=(o*k-a*C+c*b)*V,t[9]=(n*C-e*k-r*b)*V,t[10]=(p*w-x*M+_*y)*V,t[11]=(d*M-h*w-f*y)*V,t[12]=(a*U-o*L-l*b)*V,t[13]=(e*L-n*U+s*b)*V,t[14]=(x*E-p*P-g*y)*V,t[15]=(h*P-d*E+u*y)*V,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,h=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+n,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,h=o+o,d=a+a,u=r*c,f=r*h,p=r*d,x=o*h,g=o*d,_=a*d,y=l*c,E=l*h,M=l*d,P=n.x,w=n.y,m=n.z;return s[0]=(1-(x+_))*P,s[1]=(f+M)*P,s[2]=(p-E)*P,s[3]=0,s[4]=(f-M)*w,s[5]=(1-(u+_))*w,s[6]=(g+y)*w,s[7]=0,s[8]=(p+E)*m,s[9]=(g-y)*m,s[10]=(1-(u+x))*m,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Gr.set(s[0],s[1],s[2]).length(),a=Gr.set(s[4],s[5],s[6]).length(),l=Gr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ci.copy(this);let c=1/o,h=1/a,d=1/l;return Ci.elements[0]*=c,Ci.elements[1]*=c,Ci.elements[2]*=c,Ci.elements[4]*=h,Ci.elements[5]*=h,Ci.elements[6]*=h,Ci.elements[8]*=d,Ci.elements[9]*=d,Ci.elements[10]*=d,e.setFromRotationMatrix(Ci),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=vi,l=!1){let c=this.elements,h=2*r/(e-t),d=2*r/(n-s),u=(e+t)/(e-t),f=(n+s)/(n-s),p,x;if(l)p=r/(o-r),x=o*r/(o-r);else if(a===vi)p=-(o+r)/(o-r),x=-2*o*r/(o-r);else if(a===oo)p=-o/(o-r),x=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=u,c[12]=0,c[1]=0,c[5]=d,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=p,c[14]=x,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=vi,l=!1){let c=this.elements,h=2/(e-t),d=2/(n-s),u=-(e+t)/(e-t),f=-(n+s)/(n-s),p,x;if(l)p=1/(o-r),x=o/(o-r);else if(a===vi)p=-2/(o-r),x=-(o+r)/(o-r);else if(a===oo)p=-1/(o-r),x=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=u,c[1]=0,c[5]=d,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=p,c[14]=x,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Gr=new J,Ci=new Ne,J_=new J(0,0,0),K_=new J(1,1,1),Fs=new J,nl=new J,ai=new J,Jf=new Ne,Kf=new Nn,ys=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],d=s[2],u=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(Ee(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(u,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Ee(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-d,r),this._z=0);break;case"ZXY":this._x=Math.asin(Ee(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(-d,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-Ee(d,-1,1)),Math.abs(d)<.9999999?(this._x=Math.atan2(u,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(Ee(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-d,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-Ee(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(u,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:se("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return Jf.makeRotationFromQuaternion(t),this.setFromRotationMatrix(Jf,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return Kf.setFromEuler(this),this.setFromQuaternion(Kf,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ys.DEFAULT_ORDER="XYZ";var ra=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},j_=0,jf=new J,Wr=new Nn,us=new Ne,il=new J,$o=new J,Q_=new J,tx=new Nn,Qf=new J(1,0,0),tp=new J(0,1,0),ep=new J(0,0,1),np={type:"added"},ex={type:"removed"},$r={type:"childadded",child:null},eu={type:"childremoved",child:null},Fn=class i extends Di{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:j_++}),this.uuid=vo(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new J,e=new ys,n=new Nn,s=new J(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Ne},normalMatrix:{value:new ue}}),this.matrix=new Ne,this.matrixWorld=new Ne,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new ra,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Wr.setFromAxisAngle(t,e),this.quaternion.multiply(Wr),this}rotateOnWorldAxis(t,e){return Wr.setFromAxisAngle(t,e),this.quaternion.premultiply(Wr),this}rotateX(t){return this.rotateOnAxis(Qf,t)}rotateY(t){return this.rotateOnAxis(tp,t)}rotateZ(t){return this.rotateOnAxis(ep,t)}translateOnAxis(t,e){return jf.copy(t).applyQuaternion(this.quaternion),this.position.add(jf.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(Qf,t)}translateY(t){return this.translateOnAxis(tp,t)}translateZ(t){return this.translateOnAxis(ep,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(us.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?il.copy(t):il.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),$o.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?us.lookAt($o,il,this.up):us.lookAt(il,$o,this.up),this.quaternion.setFromRotationMatrix(us),s&&(us.extractRotation(s.matrixWorld),Wr.setFromRotationMatrix(us),this.quaternion.premultiply(Wr.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(he("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(np),$r.child=t,this.dispatchEvent($r),$r.child=null):he("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(ex),eu.child=t,this.dispatchEvent(eu),eu.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),us.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),us.multiply(t.parent.matrixWorld)),t.applyMatrix4(us),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(np),$r.child=t,this.dispatchEvent($r),$r.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose($o,t,Q_),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose($o,tx,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let d=l[c];r(t.shapes,d)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),h=o(t.images),d=o(t.shapes),u=o(t.skeletons),f=o(t.animations),p=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),d.length>0&&(n.shapes=d),u.length>0&&(n.skeletons=u),f.length>0&&(n.animations=f),p.length>0&&(n.nodes=p)}return n.object=s,n;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Fn.DEFAULT_UP=new J(0,1,0);Fn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Fn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Ji=class extends Fn{constructor(){super(),this.isGroup=!0,this.type="Group"}},nx={type:"move"},ho=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Ji,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Ji,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new J,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new J),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Ji,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new J,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new J,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let x of t.hand.values()){let g=e.getJointPose(x,n),_=this._getHandJoint(c,x);g!==null&&(_.matrix.fromArray(g.transform.matrix),_.matrix.decompose(_.position,_.quaternion,_.scale),_.matrixWorldNeedsUpdate=!0,_.jointRadius=g.radius),_.visible=g!==null}let h=c.joints["index-finger-tip"],d=c.joints["thumb-tip"],u=h.position.distanceTo(d.position),f=.02,p=.005;c.inputState.pinching&&u>f+p?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&u<=f-p&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(nx)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Ji;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},om={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Us={h:0,s:0,l:0},sl={h:0,s:0,l:0};function nu(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var ge=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=qn){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,Ce.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=Ce.workingColorSpace){return this.r=t,this.g=e,this.b=n,Ce.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=Ce.workingColorSpace){if(t=Ku(t,1),e=Ee(e,0,1),n=Ee(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=nu(o,r,t+1/3),this.g=nu(o,r,t),this.b=nu(o,r,t-1/3)}return Ce.colorSpaceToWorking(this,s),this}setStyle(t,e=qn){function n(r){r!==void 0&&parseFloat(r)<1&&se("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:se("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);se("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=qn){let n=om[t.toLowerCase()];return n!==void 0?this.setHex(n,e):se("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=_s(t.r),this.g=_s(t.g),this.b=_s(t.b),this}copyLinearToSRGB(t){return this.r=io(t.r),this.g=io(t.g),this.b=io(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=qn){return Ce.workingToColorSpace(zn.copy(this),t),Math.round(Ee(zn.r*255,0,255))*65536+Math.round(Ee(zn.g*255,0,255))*256+Math.round(Ee(zn.b*255,0,255))}getHexString(t=qn){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=Ce.workingColorSpace){Ce.workingToColorSpace(zn.copy(this),e);let n=zn.r,s=zn.g,r=zn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let d=o-a;switch(c=h<=.5?d/(o+a):d/(2-o-a),o){case n:l=(s-r)/d+(s<r?6:0);break;case s:l=(r-n)/d+2;break;case r:l=(n-s)/d+4;break}l/=6}return t.h=l,t.s=c,t.l=h,t}getRGB(t,e=Ce.workingColorSpace){return Ce.workingToColorSpace(zn.copy(this),e),t.r=zn.r,t.g=zn.g,t.b=zn.b,t}getStyle(t=qn){Ce.workingToColorSpace(zn.copy(this),t);let e=zn.r,n=zn.g,s=zn.b;return t!==qn?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Us),this.setHSL(Us.h+t,Us.s+e,Us.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Us),t.getHSL(sl);let n=Qo(Us.h,sl.h,e),s=Qo(Us.s,sl.s,e),r=Qo(Us.l,sl.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},zn=new ge;ge.NAMES=om;var oa=class extends Fn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ys,this.environmentIntensity=1,this.environmentRotation=new ys,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Pi=new J,ds=new J,iu=new J,fs=new J,Xr=new J,qr=new J,ip=new J,su=new J,ru=new J,ou=new J,au=new en,lu=new en,cu=new en,gs=class i{constructor(t=new J,e=new J,n=new J){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Pi.subVectors(t,e),s.cross(Pi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Pi.subVectors(s,e),ds.subVectors(n,e),iu.subVectors(t,e);let o=Pi.dot(Pi),a=Pi.dot(ds),l=Pi.dot(iu),c=ds.dot(ds),h=ds.dot(iu),d=o*c-a*a;if(d===0)return r.set(0,0,0),null;let u=1/d,f=(c*l-a*h)*u,p=(o*h-a*l)*u;return r.set(1-f-p,p,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,fs)===null?!1:fs.x>=0&&fs.y>=0&&fs.x+fs.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,fs)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,fs.x),l.addScaledVector(o,fs.y),l.addScaledVector(a,fs.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return au.setScalar(0),lu.setScalar(0),cu.setScalar(0),au.fromBufferAttribute(t,e),lu.fromBufferAttribute(t,n),cu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(au,r.x),o.addScaledVector(lu,r.y),o.addScaledVector(cu,r.z),o}static isFrontFacing(t,e,n,s){return Pi.subVectors(n,e),ds.subVectors(t,e),Pi.cross(ds).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Pi.subVectors(this.c,this.b),ds.subVectors(this.a,this.b),Pi.cross(ds).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Xr.subVectors(s,n),qr.subVectors(r,n),su.subVectors(t,n);let l=Xr.dot(su),c=qr.dot(su);if(l<=0&&c<=0)return e.copy(n);ru.subVectors(t,s);let h=Xr.dot(ru),d=qr.dot(ru);if(h>=0&&d<=h)return e.copy(s);let u=l*d-h*c;if(u<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),e.copy(n).addScaledVector(Xr,o);ou.subVectors(t,r);let f=Xr.dot(ou),p=qr.dot(ou);if(p>=0&&f<=p)return e.copy(r);let x=f*c-l*p;if(x<=0&&c>=0&&p<=0)return a=c/(c-p),e.copy(n).addScaledVector(qr,a);let g=h*p-f*d;if(g<=0&&d-h>=0&&f-p>=0)return ip.subVectors(r,s),a=(d-h)/(d-h+(f-p)),e.copy(s).addScaledVector(ip,a);let _=1/(g+x+u);return o=x*_,a=u*_,e.copy(n).addScaledVector(Xr,o).addScaledVector(qr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Ki=class{constructor(t=new J(1/0,1/0,1/0),e=new J(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ii.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ii.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ii.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ii):Ii.fromBufferAttribute(r,o),Ii.applyMatrix4(t.matrixWorld),this.expandByPoint(Ii);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),rl.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),rl.copy(n.boundingBox)),rl.applyMatrix4(t.matrixWorld),this.union(rl)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ii),Ii.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Xo),ol.subVectors(this.max,Xo),Yr.subVectors(t.a,Xo),Zr.subVectors(t.b,Xo),Jr.subVectors(t.c,Xo),Os.subVectors(Zr,Yr),Bs.subVectors(Jr,Zr),lr.subVectors(Yr,Jr);let e=[0,-Os.z,Os.y,0,-Bs.z,Bs.y,0,-lr.z,lr.y,Os.z,0,-Os.x,Bs.z,0,-Bs.x,lr.z,0,-lr.x,-Os.y,Os.x,0,-Bs.y,Bs.x,0,-lr.y,lr.x,0];return!hu(e,Yr,Zr,Jr,ol)||(e=[1,0,0,0,1,0,0,0,1],!hu(e,Yr,Zr,Jr,ol))?!1:(al.crossVectors(Os,Bs),e=[al.x,al.y,al.z],hu(e,Yr,Zr,Jr,ol))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ii).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ii).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(ps[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),ps[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),ps[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),ps[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),ps[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),ps[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),ps[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),ps[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(ps),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},ps=[new J,new J,new J,new J,new J,new J,new J,new J],Ii=new J,rl=new Ki,Yr=new J,Zr=new J,Jr=new J,Os=new J,Bs=new J,lr=new J,Xo=new J,ol=new J,al=new J,cr=new J;function hu(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){cr.fromArray(i,r);let a=s.x*Math.abs(cr.x)+s.y*Math.abs(cr.y)+s.z*Math.abs(cr.z),l=t.dot(cr),c=e.dot(cr),h=n.dot(cr);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var mn=new J,ll=new le,ix=0,Li=class extends Di{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:ix++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=Qp,this.updateRanges=[],this.gpuType=Mi,this.version=0,this._normalizationScale=t!==void 0?Qu(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)ll.fromBufferAttribute(this,e),ll.applyMatrix3(t),this.setXY(e,ll.x,ll.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyMatrix3(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyMatrix4(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.applyNormalMatrix(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)mn.fromBufferAttribute(this,e),mn.transformDirection(t),this.setXYZ(e,mn.x,mn.y,mn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):sm(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):rm(t,this.array)}};var aa=class extends Li{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var la=class extends Li{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var qe=class extends Li{constructor(t,e,n){super(new Float32Array(t),e,n)}},sx=new Ki,qo=new J,uu=new J,vs=class{constructor(t=new J,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):sx.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;qo.subVectors(t,this.center);let e=qo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(qo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(uu.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(qo.copy(t.center).add(uu)),this.expandByPoint(qo.copy(t.center).sub(uu))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},rx=0,yi=new Ne,du=new Fn,Kr=new J,li=new Ki,Yo=new Ki,Pn=new J,Zn=class i extends Di{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:rx++}),this.uuid=vo(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(P_(t)?la:aa)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new ue().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return yi.makeRotationFromQuaternion(t),this.applyMatrix4(yi),this}rotateX(t){return yi.makeRotationX(t),this.applyMatrix4(yi),this}rotateY(t){return yi.makeRotationY(t),this.applyMatrix4(yi),this}rotateZ(t){return yi.makeRotationZ(t),this.applyMatrix4(yi),this}translate(t,e,n){return yi.makeTranslation(t,e,n),this.applyMatrix4(yi),this}scale(t,e,n){return yi.makeScale(t,e,n),this.applyMatrix4(yi),this}lookAt(t){return du.lookAt(t),du.updateMatrix(),this.applyMatrix4(du.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Kr).negate(),this.translate(Kr.x,Kr.y,Kr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new qe(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&se("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Ki);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){he("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new J(-1/0,-1/0,-1/0),new J(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];li.setFromBufferAttribute(r),this.morphTargetsRelative?(Pn.addVectors(this.boundingBox.min,li.min),this.boundingBox.expandByPoint(Pn),Pn.addVectors(this.boundingBox.max,li.max),this.boundingBox.expandByPoint(Pn)):(this.boundingBox.expandByPoint(li.min),this.boundingBox.expandByPoint(li.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&he('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new vs);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){he("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new J,1/0);return}if(t){let n=this.boundingSphere.center;if(li.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Yo.setFromBufferAttribute(a),this.morphTargetsRelative?(Pn.addVectors(li.min,Yo.min),li.expandByPoint(Pn),Pn.addVectors(li.max,Yo.max),li.expandByPoint(Pn)):(li.expandByPoint(Yo.min),li.expandByPoint(Yo.max))}li.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Pn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Pn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)Pn.fromBufferAttribute(a,c),l&&(Kr.fromBufferAttribute(t,c),Pn.add(Kr)),s=Math.max(s,n.distanceToSquared(Pn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&he('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){he("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Li(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let U=0;U<n.count;U++)a[U]=new J,l[U]=new J;let h=new J,d=new J,u=new J,f=new le,p=new le,x=new le,g=new J,_=new J;function y(U,C,L){c[U]=c[C]=c[L]=1,h.fromBufferAttribute(n,U),d.fromBufferAttribute(n,C),u.fromBufferAttribute(n,L),f.fromBufferAttribute(r,U),p.fromBufferAttribute(r,C),x.fromBufferAttribute(r,L),d.sub(h),u.sub(h),p.sub(f),x.sub(f);let k=1/(p.x*x.y-x.x*p.y);isFinite(k)&&(g.copy(d).multiplyScalar(x.y).addScaledVector(u,-p.y).multiplyScalar(k),_.copy(u).multiplyScalar(p.x).addScaledVector(d,-x.x).multiplyScalar(k),a[U].add(g),a[C].add(g),a[L].add(g),l[U].add(_),l[C].add(_),l[L].add(_))}let E=this.groups;E.length===0&&(E=[{start:0,count:t.count}]);for(let U=0,C=E.length;U<C;++U){let L=E[U],k=L.start,z=L.count;for(let I=k,V=k+z;I<V;I+=3)y(t.getX(I+0),t.getX(I+1),t.getX(I+2))}let M=new J,P=new J,w=new J,m=new J;function b(U){w.fromBufferAttribute(s,U),m.copy(w);let C=a[U];M.copy(C),M.sub(w.multiplyScalar(w.dot(C))).normalize(),P.crossVectors(m,C);let k=P.dot(l[U])<0?-1:1;o.setXYZW(U,M.x,M.y,M.z,k)}for(let U=0,C=n.count;U<C;++U)c[U]&&b(U);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Li(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let u=0,f=n.count;u<f;u++)n.setXYZ(u,0,0,0);let s=new J,r=new J,o=new J,a=new J,l=new J,c=new J,h=new J,d=new J;if(t)for(let u=0,f=t.count;u<f;u+=3){let p=t.getX(u+0),x=t.getX(u+1),g=t.getX(u+2);s.fromBufferAttribute(e,p),r.fromBufferAttribute(e,x),o.fromBufferAttribute(e,g),h.subVectors(o,r),d.subVectors(s,r),h.cross(d),a.fromBufferAttribute(n,p),l.fromBufferAttribute(n,x),c.fromBufferAttribute(n,g),a.add(h),l.add(h),c.add(h),n.setXYZ(p,a.x,a.y,a.z),n.setXYZ(x,l.x,l.y,l.z),n.setXYZ(g,c.x,c.y,c.z)}else for(let u=0,f=e.count;u<f;u+=3)s.fromBufferAttribute(e,u+0),r.fromBufferAttribute(e,u+1),o.fromBufferAttribute(e,u+2),h.subVectors(o,r),d.subVectors(s,r),h.cross(d),n.setXYZ(u+0,h.x,h.y,h.z),n.setXYZ(u+1,h.x,h.y,h.z),n.setXYZ(u+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Pn.fromBufferAttribute(t,e),Pn.normalize(),t.setXYZ(e,Pn.x,Pn.y,Pn.z)}toNonIndexed(){function t(a,l){let c=a.array,h=a.itemSize,d=a.normalized,u=new c.constructor(l.length*h),f=0,p=0;for(let x=0,g=l.length;x<g;x++){a.isInterleavedBufferAttribute?f=l[x]*a.data.stride+a.offset:f=l[x]*h;for(let _=0;_<h;_++)u[p++]=c[f++]}return new Li(u,h,d)}if(this.index===null)return se("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,d=c.length;h<d;h++){let u=c[h],f=t(u,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let d=0,u=c.length;d<u;d++){let f=c[d];h.push(f.toJSON(t.data))}h.length>0&&(s[l]=h,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(e))}let r=t.morphAttributes;for(let c in r){let h=[],d=r[c];for(let u=0,f=d.length;u<f;u++)h.push(d[u].clone(e));this.morphAttributes[c]=h}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,h=o.length;c<h;c++){let d=o[c];this.addGroup(d.start,d.count,d.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var fu=new J,ox=new J,ax=new ue,ci=class{constructor(t=new J(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=fu.subVectors(n,e).cross(ox.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(fu),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||ax.getNormalMatrix(t),s=this.coplanarPoint(fu).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},lx=0,Ms=class extends Di{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:lx++}),this.uuid=vo(),this.name="",this.type="Material",this.blending=_o,this.side=qs,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=Pu,this.blendDst=Iu,this.blendEquation=gr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new ge(0,0,0),this.blendAlpha=0,this.depthFunc=so,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=qp,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=Cl,this.stencilZFail=Cl,this.stencilZPass=Cl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){se(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){se(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new ge().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new ci().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new le().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new le().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ms=new J,pu=new J,cl=new J,hl=new J,dr=class{constructor(t=new J,e=new J(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ms)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=ms.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(ms.copy(this.origin).addScaledVector(this.direction,e),ms.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){pu.copy(t).add(e).multiplyScalar(.5),cl.copy(e).sub(t).normalize(),hl.copy(this.origin).sub(pu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(cl),a=hl.dot(this.direction),l=-hl.dot(cl),c=hl.lengthSq(),h=Math.abs(1-o*o),d,u,f,p;if(h>0)if(d=o*l-a,u=o*a-l,p=r*h,d>=0)if(u>=-p)if(u<=p){let x=1/h;d*=x,u*=x,f=d*(d+o*u+2*a)+u*(o*d+u+2*l)+c}else u=r,d=Math.max(0,-(o*u+a)),f=-d*d+u*(u+2*l)+c;else u=-r,d=Math.max(0,-(o*u+a)),f=-d*d+u*(u+2*l)+c;else u<=-p?(d=Math.max(0,-(-o*r+a)),u=d>0?-r:Math.min(Math.max(-r,-l),r),f=-d*d+u*(u+2*l)+c):u<=p?(d=0,u=Math.min(Math.max(-r,-l),r),f=u*(u+2*l)+c):(d=Math.max(0,-(o*r+a)),u=d>0?r:Math.min(Math.max(-r,-l),r),f=-d*d+u*(u+2*l)+c);else u=o>0?-r:r,d=Math.max(0,-(o*u+a)),f=-d*d+u*(u+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,d),s&&s.copy(pu).addScaledVector(cl,u),f}intersectSphere(t,e){if(t.radius<0)return null;ms.subVectors(t.center,this.origin);let n=ms.dot(this.direction),s=ms.dot(ms)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,d=1/this.direction.z,u=this.origin;return c>=0?(n=(t.min.x-u.x)*c,s=(t.max.x-u.x)*c):(n=(t.max.x-u.x)*c,s=(t.min.x-u.x)*c),h>=0?(r=(t.min.y-u.y)*h,o=(t.max.y-u.y)*h):(r=(t.max.y-u.y)*h,o=(t.min.y-u.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),d>=0?(a=(t.min.z-u.z)*d,l=(t.max.z-u.z)*d):(a=(t.max.z-u.z)*d,l=(t.min.z-u.z)*d),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,ms)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,d=t.x-o.x,u=t.y-o.y,f=t.z-o.z,p=e.x-o.x,x=e.y-o.y,g=e.z-o.z,_=n.x-o.x,y=n.y-o.y,E=n.z-o.z,M=Math.abs(l),P=Math.abs(c),w=Math.abs(h),m,b,U,C,L,k,z,I,V,H,B,Y;if(M>=P&&M>=w?(U=l,k=d,V=p,Y=_,l>=0?(m=c,b=h,C=u,L=f,z=x,I=g,H=y,B=E):(m=h,b=c,C=f,L=u,z=g,I=x,H=E,B=y)):P>=w?(U=c,k=u,V=x,Y=y,c>=0?(m=h,b=l,C=f,L=d,z=g,I=p,H=E,B=_):(m=l,b=h,C=d,L=f,z=p,I=g,H=_,B=E)):(U=h,k=f,V=g,Y=E,h>=0?(m=l,b=c,C=d,L=u,z=p,I=x,H=_,B=y):(m=c,b=l,C=u,L=d,z=x,I=p,H=y,B=_)),U===0)return null;let X=m/U,K=b/U,$=1/U,at=C-X*k,ot=L-K*k,Q=z-X*V,yt=I-K*V,Z=H-X*Y,it=B-K*Y,st=Z*yt-it*Q,pt=at*it-ot*Z,Tt=Q*ot-yt*at;if(s){if(st<0||pt<0||Tt<0)return null}else if((st<0||pt<0||Tt<0)&&(st>0||pt>0||Tt>0))return null;let bt=st+pt+Tt;if(bt===0)return null;let ee=$*(st*k+pt*V+Tt*Y);return(bt>0?ee<0:ee>0)?null:this.at(ee/bt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},zs=class extends Ms{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new ge(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ys,this.combine=ac,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},sp=new Ne,hr=new dr,ul=new vs,rp=new J,dl=new J,fl=new J,pl=new J,mu=new J,ml=new J,op=new J,gl=new J,gn=class extends Fn{constructor(t=new Zn,e=new zs){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){ml.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],d=r[l];h!==0&&(mu.fromBufferAttribute(d,t),o?ml.addScaledVector(mu,h):ml.addScaledVector(mu.sub(e),h))}e.add(ml)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),ul.copy(n.boundingSphere),ul.applyMatrix4(r),hr.copy(t.ray).recast(t.near),!(ul.containsPoint(hr.origin)===!1&&(hr.intersectSphere(ul,rp)===null||hr.origin.distanceToSquared(rp)>(t.far-t.near)**2))&&(sp.copy(r).invert(),hr.copy(t.ray).applyMatrix4(sp),!(n.boundingBox!==null&&hr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,hr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,d=r.attributes.normal,u=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let p=0,x=u.length;p<x;p++){let g=u[p],_=o[g.materialIndex],y=Math.max(g.start,f.start),E=Math.min(a.count,Math.min(g.start+g.count,f.start+f.count));for(let M=y,P=E;M<P;M+=3){let w=a.getX(M),m=a.getX(M+1),b=a.getX(M+2);s=_l(this,_,t,n,c,h,d,w,m,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=g.materialIndex,e.push(s))}}else{let p=Math.max(0,f.start),x=Math.min(a.count,f.start+f.count);for(let g=p,_=x;g<_;g+=3){let y=a.getX(g),E=a.getX(g+1),M=a.getX(g+2);s=_l(this,o,t,n,c,h,d,y,E,M),s&&(s.faceIndex=Math.floor(g/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let p=0,x=u.length;p<x;p++){let g=u[p],_=o[g.materialIndex],y=Math.max(g.start,f.start),E=Math.min(l.count,Math.min(g.start+g.count,f.start+f.count));for(let M=y,P=E;M<P;M+=3){let w=M,m=M+1,b=M+2;s=_l(this,_,t,n,c,h,d,w,m,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=g.materialIndex,e.push(s))}}else{let p=Math.max(0,f.start),x=Math.min(l.count,f.start+f.count);for(let g=p,_=x;g<_;g+=3){let y=g,E=g+1,M=g+2;s=_l(this,o,t,n,c,h,d,y,E,M),s&&(s.faceIndex=Math.floor(g/3),e.push(s))}}}};function cx(i,t,e,n,s,r,o,a){let l;if(t.side===Un?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===qs,a),l===null)return null;gl.copy(a),gl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(gl);return c<e.near||c>e.far?null:{distance:c,point:gl.clone(),object:i}}function _l(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,dl),i.getVertexPosition(l,fl),i.getVertexPosition(c,pl);let h=cx(i,t,e,n,dl,fl,pl,op);if(h){let d=new J;gs.getBarycoord(op,dl,fl,pl,d),s&&(h.uv=gs.getInterpolatedAttribute(s,a,l,c,d,new le)),r&&(h.uv1=gs.getInterpolatedAttribute(r,a,l,c,d,new le)),o&&(h.normal=gs.getInterpolatedAttribute(o,a,l,c,d,new J),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let u={a,b:l,c,normal:new J,materialIndex:0};gs.getNormal(dl,fl,pl,u.normal),h.face=u,h.barycoord=d}return h}var ca=class extends Kn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=In,h=In,d,u){super(null,o,a,l,c,h,s,r,d,u),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var fr=class extends Li{constructor(t,e,n,s=1){super(t,e,n),this.isInstancedBufferAttribute=!0,this.meshPerAttribute=s}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}toJSON(){let t=super.toJSON();return t.meshPerAttribute=this.meshPerAttribute,t.isInstancedBufferAttribute=!0,t}},jr=new Ne,ap=new Ne,xl=[],lp=new Ki,hx=new Ne,Zo=new gn,Jo=new vs,ha=class extends gn{constructor(t,e,n){super(t,e),this.isInstancedMesh=!0,this.instanceMatrix=new fr(new Float32Array(n*16),16),this.instanceColor=null,this.morphTexture=null,this.count=n,this.boundingBox=null,this.boundingSphere=null;for(let s=0;s<n;s++)this.setMatrixAt(s,hx)}computeBoundingBox(){let t=this.geometry,e=this.count;this.boundingBox===null&&(this.boundingBox=new Ki),t.boundingBox===null&&t.computeBoundingBox(),this.boundingBox.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,jr),lp.copy(t.boundingBox).applyMatrix4(jr),this.boundingBox.union(lp)}computeBoundingSphere(){let t=this.geometry,e=this.count;this.boundingSphere===null&&(this.boundingSphere=new vs),t.boundingSphere===null&&t.computeBoundingSphere(),this.boundingSphere.makeEmpty();for(let n=0;n<e;n++)this.getMatrixAt(n,jr),Jo.copy(t.boundingSphere).applyMatrix4(jr),this.boundingSphere.union(Jo)}copy(t,e){return super.copy(t,e),this.instanceMatrix.copy(t.instanceMatrix),this.morphTexture=t.morphTexture!==null?t.morphTexture.clone():null,this.instanceColor=t.instanceColor!==null?t.instanceColor.clone():null,this.count=t.count,this.boundingBox=t.boundingBox!==null?t.boundingBox.clone():null,this.boundingSphere=t.boundingSphere!==null?t.boundingSphere.clone():null,this}getColorAt(t,e){return this.instanceColor===null?e.setRGB(1,1,1):e.fromArray(this.instanceColor.array,t*3)}getMatrixAt(t,e){return e.fromArray(this.instanceMatrix.array,t*16)}getMorphAt(t,e){let n=e.morphTargetInfluences,s=this.morphTexture.source.data.data,r=n.length+1,o=t*r+1;for(let a=0;a<n.length;a++)n[a]=s[o+a]}raycast(t,e){let n=this.matrixWorld,s=this.count;if(Zo.geometry=this.geometry,Zo.material=this.material,Zo.material!==void 0&&(this.boundingSphere===null&&this.computeBoundingSphere(),Jo.copy(this.boundingSphere),Jo.applyMatrix4(n),t.ray.intersectsSphere(Jo)!==!1))for(let r=0;r<s;r++){this.getMatrixAt(r,jr),ap.multiplyMatrices(n,jr),Zo.matrixWorld=ap,Zo.raycast(t,xl);for(let o=0,a=xl.length;o<a;o++){let l=xl[o];l.instanceId=r,l.object=this,e.push(l)}xl.length=0}}setColorAt(t,e){return this.instanceColor===null&&(this.instanceColor=new fr(new Float32Array(this.instanceMatrix.count*3).fill(1),3)),e.toArray(this.instanceColor.array,t*3),this}setMatrixAt(t,e){return e.toArray(this.instanceMatrix.array,t*16),this}setMorphAt(t,e){let n=e.morphTargetInfluences,s=n.length+1;this.morphTexture===null&&(this.morphTexture=new ca(new Float32Array(s*this.count),s,this.count,pc,Mi));let r=this.morphTexture.source.data.data,o=0;for(let c=0;c<n.length;c++)o+=n[c];let a=this.geometry.morphTargetsRelative?1:1-o,l=s*t;return r[l]=a,r.set(n,l+1),this}updateMorphTargets(){}dispose(){super.dispose(),this.instanceMatrix.dispose(),this.instanceColor!==null&&this.instanceColor.dispose(),this.morphTexture!==null&&(this.morphTexture.dispose(),this.morphTexture=null)}},ur=new vs,ux=new le(.5,.5),yl=new J,Vs=class{constructor(t=new ci,e=new ci,n=new ci,s=new ci,r=new ci,o=new ci){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=vi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],d=r[5],u=r[6],f=r[7],p=r[8],x=r[9],g=r[10],_=r[11],y=r[12],E=r[13],M=r[14],P=r[15];if(s[0].setComponents(c-o,f-h,_-p,P-y).normalize(),s[1].setComponents(c+o,f+h,_+p,P+y).normalize(),s[2].setComponents(c+a,f+d,_+x,P+E).normalize(),s[3].setComponents(c-a,f-d,_-x,P-E).normalize(),n)s[4].setComponents(l,u,g,M).normalize(),s[5].setComponents(c-l,f-u,_-g,P-M).normalize();else if(s[4].setComponents(c-l,f-u,_-g,P-M).normalize(),e===vi)s[5].setComponents(c+l,f+u,_+g,P+M).normalize();else if(e===oo)s[5].setComponents(l,u,g,M).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),ur.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),ur.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(ur)}intersectsSprite(t){ur.center.set(0,0,0);let e=ux.distanceTo(t.center);return ur.radius=.7071067811865476+e,ur.applyMatrix4(t.matrixWorld),this.intersectsSphere(ur)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(yl.x=s.normal.x>0?t.max.x:t.min.x,yl.y=s.normal.y>0?t.max.y:t.min.y,yl.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(yl)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},cp=new Ne,Hl=class i{constructor(){this.coordinateSystem=vi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];cp.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Vs),n[s].setFromProjectionMatrix(cp,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new Vs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var uo=class extends Ms{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new ge(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Gl=new J,Wl=new J,hp=new Ne,Ko=new dr,vl=new vs,gu=new J,up=new J,$l=class extends Fn{constructor(t=new Zn,e=new uo){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Gl.fromBufferAttribute(e,s-1),Wl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Gl.distanceTo(Wl);t.setAttribute("lineDistance",new qe(n,1))}else se("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),vl.copy(n.boundingSphere),vl.applyMatrix4(s),vl.radius+=r,t.ray.intersectsSphere(vl)===!1)return;hp.copy(s).invert(),Ko.copy(t.ray).applyMatrix4(hp);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=n.index,u=n.attributes.position;if(h!==null){let f=Math.max(0,o.start),p=Math.min(h.count,o.start+o.count);for(let x=f,g=p-1;x<g;x+=c){let _=h.getX(x),y=h.getX(x+1),E=Ml(this,t,Ko,l,_,y,x);E&&e.push(E)}if(this.isLineLoop){let x=h.getX(p-1),g=h.getX(f),_=Ml(this,t,Ko,l,x,g,p-1);_&&e.push(_)}}else{let f=Math.max(0,o.start),p=Math.min(u.count,o.start+o.count);for(let x=f,g=p-1;x<g;x+=c){let _=Ml(this,t,Ko,l,x,x+1,x);_&&e.push(_)}if(this.isLineLoop){let x=Ml(this,t,Ko,l,p-1,f,p-1);x&&e.push(x)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function Ml(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Gl.fromBufferAttribute(a,s),Wl.fromBufferAttribute(a,r),e.distanceSqToSegment(Gl,Wl,gu,up)>n)return;gu.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(gu);if(!(c<t.near||c>t.far))return{distance:c,point:up.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var dp=new J,fp=new J,ua=class extends $l{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)dp.fromBufferAttribute(e,s),fp.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+dp.distanceTo(fp);t.setAttribute("lineDistance",new qe(n,1))}else se("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var da=class extends Kn{constructor(t=[],e=_r,n,s,r,o,a,l,c,h){super(t,e,n,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var Ss=class extends Kn{constructor(t,e,n=Ni,s,r,o,a=In,l=In,c,h=xs,d=1){if(h!==xs&&h!==Es)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let u={width:t,height:e,depth:d};super(u,s,r,o,a,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new co(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},fa=class extends Ss{constructor(t,e=Ni,n=_r,s,r,o=In,a=In,l,c=xs){let h={width:t,height:t,depth:1},d=[h,h,h,h,h,h];super(t,t,e,n,s,r,o,a,l,c),this.image=d,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},pa=class extends Kn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},bs=class i extends Zn{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],d=[],u=0,f=0;p("z","y","x",-1,-1,n,e,t,o,r,0),p("z","y","x",1,-1,n,e,-t,o,r,1),p("x","z","y",1,1,t,n,e,s,o,2),p("x","z","y",1,-1,t,n,-e,s,o,3),p("x","y","z",1,-1,t,e,n,s,r,4),p("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new qe(c,3)),this.setAttribute("normal",new qe(h,3)),this.setAttribute("uv",new qe(d,2));function p(x,g,_,y,E,M,P,w,m,b,U){let C=M/m,L=P/b,k=M/2,z=P/2,I=w/2,V=m+1,H=b+1,B=0,Y=0,X=new J;for(let K=0;K<H;K++){let $=K*L-z;for(let at=0;at<V;at++){let ot=at*C-k;X[x]=ot*y,X[g]=$*E,X[_]=I,c.push(X.x,X.y,X.z),X[x]=0,X[g]=0,X[_]=w>0?1:-1,h.push(X.x,X.y,X.z),d.push(at/m),d.push(1-K/b),B+=1}}for(let K=0;K<b;K++)for(let $=0;$<m;$++){let at=u+$+V*K,ot=u+$+V*(K+1),Q=u+($+1)+V*(K+1),yt=u+($+1)+V*K;l.push(at,ot,yt),l.push(ot,Q,yt),Y+=6}a.addGroup(f,Y,U),f+=Y,u+=B}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}},ma=class i extends Zn{constructor(t=1,e=1,n=4,s=8,r=1){super(),this.type="CapsuleGeometry",this.parameters={radius:t,height:e,capSegments:n,radialSegments:s,heightSegments:r},e=Math.max(0,e),n=Math.max(1,Math.floor(n)),s=Math.max(3,Math.floor(s)),r=Math.max(1,Math.floor(r));let o=[],a=[],l=[],c=[],h=e/2,d=Math.PI/2*t,u=e,f=2*d+u,p=n*2+r,x=s+1,g=new J,_=new J;for(let y=0;y<=p;y++){let E=0,M=0,P=0,w=0;if(y<=n){let U=y/n,C=U*Math.PI/2;M=-h-t*Math.cos(C),P=t*Math.sin(C),w=-t*Math.cos(C),E=U*d}else if(y<=n+r){let U=(y-n)/r;M=-h+U*e,P=t,w=0,E=d+U*u}else{let U=(y-n-r)/n,C=U*Math.PI/2;M=h+t*Math.sin(C),P=t*Math.cos(C),w=t*Math.sin(C),E=d+u+U*d}let m=Math.max(0,Math.min(1,E/f)),b=0;y===0?b=.5/s:y===p&&(b=-.5/s);for(let U=0;U<=s;U++){let C=U/s,L=C*Math.PI*2,k=Math.sin(L),z=Math.cos(L);_.x=-P*z,_.y=M,_.z=P*k,a.push(_.x,_.y,_.z),g.set(-P*z,w,P*k),g.normalize(),l.push(g.x,g.y,g.z),c.push(C+b,m)}if(y>0){let U=(y-1)*x;for(let C=0;C<s;C++){let L=U+C,k=U+C+1,z=y*x+C,I=y*x+C+1;o.push(L,k,z),o.push(k,I,z)}}}this.setIndex(o),this.setAttribute("position",new qe(a,3)),this.setAttribute("normal",new qe(l,3)),this.setAttribute("uv",new qe(c,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.height,t.capSegments,t.radialSegments,t.heightSegments)}};var ji=class i extends Zn{constructor(t=1,e=1,n=1,s=32,r=1,o=!1,a=0,l=Math.PI*2){super(),this.type="CylinderGeometry",this.parameters={radiusTop:t,radiusBottom:e,height:n,radialSegments:s,heightSegments:r,openEnded:o,thetaStart:a,thetaLength:l};let c=this;s=Math.floor(s),r=Math.floor(r);let h=[],d=[],u=[],f=[],p=0,x=[],g=n/2,_=0;y(),o===!1&&(t>0&&E(!0),e>0&&E(!1)),this.setIndex(h),this.setAttribute("position",new qe(d,3)),this.setAttribute("normal",new qe(u,3)),this.setAttribute("uv",new qe(f,2));function y(){let M=new J,P=new J,w=0,m=(e-t)/n;for(let b=0;b<=r;b++){let U=[],C=b/r,L=C*(e-t)+t;for(let k=0;k<=s;k++){let z=k/s,I=z*l+a,V=Math.sin(I),H=Math.cos(I);P.x=L*V,P.y=-C*n+g,P.z=L*H,d.push(P.x,P.y,P.z),M.set(V,m,H).normalize(),u.push(M.x,M.y,M.z),f.push(z,1-C),U.push(p++)}x.push(U)}for(let b=0;b<s;b++)for(let U=0;U<r;U++){let C=x[U][b],L=x[U+1][b],k=x[U+1][b+1],z=x[U][b+1];(t>0||U!==0)&&(h.push(C,L,z),w+=3),(e>0||U!==r-1)&&(h.push(L,k,z),w+=3)}c.addGroup(_,w,0),_+=w}function E(M){let P=p,w=new le,m=new J,b=0,U=M===!0?t:e,C=M===!0?1:-1;for(let k=1;k<=s;k++)d.push(0,g*C,0),u.push(0,C,0),f.push(.5,.5),p++;let L=p;for(let k=0;k<=s;k++){let I=k/s*l+a,V=Math.cos(I),H=Math.sin(I);m.x=U*H,m.y=g*C,m.z=U*V,d.push(m.x,m.y,m.z),u.push(0,C,0),w.x=V*.5+.5,w.y=H*.5*C+.5,f.push(w.x,w.y),p++}for(let k=0;k<s;k++){let z=P+k,I=L+k;M===!0?h.push(I,I+1,z):h.push(I+1,I,z),b+=3}c.addGroup(_,b,M===!0?1:2),_+=b}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radiusTop,t.radiusBottom,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}},ga=class i extends ji{constructor(t=1,e=1,n=32,s=1,r=!1,o=0,a=Math.PI*2){super(0,t,e,n,s,r,o,a),this.type="ConeGeometry",this.parameters={radius:t,height:e,radialSegments:n,heightSegments:s,openEnded:r,thetaStart:o,thetaLength:a}}static fromJSON(t){return new i(t.radius,t.height,t.radialSegments,t.heightSegments,t.openEnded,t.thetaStart,t.thetaLength)}};var Sl=new J,bl=new J,_u=new J,wl=new gs,_a=class extends Zn{constructor(t=null,e=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:e},t!==null){let s=Math.pow(10,4),r=Math.cos(no*e),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],h=["a","b","c"],d=new Array(3),u=new Map,f=[];for(let p=0;p<l;p+=3){o?(c[0]=o.getX(p),c[1]=o.getX(p+1),c[2]=o.getX(p+2)):(c[0]=p,c[1]=p+1,c[2]=p+2);let{a:x,b:g,c:_}=wl;if(x.fromBufferAttribute(a,c[0]),g.fromBufferAttribute(a,c[1]),_.fromBufferAttribute(a,c[2]),wl.getNormal(_u),d[0]=`${Math.round(x.x*s)},${Math.round(x.y*s)},${Math.round(x.z*s)}`,d[1]=`${Math.round(g.x*s)},${Math.round(g.y*s)},${Math.round(g.z*s)}`,d[2]=`${Math.round(_.x*s)},${Math.round(_.y*s)},${Math.round(_.z*s)}`,!(d[0]===d[1]||d[1]===d[2]||d[2]===d[0]))for(let y=0;y<3;y++){let E=(y+1)%3,M=d[y],P=d[E],w=wl[h[y]],m=wl[h[E]],b=`${M}_${P}`,U=`${P}_${M}`,C=u.get(U);C?(_u.dot(C.normal)<=r&&(f.push(w.x,w.y,w.z),f.push(m.x,m.y,m.z)),u.set(U,null)):u.has(b)||u.set(b,{index0:c[y],index1:c[E],normal:_u.clone()})}}for(let p of u.values())if(p){let{index0:x,index1:g}=p;Sl.fromBufferAttribute(a,x),bl.fromBufferAttribute(a,g),f.push(Sl.x,Sl.y,Sl.z),f.push(bl.x,bl.y,bl.z)}this.setAttribute("position",new qe(f,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var xa=class i extends Zn{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,h=l+1,d=t/a,u=e/l,f=[],p=[],x=[],g=[];for(let _=0;_<h;_++){let y=_*u-o;for(let E=0;E<c;E++){let M=E*d-r;p.push(M,-y,0),x.push(0,0,1),g.push(E/a),g.push(1-_/l)}}for(let _=0;_<l;_++)for(let y=0;y<a;y++){let E=y+c*_,M=y+c*(_+1),P=y+1+c*(_+1),w=y+1+c*_;f.push(E,M,w),f.push(M,P,w)}this.setIndex(f),this.setAttribute("position",new qe(p,3)),this.setAttribute("normal",new qe(x,3)),this.setAttribute("uv",new qe(g,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var fo=class i extends Zn{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,h=[],d=new J,u=new J,f=[],p=[],x=[],g=[];for(let _=0;_<=n;_++){let y=[],E=_/n,M=o+E*a,P=t*Math.cos(M),w=Math.sqrt(t*t-P*P),m=0;_===0&&o===0?m=.5/e:_===n&&l===Math.PI&&(m=-.5/e);for(let b=0;b<=e;b++){let U=b/e,C=s+U*r;d.x=-w*Math.cos(C),d.y=P,d.z=w*Math.sin(C),p.push(d.x,d.y,d.z),u.copy(d).normalize(),x.push(u.x,u.y,u.z),g.push(U+m,1-E),y.push(c++)}h.push(y)}for(let _=0;_<n;_++)for(let y=0;y<e;y++){let E=h[_][y+1],M=h[_][y],P=h[_+1][y],w=h[_+1][y+1];(_!==0||o>0)&&f.push(E,M,w),(_!==n-1||l<Math.PI)&&f.push(M,P,w)}this.setIndex(f),this.setAttribute("position",new qe(p,3)),this.setAttribute("normal",new qe(x,3)),this.setAttribute("uv",new qe(g,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function yr(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(pp(s))s.isRenderTargetTexture?(se("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(pp(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Vn(i){let t={};for(let e=0;e<i.length;e++){let n=yr(i[e]);for(let s in n)t[s]=n[s]}return t}function pp(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function dx(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function ed(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:Ce.workingColorSpace}var am={clone:yr,merge:Vn},fx=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,px=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Qi=class extends Ms{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=fx,this.fragmentShader=px,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=yr(t.uniforms),this.uniformsGroups=dx(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new ge().setHex(s.value);break;case"v2":this.uniforms[n].value=new le().fromArray(s.value);break;case"v3":this.uniforms[n].value=new J().fromArray(s.value);break;case"v4":this.uniforms[n].value=new en().fromArray(s.value);break;case"m3":this.uniforms[n].value=new ue().fromArray(s.value);break;case"m4":this.uniforms[n].value=new Ne().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Xl=class extends Qi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var ya=class extends Ms{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new ge(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new ge(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Yc,this.normalScale=new le(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ys,this.combine=ac,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},ql=class extends Ms{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=$p,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Yl=class extends Ms{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Qr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function El(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Hs=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Zl=class extends Hs{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:vu,endingEnd:vu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Mu:r=t,a=2*e-n;break;case Su:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case Mu:o=t,l=2*n-e;break;case Su:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,h=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this._offsetPrev,d=this._offsetNext,u=this._weightPrev,f=this._weightNext,p=(n-e)/(s-e),x=p*p,g=x*p,_=-u*g+2*u*x-u*p,y=(1+u)*g+(-1.5-2*u)*x+(-.5+u)*p+1,E=(-1-f)*g+(1.5+f)*x+.5*p,M=f*g-f*x;for(let P=0;P!==a;++P)r[P]=_*o[h+P]+y*o[c+P]+E*o[l+P]+M*o[d+P];return r}},Jl=class extends Hs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=(n-e)/(s-e),d=1-h;for(let u=0;u!==a;++u)r[u]=o[c+u]*d+o[l+u]*h;return r}},Kl=class extends Hs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},jl=class extends Hs{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this.inTangents,d=this.outTangents;if(!h||!d){let p=(n-e)/(s-e),x=1-p;for(let g=0;g!==a;++g)r[g]=o[c+g]*x+o[l+g]*p;return r}let u=a*2,f=t-1;for(let p=0;p!==a;++p){let x=o[c+p],g=o[l+p],_=f*u+p*2,y=d[_],E=d[_+1],M=t*u+p*2,P=h[M],w=h[M+1],m=gx(n,e,y,P,s);r[p]=lm(m,x,E,w,g)}return r}};function lm(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function mx(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function gx(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=lm(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=mx(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var di=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Qr(e,this.TimeBufferType),this.values=Qr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Qr(t.times,Array),values:Qr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),El(t.settings)&&(n.settings={inTangents:Qr(t.settings.inTangents,Array),outTangents:Qr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new Kl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Jl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Zl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new jl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case ta:e=this.InterpolantFactoryMethodDiscrete;break;case Bl:e=this.InterpolantFactoryMethodLinear;break;case Rl:e=this.InterpolantFactoryMethodSmooth;break;case yu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return se("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return ta;case this.InterpolantFactoryMethodLinear:return Bl;case this.InterpolantFactoryMethodSmooth:return Rl;case this.InterpolantFactoryMethodBezier:return yu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;El(this.settings)&&(mp(this.settings.inTangents,t),mp(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;El(this.settings)&&(gp(this.settings.inTangents,t),gp(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(he("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(he("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){he("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){he("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&I_(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){he("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Rl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],h=t[a+1];if(c!==h&&(a!==1||c!==t[0]))if(s)l=!0;else{let d=a*n,u=d-n,f=d+n;for(let p=0;p!==n;++p){let x=e[d+p];if(x!==e[u+p]||x!==e[f+p]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let d=a*n,u=o*n;for(let f=0;f!==n;++f)e[u+f]=e[d+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,El(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function mp(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function gp(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}di.prototype.ValueTypeName="";di.prototype.TimeBufferType=Float32Array;di.prototype.ValueBufferType=Float32Array;di.prototype.DefaultInterpolation=Bl;var Gs=class extends di{constructor(t,e,n){super(t,e,n)}};Gs.prototype.ValueTypeName="bool";Gs.prototype.ValueBufferType=Array;Gs.prototype.DefaultInterpolation=ta;Gs.prototype.InterpolantFactoryMethodLinear=void 0;Gs.prototype.InterpolantFactoryMethodSmooth=void 0;var Ql=class extends di{constructor(t,e,n,s){super(t,e,n,s)}};Ql.prototype.ValueTypeName="color";var tc=class extends di{constructor(t,e,n,s){super(t,e,n,s)}};tc.prototype.ValueTypeName="number";var ec=class extends Hs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let h=c+a;c!==h;c+=4)Nn.slerpFlat(r,0,o,c-a,o,c,l);return r}},va=class extends di{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new ec(this.times,this.values,this.getValueSize(),t)}};va.prototype.ValueTypeName="quaternion";va.prototype.InterpolantFactoryMethodSmooth=void 0;var Ws=class extends di{constructor(t,e,n){super(t,e,n)}};Ws.prototype.ValueTypeName="string";Ws.prototype.ValueBufferType=Array;Ws.prototype.DefaultInterpolation=ta;Ws.prototype.InterpolantFactoryMethodLinear=void 0;Ws.prototype.InterpolantFactoryMethodSmooth=void 0;var nc=class extends di{constructor(t,e,n,s){super(t,e,n,s)}};nc.prototype.ValueTypeName="vector";var ic=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,d){return c.push(h,d),this},this.removeHandler=function(h){let d=c.indexOf(h);return d!==-1&&c.splice(d,2),this},this.getHandler=function(h){for(let d=0,u=c.length;d<u;d+=2){let f=c[d],p=c[d+1];if(f.global&&(f.lastIndex=0),f.test(h))return p}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},cm=new ic,sc=class{constructor(t){this.manager=t!==void 0?t:cm,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};sc.DEFAULT_MATERIAL_NAME="__DEFAULT";var Ma=class extends Fn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new ge(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}},Sa=class extends Ma{constructor(t,e,n){super(t,n),this.isHemisphereLight=!0,this.type="HemisphereLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.groundColor=new ge(e)}copy(t,e){return super.copy(t,e),this.groundColor.copy(t.groundColor),this}toJSON(t){let e=super.toJSON(t);return e.object.groundColor=this.groundColor.getHex(),e}},xu=new Ne,_p=new J,xp=new J,rc=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new le(512,512),this.mapType=jn,this.map=null,this.mapPass=null,this.matrix=new Ne,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Vs,this._frameExtents=new le(1,1),this._viewportCount=1,this._viewports=[new en(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;_p.setFromMatrixPosition(t.matrixWorld),e.position.copy(_p),xp.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(xp),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){xu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(xu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===oo||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(xu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},Tl=new J,Al=new Nn,Yi=new J,ba=class extends Fn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Ne,this.projectionMatrix=new Ne,this.projectionMatrixInverse=new Ne,this.coordinateSystem=vi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(Tl,Al,Yi),Yi.x===1&&Yi.y===1&&Yi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Tl,Al,Yi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(Tl,Al,Yi),Yi.x===1&&Yi.y===1&&Yi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Tl,Al,Yi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},ks=new J,yp=new le,vp=new le,hi=class extends ba{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=lo*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(no*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return lo*2*Math.atan(Math.tan(no*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){ks.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(ks.x,ks.y).multiplyScalar(-t/ks.z),ks.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(ks.x,ks.y).multiplyScalar(-t/ks.z)}getViewSize(t,e){return this.getViewBounds(t,yp,vp),e.subVectors(vp,yp)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(no*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var pr=class extends ba{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},bu=class extends rc{constructor(){super(new pr(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},wa=class extends Ma{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.target=new Fn,this.shadow=new bu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}};var to=-90,eo=1,po=class extends Fn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new hi(to,eo,t,e);s.layers=this.layers,this.add(s);let r=new hi(to,eo,t,e);r.layers=this.layers,this.add(r);let o=new hi(to,eo,t,e);o.layers=this.layers,this.add(o);let a=new hi(to,eo,t,e);a.layers=this.layers,this.add(a);let l=new hi(to,eo,t,e);l.layers=this.layers,this.add(l);let c=new hi(to,eo,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===vi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===oo)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,d=t.getRenderTarget(),u=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),p=t.xr.enabled;t.xr.enabled=!1;let x=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let g=!1;t.isWebGLRenderer===!0?g=t.state.buffers.depth.getReversed():g=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=x,t.setRenderTarget(n,5,s),g&&t.autoClear===!1&&t.clearDepth(),t.render(e,h),t.setRenderTarget(d,u,f),t.xr.enabled=p,n.texture.needsPMREMUpdate=!0}},oc=class extends hi{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var nd="\\[\\]\\.:\\/",_x=new RegExp("["+nd+"]","g"),id="[^"+nd+"]",xx="[^"+nd.replace("\\.","")+"]",yx=/((?:WC+[\/:])*)/.source.replace("WC",id),vx=/(WCOD+)?/.source.replace("WCOD",xx),Mx=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",id),Sx=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",id),bx=new RegExp("^"+yx+vx+Mx+Sx+"$"),wx=["material","materials","bones","map"],wu=class{constructor(t,e,n){let s=n||je.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},je=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(_x,"")}static parseTrackName(t){let e=bx.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);wx.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){se("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){he("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){he("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){he("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let h=0;h<t.length;h++)if(t[h].name===c){c=h;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){he("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){he("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){he("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){he("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;he("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){he("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){he("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};je.Composite=wu;je.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};je.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};je.prototype.GetterByBindingType=[je.prototype._getValue_direct,je.prototype._getValue_array,je.prototype._getValue_arrayElement,je.prototype._getValue_toArray];je.prototype.SetterByBindingTypeAndVersioning=[[je.prototype._setValue_direct,je.prototype._setValue_direct_setNeedsUpdate,je.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[je.prototype._setValue_array,je.prototype._setValue_array_setNeedsUpdate,je.prototype._setValue_array_setMatrixWorldNeedsUpdate],[je.prototype._setValue_arrayElement,je.prototype._setValue_arrayElement_setNeedsUpdate,je.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[je.prototype._setValue_fromArray,je.prototype._setValue_fromArray_setNeedsUpdate,je.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var UE=new Float32Array(1);var mo=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=Ee(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(Ee(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Eu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var Ea=class extends Di{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function sd(i,t,e,n){let s=Ex(n);switch(e){case Wu:return i*t;case pc:return i*t/s.components*s.byteLength;case mc:return i*t/s.components*s.byteLength;case Ys:return i*t*2/s.components*s.byteLength;case gc:return i*t*2/s.components*s.byteLength;case $u:return i*t*3/s.components*s.byteLength;case Ui:return i*t*4/s.components*s.byteLength;case _c:return i*t*4/s.components*s.byteLength;case Ra:case Ca:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Pa:case Ia:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case yc:case Mc:return Math.max(i,16)*Math.max(t,8)/4;case xc:case vc:return Math.max(i,8)*Math.max(t,8)/2;case Sc:case bc:case Ec:case Tc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case wc:case La:case Ac:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Rc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Cc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case Pc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case Ic:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Lc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case Dc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Nc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Fc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Uc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Oc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Bc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case kc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case zc:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case Vc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Hc:case Gc:case Wc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case $c:case Xc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case Da:case qc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function Ex(i){switch(i){case jn:case zu:return{byteLength:1,components:1};case yo:case Vu:case Fi:return{byteLength:2,components:1};case dc:case fc:return{byteLength:2,components:4};case Ni:case uc:case Mi:return{byteLength:4,components:1};case Hu:case Gu:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?se("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function Im(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function Ax(i){let t=new WeakMap;function e(a,l){let c=a.array,h=a.usage,d=c.byteLength,u=i.createBuffer();i.bindBuffer(l,u),i.bufferData(l,c,h),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:u,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:d}}function n(a,l,c){let h=l.array,d=l.updateRanges;if(i.bindBuffer(c,a),d.length===0)i.bufferSubData(c,0,h);else{d.sort((f,p)=>f.start-p.start);let u=0;for(let f=1;f<d.length;f++){let p=d[u],x=d[f];x.start<=p.start+p.count+1?p.count=Math.max(p.count,x.start+x.count-p.start):(++u,d[u]=x)}d.length=u+1;for(let f=0,p=d.length;f<p;f++){let x=d[f];i.bufferSubData(c,x.start*h.BYTES_PER_ELEMENT,h,x.start,x.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=t.get(a);(!h||h.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var Rx=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Cx=`#ifdef USE_ALPHAHASH
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
#endif`,Px=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,Ix=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Lx=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,Dx=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,Nx=`#ifdef USE_AOMAP
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
#endif`,Fx=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,Ux=`#ifdef USE_BATCHING
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
#endif`,Ox=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,Bx=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,kx=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,zx=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,Vx=`#ifdef USE_IRIDESCENCE
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
#endif`,Hx=`#ifdef USE_BUMPMAP
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
#endif`,Gx=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,Wx=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,$x=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Xx=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,qx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,Yx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Zx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Jx=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,Kx=`#define PI 3.141592653589793
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
} // validated`,jx=`vec3 transformedNormal = objectNormal;
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
#endif`,Qx=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,ty=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,ey=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,ny=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,iy="gl_FragColor = linearToOutputTexel( gl_FragColor );",sy=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,ry=`#ifdef USE_ENVMAP
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
#endif`,oy=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,ay=`#ifdef USE_ENVMAP
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
#endif`,ly=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,cy=`#ifdef USE_ENVMAP
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
#endif`,hy=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,uy=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,dy=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,fy=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,py=`#ifdef USE_GRADIENTMAP
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
}`,my=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,gy=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,_y=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,xy=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,yy=`#ifdef USE_ENVMAP
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
#endif`,vy=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,My=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Sy=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,by=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,wy=`PhysicalMaterial material;
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
#endif`,Ey=`uniform sampler2D dfgLUT;
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
}`,Ty=`
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
#endif`,Ay=`#if defined( RE_IndirectDiffuse )
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
#endif`,Ry=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,Cy=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,Py=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Iy=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Ly=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Dy=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Ny=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Fy=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,Uy=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,Oy=`#if defined( USE_POINTS_UV )
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
#endif`,By=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,ky=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,zy=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Vy=`#if defined( USE_MORPHCOLORS )
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
#endif`,Hy=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Gy=`#ifdef USE_MORPHTARGETS
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
#endif`,Wy=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,$y=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,Xy=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,qy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Yy=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Zy=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Jy=`#ifdef USE_NORMALMAP
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
#endif`,Ky=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,jy=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Qy=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,tv=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,ev=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,nv=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,iv=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,sv=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,rv=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,ov=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,av=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,lv=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,cv=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,hv=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,uv=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,dv=`float getShadowMask() {
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
}`,fv=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,pv=`#ifdef USE_SKINNING
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
#endif`,mv=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,gv=`#ifdef USE_SKINNING
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
#endif`,_v=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,xv=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,yv=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,vv=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,Mv=`#ifdef USE_TRANSMISSION
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
#endif`,Sv=`#ifdef USE_TRANSMISSION
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
#endif`,bv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,wv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,Ev=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,Tv=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,Av=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,Rv=`uniform sampler2D t2D;
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
}`,Cv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Pv=`uniform float backgroundBlurriness;
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
}`,Iv=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Lv=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,Dv=`#include <common>
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
}`,Nv=`#if DEPTH_PACKING == 3200
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
}`,Fv=`#define DISTANCE
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
}`,Uv=`#define DISTANCE
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
}`,Ov=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,Bv=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,kv=`uniform float scale;
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
}`,zv=`uniform vec3 diffuse;
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
}`,Vv=`#include <common>
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
}`,Hv=`uniform vec3 diffuse;
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
}`,Gv=`#define LAMBERT
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
}`,Wv=`#define LAMBERT
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
}`,$v=`#define MATCAP
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
}`,Xv=`#define MATCAP
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
}`,qv=`#define NORMAL
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
}`,Yv=`#define NORMAL
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
}`,Zv=`#define PHONG
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
}`,Jv=`#define PHONG
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
}`,Kv=`#define STANDARD
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
}`,jv=`#define STANDARD
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
}`,Qv=`#define TOON
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
}`,tM=`#define TOON
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
}`,eM=`uniform float size;
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
}`,nM=`uniform vec3 diffuse;
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
}`,iM=`#include <common>
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
}`,sM=`uniform vec3 color;
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
}`,rM=`uniform float rotation;
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
}`,oM=`uniform vec3 diffuse;
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
}`,ye={alphahash_fragment:Rx,alphahash_pars_fragment:Cx,alphamap_fragment:Px,alphamap_pars_fragment:Ix,alphatest_fragment:Lx,alphatest_pars_fragment:Dx,aomap_fragment:Nx,aomap_pars_fragment:Fx,batching_pars_vertex:Ux,batching_vertex:Ox,begin_vertex:Bx,beginnormal_vertex:kx,bsdfs:zx,iridescence_fragment:Vx,bumpmap_pars_fragment:Hx,clipping_planes_fragment:Gx,clipping_planes_pars_fragment:Wx,clipping_planes_pars_vertex:$x,clipping_planes_vertex:Xx,color_fragment:qx,color_pars_fragment:Yx,color_pars_vertex:Zx,color_vertex:Jx,common:Kx,defaultnormal_vertex:jx,displacementmap_pars_vertex:Qx,displacementmap_vertex:ty,emissivemap_fragment:ey,emissivemap_pars_fragment:ny,colorspace_fragment:iy,colorspace_pars_fragment:sy,envmap_fragment:ry,envmap_common_pars_fragment:oy,envmap_pars_fragment:ay,envmap_pars_vertex:ly,envmap_physical_pars_fragment:yy,envmap_vertex:cy,fog_vertex:hy,fog_pars_vertex:uy,fog_fragment:dy,fog_pars_fragment:fy,gradientmap_pars_fragment:py,lightmap_pars_fragment:my,lights_lambert_fragment:gy,lights_lambert_pars_fragment:_y,lights_pars_begin:xy,lights_toon_fragment:vy,lights_toon_pars_fragment:My,lights_phong_fragment:Sy,lights_phong_pars_fragment:by,lights_physical_fragment:wy,lights_physical_pars_fragment:Ey,lights_fragment_begin:Ty,lights_fragment_maps:Ay,lights_fragment_end:Ry,lightprobes_pars_fragment:Cy,logdepthbuf_fragment:Py,logdepthbuf_pars_fragment:Iy,logdepthbuf_pars_vertex:Ly,logdepthbuf_vertex:Dy,map_fragment:Ny,map_pars_fragment:Fy,map_particle_fragment:Uy,map_particle_pars_fragment:Oy,metalnessmap_fragment:By,metalnessmap_pars_fragment:ky,morphinstance_vertex:zy,morphcolor_vertex:Vy,morphnormal_vertex:Hy,morphtarget_pars_vertex:Gy,morphtarget_vertex:Wy,normal_fragment_begin:$y,normal_fragment_maps:Xy,normal_pars_fragment:qy,normal_pars_vertex:Yy,normal_vertex:Zy,normalmap_pars_fragment:Jy,clearcoat_normal_fragment_begin:Ky,clearcoat_normal_fragment_maps:jy,clearcoat_pars_fragment:Qy,iridescence_pars_fragment:tv,opaque_fragment:ev,packing:nv,premultiplied_alpha_fragment:iv,project_vertex:sv,dithering_fragment:rv,dithering_pars_fragment:ov,roughnessmap_fragment:av,roughnessmap_pars_fragment:lv,shadowmap_pars_fragment:cv,shadowmap_pars_vertex:hv,shadowmap_vertex:uv,shadowmask_pars_fragment:dv,skinbase_vertex:fv,skinning_pars_vertex:pv,skinning_vertex:mv,skinnormal_vertex:gv,specularmap_fragment:_v,specularmap_pars_fragment:xv,tonemapping_fragment:yv,tonemapping_pars_fragment:vv,transmission_fragment:Mv,transmission_pars_fragment:Sv,uv_pars_fragment:bv,uv_pars_vertex:wv,uv_vertex:Ev,worldpos_vertex:Tv,background_vert:Av,background_frag:Rv,backgroundCube_vert:Cv,backgroundCube_frag:Pv,cube_vert:Iv,cube_frag:Lv,depth_vert:Dv,depth_frag:Nv,distance_vert:Fv,distance_frag:Uv,equirect_vert:Ov,equirect_frag:Bv,linedashed_vert:kv,linedashed_frag:zv,meshbasic_vert:Vv,meshbasic_frag:Hv,meshlambert_vert:Gv,meshlambert_frag:Wv,meshmatcap_vert:$v,meshmatcap_frag:Xv,meshnormal_vert:qv,meshnormal_frag:Yv,meshphong_vert:Zv,meshphong_frag:Jv,meshphysical_vert:Kv,meshphysical_frag:jv,meshtoon_vert:Qv,meshtoon_frag:tM,points_vert:eM,points_frag:nM,shadow_vert:iM,shadow_frag:sM,sprite_vert:rM,sprite_frag:oM},Ht={common:{diffuse:{value:new ge(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new ue},alphaMap:{value:null},alphaMapTransform:{value:new ue},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new ue}},envmap:{envMap:{value:null},envMapRotation:{value:new ue},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new ue}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new ue}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new ue},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new ue},normalScale:{value:new le(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new ue},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new ue}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new ue}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new ue}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new ge(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new ge(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new ue},alphaTest:{value:0},uvTransform:{value:new ue}},sprite:{diffuse:{value:new ge(16777215)},opacity:{value:1},center:{value:new le(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new ue},alphaMap:{value:null},alphaMapTransform:{value:new ue},alphaTest:{value:0}}},is={basic:{uniforms:Vn([Ht.common,Ht.specularmap,Ht.envmap,Ht.aomap,Ht.lightmap,Ht.fog]),vertexShader:ye.meshbasic_vert,fragmentShader:ye.meshbasic_frag},lambert:{uniforms:Vn([Ht.common,Ht.specularmap,Ht.envmap,Ht.aomap,Ht.lightmap,Ht.emissivemap,Ht.bumpmap,Ht.normalmap,Ht.displacementmap,Ht.fog,Ht.lights,{emissive:{value:new ge(0)},envMapIntensity:{value:1}}]),vertexShader:ye.meshlambert_vert,fragmentShader:ye.meshlambert_frag},phong:{uniforms:Vn([Ht.common,Ht.specularmap,Ht.envmap,Ht.aomap,Ht.lightmap,Ht.emissivemap,Ht.bumpmap,Ht.normalmap,Ht.displacementmap,Ht.fog,Ht.lights,{emissive:{value:new ge(0)},specular:{value:new ge(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:ye.meshphong_vert,fragmentShader:ye.meshphong_frag},standard:{uniforms:Vn([Ht.common,Ht.envmap,Ht.aomap,Ht.lightmap,Ht.emissivemap,Ht.bumpmap,Ht.normalmap,Ht.displacementmap,Ht.roughnessmap,Ht.metalnessmap,Ht.fog,Ht.lights,{emissive:{value:new ge(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:ye.meshphysical_vert,fragmentShader:ye.meshphysical_frag},toon:{uniforms:Vn([Ht.common,Ht.aomap,Ht.lightmap,Ht.emissivemap,Ht.bumpmap,Ht.normalmap,Ht.displacementmap,Ht.gradientmap,Ht.fog,Ht.lights,{emissive:{value:new ge(0)}}]),vertexShader:ye.meshtoon_vert,fragmentShader:ye.meshtoon_frag},matcap:{uniforms:Vn([Ht.common,Ht.bumpmap,Ht.normalmap,Ht.displacementmap,Ht.fog,{matcap:{value:null}}]),vertexShader:ye.meshmatcap_vert,fragmentShader:ye.meshmatcap_frag},points:{uniforms:Vn([Ht.points,Ht.fog]),vertexShader:ye.points_vert,fragmentShader:ye.points_frag},dashed:{uniforms:Vn([Ht.common,Ht.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:ye.linedashed_vert,fragmentShader:ye.linedashed_frag},depth:{uniforms:Vn([Ht.common,Ht.displacementmap]),vertexShader:ye.depth_vert,fragmentShader:ye.depth_frag},normal:{uniforms:Vn([Ht.common,Ht.bumpmap,Ht.normalmap,Ht.displacementmap,{opacity:{value:1}}]),vertexShader:ye.meshnormal_vert,fragmentShader:ye.meshnormal_frag},sprite:{uniforms:Vn([Ht.sprite,Ht.fog]),vertexShader:ye.sprite_vert,fragmentShader:ye.sprite_frag},background:{uniforms:{uvTransform:{value:new ue},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:ye.background_vert,fragmentShader:ye.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new ue}},vertexShader:ye.backgroundCube_vert,fragmentShader:ye.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:ye.cube_vert,fragmentShader:ye.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:ye.equirect_vert,fragmentShader:ye.equirect_frag},distance:{uniforms:Vn([Ht.common,Ht.displacementmap,{referencePosition:{value:new J},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:ye.distance_vert,fragmentShader:ye.distance_frag},shadow:{uniforms:Vn([Ht.lights,Ht.fog,{color:{value:new ge(0)},opacity:{value:1}}]),vertexShader:ye.shadow_vert,fragmentShader:ye.shadow_frag}};is.physical={uniforms:Vn([is.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new ue},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new ue},clearcoatNormalScale:{value:new le(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new ue},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new ue},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new ue},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new ue},sheen:{value:0},sheenColor:{value:new ge(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new ue},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new ue},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new ue},transmissionSamplerSize:{value:new le},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new ue},attenuationDistance:{value:0},attenuationColor:{value:new ge(0)},specularColor:{value:new ge(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new ue},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new ue},anisotropyVector:{value:new le},anisotropyMap:{value:null},anisotropyMapTransform:{value:new ue}}]),vertexShader:ye.meshphysical_vert,fragmentShader:ye.meshphysical_frag};var Zc={r:0,b:0,g:0},aM=new Ne,Lm=new ue;Lm.set(-1,0,0,0,1,0,0,0,1);function lM(i,t,e,n,s,r){let o=new ge(0),a=s===!0?0:1,l,c,h=null,d=0,u=null;function f(y){let E=y.isScene===!0?y.background:null;if(E&&E.isTexture){let M=y.backgroundBlurriness>0;E=t.get(E,M)}return E}function p(y){let E=!1,M=f(y);M===null?g(o,a):M&&M.isColor&&(g(M,1),E=!0);let P=i.xr.getEnvironmentBlendMode();P==="additive"?e.buffers.color.setClear(0,0,0,1,r):P==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||E)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function x(y,E){let M=f(E);M&&M.isCubeTexture?(c===void 0&&(c=new gn(new bs(1,1,1),new Qi({name:"BackgroundCubeMaterial",uniforms:yr(is.backgroundCube.uniforms),vertexShader:is.backgroundCube.vertexShader,fragmentShader:is.backgroundCube.fragmentShader,side:Un,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(P,w,m){this.matrixWorld.copyPosition(m.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=M,c.material.uniforms.backgroundBlurriness.value=E.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=E.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(aM.makeRotationFromEuler(E.backgroundRotation)).transpose(),M.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Lm),c.material.toneMapped=Ce.getTransfer(M.colorSpace)!==Oe,(h!==M||d!==M.version||u!==i.toneMapping)&&(c.material.needsUpdate=!0,h=M,d=M.version,u=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null)):M&&M.isTexture&&(l===void 0&&(l=new gn(new xa(2,2),new Qi({name:"BackgroundMaterial",uniforms:yr(is.background.uniforms),vertexShader:is.background.vertexShader,fragmentShader:is.background.fragmentShader,side:qs,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=M,l.material.uniforms.backgroundIntensity.value=E.backgroundIntensity,l.material.toneMapped=Ce.getTransfer(M.colorSpace)!==Oe,M.matrixAutoUpdate===!0&&M.updateMatrix(),l.material.uniforms.uvTransform.value.copy(M.matrix),(h!==M||d!==M.version||u!==i.toneMapping)&&(l.material.needsUpdate=!0,h=M,d=M.version,u=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null))}function g(y,E){y.getRGB(Zc,ed(i)),e.buffers.color.setClear(Zc.r,Zc.g,Zc.b,E,r)}function _(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,E=1){o.set(y),a=E,g(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,g(o,a)},render:p,addToRenderList:x,dispose:_}}function cM(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=u(null),r=s,o=!1;function a(L,k,z,I,V){let H=!1,B=d(L,I,z,k);r!==B&&(r=B,c(r.object)),H=f(L,I,z,V),H&&p(L,I,z,V),V!==null&&t.update(V,i.ELEMENT_ARRAY_BUFFER),(H||o)&&(o=!1,M(L,k,z,I),V!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(V).buffer))}function l(){return i.createVertexArray()}function c(L){return i.bindVertexArray(L)}function h(L){return i.deleteVertexArray(L)}function d(L,k,z,I){let V=I.wireframe===!0,H=n[k.id];H===void 0&&(H={},n[k.id]=H);let B=L.isInstancedMesh===!0?L.id:0,Y=H[B];Y===void 0&&(Y={},H[B]=Y);let X=Y[z.id];X===void 0&&(X={},Y[z.id]=X);let K=X[V];return K===void 0&&(K=u(l()),X[V]=K),K}function u(L){let k=[],z=[],I=[];for(let V=0;V<e;V++)k[V]=0,z[V]=0,I[V]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:k,enabledAttributes:z,attributeDivisors:I,object:L,attributes:{},index:null}}function f(L,k,z,I){let V=r.attributes,H=k.attributes,B=0,Y=z.getAttributes();for(let X in Y)if(Y[X].location>=0){let $=V[X],at=H[X];if(at===void 0&&(X==="instanceMatrix"&&L.instanceMatrix&&(at=L.instanceMatrix),X==="instanceColor"&&L.instanceColor&&(at=L.instanceColor)),$===void 0||$.attribute!==at||at&&$.data!==at.data)return!0;B++}return r.attributesNum!==B||r.index!==I}function p(L,k,z,I){let V={},H=k.attributes,B=0,Y=z.getAttributes();for(let X in Y)if(Y[X].location>=0){let $=H[X];$===void 0&&(X==="instanceMatrix"&&L.instanceMatrix&&($=L.instanceMatrix),X==="instanceColor"&&L.instanceColor&&($=L.instanceColor));let at={};at.attribute=$,$&&$.data&&(at.data=$.data),V[X]=at,B++}r.attributes=V,r.attributesNum=B,r.index=I}function x(){let L=r.newAttributes;for(let k=0,z=L.length;k<z;k++)L[k]=0}function g(L){_(L,0)}function _(L,k){let z=r.newAttributes,I=r.enabledAttributes,V=r.attributeDivisors;z[L]=1,I[L]===0&&(i.enableVertexAttribArray(L),I[L]=1),V[L]!==k&&(i.vertexAttribDivisor(L,k),V[L]=k)}function y(){let L=r.newAttributes,k=r.enabledAttributes;for(let z=0,I=k.length;z<I;z++)k[z]!==L[z]&&(i.disableVertexAttribArray(z),k[z]=0)}function E(L,k,z,I,V,H,B){B===!0?i.vertexAttribIPointer(L,k,z,V,H):i.vertexAttribPointer(L,k,z,I,V,H)}function M(L,k,z,I){x();let V=I.attributes,H=z.getAttributes(),B=k.defaultAttributeValues;for(let Y in H){let X=H[Y];if(X.location>=0){let K=V[Y];if(K===void 0&&(Y==="instanceMatrix"&&L.instanceMatrix&&(K=L.instanceMatrix),Y==="instanceColor"&&L.instanceColor&&(K=L.instanceColor)),K!==void 0){let $=K.normalized,at=K.itemSize,ot=t.get(K);if(ot===void 0)continue;let Q=ot.buffer,yt=ot.type,Z=ot.bytesPerElement,it=yt===i.INT||yt===i.UNSIGNED_INT||K.gpuType===uc;if(K.isInterleavedBufferAttribute){let st=K.data,pt=st.isInterleavedBuffer===!0?st.stride:st.itemSize,Tt=K.offset;if(st.isInstancedInterleavedBuffer||st.isInstancedBufferAttribute){for(let bt=0;bt<X.locationSize;bt++)_(X.location+bt,st.meshPerAttribute);L.isInstancedMesh!==!0&&I._maxInstanceCount===void 0&&(I._maxInstanceCount=st.meshPerAttribute*st.count)}else for(let bt=0;bt<X.locationSize;bt++)g(X.location+bt);i.bindBuffer(i.ARRAY_BUFFER,Q);for(let bt=0;bt<X.locationSize;bt++)E(X.location+bt,at/X.locationSize,yt,$,pt*Z,(Tt+at/X.locationSize*bt)*Z,it)}else{if(K.isInstancedBufferAttribute){for(let st=0;st<X.locationSize;st++)_(X.location+st,K.meshPerAttribute);L.isInstancedMesh!==!0&&I._maxInstanceCount===void 0&&(I._maxInstanceCount=K.meshPerAttribute*K.count)}else for(let st=0;st<X.locationSize;st++)g(X.location+st);i.bindBuffer(i.ARRAY_BUFFER,Q);for(let st=0;st<X.locationSize;st++)E(X.location+st,at/X.locationSize,yt,$,at*Z,at/X.locationSize*st*Z,it)}}else if(B!==void 0){let $=B[Y];if($!==void 0)switch($.length){case 2:i.vertexAttrib2fv(X.location,$);break;case 3:i.vertexAttrib3fv(X.location,$);break;case 4:i.vertexAttrib4fv(X.location,$);break;default:i.vertexAttrib1fv(X.location,$)}}}}y()}function P(){U();for(let L in n){let k=n[L];for(let z in k){let I=k[z];for(let V in I){let H=I[V];for(let B in H)h(H[B].object),delete H[B];delete I[V]}}delete n[L]}}function w(L){if(n[L.id]===void 0)return;let k=n[L.id];for(let z in k){let I=k[z];for(let V in I){let H=I[V];for(let B in H)h(H[B].object),delete H[B];delete I[V]}}delete n[L.id]}function m(L){for(let k in n){let z=n[k];for(let I in z){let V=z[I];if(V[L.id]===void 0)continue;let H=V[L.id];for(let B in H)h(H[B].object),delete H[B];delete V[L.id]}}}function b(L){for(let k in n){let z=n[k],I=L.isInstancedMesh===!0?L.id:0,V=z[I];if(V!==void 0){for(let H in V){let B=V[H];for(let Y in B)h(B[Y].object),delete B[Y];delete V[H]}delete z[I],Object.keys(z).length===0&&delete n[k]}}}function U(){C(),o=!0,r!==s&&(r=s,c(r.object))}function C(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:U,resetDefaultState:C,dispose:P,releaseStatesOfGeometry:w,releaseStatesOfObject:b,releaseStatesOfProgram:m,initAttributes:x,enableAttribute:g,disableUnusedAttributes:y}}function hM(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),e.update(c,n,h))}function a(l,c,h){if(h===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let u=0;for(let f=0;f<h;f++)u+=c[f];e.update(u,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function uM(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let m=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(m.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(m){return!(m!==Ui&&n.convert(m)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(m){let b=m===Fi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(m!==jn&&m!==Mi&&!b&&n.convert(m)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(m){if(m==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";m="mediump"}return m==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",h=l(c);h!==c&&(se("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let d=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),u=e.logarithmicDepthBuffer===!0&&d===!1;e.reversedDepthBuffer===!0&&d===!1&&se("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&d===!0&&se("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),p=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),x=i.getParameter(i.MAX_TEXTURE_SIZE),g=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),_=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),E=i.getParameter(i.MAX_VARYING_VECTORS),M=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),P=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:u,reversedDepthBuffer:d,maxTextures:f,maxVertexTextures:p,maxTextureSize:x,maxCubemapSize:g,maxAttributes:_,maxVertexUniforms:y,maxVaryings:E,maxFragmentUniforms:M,maxSamples:P,samples:w}}function dM(i){let t=this,e=null,n=0,s=!1,r=!1,o=new ci,a=new ue,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(d,u){let f=d.length!==0||u||n!==0||s;return s=u,n=d.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(d,u){e=h(d,u,0)},this.setState=function(d,u,f){let p=d.clippingPlanes,x=d.clipIntersection,g=d.clipShadows,_=i.get(d);if(!s||p===null||p.length===0||r&&!g)r?h(null):c();else{let y=r?0:n,E=y*4,M=_.clippingState||null;l.value=M,M=h(p,u,E,f);for(let P=0;P!==E;++P)M[P]=e[P];_.clippingState=M,this.numIntersection=x?this.numPlanes:0,this.numPlanes+=y}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function h(d,u,f,p){let x=d!==null?d.length:0,g=null;if(x!==0){if(g=l.value,p!==!0||g===null){let _=f+x*4,y=u.matrixWorldInverse;a.getNormalMatrix(y),(g===null||g.length<_)&&(g=new Float32Array(_));for(let E=0,M=f;E!==x;++E,M+=4)o.copy(d[E]).applyMatrix4(y,a),o.normal.toArray(g,M),g[M+3]=o.constant}l.value=g,l.needsUpdate=!0}return t.numPlanes=x,t.numIntersection=0,g}}var Ua=class extends ui{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new da(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},s=new bs(5,5,5),r=new Qi({name:"CubemapFromEquirect",uniforms:yr(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Un,blending:mr});r.uniforms.tEquirect.value=e;let o=new gn(s,r),a=e.minFilter;return e.minFilter===ws&&(e.minFilter=Yn),new po(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},hm=256,fM=3,pM=20,Dm=256,Nm=16,mM=3,gM=new J,_M=new ge,Kc=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new po(1,10,null),this._boxMesh=new gn(new bs(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=gM}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);e>0&&(h.texture.mipmapsAutoUpdate=!1);let d=l.autoClear,u=l.autoClearColor,f=l.autoClearDepth,p=l.autoClearStencil,x=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,x===null&&(t.background=l.getClearColor(_M));let g=new po(n,s,h);return g.position.copy(a),g.update(l,t),l.autoClear=d,l.autoClearColor=u,l.autoClearDepth=f,l.autoClearStencil=p,t.background=x,e>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=fm(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=dm(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(hm,ju(t))}_fromTexture(t,e){t.mapping===_r||t.mapping===xo?this._setSize(t.image.length===0?hm:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=um(t,!1,!1),n=Math.log2(t)-fM;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=um(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===_r||t.mapping===xo?(this._cubemapMaterial===null&&(this._cubemapMaterial=fm()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=dm()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=xM(),this._integrationMaterial=yM());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Nm);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-mM)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(Dm*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=vM());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function um(i,t,e){return new Ua(i,{minFilter:ws,generateMipmaps:t,type:Fi,colorSpace:ea,depthBuffer:e})}function Oa(i,t,e){return new Qi({name:i,uniforms:t,vertexShader:ye.cube_vert,fragmentShader:e,side:Un,blending:mr,depthTest:!1,depthWrite:!1})}function xM(){return Oa("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Dm}u

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
	`)}function yM(){return Oa("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Nm}},`

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
	`)}function vM(){return Oa("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${pM}
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
	`)}function dm(){return Oa("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function fm(){return Oa("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function MM(i){let t=new WeakMap,e=new WeakMap,n=null;function s(u,f=!1){return u==null?null:f?o(u):r(u)}function r(u){if(u&&u.isTexture){let f=u.mapping;if(f===lc||f===cc)if(t.has(u)){let p=t.get(u).texture;return a(p,u.mapping)}else{let p=u.image;if(p&&p.height>0){let x=new Ua(p.height);return x.fromEquirectangularTexture(i,u),t.set(u,x),u.addEventListener("dispose",c),a(x.texture,u.mapping)}else return null}}return u}function o(u){if(u&&u.isTexture&&u.isPMREMTexture!==!0){let f=u.mapping,p=f===lc||f===cc,x=f===_r||f===xo;if(p||x){let g=e.get(u),_=g!==void 0?g.texture.pmremVersion:0;if(u.isRenderTargetTexture&&u.pmremVersion!==_)return n===null&&(n=new Kc(i)),g=p?n.fromEquirectangular(u,g):n.fromCubemap(u,g),g.texture.pmremVersion=u.pmremVersion,e.set(u,g),g.texture;if(g!==void 0)return g.texture;{let y=u.image;return p&&y&&y.height>0||x&&y&&l(y)?(n===null&&(n=new Kc(i)),g=p?n.fromEquirectangular(u):n.fromCubemap(u),g.texture.pmremVersion=u.pmremVersion,e.set(u,g),u.addEventListener("dispose",h),g.texture):null}}}return u}function a(u,f){return f===lc?u.mapping=_r:f===cc&&(u.mapping=xo),u}function l(u){let f=0,p=6;for(let x=0;x<p;x++)u[x]!==void 0&&f++;return f===p}function c(u){let f=u.target;f.removeEventListener("dispose",c);let p=t.get(f);p!==void 0&&(t.delete(f),p.dispose())}function h(u){let f=u.target;f.removeEventListener("dispose",h);let p=e.get(f);p!==void 0&&(e.delete(f),p.dispose())}function d(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:d}}function SM(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&jo("WebGLRenderer: "+n+" extension not supported."),s}}}function bM(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(p=>delete s[p]);function a(p){l(p.target)}function l(p){p.index!==null&&t.remove(p.index);for(let g in p.attributes)t.remove(p.attributes[g]);p.removeEventListener("dispose",a),delete s[p.id],o.unregister(p);let x=r.get(p);x&&(t.remove(x),r.delete(p)),n.releaseStatesOfGeometry(p),p.isInstancedBufferGeometry===!0&&delete p._maxInstanceCount,e.memory.geometries--}function c(p,x){return s[x.id]!==void 0||(x.addEventListener("dispose",a),s[x.id]=new WeakRef(x),o.register(x,x.id,x),e.memory.geometries++),x}function h(p){let x=p.attributes;for(let g in x)t.update(x[g],i.ARRAY_BUFFER)}function d(p){let x=p.index,g=p.attributes.position,_=0;if(g===void 0)return;let y=x!==null?x.array.length:g.array.length/3-1,E=g.count>=65535?la:aa,M=new E(Math.ceil(y/3)*6,1),P=M.array;if(x!==null){let m=x.array;_=x.version;for(let b=0,U=0;b<y;b+=3){let C=m[b+0],L=m[b+1],k=m[b+2];P[U++]=C,P[U++]=L,P[U++]=L,P[U++]=k,P[U++]=k,P[U++]=C}}else{_=g.version;for(let m=0,b=0;m<y;m+=3){let U=m+0,C=m+1,L=m+2;P[b++]=U,P[b++]=C,P[b++]=C,P[b++]=L,P[b++]=L,P[b++]=U}}M.version=_;let w=r.get(p);w&&t.remove(w),r.set(p,M)}function u(p){let x=r.get(p);if(x){let g=p.index;g!==null&&x.version<g.version&&d(p)}else d(p);return r.get(p)}function f(){for(let p in s){let x=s[p].deref();x!==void 0&&l(x)}}return{get:c,update:h,getWireframeAttribute:u,dispose:f}}function wM(i,t,e){let n;function s(d){n=d}let r,o;function a(d){r=d.type,o=d.bytesPerElement}function l(d,u){i.drawElements(n,u,r,d*o),e.update(u,n,1)}function c(d,u,f){f!==0&&(i.drawElementsInstanced(n,u,r,d*o,f),e.update(u,n,f))}function h(d,u,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,u,0,r,d,0,f);let x=0;for(let g=0;g<f;g++)x+=u[g];e.update(x,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function EM(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:he("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function TM(i,t,e){let n=new WeakMap,s=new en;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,d=h!==void 0?h.length:0,u=n.get(a);if(u===void 0||u.count!==d){let U=function(){m.dispose(),n.delete(a),a.removeEventListener("dispose",U)};u!==void 0&&u.texture.dispose();let f=a.morphAttributes.position!==void 0,p=a.morphAttributes.normal!==void 0,x=a.morphAttributes.color!==void 0,g=a.morphAttributes.position||[],_=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],E=0;f===!0&&(E=1),p===!0&&(E=2),x===!0&&(E=3);let M=a.attributes.position.count*E,P=1;M>t.maxTextureSize&&(P=Math.ceil(M/t.maxTextureSize),M=t.maxTextureSize);let w=new Float32Array(M*P*4*d),m=new sa(w,M,P,d);m.type=Mi,m.needsUpdate=!0;let b=E*4;for(let C=0;C<d;C++){let L=g[C],k=_[C],z=y[C],I=M*P*4*C;for(let V=0;V<L.count;V++){let H=V*b;f===!0&&(s.fromBufferAttribute(L,V),w[I+H+0]=s.x,w[I+H+1]=s.y,w[I+H+2]=s.z,w[I+H+3]=0),p===!0&&(s.fromBufferAttribute(k,V),w[I+H+4]=s.x,w[I+H+5]=s.y,w[I+H+6]=s.z,w[I+H+7]=0),x===!0&&(s.fromBufferAttribute(z,V),w[I+H+8]=s.x,w[I+H+9]=s.y,w[I+H+10]=s.z,w[I+H+11]=z.itemSize===4?s.w:1)}}u={count:d,texture:m,size:new le(M,P)},n.set(a,u),a.addEventListener("dispose",U)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let x=0;x<c.length;x++)f+=c[x];let p=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",p),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",u.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",u.size)}return{update:r}}function AM(i,t,e,n,s){let r=new WeakMap;function o(c){let h=s.render.frame,d=c.geometry,u=t.get(c,d);if(r.get(u)!==h&&(t.update(u),r.set(u,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return u}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),e.remove(h.instanceMatrix),h.instanceColor!==null&&e.remove(h.instanceColor)}return{update:o,dispose:a}}var RM={[Lu]:"LINEAR_TONE_MAPPING",[Du]:"REINHARD_TONE_MAPPING",[Nu]:"CINEON_TONE_MAPPING",[Fu]:"ACES_FILMIC_TONE_MAPPING",[Ou]:"AGX_TONE_MAPPING",[Bu]:"NEUTRAL_TONE_MAPPING",[Uu]:"CUSTOM_TONE_MAPPING"};function CM(i,t,e,n,s,r){let o=new ui(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new Zn;h.setAttribute("position",new qe([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new qe([0,2,0,0,2,0],2));let d=new Xl({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),u=new gn(h,d),f=new pr(-1,1,1,-1,0,1),p=null,x=null,g=!1,_,y=null,E=[],M=!1;this.setSize=function(P,w){o.setSize(P,w),a!==null&&a.setSize(P,w),l!==null&&l.setSize(P,w);for(let m=0;m<E.length;m++){let b=E[m];b.setSize&&b.setSize(P,w)}},this.setEffects=function(P){E=P,M=E.length>0&&E[0].isRenderPass===!0;let w=o.width,m=o.height;E.length>0&&a===null&&(a=new ui(w,m,{type:Fi,depthBuffer:!1,stencilBuffer:!1}),l=new ui(w,m,{type:Fi,depthBuffer:!1,stencilBuffer:!1}));let b=s===!0&&E.some(U=>U.needsDepthTexture===!0);b!==(o.depthTexture!==null)&&(b===!0&&c===null&&(c=new Ss(w,m),r===!0&&(c.format=Es,c.type=xr)),o.dispose(),o.depthTexture=b?c:null,o.resolveDepthBuffer=b,o.storeMultisampledDepthBuffer=b);for(let U=0;U<E.length;U++){let C=E[U];C.setSize&&C.setSize(w,m),b&&C.needsDepthTexture===!0&&C.setDepthTexture&&C.setDepthTexture(c)}},this.begin=function(P,w){if(g||P.toneMapping===es&&E.length===0)return!1;if(y=w,w!==null){let m=w.width,b=w.height;(o.width!==m||o.height!==b)&&this.setSize(m,b)}return M===!1&&P.setRenderTarget(o),_=P.toneMapping,P.toneMapping=es,!0},this.hasRenderPass=function(){return M},this.end=function(P,w){P.toneMapping=_,g=!0;let m=o,b=a;for(let U=0;U<E.length;U++){let C=E[U];C.enabled!==!1&&(C.render(P,b,m,w),C.needsSwap!==!1&&(m=b,b=b===a?l:a))}if(p!==P.outputColorSpace||x!==P.toneMapping){p=P.outputColorSpace,x=P.toneMapping,d.defines={},Ce.getTransfer(p)===Oe&&(d.defines.SRGB_TRANSFER="");let U=RM[x];U&&(d.defines[U]=""),d.needsUpdate=!0}d.uniforms.tDiffuse.value=m.texture,P.setRenderTarget(y),P.render(u,f),y=null,g=!1},this.isCompositing=function(){return g},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),d.dispose()}}var Fm=new Kn,Um=new Ss(1,1),Om=new fa(1),Bm=new sa,km=new Vl,zm=new da,pm=[],mm=[],gm=new Float32Array(16),_m=new Float32Array(9),xm=new Float32Array(4);function So(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=pm[s];if(r===void 0&&(r=new Float32Array(s),pm[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function yn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function vn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function Qc(i,t){let e=mm[t];e===void 0&&(e=new Int32Array(t),mm[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function PM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function IM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2fv(this.addr,t),vn(e,t)}}function LM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(yn(e,t))return;i.uniform3fv(this.addr,t),vn(e,t)}}function DM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4fv(this.addr,t),vn(e,t)}}function NM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;xm.set(n),i.uniformMatrix2fv(this.addr,!1,xm),vn(e,n)}}function FM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;_m.set(n),i.uniformMatrix3fv(this.addr,!1,_m),vn(e,n)}}function UM(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(yn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),vn(e,t)}else{if(yn(e,n))return;gm.set(n),i.uniformMatrix4fv(this.addr,!1,gm),vn(e,n)}}function OM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function BM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2iv(this.addr,t),vn(e,t)}}function kM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3iv(this.addr,t),vn(e,t)}}function zM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4iv(this.addr,t),vn(e,t)}}function VM(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function HM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(yn(e,t))return;i.uniform2uiv(this.addr,t),vn(e,t)}}function GM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(yn(e,t))return;i.uniform3uiv(this.addr,t),vn(e,t)}}function WM(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(yn(e,t))return;i.uniform4uiv(this.addr,t),vn(e,t)}}function th(i){return i.version===0&&(i.compareFunction=Yu,i.needsUpdate=!0),i}function $M(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=th(Um):r=Fm,e.setTexture2D(t||r,s)}function XM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||km,s)}function qM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=th(Om):r=zm,e.setTextureCube(t||r,s)}function YM(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||Bm,s)}function ZM(i){switch(i){case 5126:return PM;case 35664:return IM;case 35665:return LM;case 35666:return DM;case 35674:return NM;case 35675:return FM;case 35676:return UM;case 5124:case 35670:return OM;case 35667:case 35671:return BM;case 35668:case 35672:return kM;case 35669:case 35673:return zM;case 5125:return VM;case 36294:return HM;case 36295:return GM;case 36296:return WM;case 35678:case 36198:case 36298:case 36306:case 35682:return $M;case 35679:case 36299:case 36307:return XM;case 35680:case 36300:case 36308:case 36293:return qM;case 36289:case 36303:case 36311:case 36292:return YM}}function JM(i,t){i.uniform1fv(this.addr,t)}function KM(i,t){let e=So(t,this.size,2);i.uniform2fv(this.addr,e)}function jM(i,t){let e=So(t,this.size,3);i.uniform3fv(this.addr,e)}function QM(i,t){let e=So(t,this.size,4);i.uniform4fv(this.addr,e)}function tS(i,t){let e=So(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function eS(i,t){let e=So(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function nS(i,t){let e=So(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function iS(i,t){i.uniform1iv(this.addr,t)}function sS(i,t){i.uniform2iv(this.addr,t)}function rS(i,t){i.uniform3iv(this.addr,t)}function oS(i,t){i.uniform4iv(this.addr,t)}function aS(i,t){i.uniform1uiv(this.addr,t)}function lS(i,t){i.uniform2uiv(this.addr,t)}function cS(i,t){i.uniform3uiv(this.addr,t)}function hS(i,t){i.uniform4uiv(this.addr,t)}function uS(i,t,e){let n=this.cache,s=t.length,r=Qc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=th(Um):o=Fm;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function dS(i,t,e){let n=this.cache,s=t.length,r=Qc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||km,r[o])}function fS(i,t,e){let n=this.cache,s=t.length,r=Qc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=th(Om):o=zm;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function pS(i,t,e){let n=this.cache,s=t.length,r=Qc(e,s);yn(n,r)||(i.uniform1iv(this.addr,r),vn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||Bm,r[o])}function mS(i){switch(i){case 5126:return JM;case 35664:return KM;case 35665:return jM;case 35666:return QM;case 35674:return tS;case 35675:return eS;case 35676:return nS;case 5124:case 35670:return iS;case 35667:case 35671:return sS;case 35668:case 35672:return rS;case 35669:case 35673:return oS;case 5125:return aS;case 36294:return lS;case 36295:return cS;case 36296:return hS;case 35678:case 36198:case 36298:case 36306:case 35682:return uS;case 35679:case 36299:case 36307:return dS;case 35680:case 36300:case 36308:case 36293:return fS;case 36289:case 36303:case 36311:case 36292:return pS}}var ad=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=ZM(e.type)}},ld=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=mS(e.type)}},cd=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},rd=/(\w+)(\])?(\[|\.)?/g;function ym(i,t){i.seq.push(t),i.map[t.id]=t}function gS(i,t,e){let n=i.name,s=n.length;for(rd.lastIndex=0;;){let r=rd.exec(n),o=rd.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){ym(e,c===void 0?new ad(a,i,t):new ld(a,i,t));break}else{let d=e.map[a];d===void 0&&(d=new cd(a),ym(e,d)),e=d}}}var Mo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);gS(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function vm(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var _S=37297,xS=0;function yS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var Mm=new ue;function vS(i){Ce._getMatrix(Mm,Ce.workingColorSpace,i);let t=`mat3( ${Mm.elements.map(e=>e.toFixed(4))} )`;switch(Ce.getTransfer(i)){case na:return[t,"LinearTransferOETF"];case Oe:return[t,"sRGBTransferOETF"];default:return se("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function Sm(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+yS(i.getShaderSource(t),a)}else return r}function MS(i,t){let e=vS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var SS={[Lu]:"Linear",[Du]:"Reinhard",[Nu]:"Cineon",[Fu]:"ACESFilmic",[Ou]:"AgX",[Bu]:"Neutral",[Uu]:"Custom"};function bS(i,t){let e=SS[t];return e===void 0?(se("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var Jc=new J;function wS(){Ce.getLuminanceCoefficients(Jc);let i=Jc.x.toFixed(4),t=Jc.y.toFixed(4),e=Jc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function ES(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Fa).join(`
`)}function TS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function AS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Fa(i){return i!==""}function bm(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function wm(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var RS=/^[ \t]*#include +<([\w\d./]+)>/gm;function hd(i){return i.replace(RS,CS)}function CS(i,t){let e=ye[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return hd(e)}var PS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Em(i){return i.replace(PS,IS)}function IS(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Tm(i){let t=`precision ${i.precision} float;
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
#define LOW_PRECISION`),t}var LS={[Ta]:"SHADOWMAP_TYPE_PCF",[go]:"SHADOWMAP_TYPE_VSM"};function DS(i){return LS[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var NS={[xo]:"ENVMAP_MODE_REFRACTION"};function FS(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":NS[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var US={[ac]:"ENVMAP_BLENDING_MULTIPLY",[Hp]:"ENVMAP_BLENDING_MIX",[Gp]:"ENVMAP_BLENDING_ADD"};function OS(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":US[i.combine]||"ENVMAP_BLENDING_NONE"}function BS(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=DS(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=FS(e),d=OS(e),u=ES(e),f=TS(r),p=s.createProgram(),x,g,_=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(x=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Fa).join(`
`),x.length>0&&(x+=`
`),g=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Fa).join(`
`),g.length>0&&(g+=`
`)):(x=[Tm(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+h:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Fa).join(`
`),g=[Tm(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+h:"",e.envMap?"#define "+d:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==es?"#define TONE_MAPPING":"",e.toneMapping!==es?ye.tonemapping_pars_fragment:"",e.toneMapping!==es?bS("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",ye.colorspace_pars_fragment,MS("linearToOutputTexel",e.outputColorSpace),wS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Fa).join(`
`)),o=hd(o),o=bm(o,e),o=wm(o,e),a=hd(a),a=bm(a,e),a=wm(a,e),o=Em(o),a=Em(a),e.isRawShaderMaterial!==!0&&(_=`#version 300 es
`,x=[u,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+x,g=["#define varying in",e.glslVersion===Zu?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===Zu?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+g);let y=_+x+o,E=_+g+a,M=vm(s,s.VERTEX_SHADER,y),P=vm(s,s.FRAGMENT_SHADER,E);s.attachShader(p,M),s.attachShader(p,P),e.index0AttributeName!==void 0?s.bindAttribLocation(p,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(p,0,"position"),s.linkProgram(p);function w(C){if(i.debug.checkShaderErrors){let L=s.getProgramInfoLog(p)||"",k=s.getShaderInfoLog(M)||"",z=s.getShaderInfoLog(P)||"",I=L.trim(),V=k.trim(),H=z.trim(),B=!0,Y=!0;if(s.getProgramParameter(p,s.LINK_STATUS)===!1)if(B=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,p,M,P);else{let X=Sm(s,M,"vertex"),K=Sm(s,P,"fragment");he("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(p,s.VALIDATE_STATUS)+`

Material Name: `+C.name+`
Material Type: `+C.type+`

Program Info Log: `+I+`
`+X+`
`+K)}else I!==""?se("WebGLProgram: Program Info Log:",I):(V===""||H==="")&&(Y=!1);Y&&(C.diagnostics={runnable:B,programLog:I,vertexShader:{log:V,prefix:x},fragmentShader:{log:H,prefix:g}})}s.deleteShader(M),s.deleteShader(P),m=new Mo(s,p),b=AS(s,p)}let m;this.getUniforms=function(){return m===void 0&&w(this),m};let b;this.getAttributes=function(){return b===void 0&&w(this),b};let U=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return U===!1&&(U=s.getProgramParameter(p,_S)),U},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(p),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=xS++,this.cacheKey=t,this.usedTimes=1,this.program=p,this.vertexShader=M,this.fragmentShader=P,this}var kS=0,ud=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new dd(t),e.set(t,n)),n}},dd=class{constructor(t){this.id=kS++,this.code=t,this.usedTimes=0}};function zS(i){return i===Ys||i===La||i===Da}function VS(i,t,e,n,s,r){let o=new ra,a=new ud,l=new Set,c=[],h=new Map,d=n.logarithmicDepthBuffer,u={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(m){return l.add(m),m===0?"uv":`uv${m}`}function p(m,b,U,C,L,k){let z=C.fog,I=L.geometry,V=m.isMeshStandardMaterial||m.isMeshLambertMaterial||m.isMeshPhongMaterial?C.environment:null,H=m.isMeshStandardMaterial||m.isMeshLambertMaterial&&!m.envMap||m.isMeshPhongMaterial&&!m.envMap,B=t.get(m.envMap||V,H),Y=u[m.type],X=n.precision;m.precision!==null&&(X=n.getMaxPrecision(m.precision),X!==m.precision&&se("WebGLProgram.getParameters:",m.precision,"not supported, using",X,"instead."));let K=I.morphAttributes.position||I.morphAttributes.normal||I.morphAttributes.color,$=K!==void 0?K.length:0,at=0;I.morphAttributes.position!==void 0&&(at=1),I.morphAttributes.normal!==void 0&&(at=2),I.morphAttributes.color!==void 0&&(at=3);let ot,Q,yt,Z;if(Y){let Ut=is[Y];ot=Ut.vertexShader,Q=Ut.fragmentShader}else{ot=m.vertexShader,Q=m.fragmentShader;let Ut=a.getVertexShaderStage(m),me=a.getFragmentShaderStage(m);a.update(m,Ut,me),yt=Ut.id,Z=me.id}let it=i.getRenderTarget(),st=i.state.buffers.depth.getReversed(),pt=L.isInstancedMesh===!0,Tt=L.isBatchedMesh===!0,bt=!!m.map,ee=!!m.matcap,ne=!!B,Zt=ne&&B.isPMREMTexture===!0,Se=!!m.aoMap,Kt=!!m.lightMap,Ae=!!m.bumpMap&&m.wireframe===!1,pe=!!m.normalMap,Me=!!m.displacementMap,_e=!!m.emissiveMap,nn=!!m.metalnessMap,ft=!!m.roughnessMap,At=m.anisotropy>0,D=m.clearcoat>0,_t=m.diffuseRoughness>0,Ot=m.dispersion>0,kt=m.retroreflectivity>0,St=m.iridescence>0,ie=m.sheen>0,Vt=m.transmission>0,jt=At&&!!m.anisotropyMap,N=D&&!!m.clearcoatMap,T=D&&!!m.clearcoatNormalMap,j=D&&!!m.clearcoatRoughnessMap,Mt=_t&&!!m.diffuseRoughnessMap,gt=St&&!!m.iridescenceMap,Ct=St&&!!m.iridescenceThicknessMap,Pt=ie&&!!m.sheenColorMap,lt=ie&&!!m.sheenRoughnessMap,dt=!!m.specularMap,Et=!!m.specularColorMap,G=!!m.specularIntensityMap,mt=Vt&&!!m.transmissionMap,ct=Vt&&!!m.thicknessMap,Dt=!!m.gradientMap,Rt=!!m.alphaMap,Lt=m.alphaTest>0,Qt=!!m.alphaHash,oe=!!m.extensions,vt=es;m.toneMapped&&(it===null||it.isXRRenderTarget===!0)&&(vt=i.toneMapping);let qt=Zt?B.isCompressedCubeTexture?B.image[0].mipmaps:B.mipmaps:null,ae={shaderID:Y,shaderType:m.type,shaderName:m.name,vertexShader:ot,fragmentShader:Q,defines:m.defines,customVertexShaderID:yt,customFragmentShaderID:Z,isRawShaderMaterial:m.isRawShaderMaterial===!0,glslVersion:m.glslVersion,precision:X,batching:Tt,batchingColor:Tt&&L._colorsTexture!==null,instancing:pt,instancingColor:pt&&L.instanceColor!==null,instancingMorph:pt&&L.morphTexture!==null,outputColorSpace:it===null?i.outputColorSpace:it.isXRRenderTarget===!0?it.texture.colorSpace:Ce.workingColorSpace,alphaToCoverage:!!m.alphaToCoverage,map:bt,matcap:ee,envMap:ne,envMapMode:ne&&B.mapping,envMapPMREM:Zt,envMapMaxLod:Zt?qt.length-1:null,envMapSize:Zt?qt[0].width:null,aoMap:Se,lightMap:Kt,bumpMap:Ae,normalMap:pe,displacementMap:Me,emissiveMap:_e,normalMapObjectSpace:pe&&m.normalMapType===Xp,normalMapTangentSpace:pe&&m.normalMapType===Yc,packedNormalMap:pe&&m.normalMapType===Yc&&zS(m.normalMap.format),metalnessMap:nn,roughnessMap:ft,anisotropy:At,anisotropyMap:jt,clearcoat:D,clearcoatMap:N,clearcoatNormalMap:T,clearcoatRoughnessMap:j,diffuseRoughness:_t,diffuseRoughnessMap:Mt,dispersion:Ot,retroreflection:kt,iridescence:St,iridescenceMap:gt,iridescenceThicknessMap:Ct,sheen:ie,sheenColorMap:Pt,sheenRoughnessMap:lt,specularMap:dt,specularColorMap:Et,specularIntensityMap:G,transmission:Vt,transmissionMap:mt,thicknessMap:ct,gradientMap:Dt,opaque:m.transparent===!1&&m.blending===_o&&m.alphaToCoverage===!1,alphaMap:Rt,alphaTest:Lt,alphaHash:Qt,combine:m.combine,mapUv:bt&&f(m.map.channel),aoMapUv:Se&&f(m.aoMap.channel),lightMapUv:Kt&&f(m.lightMap.channel),bumpMapUv:Ae&&f(m.bumpMap.channel),normalMapUv:pe&&f(m.normalMap.channel),displacementMapUv:Me&&f(m.displacementMap.channel),emissiveMapUv:_e&&f(m.emissiveMap.channel),metalnessMapUv:nn&&f(m.metalnessMap.channel),roughnessMapUv:ft&&f(m.roughnessMap.channel),anisotropyMapUv:jt&&f(m.anisotropyMap.channel),clearcoatMapUv:N&&f(m.clearcoatMap.channel),clearcoatNormalMapUv:T&&f(m.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:j&&f(m.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:Mt&&f(m.diffuseRoughnessMap.channel),iridescenceMapUv:gt&&f(m.iridescenceMap.channel),iridescenceThicknessMapUv:Ct&&f(m.iridescenceThicknessMap.channel),sheenColorMapUv:Pt&&f(m.sheenColorMap.channel),sheenRoughnessMapUv:lt&&f(m.sheenRoughnessMap.channel),specularMapUv:dt&&f(m.specularMap.channel),specularColorMapUv:Et&&f(m.specularColorMap.channel),specularIntensityMapUv:G&&f(m.specularIntensityMap.channel),transmissionMapUv:mt&&f(m.transmissionMap.channel),thicknessMapUv:ct&&f(m.thicknessMap.channel),alphaMapUv:Rt&&f(m.alphaMap.channel),vertexTangents:!!I.attributes.tangent&&(pe||At),vertexNormals:!!I.attributes.normal,vertexColors:m.vertexColors,vertexAlphas:m.vertexColors===!0&&!!I.attributes.color&&I.attributes.color.itemSize===4,pointsUvs:L.isPoints===!0&&!!I.attributes.uv&&(bt||Rt),fog:!!z,useFog:m.fog===!0,fogExp2:!!z&&z.isFogExp2,flatShading:m.wireframe===!1&&(m.flatShading===!0||I.attributes.normal===void 0&&pe===!1&&(m.isMeshLambertMaterial||m.isMeshPhongMaterial||m.isMeshStandardMaterial||m.isMeshPhysicalMaterial)),sizeAttenuation:m.sizeAttenuation===!0,logarithmicDepthBuffer:d,reversedDepthBuffer:st,skinning:L.isSkinnedMesh===!0,hasPositionAttribute:I.attributes.position!==void 0,morphTargets:I.morphAttributes.position!==void 0,morphNormals:I.morphAttributes.normal!==void 0,morphColors:I.morphAttributes.color!==void 0,morphTargetsCount:$,morphTextureStride:at,numSunLights:b.sun.length,numDirLights:b.directional.length,numPointLights:b.point.length,numSpotLights:b.spot.length,numSpotLightMaps:b.spotLightMap.length,numRectAreaLights:b.rectArea.length,numHemiLights:b.hemi.length,numSunLightShadows:b.sunShadowMap.length,numDirLightShadows:b.directionalShadowMap.length,numPointLightShadows:b.pointShadowMap.length,numSpotLightShadows:b.spotShadowMap.length,numSpotLightShadowsWithMaps:b.numSpotLightShadowsWithMaps,numLightProbes:b.numLightProbes,numLightProbeGrids:k.filter(Ut=>Ut.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:m.dithering,shadowMapEnabled:i.shadowMap.enabled&&U.length>0,shadowMapType:i.shadowMap.type,toneMapping:vt,decodeVideoTexture:bt&&m.map.isVideoTexture===!0&&Ce.getTransfer(m.map.colorSpace)===Oe,decodeVideoTextureEmissive:_e&&m.emissiveMap.isVideoTexture===!0&&Ce.getTransfer(m.emissiveMap.colorSpace)===Oe,premultipliedAlpha:m.premultipliedAlpha,doubleSided:m.side===ts,flipSided:m.side===Un,useDepthPacking:m.depthPacking>=0,depthPacking:m.depthPacking||0,index0AttributeName:m.index0AttributeName,extensionClipCullDistance:oe&&m.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(oe&&m.extensions.multiDraw===!0||Tt)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:m.customProgramCacheKey()};return ae.vertexUv1s=l.has(1),ae.vertexUv2s=l.has(2),ae.vertexUv3s=l.has(3),l.clear(),ae}function x(m){let b=[];if(m.shaderID?b.push(m.shaderID):(b.push(m.customVertexShaderID),b.push(m.customFragmentShaderID)),m.defines!==void 0)for(let U in m.defines)b.push(U),b.push(m.defines[U]);return m.isRawShaderMaterial===!1&&(g(b,m),_(b,m),b.push(i.outputColorSpace)),b.push(m.customProgramCacheKey),b.join()}function g(m,b){m.push(b.precision),m.push(b.outputColorSpace),m.push(b.envMapMode),m.push(b.envMapPMREM),m.push(b.envMapMaxLod),m.push(b.envMapSize),m.push(b.mapUv),m.push(b.alphaMapUv),m.push(b.lightMapUv),m.push(b.aoMapUv),m.push(b.bumpMapUv),m.push(b.normalMapUv),m.push(b.displacementMapUv),m.push(b.emissiveMapUv),m.push(b.metalnessMapUv),m.push(b.roughnessMapUv),m.push(b.anisotropyMapUv),m.push(b.clearcoatMapUv),m.push(b.clearcoatNormalMapUv),m.push(b.clearcoatRoughnessMapUv),m.push(b.diffuseRoughnessMapUv),m.push(b.iridescenceMapUv),m.push(b.iridescenceThicknessMapUv),m.push(b.sheenColorMapUv),m.push(b.sheenRoughnessMapUv),m.push(b.specularMapUv),m.push(b.specularColorMapUv),m.push(b.specularIntensityMapUv),m.push(b.transmissionMapUv),m.push(b.thicknessMapUv),m.push(b.combine),m.push(b.fogExp2),m.push(b.sizeAttenuation),m.push(b.morphTargetsCount),m.push(b.numSunLights),m.push(b.numDirLights),m.push(b.numPointLights),m.push(b.numSpotLights),m.push(b.numSpotLightMaps),m.push(b.numHemiLights),m.push(b.numRectAreaLights),m.push(b.numSunLightShadows),m.push(b.numDirLightShadows),m.push(b.numPointLightShadows),m.push(b.numSpotLightShadows),m.push(b.numSpotLightShadowsWithMaps),m.push(b.numLightProbes),m.push(b.numLightProbeGrids),m.push(b.shadowMapType),m.push(b.toneMapping),m.push(b.numClippingPlanes),m.push(b.numClipIntersection),m.push(b.depthPacking)}function _(m,b){o.disableAll(),b.instancing&&o.enable(0),b.instancingColor&&o.enable(1),b.instancingMorph&&o.enable(2),b.matcap&&o.enable(3),b.envMap&&o.enable(4),b.normalMapObjectSpace&&o.enable(5),b.normalMapTangentSpace&&o.enable(6),b.clearcoat&&o.enable(7),b.iridescence&&o.enable(8),b.alphaTest&&o.enable(9),b.vertexColors&&o.enable(10),b.vertexAlphas&&o.enable(11),b.vertexUv1s&&o.enable(12),b.vertexUv2s&&o.enable(13),b.vertexUv3s&&o.enable(14),b.vertexTangents&&o.enable(15),b.anisotropy&&o.enable(16),b.alphaHash&&o.enable(17),b.batching&&o.enable(18),b.dispersion&&o.enable(19),b.retroreflection&&o.enable(24),b.diffuseRoughness&&o.enable(25),b.batchingColor&&o.enable(20),b.gradientMap&&o.enable(21),b.packedNormalMap&&o.enable(22),b.vertexNormals&&o.enable(23),m.push(o.mask),o.disableAll(),b.fog&&o.enable(0),b.useFog&&o.enable(1),b.flatShading&&o.enable(2),b.logarithmicDepthBuffer&&o.enable(3),b.reversedDepthBuffer&&o.enable(4),b.skinning&&o.enable(5),b.morphTargets&&o.enable(6),b.morphNormals&&o.enable(7),b.morphColors&&o.enable(8),b.premultipliedAlpha&&o.enable(9),b.shadowMapEnabled&&o.enable(10),b.doubleSided&&o.enable(11),b.flipSided&&o.enable(12),b.useDepthPacking&&o.enable(13),b.dithering&&o.enable(14),b.transmission&&o.enable(15),b.sheen&&o.enable(16),b.opaque&&o.enable(17),b.pointsUvs&&o.enable(18),b.decodeVideoTexture&&o.enable(19),b.decodeVideoTextureEmissive&&o.enable(20),b.alphaToCoverage&&o.enable(21),b.numLightProbeGrids>0&&o.enable(22),b.hasPositionAttribute&&o.enable(23),m.push(o.mask)}function y(m){let b=u[m.type],U;if(b){let C=is[b];U=am.clone(C.uniforms)}else U=m.uniforms;return U}function E(m,b){let U=h.get(b);return U!==void 0?++U.usedTimes:(U=new BS(i,b,m,s),c.push(U),h.set(b,U)),U}function M(m){if(--m.usedTimes===0){let b=c.indexOf(m);c[b]=c[c.length-1],c.pop(),h.delete(m.cacheKey),m.destroy()}}function P(m){a.remove(m)}function w(){a.dispose()}return{getParameters:p,getProgramCacheKey:x,getUniforms:y,acquireProgram:E,releaseProgram:M,releaseShaderCache:P,programs:c,dispose:w}}function HS(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function GS(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function Am(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function Rm(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(u){let f=0;return u.isInstancedMesh&&(f+=2),u.isSkinnedMesh&&(f+=1),f}function a(u,f,p,x,g,_){let y=i[t];return y===void 0?(y={id:u.id,object:u,geometry:f,material:p,materialVariant:o(u),groupOrder:x,renderOrder:u.renderOrder,z:g,group:_},i[t]=y):(y.id=u.id,y.object=u,y.geometry=f,y.material=p,y.materialVariant=o(u),y.groupOrder=x,y.renderOrder=u.renderOrder,y.z=g,y.group=_),t++,y}function l(u,f,p,x,g,_,y){y.reversedDepth===!0&&(g=-g);let E=a(u,f,p,x,g,_);p.transmission>0?n.push(E):p.transparent===!0?s.push(E):e.push(E)}function c(u,f,p,x,g,_){let y=a(u,f,p,x,g,_);p.transmission>0?n.unshift(y):p.transparent===!0?s.unshift(y):e.unshift(y)}function h(u,f){e.length>1&&e.sort(u||GS),n.length>1&&n.sort(f||Am),s.length>1&&s.sort(f||Am)}function d(){for(let u=t,f=i.length;u<f;u++){let p=i[u];if(p.id===null)break;p.id=null,p.object=null,p.geometry=null,p.material=null,p.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:d,sort:h}}function WS(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new Rm,i.set(n,[o])):s>=r.length?(o=new Rm,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function $S(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new J,color:new ge};break;case"SpotLight":e={position:new J,direction:new J,color:new ge,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new J,color:new ge,distance:0,decay:0};break;case"HemisphereLight":e={direction:new J,skyColor:new ge,groundColor:new ge};break;case"RectAreaLight":e={color:new ge,position:new J,halfWidth:new J,halfHeight:new J};break}return i[t.id]=e,e}}}function XS(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new le};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new le};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new le,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var qS=0;function YS(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function ZS(i){let t=new $S,e=XS(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new J);let s=new J,r=new Ne,o=new Ne;function a(c){let h=0,d=0,u=0;for(let k=0;k<9;k++)n.probe[k].set(0,0,0);let f=0,p=0,x=0,g=0,_=0,y=0,E=0,M=0,P=0,w=0,m=0,b=0,U=0,C=0;c.sort(YS);for(let k=0,z=c.length;k<z;k++){let I=c[k],V=I.color,H=I.intensity,B=I.distance,Y=null;if(I.shadow&&I.shadow.map&&(I.shadow.map.texture.format===Ys?Y=I.shadow.map.texture:Y=I.shadow.map.depthTexture||I.shadow.map.texture),I.isAmbientLight)h+=V.r*H,d+=V.g*H,u+=V.b*H;else if(I.isLightProbe){for(let X=0;X<9;X++)n.probe[X].addScaledVector(I.sh.coefficients[X],H);C++}else if(I.isSunLight){let X=t.get(I);if(X.color.copy(I.color).multiplyScalar(I.intensity),I.castShadow){let K=I.shadow,$=e.get(I);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize.copy(K.mapSize).multiply(K.getFrameExtents()),n.sunShadow[p]=$,n.sunShadowMap[p]=Y;let at=K.getViewportCount();for(let ot=0;ot<at;ot++)n.sunShadowMatrix[x+ot]=K.getMatrix(ot),n.sunShadowCascade[x+ot]=K._cascadeData[ot];x+=at,p++}n.sun[f]=X,f++}else if(I.isDirectionalLight){let X=t.get(I);if(X.color.copy(I.color).multiplyScalar(I.intensity),I.castShadow){let K=I.shadow,$=e.get(I);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize=K.mapSize,n.directionalShadow[g]=$,n.directionalShadowMap[g]=Y,n.directionalShadowMatrix[g]=I.shadow.matrix,P++}n.directional[g]=X,g++}else if(I.isSpotLight){let X=t.get(I);X.position.setFromMatrixPosition(I.matrixWorld),X.color.copy(V).multiplyScalar(H),X.distance=B,X.coneCos=Math.cos(I.angle),X.penumbraCos=Math.cos(I.angle*(1-I.penumbra)),X.decay=I.decay,n.spot[y]=X;let K=I.shadow;if(I.map&&(n.spotLightMap[b]=I.map,b++,K.updateMatrices(I),I.castShadow&&U++),n.spotLightMatrix[y]=K.matrix,I.castShadow){let $=e.get(I);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize=K.mapSize,n.spotShadow[y]=$,n.spotShadowMap[y]=Y,m++}y++}else if(I.isRectAreaLight){let X=t.get(I);X.color.copy(V).multiplyScalar(H),X.halfWidth.set(I.width*.5,0,0),X.halfHeight.set(0,I.height*.5,0),n.rectArea[E]=X,E++}else if(I.isPointLight){let X=t.get(I);if(X.color.copy(I.color).multiplyScalar(I.intensity),X.distance=I.distance,X.decay=I.decay,I.castShadow){let K=I.shadow,$=e.get(I);$.shadowIntensity=K.intensity,$.shadowBias=K.bias,$.shadowNormalBias=K.normalBias,$.shadowRadius=K.radius,$.shadowMapSize=K.mapSize,$.shadowCameraNear=K.camera.near,$.shadowCameraFar=K.camera.far,n.pointShadow[_]=$,n.pointShadowMap[_]=Y,n.pointShadowMatrix[_]=I.shadow.matrix,w++}n.point[_]=X,_++}else if(I.isHemisphereLight){let X=t.get(I);X.skyColor.copy(I.color).multiplyScalar(H),X.groundColor.copy(I.groundColor).multiplyScalar(H),n.hemi[M]=X,M++}}E>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Ht.LTC_FLOAT_1,n.rectAreaLTC2=Ht.LTC_FLOAT_2):(n.rectAreaLTC1=Ht.LTC_HALF_1,n.rectAreaLTC2=Ht.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=d,n.ambient[2]=u;let L=n.hash;(L.sunLength!==f||L.directionalLength!==g||L.pointLength!==_||L.spotLength!==y||L.rectAreaLength!==E||L.hemiLength!==M||L.numSunShadows!==p||L.numDirectionalShadows!==P||L.numPointShadows!==w||L.numSpotShadows!==m||L.numSpotMaps!==b||L.numLightProbes!==C)&&(n.sun.length=f,n.directional.length=g,n.spot.length=y,n.rectArea.length=E,n.point.length=_,n.hemi.length=M,n.sunShadow.length=p,n.sunShadowMap.length=p,n.sunShadowMatrix.length=x,n.sunShadowCascade.length=x,n.directionalShadow.length=P,n.directionalShadowMap.length=P,n.directionalShadowMatrix.length=P,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=m,n.spotShadowMap.length=m,n.spotLightMatrix.length=m+b-U,n.spotLightMap.length=b,n.numSpotLightShadowsWithMaps=U,n.numLightProbes=C,L.sunLength=f,L.directionalLength=g,L.pointLength=_,L.spotLength=y,L.rectAreaLength=E,L.hemiLength=M,L.numSunShadows=p,L.numDirectionalShadows=P,L.numPointShadows=w,L.numSpotShadows=m,L.numSpotMaps=b,L.numLightProbes=C,n.version=qS++)}function l(c,h){let d=0,u=0,f=0,p=0,x=0,g=0,_=h.matrixWorldInverse;for(let y=0,E=c.length;y<E;y++){let M=c[y];if(M.isSunLight){let P=n.sun[d];P.direction.setFromMatrixPosition(M.matrixWorld),P.direction.transformDirection(_),d++}else if(M.isDirectionalLight){let P=n.directional[u];P.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),P.direction.sub(s),P.direction.transformDirection(_),u++}else if(M.isSpotLight){let P=n.spot[p];P.position.setFromMatrixPosition(M.matrixWorld),P.position.applyMatrix4(_),P.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),P.direction.sub(s),P.direction.transformDirection(_),p++}else if(M.isRectAreaLight){let P=n.rectArea[x];P.position.setFromMatrixPosition(M.matrixWorld),P.position.applyMatrix4(_),o.identity(),r.copy(M.matrixWorld),r.premultiply(_),o.extractRotation(r),P.halfWidth.set(M.width*.5,0,0),P.halfHeight.set(0,M.height*.5,0),P.halfWidth.applyMatrix4(o),P.halfHeight.applyMatrix4(o),x++}else if(M.isPointLight){let P=n.point[f];P.position.setFromMatrixPosition(M.matrixWorld),P.position.applyMatrix4(_),f++}else if(M.isHemisphereLight){let P=n.hemi[g];P.direction.setFromMatrixPosition(M.matrixWorld),P.direction.transformDirection(_),g++}}}return{setup:a,setupView:l,state:n}}function Cm(i){let t=new ZS(i),e=[],n=[],s=[];function r(d){h.camera=d,e.length=0,n.length=0,s.length=0}function o(d){d.isLightProbeGrid?s.push(d):e.push(d)}function a(d){n.push(d)}function l(){t.setup(e),s.sort((d,u)=>d.priority-u.priority||d.id-u.id)}function c(d){t.setupView(e,d)}let h={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function JS(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new Cm(i),t.set(s,[a])):r>=o.length?(a=new Cm(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var KS=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,jS=`uniform sampler2D shadow_pass;
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
}`,QS=[new J(1,0,0),new J(-1,0,0),new J(0,1,0),new J(0,-1,0),new J(0,0,1),new J(0,0,-1)],tb=[new J(0,-1,0),new J(0,-1,0),new J(0,0,1),new J(0,0,-1),new J(0,-1,0),new J(0,-1,0)],Pm=new Ne,Na=new J,od=new J;function eb(i,t,e){let n=new Vs,s=new le,r=new le,o=new en,a=new ql,l=new Yl,c={},h=e.maxTextureSize,d={[qs]:Un,[Un]:qs,[ts]:ts},u=new Qi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new le},radius:{value:4}},vertexShader:KS,fragmentShader:jS}),f=u.clone();f.defines.HORIZONTAL_PASS=1;let p=new Zn;p.setAttribute("position",new Li(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let x=new gn(p,u),g=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Ta;let _=this.type;this.render=function(w,m,b){if(g.enabled===!1||g.autoUpdate===!1&&g.needsUpdate===!1||w.length===0)return;this.type===bp&&(se("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Ta);let U=i.getRenderTarget(),C=i.getActiveCubeFace(),L=i.getActiveMipmapLevel(),k=i.state;k.setBlending(mr),k.buffers.depth.getReversed()===!0?k.buffers.color.setClear(0,0,0,0):k.buffers.color.setClear(1,1,1,1),k.buffers.depth.setTest(!0),k.setScissorTest(!1);let z=_!==this.type;z&&m.traverse(function(I){I.material&&(Array.isArray(I.material)?I.material.forEach(V=>V.needsUpdate=!0):I.material.needsUpdate=!0)});for(let I=0,V=w.length;I<V;I++){let H=w[I],B=H.shadow;if(B===void 0){se("WebGLShadowMap:",H,"has no shadow.");continue}if(B.autoUpdate===!1&&B.needsUpdate===!1)continue;s.copy(B.mapSize);let Y=B.getFrameExtents();s.multiply(Y),r.copy(B.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/Y.x),s.x=r.x*Y.x,B.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/Y.y),s.y=r.y*Y.y,B.mapSize.y=r.y));let X=i.state.buffers.depth.getReversed();if(B.camera._reversedDepth=X,B.map===null||z===!0){if(B.map!==null&&(B.map.depthTexture!==null&&(B.map.depthTexture.dispose(),B.map.depthTexture=null),B.map.dispose()),this.type===go){if(H.isPointLight){se("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}B.map=new ui(s.x,s.y,{format:Ys,type:Fi,minFilter:Yn,magFilter:Yn,generateMipmaps:!1}),B.map.texture.name=H.name+".shadowMap",B.map.depthTexture=new Ss(s.x,s.y,Mi),B.map.depthTexture.name=H.name+".shadowMapDepth",B.map.depthTexture.format=xs,B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=In,B.map.depthTexture.magFilter=In}else H.isPointLight?(B.map=new Ua(s.x),B.map.depthTexture=new fa(s.x,Ni)):(B.map=new ui(s.x,s.y),B.map.depthTexture=new Ss(s.x,s.y,Ni)),B.map.depthTexture.name=H.name+".shadowMap",B.map.depthTexture.format=xs,this.type===Ta?(B.map.depthTexture.compareFunction=X?qu:Xu,B.map.depthTexture.minFilter=Yn,B.map.depthTexture.magFilter=Yn):(B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=In,B.map.depthTexture.magFilter=In);B.camera.updateProjectionMatrix()}B.map.isWebGLCubeRenderTarget!==!0&&(B.map.width!==s.x||B.map.height!==s.y)&&B.map.setSize(s.x,s.y);let K=B.map.isWebGLCubeRenderTarget?6:B.getViewportCount();H.isPointLight!==!0&&B.updateMatrices(H,b);let $=(B.camera.layers.mask&4294967294)!==0?B.camera.layers:b.layers;for(let at=0;at<K;at++){let ot=B.getCamera(at);if(H.isPointLight){let Q=B.camera,yt=B.matrix,Z=H.distance||Q.far;Z!==Q.far&&(Q.far=Z,Q.updateProjectionMatrix()),Na.setFromMatrixPosition(H.matrixWorld),Q.position.copy(Na),od.copy(Q.position),od.add(QS[at]),Q.up.copy(tb[at]),Q.lookAt(od),Q.updateMatrixWorld(),yt.makeTranslation(-Na.x,-Na.y,-Na.z),Pm.multiplyMatrices(Q.projectionMatrix,Q.matrixWorldInverse),B._frustum.setFromProjectionMatrix(Pm,Q.coordinateSystem,Q.reversedDepth)}if(B.map.isWebGLCubeRenderTarget)i.setRenderTarget(B.map,at),i.clear();else{at===0&&(i.setRenderTarget(B.map),i.clear());let Q=B.getViewport(at);o.set(r.x*Q.x,r.y*Q.y,r.x*Q.z,r.y*Q.w),k.viewport(o)}n=B.getFrustum(at),M(m,b,ot,H,$,this.type)}B.isPointLightShadow!==!0&&this.type===go&&y(B,b),B.needsUpdate=!1}_=this.type,g.needsUpdate=!1,i.setRenderTarget(U,C,L)};function y(w,m){let b=t.update(x);u.defines.VSM_SAMPLES!==w.blurSamples&&(u.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,u.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new ui(s.x,s.y,{format:Ys,type:Fi}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),u.uniforms.shadow_pass.value=w.map.depthTexture,u.uniforms.resolution.value.set(w.map.width,w.map.height),u.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(m,null,b,u,x,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(m,null,b,f,x,null)}function E(w,m,b,U){let C=null,L=b.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(L!==void 0)C=L;else if(C=b.isPointLight===!0?l:a,i.localClippingEnabled&&m.clipShadows===!0&&Array.isArray(m.clippingPlanes)&&m.clippingPlanes.length!==0||m.displacementMap&&m.displacementScale!==0||m.alphaMap&&m.alphaTest>0||m.map&&m.alphaTest>0||m.alphaToCoverage===!0){let k=C.uuid,z=m.uuid,I=c[k];I===void 0&&(I={},c[k]=I);let V=I[z];V===void 0&&(V=C.clone(),I[z]=V,m.addEventListener("dispose",P)),C=V}if(C.visible=m.visible,C.wireframe=m.wireframe,U===go?C.side=m.shadowSide!==null?m.shadowSide:m.side:C.side=m.shadowSide!==null?m.shadowSide:d[m.side],C.alphaMap=m.alphaMap,C.alphaTest=m.alphaToCoverage===!0?.5:m.alphaTest,C.map=m.map,C.clipShadows=m.clipShadows,C.clippingPlanes=m.clippingPlanes,C.clipIntersection=m.clipIntersection,C.displacementMap=m.displacementMap,C.displacementScale=m.displacementScale,C.displacementBias=m.displacementBias,C.wireframeLinewidth=m.wireframeLinewidth,C.linewidth=m.linewidth,b.isPointLight===!0&&C.isMeshDistanceMaterial===!0){let k=i.properties.get(C);k.light=b}return C}function M(w,m,b,U,C,L){if(w.visible===!1)return;if(w.layers.test(C)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&L===go)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(b.matrixWorldInverse,w.matrixWorld);let I=t.update(w),V=w.material;if(Array.isArray(V)){let H=I.groups;for(let B=0,Y=H.length;B<Y;B++){let X=H[B],K=V[X.materialIndex];if(K&&K.visible){let $=E(w,K,U,L);w.onBeforeShadow(i,w,m,b,I,$,X),i.renderBufferDirect(b,null,I,$,w,X),w.onAfterShadow(i,w,m,b,I,$,X)}}}else if(V.visible){let H=E(w,V,U,L);w.onBeforeShadow(i,w,m,b,I,H,null),i.renderBufferDirect(b,null,I,H,w,null),w.onAfterShadow(i,w,m,b,I,H,null)}}let z=w.children;for(let I=0,V=z.length;I<V;I++)M(z[I],m,b,U,C,L)}function P(w){w.target.removeEventListener("dispose",P);for(let b in c){let U=c[b],C=w.target.uuid;C in U&&(U[C].dispose(),delete U[C])}}}function nb(i,t){function e(){let G=!1,mt=new en,ct=null,Dt=new en(0,0,0,0);return{setMask:function(Rt){ct!==Rt&&!G&&(i.colorMask(Rt,Rt,Rt,Rt),ct=Rt)},setLocked:function(Rt){G=Rt},setClear:function(Rt,Lt,Qt,oe,vt){vt===!0&&(Rt*=oe,Lt*=oe,Qt*=oe),mt.set(Rt,Lt,Qt,oe),Dt.equals(mt)===!1&&(i.clearColor(Rt,Lt,Qt,oe),Dt.copy(mt))},reset:function(){G=!1,ct=null,Dt.set(-1,0,0,0)}}}function n(){let G=!1,mt=!1,ct=null,Dt=null,Rt=null;return{setReversed:function(Lt){if(mt!==Lt){let Qt=t.get("EXT_clip_control");Lt?Qt.clipControlEXT(Qt.LOWER_LEFT_EXT,Qt.ZERO_TO_ONE_EXT):Qt.clipControlEXT(Qt.LOWER_LEFT_EXT,Qt.NEGATIVE_ONE_TO_ONE_EXT),mt=Lt;let oe=Rt;Rt=null,this.setClear(oe)}},getReversed:function(){return mt},setTest:function(Lt){Lt?st(i.DEPTH_TEST):pt(i.DEPTH_TEST)},setMask:function(Lt){ct!==Lt&&!G&&(i.depthMask(Lt),ct=Lt)},setFunc:function(Lt){if(mt&&(Lt=im[Lt]),Dt!==Lt){switch(Lt){case Pl:i.depthFunc(i.NEVER);break;case Il:i.depthFunc(i.ALWAYS);break;case Ll:i.depthFunc(i.LESS);break;case so:i.depthFunc(i.LEQUAL);break;case Dl:i.depthFunc(i.EQUAL);break;case Nl:i.depthFunc(i.GEQUAL);break;case ro:i.depthFunc(i.GREATER);break;case Fl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Dt=Lt}},setLocked:function(Lt){G=Lt},setClear:function(Lt){Rt!==Lt&&(Rt=Lt,mt&&(Lt=1-Lt),i.clearDepth(Lt))},reset:function(){G=!1,ct=null,Dt=null,Rt=null,mt=!1}}}function s(){let G=!1,mt=null,ct=null,Dt=null,Rt=null,Lt=null,Qt=null,oe=null,vt=null;return{setTest:function(qt){G||(qt?st(i.STENCIL_TEST):pt(i.STENCIL_TEST))},setMask:function(qt){mt!==qt&&!G&&(i.stencilMask(qt),mt=qt)},setFunc:function(qt,ae,Ut){(ct!==qt||Dt!==ae||Rt!==Ut)&&(i.stencilFunc(qt,ae,Ut),ct=qt,Dt=ae,Rt=Ut)},setOp:function(qt,ae,Ut){(Lt!==qt||Qt!==ae||oe!==Ut)&&(i.stencilOp(qt,ae,Ut),Lt=qt,Qt=ae,oe=Ut)},setLocked:function(qt){G=qt},setClear:function(qt){vt!==qt&&(i.clearStencil(qt),vt=qt)},reset:function(){G=!1,mt=null,ct=null,Dt=null,Rt=null,Lt=null,Qt=null,oe=null,vt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,h={},d={},u={},f=new WeakMap,p=[],x=null,g=!1,_=null,y=null,E=null,M=null,P=null,w=null,m=null,b=new ge(0,0,0),U=0,C=!1,L=null,k=null,z=null,I=null,V=null,H=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),B=!1,Y=0,X=i.getParameter(i.VERSION);X.indexOf("WebGL")!==-1?(Y=parseFloat(/^WebGL (\d)/.exec(X)[1]),B=Y>=1):X.indexOf("OpenGL ES")!==-1&&(Y=parseFloat(/^OpenGL ES (\d)/.exec(X)[1]),B=Y>=2);let K=null,$={},at=i.getParameter(i.SCISSOR_BOX),ot=i.getParameter(i.VIEWPORT),Q=new en().fromArray(at),yt=new en().fromArray(ot);function Z(G,mt,ct,Dt){let Rt=new Uint8Array(4),Lt=i.createTexture();i.bindTexture(G,Lt),i.texParameteri(G,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(G,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Qt=0;Qt<ct;Qt++)G===i.TEXTURE_3D||G===i.TEXTURE_2D_ARRAY?i.texImage3D(mt,0,i.RGBA,1,1,Dt,0,i.RGBA,i.UNSIGNED_BYTE,Rt):i.texImage2D(mt+Qt,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,Rt);return Lt}let it={};it[i.TEXTURE_2D]=Z(i.TEXTURE_2D,i.TEXTURE_2D,1),it[i.TEXTURE_CUBE_MAP]=Z(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),it[i.TEXTURE_2D_ARRAY]=Z(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),it[i.TEXTURE_3D]=Z(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),st(i.DEPTH_TEST),o.setFunc(so),Ae(!1),pe(Tu),st(i.CULL_FACE),Se(mr);function st(G){h[G]!==!0&&(i.enable(G),h[G]=!0)}function pt(G){h[G]!==!1&&(i.disable(G),h[G]=!1)}function Tt(G,mt){return u[G]!==mt?(i.bindFramebuffer(G,mt),u[G]=mt,G===i.DRAW_FRAMEBUFFER&&(u[i.FRAMEBUFFER]=mt),G===i.FRAMEBUFFER&&(u[i.DRAW_FRAMEBUFFER]=mt),!0):!1}function bt(G,mt){let ct=p,Dt=!1;if(G){ct=f.get(mt),ct===void 0&&(ct=[],f.set(mt,ct));let Rt=G.textures;if(ct.length!==Rt.length||ct[0]!==i.COLOR_ATTACHMENT0){for(let Lt=0,Qt=Rt.length;Lt<Qt;Lt++)ct[Lt]=i.COLOR_ATTACHMENT0+Lt;ct.length=Rt.length,Dt=!0}}else ct[0]!==i.BACK&&(ct[0]=i.BACK,Dt=!0);Dt&&i.drawBuffers(ct)}function ee(G){return x!==G?(i.useProgram(G),x=G,!0):!1}let ne={[gr]:i.FUNC_ADD,[Ep]:i.FUNC_SUBTRACT,[Tp]:i.FUNC_REVERSE_SUBTRACT};ne[Ap]=i.MIN,ne[Rp]=i.MAX;let Zt={[Cp]:i.ZERO,[Pp]:i.ONE,[Ip]:i.SRC_COLOR,[Pu]:i.SRC_ALPHA,[Op]:i.SRC_ALPHA_SATURATE,[Fp]:i.DST_COLOR,[Dp]:i.DST_ALPHA,[Lp]:i.ONE_MINUS_SRC_COLOR,[Iu]:i.ONE_MINUS_SRC_ALPHA,[Up]:i.ONE_MINUS_DST_COLOR,[Np]:i.ONE_MINUS_DST_ALPHA,[Bp]:i.CONSTANT_COLOR,[kp]:i.ONE_MINUS_CONSTANT_COLOR,[zp]:i.CONSTANT_ALPHA,[Vp]:i.ONE_MINUS_CONSTANT_ALPHA};function Se(G,mt,ct,Dt,Rt,Lt,Qt,oe,vt,qt){if(G===mr){g===!0&&(pt(i.BLEND),g=!1);return}if(g===!1&&(st(i.BLEND),g=!0),G!==wp){if(G!==_||qt!==C){if((y!==gr||P!==gr)&&(i.blendEquation(i.FUNC_ADD),y=gr,P=gr),qt)switch(G){case _o:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Au:i.blendFunc(i.ONE,i.ONE);break;case Ru:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Cu:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:he("WebGLState: Invalid blending: ",G);break}else switch(G){case _o:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Au:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Ru:he("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Cu:he("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:he("WebGLState: Invalid blending: ",G);break}E=null,M=null,w=null,m=null,b.set(0,0,0),U=0,_=G,C=qt}return}Rt=Rt||mt,Lt=Lt||ct,Qt=Qt||Dt,(mt!==y||Rt!==P)&&(i.blendEquationSeparate(ne[mt],ne[Rt]),y=mt,P=Rt),(ct!==E||Dt!==M||Lt!==w||Qt!==m)&&(i.blendFuncSeparate(Zt[ct],Zt[Dt],Zt[Lt],Zt[Qt]),E=ct,M=Dt,w=Lt,m=Qt),(oe.equals(b)===!1||vt!==U)&&(i.blendColor(oe.r,oe.g,oe.b,vt),b.copy(oe),U=vt),_=G,C=!1}function Kt(G,mt){G.side===ts?pt(i.CULL_FACE):st(i.CULL_FACE);let ct=G.side===Un;mt&&(ct=!ct),Ae(ct),G.blending===_o&&G.transparent===!1?Se(mr):Se(G.blending,G.blendEquation,G.blendSrc,G.blendDst,G.blendEquationAlpha,G.blendSrcAlpha,G.blendDstAlpha,G.blendColor,G.blendAlpha,G.premultipliedAlpha),o.setFunc(G.depthFunc),o.setTest(G.depthTest),o.setMask(G.depthWrite),r.setMask(G.colorWrite);let Dt=G.stencilWrite;a.setTest(Dt),Dt&&(a.setMask(G.stencilWriteMask),a.setFunc(G.stencilFunc,G.stencilRef,G.stencilFuncMask),a.setOp(G.stencilFail,G.stencilZFail,G.stencilZPass)),_e(G.polygonOffset,G.polygonOffsetFactor,G.polygonOffsetUnits),G.alphaToCoverage===!0?st(i.SAMPLE_ALPHA_TO_COVERAGE):pt(i.SAMPLE_ALPHA_TO_COVERAGE)}function Ae(G){L!==G&&(G?i.frontFace(i.CW):i.frontFace(i.CCW),L=G)}function pe(G){G!==Mp?(st(i.CULL_FACE),G!==k&&(G===Tu?i.cullFace(i.BACK):G===Sp?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):pt(i.CULL_FACE),k=G}function Me(G){G!==z&&(B&&i.lineWidth(G),z=G)}function _e(G,mt,ct){G?(st(i.POLYGON_OFFSET_FILL),(I!==mt||V!==ct)&&(I=mt,V=ct,o.getReversed()&&(mt=-mt,ct=-ct),i.polygonOffset(mt,ct))):pt(i.POLYGON_OFFSET_FILL)}function nn(G){G?st(i.SCISSOR_TEST):pt(i.SCISSOR_TEST)}function ft(G){G===void 0&&(G=i.TEXTURE0+H-1),K!==G&&(i.activeTexture(G),K=G)}function At(G,mt,ct){ct===void 0&&(K===null?ct=i.TEXTURE0+H-1:ct=K);let Dt=$[ct];Dt===void 0&&(Dt={type:void 0,texture:void 0},$[ct]=Dt),(Dt.type!==G||Dt.texture!==mt)&&(K!==ct&&(i.activeTexture(ct),K=ct),i.bindTexture(G,mt||it[G]),Dt.type=G,Dt.texture=mt)}function D(){let G=$[K];G!==void 0&&G.type!==void 0&&(i.bindTexture(G.type,null),G.type=void 0,G.texture=void 0)}function _t(){try{i.compressedTexImage2D(...arguments)}catch(G){he("WebGLState:",G)}}function Ot(){try{i.compressedTexImage3D(...arguments)}catch(G){he("WebGLState:",G)}}function kt(){try{i.texSubImage2D(...arguments)}catch(G){he("WebGLState:",G)}}function St(){try{i.texSubImage3D(...arguments)}catch(G){he("WebGLState:",G)}}function ie(){try{i.compressedTexSubImage2D(...arguments)}catch(G){he("WebGLState:",G)}}function Vt(){try{i.compressedTexSubImage3D(...arguments)}catch(G){he("WebGLState:",G)}}function jt(){try{i.texStorage2D(...arguments)}catch(G){he("WebGLState:",G)}}function N(){try{i.texStorage3D(...arguments)}catch(G){he("WebGLState:",G)}}function T(){try{i.texImage2D(...arguments)}catch(G){he("WebGLState:",G)}}function j(){try{i.texImage3D(...arguments)}catch(G){he("WebGLState:",G)}}function Mt(G){return d[G]!==void 0?d[G]:i.getParameter(G)}function gt(G,mt){d[G]!==mt&&(i.pixelStorei(G,mt),d[G]=mt)}function Ct(G){Q.equals(G)===!1&&(i.scissor(G.x,G.y,G.z,G.w),Q.copy(G))}function Pt(G){yt.equals(G)===!1&&(i.viewport(G.x,G.y,G.z,G.w),yt.copy(G))}function lt(G,mt){let ct=c.get(mt);ct===void 0&&(ct=new WeakMap,c.set(mt,ct));let Dt=ct.get(G);Dt===void 0&&(Dt=i.getUniformBlockIndex(mt,G.name),i.uniformBlockBinding(mt,Dt,Dt),ct.set(G,Dt))}function dt(G,mt,ct){let Rt=c.get(mt).get(G);l[Rt]!==ct&&(i.bindBufferBase(i.UNIFORM_BUFFER,Rt,ct),l[Rt]=ct)}function Et(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},d={},K=null,$={},u={},l={},f=new WeakMap,p=[],x=null,g=!1,_=null,y=null,E=null,M=null,P=null,w=null,m=null,b=new ge(0,0,0),U=0,C=!1,L=null,k=null,z=null,I=null,V=null,Q.set(0,0,i.canvas.width,i.canvas.height),yt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:st,disable:pt,bindFramebuffer:Tt,drawBuffers:bt,useProgram:ee,setBlending:Se,setMaterial:Kt,setFlipSided:Ae,setCullFace:pe,setLineWidth:Me,setPolygonOffset:_e,setScissorTest:nn,activeTexture:ft,bindTexture:At,unbindTexture:D,compressedTexImage2D:_t,compressedTexImage3D:Ot,texImage2D:T,texImage3D:j,pixelStorei:gt,getParameter:Mt,updateUBOMapping:lt,uniformBlockBinding:dt,texStorage2D:jt,texStorage3D:N,texSubImage2D:kt,texSubImage3D:St,compressedTexSubImage2D:ie,compressedTexSubImage3D:Vt,scissor:Ct,viewport:Pt,reset:Et}}function ib(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new le,h=new WeakMap,d=new Set,u,f=new WeakMap,p=new Set,x=new FinalizationRegistry(N=>p.delete(N)),g=!1;try{g=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function _(N,T){return g?new OffscreenCanvas(N,T):ia("canvas")}function y(N,T,j){let Mt=1,gt=jt(N);if((gt.width>j||gt.height>j)&&(Mt=j/Math.max(gt.width,gt.height)),Mt<1)if(typeof HTMLImageElement<"u"&&N instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&N instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&N instanceof ImageBitmap||typeof VideoFrame<"u"&&N instanceof VideoFrame){let Ct=Math.floor(Mt*gt.width),Pt=Math.floor(Mt*gt.height);u===void 0&&(u=_(Ct,Pt));let lt=T?_(Ct,Pt):u;return lt.width=Ct,lt.height=Pt,lt.getContext("2d").drawImage(N,0,0,Ct,Pt),se("WebGLRenderer: Texture has been resized from ("+gt.width+"x"+gt.height+") to ("+Ct+"x"+Pt+")."),lt}else return"data"in N&&se("WebGLRenderer: Image in DataTexture is too big ("+gt.width+"x"+gt.height+")."),N;return N}function E(N){return N.generateMipmaps}function M(N){i.generateMipmap(N)}function P(N){return N.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:N.isWebGL3DRenderTarget?i.TEXTURE_3D:N.isWebGLArrayRenderTarget||N.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(N,T,j,Mt,gt,Ct=!1){if(N!==null){if(i[N]!==void 0)return i[N];se("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+N+"'")}let Pt;Mt&&(Pt=t.get("EXT_texture_norm16"),Pt||se("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let lt=T;if(T===i.RED&&(j===i.FLOAT&&(lt=i.R32F),j===i.HALF_FLOAT&&(lt=i.R16F),j===i.UNSIGNED_BYTE&&(lt=i.R8),j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.R16_EXT),j===i.SHORT&&Pt&&(lt=Pt.R16_SNORM_EXT)),T===i.RED_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.R8UI),j===i.UNSIGNED_SHORT&&(lt=i.R16UI),j===i.UNSIGNED_INT&&(lt=i.R32UI),j===i.BYTE&&(lt=i.R8I),j===i.SHORT&&(lt=i.R16I),j===i.INT&&(lt=i.R32I)),T===i.RG&&(j===i.FLOAT&&(lt=i.RG32F),j===i.HALF_FLOAT&&(lt=i.RG16F),j===i.UNSIGNED_BYTE&&(lt=i.RG8),j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.RG16_EXT),j===i.SHORT&&Pt&&(lt=Pt.RG16_SNORM_EXT)),T===i.RG_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.RG8UI),j===i.UNSIGNED_SHORT&&(lt=i.RG16UI),j===i.UNSIGNED_INT&&(lt=i.RG32UI),j===i.BYTE&&(lt=i.RG8I),j===i.SHORT&&(lt=i.RG16I),j===i.INT&&(lt=i.RG32I)),T===i.RGB_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.RGB8UI),j===i.UNSIGNED_SHORT&&(lt=i.RGB16UI),j===i.UNSIGNED_INT&&(lt=i.RGB32UI),j===i.BYTE&&(lt=i.RGB8I),j===i.SHORT&&(lt=i.RGB16I),j===i.INT&&(lt=i.RGB32I)),T===i.RGBA_INTEGER&&(j===i.UNSIGNED_BYTE&&(lt=i.RGBA8UI),j===i.UNSIGNED_SHORT&&(lt=i.RGBA16UI),j===i.UNSIGNED_INT&&(lt=i.RGBA32UI),j===i.BYTE&&(lt=i.RGBA8I),j===i.SHORT&&(lt=i.RGBA16I),j===i.INT&&(lt=i.RGBA32I)),T===i.RGB&&(j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.RGB16_EXT),j===i.SHORT&&Pt&&(lt=Pt.RGB16_SNORM_EXT),j===i.UNSIGNED_INT_5_9_9_9_REV&&(lt=i.RGB9_E5),j===i.UNSIGNED_INT_10F_11F_11F_REV&&(lt=i.R11F_G11F_B10F)),T===i.RGBA){let dt=Ct?na:Ce.getTransfer(gt);j===i.FLOAT&&(lt=i.RGBA32F),j===i.HALF_FLOAT&&(lt=i.RGBA16F),j===i.UNSIGNED_BYTE&&(lt=dt===Oe?i.SRGB8_ALPHA8:i.RGBA8),j===i.UNSIGNED_SHORT&&Pt&&(lt=Pt.RGBA16_EXT),j===i.SHORT&&Pt&&(lt=Pt.RGBA16_SNORM_EXT),j===i.UNSIGNED_SHORT_4_4_4_4&&(lt=i.RGBA4),j===i.UNSIGNED_SHORT_5_5_5_1&&(lt=i.RGB5_A1)}return(lt===i.R16F||lt===i.R32F||lt===i.RG16F||lt===i.RG32F||lt===i.RGBA16F||lt===i.RGBA32F)&&t.get("EXT_color_buffer_float"),lt}function m(N,T){let j;return N?T===null||T===Ni||T===xr?j=i.DEPTH24_STENCIL8:T===Mi?j=i.DEPTH32F_STENCIL8:T===yo&&(j=i.DEPTH24_STENCIL8,se("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):T===null||T===Ni||T===xr?j=i.DEPTH_COMPONENT24:T===Mi?j=i.DEPTH_COMPONENT32F:T===yo&&(j=i.DEPTH_COMPONENT16),j}function b(N,T){return E(N)===!0||N.isFramebufferTexture&&N.minFilter!==In&&N.minFilter!==Yn?Math.log2(Math.max(T.width,T.height))+1:N.mipmaps.length>0?N.mipmaps.length:N.isCompressedTexture&&Array.isArray(N.image)?T.mipmaps.length:1}function U(N){let T=new WeakRef(N);n.get(N).__ref=T,p.add(T),x.register(N,T,T)}function C(N){let T=n.get(N).__ref;T!==void 0&&(p.delete(T),x.unregister(T))}function L(N){z(N.target)}function k(N){I(N.target)}function z(N){N.removeEventListener("dispose",L),C(N),H(N),N.isVideoTexture&&h.delete(N),N.isHTMLTexture&&d.delete(N)}function I(N){N.removeEventListener("dispose",k),C(N),Y(N)}function V(){for(let N of p){let T=N.deref();T!==void 0&&(T.isRenderTarget===!0?I(T):z(T))}p.clear(),d.clear()}function H(N){let T=n.get(N);if(T.__webglInit===void 0)return;let j=N.source,Mt=f.get(j);if(Mt){let gt=Mt[T.__cacheKey];gt.usedTimes--,gt.usedTimes===0&&B(N),Object.keys(Mt).length===0&&f.delete(j)}n.remove(N)}function B(N){let T=n.get(N);i.deleteTexture(T.__webglTexture);let j=N.source,Mt=f.get(j);delete Mt[T.__cacheKey],o.memory.textures--}function Y(N){let T=n.get(N);T.__depthDisposeCallback&&T.__depthDisposeCallback();let j=N.depthTexture;if(j&&j.renderTarget===N&&z(j),N.isWebGLCubeRenderTarget)for(let gt=0;gt<6;gt++){if(Array.isArray(T.__webglFramebuffer[gt]))for(let Ct=0;Ct<T.__webglFramebuffer[gt].length;Ct++)i.deleteFramebuffer(T.__webglFramebuffer[gt][Ct]);else i.deleteFramebuffer(T.__webglFramebuffer[gt]);T.__webglDepthbuffer&&i.deleteRenderbuffer(T.__webglDepthbuffer[gt])}else{if(Array.isArray(T.__webglFramebuffer))for(let gt=0;gt<T.__webglFramebuffer.length;gt++)i.deleteFramebuffer(T.__webglFramebuffer[gt]);else i.deleteFramebuffer(T.__webglFramebuffer);if(T.__webglDepthbuffer&&i.deleteRenderbuffer(T.__webglDepthbuffer),T.__webglMultisampledFramebuffer&&i.deleteFramebuffer(T.__webglMultisampledFramebuffer),T.__webglColorRenderbuffer)for(let gt=0;gt<T.__webglColorRenderbuffer.length;gt++)T.__webglColorRenderbuffer[gt]&&i.deleteRenderbuffer(T.__webglColorRenderbuffer[gt]);T.__webglDepthRenderbuffer&&i.deleteRenderbuffer(T.__webglDepthRenderbuffer)}let Mt=N.textures;for(let gt=0,Ct=Mt.length;gt<Ct;gt++){let Pt=n.get(Mt[gt]);Pt.__webglTexture&&(i.deleteTexture(Pt.__webglTexture),o.memory.textures--),n.remove(Mt[gt])}n.remove(N)}let X=0;function K(){X=0}function $(){return X}function at(N){X=N}function ot(){let N=X;return N>=s.maxTextures&&se("WebGLTextures: Trying to use "+(N+1)+" texture units while this GPU supports only "+s.maxTextures),X+=1,N}function Q(N){let T=[];return T.push(N.wrapS),T.push(N.wrapT),T.push(N.wrapR||0),T.push(N.magFilter),T.push(N.minFilter),T.push(N.anisotropy),T.push(N.internalFormat),T.push(N.format),T.push(N.type),T.push(N.generateMipmaps),T.push(N.mipmapsAutoUpdate),T.push(N.premultiplyAlpha),T.push(N.flipY),T.push(N.unpackAlignment),T.push(N.colorSpace),T.join()}function yt(N,T){let j=n.get(N);if(N.isVideoTexture&&ie(N),N.isRenderTargetTexture===!1&&N.isExternalTexture!==!0&&N.version>0&&j.__version!==N.version){let Mt=N.image;if(Mt===null)se("WebGLRenderer: Texture marked for update but no image data found.");else if(Mt.complete===!1)se("WebGLRenderer: Texture marked for update but image is incomplete");else{Kt(j,N,T);return}}else N.isExternalTexture&&(j.__webglTexture=N.sourceTexture?N.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,j.__webglTexture,i.TEXTURE0+T)}function Z(N,T){let j=n.get(N);if(N.isRenderTargetTexture===!1&&N.version>0&&j.__version!==N.version){Kt(j,N,T);return}else N.isExternalTexture&&(j.__webglTexture=N.sourceTexture?N.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,j.__webglTexture,i.TEXTURE0+T)}function it(N,T){let j=n.get(N);if(N.isRenderTargetTexture===!1&&N.version>0&&j.__version!==N.version){Kt(j,N,T);return}e.bindTexture(i.TEXTURE_3D,j.__webglTexture,i.TEXTURE0+T)}function st(N,T){let j=n.get(N);if(N.version>0&&j.__version!==N.version){Ae(j,N,T);return}e.bindTexture(i.TEXTURE_CUBE_MAP,j.__webglTexture,i.TEXTURE0+T)}let pt={[Ul]:i.REPEAT,[Zi]:i.CLAMP_TO_EDGE,[Ol]:i.MIRRORED_REPEAT},Tt={[In]:i.NEAREST,[Wp]:i.NEAREST_MIPMAP_NEAREST,[Aa]:i.NEAREST_MIPMAP_LINEAR,[Yn]:i.LINEAR,[hc]:i.LINEAR_MIPMAP_NEAREST,[ws]:i.LINEAR_MIPMAP_LINEAR},bt={[Yp]:i.NEVER,[Yu]:i.ALWAYS,[Zp]:i.LESS,[Xu]:i.LEQUAL,[Jp]:i.EQUAL,[qu]:i.GEQUAL,[Kp]:i.GREATER,[jp]:i.NOTEQUAL};function ee(N,T){if(T.type===Mi&&t.has("OES_texture_float_linear")===!1&&(T.magFilter===Yn||T.magFilter===hc||T.magFilter===Aa||T.magFilter===ws||T.minFilter===Yn||T.minFilter===hc||T.minFilter===Aa||T.minFilter===ws)&&se("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(N,i.TEXTURE_WRAP_S,pt[T.wrapS]),i.texParameteri(N,i.TEXTURE_WRAP_T,pt[T.wrapT]),(N===i.TEXTURE_3D||N===i.TEXTURE_2D_ARRAY)&&i.texParameteri(N,i.TEXTURE_WRAP_R,pt[T.wrapR]),i.texParameteri(N,i.TEXTURE_MAG_FILTER,Tt[T.magFilter]),i.texParameteri(N,i.TEXTURE_MIN_FILTER,Tt[T.minFilter]),T.compareFunction&&(i.texParameteri(N,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(N,i.TEXTURE_COMPARE_FUNC,bt[T.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(T.magFilter===In||T.minFilter!==Aa&&T.minFilter!==ws||T.type===Mi&&t.has("OES_texture_float_linear")===!1)return;if(T.anisotropy>1||n.get(T).__currentAnisotropy){let j=t.get("EXT_texture_filter_anisotropic");i.texParameterf(N,j.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(T.anisotropy,s.getMaxAnisotropy())),n.get(T).__currentAnisotropy=T.anisotropy}}}function ne(N,T){let j=!1;N.__webglInit===void 0&&(N.__webglInit=!0,T.addEventListener("dispose",L),U(T));let Mt=T.source,gt=f.get(Mt);gt===void 0&&(gt={},f.set(Mt,gt));let Ct=Q(T);if(Ct!==N.__cacheKey){gt[Ct]===void 0&&(gt[Ct]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,j=!0),gt[Ct].usedTimes++;let Pt=gt[N.__cacheKey];Pt!==void 0&&(gt[N.__cacheKey].usedTimes--,Pt.usedTimes===0&&B(T)),N.__cacheKey=Ct,N.__webglTexture=gt[Ct].texture}return j}function Zt(N,T,j){return Math.floor(Math.floor(N/j)/T)}function Se(N,T,j,Mt){let Ct=N.updateRanges;if(Ct.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,T.width,T.height,j,Mt,T.data);else{Ct.sort((G,mt)=>G.start-mt.start);let Pt=0;for(let G=1;G<Ct.length;G++){let mt=Ct[Pt],ct=Ct[G],Dt=mt.start+mt.count,Rt=Zt(ct.start,T.width,4),Lt=Zt(mt.start,T.width,4);ct.start<=Dt+1&&Rt===Lt&&Zt(ct.start+ct.count-1,T.width,4)===Rt?mt.count=Math.max(mt.count,ct.start+ct.count-mt.start):(++Pt,Ct[Pt]=ct)}Ct.length=Pt+1;let lt=e.getParameter(i.UNPACK_ROW_LENGTH),dt=e.getParameter(i.UNPACK_SKIP_PIXELS),Et=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,T.width);for(let G=0,mt=Ct.length;G<mt;G++){let ct=Ct[G],Dt=Math.floor(ct.start/4),Rt=Math.ceil(ct.count/4),Lt=Dt%T.width,Qt=Math.floor(Dt/T.width),oe=Rt,vt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,Lt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Qt),e.texSubImage2D(i.TEXTURE_2D,0,Lt,Qt,oe,vt,j,Mt,T.data)}N.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,lt),e.pixelStorei(i.UNPACK_SKIP_PIXELS,dt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Et)}}function Kt(N,T,j){let Mt=i.TEXTURE_2D;(T.isDataArrayTexture||T.isCompressedArrayTexture)&&(Mt=i.TEXTURE_2D_ARRAY),T.isData3DTexture&&(Mt=i.TEXTURE_3D);let gt=ne(N,T),Ct=T.source;e.bindTexture(Mt,N.__webglTexture,i.TEXTURE0+j);let Pt=n.get(Ct);if(Ct.version!==Pt.__version||gt===!0){if(e.activeTexture(i.TEXTURE0+j),(typeof ImageBitmap<"u"&&T.image instanceof ImageBitmap)===!1){let vt=Ce.getPrimaries(Ce.workingColorSpace),qt=T.colorSpace===Ts?null:Ce.getPrimaries(T.colorSpace),ae=T.colorSpace===Ts||vt===qt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,T.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,ae)}e.pixelStorei(i.UNPACK_ALIGNMENT,T.unpackAlignment);let dt=y(T.image,!1,s.maxTextureSize);dt=Vt(T,dt);let Et=r.convert(T.format,T.colorSpace),G=r.convert(T.type),mt=w(T.internalFormat,Et,G,T.normalized,T.colorSpace,T.isVideoTexture);ee(Mt,T);let ct,Dt=T.mipmaps,Rt=T.isVideoTexture!==!0,Lt=Pt.__version===void 0||gt===!0,Qt=Ct.dataReady,oe=b(T,dt);if(T.isDepthTexture)mt=m(T.format===Es,T.type),Lt&&(Rt?e.texStorage2D(i.TEXTURE_2D,1,mt,dt.width,dt.height):e.texImage2D(i.TEXTURE_2D,0,mt,dt.width,dt.height,0,Et,G,null));else if(T.isDataTexture)if(Dt.length>0){Rt&&Lt&&e.texStorage2D(i.TEXTURE_2D,oe,mt,Dt[0].width,Dt[0].height);for(let vt=0,qt=Dt.length;vt<qt;vt++)ct=Dt[vt],Rt?Qt&&e.texSubImage2D(i.TEXTURE_2D,vt,0,0,ct.width,ct.height,Et,G,ct.data):e.texImage2D(i.TEXTURE_2D,vt,mt,ct.width,ct.height,0,Et,G,ct.data);T.generateMipmaps=!1}else Rt?(Lt&&e.texStorage2D(i.TEXTURE_2D,oe,mt,dt.width,dt.height),Qt&&Se(T,dt,Et,G)):e.texImage2D(i.TEXTURE_2D,0,mt,dt.width,dt.height,0,Et,G,dt.data);else if(T.isCompressedTexture)if(T.isCompressedArrayTexture){Rt&&Lt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,oe,mt,Dt[0].width,Dt[0].height,dt.depth);for(let vt=0,qt=Dt.length;vt<qt;vt++)if(ct=Dt[vt],T.format!==Ui)if(Et!==null)if(Rt){if(Qt)if(T.layerUpdates.size>0){let ae=sd(ct.width,ct.height,T.format,T.type);for(let Ut of T.layerUpdates){let me=ct.data.subarray(Ut*ae/ct.data.BYTES_PER_ELEMENT,(Ut+1)*ae/ct.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,vt,0,0,Ut,ct.width,ct.height,1,Et,me)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,vt,0,0,0,ct.width,ct.height,dt.depth,Et,ct.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,vt,mt,ct.width,ct.height,dt.depth,0,ct.data,0,0);else se("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else Rt?Qt&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,vt,0,0,0,ct.width,ct.height,dt.depth,Et,G,ct.data):e.texImage3D(i.TEXTURE_2D_ARRAY,vt,mt,ct.width,ct.height,dt.depth,0,Et,G,ct.data);T.layerUpdates.size>0&&T.clearLayerUpdates()}else{Rt&&Lt&&e.texStorage2D(i.TEXTURE_2D,oe,mt,Dt[0].width,Dt[0].height);for(let vt=0,qt=Dt.length;vt<qt;vt++)ct=Dt[vt],T.format!==Ui?Et!==null?Rt?Qt&&e.compressedTexSubImage2D(i.TEXTURE_2D,vt,0,0,ct.width,ct.height,Et,ct.data):e.compressedTexImage2D(i.TEXTURE_2D,vt,mt,ct.width,ct.height,0,ct.data):se("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):Rt?Qt&&e.texSubImage2D(i.TEXTURE_2D,vt,0,0,ct.width,ct.height,Et,G,ct.data):e.texImage2D(i.TEXTURE_2D,vt,mt,ct.width,ct.height,0,Et,G,ct.data)}else if(T.isDataArrayTexture)if(Rt){if(Lt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,oe,mt,dt.width,dt.height,dt.depth),Qt)if(T.layerUpdates.size>0){let vt=sd(dt.width,dt.height,T.format,T.type);for(let qt of T.layerUpdates){let ae=dt.data.subarray(qt*vt/dt.data.BYTES_PER_ELEMENT,(qt+1)*vt/dt.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,qt,dt.width,dt.height,1,Et,G,ae)}T.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,dt.width,dt.height,dt.depth,Et,G,dt.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,mt,dt.width,dt.height,dt.depth,0,Et,G,dt.data);else if(T.isData3DTexture)Rt?(Lt&&e.texStorage3D(i.TEXTURE_3D,oe,mt,dt.width,dt.height,dt.depth),Qt&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,dt.width,dt.height,dt.depth,Et,G,dt.data)):e.texImage3D(i.TEXTURE_3D,0,mt,dt.width,dt.height,dt.depth,0,Et,G,dt.data);else if(T.isFramebufferTexture){if(Lt)if(Rt)e.texStorage2D(i.TEXTURE_2D,oe,mt,dt.width,dt.height);else{let vt=dt.width,qt=dt.height;for(let ae=0;ae<oe;ae++)e.texImage2D(i.TEXTURE_2D,ae,mt,vt,qt,0,Et,G,null),vt>>=1,qt>>=1}}else if(T.isHTMLTexture){if("texElementImage2D"in i){let vt=i.canvas;if(vt.hasAttribute("layoutsubtree")||vt.setAttribute("layoutsubtree","true"),dt.parentNode!==vt){vt.appendChild(dt),d.add(T),vt.onpaint=qt=>{let ae=qt.changedElements;for(let Ut of d)ae.includes(Ut.image)&&(Ut.needsUpdate=!0)},vt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,dt);else{let ae=i.RGBA,Ut=i.RGBA,me=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,ae,Ut,me,dt)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Dt.length>0){if(Rt&&Lt){let vt=jt(Dt[0]);e.texStorage2D(i.TEXTURE_2D,oe,mt,vt.width,vt.height)}for(let vt=0,qt=Dt.length;vt<qt;vt++)ct=Dt[vt],Rt?Qt&&e.texSubImage2D(i.TEXTURE_2D,vt,0,0,Et,G,ct):e.texImage2D(i.TEXTURE_2D,vt,mt,Et,G,ct);T.generateMipmaps=!1}else if(Rt){if(Lt){let vt=jt(dt);e.texStorage2D(i.TEXTURE_2D,oe,mt,vt.width,vt.height)}Qt&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,Et,G,dt)}else e.texImage2D(i.TEXTURE_2D,0,mt,Et,G,dt);E(T)&&T.mipmapsAutoUpdate===!0&&M(Mt),Pt.__version=Ct.version,T.onUpdate&&T.onUpdate(T)}N.__version=T.version}function Ae(N,T,j){if(T.image.length!==6)return;let Mt=ne(N,T),gt=T.source;e.bindTexture(i.TEXTURE_CUBE_MAP,N.__webglTexture,i.TEXTURE0+j);let Ct=n.get(gt);if(gt.version!==Ct.__version||Mt===!0){e.activeTexture(i.TEXTURE0+j);let Pt=Ce.getPrimaries(Ce.workingColorSpace),lt=T.colorSpace===Ts?null:Ce.getPrimaries(T.colorSpace),dt=T.colorSpace===Ts||Pt===lt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,T.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,T.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,dt);let Et=T.isCompressedTexture||T.image[0].isCompressedTexture,G=T.image[0]&&T.image[0].isDataTexture,mt=[];for(let Ut=0;Ut<6;Ut++)!Et&&!G?mt[Ut]=y(T.image[Ut],!0,s.maxCubemapSize):mt[Ut]=G?T.image[Ut].image:T.image[Ut],mt[Ut]=Vt(T,mt[Ut]);let ct=mt[0],Dt=r.convert(T.format,T.colorSpace),Rt=r.convert(T.type),Lt=w(T.internalFormat,Dt,Rt,T.normalized,T.colorSpace),Qt=T.isVideoTexture!==!0,oe=Ct.__version===void 0||Mt===!0,vt=gt.dataReady,qt=b(T,ct);ee(i.TEXTURE_CUBE_MAP,T);let ae;if(T.isDepthTexture){if(Lt=m(T.format===Es,T.type),oe)if(Qt)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,Lt,ct.width,ct.height);else for(let Ut=0;Ut<6;Ut++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,0,Lt,ct.width,ct.height,0,Dt,Rt,null)}else if(Et){Qt&&oe&&e.texStorage2D(i.TEXTURE_CUBE_MAP,qt,Lt,ct.width,ct.height);for(let Ut=0;Ut<6;Ut++){ae=mt[Ut].mipmaps;for(let me=0;me<ae.length;me++){let Ye=ae[me];T.format!==Ui?Dt!==null?Qt?vt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me,0,0,Ye.width,Ye.height,Dt,Ye.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me,Lt,Ye.width,Ye.height,0,Ye.data):se("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Qt?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me,0,0,Ye.width,Ye.height,Dt,Rt,Ye.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me,Lt,Ye.width,Ye.height,0,Dt,Rt,Ye.data)}}}else{if(ae=T.mipmaps,Qt&&oe){ae.length>0&&qt++;let Ut=jt(mt[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,qt,Lt,Ut.width,Ut.height)}for(let Ut=0;Ut<6;Ut++)if(G){Qt?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,0,0,0,mt[Ut].width,mt[Ut].height,Dt,Rt,mt[Ut].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,0,Lt,mt[Ut].width,mt[Ut].height,0,Dt,Rt,mt[Ut].data);for(let me=0;me<ae.length;me++){let Hn=ae[me].image[Ut].image;Qt?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me+1,0,0,Hn.width,Hn.height,Dt,Rt,Hn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me+1,Lt,Hn.width,Hn.height,0,Dt,Rt,Hn.data)}}else{Qt?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,0,0,0,Dt,Rt,mt[Ut]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,0,Lt,Dt,Rt,mt[Ut]);for(let me=0;me<ae.length;me++){let Ye=ae[me];Qt?vt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me+1,0,0,Dt,Rt,Ye.image[Ut]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Ut,me+1,Lt,Dt,Rt,Ye.image[Ut])}}}E(T)&&T.mipmapsAutoUpdate===!0&&M(i.TEXTURE_CUBE_MAP),Ct.__version=gt.version,T.onUpdate&&T.onUpdate(T)}N.__version=T.version}function pe(N,T,j,Mt,gt,Ct){let Pt=r.convert(j.format,j.colorSpace),lt=r.convert(j.type),dt=w(j.internalFormat,Pt,lt,j.normalized,j.colorSpace),Et=n.get(T),G=n.get(j);if(G.__renderTarget=T,!Et.__hasExternalTextures){let mt=Math.max(1,T.width>>Ct),ct=Math.max(1,T.height>>Ct);gt===i.TEXTURE_3D||gt===i.TEXTURE_2D_ARRAY?e.texImage3D(gt,Ct,dt,mt,ct,T.depth,0,Pt,lt,null):e.texImage2D(gt,Ct,dt,mt,ct,0,Pt,lt,null)}e.bindFramebuffer(i.FRAMEBUFFER,N),St(T)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Mt,gt,G.__webglTexture,0,kt(T)):(gt===i.TEXTURE_2D||gt>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&gt<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,Mt,gt,G.__webglTexture,Ct),e.bindFramebuffer(i.FRAMEBUFFER,null)}function Me(N,T,j){if(i.bindRenderbuffer(i.RENDERBUFFER,N),T.depthBuffer){let Mt=T.depthTexture,gt=Mt&&Mt.isDepthTexture?Mt.type:null,Ct=m(T.stencilBuffer,gt),Pt=T.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;St(T)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,kt(T),Ct,T.width,T.height):j?i.renderbufferStorageMultisample(i.RENDERBUFFER,kt(T),Ct,T.width,T.height):i.renderbufferStorage(i.RENDERBUFFER,Ct,T.width,T.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,Pt,i.RENDERBUFFER,N)}else{let Mt=T.textures;for(let gt=0;gt<Mt.length;gt++){let Ct=Mt[gt],Pt=r.convert(Ct.format,Ct.colorSpace),lt=r.convert(Ct.type),dt=w(Ct.internalFormat,Pt,lt,Ct.normalized,Ct.colorSpace);St(T)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,kt(T),dt,T.width,T.height):j?i.renderbufferStorageMultisample(i.RENDERBUFFER,kt(T),dt,T.width,T.height):i.renderbufferStorage(i.RENDERBUFFER,dt,T.width,T.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function _e(N,T,j){let Mt=T.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,N),!(T.depthTexture&&T.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let gt=n.get(T.depthTexture);gt.__renderTarget=T;let Ct=Mt?T.depthTexture.image[0]:T.depthTexture.image;(!gt.__webglTexture||Ct.width!==T.width||Ct.height!==T.height)&&(Ct.width=T.width,Ct.height=T.height,T.depthTexture.needsUpdate=!0),Mt?st(T.depthTexture,0):yt(T.depthTexture,0);let Pt=gt.__webglTexture,lt=kt(T),dt=Mt?i.TEXTURE_CUBE_MAP_POSITIVE_X+j:i.TEXTURE_2D,Et=T.depthTexture.format===Es?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(T.depthTexture.format===xs)St(T)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Et,dt,Pt,0,lt):i.framebufferTexture2D(i.FRAMEBUFFER,Et,dt,Pt,0);else if(T.depthTexture.format===Es)St(T)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,Et,dt,Pt,0,lt):i.framebufferTexture2D(i.FRAMEBUFFER,Et,dt,Pt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function nn(N){let T=n.get(N),j=N.isWebGLCubeRenderTarget===!0;if(T.__boundDepthTexture!==N.depthTexture){let Mt=N.depthTexture;if(T.__depthDisposeCallback&&T.__depthDisposeCallback(),Mt){let gt=()=>{delete T.__boundDepthTexture,delete T.__depthDisposeCallback,Mt.removeEventListener("dispose",gt)};Mt.addEventListener("dispose",gt),T.__depthDisposeCallback=gt}T.__boundDepthTexture=Mt}if(N.depthTexture&&!T.__autoAllocateDepthBuffer)if(j)for(let Mt=0;Mt<6;Mt++)_e(T.__webglFramebuffer[Mt],N,Mt);else N.texture.mipmaps.length>0?_e(T.__webglFramebuffer[0],N,0):_e(T.__webglFramebuffer,N,0);else if(j){T.__webglDepthbuffer=[];for(let Mt=0;Mt<6;Mt++)if(e.bindFramebuffer(i.FRAMEBUFFER,T.__webglFramebuffer[Mt]),T.__webglDepthbuffer[Mt]===void 0)T.__webglDepthbuffer[Mt]=i.createRenderbuffer(),Me(T.__webglDepthbuffer[Mt],N,!1);else{let gt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Ct=T.__webglDepthbuffer[Mt];i.bindRenderbuffer(i.RENDERBUFFER,Ct),i.framebufferRenderbuffer(i.FRAMEBUFFER,gt,i.RENDERBUFFER,Ct)}}else if(N.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,T.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,T.__webglFramebuffer),T.__webglDepthbuffer===void 0)T.__webglDepthbuffer=i.createRenderbuffer(),Me(T.__webglDepthbuffer,N,!1);else{let gt=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Ct=T.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,Ct),i.framebufferRenderbuffer(i.FRAMEBUFFER,gt,i.RENDERBUFFER,Ct)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function ft(N,T,j){let Mt=n.get(N);T!==void 0&&pe(Mt.__webglFramebuffer,N,N.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),j!==void 0&&nn(N)}function At(N){let T=N.texture,j=n.get(N),Mt=n.get(T);N.addEventListener("dispose",k),U(N);let gt=N.textures,Ct=N.isWebGLCubeRenderTarget===!0,Pt=gt.length>1;if(Pt||(Mt.__webglTexture===void 0&&(Mt.__webglTexture=i.createTexture()),Mt.__version=T.version,o.memory.textures++),Ct){j.__webglFramebuffer=[];for(let lt=0;lt<6;lt++)if(T.mipmaps.length>0){j.__webglFramebuffer[lt]=[];for(let dt=0;dt<T.mipmaps.length;dt++)j.__webglFramebuffer[lt][dt]=i.createFramebuffer()}else j.__webglFramebuffer[lt]=i.createFramebuffer()}else{if(T.mipmaps.length>0){j.__webglFramebuffer=[];for(let lt=0;lt<T.mipmaps.length;lt++)j.__webglFramebuffer[lt]=i.createFramebuffer()}else j.__webglFramebuffer=i.createFramebuffer();if(Pt)for(let lt=0,dt=gt.length;lt<dt;lt++){let Et=n.get(gt[lt]);Et.__webglTexture===void 0&&(Et.__webglTexture=i.createTexture(),o.memory.textures++)}if(N.samples>0&&St(N)===!1){j.__webglMultisampledFramebuffer=i.createFramebuffer(),j.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,j.__webglMultisampledFramebuffer);for(let lt=0;lt<gt.length;lt++){let dt=gt[lt];j.__webglColorRenderbuffer[lt]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,j.__webglColorRenderbuffer[lt]);let Et=r.convert(dt.format,dt.colorSpace),G=r.convert(dt.type),mt=w(dt.internalFormat,Et,G,dt.normalized,dt.colorSpace,N.isXRRenderTarget===!0),ct=kt(N);i.renderbufferStorageMultisample(i.RENDERBUFFER,ct,mt,N.width,N.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+lt,i.RENDERBUFFER,j.__webglColorRenderbuffer[lt])}i.bindRenderbuffer(i.RENDERBUFFER,null),N.depthBuffer&&(j.__webglDepthRenderbuffer=i.createRenderbuffer(),Me(j.__webglDepthRenderbuffer,N,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(Ct){e.bindTexture(i.TEXTURE_CUBE_MAP,Mt.__webglTexture),ee(i.TEXTURE_CUBE_MAP,T);for(let lt=0;lt<6;lt++)if(T.mipmaps.length>0)for(let dt=0;dt<T.mipmaps.length;dt++)pe(j.__webglFramebuffer[lt][dt],N,T,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+lt,dt);else pe(j.__webglFramebuffer[lt],N,T,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+lt,0);E(T)?M(i.TEXTURE_CUBE_MAP):T.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),e.unbindTexture()}else if(Pt){for(let lt=0,dt=gt.length;lt<dt;lt++){let Et=gt[lt],G=n.get(Et),mt=i.TEXTURE_2D;(N.isWebGL3DRenderTarget||N.isWebGLArrayRenderTarget)&&(mt=N.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(mt,G.__webglTexture),ee(mt,Et),pe(j.__webglFramebuffer,N,Et,i.COLOR_ATTACHMENT0+lt,mt,0),E(Et)&&M(mt)}e.unbindTexture()}else{let lt=i.TEXTURE_2D;if((N.isWebGL3DRenderTarget||N.isWebGLArrayRenderTarget)&&(lt=N.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(lt,Mt.__webglTexture),ee(lt,T),T.mipmaps.length>0)for(let dt=0;dt<T.mipmaps.length;dt++)pe(j.__webglFramebuffer[dt],N,T,i.COLOR_ATTACHMENT0,lt,dt);else pe(j.__webglFramebuffer,N,T,i.COLOR_ATTACHMENT0,lt,0);E(T)?M(lt):T.mipmaps.length>0&&i.texParameteri(lt,i.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),e.unbindTexture()}N.depthBuffer&&nn(N)}function D(N){let T=N.textures;for(let j=0,Mt=T.length;j<Mt;j++){let gt=T[j];if(E(gt)&&gt.mipmapsAutoUpdate===!0){let Ct=P(N),Pt=n.get(gt).__webglTexture;e.bindTexture(Ct,Pt),M(Ct),e.unbindTexture()}}}let _t=[];function Ot(N){if(N.samples>0){if(St(N)===!1){let T=N.textures,j=N.width,Mt=N.height,gt=i.COLOR_BUFFER_BIT,Ct=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Pt=n.get(N),lt=T.length>1;if(lt)for(let Et=0;Et<T.length;Et++)e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,Pt.__webglMultisampledFramebuffer),N.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Pt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Pt.__webglFramebuffer);for(let Et=0;Et<T.length;Et++){if(N.resolveDepthBuffer&&(N.depthBuffer&&(gt|=i.DEPTH_BUFFER_BIT),N.stencilBuffer&&N.resolveStencilBuffer&&(gt|=i.STENCIL_BUFFER_BIT)),lt){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,Pt.__webglColorRenderbuffer[Et]);let G=n.get(T[Et]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,G,0)}i.blitFramebuffer(0,0,j,Mt,0,0,j,Mt,gt,i.NEAREST),l===!0&&(_t.length=0,_t.push(i.COLOR_ATTACHMENT0+Et),N.depthBuffer&&N.storeMultisampledDepthBuffer===!1&&_t.push(Ct),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,_t))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),lt)for(let Et=0;Et<T.length;Et++){e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.RENDERBUFFER,Pt.__webglColorRenderbuffer[Et]);let G=n.get(T[Et]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,Pt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+Et,i.TEXTURE_2D,G,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Pt.__webglMultisampledFramebuffer)}else if(N.depthBuffer&&N.storeMultisampledDepthBuffer===!1&&l){let T=N.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[T])}}}function kt(N){return Math.min(s.maxSamples,N.samples)}function St(N){let T=n.get(N);return N.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&T.__useRenderToTexture!==!1}function ie(N){let T=o.render.frame;h.get(N)!==T&&(h.set(N,T),N.update())}function Vt(N,T){let j=N.colorSpace,Mt=N.format,gt=N.type;return N.isCompressedTexture===!0||N.isVideoTexture===!0||j!==ea&&j!==Ts&&(Ce.getTransfer(j)===Oe?(Mt!==Ui||gt!==jn)&&se("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):he("WebGLTextures: Unsupported texture color space:",j)),T}function jt(N){return typeof HTMLImageElement<"u"&&N instanceof HTMLImageElement?(c.width=N.naturalWidth||N.width,c.height=N.naturalHeight||N.height):typeof VideoFrame<"u"&&N instanceof VideoFrame?(c.width=N.displayWidth,c.height=N.displayHeight):(c.width=N.width,c.height=N.height),c}this.allocateTextureUnit=ot,this.resetTextureUnits=K,this.getTextureUnits=$,this.setTextureUnits=at,this.setTexture2D=yt,this.setTexture2DArray=Z,this.setTexture3D=it,this.setTextureCube=st,this.rebindTextures=ft,this.setupRenderTarget=At,this.updateRenderTargetMipmap=D,this.updateMultisampleRenderTarget=Ot,this.setupDepthRenderbuffer=nn,this.setupFrameBufferTexture=pe,this.useMultisampledRTT=St,this.dispose=V}function sb(i,t){function e(n,s=Ts){let r,o=Ce.getTransfer(s);if(n===jn)return i.UNSIGNED_BYTE;if(n===dc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===fc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Hu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Gu)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===zu)return i.BYTE;if(n===Vu)return i.SHORT;if(n===yo)return i.UNSIGNED_SHORT;if(n===uc)return i.INT;if(n===Ni)return i.UNSIGNED_INT;if(n===Mi)return i.FLOAT;if(n===Fi)return i.HALF_FLOAT;if(n===Wu)return i.ALPHA;if(n===$u)return i.RGB;if(n===Ui)return i.RGBA;if(n===xs)return i.DEPTH_COMPONENT;if(n===Es)return i.DEPTH_STENCIL;if(n===pc)return i.RED;if(n===mc)return i.RED_INTEGER;if(n===Ys)return i.RG;if(n===gc)return i.RG_INTEGER;if(n===_c)return i.RGBA_INTEGER;if(n===Ra||n===Ca||n===Pa||n===Ia)if(o===Oe)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Ra)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Ca)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Pa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Ia)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Ra)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Ca)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Pa)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Ia)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===xc||n===yc||n===vc||n===Mc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===xc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===yc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===vc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Mc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Sc||n===bc||n===wc||n===Ec||n===Tc||n===La||n===Ac)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Sc||n===bc)return o===Oe?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===wc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===Ec)return r.COMPRESSED_R11_EAC;if(n===Tc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===La)return r.COMPRESSED_RG11_EAC;if(n===Ac)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Rc||n===Cc||n===Pc||n===Ic||n===Lc||n===Dc||n===Nc||n===Fc||n===Uc||n===Oc||n===Bc||n===kc||n===zc||n===Vc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Rc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Cc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Pc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Ic)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Lc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Dc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Nc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Fc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Uc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Oc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Bc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===kc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===zc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Vc)return o===Oe?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Hc||n===Gc||n===Wc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Hc)return o===Oe?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Gc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Wc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===$c||n===Xc||n===Da||n===qc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===$c)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Xc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Da)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===qc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===xr?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var rb=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,ob=`
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

}`,fd=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new pa(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Qi({vertexShader:rb,fragmentShader:ob,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new gn(new xa(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},pd=class extends Di{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,d=null,u=null,f=null,p=null,x=typeof XRWebGLBinding<"u",g=new fd,_={},y=e.getContextAttributes(),E=null,M=null,P=[],w=[],m=new le,b=null,U=null,C=new hi;C.viewport=new en;let L=new hi;L.viewport=new en;let k=[C,L],z=new oc,I=null,V=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(Q){let yt=P[Q];return yt===void 0&&(yt=new ho,P[Q]=yt),yt.getTargetRaySpace()},this.getControllerGrip=function(Q){let yt=P[Q];return yt===void 0&&(yt=new ho,P[Q]=yt),yt.getGripSpace()},this.getHand=function(Q){let yt=P[Q];return yt===void 0&&(yt=new ho,P[Q]=yt),yt.getHandSpace()};function H(Q){let yt=w.indexOf(Q.inputSource);if(yt===-1)return;let Z=P[yt];Z!==void 0&&(Z.update(Q.inputSource,Q.frame,c||o),Z.dispatchEvent({type:Q.type,data:Q.inputSource}))}function B(){s.removeEventListener("select",H),s.removeEventListener("selectstart",H),s.removeEventListener("selectend",H),s.removeEventListener("squeeze",H),s.removeEventListener("squeezestart",H),s.removeEventListener("squeezeend",H),s.removeEventListener("end",B),s.removeEventListener("inputsourceschange",Y);for(let Q=0;Q<P.length;Q++){let yt=w[Q];yt!==null&&(w[Q]=null,P[Q].disconnect(yt))}I=null,V=null,g.reset();for(let Q in _)delete _[Q];if(t.setRenderTarget(E),f=null,u=null,d=null,s=null,M=null,ot.stop(),n.isPresenting=!1,t.setPixelRatio(b),t.setSize(m.width,m.height,!1),U!==null){let Q=U.camera;Q.fov=U.fov,Q.zoom=U.zoom,Q.updateProjectionMatrix(),U=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(Q){r=Q,n.isPresenting===!0&&se("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(Q){a=Q,n.isPresenting===!0&&se("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(Q){c=Q},this.getBaseLayer=function(){return u!==null?u:f},this.getBinding=function(){return d===null&&x&&(d=new XRWebGLBinding(s,e)),d},this.getFrame=function(){return p},this.getSession=function(){return s},this.setSession=async function(Q){if(s=Q,s!==null){if(E=t.getRenderTarget(),s.addEventListener("select",H),s.addEventListener("selectstart",H),s.addEventListener("selectend",H),s.addEventListener("squeeze",H),s.addEventListener("squeezestart",H),s.addEventListener("squeezeend",H),s.addEventListener("end",B),s.addEventListener("inputsourceschange",Y),y.xrCompatible!==!0&&await e.makeXRCompatible(),b=t.getPixelRatio(),t.getSize(m),x&&"createProjectionLayer"in XRWebGLBinding.prototype){let Z=null,it=null,st=null;y.depth&&(st=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,Z=y.stencil?Es:xs,it=y.stencil?xr:Ni);let pt={colorFormat:e.RGBA8,depthFormat:st,scaleFactor:r};d=this.getBinding(),u=d.createProjectionLayer(pt),s.updateRenderState({layers:[u]}),t.setPixelRatio(1),t.setSize(u.textureWidth,u.textureHeight,!1),M=new ui(u.textureWidth,u.textureHeight,{format:Ui,type:jn,depthTexture:new Ss(u.textureWidth,u.textureHeight,it,void 0,void 0,void 0,void 0,void 0,void 0,Z),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:u.ignoreDepthValues===!1,resolveStencilBuffer:u.ignoreDepthValues===!1,storeMultisampledDepthBuffer:u.ignoreDepthValues===!1,storeMultisampledStencilBuffer:u.ignoreDepthValues===!1})}else{let Z={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,Z),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),M=new ui(f.framebufferWidth,f.framebufferHeight,{format:Ui,type:jn,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}M.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),ot.setContext(s),ot.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return g.getDepthTexture()};function Y(Q){for(let yt=0;yt<Q.removed.length;yt++){let Z=Q.removed[yt],it=w.indexOf(Z);it>=0&&(w[it]=null,P[it].disconnect(Z))}for(let yt=0;yt<Q.added.length;yt++){let Z=Q.added[yt],it=w.indexOf(Z);if(it===-1){for(let pt=0;pt<P.length;pt++)if(pt>=w.length){w.push(Z),it=pt;break}else if(w[pt]===null){w[pt]=Z,it=pt;break}if(it===-1)break}let st=P[it];st&&st.connect(Z)}}function X(Q,yt){yt===null?Q.matrixWorld.copy(Q.matrix):Q.matrixWorld.multiplyMatrices(yt.matrixWorld,Q.matrix),Q.matrixWorldInverse.copy(Q.matrixWorld).invert()}this.updateCamera=function(Q){if(s===null)return;let yt=Q.near,Z=Q.far;g.texture!==null&&(g.depthNear>0&&(yt=g.depthNear),g.depthFar>0&&(Z=g.depthFar)),z.near=L.near=C.near=yt,z.far=L.far=C.far=Z,(I!==z.near||V!==z.far)&&(s.updateRenderState({depthNear:z.near,depthFar:z.far}),I=z.near,V=z.far),z.layers.mask=Q.layers.mask|6,C.layers.mask=z.layers.mask&-5,L.layers.mask=z.layers.mask&-3;let it=Q.parent,st=z.cameras;X(z,it);for(let pt=0;pt<st.length;pt++)X(st[pt],it);z.projectionMatrix.copy(C.projectionMatrix),z.projectionMatrixInverse.copy(C.projectionMatrixInverse),U===null&&Q.isPerspectiveCamera&&(U={camera:Q,fov:Q.fov,zoom:Q.zoom}),K(Q,z,it)};function K(Q,yt,Z){Z===null?Q.matrix.copy(yt.matrixWorld):(Q.matrix.copy(Z.matrixWorld),Q.matrix.invert(),Q.matrix.multiply(yt.matrixWorld)),Q.matrix.decompose(Q.position,Q.quaternion,Q.scale),Q.updateMatrixWorld(!0),Q.projectionMatrix.copy(yt.projectionMatrix),Q.projectionMatrixInverse.copy(yt.projectionMatrixInverse),Q.isPerspectiveCamera&&(Q.fov=lo*2*Math.atan(1/Q.projectionMatrix.elements[5]),Q.zoom=1)}this.getCamera=function(){return z},this.getFoveation=function(){if(!(u===null&&f===null))return l},this.setFoveation=function(Q){l=Q,u!==null&&(u.fixedFoveation=Q),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=Q)},this.hasDepthSensing=function(){return g.texture!==null},this.getDepthSensingMesh=function(){return g.getMesh(z)},this.getCameraTexture=function(Q){return _[Q]};let $=null;function at(Q,yt){if(h=yt.getViewerPose(c||o),p=yt,h!==null){let Z=h.views;f!==null&&(t.setRenderTargetFramebuffer(M,f.framebuffer),t.setRenderTarget(M));let it=!1;Z.length!==z.cameras.length&&(z.cameras.length=0,it=!0);for(let bt=0;bt<Z.length;bt++){let ee=Z[bt],ne=null;if(f!==null)ne=f.getViewport(ee);else{let Se=d.getViewSubImage(u,ee);ne=Se.viewport,bt===0&&(t.setRenderTargetTextures(M,Se.colorTexture,Se.depthStencilTexture),t.setRenderTarget(M))}let Zt=k[bt];Zt===void 0&&(Zt=new hi,Zt.layers.enable(bt),Zt.viewport=new en,k[bt]=Zt),Zt.matrix.fromArray(ee.transform.matrix),Zt.matrix.decompose(Zt.position,Zt.quaternion,Zt.scale),Zt.projectionMatrix.fromArray(ee.projectionMatrix),Zt.projectionMatrixInverse.copy(Zt.projectionMatrix).invert(),Zt.viewport.set(ne.x,ne.y,ne.width,ne.height),bt===0&&(z.matrix.copy(Zt.matrix),z.matrix.decompose(z.position,z.quaternion,z.scale)),it===!0&&z.cameras.push(Zt)}let st=s.enabledFeatures;if(st&&st.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&x){d=n.getBinding();let bt=d.getDepthInformation(Z[0]);bt&&bt.isValid&&bt.texture&&g.init(bt,s.renderState)}if(st&&st.includes("camera-access")&&x){t.state.unbindTexture(),d=n.getBinding();for(let bt=0;bt<Z.length;bt++){let ee=Z[bt].camera;if(ee){let ne=_[ee];ne||(ne=new pa,_[ee]=ne);let Zt=d.getCameraImage(ee);ne.sourceTexture=Zt}}}}for(let Z=0;Z<P.length;Z++){let it=w[Z],st=P[Z];it!==null&&st!==void 0&&st.update(it,yt,c||o)}$&&$(Q,yt),yt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:yt}),p=null}let ot=new Im;ot.setAnimationLoop(at),this.setAnimationLoop=function(Q){$=Q},this.dispose=function(){}}},ab=new Ne,Vm=new ue;Vm.set(-1,0,0,0,1,0,0,0,1);function lb(i,t){function e(g,_){g.matrixAutoUpdate===!0&&g.updateMatrix(),_.value.copy(g.matrix)}function n(g,_){_.color.getRGB(g.fogColor.value,ed(i)),_.isFog?(g.fogNear.value=_.near,g.fogFar.value=_.far):_.isFogExp2&&(g.fogDensity.value=_.density)}function s(g,_,y,E,M){_.isNodeMaterial?_.uniformsNeedUpdate=!1:_.isMeshBasicMaterial?r(g,_):_.isMeshLambertMaterial?(r(g,_),_.envMap&&(g.envMapIntensity.value=_.envMapIntensity)):_.isMeshToonMaterial?(r(g,_),d(g,_)):_.isMeshPhongMaterial?(r(g,_),h(g,_),_.envMap&&(g.envMapIntensity.value=_.envMapIntensity)):_.isMeshStandardMaterial?(r(g,_),u(g,_),_.isMeshPhysicalMaterial&&f(g,_,M)):_.isMeshMatcapMaterial?(r(g,_),p(g,_)):_.isMeshDepthMaterial?r(g,_):_.isMeshDistanceMaterial?(r(g,_),x(g,_)):_.isMeshNormalMaterial?r(g,_):_.isLineBasicMaterial?(o(g,_),_.isLineDashedMaterial&&a(g,_)):_.isPointsMaterial?l(g,_,y,E):_.isSpriteMaterial?c(g,_):_.isShadowMaterial?(g.color.value.copy(_.color),g.opacity.value=_.opacity):_.isShaderMaterial&&(_.uniformsNeedUpdate=!1)}function r(g,_){g.opacity.value=_.opacity,_.color&&g.diffuse.value.copy(_.color),_.emissive&&g.emissive.value.copy(_.emissive).multiplyScalar(_.emissiveIntensity),_.map&&(g.map.value=_.map,e(_.map,g.mapTransform)),_.alphaMap&&(g.alphaMap.value=_.alphaMap,e(_.alphaMap,g.alphaMapTransform)),_.bumpMap&&(g.bumpMap.value=_.bumpMap,e(_.bumpMap,g.bumpMapTransform),g.bumpScale.value=_.bumpScale,_.side===Un&&(g.bumpScale.value*=-1)),_.normalMap&&(g.normalMap.value=_.normalMap,e(_.normalMap,g.normalMapTransform),g.normalScale.value.copy(_.normalScale),_.side===Un&&g.normalScale.value.negate()),_.displacementMap&&(g.displacementMap.value=_.displacementMap,e(_.displacementMap,g.displacementMapTransform),g.displacementScale.value=_.displacementScale,g.displacementBias.value=_.displacementBias),_.emissiveMap&&(g.emissiveMap.value=_.emissiveMap,e(_.emissiveMap,g.emissiveMapTransform)),_.specularMap&&(g.specularMap.value=_.specularMap,e(_.specularMap,g.specularMapTransform)),_.alphaTest>0&&(g.alphaTest.value=_.alphaTest);let y=t.get(_),E=y.envMap,M=y.envMapRotation;E&&(g.envMap.value=E,g.envMapRotation.value.setFromMatrix4(ab.makeRotationFromEuler(M)).transpose(),E.isCubeTexture&&E.isRenderTargetTexture===!1&&g.envMapRotation.value.premultiply(Vm),g.reflectivity.value=_.reflectivity,g.ior.value=_.ior,g.refractionRatio.value=_.refractionRatio),_.lightMap&&(g.lightMap.value=_.lightMap,g.lightMapIntensity.value=_.lightMapIntensity,e(_.lightMap,g.lightMapTransform)),_.aoMap&&(g.aoMap.value=_.aoMap,g.aoMapIntensity.value=_.aoMapIntensity,e(_.aoMap,g.aoMapTransform))}function o(g,_){g.diffuse.value.copy(_.color),g.opacity.value=_.opacity,_.map&&(g.map.value=_.map,e(_.map,g.mapTransform))}function a(g,_){g.dashSize.value=_.dashSize,g.totalSize.value=_.dashSize+_.gapSize,g.scale.value=_.scale}function l(g,_,y,E){g.diffuse.value.copy(_.color),g.opacity.value=_.opacity,g.size.value=_.size*y,g.scale.value=E*.5,_.map&&(g.map.value=_.map,e(_.map,g.uvTransform)),_.alphaMap&&(g.alphaMap.value=_.alphaMap,e(_.alphaMap,g.alphaMapTransform)),_.alphaTest>0&&(g.alphaTest.value=_.alphaTest)}function c(g,_){g.diffuse.value.copy(_.color),g.opacity.value=_.opacity,g.rotation.value=_.rotation,_.map&&(g.map.value=_.map,e(_.map,g.mapTransform)),_.alphaMap&&(g.alphaMap.value=_.alphaMap,e(_.alphaMap,g.alphaMapTransform)),_.alphaTest>0&&(g.alphaTest.value=_.alphaTest)}function h(g,_){g.specular.value.copy(_.specular),g.shininess.value=Math.max(_.shininess,1e-4)}function d(g,_){_.gradientMap&&(g.gradientMap.value=_.gradientMap)}function u(g,_){g.metalness.value=_.metalness,_.metalnessMap&&(g.metalnessMap.value=_.metalnessMap,e(_.metalnessMap,g.metalnessMapTransform)),g.roughness.value=_.roughness,_.roughnessMap&&(g.roughnessMap.value=_.roughnessMap,e(_.roughnessMap,g.roughnessMapTransform)),_.envMap&&(g.envMapIntensity.value=_.envMapIntensity)}function f(g,_,y){g.ior.value=_.ior,_.diffuseRoughness>0&&(g.diffuseRoughness.value=_.diffuseRoughness,_.diffuseRoughnessMap&&(g.diffuseRoughnessMap.value=_.diffuseRoughnessMap,e(_.diffuseRoughnessMap,g.diffuseRoughnessMapTransform))),_.sheen>0&&(g.sheenColor.value.copy(_.sheenColor).multiplyScalar(_.sheen),g.sheenRoughness.value=_.sheenRoughness,_.sheenColorMap&&(g.sheenColorMap.value=_.sheenColorMap,e(_.sheenColorMap,g.sheenColorMapTransform)),_.sheenRoughnessMap&&(g.sheenRoughnessMap.value=_.sheenRoughnessMap,e(_.sheenRoughnessMap,g.sheenRoughnessMapTransform))),_.clearcoat>0&&(g.clearcoat.value=_.clearcoat,g.clearcoatRoughness.value=_.clearcoatRoughness,_.clearcoatMap&&(g.clearcoatMap.value=_.clearcoatMap,e(_.clearcoatMap,g.clearcoatMapTransform)),_.clearcoatRoughnessMap&&(g.clearcoatRoughnessMap.value=_.clearcoatRoughnessMap,e(_.clearcoatRoughnessMap,g.clearcoatRoughnessMapTransform)),_.clearcoatNormalMap&&(g.clearcoatNormalMap.value=_.clearcoatNormalMap,e(_.clearcoatNormalMap,g.clearcoatNormalMapTransform),g.clearcoatNormalScale.value.copy(_.clearcoatNormalScale),_.side===Un&&g.clearcoatNormalScale.value.negate())),_.dispersion>0&&(g.dispersion.value=_.dispersion),_.retroreflectivity>0&&(g.retroreflectivity.value=_.retroreflectivity),_.iridescence>0&&(g.iridescence.value=_.iridescence,g.iridescenceIOR.value=_.iridescenceIOR,g.iridescenceThicknessMinimum.value=_.iridescenceThicknessMinimum,g.iridescenceThicknessMaximum.value=_.iridescenceThicknessMaximum,_.iridescenceMap&&(g.iridescenceMap.value=_.iridescenceMap,e(_.iridescenceMap,g.iridescenceMapTransform)),_.iridescenceThicknessMap&&(g.iridescenceThicknessMap.value=_.iridescenceThicknessMap,e(_.iridescenceThicknessMap,g.iridescenceThicknessMapTransform))),_.transmission>0&&(g.transmission.value=_.transmission,g.transmissionSamplerMap.value=y.texture,g.transmissionSamplerSize.value.set(y.width,y.height),_.transmissionMap&&(g.transmissionMap.value=_.transmissionMap,e(_.transmissionMap,g.transmissionMapTransform)),g.thickness.value=_.thickness,_.thicknessMap&&(g.thicknessMap.value=_.thicknessMap,e(_.thicknessMap,g.thicknessMapTransform)),g.attenuationDistance.value=_.attenuationDistance,g.attenuationColor.value.copy(_.attenuationColor)),_.anisotropy>0&&(g.anisotropyVector.value.set(_.anisotropy*Math.cos(_.anisotropyRotation),_.anisotropy*Math.sin(_.anisotropyRotation)),_.anisotropyMap&&(g.anisotropyMap.value=_.anisotropyMap,e(_.anisotropyMap,g.anisotropyMapTransform))),g.specularIntensity.value=_.specularIntensity,g.specularColor.value.copy(_.specularColor),_.specularColorMap&&(g.specularColorMap.value=_.specularColorMap,e(_.specularColorMap,g.specularColorMapTransform)),_.specularIntensityMap&&(g.specularIntensityMap.value=_.specularIntensityMap,e(_.specularIntensityMap,g.specularIntensityMapTransform))}function p(g,_){_.matcap&&(g.matcap.value=_.matcap)}function x(g,_){let y=t.get(_).light;g.referencePosition.value.setFromMatrixPosition(y.matrixWorld),g.nearDistance.value=y.shadow.camera.near,g.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function cb(i,t,e,n){let s={},r={};function o(y,E){let M=E.program;n.uniformBlockBinding(y,M,s[y.id])}function a(y,E){let M=s[y.id];M===void 0&&(p(y),M=l(y),s[y.id]=M,y.addEventListener("dispose",g));let P=E.program;n.updateUBOMapping(y,P);let w=t.render.frame;r[y.id]!==w&&(c(y),r[y.id]=w)}function l(y){let E=i.createBuffer(),M=y.__size,P=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,E),i.bufferData(i.UNIFORM_BUFFER,M,P),i.bindBuffer(i.UNIFORM_BUFFER,null),E}function c(y){let E=s[y.id],M=y.uniforms,P=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,E);for(let w=0,m=M.length;w<m;w++){let b=M[w];if(Array.isArray(b))for(let U=0,C=b.length;U<C;U++)h(b[U],w,U,P);else h(b,w,0,P)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(y,E,M,P){if(u(y,E,M,P)===!0){let w=y.__offset,m=y.value;if(Array.isArray(m)){let b=0;for(let U=0;U<m.length;U++){let C=m[U],L=x(C,!0);d(C,y.__data,b),b+=L.storage/Float32Array.BYTES_PER_ELEMENT}}else d(m,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,y.__data)}}function d(y,E,M){typeof y=="number"||typeof y=="boolean"?E[M]=y:y.isMatrix3?(E[M]=y.elements[0],E[M+1]=y.elements[1],E[M+2]=y.elements[2],E[M+3]=0,E[M+4]=y.elements[3],E[M+5]=y.elements[4],E[M+6]=y.elements[5],E[M+7]=0,E[M+8]=y.elements[6],E[M+9]=y.elements[7],E[M+10]=y.elements[8],E[M+11]=0):ArrayBuffer.isView(y)?E.set(y.subarray(0,E.length-M),M):y.toArray(E,M)}function u(y,E,M,P){let w=y.value,m=E+"_"+M;if(Array.isArray(w)){P[m]===void 0&&(P[m]=[]);let b=P[m],U=!1;for(let C=0;C<w.length;C++)f(w[C],b,C)===!0&&(U=!0);return U}return f(w,P,m)}function f(y,E,M){if(E[M]===void 0)return typeof y=="number"||typeof y=="boolean"?E[M]=y:ArrayBuffer.isView(y)?E[M]=y.slice():E[M]=y.clone(),!0;{let P=E[M];if(typeof y=="number"||typeof y=="boolean"){if(P!==y)return E[M]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(P.equals(y)===!1)return P.copy(y),!0}}return!1}function p(y){let E=y.uniforms,M=0,P=16;for(let m=0,b=E.length;m<b;m++){let U=Array.isArray(E[m])?E[m]:[E[m]];for(let C=0,L=U.length;C<L;C++){let k=U[C],z=Array.isArray(k.value)?k.value:[k.value],I=Array.isArray(E[m])||Array.isArray(k.value),V=M;for(let B=0,Y=z.length;B<Y;B++){let X=z[B],K=x(X,I),$=M%P,at=$%K.boundary,ot=$+at;M+=at,ot!==0&&P-ot<K.storage&&(M+=P-ot),B===0&&(V=M),M+=K.storage}let H=k.type==="int"?Int32Array:k.type==="uint"?Uint32Array:Float32Array;k.__data=new H((M-V)/Float32Array.BYTES_PER_ELEMENT),k.__offset=V}}let w=M%P;return w>0&&(M+=P-w),y.__size=M,y.__cache={},this}function x(y,E){let M={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(M.boundary=4,M.storage=4):y.isVector2?(M.boundary=8,M.storage=8):y.isVector3||y.isColor?(M.boundary=16,M.storage=12):y.isVector4?(M.boundary=16,M.storage=16):y.isMatrix3?(M.boundary=16,M.storage=48):y.isMatrix4?(M.boundary=16,M.storage=64):y.isTexture?se("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(M.boundary=16,M.storage=y.byteLength):se("WebGLRenderer: Unsupported uniform value type.",y),E===!0&&(M.boundary=16,M.storage=Math.ceil(M.storage/16)*16),M}function g(y){let E=y.target;E.removeEventListener("dispose",g),i.deleteBuffer(s[E.id]),delete s[E.id],delete r[E.id]}function _(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:_}}var hb=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),ns=null;function ub(){return ns===null&&(ns=new ca(hb,16,16,Ys,Fi),ns.name="DFG_LUT",ns.minFilter=Yn,ns.magFilter=Yn,ns.wrapS=Zi,ns.wrapT=Zi,ns.generateMipmaps=!1,ns.needsUpdate=!0),ns}var jc=class{constructor(t={}){let{canvas:e=tm(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:d=!1,reversedDepthBuffer:u=!1,outputBufferType:f=jn}=t;this.isWebGLRenderer=!0;let p;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");p=n.getContextAttributes().alpha}else p=o;let x=f,g=new Set([_c,gc,mc]),_=new Set([jn,Ni,yo,xr,dc,fc]),y=new Uint32Array(4),E=new Int32Array(4),M={textures:[],min:[],max:[],resolution:[]},P=null,w=null,m=[],b=[],U=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=es,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let C=this,L=!1,k=null,z=null,I=null,V=null;this._outputColorSpace=qn;let H=0,B=0,Y=null,X=-1,K=null,$=new en,at=new en,ot=null,Q=new ge(0),yt=0,Z=e.width,it=e.height,st=1,pt=null,Tt=null,bt=new en(0,0,Z,it),ee=new en(0,0,Z,it),ne=!1,Zt=new Vs,Se=new Hl,Kt=!1,Ae=!1,pe=new Ne,Me=new J,_e=new en,nn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},ft=!1;function At(){return Y===null?st:1}let D=n;function _t(R,W){return e.getContext(R,W)}let Ot,kt,St,ie,Vt,jt,N,T,j,Mt,gt,Ct,Pt,lt,dt,Et,G,mt,ct,Dt,Rt,Lt,Qt;try{let R={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:d};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",qt,!1),e.addEventListener("webglcontextrestored",ae,!1),e.addEventListener("webglcontextcreationerror",Ut,!1),D===null){let W="webgl2";if(D=_t(W,R),D===null)throw _t(W)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}oe()}catch(R){throw e.removeEventListener("webglcontextlost",qt,!1),e.removeEventListener("webglcontextrestored",ae,!1),e.removeEventListener("webglcontextcreationerror",Ut,!1),he("WebGLRenderer: "+R.message),R}function oe(){Ot=new SM(D),Ot.init(),Rt=new sb(D,Ot),kt=new uM(D,Ot,t,Rt),St=new nb(D,Ot),kt.reversedDepthBuffer&&u&&St.buffers.depth.setReversed(!0),z=D.createFramebuffer(),I=D.createFramebuffer(),V=D.createFramebuffer(),ie=new EM(D),Vt=new HS,jt=new ib(D,Ot,St,Vt,kt,Rt,ie),N=new MM(C),T=new Ax(D),Lt=new cM(D,T),j=new bM(D,T,ie,Lt),Mt=new AM(D,j,T,Lt,ie),mt=new TM(D,kt,jt),dt=new dM(Vt),gt=new VS(C,N,Ot,kt,Lt,dt),Ct=new lb(C,Vt),Pt=new WS,lt=new JS(Ot),G=new lM(C,N,St,Mt,p,l),Et=new eb(C,Mt,kt),Qt=new cb(D,ie,kt,St),ct=new hM(D,Ot,ie),Dt=new wM(D,Ot,ie),ie.programs=gt.programs,C.capabilities=kt,C.extensions=Ot,C.properties=Vt,C.renderLists=Pt,C.shadowMap=Et,C.state=St,C.info=ie}x!==jn&&(U=new CM(x,e.width,e.height,a,s,r));let vt=new pd(C,D);this.xr=vt,this.getContext=function(){return D},this.getContextAttributes=function(){return D.getContextAttributes()},this.forceContextLoss=function(){let R=Ot.get("WEBGL_lose_context");R&&R.loseContext()},this.forceContextRestore=function(){let R=Ot.get("WEBGL_lose_context");R&&R.restoreContext()},this.getPixelRatio=function(){return st},this.setPixelRatio=function(R){R!==void 0&&(st=R,this.setSize(Z,it,!1))},this.getSize=function(R){return R.set(Z,it)},this.setSize=function(R,W,rt=!0){if(vt.isPresenting){se("WebGLRenderer: Can't change size while VR device is presenting.");return}Z=R,it=W,e.width=Math.floor(R*st),e.height=Math.floor(W*st),rt===!0&&(e.style.width=R+"px",e.style.height=W+"px"),U!==null&&U.setSize(e.width,e.height),this.setViewport(0,0,R,W)},this.getDrawingBufferSize=function(R){return R.set(Z*st,it*st).floor()},this.setDrawingBufferSize=function(R,W,rt){Z=R,it=W,st=rt,e.width=Math.floor(R*rt),e.height=Math.floor(W*rt),this.setViewport(0,0,R,W)},this.setEffects=function(R){if(x===jn){he("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(R){for(let W=0;W<R.length;W++)if(R[W].isOutputPass===!0){se("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}U.setEffects(R||[])},this.getCurrentViewport=function(R){return R.copy($)},this.getViewport=function(R){return R.copy(bt)},this.setViewport=function(R,W,rt,tt){R.isVector4?bt.set(R.x,R.y,R.z,R.w):bt.set(R,W,rt,tt),St.viewport($.copy(bt).multiplyScalar(At()).round())},this.getScissor=function(R){return R.copy(ee)},this.setScissor=function(R,W,rt,tt){R.isVector4?ee.set(R.x,R.y,R.z,R.w):ee.set(R,W,rt,tt),St.scissor(at.copy(ee).multiplyScalar(At()).round())},this.getScissorTest=function(){return ne},this.setScissorTest=function(R){St.setScissorTest(ne=R)},this.setOpaqueSort=function(R){pt=R},this.setTransparentSort=function(R){Tt=R},this.getClearColor=function(R){return R.copy(G.getClearColor())},this.setClearColor=function(){G.setClearColor(...arguments)},this.getClearAlpha=function(){return G.getClearAlpha()},this.setClearAlpha=function(){G.setClearAlpha(...arguments)},this.clear=function(R=!0,W=!0,rt=!0){let tt=0;if(R){let et=!1;if(Y!==null){let Nt=Y.texture.format;et=g.has(Nt)}if(et){let Nt=Y.texture.type,Bt=_.has(Nt),Ft=G.getClearColor(),zt=G.getClearAlpha(),Jt=Ft.r,ce=Ft.g,be=Ft.b;Bt?(y[0]=Jt,y[1]=ce,y[2]=be,y[3]=zt,D.clearBufferuiv(D.COLOR,0,y)):(E[0]=Jt,E[1]=ce,E[2]=be,E[3]=zt,D.clearBufferiv(D.COLOR,0,E))}else tt|=D.COLOR_BUFFER_BIT}W&&(tt|=D.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),rt&&(tt|=D.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),tt!==0&&D.clear(tt)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(R){R.setRenderer(this),k=R},this.dispose=function(){e.removeEventListener("webglcontextlost",qt,!1),e.removeEventListener("webglcontextrestored",ae,!1),e.removeEventListener("webglcontextcreationerror",Ut,!1),G.dispose(),Pt.dispose(),lt.dispose(),jt.dispose(),Vt.dispose(),N.dispose(),Mt.dispose(),j.dispose(),Lt.dispose(),Qt.dispose(),gt.dispose(),vt.dispose(),vt.removeEventListener("sessionstart",Za),vt.removeEventListener("sessionend",zi),os.stop()};function qt(R){R.preventDefault(),Ju("WebGLRenderer: Context Lost."),L=!0}function ae(){Ju("WebGLRenderer: Context Restored."),L=!1;let R=ie.autoReset,W=Et.enabled,rt=Et.autoUpdate,tt=Et.needsUpdate,et=Et.type;oe(),ie.autoReset=R,Et.enabled=W,Et.autoUpdate=rt,Et.needsUpdate=tt,Et.type=et}function Ut(R){he("WebGLRenderer: A WebGL context could not be created. Reason: ",R.statusMessage)}function me(R){let W=R.target;W.removeEventListener("dispose",me),Ye(W)}function Ye(R){Hn(R),Vt.remove(R)}function Hn(R){let W=Vt.get(R).programs;W!==void 0&&(W.forEach(function(rt){gt.releaseProgram(rt)}),R.isShaderMaterial&&gt.releaseShaderCache(R))}this.renderBufferDirect=function(R,W,rt,tt,et,Nt){W===null&&(W=nn);let Bt=et.isMesh&&et.matrixWorld.determinantAffine()<0,Ft=Bo(R,W,rt,tt,et);St.setMaterial(tt,Bt);let zt=rt.index,Jt=1;if(tt.wireframe===!0){if(zt=j.getWireframeAttribute(rt),zt===void 0)return;Jt=2}let ce=rt.drawRange,be=rt.attributes.position,Yt=ce.start*Jt,we=(ce.start+ce.count)*Jt;Nt!==null&&(Yt=Math.max(Yt,Nt.start*Jt),we=Math.min(we,(Nt.start+Nt.count)*Jt)),zt!==null?(Yt=Math.max(Yt,0),we=Math.min(we,zt.count)):be!=null&&(Yt=Math.max(Yt,0),we=Math.min(we,be.count));let sn=we-Yt;if(sn<0||sn===1/0)return;Lt.setup(et,tt,Ft,rt,zt);let ke,ze=ct;if(zt!==null&&(ke=T.get(zt),ze=Dt,ze.setIndex(ke)),et.isMesh)tt.wireframe===!0?(St.setLineWidth(tt.wireframeLinewidth*At()),ze.setMode(D.LINES)):ze.setMode(D.TRIANGLES);else if(et.isLine){let xn=tt.linewidth;xn===void 0&&(xn=1),St.setLineWidth(xn*At()),et.isLineSegments?ze.setMode(D.LINES):et.isLineLoop?ze.setMode(D.LINE_LOOP):ze.setMode(D.LINE_STRIP)}else et.isPoints?ze.setMode(D.POINTS):et.isSprite&&ze.setMode(D.TRIANGLES);if(et.isBatchedMesh)if(Ot.get("WEBGL_multi_draw"))ze.renderMultiDraw(et._multiDrawStarts,et._multiDrawCounts,et._multiDrawCount);else{let xn=et._multiDrawStarts,$t=et._multiDrawCounts,un=et._multiDrawCount,Re=zt?T.get(zt).bytesPerElement:1,ls=Vt.get(tt).currentProgram.getUniforms();for(let dn=0;dn<un;dn++)ls.setValue(D,"_gl_DrawID",dn),ze.render(xn[dn]/Re,$t[dn])}else if(et.isInstancedMesh)ze.renderInstances(Yt,sn,et.count);else if(rt.isInstancedBufferGeometry){let xn=rt._maxInstanceCount!==void 0?rt._maxInstanceCount:1/0,$t=Math.min(rt.instanceCount,xn);ze.renderInstances(Yt,sn,$t)}else ze.render(Yt,sn)};function Fo(R,W,rt,tt){k!==null&&R.isNodeMaterial&&k.setObject(tt,R),Kt===!0&&dt.setState(R,rt,!1),R.transparent===!0&&R.side===ts&&R.forceSinglePass===!1?(R.side=Un,R.needsUpdate=!0,Vi(R,W,tt),R.side=qs,R.needsUpdate=!0,Vi(R,W,tt),R.side=ts):Vi(R,W,tt)}this.compile=function(R,W,rt=null){rt===null&&(rt=R),k!==null&&k.renderStart(R,W,rt),w=lt.get(rt),w.init(W),b.push(w),rt.traverseVisible(function(et){et.isLight&&et.layers.test(W.layers)&&(w.pushLight(et),et.castShadow&&w.pushShadow(et))}),R!==rt&&R.traverseVisible(function(et){et.isLight&&et.layers.test(W.layers)&&(w.pushLight(et),et.castShadow&&w.pushShadow(et))}),w.setupLights(),k!==null&&k.updateLights(w.state.lightsArray),Ae=this.localClippingEnabled,Kt=dt.init(this.clippingPlanes,Ae),Kt===!0&&dt.setGlobalState(this.clippingPlanes,W),k!==null&&Et.render(w.state.shadowsArray,rt,W);let tt=new Set;return R.traverse(function(et){if(!(et.isMesh||et.isPoints||et.isLine||et.isSprite))return;let Nt=et.material;if(Nt)if(Array.isArray(Nt))for(let Bt=0;Bt<Nt.length;Bt++){let Ft=Nt[Bt];Fo(Ft,rt,W,et),tt.add(Ft)}else Fo(Nt,rt,W,et),tt.add(Nt)}),w=b.pop(),k!==null&&k.renderEnd(),tt},this.compileAsync=function(R,W,rt=null){let tt=this.compile(R,W,rt);return new Promise(et=>{function Nt(){if(tt.forEach(function(Bt){let zt=Vt.get(Bt).currentProgram;(zt===void 0||zt.isReady())&&tt.delete(Bt)}),tt.size===0){et(R);return}setTimeout(Nt,10)}Ot.get("KHR_parallel_shader_compile")!==null?Nt():setTimeout(Nt,10)})};let Ar=null;function Fh(R){Ar&&Ar(R)}function Za(){os.stop()}function zi(){os.start()}let os=new Im;os.setAnimationLoop(Fh),typeof self<"u"&&os.setContext(self),this.setAnimationLoop=function(R){Ar=R,vt.setAnimationLoop(R),R===null?os.stop():os.start()},vt.addEventListener("sessionstart",Za),vt.addEventListener("sessionend",zi),this.render=function(R,W){if(W!==void 0&&W.isCamera!==!0){he("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(L===!0)return;k!==null&&k.renderStart(R,W);let rt=vt.enabled===!0&&vt.isPresenting===!0,tt=U!==null&&(Y===null||rt)&&U.begin(C,Y);if(R.matrixWorldAutoUpdate===!0&&R.updateMatrixWorld(),W.parent===null&&W.matrixWorldAutoUpdate===!0&&W.updateMatrixWorld(),vt.enabled===!0&&vt.isPresenting===!0&&(U===null||U.isCompositing()===!1)&&(vt.cameraAutoUpdate===!0&&vt.updateCamera(W),W=vt.getCamera()),R.isScene===!0&&R.onBeforeRender(C,R,W,Y),w=lt.get(R,b.length),w.init(W),w.state.textureUnits=jt.getTextureUnits(),b.push(w),pe.multiplyMatrices(W.projectionMatrix,W.matrixWorldInverse),W.isArrayCamera?Se.setFromArrayCamera(W):Zt.setFromProjectionMatrix(pe,vi,W.reversedDepth),Ae=this.localClippingEnabled,Kt=dt.init(this.clippingPlanes,Ae),P=Pt.get(R,m.length),P.init(),m.push(P),this.info.render.frame++,vt.enabled===!0&&vt.isPresenting===!0){let Bt=C.xr.getDepthSensingMesh();Bt!==null&&as(Bt,W,-1/0,C.sortObjects)}as(R,W,0,C.sortObjects),P.finish(),k!==null&&k.updateLights(w.state.lightsArray),C.sortObjects===!0&&P.sort(pt,Tt),ft=vt.enabled===!1||vt.isPresenting===!1||vt.hasDepthSensing()===!1,ft&&G.addToRenderList(P,R),this.info.autoReset===!0&&this.info.reset(),Kt===!0&&dt.beginShadows();let et=w.state.shadowsArray;if(Et.render(et,R,W),Kt===!0&&dt.endShadows(),(tt&&U.hasRenderPass())===!1){let Bt=P.opaque,Ft=P.transmissive;if(w.setupLights(),W.isArrayCamera){let zt=W.cameras;if(Ft.length>0)for(let Jt=0,ce=zt.length;Jt<ce;Jt++){let be=zt[Jt];wi(Bt,Ft,R,be)}ft&&G.render(R);for(let Jt=0,ce=zt.length;Jt<ce;Jt++){let be=zt[Jt];Uo(P,R,be,be.viewport)}}else Ft.length>0&&wi(Bt,Ft,R,W),ft&&G.render(R),Uo(P,R,W)}Y!==null&&B===0&&(jt.updateMultisampleRenderTarget(Y),jt.updateRenderTargetMipmap(Y)),tt&&U.end(C),R.isScene===!0&&R.onAfterRender(C,R,W),Lt.resetDefaultState(),X=-1,K=null,b.pop(),b.length>0?(w=b[b.length-1],jt.setTextureUnits(w.state.textureUnits),Kt===!0&&dt.setGlobalState(C.clippingPlanes,w.state.camera)):w=null,m.pop(),m.length>0?P=m[m.length-1]:P=null,k!==null&&k.renderEnd()};function as(R,W,rt,tt){if(R.visible===!1)return;if(R.layers.test(W.layers)){if(R.isGroup)rt=R.renderOrder;else if(R.isLOD)R.autoUpdate===!0&&R.update(W);else if(R.isLight)w.pushLight(R),R.castShadow&&w.pushShadow(R);else if(R.isSprite){let Bt=W.isArrayCamera?Se:Zt;if(!R.frustumCulled||R.intersectsFrustum(Bt)){tt&&_e.setFromMatrixPosition(R.matrixWorld).applyMatrix4(pe);let Ft=Mt.update(R),zt=R.material;zt.visible&&P.push(R,Ft,zt,rt,_e.z,null,W)}}else if(R.isMesh||R.isLine||R.isPoints){let Bt=W.isArrayCamera?Se:Zt;if(!R.frustumCulled||R.intersectsFrustum(Bt)){let Ft=Mt.update(R),zt=R.material;if(tt&&(R.boundingSphere!==void 0?(R.boundingSphere===null&&R.computeBoundingSphere(),_e.copy(R.boundingSphere.center)):(Ft.boundingSphere===null&&Ft.computeBoundingSphere(),_e.copy(Ft.boundingSphere.center)),_e.applyMatrix4(R.matrixWorld).applyMatrix4(pe)),Array.isArray(zt)){let Jt=Ft.groups;for(let ce=0,be=Jt.length;ce<be;ce++){let Yt=Jt[ce],we=zt[Yt.materialIndex];we&&we.visible&&P.push(R,Ft,we,rt,_e.z,Yt,W)}}else zt.visible&&P.push(R,Ft,zt,rt,_e.z,null,W)}}}let Nt=R.children;for(let Bt=0,Ft=Nt.length;Bt<Ft;Bt++)as(Nt[Bt],W,rt,tt)}function Uo(R,W,rt,tt){let{opaque:et,transmissive:Nt,transparent:Bt}=R;w.setupLightsView(rt),Kt===!0&&dt.setGlobalState(C.clippingPlanes,rt),tt&&St.viewport($.copy(tt)),et.length>0&&rn(et,W,rt),Nt.length>0&&rn(Nt,W,rt),Bt.length>0&&rn(Bt,W,rt),St.buffers.depth.setTest(!0),St.buffers.depth.setMask(!0),St.buffers.color.setMask(!0),St.setPolygonOffset(!1)}function wi(R,W,rt,tt){if((rt.isScene===!0?rt.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[tt.id]===void 0){let Yt=Ot.has("EXT_color_buffer_half_float")||Ot.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[tt.id]=new ui(1,1,{generateMipmaps:!0,type:Yt?Fi:jn,minFilter:ws,samples:Math.max(4,kt.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Ce.workingColorSpace})}let Nt=w.state.transmissionRenderTarget[tt.id],Bt=tt.viewport||$;Nt.setSize(Bt.z*C.transmissionResolutionScale,Bt.w*C.transmissionResolutionScale);let Ft=C.getRenderTarget(),zt=C.getActiveCubeFace(),Jt=C.getActiveMipmapLevel();C.setRenderTarget(Nt),C.getClearColor(Q),yt=C.getClearAlpha(),yt<1&&C.setClearColor(16777215,.5),C.clear(),ft&&G.render(rt);let ce=C.toneMapping;C.toneMapping=es;let be=tt.viewport;if(tt.viewport!==void 0&&(tt.viewport=void 0),w.setupLightsView(tt),Kt===!0&&dt.setGlobalState(C.clippingPlanes,tt),rn(R,rt,tt),jt.updateMultisampleRenderTarget(Nt),jt.updateRenderTargetMipmap(Nt),Ot.has("WEBGL_multisampled_render_to_texture")===!1){let Yt=!1;for(let we=0,sn=W.length;we<sn;we++){let ke=W[we],{object:ze,geometry:xn,material:$t,group:un}=ke;if($t.side===ts&&ze.layers.test(tt.layers)){let Re=$t.side;$t.side=Un,$t.needsUpdate=!0,cn(ze,rt,tt,xn,$t,un),$t.side=Re,$t.needsUpdate=!0,Yt=!0}}Yt===!0&&(jt.updateMultisampleRenderTarget(Nt),jt.updateRenderTargetMipmap(Nt))}C.setRenderTarget(Ft,zt,Jt),C.setClearColor(Q,yt),be!==void 0&&(tt.viewport=be),C.toneMapping=ce}function rn(R,W,rt){let tt=W.isScene===!0?W.overrideMaterial:null;for(let et=0,Nt=R.length;et<Nt;et++){let Bt=R[et],{object:Ft,geometry:zt,group:Jt}=Bt,ce=Bt.material;ce.allowOverride===!0&&tt!==null&&(ce=tt),Ft.layers.test(rt.layers)&&cn(Ft,W,rt,zt,ce,Jt)}}function cn(R,W,rt,tt,et,Nt){k!==null&&et.isNodeMaterial&&k.setObject(R,et),R.onBeforeRender(C,W,rt,tt,et,Nt),R.modelViewMatrix.multiplyMatrices(rt.matrixWorldInverse,R.matrixWorld),R.normalMatrix.getNormalMatrix(R.modelViewMatrix),et.onBeforeRender(C,W,rt,tt,R,Nt),et.transparent===!0&&et.side===ts&&et.forceSinglePass===!1?(et.side=Un,et.needsUpdate=!0,C.renderBufferDirect(rt,W,tt,et,R,Nt),et.side=qs,et.needsUpdate=!0,C.renderBufferDirect(rt,W,tt,et,R,Nt),et.side=ts):C.renderBufferDirect(rt,W,tt,et,R,Nt),R.onAfterRender(C,W,rt,tt,et,Nt)}function hn(R){let W=0;for(let rt of R)rt.texture!==null&&W++;return W}function Vi(R,W,rt){W.isScene!==!0&&(W=nn);let tt=Vt.get(R),et=w.state.lights,Nt=w.state.shadowsArray,Bt=et.state.version,Ft=gt.getParameters(R,et.state,Nt,W,rt,w.state.lightProbeGridArray),zt=gt.getProgramCacheKey(Ft),Jt=tt.programs;tt.environment=R.isMeshStandardMaterial||R.isMeshLambertMaterial||R.isMeshPhongMaterial?W.environment:null,tt.fog=W.fog;let ce=R.isMeshStandardMaterial||R.isMeshLambertMaterial&&!R.envMap||R.isMeshPhongMaterial&&!R.envMap;tt.envMap=N.get(R.envMap||tt.environment,ce),tt.envMapRotation=tt.environment!==null&&R.envMap===null?W.environmentRotation:R.envMapRotation,Jt===void 0&&(R.addEventListener("dispose",me),Jt=new Map,tt.programs=Jt,tt.programVariants=new Map);let be=Jt.get(zt);if(be!==void 0){if(tt.currentProgram===be&&tt.lightsStateVersion===Bt)return Oo(R,Ft),be}else Ft.uniforms=gt.getUniforms(R),k!==null&&R.isNodeMaterial&&k.build(R,rt,Ft),R.onBeforeCompile(Ft,C),be=gt.acquireProgram(Ft,zt),Jt.set(zt,be),tt.uniforms=Ft.uniforms;let Yt=tt.uniforms;return(!R.isShaderMaterial&&!R.isRawShaderMaterial||R.clipping===!0)&&(Yt.clippingPlanes=dt.uniform),Oo(R,Ft),tt.needsLights=Ps(R),tt.lightsStateVersion=Bt,tt.needsLights&&(Yt.ambientLightColor.value=et.state.ambient,Yt.lightProbe.value=et.state.probe,Yt.sunLights.value=et.state.sun,Yt.sunLightShadows.value=et.state.sunShadow,Yt.directionalLights.value=et.state.directional,Yt.directionalLightShadows.value=et.state.directionalShadow,Yt.spotLights.value=et.state.spot,Yt.spotLightShadows.value=et.state.spotShadow,Yt.rectAreaLights.value=et.state.rectArea,Yt.ltc_1.value=et.state.rectAreaLTC1,Yt.ltc_2.value=et.state.rectAreaLTC2,Yt.pointLights.value=et.state.point,Yt.pointLightShadows.value=et.state.pointShadow,Yt.hemisphereLights.value=et.state.hemi,Yt.sunShadowMatrix.value=et.state.sunShadowMatrix,Yt.sunShadowCascade.value=et.state.sunShadowCascade,Yt.directionalShadowMatrix.value=et.state.directionalShadowMatrix,Yt.spotLightMatrix.value=et.state.spotLightMatrix,Yt.spotLightMap.value=et.state.spotLightMap,Yt.pointShadowMatrix.value=et.state.pointShadowMatrix),tt.numLightProbeGrids=hn(w.state.lightProbeGridArray),tt.currentProgram=be,tt.uniformsList=null,be}function ei(R,W,rt,tt,et){let Nt=Vt.get(R),Bt=Nt.currentProgram.id+","+tt+","+et,Ft=Nt.programVariants.get(Bt);return Ft===void 0?(Ft=Vi(R,W,rt),Nt.programVariants.set(Bt,Ft)):(Nt.currentProgram=Ft,Nt.uniformsList=null,Nt.outputColorSpace=tt,Nt.toneMapping=et),Ft}function Cs(R){if(R.uniformsList===null){let W=R.currentProgram.getUniforms();R.uniformsList=Mo.seqWithValue(W.seq,R.uniforms)}return R.uniformsList}function Oo(R,W){let rt=Vt.get(R);rt.outputColorSpace=W.outputColorSpace,rt.batching=W.batching,rt.batchingColor=W.batchingColor,rt.instancing=W.instancing,rt.instancingColor=W.instancingColor,rt.instancingMorph=W.instancingMorph,rt.skinning=W.skinning,rt.morphTargets=W.morphTargets,rt.morphNormals=W.morphNormals,rt.morphColors=W.morphColors,rt.morphTargetsCount=W.morphTargetsCount,rt.numClippingPlanes=W.numClippingPlanes,rt.numIntersection=W.numClipIntersection,rt.vertexAlphas=W.vertexAlphas,rt.vertexTangents=W.vertexTangents,rt.toneMapping=W.toneMapping}function Bo(R,W,rt,tt,et){W.isScene!==!0&&(W=nn),jt.resetTextureUnits();let Nt=W.fog,Bt=tt.isMeshStandardMaterial||tt.isMeshLambertMaterial||tt.isMeshPhongMaterial?W.environment:null,Ft=Y===null?C.outputColorSpace:Y.isXRRenderTarget===!0?Y.texture.colorSpace:Ce.workingColorSpace,zt=tt.isMeshStandardMaterial||tt.isMeshLambertMaterial&&!tt.envMap||tt.isMeshPhongMaterial&&!tt.envMap,Jt=N.get(tt.envMap||Bt,zt),ce=tt.vertexColors===!0&&!!rt.attributes.color&&rt.attributes.color.itemSize===4,be=!!rt.attributes.tangent&&(!!tt.normalMap||tt.anisotropy>0),Yt=!!rt.morphAttributes.position,we=!!rt.morphAttributes.normal,sn=!!rt.morphAttributes.color,ke=es;tt.toneMapped&&(Y===null||Y.isXRRenderTarget===!0)&&(ke=C.toneMapping);let ze=rt.morphAttributes.position||rt.morphAttributes.normal||rt.morphAttributes.color,xn=ze!==void 0?ze.length:0,$t=Vt.get(tt),un=w.state.lights;if(Kt===!0&&(Ae===!0||R!==K)){let Ve=R===K&&tt.id===X;dt.setState(tt,R,Ve)}let Re=!1,ls=!1;tt.version===$t.__version?$t.needsLights&&$t.lightsStateVersion!==un.state.version||et.isBatchedMesh&&$t.batching===!1||!et.isBatchedMesh&&$t.batching===!0||et.isBatchedMesh&&$t.batchingColor===!0&&et._colorsTexture===null||et.isBatchedMesh&&$t.batchingColor===!1&&et._colorsTexture!==null||et.isInstancedMesh&&$t.instancing===!1||!et.isInstancedMesh&&$t.instancing===!0||et.isSkinnedMesh&&$t.skinning===!1||!et.isSkinnedMesh&&$t.skinning===!0||et.isInstancedMesh&&$t.instancingColor===!0&&et.instanceColor===null||et.isInstancedMesh&&$t.instancingColor===!1&&et.instanceColor!==null||et.isInstancedMesh&&$t.instancingMorph===!0&&et.morphTexture===null||et.isInstancedMesh&&$t.instancingMorph===!1&&et.morphTexture!==null||$t.envMap!==Jt||tt.fog===!0&&$t.fog!==Nt||$t.numClippingPlanes!==void 0&&($t.numClippingPlanes!==dt.numPlanes||$t.numIntersection!==dt.numIntersection)||$t.vertexAlphas!==ce||$t.vertexTangents!==be||$t.morphTargets!==Yt||$t.morphNormals!==we||$t.morphColors!==sn||$t.morphTargetsCount!==xn||$t.numLightProbeGrids!==hn(w.state.lightProbeGridArray)?Re=!0:($t.outputColorSpace!==Ft||$t.toneMapping!==ke)&&(ls=!0):(Re=!0,$t.__version=tt.version);let dn=$t.currentProgram;(Re===!0||ls===!0)&&(dn=ls===!0?ei(tt,W,et,Ft,ke):Vi(tt,W,et),k&&tt.isNodeMaterial&&k.onUpdateProgram(tt,dn,$t));let Pr=!1,Hi=!1,cs=!1,xe=dn.getUniforms(),on=$t.uniforms;if(St.useProgram(dn.program)&&(Pr=!0,Hi=!0,cs=!0),tt.id!==X&&(X=tt.id,Hi=!0),Pr||K!==R){St.buffers.depth.getReversed()&&R.reversedDepth!==!0&&(R._reversedDepth=!0,R.updateProjectionMatrix()),xe.setValue(D,"projectionMatrix",R.projectionMatrix),xe.setValue(D,"viewMatrix",R.matrixWorldInverse);let fn=xe.map.cameraPosition;fn!==void 0&&fn.setValue(D,Me.setFromMatrixPosition(R.matrixWorld)),kt.logarithmicDepthBuffer&&xe.setValue(D,"logDepthBufFC",2/(Math.log(R.far+1)/Math.LN2)),(tt.isMeshPhongMaterial||tt.isMeshToonMaterial||tt.isMeshLambertMaterial||tt.isMeshBasicMaterial||tt.isMeshStandardMaterial||tt.isShaderMaterial)&&xe.setValue(D,"isOrthographic",R.isOrthographicCamera===!0),K!==R&&(K=R,Hi=!0,cs=!0)}if($t.needsLights&&(un.state.sunShadowMap.length>0&&xe.setValue(D,"sunShadowMap",un.state.sunShadowMap,jt),un.state.directionalShadowMap.length>0&&xe.setValue(D,"directionalShadowMap",un.state.directionalShadowMap,jt),un.state.spotShadowMap.length>0&&xe.setValue(D,"spotShadowMap",un.state.spotShadowMap,jt),un.state.pointShadowMap.length>0&&xe.setValue(D,"pointShadowMap",un.state.pointShadowMap,jt)),et.isSkinnedMesh){xe.setOptional(D,et,"bindMatrix"),xe.setOptional(D,et,"bindMatrixInverse");let Ve=et.skeleton;Ve&&(Ve.boneTexture===null&&Ve.computeBoneTexture(),xe.setValue(D,"boneTexture",Ve.boneTexture,jt))}et.isBatchedMesh&&(xe.setOptional(D,et,"batchingTexture"),xe.setValue(D,"batchingTexture",et._matricesTexture,jt),xe.setOptional(D,et,"batchingIdTexture"),xe.setValue(D,"batchingIdTexture",et._indirectTexture,jt),xe.setOptional(D,et,"batchingColorTexture"),et._colorsTexture!==null&&xe.setValue(D,"batchingColorTexture",et._colorsTexture,jt));let Gn=rt.morphAttributes;if((Gn.position!==void 0||Gn.normal!==void 0||Gn.color!==void 0)&&mt.update(et,rt,dn),(Hi||$t.receiveShadow!==et.receiveShadow)&&($t.receiveShadow=et.receiveShadow,xe.setValue(D,"receiveShadow",et.receiveShadow)),(tt.isMeshStandardMaterial||tt.isMeshLambertMaterial||tt.isMeshPhongMaterial)&&tt.envMap===null&&W.environment!==null&&(on.envMapIntensity.value=W.environmentIntensity),on.dfgLUT!==void 0&&(on.dfgLUT.value=ub()),Hi){if(xe.setValue(D,"toneMappingExposure",C.toneMappingExposure),$t.needsLights&&Rr(on,cs),Nt&&tt.fog===!0&&Ct.refreshFogUniforms(on,Nt),Ct.refreshMaterialUniforms(on,tt,st,it,w.state.transmissionRenderTarget[R.id]),$t.needsLights&&$t.numLightProbeGrids>0){let Ve=M,fn=0;for(let On of w.state.lightProbeGridArray)On.texture!==null&&(Ve.textures[fn]=On.texture,Ve.min[fn]=On.boundingBox.min,Ve.max[fn]=On.boundingBox.max,Ve.resolution[fn]=On.resolution,fn++);for(let On in Ve)Ve[On].length=fn;on.probesSH.value=Ve.textures,on.probesMin.value=Ve.min,on.probesMax.value=Ve.max,on.probesResolution.value=Ve.resolution}Mo.upload(D,Cs($t),on,jt)}if(tt.isShaderMaterial&&tt.uniformsNeedUpdate===!0&&(Mo.upload(D,Cs($t),on,jt),tt.uniformsNeedUpdate=!1),tt.isSpriteMaterial&&xe.setValue(D,"center",et.center),xe.setValue(D,"modelViewMatrix",et.modelViewMatrix),xe.setValue(D,"normalMatrix",et.normalMatrix),xe.setValue(D,"modelMatrix",et.matrixWorld),tt.uniformsGroups!==void 0){let Ve=tt.uniformsGroups;for(let fn=0,On=Ve.length;fn<On;fn++){let Ja=Ve[fn];Qt.update(Ja,dn),Qt.bind(Ja,dn)}}return dn}function Rr(R,W){R.ambientLightColor.needsUpdate=W,R.lightProbe.needsUpdate=W,R.sunLights.needsUpdate=W,R.sunLightShadows.needsUpdate=W,R.directionalLights.needsUpdate=W,R.directionalLightShadows.needsUpdate=W,R.pointLights.needsUpdate=W,R.pointLightShadows.needsUpdate=W,R.spotLights.needsUpdate=W,R.spotLightShadows.needsUpdate=W,R.rectAreaLights.needsUpdate=W,R.hemisphereLights.needsUpdate=W}function Ps(R){return R.isMeshLambertMaterial||R.isMeshToonMaterial||R.isMeshPhongMaterial||R.isMeshStandardMaterial||R.isShadowMaterial||R.isShaderMaterial&&R.lights===!0}this.getActiveCubeFace=function(){return H},this.getActiveMipmapLevel=function(){return B},this.getRenderTarget=function(){return Y},this.setRenderTargetTextures=function(R,W,rt){let tt=Vt.get(R);tt.__autoAllocateDepthBuffer=R.resolveDepthBuffer===!1,tt.__autoAllocateDepthBuffer===!1&&(tt.__useRenderToTexture=!1),Vt.get(R.texture).__webglTexture=W,Vt.get(R.depthTexture).__webglTexture=tt.__autoAllocateDepthBuffer?void 0:rt,tt.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(R,W){let rt=Vt.get(R);rt.__webglFramebuffer=W,rt.__useDefaultFramebuffer=W===void 0},this.setRenderTarget=function(R,W=0,rt=0){Y=R,H=W,B=rt;let tt=null,et=!1,Nt=!1;if(R){let Ft=Vt.get(R);if(Ft.__useDefaultFramebuffer!==void 0){St.bindFramebuffer(D.FRAMEBUFFER,Ft.__webglFramebuffer),$.copy(R.viewport),at.copy(R.scissor),ot=R.scissorTest,St.viewport($),St.scissor(at),St.setScissorTest(ot),X=-1;return}else if(Ft.__webglFramebuffer===void 0)jt.setupRenderTarget(R);else if(Ft.__hasExternalTextures)jt.rebindTextures(R,Vt.get(R.texture).__webglTexture,Vt.get(R.depthTexture).__webglTexture);else if(R.depthBuffer){let ce=R.depthTexture;if(Ft.__boundDepthTexture!==ce){if(ce!==null&&Vt.has(ce)&&(R.width!==ce.image.width||R.height!==ce.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");jt.setupDepthRenderbuffer(R)}}let zt=R.texture;(zt.isData3DTexture||zt.isDataArrayTexture||zt.isCompressedArrayTexture)&&(Nt=!0);let Jt=Vt.get(R).__webglFramebuffer;R.isWebGLCubeRenderTarget?(Array.isArray(Jt[W])?tt=Jt[W][rt]:tt=Jt[W],et=!0):R.samples>0&&jt.useMultisampledRTT(R)===!1?tt=Vt.get(R).__webglMultisampledFramebuffer:Array.isArray(Jt)?tt=Jt[rt]:tt=Jt,$.copy(R.viewport),at.copy(R.scissor),ot=R.scissorTest}else $.copy(bt).multiplyScalar(st).floor(),at.copy(ee).multiplyScalar(st).floor(),ot=ne;if(rt!==0&&(tt=z),St.bindFramebuffer(D.FRAMEBUFFER,tt)&&St.drawBuffers(R,tt),St.viewport($),St.scissor(at),St.setScissorTest(ot),et){let Ft=Vt.get(R.texture);D.framebufferTexture2D(D.FRAMEBUFFER,D.COLOR_ATTACHMENT0,D.TEXTURE_CUBE_MAP_POSITIVE_X+W,Ft.__webglTexture,rt)}else if(Nt){let Ft=W;for(let zt=0;zt<R.textures.length;zt++){let Jt=Vt.get(R.textures[zt]);D.framebufferTextureLayer(D.FRAMEBUFFER,D.COLOR_ATTACHMENT0+zt,Jt.__webglTexture,rt,Ft)}}else if(R!==null&&rt!==0){let Ft=Vt.get(R.texture);D.framebufferTexture2D(D.FRAMEBUFFER,D.COLOR_ATTACHMENT0,D.TEXTURE_2D,Ft.__webglTexture,rt)}X=-1};function Cr(R){let W=Vt.get(R);return(W.__readFormat!==R.format||W.__readType!==R.type)&&(W.__readFormat=R.format,W.__readType=R.type,W.__formatReadable=kt.textureFormatReadable(R.format),W.__typeReadable=kt.textureTypeReadable(R.type)),W}this.readRenderTargetPixels=function(R,W,rt,tt,et,Nt,Bt,Ft=0){if(!(R&&R.isWebGLRenderTarget)){he("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let zt=Vt.get(R).__webglFramebuffer;if(R.isWebGLCubeRenderTarget&&Bt!==void 0&&(zt=zt[Bt],Array.isArray(zt)&&(zt=zt[0])),zt){St.bindFramebuffer(D.FRAMEBUFFER,zt);try{let Jt=R.textures[Ft],ce=Jt.format,be=Jt.type;R.textures.length>1&&D.readBuffer(D.COLOR_ATTACHMENT0+Ft);let Yt=Cr(Jt);if(Yt.__formatReadable===!1){he("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Yt.__typeReadable===!1){he("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}W>=0&&W<=R.width-tt&&rt>=0&&rt<=R.height-et&&D.readPixels(W,rt,tt,et,Rt.convert(ce),Rt.convert(be),Nt)}finally{let Jt=Y!==null?Vt.get(Y).__webglFramebuffer:null;St.bindFramebuffer(D.FRAMEBUFFER,Jt)}}},this.readRenderTargetPixelsAsync=async function(R,W,rt,tt,et,Nt,Bt,Ft=0){if(!(R&&R.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let zt=Vt.get(R).__webglFramebuffer;if(R.isWebGLCubeRenderTarget&&Bt!==void 0&&(zt=zt[Bt],Array.isArray(zt)&&(zt=zt[0])),zt)if(W>=0&&W<=R.width-tt&&rt>=0&&rt<=R.height-et){St.bindFramebuffer(D.FRAMEBUFFER,zt);let Jt=R.textures[Ft],ce=Jt.format,be=Jt.type;R.textures.length>1&&D.readBuffer(D.COLOR_ATTACHMENT0+Ft);let Yt=Cr(Jt);if(Yt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Yt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let we=D.createBuffer();D.bindBuffer(D.PIXEL_PACK_BUFFER,we),D.bufferData(D.PIXEL_PACK_BUFFER,Nt.byteLength,D.STREAM_READ),D.readPixels(W,rt,tt,et,Rt.convert(ce),Rt.convert(be),0),D.bindBuffer(D.PIXEL_PACK_BUFFER,null);let sn=Y!==null?Vt.get(Y).__webglFramebuffer:null;St.bindFramebuffer(D.FRAMEBUFFER,sn);let ke=D.fenceSync(D.SYNC_GPU_COMMANDS_COMPLETE,0);return D.flush(),await nm(D,ke,4),D.bindBuffer(D.PIXEL_PACK_BUFFER,we),D.getBufferSubData(D.PIXEL_PACK_BUFFER,0,Nt),D.bindBuffer(D.PIXEL_PACK_BUFFER,null),D.deleteBuffer(we),D.deleteSync(ke),Nt}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(R,W=null,rt=0){let tt=Math.pow(2,-rt),et=Math.floor(R.image.width*tt),Nt=Math.floor(R.image.height*tt),Bt=W!==null?W.x:0,Ft=W!==null?W.y:0;jt.setTexture2D(R,0),D.copyTexSubImage2D(D.TEXTURE_2D,rt,0,0,Bt,Ft,et,Nt),St.unbindTexture()},this.copyTextureToTexture=function(R,W,rt=null,tt=null,et=0,Nt=0){let Bt,Ft,zt,Jt,ce,be,Yt,we,sn,ke=R.isCompressedTexture?R.mipmaps[Nt]:R.image;if(rt!==null)Bt=rt.max.x-rt.min.x,Ft=rt.max.y-rt.min.y,zt=rt.isBox3?rt.max.z-rt.min.z:1,Jt=rt.min.x,ce=rt.min.y,be=rt.isBox3?rt.min.z:0;else{let xe=Math.pow(2,-et);Bt=Math.floor(ke.width*xe),Ft=Math.floor(ke.height*xe),R.isDataArrayTexture?zt=ke.depth:R.isData3DTexture?zt=Math.floor(ke.depth*xe):zt=1,Jt=0,ce=0,be=0}tt!==null?(Yt=tt.x,we=tt.y,sn=tt.z):(Yt=0,we=0,sn=0);let ze=Rt.convert(W.format),xn=Rt.convert(W.type),$t;W.isData3DTexture?(jt.setTexture3D(W,0),$t=D.TEXTURE_3D):W.isDataArrayTexture||W.isCompressedArrayTexture?(jt.setTexture2DArray(W,0),$t=D.TEXTURE_2D_ARRAY):(jt.setTexture2D(W,0),$t=D.TEXTURE_2D),St.activeTexture(D.TEXTURE0),St.pixelStorei(D.UNPACK_FLIP_Y_WEBGL,W.flipY),St.pixelStorei(D.UNPACK_PREMULTIPLY_ALPHA_WEBGL,W.premultiplyAlpha),St.pixelStorei(D.UNPACK_ALIGNMENT,W.unpackAlignment);let un=St.getParameter(D.UNPACK_ROW_LENGTH),Re=St.getParameter(D.UNPACK_IMAGE_HEIGHT),ls=St.getParameter(D.UNPACK_SKIP_PIXELS),dn=St.getParameter(D.UNPACK_SKIP_ROWS),Pr=St.getParameter(D.UNPACK_SKIP_IMAGES);St.pixelStorei(D.UNPACK_ROW_LENGTH,ke.width),St.pixelStorei(D.UNPACK_IMAGE_HEIGHT,ke.height),St.pixelStorei(D.UNPACK_SKIP_PIXELS,Jt),St.pixelStorei(D.UNPACK_SKIP_ROWS,ce),St.pixelStorei(D.UNPACK_SKIP_IMAGES,be);let Hi=R.isDataArrayTexture||R.isData3DTexture,cs=W.isDataArrayTexture||W.isData3DTexture;if(R.isDepthTexture){let xe=Vt.get(R),on=Vt.get(W),Gn=Vt.get(xe.__renderTarget),Ve=Vt.get(on.__renderTarget);St.bindFramebuffer(D.READ_FRAMEBUFFER,Gn.__webglFramebuffer),St.bindFramebuffer(D.DRAW_FRAMEBUFFER,Ve.__webglFramebuffer);for(let fn=0;fn<zt;fn++)Hi&&(D.framebufferTextureLayer(D.READ_FRAMEBUFFER,D.COLOR_ATTACHMENT0,Vt.get(R).__webglTexture,et,be+fn),D.framebufferTextureLayer(D.DRAW_FRAMEBUFFER,D.COLOR_ATTACHMENT0,Vt.get(W).__webglTexture,Nt,sn+fn)),D.blitFramebuffer(Jt,ce,Jt+Bt,ce+Ft,Yt,we,Yt+Bt,we+Ft,D.DEPTH_BUFFER_BIT,D.NEAREST);St.bindFramebuffer(D.READ_FRAMEBUFFER,null),St.bindFramebuffer(D.DRAW_FRAMEBUFFER,null)}else if(et!==0||R.isRenderTargetTexture||Vt.has(R)){let xe=Vt.get(R),on=Vt.get(W);St.bindFramebuffer(D.READ_FRAMEBUFFER,I),St.bindFramebuffer(D.DRAW_FRAMEBUFFER,V);for(let Gn=0;Gn<zt;Gn++)Hi?D.framebufferTextureLayer(D.READ_FRAMEBUFFER,D.COLOR_ATTACHMENT0,xe.__webglTexture,et,be+Gn):D.framebufferTexture2D(D.READ_FRAMEBUFFER,D.COLOR_ATTACHMENT0,D.TEXTURE_2D,xe.__webglTexture,et),cs?D.framebufferTextureLayer(D.DRAW_FRAMEBUFFER,D.COLOR_ATTACHMENT0,on.__webglTexture,Nt,sn+Gn):D.framebufferTexture2D(D.DRAW_FRAMEBUFFER,D.COLOR_ATTACHMENT0,D.TEXTURE_2D,on.__webglTexture,Nt),et!==0?D.blitFramebuffer(Jt,ce,Jt+Bt,ce+Ft,Yt,we,Yt+Bt,we+Ft,D.COLOR_BUFFER_BIT,D.NEAREST):cs?D.copyTexSubImage3D($t,Nt,Yt,we,sn+Gn,Jt,ce,Bt,Ft):D.copyTexSubImage2D($t,Nt,Yt,we,Jt,ce,Bt,Ft);St.bindFramebuffer(D.READ_FRAMEBUFFER,null),St.bindFramebuffer(D.DRAW_FRAMEBUFFER,null)}else cs?R.isDataTexture||R.isData3DTexture?D.texSubImage3D($t,Nt,Yt,we,sn,Bt,Ft,zt,ze,xn,ke.data):W.isCompressedArrayTexture?D.compressedTexSubImage3D($t,Nt,Yt,we,sn,Bt,Ft,zt,ze,ke.data):D.texSubImage3D($t,Nt,Yt,we,sn,Bt,Ft,zt,ze,xn,ke):R.isDataTexture?D.texSubImage2D(D.TEXTURE_2D,Nt,Yt,we,Bt,Ft,ze,xn,ke.data):R.isCompressedTexture?D.compressedTexSubImage2D(D.TEXTURE_2D,Nt,Yt,we,ke.width,ke.height,ze,ke.data):D.texSubImage2D(D.TEXTURE_2D,Nt,Yt,we,Bt,Ft,ze,xn,ke);St.pixelStorei(D.UNPACK_ROW_LENGTH,un),St.pixelStorei(D.UNPACK_IMAGE_HEIGHT,Re),St.pixelStorei(D.UNPACK_SKIP_PIXELS,ls),St.pixelStorei(D.UNPACK_SKIP_ROWS,dn),St.pixelStorei(D.UNPACK_SKIP_IMAGES,Pr),Nt===0&&W.generateMipmaps===!0&&W.mipmapsAutoUpdate===!0&&D.generateMipmap($t),St.unbindTexture()},this.initRenderTarget=function(R){Vt.get(R).__webglFramebuffer===void 0&&jt.setupRenderTarget(R)},this.initTexture=function(R){R.isCubeTexture?jt.setTextureCube(R,0):R.isData3DTexture?jt.setTexture3D(R,0):R.isDataArrayTexture||R.isCompressedArrayTexture?jt.setTexture2DArray(R,0):jt.setTexture2D(R,0),St.unbindTexture()},this.resetState=function(){H=0,B=0,Y=null,St.reset(),Lt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return vi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=Ce._getDrawingBufferColorSpace(t),e.unpackColorSpace=Ce._getUnpackColorSpace()}};var Hm={type:"change"},gd={type:"start"},Wm={type:"end"},eh=new dr,Gm=new ci,fb=Math.cos(70*td.DEG2RAD),Mn=new J,Qn=2*Math.PI,Fe={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},md=1e-6,nh=class extends Ea{constructor(t,e=null){super(t,e),this.state=Fe.NONE,this.target=new J,this.cursor=new J,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:$s.ROTATE,MIDDLE:$s.DOLLY,RIGHT:$s.PAN},this.touches={ONE:Xs.ROTATE,TWO:Xs.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new J,this._lastQuaternion=new Nn,this._lastTargetPosition=new J,this._quat=new Nn().setFromUnitVectors(t.up,new J(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new mo,this._sphericalDelta=new mo,this._scale=1,this._panOffset=new J,this._rotateStart=new le,this._rotateEnd=new le,this._rotateDelta=new le,this._panStart=new le,this._panEnd=new le,this._panDelta=new le,this._dollyStart=new le,this._dollyEnd=new le,this._dollyDelta=new le,this._dollyDirection=new J,this._mouse=new le,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=mb.bind(this),this._onPointerDown=pb.bind(this),this._onPointerUp=gb.bind(this),this._onContextMenu=bb.bind(this),this._onMouseWheel=yb.bind(this),this._onKeyDown=vb.bind(this),this._onTouchStart=Mb.bind(this),this._onTouchMove=Sb.bind(this),this._onMouseDown=_b.bind(this),this._onMouseMove=xb.bind(this),this._interceptControlDown=wb.bind(this),this._interceptControlUp=Eb.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Fe.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(Hm),this.update(),this.state=Fe.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;Mn.copy(e).sub(this.target),Mn.applyQuaternion(this._quat),this._spherical.setFromVector3(Mn),this.autoRotate&&this.state===Fe.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Qn:n>Math.PI&&(n-=Qn),s<-Math.PI?s+=Qn:s>Math.PI&&(s-=Qn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(Mn.setFromSpherical(this._spherical),Mn.applyQuaternion(this._quatInverse),e.copy(this.target).add(Mn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=Mn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new J(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new J(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=Mn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(eh.origin.copy(this.object.position),eh.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(eh.direction))<fb?this.object.lookAt(this.target):(Gm.setFromNormalAndCoplanarPoint(this.object.up,this.target),eh.intersectPlane(Gm,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>md||8*(1-this._lastQuaternion.dot(this.object.quaternion))>md||this._lastTargetPosition.distanceToSquared(this.target)>md?(this.dispatchEvent(Hm),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Qn/60*this.autoRotateSpeed*t:Qn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){Mn.setFromMatrixColumn(e,0),Mn.multiplyScalar(-t),this._panOffset.add(Mn)}_panUp(t,e){this.screenSpacePanning===!0?Mn.setFromMatrixColumn(e,1):(Mn.setFromMatrixColumn(e,0),Mn.crossVectors(this.object.up,Mn)),Mn.multiplyScalar(t),this._panOffset.add(Mn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;Mn.copy(s).sub(this.target);let r=Mn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new le,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function pb(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function mb(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function gb(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(Wm),this.state=Fe.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function _b(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case $s.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Fe.DOLLY;break;case $s.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Fe.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Fe.ROTATE}break;case $s.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Fe.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Fe.PAN}break;default:this.state=Fe.NONE}this.state!==Fe.NONE&&this.dispatchEvent(gd)}function xb(i){switch(this.state){case Fe.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Fe.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Fe.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function yb(i){this.enabled===!1||this.enableZoom===!1||this.state!==Fe.NONE||(i.preventDefault(),this.dispatchEvent(gd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(Wm))}function vb(i){this.enabled!==!1&&this._handleKeyDown(i)}function Mb(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case Xs.ROTATE:if(this.enableRotate===!1){this.state=Fe.NONE;break}this._handleTouchStartRotate(i),this.state=Fe.TOUCH_ROTATE;break;case Xs.PAN:if(this.enablePan===!1){this.state=Fe.NONE;break}this._handleTouchStartPan(i),this.state=Fe.TOUCH_PAN;break;default:this.state=Fe.NONE}break;case 2:switch(this.touches.TWO){case Xs.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Fe.TOUCH_DOLLY_PAN;break;case Xs.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Fe.TOUCH_DOLLY_ROTATE;break;default:this.state=Fe.NONE}break;default:this.state=Fe.NONE}this.state!==Fe.NONE&&this.dispatchEvent(gd)}function Sb(i){switch(this._trackPointer(i),this.state){case Fe.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Fe.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Fe.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Fe.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Fe.NONE}}function bb(i){this.enabled!==!1&&i.preventDefault()}function wb(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function Eb(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var ih=i=>{let t=Math.max(i.points.width/3-1,0);return{data:new Float64Array(t*5*8),count:0,slackAt:-1,slackPoint:[0,0,0]}};function sh(i,t){let e=i.points.now,n=e.length/3-1,s=i.slack.now[0]||0,r=.002*(i.most_tension||1),o=u=>i.tension.now[i.span_of?.[u]??0]??0,a=u=>Math.hypot(e[3*u+3]-e[3*u],e[3*u+4]-e[3*u+1],e[3*u+5]-e[3*u+2]),l=0,c=0;if(t.slackAt=-1,s>.02){for(let u=0;u<n;++u)if(o(u)<r){let f=a(u);l+=f,f>c&&(c=f,t.slackAt=u)}}let h=0,d=(u,f,p,x,g,_,y)=>{let E=h++*8,M=t.data;M[E]=u,M[E+1]=f,M[E+2]=p,M[E+3]=x,M[E+4]=g,M[E+5]=_,M[E+6]=y,M[E+7]=Math.hypot(x-u,g-f,_-p)};for(let u=0;u<n;++u){let f=3*u,p=o(u);if(e[f]!==e[f]||e[f+3]!==e[f+3])continue;if(!(l>0&&p<r)){d(e[f],e[f+1],e[f+2],e[f+3],e[f+4],e[f+5],p);continue}let x=a(u),g=Math.sqrt(3/8*x*s*x/l);if(u===t.slackAt)for(let _=0;_<3;++_)t.slackPoint[_]=.5*(e[f+_]+e[f+3+_])-(_===1?g:0);for(let _=0;_<5;++_){let y=_/5,E=(_+.6)/5,M=w=>g*4*w*(1-w),P=(w,m)=>e[f+m]+w*(e[f+3+m]-e[f+m]);d(P(y,0),P(y,1)-M(y),P(y,2),P(E,0),P(E,1)-M(E),P(E,2),-1)}}t.count=h}function Tb(i){return i.fingers.map(t=>{let e=i.bodies.findLastIndex(s=>s.role==="phalanx"&&s.name.startsWith(`${t}.`)),n=(i.bodies[e]?.shapes??[]).flatMap(s=>s.kind==="capsule"?[s.from,s.to]:s.points??[s.center]);return{text:t,body:e,at:n.reduce((s,r)=>Math.hypot(...r)>Math.hypot(...s)?r:s,[0,0,0])}}).filter(({body:t})=>t>=0)}var $m={finger:3,load:2,contact:1,pin:.5,slack:0};function rh(i,t){let e=[],n=new Set;for(let s of[...i].sort((r,o)=>$m[o.kind]-$m[r.kind]||(o.weight??0)-(r.weight??0))){let r=t(s);e.some(o=>r[0]<o[2]&&o[0]<r[2]&&r[1]<o[3]&&o[1]<r[3])||(e.push(r),n.add(s))}return n}function oh(i,t,e=.004){let n=[];if(i.fingers.length)for(let{text:r,body:o,at:a}of Tb(i))n.push({kind:"finger",at:[0,0,0],text:r,shown:!0,source:{body:o,at:a}});else for(let r of i.pins)n.push({kind:"pin",at:[0,0,0],text:r.joint,shown:!0,source:r});for(let r of i.arrows)n.push({kind:r.kind,at:[0,0,0],text:"",shown:!1,source:r});for(let r of i.cords)n.push({kind:"slack",at:[0,0,0],text:"",shown:!1,source:r});function s(r){for(let o of n){let{source:a}=o;if(o.kind==="pin"||o.kind==="finger"){let l=i.bodies[a.body];l&&Ai(l.pose.now,a.at,o.at)}else if(o.kind==="slack"){let l=a.slack.now[0]||0,c=r(a);if(o.shown=l>.02,!o.shown)continue;if(o.text=i.fingers.length?`${Xe(l,2)} mm slack`:`${a.name}: ${Xe(l,2)} mm slack`,c.slackAt>=0)for(let h=0;h<3;++h)o.at[h]=c.slackPoint[h];else for(let h=0;h<3;++h)o.at[h]=a.points.now[h]}else{let l=a.force.now,c=a.point.now,h=Math.hypot(l[0],l[1],l[2]);if(o.shown=h>e*t.mostForce,!o.shown)continue;let d=t.mmPerNewton+3.5/h;for(let u=0;u<3;++u)o.at[u]=c[u]+l[u]*d;o.text=`${Xe(h,2)} N`,o.weight=h/t.mostForce}}}return{labels:n,update:s}}var ah={side:[0,0,1],iso:[.75,.55,1],palm:[0,-1,1e-4],hand:[.75,-1,-.85]};function Xm(i){let t=Math.hypot(...ah[i]),[e,n,s]=ah[i].map(l=>l/t),r=Math.hypot(e,s),o=[s/r,0,-e/r],a=[n*o[2],s*o[0]-e*o[2],-n*o[0]];return l=>{let[c,h,d]=l;return l[0]=o[0]*c+o[2]*d,l[1]=a[0]*c+a[1]*h+a[2]*d,l[2]=e*c+n*h+s*d,l}}var Ab=.3,Rb=.6;function Ym(){try{let i=document.createElement("canvas").getContext("webgl2");return i?.getExtension("WEBGL_lose_context")?.loseContext(),!!i}catch{return!1}}var _d=(i,t)=>new Nn().setFromUnitVectors(new J(0,1,0),new J(t[0]-i[0],t[1]-i[1],t[2]-i[2]).normalize());function qm(i,t){let e;switch(i.kind){case"capsule":{let{from:n,to:s,radius:r}=i,o=Math.hypot(s[0]-n[0],s[1]-n[1],s[2]-n[2]);e=new ma(r+t,o,12,40),o>0&&e.applyQuaternion(_d(n,s)),e.translate((n[0]+s[0])/2,(n[1]+s[1])/2,(n[2]+s[2])/2);break}case"sphere":e=new fo(i.radius+t,40,24),e.translate(...i.center);break;case"cylinder":e=new ji(i.radius+t,i.radius+t,i.length+2*t,64),e.applyQuaternion(_d([0,0,0],i.axis)),e.translate(...i.center);break;case"box":{e=new bs(...i.size.map(s=>s+2*t));let n=i.rotation??[1,0,0,0,1,0,0,0,1];e.applyMatrix4(new Ne().set(n[0],n[1],n[2],i.center[0],n[3],n[4],n[5],i.center[1],n[6],n[7],n[8],i.center[2],0,0,0,1));break}case"hull":{let n=[0,1,2].map(r=>i.points.reduce((o,a)=>o+a[r],0)/i.points.length),s=r=>{let o=i.points[r].map((l,c)=>l-n[c]),a=Math.hypot(...o)||1;return o.map((l,c)=>n[c]+l*(1+t/a))};e=new Zn,e.setAttribute("position",new qe(i.faces.flatMap(r=>r.flatMap(s)),3)),e.computeVertexNormals();break}default:return null}return e}function Zm(i,t,e,{labelText:n,from:s="side"}){let r=new jc({antialias:!0,alpha:!0});r.setPixelRatio(Math.min(devicePixelRatio,2));let o=r.domElement;o.setAttribute("aria-hidden","true");let a=S("div",{class:"labels","aria-hidden":"true"});i.append(o,a);let l=new oa,c=new pr(-1,1,1,-1,.1,4e3),h=new Sa(16777215,12895428,2.5),d=new wa(16777215,.9);d.position.set(-.4,1,.8),l.add(h,d);let u=(ft,At)=>{let D=new ya(At);return D.userData.variable=ft,D},f=(ft,At)=>{let D=new zs(At);return D.userData.variable=ft,D},p={phalanx:u("--phalanx"),pad:u("--pad"),palm:u("--palm"),object:u("--object",{transparent:!0,opacity:.5,depthWrite:!1}),outline:f("--outline",{side:Un}),edge:new uo,metal:u("--metal",{depthTest:!1,transparent:!0}),ring:f("--outline",{depthTest:!1,transparent:!0}),pulley:u("--pulley",{depthTest:!1,transparent:!0}),contact:f("--force",{depthTest:!1,transparent:!0}),load:f("--load",{depthTest:!1,transparent:!0})};p.edge.userData.variable="--object-edge";let x=t.bodies.map(ft=>{let At=new Ji;for(let D of ft.shapes??[]){let _t=qm(D,0);if(!_t)continue;let Ot=ft.role==="object"?"object":ft.role==="palm"?"palm":D.role==="contact"?"pad":"phalanx";At.add(new gn(_t,p[Ot])),Ot==="object"?At.add(new ua(new _a(_t,30),p.edge)):At.add(new gn(qm(D,Ab),p.outline))}return l.add(At),At}),g=(ft,At,D,_t,Ot)=>(At.position.set(...D),At.quaternion.copy(_d([0,0,0],_t)),At.renderOrder=Ot,(x[ft]??l).add(At),At),_=(ft,At,D)=>(g(ft.body,new gn(new ji(ft.radius+.25,ft.radius+.25,ft.length,32),p.ring),ft.at,ft.axis,D),g(ft.body,new gn(new ji(ft.radius,ft.radius,ft.length+.2,32),At),ft.at,ft.axis,D+1));for(let ft of t.pins)_(ft,p.metal,10);for(let ft of t.guides)_(ft,p.metal,10);let y=t.pulleys.map(ft=>{_(ft,p.pulley,6);let At=new Ji,D=new gn(new bs(ft.radius,ft.length+.4,.7),p.ring);return D.position.x=ft.radius/2,At.add(D),D.renderOrder=8,g(ft.body,At,ft.at,ft.axis,8),{mark:At,rest:At.quaternion.clone(),angle:ft.angle}}),E=new ji(1,1,1,12),M=new fo(1,12,8),P=t.cords.map(ft=>{let At=ih(ft),D=Math.max(At.data.length/8,1),_t=(St,ie,Vt)=>{let jt=new ha(St,ie,D);return jt.instanceColor=new fr(new Float32Array(3*D),3),jt.frustumCulled=!1,jt.renderOrder=Vt,l.add(jt),jt},Ot=new zs,kt=new zs({transparent:!0,opacity:.8,depthFunc:ro,depthWrite:!1});return{cord:ft,pieces:At,radius:Math.max(ft.radius||0,Rb)*(ft.kind==="rubber"?1.15:1),rods:[_t(E,kt,2),_t(E,Ot,3)],balls:[_t(M,kt,2),_t(M,Ot,3)]}}),w=ft=>P.find(At=>At.cord===ft).pieces,m=t.arrows.map(ft=>{let At=p[ft.kind],D=new gn(new ji(.55,.55,1,12),At),_t=new gn(new ga(1.7,4.2,20),At);return D.renderOrder=_t.renderOrder=20,l.add(D,_t),{arrow:ft,shaft:D,head:_t}}),{labels:b,update:U}=oh(t,e),C=b.map(ft=>{let At=ht(ft.text,{class:`tag tag-${ft.kind}`});return a.append(At),At}),L=new nh(c,o);L.enableDamping=!1,L.zoomSpeed=1.2,o.style.touchAction="pan-y",o.addEventListener("wheel",ft=>{!ft.ctrlKey&&!ft.metaKey&&ft.stopImmediatePropagation()},{capture:!0});let k=4*Math.hypot(...e.high.map((ft,At)=>ft-e.low[At])),z=new J(...e.centre),I=1,V=1,H=1,B=!1,Y=new J,X=ft=>Y.set(...ft).applyMatrix4(c.matrixWorldInverse).toArray();function K(){c.updateMatrixWorld();let{low:ft,high:At}=e.within(X),D=new J((ft[0]+At[0])/2,(ft[1]+At[1])/2,0).applyQuaternion(c.quaternion);c.position.add(D),L.target.add(D)}function $(){c.updateMatrixWorld();let{low:ft,high:At}=e.within(X),D=_t=>Math.max(1,Math.abs(ft[_t]),Math.abs(At[_t]));H=Math.max(2*D(0)/I,2*D(1)/V)*1.05,at()}function at(){c.left=-I*H/2,c.right=I*H/2,c.top=V*H/2,c.bottom=-V*H/2,c.updateProjectionMatrix(),Me()}function ot(ft){c.up.set(0,1,0);let[At,D,_t]=ah[ft];L.target.copy(z),c.position.set(At,D,_t).normalize().multiplyScalar(k).add(z),c.zoom=1,c.lookAt(z),K(),L.update(),$()}let Q=[];L.addEventListener("change",()=>{Me();for(let ft of Q)ft(c,L)});let yt=new J(0,1,0),Z=new J,it=new Ne,st=new Nn,pt=new J,Tt=new J,bt=new J(0,1,0),ee=new Nn,ne=[0,0,0],Zt=new ge,Se=new ge;function Kt(){t.bodies.forEach((ft,At)=>{let D=ft.pose.now;x[At].position.set(D[0],D[1],D[2]),x[At].quaternion.set(D[3],D[4],D[5],D[6])});for(let ft of y)ee.setFromAxisAngle(bt,(ft.angle.now[0]||0)*Math.PI/180),ft.mark.quaternion.copy(ft.rest).multiply(ee);for(let{cord:ft,pieces:At,radius:D,rods:_t,balls:Ot}of P){sh(ft,At);let kt=At.data;for(let St=0;St<At.count;++St){let ie=St*8;Z.set(kt[ie+3]-kt[ie],kt[ie+4]-kt[ie+1],kt[ie+5]-kt[ie+2]).normalize(),st.setFromUnitVectors(yt,Z),pt.set((kt[ie]+kt[ie+3])/2,(kt[ie+1]+kt[ie+4])/2,(kt[ie+2]+kt[ie+5])/2),Tt.set(D,kt[ie+7],D),it.compose(pt,st,Tt),kt[ie+6]<0?Zt.copy(Se):(Wo(kt[ie+6]/e.mostTension,ne),Zt.setRGB(ne[0],ne[1],ne[2],qn));for(let Vt of _t)Vt.setMatrixAt(St,it),Vt.setColorAt(St,Zt);pt.set(kt[ie+3],kt[ie+4],kt[ie+5]),Tt.set(D,D,D),it.compose(pt,st,Tt);for(let Vt of Ot)Vt.setMatrixAt(St,it),Vt.setColorAt(St,Zt)}for(let St of[_t[0],_t[1],Ot[0],Ot[1]])St.count=At.count,St.instanceMatrix.needsUpdate=!0,St.instanceColor.needsUpdate=!0}for(let{arrow:ft,shaft:At,head:D}of m){let _t=ft.force.now,Ot=ft.point.now,kt=Math.hypot(_t[0],_t[1],_t[2]),St=kt>.004*e.mostForce&&Ot[0]===Ot[0];if(At.visible=D.visible=St,!St)continue;let ie=kt*e.mmPerNewton,Vt=Math.min(4.2,.6*ie);Z.set(_t[0]/kt,_t[1]/kt,_t[2]/kt),At.quaternion.setFromUnitVectors(yt,Z),D.quaternion.copy(At.quaternion),At.position.set(Ot[0],Ot[1],Ot[2]).addScaledVector(Z,(ie-Vt)/2),At.scale.set(1,Math.max(ie-Vt,.001),1),D.position.set(Ot[0],Ot[1],Ot[2]).addScaledVector(Z,ie-Vt/2),D.scale.setScalar(Vt/4.2)}U(w),Me()}function Ae(){let ft=n()?b.filter(D=>D.shown):[];for(let D of ft)pt.set(D.at[0],D.at[1],D.at[2]).project(c),D.x=(pt.x+1)/2*I,D.y=(1-pt.y)/2*V;let At=t.crowded?rh(ft,({x:D,y:_t,text:Ot})=>[D-3.3*Ot.length,_t-6,D+3.3*Ot.length,_t+6]):new Set(ft);for(let D=0;D<b.length;++D){let _t=b[D],Ot=C[D],kt=At.has(_t);Ot.hidden===kt&&(Ot.hidden=!kt),kt&&(Cn(Ot,_t.text),Ot.style.transform=`translate(-50%, -50%) translate(${_t.x.toFixed(1)}px, ${_t.y.toFixed(1)}px)`)}}function pe(){B=!1,r.render(l,c),Ae()}function Me(){B||(B=!0,requestAnimationFrame(pe))}function _e(){for(let ft of Object.values(p))ft.color.set(sr(ft.userData.variable));Se.set(sr("--slack")),Kt()}return xi(_e),new ResizeObserver(()=>{let ft=i.getBoundingClientRect();if(ft.width<1||ft.height<1)return;let At=c.zoom;I=ft.width,V=ft.height,r.setSize(I,V,!1),c.zoom=1,$(),c.zoom=At,c.updateProjectionMatrix()}).observe(i),_e(),ot(s),{kind:"3d",update:Kt,look:ot,invalidate:Me,zoomBy(ft){c.zoom=Math.min(Math.max(c.zoom*ft,.3),20),c.updateProjectionMatrix(),L.update();for(let At of Q)At(c,L);Me()},pixelsPerMm:()=>c.zoom/H,onCamera(ft){Q.push(ft)},follow(ft,At){c.position.equals(ft.position)&&c.zoom===ft.zoom&&L.target.equals(At.target)||(c.position.copy(ft.position),c.quaternion.copy(ft.quaternion),L.target.copy(At.target),c.zoom=ft.zoom,c.updateProjectionMatrix(),L.update(),Me())}}}function Cb(i){let t=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),e=n=>{let s=[];for(let r of n){for(;s.length>1;){let[o,a]=[s[s.length-2],s[s.length-1]];if((a[0]-o[0])*(r[1]-o[1])-(a[1]-o[1])*(r[0]-o[0])>0)break;s.pop()}s.push(r)}return s.pop(),s};return[...e(t),...e(t.reverse())]}var ve=i=>i.toFixed(2),Pb=i=>i.map((t,e)=>`${e?"L":"M"}${ve(t[0])} ${ve(-t[1])}`).join("")+"Z";function xd(i,t){let e=i[0],n=-i[1];return`M${ve(e-t)} ${ve(n)}a${ve(t)} ${ve(t)} 0 1 0 ${ve(2*t)} 0a${ve(t)} ${ve(t)} 0 1 0 ${ve(-2*t)} 0Z`}function Ib(i,t,e){let n=t[0]-i[0],s=t[1]-i[1],r=Math.hypot(n,s);if(r<1e-6)return xd(i,e);let o=n/r*e,a=s/r*e,l=(h,d,u)=>`${ve(h[0]+d)} ${ve(-h[1]-u)}`,c=(h,d,u)=>`A${ve(e)} ${ve(e)} 0 0 1 ${l(h,d,u)}`;return`M${l(i,-a,o)}L${l(t,-a,o)}${c(t,o,a)}${c(t,a,-o)}L${l(i,a,-o)}${c(i,-o,-a)}${c(i,-a,o)}Z`}function Qm(i,t,e){let n=r=>e(Ai(t,r,[0,0,0]));if(i.kind==="capsule")return Ib(n(i.from),n(i.to),i.radius);if(i.kind==="sphere")return xd(n(i.center),i.radius);let s=Xh(i);return s?Pb(Cb(s.map(n))):""}function Jm({at:i,axis:t,radius:e,length:n},s,r){let o=r($h(s,t,[0,0,0]));return Math.hypot(o[0],o[1])<.001?xd(r(Ai(s,i,[0,0,0])),e):Qm({kind:"cylinder",center:i,axis:t,radius:e,length:n},s,r)}var Km={palm:0,object:1,phalanx:2};function Lb(i,t){let e=0,n=0;for(let s of i.shapes??[])for(let r of s.kind==="capsule"?[s.from,s.to]:s.points??[s.center])e+=t(Ai(i.pose.now,r,[0,0,0]))[2],++n;return n?e/n:0}var jm=i=>$e(i,"stroke",i.share<0?"currentColor":or(i.share));function yd(i,t,e,{textSize:n=3.2,labelText:s=()=>!0,live:r=!0,from:o="side"}={}){let l=t.fingers.length>0,c,h,d,u,f,p,x=ut("svg",{class:`side-view ${l?"hand":""}`,"aria-hidden":"true"});i.append(x);function g(H){c=Xm(H);let{low:B,high:Y}=e.within(c);h=B[0]-4,d=-Y[1]-4,u=Y[0]-B[0]+8,f=Y[1]-B[1]+8,p=l?r?.75*n*Math.max(u,1.64*f)/150:n*u/150:n,$e(x,"viewBox",`${ve(h)} ${ve(d)} ${ve(u)} ${ve(f)}`),$e(x,"font-size",ve(p))}g(o);let _=[],y=ut("g");x.append(y);let E=t.bodies.map(H=>H).sort((H,B)=>(Km[H.role]??0)-(Km[B.role]??0));for(let H of["contact","solid"])for(let B of E)for(let Y of B.shapes??[]){if((B.role==="phalanx"?Y.role??"solid":"contact")!==H)continue;let X=ut("path",{class:`shape ${B.role} ${B.role==="phalanx"?H:""}`});y.append(X),_.push({path:X,shape:Y,body:B,pass:H})}function M(){let H=new Map(t.bodies.map(Y=>[Y,Y.role==="palm"?-1/0:Lb(Y,c)])),B=[..._].sort((Y,X)=>H.get(Y.body)-H.get(X.body)||(Y.pass<X.pass?-1:Y.pass>X.pass?1:0));B.some(({path:Y},X)=>y.children[X]!==Y)&&y.append(...B.map(({path:Y})=>Y))}let P=t.pulleys.map(H=>{let B=ut("path",{class:"pulley"}),Y=ut("line",{class:"pulley-mark"});return x.append(B,Y),{pulley:H,disc:B,mark:Y}}),w=t.cords.map(H=>{let B=ih(H),Y=ut("g",{class:`cord ${H.kind}`,"stroke-width":ve(Math.max(2*(H.radius||0),1.1))});return x.append(Y),{cord:H,pieces:B,group:Y,lines:[]}}),m=H=>w.find(B=>B.cord===H).pieces,b=[...t.pins,...t.guides].map(H=>{let B=ut("path",{class:"pin"});return x.append(B),{pin:H,disc:B}}),U=t.arrows.map(H=>{let B=ut("path",{class:`arrow ${H.kind}`});return x.append(B),{arrow:H,path:B}}),{labels:C,update:L}=oh(t,e,r?void 0:.1),k=C.map(H=>{let B=ut("text",{class:`tag-${H.kind}`});return x.append(B),B}),z=[0,0,0],I=[0,0,0];function V(){for(let{path:Y,shape:X,body:K}of _)$e(Y,"d",Qm(X,K.pose.now,c));l&&M();for(let{pulley:Y,disc:X,mark:K}of P){let $=t.bodies[Y.body]?.pose.now;if(!$)continue;$e(X,"d",Jm(Y,$,c)),c(Ai($,Y.at,z)),c($h($,Y.axis,I)),$e(K,"visibility",Math.abs(I[2])>.99?"visible":"hidden");let at=(Y.angle.now[0]||0)*Math.PI/180*(I[2]<0?-1:1);$e(K,"x1",ve(z[0])),$e(K,"y1",ve(-z[1])),$e(K,"x2",ve(z[0]+Y.radius*Math.cos(at))),$e(K,"y2",ve(-z[1]-Y.radius*Math.sin(at)))}for(let Y of w){sh(Y.cord,Y.pieces);let X=Y.pieces.data;for(let K=0;K<Y.pieces.count;++K){let $=Y.lines[K];$||($=ut("line"),Y.group.append($),Y.lines.push($));let at=K*8,ot=c([X[at],X[at+1],X[at+2]]),Q=c([X[at+3],X[at+4],X[at+5]]);$e($,"x1",ve(ot[0])),$e($,"y1",ve(-ot[1])),$e($,"x2",ve(Q[0])),$e($,"y2",ve(-Q[1]));let yt=X[at+6]<0;$e($,"class",yt?"slack":"taut"),$.share=yt?-1:X[at+6]/e.mostTension,jm($),$e($,"visibility","visible")}for(let K=Y.pieces.count;K<Y.lines.length;++K)$e(Y.lines[K],"visibility","hidden")}for(let{pin:Y,disc:X}of b){let K=t.bodies[Y.body]?.pose.now;K&&$e(X,"d",Jm(Y,K,c))}for(let{arrow:Y,path:X}of U){let K=c([...Y.force.now]),$=c([...Y.point.now]),at=Math.hypot(K[0],K[1]);if(!(at>.004*e.mostForce)||$[0]!==$[0]){$e(X,"d","");continue}let ot=at*e.mmPerNewton,Q=Math.min(4,.6*ot),yt=K[0]/at,Z=K[1]/at,it=$[0]+yt*ot,st=$[1]+Z*ot,pt=it-yt*Q,Tt=st-Z*Q,bt=.4*Q;$e(X,"d",`M${ve($[0])} ${ve(-$[1])}L${ve(pt)} ${ve(-Tt)}M${ve(it)} ${ve(-st)}L${ve(pt-Z*bt)} ${ve(-Tt-yt*bt)}L${ve(pt+Z*bt)} ${ve(-Tt+yt*bt)}Z`)}L(m);let H=s()?C.filter(Y=>Y.shown):[];for(let Y of H){let X=c([...Y.at]);Y.half=(l?.33:.3)*p*Y.text.length,Y.x=Math.min(Math.max(X[0],h+Y.half),h+u-Y.half),Y.y=-X[1]+.35*p+(Y.kind==="pin"?-2.2-.2*p:Y.kind==="slack"?p:0)}let B=t.crowded?rh(H,Y=>[Y.x-Y.half,Y.y-p,Y.x+Y.half,Y.y]):new Set(H);C.forEach((Y,X)=>{let K=B.has(Y);$e(k[X],"visibility",K?"visible":"hidden"),K&&(Cn(k[X],Y.text),$e(k[X],"x",ve(Y.x)),$e(k[X],"y",ve(Y.y)))})}return xi(r?V:()=>{for(let H of w)H.lines.forEach(jm)}),{kind:"2d",root:x,update:V,look(H){g(H),V()},invalidate(){},zoomBy(){},onCamera(){},follow(){},pixelsPerMm:()=>{let H=x.getBoundingClientRect();return Math.min(H.width/u,H.height/f)}}}var Db=4,tg=i=>i.kind==="fault";function eg(i,t,{onKey:e}){let{records:n}=i,s=n.length>1,{duration:r}=t.state,o=Nb(n,r),a=y=>r>0?y/r:0,l=S("div",{class:"lanes"}),c=S("div",{class:"event-marks"}),h=S("input",{type:"range",min:0,max:r,step:"any",value:0,class:"scrub","aria-label":"time of the run",on:{input:()=>{t.seek(h.valueAsNumber)},keydown:e}}),d=S("div",{class:"time-line"},l,S("div",{class:"track"},c,h)),u=y=>`${s?`${y.letters}: `:""}${y.text}`,f=y=>()=>{t.seek(y.time)},p=o.filter(y=>y.weight>=3).sort((y,E)=>y.time-E.time),x=p.map(y=>S("button",{type:"button",class:`event ${tg(y)?"fault":""}`,"data-jump":y.time,title:`${u(y)}, ${Dn(y.time,r)}`,on:{click:f(y)}},ht(u(y))));l.append(...x);for(let y of o.filter(E=>E.weight>=2))c.append(S("span",{class:`event-mark weight-${y.weight} ${tg(y)?"fault":""}`,style:{left:`${100*a(y.time)}%`}}));function g(){let y=l.clientWidth;if(!y)return;let E=y<500?3:Db,M=new Array(E).fill(1/0),P=[];for(let m=x.length-1;m>=0;--m){let b=x[m];b.hidden=!1;let U=b.offsetWidth,C=a(p[m].time)*y,L=C+U>y,k=L?Math.max(C-U,0):C,z=M.findIndex((I,V)=>k+U+4<=I&&P.every(H=>H.lane<=V||H.x<k||H.x>k+U));b.hidden=z<0,!(z<0)&&(M[z]=k,P.push({lane:z,x:C}),b.classList.toggle("flip",L),b.style.left=`${k}px`,b.style.bottom=`${z*22}px`,b.style.setProperty("--leader",`${z*22+6}px`))}let w=M.filter(m=>m<1/0).length;l.style.height=`${w*22}px`}new ResizeObserver(g).observe(l);let _=p.map(y=>y.time);return t.listen(({time:y})=>{h.value=y;let E=p.findLast(M=>M.time<=y+1e-9);h.setAttribute("aria-valuetext",`${Dn(y,r)}${E?`, after ${u(E)}`:""}`)}),{box:d,slider:h,labelled:p,text:u,next:()=>_.find(y=>y>t.state.time+1e-6),previous:()=>_.findLast(y=>y<t.state.time-1e-6)}}function Nb(i,t){let e=[];for(let n of i)for(let s of n.events??[]){if(s.weight<2)continue;let r=e.find(o=>o.text===s.text&&!o.letters.includes(n.label)&&Math.abs(o.time-s.time)<.005*t);r?(r.letters+=` ${n.label}`,r.weight=Math.max(r.weight,s.weight)):e.push({...s,letters:n.label})}return e}function ng(i,t){let{records:e}=i,{duration:n}=t.state;return e.map(s=>{let r=[...s.events??[]].sort((l,c)=>l.time-c.time);if(!r.length)return null;let o=400,a=r.length>o?r.filter(l=>l.weight>1).slice(0,o):r;return S("details",{class:"events"},S("summary",{},e.length>1?`Events of ${s.label}`:"All events",` (${r.length}${a.length<r.length?`, the ${a.length} main ones shown`:""})`),S("ul",{},a.map(l=>S("li",{},S("button",{type:"button",class:"jump","data-jump":l.time,on:{click:()=>{t.seek(l.time)}}},Dn(l.time,n))," ",ht(l.text)))))})}function ig(i,t){return e=>{if(e.defaultPrevented||e.altKey||e.ctrlKey||e.metaKey)return;let n=e.target.tagName,s=n==="INPUT"&&e.target.type==="range";if(n==="SELECT"||n==="SUMMARY"||n==="INPUT"&&!s||n==="BUTTON"&&(e.key===" "||e.key==="Enter"))return;let r=o=>{o!==void 0&&i.seek(o)};switch(e.key){case" ":i.toggle();break;case"ArrowLeft":i.step(e.shiftKey?-10:-1);break;case"ArrowRight":i.step(e.shiftKey?10:1);break;case"PageUp":case",":r(t().previous()??0);break;case"PageDown":case".":r(t().next()??i.state.duration);break;case"Home":r(0);break;case"End":r(i.state.duration);break;default:return}e.preventDefault()}}var sg=[.02,.05,.1,.25,.5,1,2,5,10,60],Fb=i=>sg.reduce((t,e)=>Math.abs(Math.log(i/e/8))<Math.abs(Math.log(i/t/8))?e:t,1),Ub=i=>i.map(t=>t.shown_as??"finger").reduce((t,e)=>t===e?t:"fingers");function Ob(i,t,e,n){let s=S("span",{class:"tension-bar"});xi(()=>{s.style.background=ar()}),s.style.background=ar();let r=o=>ut("svg",{class:"arrow-sample",viewBox:"0 -5 34 10",width:34,height:10},ut("path",{class:`arrow ${o}`,d:"M0 0H26M34 0L25 -4L25 4Z"}));return S("div",{class:"legend"},S("div",{class:"legend-tension"},S("span",{class:"cell-title"},"cord tension"),s,S("span",{class:"tension-ends"},S("span",{},"0"),S("span",{},Xe(i.mostTension/2,3)),S("span",{},`${Xe(i.mostTension,3)} N`))),S("ul",{},t&&S("li",{},ut("svg",{class:"slack-sample",viewBox:"0 0 34 10",width:34,height:10},ut("path",{d:"M0 2Q17 14 34 2"})),"slack cord: sag shows the loose length"),i.mostForce>0&&S("li",{},r("contact"),`force on the ${n}, ${Xe(i.mmPerNewton,1)}\xA0mm\xA0per\xA0N`),e&&S("li",{},r("load"),"load from outside, same scale"),S("li",{},S("span",{class:"swatch pad"}),"pad that touches"),S("li",{},S("span",{class:"swatch pulley"}),"pulley, mark turns with it"),S("li",{class:"muted"},"All to scale except thin cords, drawn at least 1.2 mm thick")))}function rg(i,t,e,n,s){let{records:r}=t,o=r.length>1,{duration:a}=s.state,l=!0,c=Ym(),h=Ub(r),d=h==="fingers"?"are":"is",u=h==="hand"?"hand":"side",f=[],p=S("div",{class:`pictures count-${Math.min(r.length,3)}`});r.forEach(($,at)=>{let ot=S("div",{class:"picture-holder"}),Q=S("div",{class:"scale-bar","aria-hidden":"true"},S("span",{}),S("b",{})),yt=S("figure",{class:"picture",tabindex:0,role:"group","data-view":c?"3d":"2d","aria-label":`${o?`${$.label}: `:""}the ${h} in motion; space plays, arrow keys step, Home and End go to the ends`},ot,Q,o&&S("figcaption",{class:"picture-name"},S("span",{class:"record-letter"},$.label)," ",ht($.name)),S("span",{class:"picture-state","aria-hidden":"true"}));p.append(yt);let Z={labelText:()=>l,from:u},it=null;if(c)try{it=Zm(ot,e[at],n,Z)}catch{ot.textContent=""}it??=yd(ot,e[at],n,Z),yt.dataset.view=it.kind,f.push({view:it,motion:e[at],picture:yt,scale:Q,end:e[at].times.at(-1)??0})});for(let{view:$}of f)$.onCamera((at,ot)=>{for(let Q of f)Q.view!==$&&Q.view.follow(at,ot);x()});function x(){for(let{view:$,scale:at}of f){let ot=$.pixelsPerMm();if(!(ot>0)||!Number.isFinite(ot))continue;let Q=nr(110/ot);at.firstChild.style.width=`${(Q*ot).toFixed(1)}px`,Cn(at.lastChild,`${Q} mm`)}}let g=($,at,ot,Q,yt)=>S("button",{type:"button",id:$,title:ot,"aria-label":ot,on:{click:Q},...yt},at),_=$=>ut("svg",{viewBox:"0 0 16 16",width:16,height:16,"aria-hidden":"true"},ut("path",{d:$})),y="M4 2L14 8L4 14Z",E="M3 2H7V14H3ZM9 2H13V14H9Z",M=_(y),P=S("span",{},"Play"),w=S("button",{type:"button",id:"play",class:"play",on:{click:()=>s.toggle()}},M,P),m=ig(s,()=>b),b=eg(t,s,{onKey:m}),U=$=>{$!==void 0&&s.seek($)},C=S("select",{id:"speed","aria-label":"speed of the playback",on:{change:()=>s.setSpeed(Number(C.value))}},sg.filter($=>a/$>.7&&a/$<600||$>=.1&&$<=2).map($=>S("option",{value:$},$===1?"real time":$<1?`${$}\xD7 slow`:`${$}\xD7 fast`)));s.setSpeed(Fb(a)),C.value=String(s.state.speed);let L=S("input",{type:"checkbox",id:"loop",on:{change:()=>s.setLoop(L.checked)}}),k=S("output",{class:"clock","aria-live":"off"}),z=S("input",{type:"checkbox",id:"names",checked:!0,on:{change:()=>{l=z.checked,B()}}}),I=[["side","Side"],[h==="hand"?"hand":"iso","Oblique"],["palm","Palm"]].map(([$,at])=>S("button",{type:"button",class:"look","data-look":$,"aria-pressed":String($===u),on:{click:()=>{f[0].view.look($);for(let{view:ot}of f.slice(1))ot.look($);for(let ot of I)ot.setAttribute("aria-pressed",String(ot.dataset.look===$));x()}}},at)),V=c?S("div",{class:"view-tools controls",role:"group","aria-label":"view"},I,g("closer","+","closer",()=>{f[0].view.zoomBy(1.25)}),g("farther","\u2212","farther",()=>{f[0].view.zoomBy(.8)}),S("label",{},z," names"),S("span",{class:"hint"},"drag to turn, Ctrl + wheel to zoom")):S("div",{class:"view-tools controls",role:"group","aria-label":"view"},h==="hand"&&I,S("label",{},z," names"),S("span",{class:"hint no-webgl"},h==="hand"?"This browser has no WebGL, so the hand is drawn as flat outlines.":`This browser has no WebGL, so the ${h} ${d} drawn from the side only.`)),H=S("div",{class:"transport controls"},S("div",{class:"transport-buttons"},w,g("to-previous",_("M3 2H5V14H3ZM14 2L6 8L14 14Z"),"to the event before",()=>U(b.previous()??0)),g("step-back",_("M12 2L4 8L12 14Z"),"one row of the record back",()=>s.step(-1)),g("step-on",_("M4 2L12 8L4 14Z"),"one row of the record on",()=>s.step(1)),g("to-next",_("M2 2L10 8L2 14ZM11 2H13V14H11Z"),"to the next event",()=>U(b.next()??a)),k,S("label",{class:"speed"},C),S("label",{},L," repeat")),b.box);function B(){let{time:$}=s.state;for(let{view:at,motion:ot,picture:Q,end:yt}of f)ot.at($),at.update(),Cn(Q.querySelector(".picture-state"),$>yt+1e-9?`ended at ${Dn(yt,a)}`:"")}s.listen($=>{B();let at=b.labelled.findLast(Q=>Q.time<=$.time+1e-9);Cn(k,Dn($.time,a)),k.title=at?`after: ${b.text(at)}`:"",Cn(P,$.playing?"Pause":"Play"),M.firstChild.setAttribute("d",$.playing?E:y);let ot=document.getElementById("review");ot.dataset.time=$.time.toFixed(6),ot.dataset.playing=String($.playing)}),new ResizeObserver(x).observe(p);let Y=r.some($=>($.scene?.cords??[]).length>0),X=e.some($=>$.arrows.some(at=>at.kind==="load")),K=i.section("motion",`The ${h} in motion`,V,S("div",{class:`stage-body ${o?"several":""}`},p,Ob(n,Y,X,h)),Bb(r,e,n,s),ng(t,s));return K.addEventListener("keydown",m),requestAnimationFrame(x),{section:K,controls:H,onKey:m}}function Bb(i,t,e,n){return i.map((s,r)=>{let o=s.instants??[];if(!o.length)return null;let a=S("div",{class:"instants"},o.map(l=>{let c=S("button",{type:"button",class:"instant","data-jump":l.time,on:{click:()=>{n.seek(l.time)}}}),h=S("span",{class:"instant-picture"});return c.append(h,S("span",{class:"instant-text"},S("b",{},Dn(l.time,n.state.duration))," ",ht(l.what))),t[r].at(l.time),yd(h,t[r],e,{textSize:7.5,live:!1,from:t[r].fingers.length?"hand":"side"}).update(),c}));return t[r].at(n.state.time),[S("h4",{class:"sub"},i.length>1?`Key instants of ${s.label}`:"Key instants"),a]})}var kb="uplot",zb="u-hz",Vb="u-vt",Hb="u-title",Gb="u-wrap",Wb="u-under",$b="u-over",Xb="u-axis",Sr="u-off",qb="u-select",Yb="u-cursor-x",Zb="u-cursor-y",Jb="u-cursor-pt",Kb="u-legend",jb="u-live",Qb="u-inline",tw="u-series",ew="u-marker",og="u-label",nw="u-value",ka="width",za="height";var ag="bottom",bo="left",vd="right",Od="#000",lg=Od+"0",Md="mousemove",cg="mousedown",Sd="mouseup",hg="mouseenter",ug="mouseleave",dg="dblclick",iw="resize",sw="scroll",fg="change",fh="dppxchange",Bd="--",Po=typeof window<"u",Ad=Po?document:null,Eo=Po?window:null,rw=Po?navigator:null,Ue,ch;function Rd(){let i=devicePixelRatio;Ue!=i&&(Ue=i,ch&&Pd(fg,ch,Rd),ch=matchMedia(`(min-resolution: ${Ue-.001}dppx) and (max-resolution: ${Ue+.001}dppx)`),br(fg,ch,Rd),Eo.dispatchEvent(new CustomEvent(fh)))}function fi(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Cd(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function Qe(i,t,e){i.style[t]=e+"px"}function Oi(i,t,e,n){let s=Ad.createElement(i);return t!=null&&fi(s,t),e?.insertBefore(s,n),s}function Si(i,t){return Oi("div",i,t)}var pg=new WeakMap;function ss(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=pg.get(i);r!=o&&(i.style.transform=r,pg.set(i,r),t<0||e<0||t>n||e>s?fi(i,Sr):Cd(i,Sr))}var mg=new WeakMap;function gg(i,t,e){let n=t+e,s=mg.get(i);n!=s&&(mg.set(i,n),i.style.background=t,i.style.borderColor=e)}var _g=new WeakMap;function xg(i,t,e,n){let s=t+""+e,r=_g.get(i);s!=r&&(_g.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var kd={passive:!0},ow={...kd,capture:!0};function br(i,t,e,n){t.addEventListener(i,e,n?ow:kd)}function Pd(i,t,e,n){t.removeEventListener(i,e,kd)}Po&&Rd();function Bi(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:pi((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function Xg(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var qg=i=>i!=null,Yg=i=>i!=null&&i>0,gh=Xg(qg),aw=Xg(Yg);function lw(i,t,e,n=0,s=!1){let r=s?aw:gh,o=s?Yg:qg;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let h=i[c];o(h)&&(h<a?a=h:h>l&&(l=h))}return[a??Ge,l??-Ge]}function _h(i,t,e,n){let s=Mg(i),r=Mg(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?As:Zg,a=s==1?pi:bi,l=r==1?bi:pi,c=a(o(bn(i))),h=l(o(bn(t))),d=To(e,c),u=To(e,h);return e==10&&(c<0&&(d=We(d,-c)),h<0&&(u=We(u,-h))),n||e==2?(i=d*s,t=u*r):(i=Qg(i,d),t=xh(t,u)),[i,t]}function zd(i,t,e,n){let s=_h(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Vd=.1,yg={mode:3,pad:Vd},Ha={pad:0,soft:null,mode:0},cw={min:Ha,max:Ha};function ph(i,t,e,n){return yh(e)?vg(i,t,e):(Ha.pad=e,Ha.soft=n?0:null,Ha.mode=n?3:0,vg(i,t,cw))}function Le(i,t){return i??t}function hw(i,t,e){for(t=Le(t,0),e=Le(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function vg(i,t,e){let n=e.min,s=e.max,r=Le(n.pad,0),o=Le(s.pad,0),a=Le(n.hard,-Ge),l=Le(s.hard,Ge),c=Le(n.soft,Ge),h=Le(s.soft,-Ge),d=Le(n.mode,0),u=Le(s.mode,0),f=t-i,p=As(f),x=Jn(bn(i),bn(t)),g=As(x),_=bn(g-p);(f<1e-24||_>10)&&(f=0,(i==0||t==0)&&(f=1e-24,d==2&&c!=Ge&&(r=0),u==2&&h!=-Ge&&(o=0)));let y=f||x||1e3,E=As(y),M=To(10,pi(E)),P=y*(f==0?i==0?.1:1:r),w=We(Qg(i-P,M/10),24),m=i>=c&&(d==1||d==3&&w<=c||d==2&&w>=c)?c:Ge,b=Jn(a,w<m&&i>=m?m:ki(m,w)),U=y*(f==0?t==0?.1:1:o),C=We(xh(t+U,M/10),24),L=t<=h&&(u==1||u==3&&C>=h||u==2&&C<=h)?h:-Ge,k=ki(l,C>L&&t<=L?L:Jn(L,C));return b==k&&b==0&&(k=100),[b,k]}var uw=new Intl.NumberFormat(Po?rw.language:"en-US"),Hd=i=>uw.format(i),mi=Math,dh=mi.PI,bn=mi.abs,pi=mi.floor,Sn=mi.round,bi=mi.ceil,ki=mi.min,Jn=mi.max,To=mi.pow,Mg=mi.sign,As=mi.log10,Zg=mi.log2,dw=(i,t=1)=>mi.sinh(i)*t,bd=(i,t=1)=>mi.asinh(i/t),Ge=1/0;function Sg(i){return(As((i^i>>31)-(i>>31))|0)+1}function Id(i,t,e){return ki(Jn(i,t),e)}function Jg(i){return typeof i=="function"}function Pe(i){return Jg(i)?i:()=>i}var fw=()=>{},Kg=i=>i,jg=(i,t)=>t,pw=i=>null,bg=i=>!0,wg=(i,t)=>i==t,mw=/\.\d*?(?=9{6,}|0{6,})/gm,wr=i=>{if(e0(i)||Js.has(i))return i;let t=`${i}`,e=t.match(mw);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${wr(s)}e${r}`}return We(i,n)};function vr(i,t){return wr(We(wr(i/t))*t)}function xh(i,t){return wr(bi(wr(i/t))*t)}function Qg(i,t){return wr(pi(wr(i/t))*t)}function We(i,t=0){if(e0(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return Sn(n)/e}var Js=new Map;function t0(i){return((""+i).split(".")[1]||"").length}function Wa(i,t,e,n){let s=[],r=n.map(t0);for(let o=t;o<e;o++){let a=bn(o),l=We(To(i,o),a);for(let c=0;c<n.length;c++){let h=i==10?+`${n[c]}e${o}`:n[c]*l,d=(o>=0?0:a)+(o>=r[c]?0:r[c]),u=i==10?h:We(h,d);s.push(u),Js.set(u,d)}}return s}var Ga={},Gd=[],Ao=[null,null],Zs=Array.isArray,e0=Number.isInteger,gw=i=>i===void 0;function Eg(i){return typeof i=="string"}function yh(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function _w(i){return i!=null&&typeof i=="object"}var xw=Object.getPrototypeOf(Uint8Array),n0="__proto__";function Ro(i,t=yh){let e;if(Zs(i)){let n=i.find(s=>s!=null);if(Zs(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Ro(i[s],t)}else e=i.slice()}else if(i instanceof xw)e=i.slice();else if(t(i)){e={};for(let n in i)n!=n0&&(e[n]=Ro(i[n],t))}else e=i;return e}function _n(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=n0&&(yh(i[s])?_n(i[s],Ro(n[s])):i[s]=Ro(n[s]))}return i}var yw=0,vw=1,Mw=2;function Sw(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function bw(i,t){if(Tw(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return Aw(o[0])||(o=Ew(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let h=0;h<c;h++)e.add(l[h])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let h=a[c],d=Array(s).fill(void 0),u=t?t[o][c]:vw,f=[];for(let p=0;p<h.length;p++){let x=h[p],g=r.get(l[p]);x===null?u!=yw&&(d[g]=x,u==Mw&&f.push(g)):d[g]=x}Sw(d,f,s),n.push(d)}}return n}var ww=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function Ew(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function Tw(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function Aw(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Jn(1,pi((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var i0=["January","February","March","April","May","June","July","August","September","October","November","December"],s0=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function r0(i){return i.slice(0,3)}var Rw=s0.map(r0),Cw=i0.map(r0),Pw={MMMM:i0,MMM:Cw,WWWW:s0,WWW:Rw};function Ba(i){return(i<10?"0":"")+i}function Iw(i){return(i<10?"00":i<100?"0":"")+i}var Lw={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Ba(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Ba(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Ba(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Ba(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Ba(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>Iw(i.getMilliseconds())};function Wd(i,t){t=t||Pw;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?Lw[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var Dw=new Intl.DateTimeFormat().resolvedOptions().timeZone;function Nw(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==Dw?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var o0=i=>i%1==0,mh=[1,2,2.5,5],Fw=Wa(10,-32,0,mh),a0=Wa(10,0,32,mh),Uw=a0.filter(o0),Mr=Fw.concat(a0),$d=`
`,l0="{YYYY}",Tg=$d+l0,c0="{M}/{D}",Va=$d+c0,hh=Va+"/{YY}",h0="{aa}",Ow="{h}:{mm}",wo=Ow+h0,Ag=$d+wo,Rg=":{ss}",Be=null;function u0(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Wa(10,0,3,mh).filter(o0):Wa(10,-3,0,mh)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,l0,Be,Be,Be,Be,Be,Be,1],[s*28,"{MMM}",Tg,Be,Be,Be,Be,Be,1],[s,c0,Tg,Be,Be,Be,Be,Be,1],[n,"{h}"+h0,hh,Be,Va,Be,Be,Be,1],[e,wo,hh,Be,Va,Be,Be,Be,1],[t,Rg,hh+" "+wo,Be,Va+" "+wo,Be,Ag,Be,1],[i,Rg+".{fff}",hh+" "+wo,Be,Va+" "+wo,Be,Ag,Be,1]];function h(d){return(u,f,p,x,g,_)=>{let y=[],E=g>=o,M=g>=r&&g<o,P=d(p),w=We(P*i,3),m=wd(P.getFullYear(),E?0:P.getMonth(),M||E?1:P.getDate()),b=We(m*i,3);if(M||E){let U=M?g/r:0,C=E?g/o:0,L=w==b?w:We(wd(m.getFullYear()+C,m.getMonth()+U,1)*i,3),k=new Date(Sn(L/i)),z=k.getFullYear(),I=k.getMonth();for(let V=0;L<=x;V++){let H=wd(z+C*V,I+U*V,1),B=H-d(We(H*i,3));L=We((+H+B)*i,3),L<=x&&y.push(L)}}else{let U=g>=s?s:g,C=pi(p)-pi(w),L=b+C+xh(w-b,U);y.push(L);let k=d(L),z=k.getHours()+k.getMinutes()/e+k.getSeconds()/n,I=g/n,V=u.axes[f]._space,H=_/V;for(;L=We(L+g,i==1?0:3),!(L>x);)if(I>1){let B=pi(We(z+I,6))%24,K=d(L).getHours()-B;K>1&&(K=-1),L-=K*n,z=(z+I)%24;let $=y[y.length-1];We((L-$)/g,3)*H>=.7&&y.push(L)}else y.push(L)}return y}}return[l,c,h]}var[Bw,kw,zw]=u0(1),[Vw,Hw,Gw]=u0(.001);Wa(2,-53,53,[1]);function Cg(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function Pg(i,t){return(e,n,s,r,o)=>{let a=t.find(p=>o>=p[0])||t[t.length-1],l,c,h,d,u,f;return n.map(p=>{let x=i(p),g=x.getFullYear(),_=x.getMonth(),y=x.getDate(),E=x.getHours(),M=x.getMinutes(),P=x.getSeconds(),w=g!=l&&a[2]||_!=c&&a[3]||y!=h&&a[4]||E!=d&&a[5]||M!=u&&a[6]||P!=f&&a[7]||a[1];return l=g,c=_,h=y,d=E,u=M,f=P,w(x)})}}function Ww(i,t){let e=Wd(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function wd(i,t,e){return new Date(i,t,e)}function Ig(i,t){return t(i)}var $w="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Lg(i,t){return(e,n,s,r)=>r==null?Bd:t(i(n))}function Xw(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function qw(i,t){return i.series[t].fill(i,t)}var Yw={show:!0,live:!0,isolate:!1,mount:fw,markers:{show:!0,width:2,stroke:Xw,fill:qw,dash:"solid"},idx:null,idxs:null,values:[]};function Zw(i,t){let e=i.cursor.points,n=Si(),s=e.size(i,t);Qe(n,ka,s),Qe(n,za,s);let r=s/-2;Qe(n,"marginLeft",r),Qe(n,"marginTop",r);let o=e.width(i,t,s);return o&&Qe(n,"borderWidth",o),n}function Jw(i,t){let e=i.series[t].points;return e._fill||e._stroke}function Kw(i,t){let e=i.series[t].points;return e._stroke||e._fill}function jw(i,t){return i.series[t].points.size}var Ed=[0,0];function Qw(i,t,e){return Ed[0]=t,Ed[1]=e,Ed}function uh(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Td(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var t1={show:!0,x:!0,y:!0,lock:!1,move:Qw,points:{one:!1,show:Zw,size:jw,width:0,stroke:Kw,fill:Jw},bind:{mousedown:uh,mouseup:uh,click:uh,dblclick:uh,mousemove:Td,mouseleave:Td,mouseenter:Td},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},d0={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},Xd=_n({},d0,{filter:jg}),f0=_n({},Xd,{size:10}),p0=_n({},d0,{show:!1}),qd='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',m0="bold "+qd,g0=1.5,Dg={show:!0,scale:"x",stroke:Od,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:m0,side:2,grid:Xd,ticks:f0,border:p0,font:qd,lineGap:g0,rotate:0},e1="Value",n1="Time",Ng={show:!0,scale:"x",auto:!1,sorted:1,min:Ge,max:-Ge,idxs:[]};function i1(i,t,e,n,s){return t.map(r=>r==null?"":Hd(r))}function s1(i,t,e,n,s,r,o){let a=[],l=Js.get(s)||0;e=o?e:We(xh(e,s),l);for(let c=e;c<=n;c=We(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function Ld(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?As:Zg,h=pi(c(e));s=To(l,h),l==10&&(s=Mr[Bi(s,Mr)]);let d=e,u=s*l;l==10&&(u=Mr[Bi(u,Mr)]);do a.push(d),d=d+s,l==10&&!Js.has(d)&&(d=We(d,Js.get(s))),d>=u&&(s=d,u=s*l,l==10&&(u=Mr[Bi(u,Mr)]));while(d<=n);return a}function r1(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?Ld(i,t,Jn(l,e),n,s):[l],h=n>=0&&e<=0?[0]:[];return(e<-l?Ld(i,t,Jn(l,-n),-e,s):[l]).reverse().map(u=>-u).concat(h,c)}var _0=/./,o1=/[12357]/,a1=/[125]/,Fg=/1/,Dd=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function l1(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,h=l(10,o),d=l(9,o)-h>=c?_0:l(7,o)-h>=c?o1:l(5,o)-h>=c?a1:Fg;if(d==Fg){let u=bn(l(1,o)-h);if(u<c)return Dd(t.slice().reverse(),a.distr,d,bi(c/u)).reverse()}return Dd(t,a.distr,d,1)}function c1(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=bn(l(1,o)-l(2,o));return c<a?Dd(t.slice().reverse(),3,_0,bi(a/c)).reverse():t}function h1(i,t,e,n){return n==null?Bd:t==null?"":Hd(t)}var Ug={show:!0,scale:"y",stroke:Od,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:m0,side:3,grid:Xd,ticks:f0,border:p0,font:qd,lineGap:g0,rotate:0};function u1(i,t){let e=3+(i||1)*2;return We(e*t,3)}function d1(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=bn(o-r),l=i.series[t],c=a/(l.points.space*Ue);return n[1]-n[0]<=c}var Og={scale:null,auto:!0,sorted:0,min:Ge,max:-Ge},x0=(i,t,e,n,s)=>s,Bg={show:!0,auto:!0,sorted:0,gaps:x0,alpha:1,facets:[_n({},Og,{scale:"x"}),_n({},Og,{scale:"y"})]},kg={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:x0,alpha:1,points:{show:d1,filter:null},values:null,min:Ge,max:-Ge,idxs:[],path:null,clip:null};function f1(i,t,e,n,s){return e/10}var y0={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},p1=_n({},y0,{time:!1,ori:1}),zg={};function v0(i,t){let e=zg[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let h=0;h<e.plots.length;h++)e.plots[h]!=s&&e.plots[h].pub(n,s,r,o,a,l,c)}},i!=null&&(zg[i]=e)),e}var Co=1,Nd=2;function Er(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],h=n==2?o[s.facets[0].scale]:o[i.series[0].scale],d=n==2?o[s.facets[1].scale]:o[s.scale],u=a.left,f=a.top,p=a.width,x=a.height,g=i.valToPosH,_=i.valToPosV;return h.ori==0?e(s,l,c,h,d,g,_,u,f,p,x,Mh,Io,bh,S0,w0):e(s,l,c,h,d,_,g,f,u,x,p,Sh,Lo,Jd,b0,E0)}function Yd(i,t){let e=0,n=0,s=Le(i.bands,Gd);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function m1(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function Rs(i,t,e,n,s,r){return Er(i,t,(o,a,l,c,h,d,u,f,p,x,g)=>{let _=o.pxRound,y=c.dir*(c.ori==0?1:-1),E=c.ori==0?Io:Lo,M,P;y==1?(M=e,P=n):(M=n,P=e);let w=_(d(a[M],c,x,f)),m=_(u(l[M],h,g,p)),b=_(d(a[P],c,x,f)),U=_(u(r==1?h.max:h.min,h,g,p)),C=new Path2D(s);return E(C,b,U),E(C,w,U),E(C,w,m),C})}function vh(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?bh:Jd,l=e;for(let d=0;d<i.length;d++){let u=i[d];if(u[1]>u[0]){let f=u[0]-l;f>0&&a(o,l,n,f,n+r),l=u[1]}}let c=e+s-l,h=10;c>0&&a(o,l,n-h/2,c,n+r+h)}return o}function g1(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function Zd(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let d=c,u=c;if(s==1)for(;++c<=n&&t[c]===null;)u=c;else for(;--c>=e&&t[c]===null;)u=c;let f=r(i[d]),p=u==d?f:r(i[u]),x=d-s;f=o<=0&&x>=0&&x<l?r(i[x]):f;let _=u+s;p=o>=0&&_>=0&&_<l?r(i[_]):p,p>=f&&a.push([f,p])}return a}function Vg(i){return i==0?Kg:i==1?Sn:t=>vr(t,i)}function M0(i){let t=i==0?Mh:Sh,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,h=0)=>{c==0&&h==0?n(s,r,o,a,l):(c=ki(c,a/2,l/2),h=ki(h,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,h),e(s,r,o+l,r,o,h),e(s,r,o,r+a,o,c),s.closePath())}}var Mh=(i,t,e)=>{i.moveTo(t,e)},Sh=(i,t,e)=>{i.moveTo(e,t)},Io=(i,t,e)=>{i.lineTo(t,e)},Lo=(i,t,e)=>{i.lineTo(e,t)},bh=M0(0),Jd=M0(1),S0=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},b0=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},w0=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},E0=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function T0(i){return(t,e,n,s,r)=>Er(t,e,(o,a,l,c,h,d,u,f,p,x,g)=>{let{pxRound:_,points:y}=o,E,M;c.ori==0?(E=Mh,M=S0):(E=Sh,M=b0);let P=We(y.width*Ue,3),w=(y.size-y.width)/2*Ue,m=We(w*2,3),b=new Path2D,U=new Path2D,{left:C,top:L,width:k,height:z}=t.bbox;bh(U,C-m,L-m,k+m*2,z+m*2);let I=V=>{if(l[V]!=null){let H=_(d(a[V],c,x,f)),B=_(u(l[V],h,g,p));E(b,H+w,B),M(b,H,B,w,0,dh*2)}};if(r)r.forEach(I);else for(let V=n;V<=s;V++)I(V);return{stroke:P>0?b:null,fill:b,clip:U,flags:Co|Nd}})}function A0(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var _1=A0(Io),x1=A0(Lo);function R0(i){let t=Le(i?.alignGaps,0);return(e,n,s,r)=>Er(e,n,(o,a,l,c,h,d,u,f,p,x,g)=>{[s,r]=gh(l,s,r);let _=o.pxRound,y=z=>_(d(z,c,x,f)),E=z=>_(u(z,h,g,p)),M,P;c.ori==0?(M=Io,P=_1):(M=Lo,P=x1);let w=c.dir*(c.ori==0?1:-1),m={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Co},b=m.stroke,U=!1;if(r-s>=x*4){let z=ot=>e.posToVal(ot,c.key,!0),I=null,V=null,H,B,Y,X=y(a[w==1?s:r]),K=y(a[s]),$=y(a[r]),at=z(w==1?K+1:$-1);for(let ot=w==1?s:r;ot>=s&&ot<=r;ot+=w){let Q=a[ot],Z=(w==1?Q<at:Q>at)?X:y(Q),it=l[ot];Z==X?it!=null?(B=it,I==null?(M(b,Z,E(B)),H=I=V=B):B<I?I=B:B>V&&(V=B)):it===null&&(U=!0):(I!=null&&P(b,X,E(I),E(V),E(H),E(B)),it!=null?(B=it,M(b,Z,E(B)),I=V=H=B):(I=V=null,it===null&&(U=!0)),X=Z,at=z(X+w))}I!=null&&I!=V&&Y!=X&&P(b,X,E(I),E(V),E(H),E(B))}else for(let z=w==1?s:r;z>=s&&z<=r;z+=w){let I=l[z];I===null?U=!0:I!=null&&M(b,y(a[z]),E(I))}let[L,k]=Yd(e,n);if(o.fill!=null||L!=0){let z=m.fill=new Path2D(b),I=o.fillTo(e,n,o.min,o.max,L),V=E(I),H=y(a[s]),B=y(a[r]);w==-1&&([B,H]=[H,B]),M(z,B,V),M(z,H,V)}if(!o.spanGaps){let z=[];U&&z.push(...Zd(a,l,s,r,w,y,t)),m.gaps=z=o.gaps(e,n,s,r,z),m.clip=vh(z,c.ori,f,p,x,g)}return k!=0&&(m.band=k==2?[Rs(e,n,s,r,b,-1),Rs(e,n,s,r,b,1)]:Rs(e,n,s,r,b,k)),m})}function y1(i){let t=Le(i.align,1),e=Le(i.ascDesc,!1),n=Le(i.alignGaps,0),s=Le(i.extend,!1);return(r,o,a,l)=>Er(r,o,(c,h,d,u,f,p,x,g,_,y,E)=>{[a,l]=gh(d,a,l);let M=c.pxRound,{left:P,width:w}=r.bbox,m=K=>M(p(K,u,y,g)),b=K=>M(x(K,f,E,_)),U=u.ori==0?Io:Lo,C={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Co},L=C.stroke,k=u.dir*(u.ori==0?1:-1),z=b(d[k==1?a:l]),I=m(h[k==1?a:l]),V=I,H=I;s&&t==-1&&(H=P,U(L,H,z)),U(L,I,z);for(let K=k==1?a:l;K>=a&&K<=l;K+=k){let $=d[K];if($==null)continue;let at=m(h[K]),ot=b($);t==1?U(L,at,z):U(L,V,ot),U(L,at,ot),z=ot,V=at}let B=V;s&&t==1&&(B=P+w,U(L,B,z));let[Y,X]=Yd(r,o);if(c.fill!=null||Y!=0){let K=C.fill=new Path2D(L),$=c.fillTo(r,o,c.min,c.max,Y),at=b($);U(K,B,at),U(K,H,at)}if(!c.spanGaps){let K=[];K.push(...Zd(h,d,a,l,k,m,n));let $=c.width*Ue/2,at=e||t==1?$:-$,ot=e||t==-1?-$:$;K.forEach(Q=>{Q[0]+=at,Q[1]+=ot}),C.gaps=K=c.gaps(r,o,a,l,K),C.clip=vh(K,u.ori,g,_,y,E)}return X!=0&&(C.band=X==2?[Rs(r,o,a,l,L,-1),Rs(r,o,a,l,L,1)]:Rs(r,o,a,l,L,X)),C})}function Hg(i,t,e,n,s,r,o=Ge){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let h=bn(i[l]-i[a]);h<c&&(c=h,o=bn(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function v1(i){i=i||Ga;let t=Le(i.size,[.6,Ge,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=Pe(s),o=1-t[0],a=Le(t[1],Ge),l=Le(t[2],1),c=Le(i.disp,Ga),h=Le(i.each,f=>{}),{fill:d,stroke:u}=c;return(f,p,x,g)=>Er(f,p,(_,y,E,M,P,w,m,b,U,C,L)=>{let k=_.pxRound,z=e,I=n*Ue,V=a*Ue,H=l*Ue,B,Y;M.ori==0?[B,Y]=r(f,p):[Y,B]=r(f,p);let X=M.dir*(M.ori==0?1:-1),K=M.ori==0?bh:Jd,$=M.ori==0?h:(_t,Ot,kt,St,ie,Vt,jt)=>{h(_t,Ot,kt,ie,St,jt,Vt)},at=Le(f.bands,Gd).find(_t=>_t.series[0]==p),ot=at!=null?at.dir:0,Q=_.fillTo(f,p,_.min,_.max,ot),yt=k(m(Q,P,L,U)),Z,it,st,pt=C,Tt=k(_.width*Ue),bt=!1,ee=null,ne=null,Zt=null,Se=null;d!=null&&(Tt==0||u!=null)&&(bt=!0,ee=d.values(f,p,x,g),ne=new Map,new Set(ee).forEach(_t=>{_t!=null&&ne.set(_t,new Path2D)}),Tt>0&&(Zt=u.values(f,p,x,g),Se=new Map,new Set(Zt).forEach(_t=>{_t!=null&&Se.set(_t,new Path2D)})));let{x0:Kt,size:Ae}=c;if(Kt!=null&&Ae!=null){z=1,y=Kt.values(f,p,x,g),Kt.unit==2&&(y=y.map(kt=>f.posToVal(b+kt*C,M.key,!0)));let _t=Ae.values(f,p,x,g);Ae.unit==2?it=_t[0]*C:it=w(_t[0],M,C,b)-w(0,M,C,b),pt=Hg(y,E,w,M,C,b,pt),st=pt-it+I}else pt=Hg(y,E,w,M,C,b,pt),st=pt*o+I,it=pt-st;st<1&&(st=0),Tt>=it/2&&(Tt=0),st<5&&(k=Kg);let pe=st>0,Me=pt-st-(pe?Tt:0);it=k(Id(Me,H,V)),Z=(z==0?it/2:z==X?0:it)-z*X*((z==0?I/2:0)+(pe?Tt/2:0));let _e={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},nn=bt?null:new Path2D,ft=null;if(at!=null)ft=f.data[at.series[1]];else{let{y0:_t,y1:Ot}=c;_t!=null&&Ot!=null&&(E=Ot.values(f,p,x,g),ft=_t.values(f,p,x,g))}let At=B*it,D=Y*it;for(let _t=X==1?x:g;_t>=x&&_t<=g;_t+=X){let Ot=E[_t];if(Ot==null)continue;if(ft!=null){let j=ft[_t]??0;if(Ot-j==0)continue;yt=m(j,P,L,U)}let kt=M.distr!=2||c!=null?y[_t]:_t,St=w(kt,M,C,b),ie=m(Le(Ot,Q),P,L,U),Vt=k(St-Z),jt=k(Jn(ie,yt)),N=k(ki(ie,yt)),T=jt-N;if(Ot!=null){let j=Ot<0?D:At,Mt=Ot<0?At:D;bt?(Tt>0&&Zt[_t]!=null&&K(Se.get(Zt[_t]),Vt,N+pi(Tt/2),it,Jn(0,T-Tt),j,Mt),ee[_t]!=null&&K(ne.get(ee[_t]),Vt,N+pi(Tt/2),it,Jn(0,T-Tt),j,Mt)):K(nn,Vt,N+pi(Tt/2),it,Jn(0,T-Tt),j,Mt),$(f,p,_t,Vt-Tt/2,N,it+Tt,T)}}return Tt>0?_e.stroke=bt?Se:nn:bt||(_e._fill=_.width==0?_._fill:_._stroke??_._fill,_e.width=0),_e.fill=bt?ne:nn,_e})}function M1(i,t){let e=Le(t?.alignGaps,0);return(n,s,r,o)=>Er(n,s,(a,l,c,h,d,u,f,p,x,g,_)=>{[r,o]=gh(c,r,o);let y=a.pxRound,E=B=>y(u(B,h,g,p)),M=B=>y(f(B,d,_,x)),P,w,m;h.ori==0?(P=Mh,m=Io,w=w0):(P=Sh,m=Lo,w=E0);let b=h.dir*(h.ori==0?1:-1),U=E(l[b==1?r:o]),C=U,L=[],k=[];for(let B=b==1?r:o;B>=r&&B<=o;B+=b)if(c[B]!=null){let X=l[B],K=E(X);L.push(C=K),k.push(M(c[B]))}let z={stroke:i(L,k,P,m,w,y),fill:null,clip:null,band:null,gaps:null,flags:Co},I=z.stroke,[V,H]=Yd(n,s);if(a.fill!=null||V!=0){let B=z.fill=new Path2D(I),Y=a.fillTo(n,s,a.min,a.max,V),X=M(Y);m(B,C,X),m(B,U,X)}if(!a.spanGaps){let B=[];B.push(...Zd(l,c,r,o,b,E,e)),z.gaps=B=a.gaps(n,s,r,o,B),z.clip=vh(B,h.ori,p,x,g,_)}return H!=0&&(z.band=H==2?[Rs(n,s,r,o,I,-1),Rs(n,s,r,o,I,1)]:Rs(n,s,r,o,I,H)),z})}function S1(i){return M1(b1,i)}function b1(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),h=Array(o-1),d=Array(o-1);for(let u=0;u<o-1;u++)h[u]=t[u+1]-t[u],d[u]=i[u+1]-i[u],c[u]=h[u]/d[u];l[0]=c[0];for(let u=1;u<o-1;u++)c[u]===0||c[u-1]===0||c[u-1]>0!=c[u]>0?l[u]=0:(l[u]=3*(d[u-1]+d[u])/((2*d[u]+d[u-1])/c[u-1]+(d[u]+2*d[u-1])/c[u]),isFinite(l[u])||(l[u]=0));l[o-1]=c[o-2];for(let u=0;u<o-1;u++)s(a,i[u]+d[u]/3,t[u]+l[u]*d[u]/3,i[u+1]-d[u]/3,t[u+1]-l[u+1]*d[u]/3,i[u+1],t[u+1])}return a}var Fd=new Set;function Gg(){for(let i of Fd)i.syncRect(!0)}Po&&(br(iw,Eo,Gg),br(sw,Eo,Gg,!0),br(fh,Eo,()=>{wn.pxRatio=Ue}));var w1=R0(),E1=T0();function Wg(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Ud(r,o,t,e))}function T1(i,t){return i.map((e,n)=>n==0?{}:_n({},t,e))}function Ud(i,t,e,n){return _n({},t==0?e:n,i)}function C0(i,t,e){return t==null?Ao:[t,e]}var A1=C0;function R1(i,t,e){return t==null?Ao:ph(t,e,Vd,!0)}function P0(i,t,e,n){return t==null?Ao:_h(t,e,i.scales[n].log,!1)}var C1=P0;function I0(i,t,e,n){return t==null?Ao:zd(t,e,i.scales[n].log,!1)}var P1=I0;function I1(i,t,e,n,s){let r=Jn(Sg(i),Sg(t)),o=t-i,a=Bi(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Js.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function $g(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=Sn((e=+s)*Ue))+"px"),[i,t,e]}function L1(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=We(t[2]*Ue,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function wn(i,t,e){let n={mode:Le(i.mode,1)},s=n.mode;function r(v,A,F,O){let q=A.valToPct(v);return O+F*(A.dir==-1?1-q:q)}function o(v,A,F,O){let q=A.valToPct(v);return O+F*(A.dir==-1?q:1-q)}function a(v,A,F,O){return A.ori==0?r(v,A,F,O):o(v,A,F,O)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=Si(kb);if(i.id!=null&&(c.id=i.id),fi(c,i.class),i.title){let v=Si(Hb,c);v.textContent=i.title}let h=Oi("canvas"),d=n.ctx=h.getContext("2d"),u=Si(Gb,c);br("click",u,v=>{v.target===p&&(Ze!=Dr||tn!=Nr)&&Ln.click(n,v)},!0);let f=n.under=Si(Wb,u);u.appendChild(h);let p=n.over=Si($b,u);i=Ro(i);let x=+Le(i.pxAlign,1),g=Vg(x);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let _=i.ms||.001,y=n.series=s==1?Wg(i.series||[],Ng,kg,!1):T1(i.series||[null],Bg),E=n.axes=Wg(i.axes||[],Dg,Ug,!0),M=n.scales={},P=n.bands=i.bands||[];P.forEach(v=>{v.fill=Pe(v.fill||null),v.dir=Le(v.dir,-1)});let w=s==2?y[1].facets[0].scale:y[0].scale,m={axes:cs,series:we},b=(i.drawOrder||["axes","series"]).map(v=>m[v]);function U(v){let A=v.distr==3?F=>As(F>0?F:v.clamp(n,F,v.min,v.max,v.key)):v.distr==4?F=>bd(F,v.asinh):v.distr==100?F=>v.fwd(F):F=>F;return F=>{let O=A(F),{_min:q,_max:nt}=v,xt=nt-q;return(O-q)/xt}}function C(v){let A=M[v];if(A==null){let F=(i.scales||Ga)[v]||Ga;if(F.from!=null){C(F.from);let O=_n({},M[F.from],F,{key:v});O.valToPct=U(O),M[v]=O}else{A=M[v]=_n({},v==w?y0:p1,F),A.key=v;let O=A.time,q=A.range,nt=Zs(q);if((v!=w||s==2&&!O)&&(nt&&(q[0]==null||q[1]==null)&&(q={min:q[0]==null?yg:{mode:1,hard:q[0],soft:q[0]},max:q[1]==null?yg:{mode:1,hard:q[1],soft:q[1]}},nt=!1),!nt&&yh(q))){let xt=q;q=(wt,It,Gt)=>It==null?Ao:ph(It,Gt,xt)}A.range=Pe(q||(O?A1:v==w?A.distr==3?C1:A.distr==4?P1:C0:A.distr==3?P0:A.distr==4?I0:R1)),A.auto=Pe(nt?!1:A.auto),A.clamp=Pe(A.clamp||f1),A._min=A._max=null,A.valToPct=U(A)}}}C("x"),C("y"),s==1&&y.forEach(v=>{C(v.scale)}),E.forEach(v=>{C(v.scale)});for(let v in i.scales)C(v);let L=M[w],k=L.distr,z,I;L.ori==0?(fi(c,zb),z=r,I=o):(fi(c,Vb),z=o,I=r);let V={};for(let v in M){let A=M[v];(A.min!=null||A.max!=null)&&(V[v]={min:A.min,max:A.max},A.min=A.max=null)}let H=i.tzDate||(v=>new Date(Sn(v/_))),B=i.fmtDate||Wd,Y=_==1?zw(H):Gw(H),X=Pg(H,Cg(_==1?kw:Hw,B)),K=Lg(H,Ig($w,B)),$=[],at=n.legend=_n({},Yw,i.legend),ot=n.cursor=_n({},t1,{drag:{y:s==2}},i.cursor),Q=at.show,yt=ot.show,Z=at.markers;at.idxs=$,Z.width=Pe(Z.width),Z.dash=Pe(Z.dash),Z.stroke=Pe(Z.stroke),Z.fill=Pe(Z.fill);let it,st,pt,Tt=[],bt=[],ee,ne=!1,Zt={};if(at.live){let v=y[1]?y[1].values:null;ne=v!=null,ee=ne?v(n,1,0):{_:0};for(let A in ee)Zt[A]=Bd}if(Q)if(it=Oi("table",Kb,c),pt=Oi("tbody",null,it),at.mount(n,it),ne){st=Oi("thead",null,it,pt);let v=Oi("tr",null,st);Oi("th",null,v);for(var Se in ee)Oi("th",og,v).textContent=Se}else fi(it,Qb),at.live&&fi(it,jb);let Kt={show:!0},Ae={show:!1};function pe(v,A){if(A==0&&(ne||!at.live||s==2))return Ao;let F=[],O=Oi("tr",tw,pt,pt.childNodes[A]);fi(O,v.class),v.show||fi(O,Sr);let q=Oi("th",null,O);if(Z.show){let wt=Si(ew,q);if(A>0){let It=Z.width(n,A);It&&(wt.style.border=It+"px "+Z.dash(n,A)+" "+Z.stroke(n,A)),wt.style.background=Z.fill(n,A)}}let nt=Si(og,q);v.label instanceof HTMLElement?nt.appendChild(v.label):nt.textContent=v.label,A>0&&(Z.show||(nt.style.color=v.width>0?Z.stroke(n,A):Z.fill(n,A)),_e("click",q,wt=>{if(ot._lock)return;oe(wt);let It=y.indexOf(v);if((wt.ctrlKey||wt.metaKey)!=at.isolate){let Gt=y.some((Wt,Xt)=>Xt>0&&Xt!=It&&Wt.show);y.forEach((Wt,Xt)=>{Xt>0&&Gi(Xt,Gt?Xt==It?Kt:Ae:Kt,!0,pn.setSeries)})}else Gi(It,{show:!v.show},!0,pn.setSeries)},!1),ae&&_e(hg,q,wt=>{ot._lock||(oe(wt),Gi(y.indexOf(v),Ur,!0,pn.setSeries))},!1));for(var xt in ee){let wt=Oi("td",nw,O);wt.textContent="--",F.push(wt)}return[O,F]}let Me=new Map;function _e(v,A,F,O=!0){let q=Me.get(A)||{},nt=ot.bind[v](n,A,F,O);nt&&(br(v,A,q[v]=nt),Me.set(A,q))}function nn(v,A,F){let O=Me.get(A)||{};for(let q in O)(v==null||q==v)&&(Pd(q,A,O[q]),delete O[q]);v==null&&Me.delete(A)}let ft=0,At=0,D=0,_t=0,Ot=0,kt=0,St=Ot,ie=kt,Vt=D,jt=_t,N=0,T=0,j=0,Mt=0;n.bbox={};let gt=!1,Ct=!1,Pt=!1,lt=!1,dt=!1,Et=!1;function G(v,A,F){(F||v!=n.width||A!=n.height)&&mt(v,A),xe(!1),Pt=!0,Ct=!0,On()}function mt(v,A){n.width=ft=D=v,n.height=At=_t=A,Ot=kt=0,Lt(),Qt();let F=n.bbox;N=F.left=vr(Ot*Ue,.5),T=F.top=vr(kt*Ue,.5),j=F.width=vr(D*Ue,.5),Mt=F.height=vr(_t*Ue,.5)}let ct=3;function Dt(){let v=!1,A=0;for(;!v;){A++;let F=Pr(A),O=Hi(A);v=A==ct||F&&O,v||(mt(n.width,n.height),Ct=!0)}}function Rt({width:v,height:A}){G(v,A)}n.setSize=Rt;function Lt(){let v=!1,A=!1,F=!1,O=!1;E.forEach((q,nt)=>{if(q.show&&q._show){let{side:xt,_size:wt}=q,It=xt%2,Gt=q.label!=null?q.labelSize:0,Wt=wt+Gt;Wt>0&&(It?(D-=Wt,xt==3?(Ot+=Wt,O=!0):F=!0):(_t-=Wt,xt==0?(kt+=Wt,v=!0):A=!0))}}),zi[0]=v,zi[1]=F,zi[2]=A,zi[3]=O,D-=wi[1]+wi[3],Ot+=wi[3],_t-=wi[2]+wi[0],kt+=wi[0]}function Qt(){let v=Ot+D,A=kt+_t,F=Ot,O=kt;function q(nt,xt){switch(nt){case 1:return v+=xt,v-xt;case 2:return A+=xt,A-xt;case 3:return F-=xt,F+xt;case 0:return O-=xt,O+xt}}E.forEach((nt,xt)=>{if(nt.show&&nt._show){let wt=nt.side;nt._pos=q(wt,nt._size),nt.label!=null&&(nt._lpos=q(wt,nt.labelSize))}})}if(ot.dataIdx==null){let v=ot.hover,A=v.skip=new Set(v.skip??[]);A.add(void 0);let F=v.prox=Pe(v.prox),O=v.bias??=0;ot.dataIdx=(q,nt,xt,wt)=>{if(nt==0)return xt;let It=xt,Gt=F(q,nt,xt,wt)??Ge,Wt=Gt>=0&&Gt<Ge,Xt=L.ori==0?D:_t,de=ot.left,De=t[0],Ie=t[nt];if(A.has(Ie[xt])){It=null;let Te=null,re=null,te;if(O==0||O==-1)for(te=xt;Te==null&&te-- >0;)A.has(Ie[te])||(Te=te);if(O==0||O==1)for(te=xt;re==null&&te++<Ie.length;)A.has(Ie[te])||(re=te);if(Te!=null||re!=null)if(Wt){let Ke=Te==null?-1/0:z(De[Te],L,Xt,0),an=re==null?1/0:z(De[re],L,Xt,0),Rn=de-Ke,He=an-de;Rn<=He?Rn<=Gt&&(It=Te):He<=Gt&&(It=re)}else It=re==null?Te:Te==null?re:xt-Te<=re-xt?Te:re}else Wt&&bn(de-z(De[xt],L,Xt,0))>Gt&&(It=null);return It}}let oe=v=>{ot.event=v};ot.idxs=$,ot._lock=!1;let vt=ot.points;vt.show=Pe(vt.show),vt.size=Pe(vt.size),vt.stroke=Pe(vt.stroke),vt.width=Pe(vt.width),vt.fill=Pe(vt.fill);let qt=n.focus=_n({},i.focus||{alpha:.3},ot.focus),ae=qt.prox>=0,Ut=ae&&vt.one,me=[],Ye=[],Hn=[];function Fo(v,A){let F=vt.show(n,A);if(F instanceof HTMLElement)return fi(F,Jb),fi(F,v.class),ss(F,-10,-10,D,_t),p.insertBefore(F,me[A]),F}function Ar(v,A){if(s==1||A>0){let F=s==1&&M[v.scale].time,O=v.value;v.value=F?Eg(O)?Lg(H,Ig(O,B)):O||K:O||h1,v.label=v.label||(F?n1:e1)}if(Ut||A>0){v.width=v.width==null?1:v.width,v.paths=v.paths||w1||pw,v.fillTo=Pe(v.fillTo||m1),v.pxAlign=+Le(v.pxAlign,x),v.pxRound=Vg(v.pxAlign),v.stroke=Pe(v.stroke||null),v.fill=Pe(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let F=u1(Jn(1,v.width),1),O=v.points=_n({},{size:F,width:Jn(1,F*.2),stroke:v.stroke,space:F*2,paths:E1,_stroke:null,_fill:null},v.points);O.show=Pe(O.show),O.filter=Pe(O.filter),O.fill=Pe(O.fill),O.stroke=Pe(O.stroke),O.paths=Pe(O.paths),O.pxAlign=v.pxAlign}if(Q){let F=pe(v,A);Tt.splice(A,0,F[0]),bt.splice(A,0,F[1]),at.values.push(null)}if(yt){$.splice(A,0,null);let F=null;Ut?A==0&&(F=Fo(v,A)):A>0&&(F=Fo(v,A)),me.splice(A,0,F),Ye.splice(A,0,0),Hn.splice(A,0,0)}An("addSeries",A)}function Fh(v,A){A=A??y.length,v=s==1?Ud(v,A,Ng,kg):Ud(v,A,{},Bg),y.splice(A,0,v),Ar(y[A],A)}n.addSeries=Fh;function Za(v){if(y.splice(v,1),Q){at.values.splice(v,1),bt.splice(v,1);let A=Tt.splice(v,1)[0];nn(null,A.firstChild),A.remove()}yt&&($.splice(v,1),me.splice(v,1)[0].remove(),Ye.splice(v,1),Hn.splice(v,1)),An("delSeries",v)}n.delSeries=Za;let zi=[!1,!1,!1,!1];function os(v,A){if(v._show=v.show,v.show){let F=v.side%2,O=M[v.scale];O==null&&(v.scale=F?y[1].scale:w,O=M[v.scale]);let q=O.time;v.size=Pe(v.size),v.space=Pe(v.space),v.rotate=Pe(v.rotate),Zs(v.incrs)&&v.incrs.forEach(xt=>{!Js.has(xt)&&Js.set(xt,t0(xt))}),v.incrs=Pe(v.incrs||(O.distr==2?Uw:q?_==1?Bw:Vw:Mr)),v.splits=Pe(v.splits||(q&&O.distr==1?Y:O.distr==3?Ld:O.distr==4?r1:s1)),v.stroke=Pe(v.stroke),v.grid.stroke=Pe(v.grid.stroke),v.ticks.stroke=Pe(v.ticks.stroke),v.border.stroke=Pe(v.border.stroke);let nt=v.values;v.values=Zs(nt)&&!Zs(nt[0])?Pe(nt):q?Zs(nt)?Pg(H,Cg(nt,B)):Eg(nt)?Ww(H,nt):nt||X:nt||i1,v.filter=Pe(v.filter||(O.distr>=3&&O.log==10?l1:O.distr==3&&O.log==2?c1:jg)),v.font=$g(v.font),v.labelFont=$g(v.labelFont),v._size=v.size(n,null,A,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(zi[A]=!0,v._el=Si(Xb,u))}}function as(v,A,F,O){let[q,nt,xt,wt]=F,It=A%2,Gt=0;return It==0&&(wt||nt)&&(Gt=A==0&&!q||A==2&&!xt?Sn(Dg.size/3):0),It==1&&(q||xt)&&(Gt=A==1&&!nt||A==3&&!wt?Sn(Ug.size/2):0),Gt}let Uo=n.padding=(i.padding||[as,as,as,as]).map(v=>Pe(Le(v,as))),wi=n._padding=Uo.map((v,A)=>v(n,A,zi,0)),rn,cn=null,hn=null,Vi=s==1?y[0].idxs:null,ei=null,Cs=!1;function Oo(v,A){if(t=v??[],n.data=n._data=t,s==2){rn=0;for(let F=1;F<y.length;F++)rn+=t[F][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),ei=t[0],rn=ei.length;let F=t;if(k==2){F=t.slice();let O=F[0]=Array(rn);for(let q=0;q<rn;q++)O[q]=q}n._data=t=F}if(xe(!0),An("setData"),k==2&&(Pt=!0),A!==!1){let F=L;F.auto(n,Cs)?Bo():Ls(w,F.min,F.max),lt=lt||ot.left>=0,Et=!0,On()}}n.setData=Oo;function Bo(){Cs=!0;let v,A;s==1&&(rn>0?(cn=Vi[0]=0,hn=Vi[1]=rn-1,v=t[0][cn],A=t[0][hn],k==2?(v=cn,A=hn):v==A&&(k==3?[v,A]=_h(v,v,L.log,!1):k==4?[v,A]=zd(v,v,L.log,!1):L.time?A=v+Sn(86400/_):[v,A]=ph(v,A,Vd,!0))):(cn=Vi[0]=v=null,hn=Vi[1]=A=null)),Ls(w,v,A)}let Rr,Ps,Cr,R,W,rt,tt,et,Nt,Bt;function Ft(v,A,F,O,q,nt){v??=lg,F??=Gd,O??="butt",q??=lg,nt??="round",v!=Rr&&(d.strokeStyle=Rr=v),q!=Ps&&(d.fillStyle=Ps=q),A!=Cr&&(d.lineWidth=Cr=A),nt!=W&&(d.lineJoin=W=nt),O!=rt&&(d.lineCap=rt=O),F!=R&&d.setLineDash(R=F)}function zt(v,A,F,O){A!=Ps&&(d.fillStyle=Ps=A),v!=tt&&(d.font=tt=v),F!=et&&(d.textAlign=et=F),O!=Nt&&(d.textBaseline=Nt=O)}function Jt(v,A,F,O,q=0){if(O.length>0&&v.auto(n,Cs)&&(A==null||A.min==null)){let nt=Le(cn,0),xt=Le(hn,O.length-1),wt=F.min==null?lw(O,nt,xt,q,v.distr==3):[F.min,F.max];v.min=ki(v.min,F.min=wt[0]),v.max=Jn(v.max,F.max=wt[1])}}let ce={min:null,max:null};function be(){for(let O in M){let q=M[O];V[O]==null&&(q.min==null||V[w]!=null&&q.auto(n,Cs))&&(V[O]=ce)}for(let O in M){let q=M[O];V[O]==null&&q.from!=null&&V[q.from]!=null&&(V[O]=ce)}V[w]!=null&&xe(!0);let v={};for(let O in V){let q=V[O];if(q!=null){let nt=v[O]=Ro(M[O],_w);if(q.min!=null)_n(nt,q);else if(O!=w||s==2)if(rn==0&&nt.from==null){let xt=nt.range(n,null,null,O);nt.min=xt[0],nt.max=xt[1]}else nt.min=Ge,nt.max=-Ge}}if(rn>0){y.forEach((O,q)=>{if(s==1){let nt=O.scale,xt=V[nt];if(xt==null)return;let wt=v[nt];if(q==0){let It=wt.range(n,wt.min,wt.max,nt);wt.min=It[0],wt.max=It[1],cn=Bi(wt.min,t[0]),hn=Bi(wt.max,t[0]),hn-cn>1&&(t[0][cn]<wt.min&&cn++,t[0][hn]>wt.max&&hn--),O.min=ei[cn],O.max=ei[hn]}else O.show&&O.auto&&Jt(wt,xt,O,t[q],O.sorted);O.idxs[0]=cn,O.idxs[1]=hn}else if(q>0&&O.show&&O.auto){let[nt,xt]=O.facets,wt=nt.scale,It=xt.scale,[Gt,Wt]=t[q],Xt=v[wt],de=v[It];Xt!=null&&Jt(Xt,V[wt],nt,Gt,nt.sorted),de!=null&&Jt(de,V[It],xt,Wt,xt.sorted),O.min=xt.min,O.max=xt.max}});for(let O in v){let q=v[O],nt=V[O];if(q.from==null&&(nt==null||nt.min==null)){let xt=q.range(n,q.min==Ge?null:q.min,q.max==-Ge?null:q.max,O);q.min=xt[0],q.max=xt[1]}}}for(let O in v){let q=v[O];if(q.from!=null){let nt=v[q.from];if(nt.min==null)q.min=q.max=null;else{let xt=q.range(n,nt.min,nt.max,O);q.min=xt[0],q.max=xt[1]}}}let A={},F=!1;for(let O in v){let q=v[O],nt=M[O];if(nt.min!=q.min||nt.max!=q.max){nt.min=q.min,nt.max=q.max;let xt=nt.distr;nt._min=xt==3?As(nt.min):xt==4?bd(nt.min,nt.asinh):xt==100?nt.fwd(nt.min):nt.min,nt._max=xt==3?As(nt.max):xt==4?bd(nt.max,nt.asinh):xt==100?nt.fwd(nt.max):nt.max,A[O]=F=!0}}if(F){y.forEach((O,q)=>{s==2?q>0&&A.y&&(O._paths=null):A[O.scale]&&(O._paths=null)});for(let O in A)Pt=!0,An("setScale",O);yt&&ot.left>=0&&(lt=Et=!0)}for(let O in V)V[O]=null}function Yt(v){let A=Id(cn-1,0,rn-1),F=Id(hn+1,0,rn-1);for(;v[A]==null&&A>0;)A--;for(;v[F]==null&&F<rn-1;)F++;return[A,F]}function we(){if(rn>0){let v=y.some(A=>A._focus)&&Bt!=qt.alpha;v&&(d.globalAlpha=Bt=qt.alpha),y.forEach((A,F)=>{if(F>0&&A.show&&(sn(F,!1),sn(F,!0),A._paths==null)){let O=Bt;Bt!=A.alpha&&(d.globalAlpha=Bt=A.alpha);let q=s==2?[0,t[F][0].length-1]:Yt(t[F]);A._paths=A.paths(n,F,q[0],q[1]),Bt!=O&&(d.globalAlpha=Bt=O)}}),y.forEach((A,F)=>{if(F>0&&A.show){let O=Bt;Bt!=A.alpha&&(d.globalAlpha=Bt=A.alpha),A._paths!=null&&ke(F,!1);{let q=A._paths!=null?A._paths.gaps:null,nt=A.points.show(n,F,cn,hn,q),xt=A.points.filter(n,F,nt,q);(nt||xt)&&(A.points._paths=A.points.paths(n,F,cn,hn,xt),ke(F,!0))}Bt!=O&&(d.globalAlpha=Bt=O),An("drawSeries",F)}}),v&&(d.globalAlpha=Bt=1)}}function sn(v,A){let F=A?y[v].points:y[v];F._stroke=F.stroke(n,v),F._fill=F.fill(n,v)}function ke(v,A){let F=A?y[v].points:y[v],{stroke:O,fill:q,clip:nt,flags:xt,_stroke:wt=F._stroke,_fill:It=F._fill,_width:Gt=F.width}=F._paths;Gt=We(Gt*Ue,3);let Wt=null,Xt=Gt%2/2;A&&It==null&&(It=Gt>0?"#fff":wt);let de=F.pxAlign==1&&Xt>0;if(de&&d.translate(Xt,Xt),!A){let De=N-Gt/2,Ie=T-Gt/2,Te=j+Gt,re=Mt+Gt;Wt=new Path2D,Wt.rect(De,Ie,Te,re)}A?$t(wt,Gt,F.dash,F.cap,It,O,q,xt,nt):ze(v,wt,Gt,F.dash,F.cap,It,O,q,xt,Wt,nt),de&&d.translate(-Xt,-Xt)}function ze(v,A,F,O,q,nt,xt,wt,It,Gt,Wt){let Xt=!1;It!=0&&P.forEach((de,De)=>{if(de.series[0]==v){let Ie=y[de.series[1]],Te=t[de.series[1]],re=(Ie._paths||Ga).band;Zs(re)&&(re=de.dir==1?re[0]:re[1]);let te,Ke=null;Ie.show&&re&&hw(Te,cn,hn)?(Ke=de.fill(n,De)||nt,te=Ie._paths.clip):re=null,$t(A,F,O,q,Ke,xt,wt,It,Gt,Wt,te,re),Xt=!0}}),Xt||$t(A,F,O,q,nt,xt,wt,It,Gt,Wt)}let xn=Co|Nd;function $t(v,A,F,O,q,nt,xt,wt,It,Gt,Wt,Xt){Ft(v,A,F,O,q),(It||Gt||Xt)&&(d.save(),It&&d.clip(It),Gt&&d.clip(Gt)),Xt?(wt&xn)==xn?(d.clip(Xt),Wt&&d.clip(Wt),Re(q,xt),un(v,nt,A)):wt&Nd?(Re(q,xt),d.clip(Xt),un(v,nt,A)):wt&Co&&(d.save(),d.clip(Xt),Wt&&d.clip(Wt),Re(q,xt),d.restore(),un(v,nt,A)):(Re(q,xt),un(v,nt,A)),(It||Gt||Xt)&&d.restore()}function un(v,A,F){F>0&&(A instanceof Map?A.forEach((O,q)=>{d.strokeStyle=Rr=q,d.stroke(O)}):A!=null&&v&&d.stroke(A))}function Re(v,A){A instanceof Map?A.forEach((F,O)=>{d.fillStyle=Ps=O,d.fill(F)}):A!=null&&v&&d.fill(A)}function ls(v,A,F,O){let q=E[v],nt;if(O<=0)nt=[0,0];else{let xt=q._space=q.space(n,v,A,F,O),wt=q._incrs=q.incrs(n,v,A,F,O,xt);nt=I1(A,F,wt,O,xt)}return q._found=nt}function dn(v,A,F,O,q,nt,xt,wt,It,Gt){let Wt=xt%2/2;x==1&&d.translate(Wt,Wt),Ft(wt,xt,It,Gt,wt),d.beginPath();let Xt,de,De,Ie,Te=q+(O==0||O==3?-nt:nt);F==0?(de=q,Ie=Te):(Xt=q,De=Te);for(let re=0;re<v.length;re++)A[re]!=null&&(F==0?Xt=De=v[re]:de=Ie=v[re],d.moveTo(Xt,de),d.lineTo(De,Ie));d.stroke(),x==1&&d.translate(-Wt,-Wt)}function Pr(v){let A=!0;return E.forEach((F,O)=>{if(!F.show)return;let q=M[F.scale];if(q.min==null){F._show&&(A=!1,F._show=!1,xe(!1));return}else F._show||(A=!1,F._show=!0,xe(!1));let nt=F.side,xt=nt%2,{min:wt,max:It}=q,[Gt,Wt]=ls(O,wt,It,xt==0?D:_t);if(Wt==0)return;let Xt=q.distr==2,de=F._splits=F.splits(n,O,wt,It,Gt,Wt,Xt),De=q.distr==2?de.map(te=>ei[te]):de,Ie=q.distr==2?ei[de[1]]-ei[de[0]]:Gt,Te=F._values=F.values(n,F.filter(n,De,O,Wt,Ie),O,Wt,Ie);F._rotate=nt==2?F.rotate(n,Te,O,Wt):0;let re=F._size;F._size=bi(F.size(n,Te,O,v)),re!=null&&F._size!=re&&(A=!1)}),A}function Hi(v){let A=!0;return Uo.forEach((F,O)=>{let q=F(n,O,zi,v);q!=wi[O]&&(A=!1),wi[O]=q}),A}function cs(){for(let v=0;v<E.length;v++){let A=E[v];if(!A.show||!A._show)continue;let F=A.side,O=F%2,q,nt,xt=A.stroke(n,v),wt=F==0||F==3?-1:1,[It,Gt]=A._found;if(A.label!=null){let $n=A.labelGap*wt,si=Sn((A._lpos+$n)*Ue);zt(A.labelFont[0],xt,"center",F==2?"top":ag),d.save(),O==1?(q=nt=0,d.translate(si,Sn(T+Mt/2)),d.rotate((F==3?-dh:dh)/2)):(q=Sn(N+j/2),nt=si);let er=Jg(A.label)?A.label(n,v,It,Gt):A.label;d.fillText(er,q,nt),d.restore()}if(Gt==0)continue;let Wt=M[A.scale],Xt=O==0?j:Mt,de=O==0?N:T,De=A._splits,Ie=Wt.distr==2?De.map($n=>ei[$n]):De,Te=Wt.distr==2?ei[De[1]]-ei[De[0]]:It,re=A.ticks,te=A.border,Ke=re.show?re.size:0,an=Sn(Ke*Ue),Rn=Sn((A.alignTo==2?A._size-Ke-A.gap:A.gap)*Ue),He=A._rotate*-dh/180,ln=g(A._pos*Ue),ni=(an+Rn)*wt,Wn=ln+ni;nt=O==0?Wn:0,q=O==1?Wn:0;let gi=A.font[0],Ei=A.align==1?bo:A.align==2?vd:He>0?bo:He<0?vd:O==0?"center":F==3?vd:bo,$i=He||O==1?"middle":F==2?"top":ag;zt(gi,xt,Ei,$i);let ii=A.font[1]*A.lineGap,_i=De.map($n=>g(a($n,Wt,Xt,de))),Ti=A._values;for(let $n=0;$n<Ti.length;$n++){let si=Ti[$n];if(si!=null){O==0?q=_i[$n]:nt=_i[$n],si=""+si;let er=si.indexOf(`
`)==-1?[si]:si.split(/\n/gm);for(let Xn=0;Xn<er.length;Xn++){let Mf=er[Xn];He?(d.save(),d.translate(q,nt+Xn*ii),d.rotate(He),d.fillText(Mf,0,0),d.restore()):d.fillText(Mf,q,nt+Xn*ii)}}}re.show&&dn(_i,re.filter(n,Ie,v,Gt,Te),O,F,ln,an,We(re.width*Ue,3),re.stroke(n,v),re.dash,re.cap);let Xi=A.grid;Xi.show&&dn(_i,Xi.filter(n,Ie,v,Gt,Te),O,O==0?2:1,O==0?T:N,O==0?Mt:j,We(Xi.width*Ue,3),Xi.stroke(n,v),Xi.dash,Xi.cap),te.show&&dn([ln],[1],O==0?1:0,O==0?1:2,O==1?T:N,O==1?Mt:j,We(te.width*Ue,3),te.stroke(n,v),te.dash,te.cap)}An("drawAxes")}function xe(v){y.forEach((A,F)=>{F>0&&(A._paths=null,v&&(s==1?(A.min=null,A.max=null):A.facets.forEach(O=>{O.min=null,O.max=null})))})}let on=!1,Gn=!1,Ve=[];function fn(){Gn=!1;for(let v=0;v<Ve.length;v++)An(...Ve[v]);Ve.length=0}function On(){on||(ww(nf),on=!0)}function Ja(v,A=!1){on=!0,Gn=A,v(n),nf(),A&&Ve.length>0&&queueMicrotask(fn)}n.batch=Ja;function nf(){if(gt&&(be(),gt=!1),Pt&&(Dt(),Pt=!1),Ct){if(Qe(f,bo,Ot),Qe(f,"top",kt),Qe(f,ka,D),Qe(f,za,_t),Qe(p,bo,Ot),Qe(p,"top",kt),Qe(p,ka,D),Qe(p,za,_t),Qe(u,ka,ft),Qe(u,za,At),h.width=Sn(ft*Ue),h.height=Sn(At*Ue),E.forEach(({_el:v,_show:A,_size:F,_pos:O,side:q})=>{if(v!=null)if(A){let nt=q===3||q===0?F:0,xt=q%2==1;Qe(v,xt?"left":"top",O-nt),Qe(v,xt?"width":"height",F),Qe(v,xt?"top":"left",xt?kt:Ot),Qe(v,xt?"height":"width",xt?_t:D),Cd(v,Sr)}else fi(v,Sr)}),Rr=Ps=Cr=W=rt=tt=et=Nt=R=null,Bt=1,Vo(!0),Ot!=St||kt!=ie||D!=Vt||_t!=jt){xe(!1);let v=D/Vt,A=_t/jt;if(yt&&!lt&&ot.left>=0){ot.left*=v,ot.top*=A,Ir&&ss(Ir,Sn(ot.left),0,D,_t),Lr&&ss(Lr,0,Sn(ot.top),D,_t);for(let F=0;F<me.length;F++){let O=me[F];O!=null&&(Ye[F]*=v,Hn[F]*=A,ss(O,bi(Ye[F]),bi(Hn[F]),D,_t))}}if(Je.show&&!dt&&Je.left>=0&&Je.width>0){Je.left*=v,Je.width*=v,Je.top*=A,Je.height*=A;for(let F in Vh)Qe(Fr,F,Je[F])}St=Ot,ie=kt,Vt=D,jt=_t}An("setSize"),Ct=!1}ft>0&&At>0&&(d.clearRect(0,0,h.width,h.height),An("drawClear"),b.forEach(v=>v()),An("draw")),Je.show&&dt&&(Ka(Je),dt=!1),yt&&lt&&(tr(null,!0,!1),lt=!1),at.show&&at.live&&Et&&(kh(),Et=!1),l||(l=!0,n.status=1,An("ready")),Cs=!1,on=!1}n.redraw=(v,A)=>{Pt=A||!1,v!==!1?Ls(w,L.min,L.max):On()};function Uh(v,A){let F=M[v];if(F.from==null){if(rn==0){let O=F.range(n,A.min,A.max,v);A.min=O[0],A.max=O[1]}if(A.min>A.max){let O=A.min;A.min=A.max,A.max=O}if(rn>1&&A.min!=null&&A.max!=null&&A.max-A.min<1e-16)return;v==w&&F.distr==2&&rn>0&&(A.min=Bi(A.min,t[0]),A.max=Bi(A.max,t[0]),A.min==A.max&&A.max++),V[v]=A,gt=!0,On()}}n.setScale=Uh;let Oh,Bh,Ir,Lr,sf,rf,Dr,Nr,of,af,Ze,tn,Is=!1,Ln=ot.drag,En=Ln.x,Tn=Ln.y;yt&&(ot.x&&(Oh=Si(Yb,p)),ot.y&&(Bh=Si(Zb,p)),L.ori==0?(Ir=Oh,Lr=Bh):(Ir=Bh,Lr=Oh),Ze=ot.left,tn=ot.top);let Je=n.select=_n({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Fr=Je.show?Si(qb,Je.over?p:f):null;function Ka(v,A){if(Je.show){for(let F in v)Je[F]=v[F],F in Vh&&Qe(Fr,F,v[F]);A!==!1&&An("setSelect")}}n.setSelect=Ka;function a_(v){if(y[v].show)Q&&Cd(Tt[v],Sr);else if(Q&&fi(Tt[v],Sr),yt){let F=Ut?me[0]:me[v];F!=null&&ss(F,-10,-10,D,_t)}}function Ls(v,A,F){Uh(v,{min:A,max:F})}function Gi(v,A,F,O){A.focus!=null&&d_(v),A.show!=null&&y.forEach((q,nt)=>{nt>0&&(v==nt||v==null)&&(q.show=A.show,a_(nt),s==2?(Ls(q.facets[0].scale,null,null),Ls(q.facets[1].scale,null,null)):Ls(q.scale,null,null),On())}),F!==!1&&An("setSeries",v,A),O&&Ho("setSeries",n,v,A)}n.setSeries=Gi;function l_(v,A){_n(P[v],A)}function c_(v,A){v.fill=Pe(v.fill||null),v.dir=Le(v.dir,-1),A=A??P.length,P.splice(A,0,v)}function h_(v){v==null?P.length=0:P.splice(v,1)}n.addBand=c_,n.setBand=l_,n.delBand=h_;function u_(v,A){y[v].alpha=A,yt&&me[v]!=null&&(me[v].style.opacity=A),Q&&Tt[v]&&(Tt[v].style.opacity=A)}let hs,Ds,Qs,Ur={focus:!0};function d_(v){if(v!=Qs){let A=v==null,F=qt.alpha!=1;y.forEach((O,q)=>{if(s==1||q>0){let nt=A||q==0||q==v;O._focus=A?null:nt,F&&u_(q,nt?1:qt.alpha)}}),Qs=v,F&&On()}}Q&&ae&&_e(ug,it,v=>{ot._lock||(oe(v),Qs!=null&&Gi(null,Ur,!0,pn.setSeries))});function Wi(v,A,F){let O=M[A];F&&(v=v/Ue-(O.ori==1?kt:Ot));let q=D;O.ori==1&&(q=_t,v=q-v),O.dir==-1&&(v=q-v);let nt=O._min,xt=O._max,wt=v/q,It=nt+(xt-nt)*wt,Gt=O.distr;return Gt==3?To(10,It):Gt==4?dw(It,O.asinh):Gt==100?O.bwd(It):It}function f_(v,A){let F=Wi(v,w,A);return Bi(F,t[0],cn,hn)}n.valToIdx=v=>Bi(v,t[0]),n.posToIdx=f_,n.posToVal=Wi,n.valToPos=(v,A,F)=>M[A].ori==0?r(v,M[A],F?j:D,F?N:0):o(v,M[A],F?Mt:_t,F?T:0),n.setCursor=(v,A,F)=>{Ze=v.left,tn=v.top,tr(null,A,F)};function lf(v,A){Qe(Fr,bo,Je.left=v),Qe(Fr,ka,Je.width=A)}function cf(v,A){Qe(Fr,"top",Je.top=v),Qe(Fr,za,Je.height=A)}let ko=L.ori==0?lf:cf,zo=L.ori==1?lf:cf;function p_(){if(Q&&at.live)for(let v=s==2?1:0;v<y.length;v++){if(v==0&&ne)continue;let A=at.values[v],F=0;for(let O in A)bt[v][F++].firstChild.nodeValue=A[O]}}function kh(v,A){if(v!=null&&(v.idxs?v.idxs.forEach((F,O)=>{$[O]=F}):gw(v.idx)||$.fill(v.idx),at.idx=$[0]),Q&&at.live){for(let F=0;F<y.length;F++)(F>0||s==1&&!ne)&&m_(F,$[F]);p_()}Et=!1,A!==!1&&An("setLegend")}n.setLegend=kh;function m_(v,A){let F=y[v],O=v==0&&k==2?ei:t[v],q;ne?q=F.values(n,v,A)??Zt:(q=F.value(n,A==null?null:O[A],v,A),q=q==null?Zt:{_:q}),at.values[v]=q}function tr(v,A,F){of=Ze,af=tn,[Ze,tn]=ot.move(n,Ze,tn),ot.left=Ze,ot.top=tn,yt&&(Ir&&ss(Ir,Sn(Ze),0,D,_t),Lr&&ss(Lr,0,Sn(tn),D,_t));let O,q=cn>hn;hs=Ge,Ds=null;let nt=L.ori==0?D:_t,xt=L.ori==1?D:_t;if(Ze<0||rn==0||q){O=ot.idx=null;for(let wt=0;wt<y.length;wt++){let It=me[wt];It!=null&&ss(It,-10,-10,D,_t)}ae&&Gi(null,Ur,!0,v==null&&pn.setSeries),at.live&&($.fill(O),Et=!0)}else{let wt,It,Gt;s==1&&(wt=L.ori==0?Ze:tn,It=Wi(wt,w),O=ot.idx=Bi(It,t[0],cn,hn),Gt=z(t[0][O],L,nt,0));let Wt=-10,Xt=-10,de=0,De=0,Ie=!0,Te="",re="";for(let te=s==2?1:0;te<y.length;te++){let Ke=y[te],an=$[te],Rn=an==null?null:s==1?t[te][an]:t[te][1][an],He=ot.dataIdx(n,te,O,It),ln=He==null?null:s==1?t[te][He]:t[te][1][He];if(Et=Et||ln!=Rn||He!=an,$[te]=He,te>0&&Ke.show){let ni=He==null?-10:He==O?Gt:z(s==1?t[0][He]:t[te][0][He],L,nt,0),Wn=ln==null?-10:I(ln,s==1?M[Ke.scale]:M[Ke.facets[1].scale],xt,0);if(ae&&ln!=null){let gi=L.ori==1?Ze:tn,Ei=bn(qt.dist(n,te,He,Wn,gi));if(Ei<hs){let $i=qt.bias;if($i!=0){let ii=Wi(gi,Ke.scale),_i=ln>=0?1:-1,Ti=ii>=0?1:-1;Ti==_i&&(Ti==1?$i==1?ln>=ii:ln<=ii:$i==1?ln<=ii:ln>=ii)&&(hs=Ei,Ds=te)}else hs=Ei,Ds=te}}if(Et||Ut){let gi,Ei;L.ori==0?(gi=ni,Ei=Wn):(gi=Wn,Ei=ni);let $i,ii,_i,Ti,Xi,$n,si=!0,er=vt.bbox;if(er!=null){si=!1;let Xn=er(n,te);_i=Xn.left,Ti=Xn.top,$i=Xn.width,ii=Xn.height}else _i=gi,Ti=Ei,$i=ii=vt.size(n,te);if($n=vt.fill(n,te),Xi=vt.stroke(n,te),Ut)te==Ds&&hs<=qt.prox&&(Wt=_i,Xt=Ti,de=$i,De=ii,Ie=si,Te=$n,re=Xi);else{let Xn=me[te];Xn!=null&&(Ye[te]=_i,Hn[te]=Ti,xg(Xn,$i,ii,si),gg(Xn,$n,Xi),ss(Xn,bi(_i),bi(Ti),D,_t))}}}}if(Ut){let te=qt.prox,Ke=Qs==null?hs<=te:hs>te||Ds!=Qs;if(Et||Ke){let an=me[0];an!=null&&(Ye[0]=Wt,Hn[0]=Xt,xg(an,de,De,Ie),gg(an,Te,re),ss(an,bi(Wt),bi(Xt),D,_t))}}}if(Je.show&&Is)if(v!=null){let[wt,It]=pn.scales,[Gt,Wt]=pn.match,[Xt,de]=v.cursor.sync.scales,De=v.cursor.drag;if(En=De._x,Tn=De._y,En||Tn){let{left:Ie,top:Te,width:re,height:te}=v.select,Ke=v.scales[Xt].ori,an=v.posToVal,Rn,He,ln,ni,Wn,gi=wt!=null&&Gt(wt,Xt),Ei=It!=null&&Wt(It,de);gi&&En?(Ke==0?(Rn=Ie,He=re):(Rn=Te,He=te),ln=M[wt],ni=z(an(Rn,Xt),ln,nt,0),Wn=z(an(Rn+He,Xt),ln,nt,0),ko(ki(ni,Wn),bn(Wn-ni))):ko(0,nt),Ei&&Tn?(Ke==1?(Rn=Ie,He=re):(Rn=Te,He=te),ln=M[It],ni=I(an(Rn,de),ln,xt,0),Wn=I(an(Rn+He,de),ln,xt,0),zo(ki(ni,Wn),bn(Wn-ni))):zo(0,xt)}else Hh()}else{let wt=bn(of-sf),It=bn(af-rf);if(L.ori==1){let de=wt;wt=It,It=de}En=Ln.x&&wt>=Ln.dist,Tn=Ln.y&&It>=Ln.dist;let Gt=Ln.uni;Gt!=null?En&&Tn&&(En=wt>=Gt,Tn=It>=Gt,!En&&!Tn&&(It>wt?Tn=!0:En=!0)):Ln.x&&Ln.y&&(En||Tn)&&(En=Tn=!0);let Wt,Xt;En&&(L.ori==0?(Wt=Dr,Xt=Ze):(Wt=Nr,Xt=tn),ko(ki(Wt,Xt),bn(Xt-Wt)),Tn||zo(0,xt)),Tn&&(L.ori==1?(Wt=Dr,Xt=Ze):(Wt=Nr,Xt=tn),zo(ki(Wt,Xt),bn(Xt-Wt)),En||ko(0,nt)),!En&&!Tn&&(ko(0,0),zo(0,0))}if(Ln._x=En,Ln._y=Tn,v==null){if(F){if(vf!=null){let[wt,It]=pn.scales;pn.values[0]=wt!=null?Wi(L.ori==0?Ze:tn,wt):null,pn.values[1]=It!=null?Wi(L.ori==1?Ze:tn,It):null}Ho(Md,n,Ze,tn,D,_t,O)}if(ae){let wt=F&&pn.setSeries,It=qt.prox;Qs==null?hs<=It&&Gi(Ds,Ur,!0,wt):hs>It?Gi(null,Ur,!0,wt):Ds!=Qs&&Gi(Ds,Ur,!0,wt)}}Et&&(at.idx=O,kh()),A!==!1&&An("setCursor")}let Ns=null;Object.defineProperty(n,"rect",{get(){return Ns==null&&Vo(!1),Ns}});function Vo(v=!1){v?Ns=null:(Ns=p.getBoundingClientRect(),An("syncRect",Ns))}function hf(v,A,F,O,q,nt,xt){ot._lock||Is&&v!=null&&v.movementX==0&&v.movementY==0||(zh(v,A,F,O,q,nt,xt,!1,v!=null),v!=null?tr(null,!0,!0):tr(A,!0,!1))}function zh(v,A,F,O,q,nt,xt,wt,It){if(Ns==null&&Vo(!1),oe(v),v!=null)F=v.clientX-Ns.left,O=v.clientY-Ns.top;else{if(F<0||O<0){Ze=-10,tn=-10;return}let[Gt,Wt]=pn.scales,Xt=A.cursor.sync,[de,De]=Xt.values,[Ie,Te]=Xt.scales,[re,te]=pn.match,Ke=A.axes[0].side%2==1,an=L.ori==0?D:_t,Rn=L.ori==1?D:_t,He=Ke?nt:q,ln=Ke?q:nt,ni=Ke?O:F,Wn=Ke?F:O;if(Ie!=null?F=re(Gt,Ie)?a(de,M[Gt],an,0):-10:F=an*(ni/He),Te!=null?O=te(Wt,Te)?a(De,M[Wt],Rn,0):-10:O=Rn*(Wn/ln),L.ori==1){let gi=F;F=O,O=gi}}It&&(A==null||A.cursor.event.type==Md)&&((F<=1||F>=D-1)&&(F=vr(F,D)),(O<=1||O>=_t-1)&&(O=vr(O,_t))),wt?(sf=F,rf=O,[Dr,Nr]=ot.move(n,F,O)):(Ze=F,tn=O)}let Vh={width:0,height:0,left:0,top:0};function Hh(){Ka(Vh,!1)}let uf,df,ff,pf;function mf(v,A,F,O,q,nt,xt){Is=!0,En=Tn=Ln._x=Ln._y=!1,zh(v,A,F,O,q,nt,xt,!0,!1),v!=null&&(_e(Sd,Ad,gf,!1),Ho(cg,n,Dr,Nr,D,_t,null));let{left:wt,top:It,width:Gt,height:Wt}=Je;uf=wt,df=It,ff=Gt,pf=Wt}function gf(v,A,F,O,q,nt,xt){Is=Ln._x=Ln._y=!1,zh(v,A,F,O,q,nt,xt,!1,!0);let{left:wt,top:It,width:Gt,height:Wt}=Je,Xt=Gt>0||Wt>0,de=uf!=wt||df!=It||ff!=Gt||pf!=Wt;if(Xt&&de&&Ka(Je),Ln.setScale&&Xt&&de){let De=wt,Ie=Gt,Te=It,re=Wt;if(L.ori==1&&(De=It,Ie=Wt,Te=wt,re=Gt),En&&Ls(w,Wi(De,w),Wi(De+Ie,w)),Tn)for(let te in M){let Ke=M[te];te!=w&&Ke.from==null&&Ke.min!=Ge&&Ls(te,Wi(Te+re,te),Wi(Te,te))}Hh()}else ot.lock&&(ot._lock=!ot._lock,tr(A,!0,v!=null));v!=null&&(nn(Sd,Ad),Ho(Sd,n,Ze,tn,D,_t,null))}function g_(v,A,F,O,q,nt,xt){if(ot._lock)return;oe(v);let wt=Is;if(Is){let It=!0,Gt=!0,Wt=10,Xt,de;L.ori==0?(Xt=En,de=Tn):(Xt=Tn,de=En),Xt&&de&&(It=Ze<=Wt||Ze>=D-Wt,Gt=tn<=Wt||tn>=_t-Wt),Xt&&It&&(Ze=Ze<Dr?0:D),de&&Gt&&(tn=tn<Nr?0:_t),tr(null,!0,!0),Is=!1}Ze=-10,tn=-10,$.fill(null),tr(null,!0,!0),wt&&(Is=wt)}function _f(v,A,F,O,q,nt,xt){ot._lock||(oe(v),Bo(),Hh(),v!=null&&Ho(dg,n,Ze,tn,D,_t,null))}function xf(){E.forEach(L1),G(n.width,n.height,!0)}br(fh,Eo,xf);let Or={};Or.mousedown=mf,Or.mousemove=hf,Or.mouseup=gf,Or.dblclick=_f,Or.setSeries=(v,A,F,O)=>{let q=pn.match[2];F=q(n,A,F),F!=-1&&Gi(F,O,!0,!1)},yt&&(_e(cg,p,mf),_e(Md,p,hf),_e(hg,p,v=>{oe(v),Vo(!1)}),_e(ug,p,g_),_e(dg,p,_f),Fd.add(n),n.syncRect=Vo);let ja=n.hooks=i.hooks||{};function An(v,A,F){Gn?Ve.push([v,A,F]):v in ja&&ja[v].forEach(O=>{O.call(null,n,A,F)})}(i.plugins||[]).forEach(v=>{for(let A in v.hooks)ja[A]=(ja[A]||[]).concat(v.hooks[A])});let yf=(v,A,F)=>F,pn=_n({key:null,setSeries:!1,filters:{pub:bg,sub:bg},scales:[w,y[1]?y[1].scale:null],match:[wg,wg,yf],values:[null,null]},ot.sync);pn.match.length==2&&pn.match.push(yf),ot.sync=pn;let vf=pn.key,Gh=v0(vf);function Ho(v,A,F,O,q,nt,xt){pn.filters.pub(v,A,F,O,q,nt,xt)&&Gh.pub(v,A,F,O,q,nt,xt)}Gh.sub(n);function __(v,A,F,O,q,nt,xt){pn.filters.sub(v,A,F,O,q,nt,xt)&&Or[v](null,A,F,O,q,nt,xt)}n.pub=__;function x_(){Gh.unsub(n),Fd.delete(n),Me.clear(),Pd(fh,Eo,xf),c.remove(),it?.remove(),An("destroy")}n.destroy=x_;function Wh(){An("init",i,t),Oo(t||i.data,!1),V[w]?Uh(w,V[w]):Bo(),dt=Je.show&&(Je.width>0||Je.height>0),lt=Et=!0,G(i.width,i.height)}return y.forEach(Ar),E.forEach(os),e?e instanceof HTMLElement?(e.appendChild(c),Wh()):e(n,Wh):Wh(),n}wn.assign=_n;wn.fmtNum=Hd;wn.rangeNum=ph;wn.rangeLog=_h;wn.rangeAsinh=zd;wn.orient=Er;wn.pxRatio=Ue;wn.join=bw;wn.fmtDate=Wd,wn.tzDate=Nw;wn.sync=v0;{wn.addGap=g1,wn.clipGaps=vh;let i=wn.paths={points:T0};i.linear=R0,i.stepped=y1,i.bars=v1,i.spline=S1}function D1(i,t){let e=[],n=[],s=new Map,r="",o="";for(let[l,c]of i.entries()){let h=(c.charts??[]).find(u=>u.id===t);if(!h)continue;r=h.title,o=h.unit;let d=[Array.from(qi(c.time))];for(let u of[...h.series].sort((f,p)=>(p.shown!==!1)-(f.shown!==!1)))s.has(u.name)||s.set(u.name,s.size);for(let u of h.series)d.push(Array.from(qi(u.data),f=>f===f?f:null)),n.push({...u,record:l,label:c.label,colour:s.get(u.name)});e.push(d)}let a=e.length>1?wn.join(e,e.map(l=>l.map(()=>1))):e[0];return{id:t,title:r,unit:o,series:n,columns:a}}var $a=(i,t)=>t?i.record:Math.floor(i.colour/Jh),N1=i=>[...new Set(i.flatMap(t=>(t.charts??[]).map(e=>e.id)))];function L0(i,t){let e=i.length>1,{duration:n}=t.state,s=wn.sync("curves"),r=[],o=S("div",{class:"curves"}),a=[[],[7,4],[2,3],[10,3,2,3]],l=!1,c=S("button",{type:"button",id:"zoom-out",hidden:!0,on:{click:()=>h(0,n)}},"Show the whole run");function h(x,g){l=!0;for(let{plot:_}of r)_.setScale("x",{min:x,max:g});l=!1,c.hidden=x<=0&&g>=n,u()}for(let x of N1(i)){let g=D1(i,x),_=S("div",{class:"chart-plot"}),y=S("div",{class:"chart-legend"}),E=S("span",{class:"chart-time"}),M=S("figure",{class:"chart","data-chart":x},S("figcaption",{},S("span",{},ht(g.title),g.unit&&S("span",{class:"muted"},` [${g.unit}]`)),E),_,y);o.append(M);let P=C=>({stroke:()=>sr("--ink-soft"),grid:{stroke:()=>sr("--grid"),width:1},ticks:{stroke:()=>sr("--grid"),width:1,size:4},font:"11px system-ui, sans-serif",...C}),w=new wn({width:400,height:190,legend:{show:!1},padding:[8,18,0,0],scales:{x:{time:!1,range:(C,L,k)=>[L,Math.max(k,L+1e-6)]}},axes:[P({size:26,space:60,values:(C,L)=>L.map((k,z)=>(L.length-1,`${+k.toPrecision(6)} s`))}),P({size:48,space:30,values:(C,L)=>L.map(k=>String(+k.toPrecision(6)).replace("-","\u2212"))})],series:[{},...g.series.map(C=>({label:C.name,show:C.shown!==!1,stroke:()=>Vr(C.colour),width:1.6,dash:a[$a(C,e)%a.length],spanGaps:e,points:{show:!1}}))],cursor:{sync:{key:s.key,setSeries:!1},drag:{x:!0,y:!1,dist:5},y:!1,points:{size:6}},hooks:{setScale:[(C,L)=>{L==="x"&&!l&&r.length&&h(C.scales.x.min,C.scales.x.max)}],setCursor:[()=>f()]}},g.columns,_),m=S("div",{class:"time-cursor"},S("span",{class:"time-grip"}));w.over.append(m);let b=g.series.map((C,L)=>{let k=S("span",{class:"figure"}),z=S("span",{class:"swatch-line","data-dash":$a(C,e)}),I=S("button",{type:"button",class:"series","aria-pressed":String(C.shown!==!1),title:C.description||C.name,on:{click:()=>{let V=!w.series[L+1].show;w.setSeries(L+1,{show:V}),I.setAttribute("aria-pressed",String(V)),f()}}},z,e?`${C.label} `:"",ht(C.name),k);return y.append(I),{value:k,swatch:z,colour:C.colour}});if(b.length>8&&g.series.some(C=>C.shown===!1)){y.classList.add("folded");let C=S("button",{type:"button",class:"more","aria-expanded":"false",on:{click:()=>{let L=y.classList.toggle("folded");C.setAttribute("aria-expanded",String(!L)),C.textContent=L?`all ${b.length} curves`:"fewer"}}},`all ${b.length} curves`);y.append(C)}let U={id:x,plot:w,group:g,figure:M,hand:m,entries:b,note:E,holder:_,time:NaN};r.push(U),U1(w,m,t),new ResizeObserver(()=>{let C=Math.floor(_.clientWidth);C>50&&C!==w.width&&(w.setSize({width:C,height:w.height}),u())}).observe(_)}function d(){for(let{plot:x,entries:g}of r){for(let _ of g)_.swatch.style.color=Vr(_.colour);x.redraw(!1)}}xi(d);function u(){let{time:x}=t.state;for(let{plot:g,hand:_,figure:y}of r){let{min:E,max:M}=g.scales.x,P=x>=E-1e-9&&x<=M+1e-9;_.hidden=!P,P&&(_.style.transform=`translateX(${g.valToPos(x,"x").toFixed(2)}px)`),$e(y,"data-time",x.toFixed(6))}}function f(){for(let{plot:x,group:g,entries:_,note:y}of r){let E=x.cursor.left>=0&&x.cursor.idx!==null&&x.cursor.idx!==void 0,M=g.columns[0],P=E?M[x.cursor.idx]:t.state.time;Cn(y,E?`mouse: ${Dn(P,n)}`:Dn(P,n));for(let[w,m]of _.entries()){if(!x.series[w+1].show){Cn(m.value,"");continue}let b=E&&!e?g.columns[w+1][x.cursor.idx]:F1(M,g.columns[w+1],P);Cn(m.value,b==null?"\u2013":`${Xe(b)} ${g.unit}`.trim())}}}let p=0;return t.listen(({playing:x})=>{u();let g=performance.now();x&&g-p<100||(p=g,f())}),d(),{box:o,reset:c,charts:r}}function F1(i,t,e){let n=0,s=i.length-1;for(;n<s;){let a=n+s+1>>1;i[a]<=e?n=a:s=a-1}let r=n,o=Math.min(n+1,i.length-1);for(;r>0&&t[r]===void 0;)--r;for(;o<i.length-1&&t[o]===void 0;)++o;return t[r]===null||t[r]===void 0?null:t[o]===null||t[o]===void 0||i[o]<=i[r]?t[r]:t[r]+(t[o]-t[r])*Math.min(Math.max((e-i[r])/(i[o]-i[r]),0),1)}function U1(i,t,e){let{over:n}=i,s=l=>i.posToVal(l.clientX-n.getBoundingClientRect().left,"x"),r=l=>{e.seek(s(l))};n.style.touchAction="pan-y";let o=null;n.addEventListener("pointerdown",l=>{o={x:l.clientX,touch:l.pointerType!=="mouse"}}),n.addEventListener("pointermove",l=>{o?.touch&&r(l)}),n.addEventListener("pointerup",l=>{o&&Math.abs(l.clientX-o.x)<4&&r(l),o=null}),n.addEventListener("pointercancel",()=>{o=null});let a=t.firstChild;a.addEventListener("mousedown",l=>l.stopPropagation()),a.addEventListener("pointerdown",l=>{l.stopPropagation(),l.preventDefault(),a.setPointerCapture(l.pointerId)}),a.addEventListener("pointermove",l=>{a.hasPointerCapture(l.pointerId)&&(l.stopPropagation(),r(l))}),a.addEventListener("pointerup",l=>l.stopPropagation()),a.addEventListener("click",l=>l.stopPropagation())}var rs=150,Kd=34,jd=i=>i>=.0995?`${(100*i).toFixed(0)} %`:`${Xe(100*i,2)} %`;function O1(i,t,e){let n=Math.max(t,1.2),s=i,r=i-n,o=n+6,a=n+12,l=rs+Kd-14,c=`M${r} 0A${o} ${o} 0 0 0 ${r+o} ${o}H${l}v6l13 ${-(n/2+6)}l-13 ${-(n/2+6)}v6H${s+6}A6 6 0 0 1 ${s} 0Z`;return ut("svg",{class:`branch ${e}`,width:rs+Kd,height:a,viewBox:`0 0 ${rs+Kd} ${a}`,"aria-hidden":"true"},ut("path",{d:c}))}function B1(i,t){let e=(i??[]).filter(n=>n.share>0).sort((n,s)=>s.share-n.share);return e.length?S("ul",{class:"parts"},e.map(n=>S("li",{},ht(n.name)," ",S("span",{class:"figure"},jd(n.share))))):null}function k1(i){let{unit:t,total:e}=i,n=(o,a,l)=>{let c=Math.max(o.share,0)*rs;return S("div",{class:`flow-row ${l}`,style:{"--least":`${Math.ceil(c)+26}px`,"--drop":`${Math.max(c/2-5,0).toFixed(1)}px`}},S("div",{class:"stream-cell"},S("div",{class:"stream",style:{width:`${Math.max(a-c,0).toFixed(2)}px`}}),O1(a,c,l)),S("div",{class:"flow-text"},S("p",{},S("b",{},ht(o.name))," ",S("span",{class:"figure"},jd(o.share))," ",S("span",{class:"figure muted"},`${Xe(o.value,3)} ${t}`)),B1(o.parts,t)))},s=[],r=rs;for(let o of i.flows??[])o.share>0&&(s.push(n(o,r,"loss")),r-=o.share*rs);for(let o of i.useful??[])o.share>0&&(s.push(n(o,r,"useful")),r-=o.share*rs);return Math.abs(r)>.005*rs&&s.push(S("p",{class:"muted"},`The parts named do not add up to the whole: ${jd(Math.abs(r)/rs)} ${r>0?"is missing":"too much"}.`)),S("div",{class:"flow"},S("div",{class:"flow-row source"},S("div",{class:"stream-cell"},S("div",{class:"stream",style:{width:`${rs}px`}})),S("div",{class:"flow-text"},S("p",{},S("b",{},"from the supply")," ",S("span",{class:"figure"},"100 %")," ",S("span",{class:"figure muted"},`${Xe(e,4)} ${t}`)))),s)}function D0(i,t){let{records:e}=t,n=e.length>1;e.some(s=>s.losses)&&i.section("losses","Where the energy goes",S("div",{class:n?"columns":""},e.map(s=>S("div",{},n&&kr(s),s.losses?[S("p",{class:"lead"},ht(s.losses.title)),k1(s.losses)]:S("p",{class:"muted"},"This run draws nothing from a supply, so there is no energy to follow.")))))}var Qd=12,wh=40;function z1(i){let t=new Map;return i.forEach((e,n)=>{for(let s of e.margins?.values??[]){t.has(s.name)||t.set(s.name,{check:s.check,least:1/0,of:[]});let r=t.get(s.name);r.of[n]=s,r.least=Math.min(r.least,s.ratio)}}),[...t.values()].sort((e,n)=>e.least-n.least)}function V1(i,t){let e=new Map;for(let n of i){let s=t.find(l=>n.of.some(c=>c?.name.includes(`${l}.`))),o=s?{...JSON.parse((l=>l.replaceAll(`${s}.`,""))(JSON.stringify(n))),least:n.least}:n,a=s?JSON.stringify([o.check,o.of.map(l=>l&&{...l,name:"",ratio:0})]):n.check;e.has(a)||e.set(a,{row:n,plain:o,of:[]}),s&&e.get(a).of.push(s)}return[...e.values()].map(({row:n,plain:s,of:r})=>r.length>1?{...s,fingers:r}:n)}function H1(i,t){let e=new Map;for(let n of i){let s=t.find(r=>n.of.some(o=>o?.name.includes(`${r}.`)))??"palm and what all share";e.has(s)||e.set(s,n)}return[...t,"palm and what all share"].filter(n=>e.has(n)).map(n=>({whose:n,row:e.get(n)}))}function G1(i){let t=[],e=(n,s)=>["time","load","posture","lost_at","lost_load"].every(r=>n[r]===s[r]);return i.forEach((n,s)=>{if(!n)return;let r=t.find(o=>e(o.value,n));r?r.of.push(s):t.push({value:n,of:[s]})}),t}function N0(i,t,e){let{records:n}=t,s=n.length>1,r=[...new Set(n.flatMap(y=>y.fingers??[]))],o=z1(n),a=r.length?V1(o,r):o,{duration:l}=e.state,c=n.flatMap(y=>(y.margins?.not_checked??[]).map(E=>({...E,label:y.label}))),h=(y,E)=>[...new Map(y.map(M=>[E(M),M])).values()],d=h(c,y=>y.check+"|"+(y.missing??[]).join()),u=h(n.flatMap(y=>y.margins?.cautions??[]),y=>y),f=h(n.flatMap(y=>y.margins?.unloaded??[]),y=>y),p=y=>S("td",{class:"margin-cell"},y.of.map((E,M)=>E&&S("div",{class:"bar-line"},s&&S("span",{class:"record-letter"},n[M].label),el(E.ratio),S("span",{class:`figure ${E.ratio<1?"short":""}`},ht(E.ratio_text))))),x=a.map((y,E)=>S("tr",{class:`${y.least<1?"missed":""} ${E>=Qd?"later":""} ${r.length&&E>=wh?"only-screen":""}`},S("td",{class:"figure number-cell"},E+1),S("th",{scope:"row"},ht(y.check),y.fingers&&S("span",{class:"muted"},` of ${y.fingers.join(", ")}`)),p(y),S("td",{class:"figure"},y.of.map(M=>M&&S("div",{class:"pair"},ht(M.capacity),S("span",{class:"muted"}," / "),ht(M.demand)))),S("td",{},G1(y.of).map(({value:M,of:P})=>S("div",{class:"governs"},s&&P.map(w=>[S("span",{class:"record-letter"},n[w].label)," "]),Number.isFinite(M.time)&&Br(e,M.time,Dn(M.time,l))," ",S("span",{class:"small"},ht(M.load),M.posture?S("span",{class:"muted posture"}," \xB7 ",ht(M.posture)):""),M.lost_at!==null&&Number.isFinite(M.lost_at)&&S("div",{class:"lost"},oi("bad")," falls below 1 at ",Br(e,M.lost_at,Dn(M.lost_at,l))," ",S("span",{class:"small"},ht(M.lost_load??"")))))))),g=a.length?Bn(["","what could fail","margin","capacity / demand","governed at, by"],x,{class:"margins short",label:"margins"}):S("p",{class:"muted"},"The record holds no margins."),_=a.length>Qd&&S("button",{type:"button",class:"more controls","aria-expanded":"false",on:{click:()=>{let y=g.querySelector("table").classList.toggle("short");_.textContent=y?`Show all ${a.length} margins`:`Show the ${Qd} smallest`,_.setAttribute("aria-expanded",String(!y))}}},`Show all ${a.length} margins`);return i.section("margins","Margins: what breaks first",S("p",{class:"lead"},"How many times over each part would bear what the run asked of it, at the worst instant of the run. Below 1 it fails. Bars on a logarithmic axis from 0.5 to 20, starting at 1; smallest first."),r.length>0&&o.length>0&&[Bn(["smallest of","margin","what could fail"],H1(o,r).map(({whose:y,row:E})=>S("tr",{class:E.least<1?"missed":""},S("th",{scope:"row"},ht(y)),p(E),S("td",{},ht(E.check)))),{class:"by-finger",label:"smallest margin of each finger"}),S("h4",{class:"sub"},"All margins, like parts of several fingers in one row")],g,_,r.length>0&&a.length>wh&&S("p",{class:"only-print small"},`${a.length-wh} more rows, none below ${a[wh].of.find(Boolean).ratio_text}, are in the HTML file and in the record.`),S("div",{class:"not-checked"},S("h3",{},oi("unknown")," Not checked"),d.length?[S("p",{},`${d.length===1?"This check was":`These ${d.length} checks were`} not made, because the model lacks the data. Nothing is known about them: they are not safe, they are unknown.`),S("ul",{},d.map(y=>S("li",{},ht(y.check),y.missing?.length?S("span",{class:"muted"}," \u2014 needs ",y.missing.map((E,M)=>[M?", ":"",ht(E)])):"")))]:S("p",{},a.length?"Every check that the program knows of had the data it needs. Failures that it does not know of are not covered.":"No part was checked in this record.")),f.length>0&&S("details",{},S("summary",{},`Never loaded in this run (${f.length})`),S("p",{class:"small"},f.map((y,E)=>[E?" \xB7 ":"",ht(y)]))),u.length>0&&S("div",{class:"caution-list"},S("h3",{},"Cautions about the margins"),S("ul",{},u.map(y=>S("li",{},ht(y))))))}function W1(i){if((i.axes??[]).length!==1)return null;let t=i.rows.filter(p=>p.found!==!1&&Number.isFinite(p.value)).map(p=>({x:parseFloat(p.place[0]),y:p.value})).filter(p=>Number.isFinite(p.x)).sort((p,x)=>p.x-x.x);if(t.length<2)return null;let e=420,n=200,s=50,r=36,o=10,a=14,l=t.map(p=>p.x),c=Math.min(...l),h=Math.max(...l),d=1.1*Math.max(...t.map(p=>p.y),1e-12);if(!(h>c))return null;let u=p=>s+(p-c)/(h-c)*(e-s-a),f=p=>n-r-p/d*(n-r-o);return ut("svg",{class:"limit-chart",viewBox:`0 0 ${e} ${n}`,width:e,height:n,role:"img","aria-label":`${i.name} over ${i.axes[0].name}`},ut("path",{class:"grid",d:[0,.25,.5,.75,1].map(p=>`M${s} ${f(p*d/1.1)}H${e-a}`).join("")}),[0,.5,1].map(p=>ut("text",{x:s-6,y:f(p*d/1.1)+4,"text-anchor":"end"},Xe(p*d/1.1,3))),t.map(p=>ut("text",{x:u(p.x),y:n-r+15,"text-anchor":"middle"},String(p.x))),ut("text",{x:(s+e-a)/2,y:n-4,"text-anchor":"middle"},i.axes[0].name),ut("path",{class:"line",d:t.map((p,x)=>`${x?"L":"M"}${u(p.x)} ${f(p.y)}`).join("")}),t.map(p=>ut("circle",{cx:u(p.x),cy:f(p.y),r:3})))}var F0=i=>i.plane?`, round the plane of ${i.plane.map(t=>t.replace(/^[+−]/,"")).join(" and ")}: 0\xB0 along ${i.plane[0]}, 90\xB0 along ${i.plane[1]}`:"";function $1(i){if(i.method!=="directions"||!i.in_plane)return null;let t=i.axes[i.axes.length-1].values.length,e=i.rows.filter(x=>x.found!==!1&&Number.isFinite(x.value));if(!e.length)return null;let n=340,s=112,r=n/2,o=1.08*Math.max(...e.map(x=>x.value),1e-12),a=(x,g)=>[r+g/o*s*Math.cos(2*Math.PI*x/t),r-g/o*s*Math.sin(2*Math.PI*x/t)],l=x=>`M${r+x} ${r}A${x} ${x} 0 1 0 ${r-x} ${r}A${x} ${x} 0 1 0 ${r+x} ${r}`,c=x=>{let[g,_]=a(x,o);return`M${(g-4).toFixed(1)} ${(_+3).toFixed(1)}h8l-4 -7Z`},h=[ut("path",{class:"grid",d:[.25,.5,.75,1].map(x=>l(x*s)).join("")+[0,1,2,3].map(x=>`M${r} ${r}L${r+s*Math.cos(x*Math.PI/2)} ${r-s*Math.sin(x*Math.PI/2)}`).join("")})],d=x=>x.startsWith("+")?x.replace("+","\u2212"):x.replace("\u2212","+"),[u,f]=i.plane?.every(x=>!x.startsWith("("))?i.plane:["",""];for(let[x,g]of[`0\xB0 ${u}`,`90\xB0 ${f}`,`180\xB0 ${d(u)}`,`270\xB0 ${d(f)}`].entries())h.push(ut("text",{x:r+(s+10)*Math.cos(x*Math.PI/2),y:r+4-(s+14)*Math.sin(x*Math.PI/2),"text-anchor":["start","middle","end","middle"][x]},g.trim()));for(let x of[.5,1])h.push(ut("text",{x:r+x*s*Math.cos(1.25)+3,y:r-x*s*Math.sin(1.25),"text-anchor":"start"},Xe(x*o,2)));for(let x=0;x<i.rows.length;x+=t){let g=i.rows.slice(x,x+t),_=g.map((M,P)=>({row:M,k:P})).filter(({row:M})=>M.found!==!1&&Number.isFinite(M.value)),y="";for(let M=0;M<=t;++M){let P=g[M%t];if(P.found===!1||!Number.isFinite(P.value))continue;let w=M>0&&g[M-1].found!==!1&&Number.isFinite(g[M-1].value);y+=`${w?"L":"M"}${a(M,P.value).map(m=>m.toFixed(2)).join(" ")}`}h.push(ut("path",{class:"line",d:y}));for(let{row:M,k:P}of _)h.push(ut("circle",{cx:a(P,M.value)[0],cy:a(P,M.value)[1],r:2.5}));h.push(ut("path",{class:"beyond",d:g.map((M,P)=>M.found===!1?c(P):"").join("")}));let E=_.reduce((M,P)=>P.row.value<M.row.value?P:M,_[0]);E&&h.push(ut("circle",{class:"worst",cx:a(E.k,E.row.value)[0],cy:a(E.k,E.row.value)[1],r:6}))}let p=x=>ut("svg",{class:"limit-chart",viewBox:"-8 -8 16 16",width:16,height:16,"aria-hidden":"true"},x);return S("figure",{class:"polar"},ut("svg",{class:"limit-chart",viewBox:`0 0 ${n} ${n}`,width:n,height:n,role:"img","aria-label":`${i.name}, by direction${F0(i)}`},h),S("figcaption",{class:"small muted"},S("p",{},`Distance from the middle: ${i.quantity} [${i.unit}]${F0(i)}.`),S("p",{class:"design-legend"},S("span",{class:"legend-entry"},p(ut("circle",{class:"worst",r:6})),"the worst"),i.rows.some(x=>x.found===!1)&&S("span",{class:"legend-entry"},p(ut("path",{class:"beyond",d:"M-4 3h8l-4 -7Z"})),"holds all that was tried"))))}function U0(i,t){t.limits?.length&&i.section("limits","Limits",t.limits.map(e=>S("div",{class:"limit"},S("h3",{},ht(e.name)),S("p",{class:"lead"},ht(e.quantity),e.unit?` [${e.unit}]`:"",e.method?S("span",{class:"muted"},", found by ",ht(e.method)):""),S("div",{class:"limit-body"},Bn([...(e.axes??[]).map(n=>ht(n.name)),"limit","error",e.method==="directions"?"the finger that gives first":"remark"],e.rows.map(n=>S("tr",{class:n.found===!1&&e.method!=="directions"?"missed":""},(n.place??[]).map(s=>S("td",{class:"figure nowrap"},ht(s))),S("td",{class:"figure nowrap"},S("b",{},ht(n.text))),S("td",{class:"figure nowrap"},ht(n.error_text)),S("td",{class:"small"},ht([n.gave,n.note].filter(Boolean).join("; "))))),{label:`limit ${e.name}`}),$1(e)??W1(e)))))}function X1(i,t,e){let n=(t-i)/Math.max(1,e);if(!(n>0)||!Number.isFinite(n))return[i];let s=10**Math.floor(Math.log10(n)),r=s*([1,2,5,10].find(a=>a*s>=n*.999)??10),o=[];for(let a=Math.ceil(i/r-1e-9);a*r<=t+1e-9*r;++a)o.push(+(a*r).toPrecision(12));return o}function Do(i,t=[]){let e=1/0,n=-1/0;for(let a of i)Number.isFinite(a)&&(a<e&&(e=a),a>n&&(n=a));let s=n-e;for(let{value:a}of t){let l=Math.min(e,a),c=Math.max(n,a);(!(s>0)||s>=.25*(c-l))&&(e=l,n=c)}if(!(e<=n))return{low:0,high:1};let r=Math.max(Math.abs(e),Math.abs(n)),o=r>0?.02*r:1;return n-e<o?{low:(e+n)/2-o,high:(e+n)/2+o}:{low:e-.07*(n-e),high:n+.07*(n-e)}}var Ks=i=>Math.min(i,Math.max(320,document.documentElement.clientWidth-44)),Eh=(i,t)=>i.length>t?`${i.slice(0,t-1)}\u2026`:i;function Tr({width:i=420,height:t=210,x:e,y:n,label:s,left:r=58,right:o=14,top:a=12,bottom:l=40,className:c=""}){let h=y=>r+(y-e.low)/(e.high-e.low)*(i-r-o),d=y=>t-l-(y-n.low)/(n.high-n.low)*(t-a-l),u=y=>y.format??(E=>ri(E)),f=(y,E)=>y.options?y.options.map((M,P)=>P):X1(y.low,y.high,E),p=f(e,(i-r-o)/80),x=f(n,(t-a-l)/40),g=e.options?Math.max(3,Math.floor((i-r-o)/e.options.length/7)):0;return{node:ut("svg",{class:`study-chart ${c}`,viewBox:`0 0 ${i} ${t}`,width:i,height:t,role:"img","aria-label":s},ut("path",{class:"grid",d:p.map(y=>`M${h(y).toFixed(1)} ${a}V${t-l}`).join("")+x.map(y=>`M${r} ${d(y).toFixed(1)}H${i-o}`).join("")}),p.map((y,E)=>ut("text",{x:h(y).toFixed(1),y:t-l+15,"text-anchor":"middle"},e.options?Eh(e.options[E],g):u(e)(y))),x.map((y,E)=>ut("text",{x:r-6,y:(d(y)+4).toFixed(1),"text-anchor":"end"},n.options?Eh(n.options[E],8):u(n)(y))),ut("text",{class:"axis-name",x:(r+i-o)/2,y:t-5,"text-anchor":"middle"},Eh(e.label??"",Math.floor((i-r-o)/6.4))),n.label&&ut("text",{class:"axis-name",transform:`translate(12 ${(a+t-l)/2}) rotate(-90)`,"text-anchor":"middle"},Eh(n.label,Math.floor((t-a-l+30)/6.4))),ut("path",{class:"frame",d:`M${r} ${a}V${t-l}H${i-o}`})),px:h,py:d,left:r,right:i-o,top:a,bottom:t-l,width:i,height:t}}function Xa(i,t,e,n){return(e??[]).map((s,r)=>{if(s.value<t.low||s.value>t.high)return null;let o=n?i.px(s.value):i.py(s.value),a=n?s.at_least?i.left:i.right:s.at_least?i.bottom:i.top,l=n?{x:Math.min(o,a),y:i.top,width:Math.abs(o-a),height:i.bottom-i.top}:{x:i.left,y:Math.min(o,a),width:i.right-i.left,height:Math.abs(o-a)},c=n?`M${o} ${i.top}V${i.bottom}`:`M${i.left} ${o}H${i.right}`,h=n?{x:o+(s.at_least?4:-4),y:i.top+10+12*r,"text-anchor":s.at_least?"start":"end"}:{x:i.right-3,y:o+(s.at_least?11:-4),"text-anchor":"end"};return[ut("rect",{class:"not-allowed",...l}),ut("path",{class:"bound",d:c}),ut("text",{class:"bound-text",...h},s.text)]})}var ti=i=>i.unit?`${i.title} [${i.unit}]`:i.title,O0=i=>`${ri(100*i)} %`,js=(i,t,...e)=>S("figure",{class:"study-figure"},S("figcaption",{},ht(i)),t,e);function B0(i,t,e){let{low:n,high:s,counts:r}=t.histogram;if(!r.length)return js(ti(i),S("p",{class:"muted small"},"No row has it."));let o=Number.isFinite(t.drawn)&&s-n>.25*(Math.max(s,t.drawn)-Math.min(n,t.drawn)),a={...Do(o?[n,s,t.drawn]:[n,s],i.bounds),label:ti(i)},l=Math.max(...r)/e,c=Tr({x:a,y:{low:0,high:1.2*l,format:u=>O0(u)},label:`spread of ${i.title}`,left:50}),h=s>n?(s-n)/r.length:.04*(a.high-a.low),d=s>n?n:n-h/2;return c.node.append(...Xa(c,a,i.bounds,!0).flat().filter(Boolean),...r.map((u,f)=>ut("rect",{class:"bar",x:c.px(d+h*f).toFixed(2),width:Math.max(.5,c.px(d+h)-c.px(d)-.6).toFixed(2),y:c.py(u/e).toFixed(2),height:(c.bottom-c.py(u/e)).toFixed(2)}))),Number.isFinite(t.drawn)&&t.drawn>a.low&&t.drawn<a.high&&c.node.append(ut("path",{class:"as-drawn",d:`M${c.px(t.drawn)} ${c.top}V${c.bottom}`})),js(i.title,c.node)}function k0(i,t){let e=qi(t.points),n=[];for(let h=0;h+4<e.length;h+=5)n.push(e.subarray(h,h+5));let s={low:n[0][0],high:n.at(-1)[0],label:`${ti(i)}: ${t.at_least?"at least":"at most"}`},r=Tr({x:s,y:{low:0,high:1.04,format:h=>O0(h)},label:`yield over the bound of ${i.title}`,left:50}),o=h=>n.map((d,u)=>`${u?"L":"M"}${r.px(d[0]).toFixed(1)} ${r.py(d[h]).toFixed(1)}`).join(""),a=[...n].reverse().map(h=>`L${r.px(h[0]).toFixed(1)} ${r.py(h[3]).toFixed(1)}`).join(""),l=r.px(t.value),c=l>(r.left+r.right)/2;return r.node.append(ut("path",{class:"band",d:`${o(4)}${a}Z`}),ut("path",{class:"alone",d:o(1)}),ut("path",{class:"all",d:o(2)}),ut("path",{class:"bound",d:`M${l} ${r.top}V${r.bottom}`}),ut("text",{class:"bound-text",x:l+(c?-4:4),y:r.bottom-8,"text-anchor":c?"end":"start"},t.text)),js(`Yield if the bound on ${i.title} stood elsewhere`,r.node)}function Th(i,{low:t,high:e,label:n,axis:s,textTitle:r}){let o=Ks(560),a=30,l=Math.min(150,o/3),c=14,h=6,d=34,u=h+a*i.length+d,f=Tr({width:o,height:u,left:l,right:c,top:h,bottom:d,x:{low:t,high:e,label:s},y:{low:0,high:1,options:[]},label:n}),p=x=>Math.min(Math.max(x,t),e);return i.forEach((x,g)=>{let _=h+a*g+3,y=(a-6)/x.bars.length;f.node.append(ut("text",{class:"row-name",x:l-6,y:h+a*g+a/2+4,"text-anchor":"end"},x.title.length>l/7.4?`${x.title.slice(0,Math.floor(l/7.4)-1)}\u2026`:x.title,ut("title",{},`${x.title}${r?`: ${r} `:": "}${x.text}`))),x.bars.forEach((E,M)=>{if(!Number.isFinite(E.value))return;let P=f.px(p(0)),w=f.px(p(E.value));if(f.node.append(ut("rect",{class:`bar ${E.kind}`,x:Math.min(P,w).toFixed(1),width:Math.max(.7,Math.abs(w-P)).toFixed(1),y:(_+y*M+.5).toFixed(1),height:(y-1).toFixed(1)})),Number.isFinite(E.low)&&Number.isFinite(E.high)){let m=_+y*(M+.5);f.node.append(ut("path",{class:"whisker",d:`M${f.px(p(E.low))} ${m}H${f.px(p(E.high))}M${f.px(p(E.low))} ${m-3}v6M${f.px(p(E.high))} ${m-3}v6`}))}})}),f.node}function z0(i,t){if(!t.keys.length)return js(i.title,S("p",{class:"muted"},ht(t.note),"."));let e=t.keys.flatMap(s=>[s.first,s.total]).flatMap(s=>[s.value,s.low,s.high]).filter(Number.isFinite),n=Th(t.keys.map(s=>({title:s.key,text:`by itself ${s.first.text}, in all ${s.total.text}`,bars:[{...s.first,kind:"first"},{...s.total,kind:"total"}]})),{low:Math.min(0,...e),high:Math.max(1,...e)*1.02,label:`shares of the variance of ${i.title}`,axis:"share of the variance"});return js(i.title,n,t.note&&S("p",{class:"small muted"},ht(t.note),"."))}function V0(i,t){let e=Math.max(...t.keys.map(s=>s.size??0));if(!(e>0))return js(i.title,S("p",{class:"muted"},"Does not change, or too few rows have it."));let n=Th(t.keys.map(s=>({title:s.key,text:`size ${s.texts[0]}, with sign ${s.texts[1]}, deviation ${s.texts[2]}`,bars:[{value:s.mean,kind:s.mean<0?"less":"more"},{value:s.mean<0?-s.size:s.size,kind:"size"}]})),{low:-1.05*e,high:1.05*e,label:`changes of ${i.title}`,axis:`change over the whole spread of a key${i.unit?` [${i.unit}]`:""}`});return js(i.title,n)}function H0(i,t,e,n){let s=e.rows.filter(p=>p.number<n),r=s.filter(p=>p.state<2).map(p=>p.values[i.place]),o=s.filter(p=>p.state===0).map(p=>p.values[i.place]),a=r.filter(Number.isFinite).sort((p,x)=>p-x),l=a.length?[a[Math.floor(.05*(a.length-1))],a[Math.ceil(.95*(a.length-1))]]:[],c={...Do([...o,...l,i.drawn]),label:`${ti(i)}, ${t.more?"more":"less"} is better`},h=Tr({width:Ks(1110),height:230,x:{low:-.01*n,high:1.01*n,label:"design, in the order of trying"},y:c,label:`search for ${i.title}`}),d=p=>p.values[i.place]>=c.low&&p.values[i.place]<=c.high,u=p=>p.map(x=>`M${h.px(x.number).toFixed(1)} ${h.py(x.values[i.place]).toFixed(1)}h0`).join(""),f=s.filter(p=>Number.isFinite(p.values[i.place])&&!d(p)).length;if(h.node.append(ut("path",{class:"dots missed",d:u(s.filter(p=>p.state===1&&d(p)))}),ut("path",{class:"dots met",d:u(s.filter(p=>p.state===0&&d(p)))})),Number.isFinite(i.drawn)&&h.node.append(ut("path",{class:"as-drawn",d:`M${h.left} ${h.py(i.drawn)}H${h.right}`})),t.steps.length){let p="";t.steps.forEach(([x,g],_)=>{p+=_?`H${h.px(x).toFixed(1)}V${h.py(g).toFixed(1)}`:`M${h.px(x).toFixed(1)} ${h.py(g).toFixed(1)}`}),h.node.append(ut("path",{class:"best-line",d:`${p}H${h.px(n).toFixed(1)}`}))}return js(ti(i),h.node,f>0&&S("p",{class:"small muted"},`${f} designs lie outside the frame.`))}var Ah=[["good","meets all"],["bad","misses a requirement"],["unknown","no valid model"],["unknown","could not go on"]],qa=50;function Ch(i){let t=i.rows.values.map(qi);return i.columns.forEach((e,n)=>{e.place=n}),{columns:i.columns,rows:i.rows.row.map((e,n)=>({number:e,state:i.rows.state[n],reason:i.rows.reasons[i.rows.reason[n]]??"",values:t.map(s=>s[n])}))}}var Ya=(i,t)=>Number.isNaN(t)?"\u2013":i.options?i.options[t]??"\u2013":Xe(t);function Rh(i,t,e,n){let s=S("select",{"aria-label":i,on:{change:()=>n(s.value)}},t.map(([r,o])=>S("option",{value:r,selected:String(r)===String(e)},o)));return S("label",{class:"field"},S("span",{class:"cell-title"},i),s)}function q1(i){let t=i.columns.filter(s=>s.role==="outcome"),e=i.goals.map(s=>t[s.outcome]),n=i.columns.filter(s=>s.role==="key");return e.length>1?[e[0].place,e[1].place]:[(n.find(s=>!s.options)??n[0]).place,(e[0]??t[0]).place]}function G0(i,t){let e=Ch(i),n=new Set(i.best),[s,r]=q1(i),o=e.rows.some(Z=>Z.number>=i.designs),a={x:s,y:r,colour:-1,state:"all",text:"",low:[NaN,NaN],high:[NaN,NaN],sort:-1,down:!1,shown:qa,picked:null},l=Z=>e.columns[Z],c=Z=>{if((a.state==="made"?Z.number<i.designs:o&&Z.number>=i.designs)||a.state==="best"&&!n.has(Z.number)||a.state==="met"&&Z.state!==0||a.state==="missed"&&Z.state!==1||a.state==="broken"&&Z.state<2)return!1;for(let[st,pt]of[a.x,a.y].entries())if(a.low[st]>Z.values[pt]||a.high[st]<Z.values[pt]||(!Number.isNaN(a.low[st])||!Number.isNaN(a.high[st]))&&Number.isNaN(Z.values[pt]))return!1;return a.text?[Z.reason,Ah[Z.state][1],...e.columns.filter(st=>st.options).map(st=>Ya(st,Z.values[st.place]))].join(`
`).toLowerCase().includes(a.text.toLowerCase()):!0},h=S("div",{class:"design-chart"}),d=S("p",{class:"small design-legend"}),u=null,f=(Z,it)=>it?.5*(Z.number*.6180339887%1)-.25:0,p=Z=>{let it=Z.values[a.x]+f(Z,l(a.x).options),st=Z.values[a.y];return Z.state>=2?Number.isNaN(it)?null:[u.px(it),Number.isNaN(st)?u.bottom-6:u.py(st+f(Z,l(a.y).options))]:!Number.isFinite(it)||!Number.isFinite(st)?null:[u.px(it),u.py(st+f(Z,l(a.y).options))]},x=(Z,it)=>{let st=l(Z);return{...st.options?{low:-.6,high:st.options.length-.4}:Do([...it.map(Tt=>Tt.values[Z]),st.drawn],st.bounds),label:ti(st),options:st.options}};function g(){let Z=e.rows.filter(Kt=>a.state==="made"===(o&&Kt.number>=i.designs)||!o),it=x(a.x,Z),st=x(a.y,Z);u=Tr({width:Ks(1110),height:Math.min(430,Ks(1110)),x:it,y:st,label:`${st.label} over ${it.label}, a point for each design`,left:66,className:"designs"}),u.node.append(...Xa(u,st,l(a.y).bounds,!1).flat().filter(Boolean),...Xa(u,it,l(a.x).bounds,!0).flat().filter(Boolean));let pt=new Map,Tt=(Kt,Ae,pe)=>{let Me=pt.get(Kt)??{attributes:Ae,d:""};Me.d+=pe,pt.set(Kt,Me)},bt=a.colour>=0?Do(Z.map(Kt=>Kt.values[a.colour])):null;for(let Kt of Z){let Ae=p(Kt);if(!Ae)continue;let[pe,Me]=Ae.map(ft=>ft.toFixed(1));if(!c(Kt)){Tt("0",{class:"dots faint"},`M${pe} ${Me}h0`);continue}if(Kt.state>=2){Tt("1",{class:"crosses"},`M${pe-3} ${Me-3}l6 6m0 -6l-6 6`);continue}let _e=Kt.state===0?`M${pe} ${Me}h0`:`M${pe-3} ${Me}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0`,nn=Kt.state===0?"dots met":"rings missed";if(!bt)Tt(Kt.state===0?"3":"2",{class:nn},_e);else{let ft=Kt.values[a.colour],At=Number.isFinite(ft)?Math.round(9*(ft-bt.low)/(bt.high-bt.low)):-1;Tt(`${Kt.state===0?3:2}:${At}`,{class:nn,style:At<0?{}:{stroke:or(At/9)}},_e)}n.has(Kt.number)&&Tt("4",{class:"rings best"},`M${pe-5.5} ${Me}a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0`),Kt.number===i.chosen&&Tt("5",{class:"rings chosen"},`M${pe-9} ${Me}a9 9 0 1 0 18 0a9 9 0 1 0 -18 0`)}for(let Kt of[...pt.keys()].sort()){let Ae=pt.get(Kt);u.node.append(ut("path",{...Ae.attributes,d:Ae.d}))}let{drawn:ee}=l(a.x),{drawn:ne}=l(a.y);Number.isFinite(ee)&&Number.isFinite(ne)&&u.node.append(ut("path",{class:"drawn-design",d:`M${u.px(ee)} ${u.py(ne)-7}l7 7l-7 7l-7 -7z`}));let Zt=a.picked&&p(a.picked);Zt&&u.node.append(ut("path",{class:"rings picked",d:`M${Zt[0]-8} ${Zt[1]}a8 8 0 1 0 16 0a8 8 0 1 0 -16 0`})),u.node.append(_),y(u.node),h.replaceChildren(u.node);let Se=(Kt,Ae)=>S("span",{class:"legend-entry"},ut("svg",{class:"study-chart",width:20,height:20,viewBox:"0 0 20 20","aria-hidden":"true"},Kt),Ae);d.replaceChildren(Se(ut("path",{class:"dots met",d:"M10 10h0"}),"meets all requirements"),Se(ut("path",{class:"rings missed",d:"M7 10a3 3 0 1 0 6 0a3 3 0 1 0 -6 0"}),"misses one"),...Z.some(Kt=>Kt.state>=2)?[Se(ut("path",{class:"crosses",d:"M7 7l6 6m0 -6l-6 6"}),"could not be run")]:[],...n.size?[Se(ut("path",{class:"rings best",d:"M4.5 10a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0"}),n.size>1?"on the front":"the best")]:[],...i.chosen!==null?[Se(ut("path",{class:"rings chosen",d:"M1 10a9 9 0 1 0 18 0a9 9 0 1 0 -18 0"}),"checked as made")]:[],...Number.isFinite(ee)&&Number.isFinite(ne)?[Se(ut("path",{class:"drawn-design",d:"M10 3l7 7l-7 7l-7 -7z"}),"as drawn")]:[],...bt?[S("span",{class:"legend-entry"},S("span",{class:"tension-bar",style:{background:ar()}}),ht(`${ti(l(a.colour))}, ${Ya({},bt.low)} to ${Ya({},bt.high)}`))]:[])}let _=ut("rect",{class:"brush",width:0,height:0});function y(Z){let it=null,st=Tt=>{let bt=Z.getBoundingClientRect();return[(Tt.clientX-bt.left)*u.width/bt.width,(Tt.clientY-bt.top)*u.height/bt.height]};Z.addEventListener("pointerdown",Tt=>{it=st(Tt),Z.setPointerCapture(Tt.pointerId)}),Z.addEventListener("pointermove",Tt=>{if(!it)return;let bt=st(Tt);for(let[ee,ne]of Object.entries({x:Math.min(it[0],bt[0]),y:Math.min(it[1],bt[1]),width:Math.abs(bt[0]-it[0]),height:Math.abs(bt[1]-it[1])}))_.setAttribute(ee,ne)});let pt=()=>{it=null,_.setAttribute("width",0)};Z.addEventListener("pointercancel",pt),Z.addEventListener("pointerup",Tt=>{if(!it)return;let bt=it,ee=st(Tt);if(pt(),Math.abs(ee[0]-bt[0])<5||Math.abs(ee[1]-bt[1])<5){E(ee);return}let ne=(Zt,Se)=>{let[Kt,Ae]=Zt===0?[u.left,u.right]:[u.bottom,u.top],pe=Zt===0?x(a.x,e.rows.filter(Me=>o?a.state==="made"==Me.number>=i.designs:!0)):x(a.y,e.rows.filter(Me=>o?a.state==="made"==Me.number>=i.designs:!0));return pe.low+(Se-Kt)/(Ae-Kt)*(pe.high-pe.low)};for(let Zt of[0,1]){let Se=[ne(Zt,bt[Zt]),ne(Zt,ee[Zt])].sort((Kt,Ae)=>Kt-Ae);[a.low[Zt],a.high[Zt]]=Se.map(Kt=>+Kt.toPrecision(4))}ot()})}function E(Z){let it=null,st=18;for(let pt of e.rows){let Tt=c(pt)&&p(pt),bt=Tt?Math.hypot(Tt[0]-Z[0],Tt[1]-Z[1]):1/0;bt<st&&(st=bt,it=pt)}P(it)}let M=S("p",{class:"picked-design small",role:"status"});function P(Z){a.picked=Z,g(),M.replaceChildren(...Z?[S("b",{},`Design ${Z.number}`),` ${Ah[Z.state][1]}: `,...e.columns.filter(it=>!Number.isNaN(Z.values[it.place])).flatMap((it,st)=>[st?", ":"",ht(it.title)," ",ht(Ya(it,Z.values[it.place])),it.unit?` ${it.unit}`:""]),Z.reason?[". ",ht(Z.reason)].flat():""].flat():["Click a point for its numbers; drag a box to keep only what lies in it."]);for(let it of w.children)it.classList.toggle("picked",Z!==null&&it.dataset.row===String(Z.number))}let w=S("tbody"),m=S("span",{class:"muted",role:"status"}),b=[],U=()=>e.columns.filter(Z=>Z.role!=="made"||a.state==="made").filter(Z=>Z.role!=="key"||a.state!=="made"),C=S("tr"),L=S("button",{type:"button",class:"more controls",on:{click:()=>{a.shown+=qa,z()}}}),k=()=>{let Z=e.rows.filter(c),it=a.sort===-1?st=>st.number:a.sort===-2?st=>st.state:st=>st.values[a.sort];return Z.sort((st,pt)=>{let[Tt,bt]=[it(st),it(pt)];return Number.isNaN(Tt)||Number.isNaN(bt)?Number.isNaN(Tt)-Number.isNaN(bt)||st.number-pt.number:(a.down?bt-Tt:Tt-bt)||st.number-pt.number})};function z(){let Z=U();b.length=0;let it=(pt,Tt,bt)=>S("th",{scope:"col",class:bt?"figure":"","aria-sort":a.sort===pt?a.down?"descending":"ascending":"none"},S("button",{type:"button",class:"sort",on:{click:()=>{a.down=a.sort===pt&&!a.down,a.sort=pt,z(),C.querySelector(`[data-sort="${pt}"]`)?.focus()}},"data-sort":pt},ht(Tt),S("span",{class:"arrow-mark","aria-hidden":"true"},a.sort===pt?a.down?" \u25BE":" \u25B4":"")));C.replaceChildren(it(-1,"row",!0),it(-2,"state",!1),...Z.map(pt=>it(pt.place,ti(pt),!pt.options)));let st=k();w.replaceChildren(...st.slice(0,a.shown).map(pt=>S("tr",{"data-row":pt.number,class:`${pt.state===1?"misses":pt.state>=2?"broke":""} ${n.has(pt.number)?"best":""} ${a.picked===pt?"picked":""}`,on:{click:()=>{P(pt)}}},S("th",{scope:"row",class:"figure nowrap"},pt.number,pt.number===i.chosen?" \u2605":n.has(pt.number)?" \u25CF":""),S("td",{class:"nowrap",title:pt.reason||null},oi(Ah[pt.state][0]),Ah[pt.state][1]),Z.map(Tt=>S("td",{class:Tt.options?"":"figure"},ht(Ya(Tt,pt.values[Tt.place]))))))),Cn(m,`${st.length} of ${e.rows.length} rows`),L.hidden=st.length<=a.shown,Cn(L,`Show ${Math.min(qa,st.length-a.shown)} more`)}let I=[0,1].map(Z=>["low","high"].map(it=>{let st=S("input",{type:"number",step:"any",class:"bound-field",on:{change:()=>{a[it][Z]=st.value===""?NaN:Number(st.value),ot()}}});return st})),V=S("button",{type:"button",on:{click:()=>{a.low=[NaN,NaN],a.high=[NaN,NaN],a.state="all",a.text="",H.value="",Y.querySelector("select").value="all",ot()}}},"Show all"),H=S("input",{type:"search","aria-label":"words in a row's options, state or reason",on:{input:()=>{a.text=H.value,a.shown=qa,ot()}}}),B=Z=>e.columns.filter(it=>Z.includes(it.role)).map(it=>[it.place,ti(it)]),Y=Rh("rows",[["all",o?"all designs tried":"all"],["met","that meet all requirements"],["missed","that miss one"],["broken","that could not be run"],...n.size?[["best",n.size>1?"on the front":"the best"]]:[],...o?[["made","the chosen one as made"]]:[]],"all",Z=>{let it=a.state==="made";if(a.state=Z,a.shown=qa,it!==(Z==="made")){let st=e.columns.find(pt=>pt.role==="made");at("x",Z==="made"&&st?st.place:s),at("y",Z==="made"?e.columns.find(pt=>pt.role==="outcome").place:r),a.sort=-1}ot()}),X=B(["key","made","outcome"]),K=Rh("along",X,a.x,Z=>at("x",Number(Z),!0)),$=Rh("up",X,a.y,Z=>at("y",Number(Z),!0));function at(Z,it,st){a[Z]=it,(Z==="x"?K:$).querySelector("select").value=String(it);let pt=Z==="x"?0:1;a.low[pt]=a.high[pt]=NaN,st&&ot()}function ot(){I.forEach((Z,it)=>Z.forEach((st,pt)=>{let Tt=a[pt?"high":"low"][it];st.value=Number.isNaN(Tt)?"":Tt,st.setAttribute("aria-label",`${l(it?a.y:a.x).title}, ${pt?"at most":"at least"}`)})),g(),z()}let Q=(Z,it)=>S("div",{class:"field"},S("span",{class:"cell-title"},Z),S("span",{class:"range-fields"},it[0]," to ",it[1])),yt=[S("p",{class:"lead"},ht(i.rows.text)),S("div",{class:"fields controls"},K,Q("along, from",I[0]),$,Q("up, from",I[1]),Rh("colour",[[-1,"none"],...X],-1,Z=>{a.colour=Number(Z),g()}),Y,S("label",{class:"field"},S("span",{class:"cell-title"},"words"),H),V),h,d,M,S("p",{class:"controls"},m),S("div",{class:"table-box",tabindex:0,role:"group","aria-label":"designs"},S("table",{class:"designs-table",id:t},S("thead",{},C),w)),L];return P(null),ot(),xi(g),addEventListener("resize",g),yt}var W0=14,tf=6,$0=40,X0=8,q0=(i,t)=>i.options?i.options[t]??"\u2013":`${ri(t)}${i.unit?` ${i.unit}`:""}`;function Y1(i){let[t,e,n]=Wo(i,[0,0,0]).map(s=>s<=.04045?s/12.92:((s+.055)/1.055)**2.4);return .2126*t+.7152*e+.0722*n>.21}function Z1({nx:i,ny:t,whole:e}){let n=[];for(let s=0;s<t;++s)for(let r=0;r<i;++r)r+1<i&&e(r,s)!==e(r+1,s)&&n.push([r+1,s,r+1,s+1]),s+1<t&&e(r,s)!==e(r,s+1)&&n.push([r,s+1,r+1,s+1]);return n}function J1(i,t,e){let{nx:n,ny:s,x:r,y:o}=i,a=58+(o.options?24:0),l=(e-a-X0)/n,c=Math.min(Math.max(200/s,8),34),h=tf+c*s+$0,d=I=>a+I*l,u=I=>tf+(s-I)*c,f=t.values.filter(I=>I!==null),p=t.low??Math.min(...f),x=t.high??Math.max(...f),g=I=>x>p?(I-p)/(x-p):.5,_=n<=W0&&s<=W0&&c>13&&l>6.6*Math.max(...f.map(I=>ri(I).length)),y=t.values.map((I,V)=>{let H=V%n,B=Math.floor(V/n),Y={x:d(H).toFixed(2),y:u(B+1).toFixed(2),width:l.toFixed(2),height:c.toFixed(2)};return{value:I,field:ut("rect",{class:I===null?"field none":"field","data-field":V,...Y}),text:_&&I!==null&&ut("text",{class:"field-text",x:(d(H)+l/2).toFixed(1),y:(u(B+.5)+Math.min(8,c/4)).toFixed(1),"text-anchor":"middle"},ri(I))}}),E=ut("rect",{class:"field-cursor",width:l,height:c,visibility:"hidden"}),M=i.failed.map(I=>{let V=I%n,H=Math.floor(I/n),B=_?2.6:Math.min(3.5,l/3,c/3),Y=_?d(V+1)-B-2.5:d(V+.5),X=_?u(H+1)+B+2.5:u(H+.5);return`M${(Y-B).toFixed(1)} ${(X-B).toFixed(1)}l${2*B} ${2*B}m0 ${-2*B}l${-2*B} ${2*B}`}).join(""),P=Z1(i).map(([I,V,H,B])=>`M${d(I).toFixed(1)} ${u(V).toFixed(1)}L${d(H).toFixed(1)} ${u(B).toFixed(1)}`).join(""),w=(I,V)=>I.length>V?`${I.slice(0,V-1)}\u2026`:I,m=(I,V)=>I.options?I.options[I.values[V]]??"\u2013":ri(I.values[V]),b=(I,V)=>Math.max(1,Math.ceil(I/V)),U=b(n,(e-a)/(r.options?62:40)),C=b(s,c*s/15),L=ut("svg",{class:"study-chart study-map",viewBox:`0 0 ${e} ${h}`,width:e,height:h,"aria-hidden":"true"},y.map(({field:I})=>I),y.map(({text:I})=>I),ut("path",{class:"cross-ground",d:M}),ut("path",{class:"failed-cross",d:M}),ut("path",{class:"border-ground",d:P}),ut("path",{class:"passing-border",d:P}),E,r.values.map((I,V)=>V%U===0&&ut("text",{x:d(V+.5).toFixed(1),y:h-$0+15,"text-anchor":"middle"},w(m(r,V),10))),o.values.map((I,V)=>V%C===0&&ut("text",{x:a-6,y:(u(V+.5)+4).toFixed(1),"text-anchor":"end"},w(m(o,V),o.options?10:7))),ut("text",{class:"axis-name",x:(a+e-X0)/2,y:h-5,"text-anchor":"middle"},ti(r)),ut("text",{class:"axis-name",transform:`translate(12 ${tf+c*s/2}) rotate(-90)`,"text-anchor":"middle"},w(ti(o),Math.max(8,Math.floor(c*s/6.4))))),k=S("span",{class:"tension-bar"}),z=()=>{for(let{value:I,field:V,text:H}of y)I!==null&&(V.setAttribute("fill",or(g(I))),H&&H.setAttribute("class",`field-text ${Y1(g(I))?"on-light":"on-dark"}`));k.style.background=ar()};return xi(z),z(),{node:L,fields:y,show(I){E.setAttribute("visibility",I<0?"hidden":"visible"),!(I<0)&&(E.setAttribute("x",d(I%n).toFixed(2)),E.setAttribute("y",u(Math.floor(I/n)+1).toFixed(2)))},figure:S("figure",{class:"study-figure"},S("figcaption",{},ht(t.title)),L,f.length?S("div",{class:"map-scale"},S("span",{},ri(p)),k,S("span",{},`${ri(x)}${t.unit?` ${t.unit}`:""}`)):S("p",{class:"muted small"},"No design has it."))}}function Y0(i,t){let{map:e}=i;if(!e)return null;let n=({column:w,values:m,all:b})=>({...i.columns[w],values:m,all:b}),s=n(e.x),r=n(e.y),o=s.values.length,a=r.values.length,l=i.requirements.length>0,c=e.over.length>0,d={x:s,y:r,nx:o,ny:a,whole:l?(w,m)=>e.rows[m*o+w]>0&&e.met[m*o+w]===e.rows[m*o+w]:()=>!0,failed:l?e.rows.map((w,m)=>w>0&&e.met[m]===0?m:-1).filter(w=>w>=0):[]},u=t.map((w,m)=>({title:`${c?"mean ":""}${ti(w)}`,unit:w.unit,values:e.means[m]}));c&&l&&u.unshift({title:"meet all requirements [%]",unit:"%",low:0,high:100,values:e.rows.map((w,m)=>w?100*e.met[m]/w:null)});let f=u.map(w=>J1(d,w,Ks(o>20?540:420))),p=-1,x="Point at a field for its numbers, or focus the maps and use the arrow keys.",g=S("p",{class:"picked-design small",role:"status"},x);function _(w){let m=`${s.title} ${q0(s,s.values[w%o])}, ${r.title} ${q0(r,r.values[Math.floor(w/o)])}`,b=u.map(C=>`${C.title.replace(/ \[.*\]$/,"")} ${C.values[w]===null?"none":`${Xe(C.values[w])}${C.unit?` ${C.unit}`:""}`}`).join(", "),U=e.rows[w]?l?c?`${e.met[w]} of ${e.rows[w]} designs meet all requirements`:e.met[w]?"meets all requirements":"misses a requirement, or could not be run":"":"not run";return`${m}: ${b}${U?`; ${U}`:""}.`}function y(w){p=w;for(let m of f)m.show(w);Cn(g,w<0?x:_(w))}let E=w=>{let m={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[w.key];if(!m||w.altKey||w.ctrlKey||w.metaKey)return;w.preventDefault();let b=(U,C)=>Math.min(Math.max(U,0),C-1);y(p<0?0:b(Math.floor(p/o)+m[1],a)*o+b(p%o+m[0],o))},M=S("div",{class:"study-figures maps",tabindex:0,role:"application","aria-label":`maps over ${s.title} and ${r.title}; arrow keys go from field to field`,on:{keydown:E,focus:()=>{p<0&&y(0)},pointermove:w=>{let m=w.target.dataset?.field;m!==void 0&&y(Number(m))},pointerdown:w=>{let m=w.target.dataset?.field;m!==void 0&&y(Number(m))}}},f.map(({figure:w})=>w)),P=(...w)=>ut("svg",{class:"study-chart",width:20,height:14,viewBox:"0 0 20 14","aria-hidden":"true"},w);return[S("h3",{},`Outcomes over ${s.title} and ${r.title}`),c&&S("p",{class:"lead small"},"Each field is the mean over ",ht(e.over.join(", ")),"."),(o<s.all||a<r.all)&&S("p",{class:"lead small"},`${o} \xD7 ${a} of ${s.all} \xD7 ${r.all} values are shown.`),M,g,l&&S("p",{class:"small design-legend"},S("span",{class:"legend-entry"},P(ut("path",{class:"failed-cross",d:"M6 3l8 8m0 -8l-8 8"})),c?"no design there meets all requirements":"misses a requirement, or could not be run"),S("span",{class:"legend-entry"},P(ut("path",{class:"passing-border",d:"M1 7H19"})),c?"border of where every design meets them":"border of the designs that meet them all"),S("span",{class:"legend-entry"},P(ut("rect",{class:"field none",x:1,y:1,width:18,height:12})),"no value"))]}var K1={key:"varied",made:"varied in the making"};function j1(i){let t=i.columns.filter(e=>e.role!=="outcome");return[i.about&&S("p",{},ht(i.about)),S("p",{},ht(i.kind_text[0].toUpperCase()+i.kind_text.slice(1)),"."),S("p",{class:"muted"},i.facts.map((e,n)=>[n?" \xB7 ":"",ht(e.title),": ",S("b",{},ht(e.text))])),Bn(["what varies","","values","as drawn","in the files"],t.map(e=>S("tr",{},S("th",{scope:"row"},ht(e.title)),S("td",{class:"muted"},K1[e.role]),S("td",{},ht(e.range)),S("td",{},ht(e.drawn_text??"\u2014")),S("td",{class:"path"},ht(e.description)))),{label:"what varies"}),i.requirements.length?Bn(["required of","","rows that miss it"],i.requirements.map(e=>S("tr",{class:e.missed>0?"":"met"},S("th",{scope:"row"},ht(e.title)),S("td",{},ht(e.demand)),S("td",{class:"figure"},`${e.missed} of ${i.of}`))),{label:"requirements of the study"}):S("p",{class:"muted"},"Nothing was required.")]}function Q1(i){let{causes:t,met:e,of:n}=i.yield;return t.length?[S("p",{class:"lead small"},"Distance: how far the key's values differ between what fails and what passes, from 0 (alike) to 1 (one value parts them). What goes with failing need not cause it."),Th(t.map(s=>({title:s.key,text:Xe(s.distance,2),bars:[{value:s.distance,kind:s.sure?"first":"unsure"}]})),{low:0,high:1,label:"what goes with failing",axis:"distance [-]"}),Bn(["what goes with failing","distance","by chance","","lowest fifth fails","2nd","3rd","4th","highest"],t.map(s=>S("tr",{},S("th",{scope:"row"},ht(s.key)),S("td",{class:"figure"},Xe(s.distance,2)),S("td",{class:"figure"},ht(s.chance_text)),S("td",{class:s.sure?"nowrap":"nowrap muted"},ht(s.side)),s.shares.map(r=>S("td",{class:"figure share nowrap",style:{"--share":r??0}},r===null?"\u2013":`${Xe(100*r,2)} %`)))),{class:"causes",label:"what goes with failing"})]:S("p",{class:"muted"},e===n?"No failure, so no cause to be found.":"Nothing passes, so no cause can be told from the rest.")}function tE(i,t){return[S("div",{class:"study-figures"},i.spread.map(e=>B0(t[e.outcome],e,i.of))),S("p",{class:"small muted"},"Bars: share of the rows; dashed: as drawn; tinted: not allowed by a requirement.")]}var eE=(i,t)=>Bn(["outcome","as drawn","mean","deviation","least","5 %","50 %","95 %","greatest","without it"],i.spread.map(e=>S("tr",{},S("th",{scope:"row"},ht(t[e.outcome].title)),e.texts.map(n=>S("td",{class:"figure nowrap"},ht(n))),S("td",{class:"figure"},e.missing||"\u2013"))),{label:"outcomes"});function nE(i,t){let e=Ch(i),n=i.kind==="optimise"&&i.yield;return[S("p",{class:`verdict ${i.verdict.state==="plain"?"":i.verdict.state}`},oi(i.verdict.state)," ",ht(i.verdict.text)),i.reasons.length>0&&S("div",{class:"not-checked"},S("h3",{},oi("unknown")," Rows that could not be run"),S("ul",{},i.reasons.map(s=>S("li",{},`${s.count} times: `,ht(s.text))))),Y0(i,t),i.progress.length>0&&[S("h3",{},"The search"),i.progress.map(s=>H0(t[s.outcome],s,e,i.designs))],n&&S("p",{class:"verdict"},`Design ${i.chosen} as it would be made: `,ht(i.yield.text),"."),i.yield&&[i.yield.note&&S("p",{class:"muted"},ht(i.yield.note)),i.yield.curves.length>0&&[S("h3",{},"Yield over where a bound is put"),S("div",{class:"study-figures"},i.yield.curves.map(s=>k0(t[s.outcome],s))),S("p",{class:"small muted"},`Thick: share that meets the bound at this place and all other requirements, with its ${ri(100*i.yield.confidence)} % interval at each place; dashed: share that meets this bound alone.`)],S("h3",{},"What goes with failing"),Q1(i)],i.indices.length>0&&[S("h3",{},"Shares of each outcome's variance"),S("p",{class:"lead small"},"Upper bar: what a key causes by itself; lower bar: with all its interplay; lines: intervals."),S("div",{class:"study-figures wide"},i.indices.map(s=>z0(t[s.outcome],s)))],i.effects.length>0&&[S("h3",{},"Change of each outcome over the whole spread of each key"),S("p",{class:"lead small"},"Filled: the mean change with its sign; outlined: the mean size. An outline longer than its bar: the sign differs from place to place."),S("div",{class:"study-figures wide"},i.effects.map(s=>V0(t[s.outcome],s)))],S("h3",{},n?"Outcomes of the chosen design as made":"Outcomes of all rows"),i.yield&&tE(i,t),eE(i,t)]}function iE(i){let{design:t}=i,e=i.best.length===0?`The nearest design, row ${t.row}, beside the files as drawn`:i.best.length>1?`Design ${t.row} of the front${i.chosen===t.row?", which was checked as made":", the middle one"}, beside the files as drawn`:`The best design, row ${t.row}, beside the files as drawn`,n=(s,r)=>S("tr",{class:s.change==="same"||s.change==="\u2014"?"":"differs"},S("th",{scope:"row"},ht(s.title)),S("td",{class:"muted"},r),S("td",{class:"figure"},ht(s.drawn)),S("td",{class:"figure"},ht(s.text)),S("td",{class:"figure"},ht(s.change)));return[S("h3",{},e),Bn(["","","as drawn",`design ${t.row}`,"change"],[...t.keys.map(s=>n(s,"made of")),...t.outcomes.map(s=>n(s,"outcome"))],{class:"beside",label:"the design beside the files as drawn"}),t.missed.length>0&&S("ul",{class:"missed-list"},t.missed.map(s=>S("li",{},oi("bad")," missed: ",ht(s))))]}function Z0(i,t){let e=t.studies??[];e.forEach((n,s)=>{let r=l=>s?`${l}-${s+1}`:l,o=e.length>1||t.records.length?`: \u2068${n.name}\u2069`:"",a=n.columns.filter(l=>l.role==="outcome");Ch(n),i.section(r("study"),`What was varied${o}`,j1(n)),i.section(r("findings"),`Findings${o}`,nE(n,a),n.design&&iE(n)),i.section(r("designs"),`Designs${o}`,G0(n,r("designs-table")))})}var Ph=900,Ih=24,J0=13,fe=i=>i.toFixed(2);function sE(i){let t=[...(i.polygons??[]).flatMap(s=>s.points),...(i.cords??[]).flatMap(s=>s.points),...(i.circles??[]).flatMap(s=>[[s.at[0]-s.radius,s.at[1]-s.radius],[s.at[0]+s.radius,s.at[1]+s.radius]]),...(i.dimensions??[]).flatMap(s=>[s.from,s.to]),...(i.names??[]).flatMap(({at:s})=>[s,[s[0]+20,s[1]]])],e=t.map(s=>s[0]),n=t.map(s=>s[1]);return{left:Math.min(...e),right:Math.max(...e),bottom:Math.min(...n),top:Math.max(...n)}}function K0(i,t,e){for(let n=0;;++n)if(i[n]??=[],i[n].every(([s,r])=>e<=s+.01||t>=r-.01))return i[n].push([t,e]),n}function rE(i){let t=sE(i);if(!Number.isFinite(t.left))return null;let e=(m,b)=>Math.abs(m.to[b]-m.from[b]),n=(i.dimensions??[]).filter(m=>m.axis!=="y").sort((m,b)=>e(m,0)-e(b,0)),s=(i.dimensions??[]).filter(m=>m.axis==="y").sort((m,b)=>e(m,1)-e(b,1)),r=[],o=[],a=n.map(m=>({d:m,lane:K0(r,Math.min(m.from[0],m.to[0]),Math.max(m.from[0],m.to[0]))})),l=s.map(m=>({d:m,lane:K0(o,Math.min(m.from[1],m.to[1]),Math.max(m.from[1],m.to[1]))})),c=[...i.notes??[]].sort((m,b)=>m.at[0]-b.at[0]),h=20+(o.length?o.length*(Ih+14)+16:0),d=(Ph-h-30)/(t.right-t.left||1),u=m=>h+(m-t.left)*d,f=m=>.6*J0*m.length+12,p=[],x=c.map(m=>{let b=f(m.text),U=Math.min(u(m.at[0])+10,Ph-b-4),C=p.findIndex(k=>k<=U);C<0&&(C=p.length<4?p.length:p.indexOf(Math.min(...p)));let L=Math.max(U,p[C]??0);return p[C]=L+b,{note:m,x:L,row:C,width:b}}),g=14+p.length*20+(p.length?14:0),_=m=>g+(t.top-m)*d,y=_(t.bottom),E=y+20+r.length*Ih+14,M=(m,b)=>m.map((U,C)=>`${C?"L":"M"}${fe(u(U[0]))} ${fe(_(U[1]))}`).join("")+(b?"Z":""),P=(m,b,U,C)=>{let L=Math.hypot(U-m,C-b),k=(U-m)/(L||1),z=(C-b)/(L||1),I=(V,H,B)=>`M${fe(V)} ${fe(H)}L${fe(V+B*8*k-2.4*z)} ${fe(H+B*8*z+2.4*k)}L${fe(V+B*8*k+2.4*z)} ${fe(H+B*8*z-2.4*k)}Z`;return L>20?I(m,b,1)+I(U,C,-1):I(m,b,-1)+I(U,C,1)},w=(m,b,U,C,L,k,z)=>{let I=(m+U)/2,V=(b+C)/2;return ut("g",{class:"dimension"},ut("path",{class:"thin",d:`${L}M${fe(m)} ${fe(b)}L${fe(U)} ${fe(C)}`}),ut("path",{class:"head",d:P(m,b,U,C)}),ut("text",{x:fe(I),y:fe(V-4),"text-anchor":"middle",...z?{transform:`rotate(-90 ${fe(I)} ${fe(V)})`}:{}},k))};return ut("svg",{class:"model-drawing",viewBox:`0 0 ${Ph} ${fe(E)}`,width:Ph,height:fe(E),role:"img","aria-label":`drawing of the model, ${i.name}`,"font-size":J0},(i.polygons??[]).filter(m=>m.role==="contact").map(m=>ut("path",{class:"outline contact",d:M(m.points,!0)})),(i.polygons??[]).filter(m=>m.role!=="contact").map(m=>ut("path",{class:"outline solid",d:M(m.points,!0)})),(i.cords??[]).map(m=>ut("path",{class:`drawn-cord ${m.kind}`,d:M(m.points,!1)})),(i.circles??[]).map(m=>{let b=u(m.at[0]),U=_(m.at[1]),C=Math.max(m.radius*d,1.5),L=C+6;return ut("g",{},ut("circle",{class:`round ${m.role}`,cx:fe(b),cy:fe(U),r:fe(C)}),ut("path",{class:"centre-line",d:`M${fe(b-L)} ${fe(U)}H${fe(b+L)}M${fe(b)} ${fe(U-L)}V${fe(U+L)}`}))}),a.map(({d:m,lane:b})=>{let U=y+24+b*Ih,C=m.from[0]<=m.to[0]?m.from:m.to,L=C===m.from?m.to:m.from,k=[C,L].map(z=>`M${fe(u(z[0]))} ${fe(_(z[1])+4)}V${fe(U+5)}`).join("");return w(u(C[0]),U,u(L[0]),U,k,m.text,!1)}),l.map(({d:m,lane:b})=>{let U=h-18-b*(Ih+14),C=m.from[1]<=m.to[1]?m.from:m.to,L=C===m.from?m.to:m.from,k=[C,L].map(z=>`M${fe(u(z[0])-4)} ${fe(_(z[1]))}H${fe(U-5)}`).join("");return w(U,_(C[1]),U,_(L[1]),k,m.text,!0)}),(i.names??[]).map(({at:m,text:b})=>ut("text",{class:"drawn-name",x:fe(u(m[0])+10),y:fe(_(m[1])+5)},b)),x.map(({note:m,x:b,row:U,width:C})=>{let L=16+U*20,k=u(m.at[0]),z=_(m.at[1]);return ut("g",{class:"note"},ut("path",{class:"thin",d:`M${fe(k)} ${fe(z)}L${fe(b)} ${fe(L+4)}H${fe(b+C-8)}`}),ut("circle",{class:"dot",cx:fe(k),cy:fe(z),r:2}),ut("text",{x:fe(b+2),y:fe(L)},m.text))}))}function j0(i,t){let{records:e}=t,n=e.length>1,s=d=>(d.drawing?.views??[]).map(u=>S("figure",{class:"drawing-figure"},S("div",{class:"drawing-box",tabindex:0,role:"group","aria-label":"drawing, can be scrolled sideways"},rE(u)),S("figcaption",{},"View: ",ht(u.name),", posture straight; mm"))),r=n&&e.every(d=>JSON.stringify(d.drawing)===JSON.stringify(e[0].drawing)),o=new Map;e.forEach((d,u)=>{for(let f of d.facts??[]){o.has(f.group)||o.set(f.group,new Map);let p=o.get(f.group);p.has(f.title)||p.set(f.title,new Array(e.length).fill("\u2013")),p.get(f.title)[u]=f.text}});let a=[...new Set(e.flatMap(d=>d.fingers??[]))],l=new Map;for(let[d,u]of o){let f=a.find(g=>d.includes(` ${g}.`)),p=f?d.replace(` ${f}.`," "):d,x=`${p}
${JSON.stringify([...u])}`;l.has(x)||l.set(x,{part:p,of:[],rows:u}),f&&l.get(x).of.push(f)}let c=({part:d,of:u})=>u.length?`${d} of ${u.join(", ")}`:d,h=[...l.values()].map(d=>[c(d),d.rows]).map(([d,u])=>S("div",{class:"fact-group"},S("h4",{class:"sub"},ht(d)),S("table",{class:"facts"},n&&S("thead",{},S("tr",{},S("th",{}),e.map(f=>S("th",{scope:"col"},f.label)))),S("tbody",{},[...u].map(([f,p])=>S("tr",{class:n&&new Set(p).size>1?"differs":""},S("th",{scope:"row"},ht(f)),p.map(x=>S("td",{class:"figure"},ht(x)))))))));!h.length&&!e.some(d=>d.drawing?.views?.length)||i.section("model","The model",r||!n?s(e[0]):e.map(d=>[kr(d),s(d)]),n&&r&&S("p",{class:"muted small"},"The drawing is the same for all records."),h.length>0&&S("div",{class:"fact-groups"},h))}function Q0(i,t){let e=s=>S("ul",{},(s??[]).map(r=>S("li",{},ht(r)))),n=[...new Set(t.records.map(s=>s.demo_data).filter(Boolean))];i.section("validity","Cautions and limits of validity",S("div",{class:"columns"},S("div",{},S("h3",{},"Cautions"),e([...t.cautions??[],...n])),S("div",{},S("h3",{},"What is simplified"),e(t.validity))),t.records.length>0&&S("h3",{},"How the pictures were made"),t.records.length>0&&S("ul",{},t.records.map(s=>S("li",{},t.records.length>1?`${s.label}: `:"",`${s.rows?.kept??"?"} of ${s.rows?.of??"?"} rows of the record are drawn: `,ht(s.rows?.bound_text??"no bound stated"),". The numbers in the tables come from the whole record."))))}function t_(i,t){let{records:e}=t,n=e.length>1;if(!e.some(o=>o.summary?.length))return;let s=e.map(o=>{let a=new Map;for(let l of o.summary??[])a.set(l.group,[...a.get(l.group)??[],l]);return S("details",{},S("summary",{},n?`All values of ${o.label}`:`All ${o.summary?.length??0} values of the summary`),S("div",{class:"fact-groups"},[...a].map(([l,c])=>S("div",{class:`fact-group ${l==="Margins"&&o.fingers?.length?"only-screen":""}`},S("h4",{class:"sub"},ht(l)),S("table",{class:"facts"},S("tbody",{},c.map(h=>S("tr",{},S("th",{scope:"row"},ht(h.title)),S("td",{class:"figure"},ht(h.text))))))))))});n||(s[0].dataset.print="");let r=i.section("values","All values",s);n&&r.classList.add("only-screen")}function e_(i,t){let e=(t.studies??[]).map(o=>({label:t.studies.length>1||t.records.length?o.file:"",inputs:o.inputs,of:"Study"})),n=[...t.records,...e],s=n.length>1,r=new Map;for(let o of n)for(let a of o.inputs?.files??[]){let l=`${a.path}
${a.text}`;r.has(l)||r.set(l,{...a,of:[]}),r.get(l).of.push(o.label)}i.section("inputs","All inputs",n.map(o=>S("p",{},s&&[S("span",{class:"record-letter"},o.label)," "],`${o.of??"Scenario"} `,S("code",{},ht(o.inputs?.scenario)),`, Sinewright ${o.inputs?.engine_version??"?"}, seed ${o.inputs?.seed??0}`,o.inputs?.overrides?.length?[", changed on the command line: ",o.inputs.overrides.map((a,l)=>[l?", ":"",S("code",{},ht(a))])]:"",".")),S("p",{class:"only-print small"},"The full texts of these files are in the HTML file and in the record:"),[...r.values()].map(o=>S("details",{class:"input-file"},S("summary",{},s?`${o.of.join(", ")}: `:"",S("code",{},ht(o.path)),S("span",{class:"muted"},`, ${o.text.split(`
`).length} lines`)),S("pre",{tabindex:0},S("code",{},o.text)))))}var Lh=700,No=165,Dh=52,ef=20,n_=6,i_=6,Nh=["","7 4","2 3","10 3 2 3"];function s_(i,t,e){if(!(t>i))return[i];let n=[1,2,2.5,5,10].map(r=>r*nr((t-i)/e)).find(r=>(t-i)/r<=e+1),s=[];for(let r=Math.ceil(i/n-1e-9)*n;r<=t+1e-9*n;r+=n)s.push(+r.toPrecision(10));return s}function r_({group:i,plot:t},e){let n=i.series.map((x,g)=>({...x,data:i.columns[g+1]})).filter((x,g)=>t.series[g+1].show),s=i.columns[0],{min:r,max:o}=t.scales.x,a=1/0,l=-1/0;for(let{data:x}of n)x.forEach((g,_)=>{g!=null&&s[_]>=r&&s[_]<=o&&(a=Math.min(a,g),l=Math.max(l,g))});if(!(l>=a))return null;l-a<1e-9&&(a-=1,l+=1);let c=.06*(l-a);a-=c,l+=c;let h=x=>Dh+(x-r)/(o-r||1)*(Lh-Dh-i_),d=x=>No-ef-(x-a)/(l-a)*(No-ef-n_),u=s_(r,o,10),f=s_(a,l,5),p=n.map(x=>{let g="",_=!1;return x.data.forEach((y,E)=>{if(y===null){_=!1;return}y===void 0||s[E]<r||s[E]>o||(g+=`${_?"L":"M"}${h(s[E]).toFixed(1)} ${d(y).toFixed(1)}`,_=!0)}),ut("path",{d:g,stroke:Vr(x.colour),"stroke-dasharray":Nh[$a(x,e)%Nh.length],class:"curve"})});return S("figure",{class:"printed-curve"},S("figcaption",{},ht(i.title),`${i.unit?` [${i.unit}]`:""} over time [s]`),ut("svg",{viewBox:`0 0 ${Lh} ${No}`,width:Lh,height:No},ut("path",{class:"grid",d:u.map(x=>`M${h(x).toFixed(1)} ${n_}V${No-ef}`).join("")+f.map(x=>`M${Dh} ${d(x).toFixed(1)}H${Lh-i_}`).join("")}),u.map(x=>ut("text",{x:h(x).toFixed(1),y:No-6,"text-anchor":"middle"},String(x))),f.map(x=>ut("text",{x:Dh-6,y:(d(x)+4).toFixed(1),"text-anchor":"end"},String(x).replace("-","\u2212"))),p),S("p",{class:"printed-legend"},n.map(x=>S("span",{},ut("svg",{width:26,height:8,viewBox:"0 0 26 8"},ut("path",{class:"curve",d:"M0 4H26",stroke:Vr(x.colour),"stroke-dasharray":Nh[$a(x,e)%Nh.length]})),e?`${x.label} `:"",ht(x.name)))))}function o_(i,t){let e=[];addEventListener("beforeprint",()=>{Zh(!0);for(let n of i.charts){let s=r_(n,t);s&&n.figure.before(s)}e=[...document.querySelectorAll("details[data-print]:not([open])")];for(let n of e)n.open=!0}),addEventListener("afterprint",()=>{for(let n of document.querySelectorAll(".printed-curve"))n.remove();for(let n of e)n.open=!1;Zh(!1)})}function oE(){let i=JSON.parse(document.getElementById("data").textContent),t=document.getElementById("review"),{records:e}=i,n=e.length>1;Df(),t.append(Bf(i),kf(i));let s=Uf(t),r=e.length?aE(t,s,i):{charts:[]};U0(s,i),Z0(s,i),e.length&&j0(s,i),Q0(s,i),t_(s,i),e_(s,i),t.querySelector(".caution").after(zf(s.index)),t.append(S("footer",{class:"sheet-foot"},S("span",{},"Design predictions, not certification."),S("span",{},i.made_by??""))),o_(r,n),t.dataset.ready=String(Math.round(performance.now()))}function aE(i,t,e){let{records:n}=e,s=n.length>1,r=n.map(Ef),o=Af(r),a=r.reduce((x,g)=>(g.times.at(-1)??0)>(x.times.at(-1)??0)?g:x),l=Rf(a.times.at(-1)??0,a.times);Hf(t,e,l),Gf(t,e);let c=rg(t,e,r,o,l),h=L0(n,l),d=n.map(x=>`${s?`${x.label}: `:""}${x.rows?.bound_text??""}`).join("; "),u=t.section("curves","Curves",S("p",{class:"lead controls"},"Click in a chart to show that instant, drag across it to look closer (all charts follow), switch curves on and off below it."," ",h.reset),h.box,S("p",{class:"small muted"},s&&"A drawn solid, B dashed. ","Drawn rows: ",S("bdi",{},d),"."));u.addEventListener("keydown",c.onKey);let f=S("div",{class:"with-transport"});c.section.before(f),f.append(c.section,u,c.controls),D0(t,e),N0(t,e,l);let p=/^#t=([0-9.]+)$/.exec(location.hash);return p&&l.seek(Number(p[1])),h}oE();})();
