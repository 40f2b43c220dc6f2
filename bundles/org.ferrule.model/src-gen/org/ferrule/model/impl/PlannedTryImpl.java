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

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Planned Try</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
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
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (successes: ");
		if (successesESet) result.append(successes); else result.append("<unset>");
		result.append(", failures: ");
		if (failuresESet) result.append(failures); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //PlannedTryImpl
