import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { roleWords } from "#shared/words/roles.ts";

export const metadata: Metadata = { title: "Staff - Dwellbook" };

/** Everyone who has or had an account. Whoever leaves passes their steps on before the account closes. */
export default async function StaffPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const staff = await api.staff.list();
  const mayClose = may(person, "staff.close");
  return (
    <PageFrame here="Clinic's books" frame={frame} heading="Who works here?">
      <DataTable
        caption="Accounts"
        columns={[
          { head: "Name", cell: ({ fullName }) => <bdi>{fullName}</bdi> },
          { head: "User name", cell: ({ userName }) => userName },
          { head: "Role", cell: (one) => roleWords(one) },
          { head: "Account", cell: ({ isOpen }) => (isOpen ? "open" : "closed") },
          {
            head: "Change",
            cell: ({ id, isOpen }) =>
              mayClose && isOpen && <a href={`/staff/${id}/close`}>Close the account</a>,
          },
        ]}
        rows={staff}
        keyOf={({ id }) => id}
        none="There is no account."
      />
      <p>
        A new account is made on the server: <code>npm run staff -- add</code>
      </p>
    </PageFrame>
  );
}
