/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How much of a plan a sheet tells.
 *
 * @param without what is left out
 * @param lines most lines of one text
 * @param entries most entries of what is not in the plan
 * @param whole how many steps are told in full; later ones have a line each, with their marks
 * @param rungs most steps
 */
record Detail(Set<Omission> without, int lines, int entries, int whole, int rungs) {
    private static final int ALL = Integer.MAX_VALUE;
    private static final int FEW_LINES = 2;
    private static final List<Integer> FEWER_ENTRIES = List.of(8, 5, 3, 1);

    /** What can be left out, in the order in which it is: what matters least at the table first. */
    enum Omission {
        /** What the order hangs on. */
        WHY,
        /** Why a device was chosen and not the next. */
        CHOICES,
        /** Cautions of the fit solver that stand in an earlier step already. */
        REPEATED,
        /** What a step asks of its devices. */
        NEEDS,
        /** What would make possible what is not. */
        REMEDIES,
        /** On what the order rests, but for that tries are taken as independent. */
        ASSUMPTIONS,
        /** On what assumed chances rest. */
        CHANCES,
        /** What steps change in words; the system is drawn. */
        CHANGES,
        /** Why what is left out cannot be done, but for the kind of reason. */
        LACKS,
        /** Cautions after the first of a step. */
        CAUTIONS,
        /** The bars of the budgets; the sums stand with the steps. */
        BARS,
        /** The drawing of the system, which stands there in words then. */
        DRAWING
    }

    Detail {
        without = without.isEmpty() ? Set.of() : EnumSet.copyOf(without);
    }

    /** Everything. */
    static Detail full() {
        return new Detail(Set.of(), ALL, ALL, ALL, ALL);
    }

    /** From everything to almost nothing, in the order in which a sheet is shortened. */
    static List<Detail> shorterAndShorter(int rungs) {
        List<Detail> details = new ArrayList<>();
        Set<Omission> without = EnumSet.noneOf(Omission.class);
        details.add(full());
        for (Omission omission : Omission.values()) {
            without.add(omission);
            details.add(new Detail(without, ALL, ALL, ALL, ALL));
        }
        Set<Omission> all = EnumSet.copyOf(Arrays.asList(Omission.values()));
        details.add(new Detail(all, FEW_LINES, ALL, ALL, ALL));
        FEWER_ENTRIES.forEach(entries -> details.add(new Detail(all, FEW_LINES, entries, ALL, ALL)));
        int last = FEWER_ENTRIES.get(FEWER_ENTRIES.size() - 1);
        details.add(new Detail(all, 1, last, ALL, ALL));
        for (int whole = rungs - 1; whole >= 1; whole--) {
            details.add(new Detail(all, 1, last, whole, ALL));
        }
        for (int few = rungs - 1; few >= 1; few--) {
            details.add(new Detail(all, 1, last, 1, few));
        }
        return details;
    }

    /** The same with something told again. */
    Detail telling(Omission omission) {
        Set<Omission> fewer = EnumSet.copyOf(without);
        fewer.remove(omission);
        return new Detail(fewer, lines, entries, whole, rungs);
    }

    /** Whether it would say anything with so few lines: what is asked and why something was chosen are long. */
    boolean hasRoomFor(Omission omission) {
        return lines > 1 || omission != Omission.NEEDS && omission != Omission.CHOICES;
    }

    boolean tells(Omission omission) {
        return !without.contains(omission);
    }
}
