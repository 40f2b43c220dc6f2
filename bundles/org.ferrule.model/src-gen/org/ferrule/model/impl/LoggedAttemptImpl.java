/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.UsedUnit;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Logged Attempt</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.LoggedAttemptImpl#getMove <em>Move</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LoggedAttemptImpl#getOutcome <em>Outcome</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LoggedAttemptImpl#getUnits <em>Units</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LoggedAttemptImpl#getRemark <em>Remark</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LoggedAttemptImpl extends CostedImpl implements LoggedAttempt
{
	/**
	 * The default value of the '{@link #getMove() <em>Move</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMove()
	 * @generated
	 * @ordered
	 */
	protected static final String MOVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMove() <em>Move</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMove()
	 * @generated
	 * @ordered
	 */
	protected String move = MOVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutcome() <em>Outcome</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutcome()
	 * @generated
	 * @ordered
	 */
	protected static final AttemptOutcome OUTCOME_EDEFAULT = AttemptOutcome.CROSSED;

	/**
	 * The cached value of the '{@link #getOutcome() <em>Outcome</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutcome()
	 * @generated
	 * @ordered
	 */
	protected AttemptOutcome outcome = OUTCOME_EDEFAULT;

	/**
	 * This is true if the Outcome attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean outcomeESet;

	/**
	 * The cached value of the '{@link #getUnits() <em>Units</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnits()
	 * @generated
	 * @ordered
	 */
	protected EList<UsedUnit> units;

	/**
	 * The default value of the '{@link #getRemark() <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemark()
	 * @generated
	 * @ordered
	 */
	protected static final String REMARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRemark() <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemark()
	 * @generated
	 * @ordered
	 */
	protected String remark = REMARK_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LoggedAttemptImpl()
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
		return ModelPackage.Literals.LOGGED_ATTEMPT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMove()
	{
		return move;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMove(String newMove)
	{
		String oldMove = move;
		move = newMove;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGED_ATTEMPT__MOVE, oldMove, move));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AttemptOutcome getOutcome()
	{
		return outcome;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutcome(AttemptOutcome newOutcome)
	{
		AttemptOutcome oldOutcome = outcome;
		outcome = newOutcome == null ? OUTCOME_EDEFAULT : newOutcome;
		boolean oldOutcomeESet = outcomeESet;
		outcomeESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGED_ATTEMPT__OUTCOME, oldOutcome, outcome, !oldOutcomeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetOutcome()
	{
		AttemptOutcome oldOutcome = outcome;
		boolean oldOutcomeESet = outcomeESet;
		outcome = OUTCOME_EDEFAULT;
		outcomeESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.LOGGED_ATTEMPT__OUTCOME, oldOutcome, OUTCOME_EDEFAULT, oldOutcomeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetOutcome()
	{
		return outcomeESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<UsedUnit> getUnits()
	{
		if (units == null)
		{
			units = new EObjectContainmentEList<UsedUnit>(UsedUnit.class, this, ModelPackage.LOGGED_ATTEMPT__UNITS);
		}
		return units;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRemark()
	{
		return remark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemark(String newRemark)
	{
		String oldRemark = remark;
		remark = newRemark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGED_ATTEMPT__REMARK, oldRemark, remark));
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
			case ModelPackage.LOGGED_ATTEMPT__UNITS:
				return ((InternalEList<?>)getUnits()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.LOGGED_ATTEMPT__MOVE:
				return getMove();
			case ModelPackage.LOGGED_ATTEMPT__OUTCOME:
				return getOutcome();
			case ModelPackage.LOGGED_ATTEMPT__UNITS:
				return getUnits();
			case ModelPackage.LOGGED_ATTEMPT__REMARK:
				return getRemark();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.LOGGED_ATTEMPT__MOVE:
				setMove((String)newValue);
				return;
			case ModelPackage.LOGGED_ATTEMPT__OUTCOME:
				setOutcome((AttemptOutcome)newValue);
				return;
			case ModelPackage.LOGGED_ATTEMPT__UNITS:
				getUnits().clear();
				getUnits().addAll((Collection<? extends UsedUnit>)newValue);
				return;
			case ModelPackage.LOGGED_ATTEMPT__REMARK:
				setRemark((String)newValue);
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
			case ModelPackage.LOGGED_ATTEMPT__MOVE:
				setMove(MOVE_EDEFAULT);
				return;
			case ModelPackage.LOGGED_ATTEMPT__OUTCOME:
				unsetOutcome();
				return;
			case ModelPackage.LOGGED_ATTEMPT__UNITS:
				getUnits().clear();
				return;
			case ModelPackage.LOGGED_ATTEMPT__REMARK:
				setRemark(REMARK_EDEFAULT);
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
			case ModelPackage.LOGGED_ATTEMPT__MOVE:
				return MOVE_EDEFAULT == null ? move != null : !MOVE_EDEFAULT.equals(move);
			case ModelPackage.LOGGED_ATTEMPT__OUTCOME:
				return isSetOutcome();
			case ModelPackage.LOGGED_ATTEMPT__UNITS:
				return units != null && !units.isEmpty();
			case ModelPackage.LOGGED_ATTEMPT__REMARK:
				return REMARK_EDEFAULT == null ? remark != null : !REMARK_EDEFAULT.equals(remark);
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
		result.append(" (move: ");
		result.append(move);
		result.append(", outcome: ");
		if (outcomeESet) result.append(outcome); else result.append("<unset>");
		result.append(", remark: ");
		result.append(remark);
		result.append(')');
		return result.toString();
	}

} //LoggedAttemptImpl
