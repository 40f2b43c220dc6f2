/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.chart.look.SideMark;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.ReasonCode.Weight;

/**
 * A footnote; cells with the same words share it.
 *
 * @param kind what it is about
 * @param text in words
 */
record Note(Kind kind, String text) {

    /** What a footnote is about. */
    enum Kind {
        /** A claim, a bench result, something missing, or a length. */
        PLAIN(null),
        /** Authorities that contradict each other. */
        CONFLICT(SideMark.CONFLICT),
        /** Something to watch. */
        CAUTION(SideMark.CAUTION);

        private final SideMark mark;

        Kind(SideMark mark) {
            this.mark = mark;
        }

        Optional<SideMark> mark() {
            return Optional.ofNullable(mark);
        }
    }

    Note {
        Objects.requireNonNull(kind, "kind");
        text = Printable.line(text);
    }

    /** The footnotes of a cell: claims, unknowns, lengths, conflicts going in; cautions both ways. */
    static List<Note> of(FitAnswer answer, PairNames pair, ReasonWords words) {
        List<Note> notes = new ArrayList<>();
        add(notes, answer.in(), pair, words, true);
        add(notes, answer.out(), pair, words, VerdictLook.worseOut(FitCell.of(answer)).isPresent());
        return notes.stream().distinct().sorted((a, b) -> a.kind.compareTo(b.kind)).toList();
    }

    private static void add(List<Note> notes, PhaseAnswer answer, PairNames pair, ReasonWords words, boolean all) {
        for (Reason reason : answer.reasons()) {
            if (all && isNoted(reason.code()) || reason.code().weight() == Weight.CAUTION) {
                notes.add(new Note(kind(reason.code()), words.note(reason, answer, pair)));
            }
        }
    }

    /** Where it stops and what is left stands in the cell, what lies beside it above, and what is assumed below. */
    private static boolean isNoted(ReasonCode code) {
        return switch (code) {
            case STOPS_SHORT, CAUGHT_ON_WITHDRAWAL, LESS_THAN_REQUIRED, ENOUGH_CLEARANCE, LIES_BESIDE -> false;
            default -> code.weight() != Weight.NOTE;
        };
    }

    private static Kind kind(ReasonCode code) {
        return switch (code.weight()) {
            case CONFLICT -> Kind.CONFLICT;
            case CAUTION -> Kind.CAUTION;
            default -> Kind.PLAIN;
        };
    }
}
