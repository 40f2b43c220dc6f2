/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.look.DropDown;
import org.ferrule.picture.PictureExporter;

/** Asks where a picture is to be saved, in which format, and whether the words that go with it are to stand below. */
final class SavePictureDialog extends TitleAreaDialog {

    private static final int WIDTH_HINT = 380;

    private final SeenPicture seen;
    private final List<PictureExporter> formats = PictureFormats.all();
    private Text file;
    private DropDown format;
    private Button captioned;

    SavePictureDialog(Shell shell, SeenPicture seen) {
        super(shell);
        this.seen = seen;
        setHelpAvailable(false);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Save picture");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(3).margins(10, 10).applyTo(area);
        createFile(area);
        createFormat(area);
        createCaption(area);
        setTitle(seen.title().isEmpty() ? "Picture" : seen.title());
        setMessage("The picture is saved as it is seen, with its size and zoom.");
        return area;
    }

    private void createFile(Composite area) {
        new Label(area, SWT.NONE).setText("&File");
        file = new Text(area, SWT.BORDER);
        file.setText(folder().resolve(seen.fileName() + "." + formats.get(0).extension()).toString());
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_HINT, SWT.DEFAULT).applyTo(file);
        Button browse = new Button(area, SWT.PUSH);
        browse.setText("&Browse...");
        setButtonLayoutData(browse);
        browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
        file.addModifyListener(event -> typed());
    }

    private Path folder() {
        return seen.folder().map(folder -> folder.getLocation())
                .or(() -> Optional.ofNullable(ResourcesPlugin.getWorkspace().getRoot().getLocation()))
                .map(IPath::toPath).orElseGet(() -> Path.of(System.getProperty("user.home")));
    }

    private void createFormat(Composite area) {
        new Label(area, SWT.NONE).setText("F&ormat");
        format = new DropDown(area, WIDTH_HINT).onChoice(this::formatChosen);
        format.show(formats.stream().map(PictureExporter::label).toList(), 0);
        new Label(area, SWT.NONE);
    }

    private void createCaption(Composite area) {
        captioned = new Button(area, SWT.CHECK);
        captioned.setText("With &title, sources, rule set and date below the picture");
        captioned.setSelection(!seen.owner().complete());
        captioned.setEnabled(!seen.owner().complete());
        GridDataFactory.swtDefaults().span(3, 1).applyTo(captioned);
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setText("Save picture");
        dialog.setFilterExtensions(formats.stream().map(f -> "*." + f.extension()).toArray(String[]::new));
        dialog.setFilterNames(formats.stream().map(PictureExporter::label).toArray(String[]::new));
        dialog.setFilterIndex(format.chosen());
        File typed = new File(file.getText());
        dialog.setFilterPath(typed.getParent());
        dialog.setFileName(typed.getName());
        String chosen = dialog.open();
        if (chosen != null) {
            file.setText(chosen);
        }
    }

    /** The ending that is typed chooses the format. */
    private void typed() {
        PictureFormats.forFile(file.getText()).ifPresent(typed -> {
            for (int i = 0; i < formats.size(); i++) {
                if (formats.get(i).extension().equals(typed.extension())) {
                    format.choose(i);
                }
            }
        });
        setErrorMessage(null);
    }

    /** The format that is chosen changes the ending. */
    private void formatChosen() {
        String name = file.getText();
        String bare = PictureFormats.forFile(name)
                .map(old -> name.substring(0, name.length() - old.extension().length() - 1)).orElse(name);
        file.setText(bare + "." + chosenFormat().extension());
    }

    private PictureExporter chosenFormat() {
        return formats.get(Math.max(0, format.chosen()));
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Save", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    /** Stays open while the picture could not be saved. */
    @Override
    protected void okPressed() {
        try {
            Path target = target();
            if (mayReplace(target)) {
                new SavePicture(seen, captioned.getSelection()).write(target, chosenFormat());
                super.okPressed();
            }
        } catch (IOException | InvalidPathException e) {
            setErrorMessage("The picture could not be saved: " + e.getMessage());
        }
    }

    /** A name without the ending of its format gets it. */
    private Path target() throws IOException {
        String name = file.getText().strip();
        String ending = "." + chosenFormat().extension();
        Path target = folder().resolve(PictureFormats.forFile(name).isPresent() ? name : name + ending);
        if (name.isEmpty() || !Files.isDirectory(target.toAbsolutePath().getParent())) {
            throw new IOException("there is no folder " + target.toAbsolutePath().getParent());
        }
        return target;
    }

    private boolean mayReplace(Path target) {
        return !Files.exists(target) || MessageDialog.openQuestion(getShell(), "Save picture",
                "There is already " + target.getFileName() + " in " + target.getParent() + ".\n\nReplace it?");
    }
}
