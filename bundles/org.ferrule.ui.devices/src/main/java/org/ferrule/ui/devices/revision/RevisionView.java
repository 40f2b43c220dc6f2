/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.engine.revision.Difference;
import org.ferrule.engine.revision.Difference.Kind;
import org.ferrule.engine.revision.LibraryComparison;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.ui.Services;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.preferences.FigureWords;
import org.ferrule.ui.preferences.UnitPreferences;

/**
 * Compares the library in the active editor, as it is being edited, with another revision of it, by device and value.
 * Single values can be taken over from there.
 */
public final class RevisionView extends ViewPart {

    /** The id of the view. */
    public static final String ID = "org.ferrule.ui.devices.revisions";

    private RevisionBar bar;
    private DifferenceTree tree;
    private RevisionActions actions;
    private ActiveLibrary active;
    private Revision wanted;
    private DeviceLibrary other;
    private List<Difference> differences = List.of();

    @Override
    public void createPartControl(Composite parent) {
        Composite root = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(root);
        bar = new RevisionBar(root, this::compareWith, this::list);
        tree = new DifferenceTree(root, new DifferenceWords(new FigureWords(Services.get(UnitPreferences.class))));
        actions = new RevisionActions(root, tree, this::editor);
        UndoInView.install(getViewSite().getActionBars(), this::editor);
        active = new ActiveLibrary(getSite().getPage(), this::follow, this::compare, bar::refresh);
        active.start();
    }

    private Optional<DocumentEditor> editor() {
        return Optional.ofNullable(active).flatMap(ActiveLibrary::editor);
    }

    private void follow(Optional<DocumentEditor> editor) {
        other = null;
        wanted = null;
        bar.show(editor.map(shown -> shown.session().file()).orElse(null));
        compare();
    }

    private void compareWith(Revision revision) {
        wanted = revision;
        actions.say("Reading " + revision.title() + "...");
        new RevisionReading(revision, getSite().getShell().getDisplay(), (library, problem) -> {
            if (wanted == revision && !tree.viewer().getTree().isDisposed()) {
                other = library;
                tree.name("There: " + revision.title(), "Here, as edited");
                compare();
                if (library == null) {
                    actions.say(problem);
                }
            }
        }).schedule();
    }

    private void compare() {
        Optional<DeviceLibrary> here = active == null ? Optional.empty() : active.library();
        differences = other == null || here.isEmpty() ? List.of() : LibraryComparison.of(other, here.get());
        list();
        if (here.isEmpty()) {
            actions.say("Open a device library to compare it with an earlier revision");
        } else if (other != null) {
            actions.say(summary());
        }
    }

    private void list() {
        tree.show(differences, bar.words());
        actions.update();
    }

    private String summary() {
        long entries = differences.stream().map(Difference::entry).distinct().count();
        long came = differences.stream().filter(d -> d.kind() == Kind.ADDED && DifferenceWords.isWhole(d)).count();
        long went = differences.stream().filter(d -> d.kind() == Kind.REMOVED && DifferenceWords.isWhole(d)).count();
        return differences.isEmpty() ? "No difference"
                : (entries - came - went) + " changed, " + came + " only here, " + went + " only there";
    }

    @Override
    public void setFocus() {
        bar.setFocus();
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.close();
        }
        super.dispose();
    }
}
