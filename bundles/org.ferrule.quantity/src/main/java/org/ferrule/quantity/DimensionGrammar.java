/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.ferrule.quantity.Token.Kind;

/**
 * The grammar of a dimension, by recursive descent:
 *
 * <pre>
 * dimension   = statement { "/" statement | "(" statement ")" } [ word ]
 * statement   = [ word ] figure [ word ] [ tolerance | range | deviation ] [ word ]
 * tolerance   = "±" figure | "+" figure [ "/" ] "-" figure | "-" figure [ "/" ] "+" figure
 * range       = ".." figure
 * deviation   = "sd" figure [ "n" number ]
 * figure      = number [ unit ]
 * word        = "min" | "max" | "nom" | "measured"
 * </pre>
 *
 * One unit in a statement serves all its figures. A word may stand in any place but holds for the whole dimension.
 */
final class DimensionGrammar {
    private final TokenReader reader;
    private final FigureReader figures;
    private final List<Passage> passages = new ArrayList<>();
    private Meaning word = Meaning.STATED;
    private Token wordToken;

    /** A statement with the part of the text where it stands. */
    record Passage(Statement statement, int start, int end) {
    }

    /** What the whole text says; the first statement is the one that counts. */
    record Result(List<Passage> passages, Meaning word) {
        Result {
            passages = List.copyOf(passages);
        }
    }

    private DimensionGrammar(String text) {
        reader = new TokenReader(text);
        figures = new FigureReader(reader);
    }

    static Result parse(String text) {
        return new DimensionGrammar(text).dimension();
    }

    private Result dimension() {
        passages.add(passage());
        while (alternative()) {
            acceptWord();
        }
        if (!reader.isNext(Kind.END)) {
            throw reader.expected("the end of the dimension");
        }
        checkWord();
        return new Result(passages, word);
    }

    private boolean alternative() {
        boolean bracket = reader.accept(Kind.OPEN);
        boolean follows = bracket || reader.accept(Kind.SLASH);
        if (follows) {
            passages.add(passage());
        }
        if (bracket) {
            reader.expect(Kind.CLOSE, "a closing bracket");
        }
        return follows;
    }

    private Passage passage() {
        int start = reader.peek().start();
        Statement statement = statement();
        return new Passage(statement, start, reader.end());
    }

    private Statement statement() {
        acceptWord();
        if (reader.isNext(Kind.MINUS)) {
            throw reader.expected("a length that is not negative");
        }
        Figure first = figures.figure();
        acceptWord();
        Statement statement = statement(first);
        acceptWord();
        return statement;
    }

    private Statement statement(Figure first) {
        Token next = reader.peek();
        return switch (next.kind()) {
            case PLUS_MINUS -> symmetric(first);
            case PLUS, MINUS -> asymmetric(first);
            case RANGE -> range(first);
            default -> next.isWord("sd") ? sample(first) : new Statement.Single(figures.complete(first, first.unit()));
        };
    }

    private Statement symmetric(Figure first) {
        reader.take();
        Figure tolerance = figures.figure();
        return toleranced(first, tolerance, tolerance);
    }

    private Statement asymmetric(Figure first) {
        Token sign = reader.take();
        Figure one = figures.figure();
        reader.accept(Kind.SLASH);
        boolean plusFirst = sign.is(Kind.PLUS);
        if (!reader.accept(plusFirst ? Kind.MINUS : Kind.PLUS)) {
            throw reader.expected(sign, "both tolerances, such as +0.02/-0.01, or \"..\" for a range");
        }
        Figure other = figures.figure();
        return plusFirst ? toleranced(first, one, other) : toleranced(first, other, one);
    }

    private Statement toleranced(Figure first, Figure above, Figure below) {
        LengthUnit unit = unitOf(first, below, above);
        Statement.Toleranced statement = new Statement.Toleranced(figures.complete(first, unit),
                figures.complete(above, unit), figures.complete(below, unit));
        if (statement.below().length().compareTo(statement.first().length()) > 0) {
            throw reader.expected(below.number(), "a tolerance not larger than the figure");
        }
        return statement;
    }

    private Statement range(Figure first) {
        reader.take();
        Figure last = figures.figure();
        LengthUnit unit = unitOf(first, last);
        Statement.Ranged statement = new Statement.Ranged(figures.complete(first, unit), figures.complete(last, unit));
        if (statement.first().length().compareTo(statement.last().length()) > 0) {
            throw reader.expected(last.number(), "an upper end that is not below the lower end");
        }
        return statement;
    }

    private Statement sample(Figure first) {
        reader.take();
        Figure deviation = figures.figure();
        LengthUnit unit = unitOf(first, deviation);
        OptionalInt n = reader.acceptWord("n") ? OptionalInt.of(specimens()) : OptionalInt.empty();
        return new Statement.Sampled(figures.complete(first, unit), figures.complete(deviation, unit), n);
    }

    private int specimens() {
        String expected = "a whole number of specimens, 2 to 999999";
        Token number = reader.expect(Kind.NUMBER, expected);
        if (!number.text().matches("[0-9]{1,6}") || Integer.parseInt(number.text()) < 2) {
            throw reader.expected(number, expected);
        }
        return Integer.parseInt(number.text());
    }

    private static LengthUnit unitOf(Figure... figures) {
        return Stream.of(figures).map(Figure::unit).filter(unit -> unit != null).findFirst().orElse(null);
    }

    private void acceptWord() {
        Token token = reader.peek();
        reader.acceptWord(Meaning::ofWord).ifPresent(meaning -> setWord(token, meaning));
    }

    private void setWord(Token token, Meaning meaning) {
        if (word != Meaning.STATED && word != meaning) {
            throw reader.expected(token, "no second word beside \"" + wordToken.text() + "\"");
        }
        word = meaning;
        wordToken = token;
    }

    private void checkWord() {
        if (passages.stream().anyMatch(passage -> !passage.statement().allows(word))) {
            throw reader.expected(wordToken, "no such word beside a range, tolerance or deviation");
        }
    }
}
