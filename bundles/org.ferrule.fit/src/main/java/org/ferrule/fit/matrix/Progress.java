/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

/** How long work tells how far it is, and learns that nobody waits for it any more. */
public interface Progress {

    /** Nobody watches, nobody cancels. */
    Progress SILENT = new Progress() {
        @Override
        public void worked(int done, int total) {
            // nobody watches
        }

        @Override
        public boolean isCancelled() {
            return false;
        }
    };

    /**
     * Tells how much is done; called by one thread at a time, not always the same one, with rising numbers. A matrix
     * counts its lines, those that are answered alike once.
     */
    void worked(int done, int total);

    /** Whether the work should end without a result; may be asked by several threads at once. */
    boolean isCancelled();
}
