let openDialog: (() => Promise<void>) | null = null;

/** The page's session watch puts its dialog here, so that a form can wait for a sign-in without knowing the dialog. */
export function offerSignIn(open: () => Promise<void>): () => void {
  openDialog = open;
  return () => {
    openDialog = null;
  };
}

/** Settles when the same person has signed in again over the page. */
export const signInAgain = (): Promise<void> => openDialog?.() ?? Promise.resolve();
