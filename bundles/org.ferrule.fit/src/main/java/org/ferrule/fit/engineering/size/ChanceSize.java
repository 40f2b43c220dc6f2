/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.Objects;

/**
 * The size at which the chance that two parts taken at random overlap stays within a target.
 *
 * @param size the largest of a shaft, the smallest of a lumen
 * @param chance at that size, an upper bound where several places are met
 * @param places how many places are met
 */
public record ChanceSize(Size size, double chance, int places) {

    public ChanceSize {
        Objects.requireNonNull(size, "size");
    }
}
