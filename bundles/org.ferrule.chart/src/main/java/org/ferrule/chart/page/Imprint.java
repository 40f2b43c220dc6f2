/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What a chart says of itself.
 *
 * @param title of the chart
 * @param audience for whom it is; may be empty
 * @param author who made it; may be empty
 * @param revision of the chart; may be empty
 * @param date of the revision
 * @param signedOff how it stands to its sign-off; absent where it has none
 */
public record Imprint(String title, String audience, String author, String revision, LocalDate date,
        Optional<SignedOff> signedOff) {

    public Imprint {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(audience, "audience");
        Objects.requireNonNull(author, "author");
        Objects.requireNonNull(revision, "revision");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(signedOff, "signedOff");
    }

    /** What a chart without a sign-off says of itself. */
    public Imprint(String title, String audience, String author, String revision, LocalDate date) {
        this(title, audience, author, revision, date, Optional.empty());
    }
}
