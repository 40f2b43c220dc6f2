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
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorDescriptor;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.editor.FormEditor;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Widgets;

/** Every editor of ours with every page, each on the largest file of the demo that it opens. */
final class EditorPictures {
    private final Camera camera;
    private final IProject demo;

    EditorPictures(Camera camera, IProject demo) {
        this.camera = camera;
        this.demo = demo;
    }

    void take() throws CoreException {
        for (IFile file : examples()) {
            try {
                pages(file);
            } finally {
                EditorFixture.page().closeAllEditors(false);
            }
        }
        record();
    }

    /** A page that only a closed case has. */
    private void record() throws CoreException {
        FormEditor editor = (FormEditor) open(demo.getFile("case-closed-7-fr.case.json"));
        CTabFolder tabs = tabs(editor);
        camera.take("editor-" + editor.getSite().getId() + "-record",
                () -> show(editor, tabs, tabs.getItemCount() - 1));
        EditorFixture.page().closeAllEditors(false);
    }

    /** The largest file of each editor, found by asking which editor opens each file of the demo. */
    private List<IFile> examples() throws CoreException {
        List<IFile> examples = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        IFile[] files = Arrays.stream(demo.members()).filter(IFile.class::isInstance).map(IFile.class::cast)
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

    private void pages(IFile file) throws CoreException {
        IEditorPart part = open(file);
        if (part instanceof FormEditor editor) {
            CTabFolder tabs = tabs(editor);
            for (int page = 0; page < tabs.getItemCount(); page++) {
                int shown = page;
                camera.take("editor-" + editor.getSite().getId() + "-" + (page + 1), () -> show(editor, tabs, shown));
            }
        }
    }

    private IEditorPart open(IFile file) throws CoreException {
        IEditorPart part = IDE.openEditor(EditorFixture.page(), file);
        camera.robot().waitForJobs();
        return part;
    }

    private static CTabFolder tabs(FormEditor editor) {
        return Stream.iterate(editor.getActivePageInstance().getPartControl(), Control::getParent)
                .filter(CTabFolder.class::isInstance).map(CTabFolder.class::cast).findFirst().orElseThrow();
    }

    private void show(FormEditor editor, CTabFolder tabs, int page) {
        if (tabs.getSelectionIndex() != page) {
            Rectangle tab = tabs.getItem(page).getBounds();
            camera.robot().clickPainted(tabs, tab.x + tab.width / 2, tab.y + tab.height / 2);
            camera.robot().waitFor("page " + page, () -> tabs.getSelectionIndex() == page);
        }
        camera.robot().waitForJobs();
        selectCell((Composite) editor.getActivePageInstance().getPartControl());
    }

    /** A table that has nothing selected shows less than it could. */
    private void selectCell(Composite page) {
        Widgets.all(page, NatTable.class).findFirst().ifPresent(table -> {
            Point size = table.getSize();
            camera.robot().clickPainted(table, size.x / 2, size.y / 2);
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
