/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.drawing;

import org.ferrule.chart.words.Phrases;

/**
 * A device of the system as it is drawn.
 *
 * @param place where it lies
 * @param name of the device
 * @param state whether it was there before
 * @param was name of the device that it replaces; empty when none
 */
record Part(Place place, String name, State state, String was) {

    /**
     * Where a device lies, outermost first; its hub and its tip as shares of the width of the drawing, so that hubs and
     * tips make a staircase. Invented, to be told apart; not to scale.
     */
    enum Place {
        VALVE("valve", 0.10, 0.14, Body.BOX), SHEATH("sheath", 0.16, 0.40, Body.TUBE), GUIDE("GUIDE", 0.10, 0.60,
                Body.TUBE),
        EXTENSION("EXTENSION", 0.32, 0.74, Body.TUBE), MICROCATHETER("MICROCATHETER", 0.05, 0.84,
                Body.TUBE),
        MAIN_WIRE("MAIN_WIRE", 0, 1, Body.WIRE), SECOND_WIRE("SECOND_WIRE", 0.02, 0.94,
                Body.WIRE),
        ANCHOR("ANCHOR", 0.78, 0.88, Body.BALLOON);

        private final String key;
        private final double hub;
        private final double tip;
        private final Body body;

        Place(String key, double hub, double tip, Body body) {
            this.key = key;
            this.hub = hub;
            this.tip = tip;
            this.body = body;
        }

        double hub() {
            return hub;
        }

        double tip() {
            return tip;
        }

        Body body() {
            return body;
        }

        String word(Phrases phrases) {
            return phrases.get("slot." + key);
        }
    }

    /** What a device looks like. */
    enum Body {
        TUBE, WIRE, BALLOON, BOX
    }

    /** Whether a device was there before. */
    enum State {
        THERE, NEW, OUT
    }
}
