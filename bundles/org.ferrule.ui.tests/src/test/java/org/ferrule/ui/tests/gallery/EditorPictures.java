/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorDescriptor;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.editor.FormEditor;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;

/** Every editor of ours with every page and tab over the whole window, on the largest file of the demo that it opens. */
final class EditorPictures {
    private static final String CLOSED_CASE = "case-closed-7-fr.case.json";

    private final Camera camera;
    private final Robot robot;
    private final IProject demo;

    EditorPictures(Camera camera, IProject demo) {
        this.camera = camera;
        this.robot = camera.robot();
        this.demo = demo;
    }

    void take() throws CoreException {
        for (IFile file : examples()) {
            pages(file, "");
        }
        pages(demo.getFile(CLOSED_CASE), "-closed");
    }

    /** The largest file of each editor, found by asking which editor opens each file of the demo. */
    private List<IFile> examples() throws CoreException {
        List<IFile> examples = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        IFile[] files = Arrays.stream(demo.members()).filter(IFile.class::isInstance).map(IFile.class::cast)
                .filter(file -> !file.getName().equals(CLOSED_CASE))
                .sorted(Comparator.comparingLong(EditorPictures::length).reversed()).toArray(IFile[]::new);
        for (IFile file : files) {
            Optional<String> editor = editorOf(file);
            if (editor.isPresent() && !seen.contains(editor.get())) {
                seen.add(editor.get());
                examples.add(file);
            }
        }
        return examples;
    }

    private static long length(IFile file) {
        return file.getLocation().toFile().length();
    }

    private static Optional<String> editorOf(IFile file) {
        IEditorDescriptor editor = PlatformUI.getWorkbench().getEditorRegistry().getDefaultEditor(file.getName(),
                IDE.getContentType(file));
        return Optional.ofNullable(editor).map(IEditorDescriptor::getId).filter(ScreenGallery::isOurs);
    }

    private void pages(IFile file, String mark) throws CoreException {
        try {
            if (openLarge(file) instanceof FormEditor editor) {
                CTabFolder tabs = tabs(editor);
                for (int page = 0; page < tabs.getItemCount(); page++) {
                    page(editor, tabs, page, "editor-" + editor.getSite().getId() + mark + "-" + (page + 1));
                }
            }
        } finally {
            EditorFixture.page().closeAllEditors(false);
        }
    }

    private void page(FormEditor editor, CTabFolder tabs, int page, String name) {
        camera.take(name, () -> show(editor, tabs, page));
        Composite body = (Composite) editor.getActivePageInstance().getPartControl();
        lower(body, name);
        Widgets.first(body, CTabFolder.class, any -> true).ifPresent(inner -> {
            for (int tab = 1; tab < inner.getItemCount(); tab++) {
                int shown = tab;
                camera.take(name + "-" + inner.getItem(tab).getText(), () -> choose(inner, shown));
            }
        });
    }

    /** What of a long form lies below. */
    private void lower(Composite body, String name) {
        Stream.concat(Stream.of(body), Widgets.all(body, ScrolledComposite.class))
                .filter(ScrolledComposite.class::isInstance).map(ScrolledComposite.class::cast)
                .filter(scrolled -> scrolled.getContent() != null
                        && scrolled.getContent().getSize().y > scrolled.getClientArea().height + 1)
                .findFirst().ifPresent(scrolled -> camera.take(name + "-below",
                        () -> scrolled.setOrigin(0, scrolled.getContent().getSize().y)));
    }

    private IEditorPart openLarge(IFile file) throws CoreException {
        IEditorPart part = open(file);
        IWorkbenchPage page = EditorFixture.page();
        page.setPartState(page.getReference(part), IWorkbenchPage.STATE_MAXIMIZED);
        robot.waitForJobs();
        return part;
    }

    private IEditorPart open(IFile file) throws CoreException {
        IEditorPart part = IDE.openEditor(EditorFixture.page(), file);
        robot.waitForJobs();
        return part;
    }

    /** Opens a file of the demo over the whole window on the page with the tab. */
    FormEditor open(String file, String tab) throws CoreException {
        FormEditor editor = (FormEditor) openLarge(demo.getFile(file));
        CTabFolder tabs = tabs(editor);
        for (int page = 0; page < tabs.getItemCount(); page++) {
            if (tabs.getItem(page).getText().equals(tab)) {
                show(editor, tabs, page);
            }
        }
        return editor;
    }

    private static CTabFolder tabs(FormEditor editor) {
        return Stream.iterate(editor.getActivePageInstance().getPartControl(), Control::getParent)
                .filter(CTabFolder.class::isInstance).map(CTabFolder.class::cast).findFirst().orElseThrow();
    }

    private void show(FormEditor editor, CTabFolder tabs, int page) {
        choose(tabs, page);
        robot.waitForJobs();
        selectCell((Composite) editor.getActivePageInstance().getPartControl());
    }

    private void choose(CTabFolder tabs, int page) {
        if (tabs.getSelectionIndex() != page) {
            tabs.showItem(tabs.getItem(page));
            Rectangle tab = tabs.getItem(page).getBounds();
            robot.clickPainted(tabs, tab.x + tab.width / 2, tab.y + tab.height / 2);
            robot.waitFor("page " + page, () -> tabs.getSelectionIndex() == page);
        }
    }

    /** A table that has nothing selected shows less than it could. */
    private void selectCell(Composite page) {
        Widgets.all(page, NatTable.class).findFirst().ifPresent(table -> {
            Point size = table.getSize();
            robot.clickPainted(table, size.x / 2, size.y / 2);
            robot.moveTo(0, 0);
        });
    }

    /** Opens the largest file with the suffix and returns its editor. */
    IEditorPart openLargest(String suffix) throws CoreException {
        IFile file = Arrays.stream(demo.members()).filter(m -> m.getName().endsWith(suffix)).map(IFile.class::cast)
                .max(Comparator.comparingLong(EditorPictures::length)).orElseThrow();
        IEditorPart part = open(file);
        if (part instanceof FormEditor editor) {
            selectCell((Composite) editor.getActivePageInstance().getPartControl());
        }
        return part;
    }
}
