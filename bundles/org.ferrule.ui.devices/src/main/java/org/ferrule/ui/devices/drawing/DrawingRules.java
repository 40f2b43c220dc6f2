/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import org.ferrule.fit.rules.RuleSet;

/**
 * The rules by which devices are drawn.
 *
 * @param rules the rules
 * @param words what they are, or why there are no tolerances
 */
record DrawingRules(RuleSet rules, String words) {

    static DrawingRules bare(String why) {
        return new DrawingRules(BareRules.create(), "Drawn without assumed tolerances: " + why);
    }
}
