/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.Arrays;

/** What has been done so far, all of it in vain. Not changed once made. */
final class State {
    /** Set-ups in place, as bits. */
    final long done;
    /** Tries made, by option; of use to the classes of the package, which do not change it. */
    final byte[] tries;
    /** Whether a new risk came in since the last try. */
    final boolean pending;
    /** All costs so far; follows from the rest, but for rounding. */
    final double spent;
    private final int hash;

    State(long done, byte[] tries, boolean pending, double spent) {
        this.spent = spent;
        this.done = done;
        this.tries = tries;
        this.pending = pending;
        hash = (Long.hashCode(done * 0x9E3779B97F4A7C15L) * 31 + Arrays.hashCode(tries)) * 2 + (pending ? 1 : 0);
    }

    /** Returns the state before anything is done. */
    static State start(Model model) {
        return new State(0, new byte[model.options], false, 0);
    }

    /** Returns the options that have been tried, as bits. */
    long tried() {
        long bits = 0;
        for (int i = 0; i < tries.length; i++) {
            if (tries[i] > 0) {
                bits |= 1L << i;
            }
        }
        return bits;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof State that && done == that.done && pending == that.pending
                && Arrays.equals(tries, that.tries);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
