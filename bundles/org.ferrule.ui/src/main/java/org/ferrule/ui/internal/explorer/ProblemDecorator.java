/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.viewers.BaseLabelProvider;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.jface.viewers.ILightweightLabelDecorator;
import org.eclipse.jface.viewers.LabelProviderChangedEvent;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.Services;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemBoard;

/** Puts the sign of the gravest problem onto files, the folders that hold them, and the devices inside of them. */
public class ProblemDecorator extends BaseLabelProvider implements ILightweightLabelDecorator {

    private final ProblemBoard board = Services.get(ProblemBoard.class);
    private final Consumer<IFile> follower = file -> changedSoon();
    private final IResourceChangeListener markerFollower = this::markersChanged;

    /** Creates a decorator that follows markers and board. */
    public ProblemDecorator() {
        board.addListener(follower);
        ResourcesPlugin.getWorkspace().addResourceChangeListener(markerFollower, IResourceChangeEvent.POST_CHANGE);
    }

    @Override
    public void dispose() {
        board.removeListener(follower);
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(markerFollower);
        super.dispose();
    }

    private void markersChanged(IResourceChangeEvent event) {
        if (event.findMarkerDeltas(IMarker.PROBLEM, true).length > 0) {
            changedSoon();
        }
    }

    private void changedSoon() {
        Display.getDefault().asyncExec(() -> fireLabelProviderChanged(new LabelProviderChangedEvent(this)));
    }

    @Override
    public void decorate(Object element, IDecoration decoration) {
        int severity = element instanceof DocumentNode node ? severity(node) : severity((IResource) element);
        if (severity >= IMarker.SEVERITY_WARNING) {
            decoration.addOverlay(sign(severity), IDecoration.BOTTOM_LEFT);
        }
    }

    private static ImageDescriptor sign(int severity) {
        return PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(
                severity == IMarker.SEVERITY_ERROR ? ISharedImages.IMG_DEC_FIELD_ERROR
                        : ISharedImages.IMG_DEC_FIELD_WARNING);
    }

    private static int severity(IResource resource) {
        try {
            return resource.isAccessible()
                    ? resource.findMaxProblemSeverity(IMarker.PROBLEM, true, IResource.DEPTH_INFINITE)
                    : -1;
        } catch (CoreException e) {
            ILog.of(ProblemDecorator.class).log(e.getStatus());
            return -1;
        }
    }

    private int severity(DocumentNode node) {
        List<FoundProblem> problems = board.of(node.file());
        return problems.stream().filter(problem -> isInside(problem.path(), node.path()))
                .map(FoundProblem::severity).mapToInt(ProblemDecorator::rank).max().orElse(-1);
    }

    private static boolean isInside(String path, String node) {
        return path.equals(node) || path.startsWith(node + "/");
    }

    private static int rank(Severity severity) {
        return switch (severity) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            case INFO -> IMarker.SEVERITY_INFO;
        };
    }
}
