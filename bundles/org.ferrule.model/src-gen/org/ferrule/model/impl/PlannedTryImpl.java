/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.Prior;
import org.ferrule.model.Sourced;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Planned Try</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.PlannedTryImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlannedTryImpl#getPage <em>Page</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlannedTryImpl#getNote <em>Note</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlannedTryImpl#getSuccesses <em>Successes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlannedTryImpl#getFailures <em>Failures</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PlannedTryImpl#getPrior <em>Prior</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlannedTryImpl extends CostedImpl implements PlannedTry
{
	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPage() <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPage()
	 * @generated
	 * @ordered
	 */
	protected static final String PAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPage() <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPage()
	 * @generated
	 * @ordered
	 */
	protected String page = PAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSuccesses() <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuccesses()
	 * @generated
	 * @ordered
	 */
	protected static final int SUCCESSES_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getSuccesses() <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuccesses()
	 * @generated
	 * @ordered
	 */
	protected int successes = SUCCESSES_EDEFAULT;

	/**
	 * This is true if the Successes attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean successesESet;

	/**
	 * The default value of the '{@link #getFailures() <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailures()
	 * @generated
	 * @ordered
	 */
	protected static final int FAILURES_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getFailures() <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailures()
	 * @generated
	 * @ordered
	 */
	protected int failures = FAILURES_EDEFAULT;

	/**
	 * This is true if the Failures attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean failuresESet;

	/**
	 * The cached value of the '{@link #getPrior() <em>Prior</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrior()
	 * @generated
	 * @ordered
	 */
	protected Prior prior;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlannedTryImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.PLANNED_TRY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource()
	{
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource)
	{
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPage()
	{
		return page;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPage(String newPage)
	{
		String oldPage = page;
		page = newPage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__PAGE, oldPage, page));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote()
	{
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote)
	{
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSuccesses()
	{
		return successes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSuccesses(int newSuccesses)
	{
		int oldSuccesses = successes;
		successes = newSuccesses;
		boolean oldSuccessesESet = successesESet;
		successesESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__SUCCESSES, oldSuccesses, successes, !oldSuccessesESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetSuccesses()
	{
		int oldSuccesses = successes;
		boolean oldSuccessesESet = successesESet;
		successes = SUCCESSES_EDEFAULT;
		successesESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PLANNED_TRY__SUCCESSES, oldSuccesses, SUCCESSES_EDEFAULT, oldSuccessesESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetSuccesses()
	{
		return successesESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFailures()
	{
		return failures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFailures(int newFailures)
	{
		int oldFailures = failures;
		failures = newFailures;
		boolean oldFailuresESet = failuresESet;
		failuresESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__FAILURES, oldFailures, failures, !oldFailuresESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetFailures()
	{
		int oldFailures = failures;
		boolean oldFailuresESet = failuresESet;
		failures = FAILURES_EDEFAULT;
		failuresESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PLANNED_TRY__FAILURES, oldFailures, FAILURES_EDEFAULT, oldFailuresESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetFailures()
	{
		return failuresESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Prior getPrior()
	{
		return prior;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPrior(Prior newPrior, NotificationChain msgs)
	{
		Prior oldPrior = prior;
		prior = newPrior;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__PRIOR, oldPrior, newPrior);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrior(Prior newPrior)
	{
		if (newPrior != prior)
		{
			NotificationChain msgs = null;
			if (prior != null)
				msgs = ((InternalEObject)prior).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.PLANNED_TRY__PRIOR, null, msgs);
			if (newPrior != null)
				msgs = ((InternalEObject)newPrior).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.PLANNED_TRY__PRIOR, null, msgs);
			msgs = basicSetPrior(newPrior, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_TRY__PRIOR, newPrior, newPrior));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.PLANNED_TRY__PRIOR:
				return basicSetPrior(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.PLANNED_TRY__SOURCE:
				return getSource();
			case ModelPackage.PLANNED_TRY__PAGE:
				return getPage();
			case ModelPackage.PLANNED_TRY__NOTE:
				return getNote();
			case ModelPackage.PLANNED_TRY__SUCCESSES:
				return getSuccesses();
			case ModelPackage.PLANNED_TRY__FAILURES:
				return getFailures();
			case ModelPackage.PLANNED_TRY__PRIOR:
				return getPrior();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.PLANNED_TRY__SOURCE:
				setSource((String)newValue);
				return;
			case ModelPackage.PLANNED_TRY__PAGE:
				setPage((String)newValue);
				return;
			case ModelPackage.PLANNED_TRY__NOTE:
				setNote((String)newValue);
				return;
			case ModelPackage.PLANNED_TRY__SUCCESSES:
				setSuccesses((Integer)newValue);
				return;
			case ModelPackage.PLANNED_TRY__FAILURES:
				setFailures((Integer)newValue);
				return;
			case ModelPackage.PLANNED_TRY__PRIOR:
				setPrior((Prior)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.PLANNED_TRY__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case ModelPackage.PLANNED_TRY__PAGE:
				setPage(PAGE_EDEFAULT);
				return;
			case ModelPackage.PLANNED_TRY__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case ModelPackage.PLANNED_TRY__SUCCESSES:
				unsetSuccesses();
				return;
			case ModelPackage.PLANNED_TRY__FAILURES:
				unsetFailures();
				return;
			case ModelPackage.PLANNED_TRY__PRIOR:
				setPrior((Prior)null);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.PLANNED_TRY__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case ModelPackage.PLANNED_TRY__PAGE:
				return PAGE_EDEFAULT == null ? page != null : !PAGE_EDEFAULT.equals(page);
			case ModelPackage.PLANNED_TRY__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case ModelPackage.PLANNED_TRY__SUCCESSES:
				return isSetSuccesses();
			case ModelPackage.PLANNED_TRY__FAILURES:
				return isSetFailures();
			case ModelPackage.PLANNED_TRY__PRIOR:
				return prior != null;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass)
	{
		if (baseClass == Sourced.class)
		{
			switch (derivedFeatureID)
			{
				case ModelPackage.PLANNED_TRY__SOURCE: return ModelPackage.SOURCED__SOURCE;
				case ModelPackage.PLANNED_TRY__PAGE: return ModelPackage.SOURCED__PAGE;
				case ModelPackage.PLANNED_TRY__NOTE: return ModelPackage.SOURCED__NOTE;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass)
	{
		if (baseClass == Sourced.class)
		{
			switch (baseFeatureID)
			{
				case ModelPackage.SOURCED__SOURCE: return ModelPackage.PLANNED_TRY__SOURCE;
				case ModelPackage.SOURCED__PAGE: return ModelPackage.PLANNED_TRY__PAGE;
				case ModelPackage.SOURCED__NOTE: return ModelPackage.PLANNED_TRY__NOTE;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (source: ");
		result.append(source);
		result.append(", page: ");
		result.append(page);
		result.append(", note: ");
		result.append(note);
		result.append(", successes: ");
		if (successesESet) result.append(successes); else result.append("<unset>");
		result.append(", failures: ");
		if (failuresESet) result.append(failures); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //PlannedTryImpl
