/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What a report is about.
 *
 * @param version of the program
 * @param rules the rule set that was checked too; absent when none was
 * @param date of the run
 */
public record ReportHead(String version, Optional<RuleFile> rules, LocalDate date) {

    public ReportHead {
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(date, "date");
    }

    /**
     * A rule set as a file.
     *
     * @param title of the rule set
     * @param revision of the rule set
     * @param sha256 of the file's bytes, in hexadecimal digits
     */
    public record RuleFile(String title, String revision, String sha256) {
        public RuleFile {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(revision, "revision");
            Objects.requireNonNull(sha256, "sha256");
        }
    }
}
