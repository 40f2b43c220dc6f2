/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CaseRun;
import org.ferrule.cli.internal.PlanJson;
import org.ferrule.cli.internal.PlanText;
import org.ferrule.escalation.plan.Plan;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a case. */
@Command(name = "plan", mixinStandardHelpOptions = true, description = "Plans a case: what to try next, with what of the shelf, in which order, and when to stop. Exit code 1 when nothing on the ladder can be done.")
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", description = "The case, a file ending in .case.json.")
    private Path file;

    @Option(names = "--json", description = "Writes the plan as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        CaseRun run = CaseRun.of(file);
        run.problems().forEach(spec.commandLine().getErr()::println);
        Plan plan = run.assembled().plan();
        if (json) {
            spec.commandLine().getOut().println(new PlanJson(run.words()).write(plan).toPrettyString());
        } else {
            new PlanText(run.words(), spec.commandLine().getOut()).print(plan);
        }
        return plan.canGoOn() || plan.progress().crossed() ? Main.FITS : Main.OTHER;
    }
}
