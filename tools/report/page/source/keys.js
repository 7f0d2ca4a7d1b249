// Keys of the playback. They hold while the motion or the curves have the focus, so that elsewhere space still scrolls.

export function keys(player, line) {
  return (event) => {
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
    const tag = event.target.tagName;
    const slider = tag === "INPUT" && event.target.type === "range";
    if (tag === "SELECT" || tag === "SUMMARY" || (tag === "INPUT" && !slider)) return;
    if (tag === "BUTTON" && (event.key === " " || event.key === "Enter")) return;
    const to = (time) => { if (time !== undefined) { player.seek(time); } };
    switch (event.key) {
      case " ": player.toggle(); break;
      case "ArrowLeft": player.step(event.shiftKey ? -10 : -1); break;
      case "ArrowRight": player.step(event.shiftKey ? 10 : 1); break;
      case "PageUp": case ",": to(line().previous() ?? 0); break;
      case "PageDown": case ".": to(line().next() ?? player.state.duration); break;
      case "Home": to(0); break;
      case "End": to(player.state.duration); break;
      default: return;
    }
    event.preventDefault();
  };
}
