/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which rows are shown: by words, by traits, by problems and by the age of their source. */
public final class Choice {

    /** Stands for sources without a date. */
    public static final int UNDATED = -1;

    private final SheetProblems problems;
    private final SourceAge age;
    private final Map<Trait, Set<String>> values = new EnumMap<>(Trait.class);
    private List<String> words = List.of();
    private boolean onlyProblems;
    private int years;

    /** Creates a choice of all rows. */
    public Choice(SheetProblems problems, SourceAge age) {
        this.problems = problems;
        this.age = age;
    }

    /** Wants rows in which every word is found. */
    public void search(String text) {
        words = SheetRow.words(text);
    }

    /** Returns the values of a trait that are wanted; none for all. */
    public Set<String> wanted(Trait trait) {
        return Set.copyOf(values.getOrDefault(trait, Set.of()));
    }

    /** Wants rows with a value of a trait, or wants them no longer. */
    public void toggle(Trait trait, String value) {
        Set<String> wanted = values.computeIfAbsent(trait, t -> new HashSet<>());
        if (!wanted.remove(value)) {
            wanted.add(value);
        }
    }

    /** Wants rows with any value of a trait. */
    public void any(Trait trait) {
        values.remove(trait);
    }

    /** Wants only rows with problems, or all. */
    public void onlyProblems(boolean only) {
        onlyProblems = only;
    }

    /** Tells whether only rows with problems are wanted. */
    public boolean isOnlyProblems() {
        return onlyProblems;
    }

    /** Wants rows whose source is older than so many years, 0 for any, or {@link #UNDATED}. */
    public void olderThan(int number) {
        years = number;
    }

    /** Returns how old sources must be, see {@link #olderThan}. */
    public int years() {
        return years;
    }

    /** Wants all rows. */
    public void clear() {
        values.clear();
        words = List.of();
        onlyProblems = false;
        years = 0;
    }

    boolean passes(SheetRow row) {
        return row.matches(words) && values.entrySet().stream().allMatch(
                entry -> entry.getValue().isEmpty() || entry.getValue().contains(entry.getKey().of(row)))
                && (!onlyProblems || problems.any(row)) && passesAge(row);
    }

    private boolean passesAge(SheetRow row) {
        return years == 0 || (years == UNDATED ? age.date(row).isEmpty() : age.olderThan(row, years));
    }
}
