/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.quantity.Length;

/** Where the tips of a stack lie, from the tip of the outermost device on; and who holds whom. */
final class Layout {
    private final List<Level> levels;
    private final List<Length> tips = new ArrayList<>();

    Layout(Stack stack) {
        levels = stack.levels();
        for (int i = 0; i < levels.size(); i++) {
            tips.add(i > 0 && levels.get(i).isValve() ? tips.get(i - 1) : tipOf(levels.get(i).device(), i));
        }
    }

    /** Where the tip of a device of that level lies. */
    Length tipOf(Placed device, int level) {
        return level == 0 ? Length.ZERO : tips.get(level - 1).plus(device.ahead());
    }

    Length tip(int level) {
        return tips.get(level);
    }

    /** The level whose lumen is entered at a hub, around that level and all extensions between. */
    int base(int level) {
        int base = level - 1;
        while (levels.get(base).isValve() || levels.get(base).isExtension()) {
            base--;
        }
        return base;
    }

    /** The extensions that a device of that level passes, from the outer one on. */
    List<Integer> extensions(int level) {
        return between(level).stream().filter(i -> levels.get(i).isExtension()).toList();
    }

    /** The valves at the hub that a device of that level passes. */
    List<Integer> valves(int level) {
        return between(level).stream().filter(i -> levels.get(i).isValve()).toList();
    }

    private List<Integer> between(int level) {
        List<Integer> between = new ArrayList<>();
        for (int i = base(level) + 1; i < level; i++) {
            between.add(i);
        }
        return between;
    }

    /** Where the lumen of a level is entered. */
    Length entry(int level) {
        return tips.get(level).minus(levels.get(level).device().holding().orElseThrow().proximalAt());
    }
}
