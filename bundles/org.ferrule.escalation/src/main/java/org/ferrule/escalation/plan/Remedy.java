/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.Objects;

import org.ferrule.escalation.technique.Slot;

/** A change that would make possible what is not. */
public sealed interface Remedy {

    /**
     * Someone states that it holds, if it does.
     *
     * @param fact its id
     */
    record State(String fact) implements Remedy {
        public State {
            Objects.requireNonNull(fact, "fact");
        }
    }

    /**
     * Something in place comes out.
     *
     * @param slot from where
     * @param device that would then serve
     */
    record TakeOut(Slot slot, String device) implements Remedy {
        public TakeOut {
            Objects.requireNonNull(slot, "slot");
            Objects.requireNonNull(device, "device");
        }
    }

    /**
     * The laboratory gets a device, or equipment.
     *
     * @param what id of the device, or the word for the equipment
     */
    record Obtain(String what) implements Remedy {
        public Obtain {
            Objects.requireNonNull(what, "what");
        }
    }

    /**
     * The guide catheter is exchanged, with all that this costs in position.
     *
     * @param guide id of one that the sheath in place takes
     * @param onShelf whether it is there
     * @param device that would then serve
     */
    record ExchangeGuide(String guide, boolean onShelf, String device) implements Remedy {
        public ExchangeGuide {
            Objects.requireNonNull(guide, "guide");
            Objects.requireNonNull(device, "device");
        }
    }
}
