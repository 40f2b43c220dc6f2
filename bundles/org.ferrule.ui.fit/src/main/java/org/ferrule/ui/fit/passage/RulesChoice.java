/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.eclipse.swt.widgets.Composite;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.ui.look.DropDown;

/**
 * By which rule set of a project labels become intervals: known by its path in the project, and shown by its title, with
 * the path where a copy has the same title.
 */
public final class RulesChoice {

    private static final int LEAST_WIDTH = 80;

    private final DropDown list;
    private List<String> paths = List.of();

    /** Creates the choice in a grid; something is run whenever the user chooses another rule set. */
    public RulesChoice(Composite parent, Runnable changed) {
        list = new DropDown(parent, LEAST_WIDTH).explained("By which labels become intervals").onChoice(changed);
    }

    /** Offers the rule sets of a project and chooses one by its path; if it is not there, the only one or none. */
    public void show(ProjectDevices project, String path) {
        paths = paths(project);
        List<String> titles = project.rules().entrySet().stream().map(RulesChoice::title).toList();
        list.show(IntStream.range(0, paths.size()).mapToObj(i -> Collections.frequency(titles, titles.get(i)) == 1
                ? titles.get(i)
                : titles.get(i) + "  \u2013  " + paths.get(i)).toList(), paths.size() == 1 ? 0 : paths.indexOf(path));
    }

    /** Does the same, but chooses the first one where the path is not there. */
    public void showOrFirst(ProjectDevices project, String path) {
        show(project, paths(project).contains(path) ? path : paths(project).stream().findFirst().orElse(""));
    }

    private static List<String> paths(ProjectDevices project) {
        return List.copyOf(project.rules().keySet());
    }

    private static String title(Map.Entry<String, RuleSet> rules) {
        return rules.getValue().title().isEmpty() ? rules.getKey() : rules.getValue().title();
    }

    /** Returns the path of the chosen rule set; empty if there is none. */
    public String path() {
        return list.chosen() < 0 ? "" : paths.get(list.chosen());
    }
}
