/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.util.Arrays;
import java.util.List;

/**
 * A reason, without words.
 *
 * @param code what it is
 * @param arguments texts that stand in the sentence, as {@link ReasonCode} lists them; dates as ISO 8601
 */
public record Reason(ReasonCode code, List<String> arguments) {

    /** Copies the arguments. */
    public Reason {
        arguments = List.copyOf(arguments);
    }

    static Reason of(ReasonCode code, Object... arguments) {
        return new Reason(code, Arrays.stream(arguments).map(Object::toString).toList());
    }
}
