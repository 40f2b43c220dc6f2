/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.ferrule.quantity.QuantitySyntaxException;

/**
 * Proposes what may follow the cursor in a figure: a unit after a number, then what the figure means. The grammar
 * itself tells what may follow, so nothing is proposed that cannot be read.
 */
final class FigureProposals {

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
    private static final Pattern LETTERS_AT_END = Pattern.compile("\\p{L}*$");

    private static final IContentProposal[] NONE = {};
    private static final List<Word> LENGTH_UNITS = List.of(unit("mm", "millimetre"), unit("in", "inch, 25.4 mm"),
            unit("Fr", "French, a third of a millimetre"), unit("cm", "centimetre"));
    private static final List<Word> PRESSURE_UNITS = List.of(unit("atm", "atmosphere, 101.325 kPa"),
            unit("bar", "bar, 100 kPa"), unit("kPa", "kilopascal"), unit("MPa", "megapascal"),
            unit("psi", "pound-force per square inch"));
    private static final List<Word> MEANINGS = List.of(new Word("min", "never less than this", ""),
            new Word("max", "never more than this", ""), new Word("nom", "nominal: what is aimed at", ""),
            new Word("measured", "one measurement", ""), new Word("\u00b1", "tolerance to both sides", "0"),
            new Word("..", "range: the upper end follows", "#"),
            new Word("sd", "standard deviation of a sample follows", " 0"),
            new Word("n", "number of specimens of the sample follows", " 2"));

    private final List<Word> words;
    private final Function<String, ?> parser;

    /** A word, what it means, and what must follow it for the text to be whole; # is the last number again. */
    private record Word(String text, String meaning, String probe) {

        String label() {
            return text + "  \u2013  " + meaning;
        }
    }

    private FigureProposals(List<Word> words, Function<String, ?> parser) {
        this.words = words;
        this.parser = parser;
    }

    private static Word unit(String symbol, String meaning) {
        return new Word(symbol, meaning, "");
    }

    static FigureProposals ofDimension(Function<String, ?> parser) {
        return new FigureProposals(Stream.concat(LENGTH_UNITS.stream(), MEANINGS.stream()).toList(), parser);
    }

    static FigureProposals ofOffset(Function<String, ?> parser) {
        return new FigureProposals(LENGTH_UNITS, parser);
    }

    static FigureProposals ofPressure(Function<String, ?> parser) {
        return new FigureProposals(PRESSURE_UNITS, parser);
    }

    /** Returns what may be inserted at the cursor: what completes the word before it, else what may follow that. */
    IContentProposal[] at(String contents, int position) {
        String before = contents.substring(0, position);
        String begun = LETTERS_AT_END.matcher(before).results().findFirst().map(MatchResult::group).orElse("");
        IContentProposal[] completing = begun.isEmpty() ? NONE
                : proposals(before.substring(0, before.length() - begun.length()), begun);
        return completing.length > 0 ? completing : proposals(before, "");
    }

    private IContentProposal[] proposals(String whole, String begun) {
        String gap = whole.isBlank() || whole.endsWith(" ") || !begun.isEmpty() ? "" : " ";
        return words.stream().filter(word -> word.text().startsWith(begun) && !word.text().equals(begun))
                .filter(word -> mayFollow(whole, word)).map(word -> proposal(gap, word, begun))
                .toArray(IContentProposal[]::new);
    }

    private boolean mayFollow(String whole, Word word) {
        String last = NUMBER.matcher(whole).results().map(MatchResult::group).reduce((a, b) -> b).orElse("");
        try {
            parser.apply(whole + " " + word.text() + word.probe().replace("#", last));
            return true;
        } catch (QuantitySyntaxException e) {
            return false;
        }
    }

    private static IContentProposal proposal(String gap, Word word, String begun) {
        String inserted = gap + word.text().substring(begun.length()) + (word.probe().startsWith(" ") ? " " : "");
        return new ContentProposal(inserted, word.label(), null, inserted.length());
    }
}
