/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.ChanceLine;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.EngineeringPages;
import org.ferrule.cli.internal.PageFiles;
import org.ferrule.cli.internal.PartnerOptions;
import org.ferrule.cli.internal.QuestionOptions;
import org.ferrule.cli.internal.SectionOption;
import org.ferrule.cli.internal.SizeJson;
import org.ferrule.cli.internal.SizeText;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.SizeSearch;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.verdict.Verdict;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells how large a section may be. */
@Command(name = "require", mixinStandardHelpOptions = true, description = "Tells how thick a section of a shaft may be, or how wide a section of a lumen must be, for its partners.")
final class RequireCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private SectionOption sectionOption = new SectionOption();

    @Mixin
    private PartnerOptions partnerOptions = new PartnerOptions();

    @Mixin
    private QuestionOptions questionOptions = new QuestionOptions();

    @Option(names = "--keep", paramLabel = "VERDICT", description = "The verdict that every partner is to have at least: fits (default) or tight.")
    private String keep = Verdict.FITS.word();

    @Option(names = "--chance", paramLabel = "SHARE", description = "Also the size at which the chance of an overlap stays within this share, such as 0.001; needs a standard deviation on both sides.")
    private Double chance;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write a plot of the verdicts along the diameter, as .pdf, .svg or .png; may be given several times.")
    private List<Path> outputs = new ArrayList<>();

    @Option(names = "--json", description = "Writes the answer as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        try {
            return answer();
        } catch (ReferenceException | RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private int answer() {
        Verdict verdict = keep();
        Catalogue catalogue = questionOptions.catalogue();
        RuleSet rules = questionOptions.ruleSet();
        MovableSection section = sectionOption.read(catalogue, questionOptions.direction());
        List<FitQuestion> questions = partnerOptions.read(catalogue).stream()
                .map(partner -> question(catalogue, rules, partner)).toList();
        RequiredSize required = SizeSearch.of(section, questions, questionOptions.solver(catalogue));
        List<ChanceLine> chances = chance == null ? List.of()
                : questions.stream().map(q -> ChanceLine.of(section, q, chance)).toList();
        for (Path output : outputs) {
            PageFiles.write(EngineeringPages.required(required, rules), output)
                    .forEach(file -> spec.commandLine().getErr().println("wrote " + file));
        }
        if (json) {
            spec.commandLine().getOut().println(new SizeJson(required).write(verdict, chances).toPrettyString());
        } else {
            writeText(required, chances, verdict, rules);
        }
        return required.limit(verdict, Phase.IN).isPresent() ? Main.FITS : Main.OTHER;
    }

    private Verdict keep() {
        if (keep.equals(Verdict.FITS.word()) || keep.equals(Verdict.TIGHT.word())) {
            return keep.equals(Verdict.FITS.word()) ? Verdict.FITS : Verdict.TIGHT;
        }
        throw new CommandLineException("--keep must be fits or tight, not \"" + keep + "\"");
    }

    private FitQuestion question(Catalogue catalogue, RuleSet rules, String partner) {
        return sectionOption.isBore() ? questionOptions.question(catalogue, rules, sectionOption.reference(), partner)
                : questionOptions.question(catalogue, rules, partner, sectionOption.reference());
    }

    private void writeText(RequiredSize required, List<ChanceLine> chances, Verdict verdict, RuleSet rules) {
        PrintWriter out = spec.commandLine().getOut();
        SizeText text = new SizeText(required);
        for (Phase phase : Phase.values()) {
            out.println(text.summary(verdict, phase));
            text.partners(phase).forEach(line -> out.println("  " + line));
        }
        chances.forEach(line -> out.println(text.chance(line)));
        out.println();
        out.println("Rule set: " + rules.title() + ", rev. " + rules.revision()
                + ". The spread of the printed figure stays as it is. The instructions for use decide.");
    }
}
