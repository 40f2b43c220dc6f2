/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.lesion;

import java.util.Set;

import org.ferrule.thresholds.Source;

/** The class of a lesion after the task force of 1988, with type B split in two. */
public enum LesionClass {
    /** No trait of type B or C. */
    A,
    /** One trait of type B. */
    B1,
    /** Two traits of type B or more. */
    B2,
    /** A trait of type C. */
    C;

    /** Where it was published. */
    public static final Source SOURCE = Source.seen(
            "task force of the American College of Cardiology and the American Heart Association, 1988, as tabulated");

    /** Returns the class of a lesion with all of these traits and no other. */
    public static LesionClass of(Set<LesionTrait> traits) {
        if (traits.stream().anyMatch(LesionTrait::isOfTypeC)) {
            return C;
        }
        return traits.isEmpty() ? A : traits.size() == 1 ? B1 : B2;
    }
}
