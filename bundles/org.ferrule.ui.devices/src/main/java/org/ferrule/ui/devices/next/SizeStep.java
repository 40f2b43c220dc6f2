/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.next;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

import org.ferrule.model.Device;

/**
 * A number of the size designation that counts up from size to size of a line.
 *
 * @param number which number of the text it is, from 0
 * @param now its value in the size that is chosen
 * @param next its value in the next size that is not there yet
 * @param size the designation of that size
 * @param neighbours the smaller sizes from which the step is evident, with the values of the number
 * @param reason why, in words
 */
record SizeStep(int number, BigDecimal now, BigDecimal next, String size, TreeMap<BigDecimal, Device> neighbours,
        String reason) {

    /** Returns the steps that are evident among sizes that differ from the chosen one in a single number. */
    static List<SizeStep> of(Device device, List<Device> line) {
        List<SizeStep> steps = new ArrayList<>();
        Numbers own = Numbers.of(String.valueOf(device.getSize()));
        for (int i = 0; device.getSize() != null && i < own.size(); i++) {
            step(own, i, device, line).ifPresent(steps::add);
        }
        return steps;
    }

    private static Optional<SizeStep> step(Numbers own, int number, Device device, List<Device> line) {
        TreeMap<BigDecimal, Device> values = new TreeMap<>();
        line.stream().filter(other -> other != device && other.getSize() != null).forEach(other -> {
            Numbers theirs = Numbers.of(other.getSize());
            if (own.onlyDifference(theirs).filter(index -> index == number).isPresent()) {
                values.putIfAbsent(theirs.value(number), other);
            }
        });
        BigDecimal now = own.value(number);
        TreeMap<BigDecimal, Device> below = new TreeMap<>(values.headMap(now));
        if (below.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal step = now.subtract(below.lastKey());
        BigDecimal before = below.lowerKey(below.lastKey());
        boolean regular = before == null || below.lastKey().subtract(before).compareTo(step) == 0;
        BigDecimal next = now.add(step);
        while (values.containsKey(next) || has(values, next)) {
            next = next.add(step);
        }
        BigDecimal free = next;
        TreeMap<BigDecimal, Device> used = new TreeMap<>(before == null ? below : below.tailMap(before, true));
        return regular ? own.with(number, free).map(size -> new SizeStep(number, now, free, size, used,
                reason(below.lastKey(), before, now, step, free))) : Optional.empty();
    }

    private static boolean has(TreeMap<BigDecimal, Device> values, BigDecimal wanted) {
        return values.keySet().stream().anyMatch(value -> value.compareTo(wanted) == 0);
    }

    private static String reason(BigDecimal below, BigDecimal before, BigDecimal now, BigDecimal step,
            BigDecimal next) {
        String sizes = (before == null ? "" : before + ", ") + below + ", " + now;
        String there = next.compareTo(now.add(step)) == 0 ? "" : "; the sizes between are there already";
        return "step " + step + " from " + sizes + (before == null ? " (one neighbour only)" : "") + there;
    }

    /**
     * Counts another text up as the size is: its number must change in proportion from neighbour to neighbour.
     *
     * @param texts gives the text of a device, or null
     * @return the text of the next size; the same text if it is that of all neighbours; nothing if no step is evident
     */
    Optional<String> follow(Device device, Function<Device, String> texts) {
        String text = texts.apply(device);
        if (text == null) {
            return Optional.empty();
        }
        if (neighbours.values().stream().allMatch(other -> text.equals(texts.apply(other)))) {
            return Optional.of(text);
        }
        Numbers own = Numbers.of(text);
        List<BigDecimal> candidates = new ArrayList<>();
        int place = -1;
        for (var neighbour : neighbours.entrySet()) {
            String other = texts.apply(neighbour.getValue());
            Optional<Integer> index = other == null ? Optional.empty() : own.onlyDifference(Numbers.of(other));
            if (index.isEmpty() || place >= 0 && place != index.get()) {
                return Optional.empty();
            }
            place = index.get();
            candidates.add(extrapolated(own.value(place), Numbers.of(other).value(place), neighbour.getKey()));
        }
        candidates.sort(Comparator.naturalOrder());
        boolean agree = candidates.get(0).compareTo(candidates.get(candidates.size() - 1)) == 0;
        return agree ? own.with(place, candidates.get(0)) : Optional.empty();
    }

    /** On the straight line through the neighbour and the chosen size. */
    private BigDecimal extrapolated(BigDecimal own, BigDecimal theirs, BigDecimal neighbour) {
        return own.add(own.subtract(theirs).multiply(next.subtract(now)).divide(now.subtract(neighbour),
                MathContext.DECIMAL64));
    }
}
