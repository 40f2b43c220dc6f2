/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.Prior;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Prior</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.PriorImpl#getSuccesses <em>Successes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PriorImpl#getFailures <em>Failures</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PriorImpl#getLabel <em>Label</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PriorImpl extends ElementImpl implements Prior
{
	/**
	 * The default value of the '{@link #getSuccesses() <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuccesses()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal SUCCESSES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSuccesses() <em>Successes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuccesses()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal successes = SUCCESSES_EDEFAULT;

	/**
	 * The default value of the '{@link #getFailures() <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailures()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal FAILURES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFailures() <em>Failures</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailures()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal failures = FAILURES_EDEFAULT;

	/**
	 * The default value of the '{@link #getLabel() <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLabel() <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabel()
	 * @generated
	 * @ordered
	 */
	protected String label = LABEL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PriorImpl()
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
		return ModelPackage.Literals.PRIOR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getSuccesses()
	{
		return successes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSuccesses(BigDecimal newSuccesses)
	{
		BigDecimal oldSuccesses = successes;
		successes = newSuccesses;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PRIOR__SUCCESSES, oldSuccesses, successes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getFailures()
	{
		return failures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFailures(BigDecimal newFailures)
	{
		BigDecimal oldFailures = failures;
		failures = newFailures;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PRIOR__FAILURES, oldFailures, failures));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLabel()
	{
		return label;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabel(String newLabel)
	{
		String oldLabel = label;
		label = newLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PRIOR__LABEL, oldLabel, label));
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
			case ModelPackage.PRIOR__SUCCESSES:
				return getSuccesses();
			case ModelPackage.PRIOR__FAILURES:
				return getFailures();
			case ModelPackage.PRIOR__LABEL:
				return getLabel();
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
			case ModelPackage.PRIOR__SUCCESSES:
				setSuccesses((BigDecimal)newValue);
				return;
			case ModelPackage.PRIOR__FAILURES:
				setFailures((BigDecimal)newValue);
				return;
			case ModelPackage.PRIOR__LABEL:
				setLabel((String)newValue);
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
			case ModelPackage.PRIOR__SUCCESSES:
				setSuccesses(SUCCESSES_EDEFAULT);
				return;
			case ModelPackage.PRIOR__FAILURES:
				setFailures(FAILURES_EDEFAULT);
				return;
			case ModelPackage.PRIOR__LABEL:
				setLabel(LABEL_EDEFAULT);
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
			case ModelPackage.PRIOR__SUCCESSES:
				return SUCCESSES_EDEFAULT == null ? successes != null : !SUCCESSES_EDEFAULT.equals(successes);
			case ModelPackage.PRIOR__FAILURES:
				return FAILURES_EDEFAULT == null ? failures != null : !FAILURES_EDEFAULT.equals(failures);
			case ModelPackage.PRIOR__LABEL:
				return LABEL_EDEFAULT == null ? label != null : !LABEL_EDEFAULT.equals(label);
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
		result.append(successes);
		result.append(", failures: ");
		result.append(failures);
		result.append(", label: ");
		result.append(label);
		result.append(')');
		return result.toString();
	}

} //PriorImpl
