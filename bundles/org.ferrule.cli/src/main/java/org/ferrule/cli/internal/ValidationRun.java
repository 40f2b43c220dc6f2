/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.Optional;

import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.engineering.validation.ReportHead;
import org.ferrule.fit.engineering.validation.ReportHead.RuleFile;
import org.ferrule.fit.engineering.validation.Validation;
import org.ferrule.fit.engineering.validation.ValidationReport;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.io.csv.PublishedValues;

/** Runs the published values that ship with the program. */
public final class ValidationRun {
    private ValidationRun() {
    }

    /**
     * Runs them.
     *
     * @param version of the program
     * @param rules the file of a rule set that is checked too; absent for none
     */
    public static ValidationReport of(String version, Optional<Path> rules, LocalDate date) {
        Optional<RuleSet> ruleSet = rules.map(file -> RuleTranslator.translate(new DocumentFiles().rules(file)));
        Optional<RuleFile> named = rules.map(file -> new RuleFile(ruleSet.orElseThrow().title(),
                ruleSet.orElseThrow().revision(), sha256(file)));
        return Validation.run(new ReportHead(version, named, date), PublishedValues.tables(), ruleSet);
    }

    private static String sha256(Path file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
