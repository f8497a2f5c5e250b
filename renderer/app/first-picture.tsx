/** The first thing anyone sees: a tray of beads under a lamp. Painted later by the bead painter. */
export function FirstPicture() {
  return <div className="first-picture" aria-hidden="true" />
}
