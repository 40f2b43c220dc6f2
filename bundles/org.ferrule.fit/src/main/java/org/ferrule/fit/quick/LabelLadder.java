/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.ferrule.fit.authority.Labels;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.passage.Direction;

/** The largest printed diameter of the part of a device that enters a lumen, for every such part. */
final class LabelLadder {
    private final Direction direction;
    /** Tip first where a section begins, from the tip; over a tail where it ends, turned, so that the last comes first. */
    private final long[] at;
    private final QuickLabel[] labels;

    LabelLadder(List<ShaftSection> sections, Direction direction) {
        this.direction = direction;
        List<ShaftSection> order = new ArrayList<>(sections);
        order.sort(Comparator.comparingLong(this::station));
        at = order.stream().mapToLong(this::station).toArray();
        labels = new QuickLabel[at.length + 1];
        labels[0] = QuickLabel.ABSENT;
        for (int i = 0; i < at.length; i++) {
            QuickLabel here = QuickLabel.of(Labels.ofSections(order.subList(i, i + 1)));
            labels[i + 1] = i == 0 ? here : labels[i].with(here);
        }
    }

    private long station(ShaftSection section) {
        return direction == Direction.TIP_FIRST ? section.from().thirdNanometres() : -section.to().thirdNanometres();
    }

    /** The label of everything. */
    QuickLabel whole() {
        return labels[at.length];
    }

    /** Tip first: the label of sections that begin before a station; over a tail: of those that end beyond it. */
    QuickLabel of(long station) {
        long turned = direction == Direction.TIP_FIRST ? station : -station;
        int before = at.length;
        while (before > 0 && at[before - 1] >= turned) {
            before--;
        }
        return labels[before];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LabelLadder that && direction == that.direction && Arrays.equals(at, that.at)
                && Arrays.equals(labels, that.labels);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(at) * 31 + Arrays.hashCode(labels);
    }
}
