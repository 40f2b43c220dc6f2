/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;

/**
 * A line or a column of a matrix, made ready for quick answers. Two are equal when they have the same answers.
 *
 * @param <T> what it is in the question
 * @param <Q> what is made of it
 */
final class Prepared<T, Q> {
    private final T thing;
    private final Optional<Q> quick;
    private final boolean isShared;
    private final int hash;

    /**
     * A line or a column.
     *
     * @param thing what it is in the question
     * @param quick absent where the solver has to be asked
     * @param isShared whether those count as equal that are answered alike, and not only those that are the same
     */
    Prepared(T thing, Optional<Q> quick, boolean isShared) {
        this.thing = thing;
        this.quick = quick;
        this.isShared = isShared;
        this.hash = isShared ? quick.hashCode() : thing.hashCode();
    }

    /** What quick answers are made from; absent where the solver has to be asked. */
    Optional<Q> quick() {
        return quick;
    }

    /** Whether the solver has to be asked. */
    boolean isSlow() {
        return quick.isEmpty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Prepared<?, ?> that && hash == that.hash && isShared == that.isShared
                && (isShared ? quick.equals(that.quick) : thing.equals(that.thing));
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
