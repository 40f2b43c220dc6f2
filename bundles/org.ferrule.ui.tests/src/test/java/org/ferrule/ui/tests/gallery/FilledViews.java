/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.fit.passage.Direction;
import org.ferrule.ui.edit.DeviceCommand;
import org.ferrule.ui.fit.FitIds;
import org.ferrule.ui.fit.passage.PassageQuestion;
import org.ferrule.ui.fit.passage.PassageView;
import org.ferrule.ui.fit.stack.StackEntry;
import org.ferrule.ui.fit.stack.StackRequest;
import org.ferrule.ui.fit.stack.StackView;
import org.ferrule.ui.fit.sums.SumsView;
import org.ferrule.ui.profile.ProfileIds;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Trees;
import org.ferrule.ui.tests.robot.Widgets;

/** Gives views that show nothing by themselves something to show. */
final class FilledViews {

    /** Views that are given devices, and the commands that do. */
    private static final Map<String, String> BY_COMMAND = Map.of(ProfileIds.COMPARE_VIEW,
            "org.ferrule.ui.profile.compare", ProfileIds.GROWTH_VIEW, "org.ferrule.ui.profile.growth");
    private static final String DEVICES = Stream.of("dun-sc-300-15", "dun-nc-300-15", "kol-twin-300-15")
            .map(id -> "/Demo/balloons.devices.json!" + id).collect(Collectors.joining("\n"));
    private static final String RULES = "house.rules.json";

    private final Robot robot;
    private final IProject demo;

    FilledViews(Robot robot, IProject demo) {
        this.robot = robot;
        this.demo = demo;
    }

    /** Returns whether the view can be given something. */
    boolean fills(String id) {
        return BY_COMMAND.containsKey(id) || List.of(FitIds.PASSAGE_VIEW, FitIds.STACK_VIEW, FitIds.SUMS_VIEW,
                IPageLayout.ID_PROBLEM_VIEW).contains(id);
    }

    /** Gives it. */
    void fill(String id, IViewPart view) {
        if (BY_COMMAND.containsKey(id)) {
            run(BY_COMMAND.get(id));
        } else if (view instanceof PassageView passage) {
            passage.ask(demo, new PassageQuestion("brn-guide-6fr-left-100", "", "hes-workhorse-190", "dun-sc-200-15",
                    Direction.TIP_FIRST, "", RULES));
            robot.waitFor("an answer", () -> passage.panel().shown().isPresent());
        } else if (view instanceof StackView stack) {
            stack.ask(demo, new StackRequest(List.of(StackEntry.of("brn-sheath-6fr-11"),
                    StackEntry.of("brn-guide-6fr-left-100").ahead("80 cm"),
                    StackEntry.of("pel-extension-6fr").ahead("8 cm"), StackEntry.of("pel-micro-150").ahead("5 cm"),
                    StackEntry.of("hes-workhorse-300").ahead("6 cm")), "2.4 mm", RULES));
            robot.waitFor("a picture", () -> stack.canvas().picture().isPresent());
        } else if (view instanceof SumsView sums) {
            pack(sums);
        } else {
            expand(view.getSite().getShell());
        }
    }

    private static void run(String id) {
        IWorkbench workbench = PlatformUI.getWorkbench();
        Command command = workbench.getService(ICommandService.class).getCommand(id);
        try {
            workbench.getService(IHandlerService.class).executeCommand(
                    ParameterizedCommand.generateCommand(command, Map.of(DeviceCommand.DEVICES, DEVICES)), null);
        } catch (CommandException e) {
            throw new IllegalStateException(id, e);
        }
    }

    private void pack(SumsView sums) {
        Composite body = sums.answer().picture().getParent().getParent().getParent();
        List<String> shafts = List.of("1.2 mm", "0.047 in", "3 Fr");
        for (int i = 0; i < shafts.size(); i++) {
            robot.replace(Widgets.labelled(body, "Device " + (i + 1), Text.class), shafts.get(i));
            robot.settle();
        }
    }

    private void expand(Shell window) {
        robot.waitFor("a group of problems", () -> groups(window).findAny().isPresent());
        groups(window).findFirst().ifPresent(tree -> Trees.expand(robot, tree.getItem(0)));
    }

    private static Stream<Tree> groups(Shell window) {
        return Widgets.all(window, Tree.class).filter(tree -> tree.getHeaderVisible() && tree.getItemCount() > 0)
                .filter(tree -> (tree.getStyle() & SWT.FULL_SELECTION) != 0);
    }
}
