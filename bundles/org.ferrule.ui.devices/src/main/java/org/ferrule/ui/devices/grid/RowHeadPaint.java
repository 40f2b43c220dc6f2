/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.DecorationOverlayIcon;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetProblems;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.look.Icons;

/** Paints the heads of rows: the icon of the kind, with a sign for the gravest problem. */
final class RowHeadPaint extends AbstractCellPainter {

    private final Listing listing;
    private final SheetProblems problems;

    RowHeadPaint(Listing listing, SheetProblems problems) {
        this.listing = listing;
        this.problems = problems;
    }

    @Override
    public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
        boolean selected = cell.getDisplayMode().equals(DisplayMode.SELECT);
        boolean row = cell.getRowIndex() < listing.lines().size()
                && listing.lines().get(cell.getRowIndex()) instanceof SheetLine.Of;
        gc.setBackground(selected ? GridColours.selected() : row ? GridColours.head() : GridColours.group());
        gc.fillRectangle(bounds.x, bounds.y, bounds.width + (row ? 0 : 1), bounds.height);
        if (row) {
            Image image = listing.lines().get(cell.getRowIndex()).row().map(this::image).orElseThrow();
            Rectangle size = image.getBounds();
            gc.drawImage(image, bounds.x + (bounds.width - size.width) / 2,
                    bounds.y + (bounds.height - size.height) / 2);
        }
    }

    private Image image(SheetRow row) {
        Icons icon = row.parts() instanceof DeviceLine ? Icons.LINE : Icons.of(row.kind());
        Severity severity = problems.gravest(row);
        return severity == null || severity == Severity.INFO ? icon.image() : signed(icon, severity);
    }

    private static Image signed(Icons icon, Severity severity) {
        String key = RowHeadPaint.class.getName() + icon + severity;
        if (JFaceResources.getImageRegistry().getDescriptor(key) == null) {
            JFaceResources.getImageRegistry().put(key,
                    new DecorationOverlayIcon(icon.image(), sign(severity), IDecoration.BOTTOM_LEFT));
        }
        return JFaceResources.getImageRegistry().get(key);
    }

    private static ImageDescriptor sign(Severity severity) {
        Image image = FieldDecorationRegistry.getDefault().getFieldDecoration(severity == Severity.ERROR
                ? FieldDecorationRegistry.DEC_ERROR : FieldDecorationRegistry.DEC_WARNING).getImage();
        return ImageDescriptor.createFromImageDataProvider(image::getImageData);
    }

    @Override
    public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return cell.getBounds().width;
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return cell.getBounds().height;
    }
}
