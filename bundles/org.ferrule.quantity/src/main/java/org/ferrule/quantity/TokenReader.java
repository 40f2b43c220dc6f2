/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ferrule.quantity.Token.Kind;

/** Goes through the tokens of one text, one ahead, and words the errors. */
final class TokenReader {
    private final String text;
    private final List<Token> tokens;
    private int at;

    TokenReader(String text) {
        this.text = text;
        this.tokens = Tokenizer.tokens(text);
    }

    Token peek() {
        return tokens.get(at);
    }

    /** Returns where the last token that was taken ends. */
    int end() {
        return at == 0 ? 0 : tokens.get(at - 1).end();
    }

    boolean isNext(Kind kind) {
        return peek().is(kind);
    }

    Token take() {
        Token token = peek();
        if (!token.is(Kind.END)) {
            at++;
        }
        return token;
    }

    boolean accept(Kind kind) {
        boolean found = isNext(kind);
        if (found) {
            take();
        }
        return found;
    }

    boolean acceptWord(String word) {
        boolean found = peek().isWord(word);
        if (found) {
            take();
        }
        return found;
    }

    /** Takes the next token if it is a word with a value in the table. */
    <T> Optional<T> acceptWord(Function<String, Optional<T>> table) {
        Optional<T> found = isNext(Kind.WORD) ? table.apply(peek().text()) : Optional.empty();
        found.ifPresent(value -> take());
        return found;
    }

    Token expect(Kind kind, String expected) {
        if (!isNext(kind)) {
            throw expected(expected);
        }
        return take();
    }

    /** Returns the error for the next token. */
    QuantitySyntaxException expected(String what) {
        return expected(peek(), what);
    }

    QuantitySyntaxException expected(Token token, String what) {
        return new QuantitySyntaxException(text, token.start(), what);
    }
}
