import type { Attachment } from 'svelte/attachments';

/** Room between a button and what opens under it, px. */
const GAP = 4;

/** Puts a popover under the button that opens it, inside the window. */
export function under(button: () => HTMLElement | undefined): Attachment<HTMLElement> {
  return (popover) => {
    const place = (event: Event) => {
      if ((event as ToggleEvent).newState !== 'open') return;
      const box = button()?.getBoundingClientRect();
      if (!box) return;
      const left = Math.max(GAP, Math.min(box.left, innerWidth - popover.offsetWidth - GAP));
      popover.style.left = `${left}px`;
      popover.style.top = `${box.bottom + GAP}px`;
    };
    popover.addEventListener('toggle', place);
    return () => popover.removeEventListener('toggle', place);
  };
}
