/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.device.Phase;

/**
 * Compares the answers of a chart with those that were signed off. It is made where the model may be read, and compares
 * wherever there is time: a large chart takes a while.
 */
public final class SignOffComparison {
    private final SignedVerdicts signed;
    private final List<String> askedNow;
    private final SolvedChart solved;
    private final Map<String, String> hashesNow;
    private final List<VerdictChange> changes = new ArrayList<>();
    private int count;

    /**
     * Prepares a comparison.
     *
     * @param signed what was signed off
     * @param solved the answers as they stand now
     * @param hashesNow SHA-256 of the rule set and the libraries as they stand now, by path; one that is missing, or not
     *                  saved, is left out and counts as changed
     */
    public SignOffComparison(SignedVerdicts signed, SolvedChart solved, Map<String, String> hashesNow) {
        this.signed = signed;
        this.askedNow = signed.askedNow();
        this.solved = solved;
        this.hashesNow = Map.copyOf(hashesNow);
    }

    /** Compares. */
    public SignOffState compare() {
        List<String> outerNow = solved.chart().outer().stream().map(entry -> entry.key()).toList();
        List<String> innerNow = solved.chart().inner().stream().map(device -> device.key()).toList();
        Map<String, Integer> columns = indexes(innerNow);
        Map<String, Integer> rows = indexes(outerNow);
        signed.rows().forEach(row -> Optional.ofNullable(rows.get(row.outer()))
                .ifPresent(index -> compare(row, index, columns)));
        List<String> added = new ArrayList<>(added(outerNow, signed.outer(), this::outerName));
        added.addAll(added(innerNow, Set.copyOf(signed.inner()), this::innerName));
        List<String> gone = Stream.concat(signed.outer().stream().filter(key -> !rows.containsKey(key)),
                signed.inner().stream().filter(key -> !columns.containsKey(key))).toList();
        return new SignOffState(signed.by(), signed.date(), count, changes, added, gone, documents(), asked());
    }

    private static Map<String, Integer> indexes(List<String> keys) {
        Map<String, Integer> indexes = new HashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            indexes.put(keys.get(i), i);
        }
        return indexes;
    }

    private static List<String> added(List<String> now, Set<String> then, IntFunction<String> name) {
        List<String> added = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            if (!then.contains(now.get(i))) {
                added.add(name.apply(i));
            }
        }
        return added;
    }

    private void compare(SignedVerdicts.Row row, int index, Map<String, Integer> columns) {
        String in = SigningOff.in(solved.matrix(), index);
        String out = SigningOff.out(solved.matrix(), index);
        for (int then = 0; then < signed.inner().size(); then++) {
            Integer column = columns.get(signed.inner().get(then));
            if (column != null) {
                compare(index, column, Phase.IN, row.in().charAt(then), in.charAt(column));
                compare(index, column, Phase.OUT, row.out().charAt(then), out.charAt(column));
            }
        }
    }

    private void compare(int row, int column, Phase phase, char before, char after) {
        if (before != after) {
            count++;
            if (changes.size() < SignOffState.MOST) {
                changes.add(new VerdictChange(solved.chart().outer().get(row).key(),
                        solved.chart().inner().get(column).key(), outerName(row), innerName(column), phase,
                        look(before), look(after)));
            }
        }
    }

    /** A letter that stands for nothing says that nothing is known. */
    private static VerdictLook look(char letter) {
        return VerdictLetters.look(letter).orElse(VerdictLook.UNKNOWN);
    }

    private String outerName(int row) {
        return solved.chart().outer().get(row).device().device().name();
    }

    private String innerName(int column) {
        return solved.chart().inner().get(column).device().name();
    }

    private List<String> documents() {
        Set<String> changed = new LinkedHashSet<>();
        signed.hashes().forEach((path, then) -> {
            if (!then.equals(hashesNow.get(path))) {
                changed.add(path);
            }
        });
        hashesNow.keySet().stream().filter(path -> !signed.hashes().containsKey(path)).sorted().forEach(changed::add);
        return List.copyOf(changed);
    }

    private List<String> asked() {
        List<String> changed = new ArrayList<>();
        signed.asked().stream().filter(then -> !askedNow.contains(then)).map(then -> "no more " + then)
                .forEach(changed::add);
        askedNow.stream().filter(now -> !signed.asked().contains(now)).map(now -> "now " + now).forEach(changed::add);
        return changed;
    }
}
