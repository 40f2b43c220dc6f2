/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.Locale;

import org.ferrule.fit.verdict.Reason.Argument;
import org.ferrule.fit.verdict.Reason.ClearanceArgument;
import org.ferrule.fit.verdict.Reason.CountArgument;
import org.ferrule.fit.verdict.Reason.DiameterArgument;
import org.ferrule.fit.verdict.Reason.DistanceArgument;
import org.ferrule.fit.verdict.Reason.NameArgument;
import org.ferrule.fit.verdict.Reason.ShareArgument;
import org.ferrule.fit.verdict.Reason.SourceArgument;

/** How an argument of a reason is written, and of which kind it must be. */
enum Role {
    SECTION(NameArgument.class), PART(NameArgument.class), PLACE(NameArgument.class),
    BORE(NameArgument.class), NAME(NameArgument.class), TEXT(NameArgument.class),
    DEVICE(DiameterArgument.class), LUMEN(DiameterArgument.class), PLAIN(DiameterArgument.class),
    CLEARANCE(ClearanceArgument.class), OVERLAP(ClearanceArgument.class), REQUIRED(ClearanceArgument.class),
    LENGTH(DistanceArgument.class), ROOM(DistanceArgument.class), SHORTFALL(DistanceArgument.class),
    SAMPLES(CountArgument.class),
    SHARE(ShareArgument.class), ATBEST(ShareArgument.class), ATWORST(ShareArgument.class),
    SOURCE(SourceArgument.class);

    private final Class<? extends Argument> kind;

    Role(Class<? extends Argument> kind) {
        this.kind = kind;
    }

    /** The role that a template names; fails naming the word when there is none. */
    static Role ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** Whether an argument can be written in this role. */
    boolean takes(Argument argument) {
        return kind.isInstance(argument);
    }
}
