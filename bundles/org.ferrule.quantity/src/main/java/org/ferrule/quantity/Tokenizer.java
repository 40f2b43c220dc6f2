/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.ArrayList;
import java.util.List;
import org.ferrule.quantity.Token.Kind;

/** Cuts the text of a quantity into tokens. Knows ASCII digits only, so that no locale can change a figure. */
final class Tokenizer {
    private static final int MOST_DIGITS = 30;
    /** What people type for the sign of a symmetric tolerance where the keyboard has none. */
    private static final List<String> PLUS_MINUS = List.of("+/-", "+-");
    private static final String INCH_MARKS = "\"\u2033\u201d";

    private final String text;
    private int at;

    private Tokenizer(String text) {
        this.text = text;
    }

    /**
     * Returns the tokens of the text; the last one is {@link Kind#END}.
     *
     * @throws QuantitySyntaxException on a decimal comma or a number with too many digits
     */
    static List<Token> tokens(String text) {
        return new Tokenizer(text).all();
    }

    private List<Token> all() {
        List<Token> tokens = new ArrayList<>();
        skipBlanks();
        while (at < text.length()) {
            tokens.add(next());
            skipBlanks();
        }
        tokens.add(new Token(Kind.END, "", at));
        return tokens;
    }

    private void skipBlanks() {
        while (at < text.length() && isBlank(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    private Token next() {
        char c = text.charAt(at);
        if (isDigit(at) || c == '.' && isDigit(at + 1)) {
            return number();
        }
        if (Character.isLetter(c)) {
            return word();
        }
        return PLUS_MINUS.stream().filter(spelling -> text.startsWith(spelling, at)).findFirst()
                .map(spelling -> take(Kind.PLUS_MINUS, spelling.length())).orElseGet(() -> sign(c));
    }

    private Token sign(char c) {
        return switch (c) {
            case '\u00b1' -> take(Kind.PLUS_MINUS, 1);
            case '+' -> take(Kind.PLUS, 1);
            case '-', '\u2212' -> take(Kind.MINUS, 1);
            case '/' -> take(Kind.SLASH, 1);
            case '(' -> take(Kind.OPEN, 1);
            case ')' -> take(Kind.CLOSE, 1);
            case '.' -> text.startsWith("..", at) ? take(Kind.RANGE, 2) : take(Kind.OTHER, 1);
            default -> take(INCH_MARKS.indexOf(c) >= 0 ? Kind.WORD : Kind.OTHER, 1);
        };
    }

    private Token number() {
        int end = skipDigits(at);
        if (charAt(end) == '.' && isDigit(end + 1)) {
            end = skipDigits(end + 1);
        }
        rejectComma(end);
        if (end - at > MOST_DIGITS) {
            throw new QuantitySyntaxException(text, at, "a number of at most " + MOST_DIGITS + " digits");
        }
        return take(Kind.NUMBER, end - at);
    }

    private void rejectComma(int comma) {
        if (charAt(comma) == ',' && isDigit(comma + 1)) {
            String typed = text.substring(at, skipDigits(comma + 1));
            throw new QuantitySyntaxException(text, comma, "a decimal point, because \"" + typed + "\" could mean "
                    + typed.replace(',', '.') + " or " + typed.replace(",", ""));
        }
    }

    private Token word() {
        int end = at;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        return take(Kind.WORD, end - at);
    }

    private Token take(Kind kind, int length) {
        Token token = new Token(kind, text.substring(at, at + length), at);
        at += length;
        return token;
    }

    private int skipDigits(int from) {
        int end = from;
        while (isDigit(end)) {
            end++;
        }
        return end;
    }

    private boolean isDigit(int index) {
        char c = charAt(index);
        return c >= '0' && c <= '9';
    }

    private char charAt(int index) {
        return index < text.length() ? text.charAt(index) : '\0';
    }
}
