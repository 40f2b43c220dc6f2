/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

/** What must hold before a technique or a set-up may be begun. */
public sealed interface Need {

    /**
     * A statement about the case that someone has to make.
     *
     * @param fact its id
     */
    record Fact(String fact) implements Need {
        public Fact {
            Objects.requireNonNull(fact, "fact");
        }
    }

    /**
     * The vessel at the lesion.
     *
     * @param diameter in which range
     */
    record Vessel(LengthRange diameter) implements Need {
        public Vessel {
            Objects.requireNonNull(diameter, "diameter");
        }
    }

    /**
     * A side branch that can be used.
     *
     * @param diameter in which range
     */
    record Branch(LengthRange diameter) implements Need {
        public Branch {
            Objects.requireNonNull(diameter, "diameter");
        }
    }
}
