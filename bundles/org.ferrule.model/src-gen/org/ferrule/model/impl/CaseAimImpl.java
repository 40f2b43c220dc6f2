/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.CaseAim;
import org.ferrule.model.Costs;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.ResourceKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Case Aim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#getObjective <em>Objective</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#getStoppingCost <em>Stopping Cost</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#isTiersFirst <em>Tiers First</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#isOneNewRiskAStep <em>One New Risk AStep</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#getSameAxisDiscount <em>Same Axis Discount</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#isBudgetsLimit <em>Budgets Limit</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CaseAimImpl#getBudgets <em>Budgets</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CaseAimImpl extends ElementImpl implements CaseAim
{
	/**
	 * The default value of the '{@link #getObjective() <em>Objective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObjective()
	 * @generated
	 * @ordered
	 */
	protected static final ResourceKind OBJECTIVE_EDEFAULT = ResourceKind.TIME;

	/**
	 * The cached value of the '{@link #getObjective() <em>Objective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObjective()
	 * @generated
	 * @ordered
	 */
	protected ResourceKind objective = OBJECTIVE_EDEFAULT;

	/**
	 * This is true if the Objective attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean objectiveESet;

	/**
	 * The default value of the '{@link #getStoppingCost() <em>Stopping Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoppingCost()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal STOPPING_COST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStoppingCost() <em>Stopping Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoppingCost()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal stoppingCost = STOPPING_COST_EDEFAULT;

	/**
	 * The default value of the '{@link #isTiersFirst() <em>Tiers First</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isTiersFirst()
	 * @generated
	 * @ordered
	 */
	protected static final boolean TIERS_FIRST_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isTiersFirst() <em>Tiers First</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isTiersFirst()
	 * @generated
	 * @ordered
	 */
	protected boolean tiersFirst = TIERS_FIRST_EDEFAULT;

	/**
	 * This is true if the Tiers First attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean tiersFirstESet;

	/**
	 * The default value of the '{@link #isOneNewRiskAStep() <em>One New Risk AStep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOneNewRiskAStep()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ONE_NEW_RISK_ASTEP_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isOneNewRiskAStep() <em>One New Risk AStep</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOneNewRiskAStep()
	 * @generated
	 * @ordered
	 */
	protected boolean oneNewRiskAStep = ONE_NEW_RISK_ASTEP_EDEFAULT;

	/**
	 * This is true if the One New Risk AStep attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean oneNewRiskAStepESet;

	/**
	 * The default value of the '{@link #getSameAxisDiscount() <em>Same Axis Discount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSameAxisDiscount()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal SAME_AXIS_DISCOUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSameAxisDiscount() <em>Same Axis Discount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSameAxisDiscount()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal sameAxisDiscount = SAME_AXIS_DISCOUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #isBudgetsLimit() <em>Budgets Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBudgetsLimit()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BUDGETS_LIMIT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isBudgetsLimit() <em>Budgets Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBudgetsLimit()
	 * @generated
	 * @ordered
	 */
	protected boolean budgetsLimit = BUDGETS_LIMIT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBudgets() <em>Budgets</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBudgets()
	 * @generated
	 * @ordered
	 */
	protected Costs budgets;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CaseAimImpl()
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
		return ModelPackage.Literals.CASE_AIM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ResourceKind getObjective()
	{
		return objective;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setObjective(ResourceKind newObjective)
	{
		ResourceKind oldObjective = objective;
		objective = newObjective == null ? OBJECTIVE_EDEFAULT : newObjective;
		boolean oldObjectiveESet = objectiveESet;
		objectiveESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__OBJECTIVE, oldObjective, objective, !oldObjectiveESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetObjective()
	{
		ResourceKind oldObjective = objective;
		boolean oldObjectiveESet = objectiveESet;
		objective = OBJECTIVE_EDEFAULT;
		objectiveESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CASE_AIM__OBJECTIVE, oldObjective, OBJECTIVE_EDEFAULT, oldObjectiveESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetObjective()
	{
		return objectiveESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getStoppingCost()
	{
		return stoppingCost;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStoppingCost(BigDecimal newStoppingCost)
	{
		BigDecimal oldStoppingCost = stoppingCost;
		stoppingCost = newStoppingCost;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__STOPPING_COST, oldStoppingCost, stoppingCost));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isTiersFirst()
	{
		return tiersFirst;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTiersFirst(boolean newTiersFirst)
	{
		boolean oldTiersFirst = tiersFirst;
		tiersFirst = newTiersFirst;
		boolean oldTiersFirstESet = tiersFirstESet;
		tiersFirstESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__TIERS_FIRST, oldTiersFirst, tiersFirst, !oldTiersFirstESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetTiersFirst()
	{
		boolean oldTiersFirst = tiersFirst;
		boolean oldTiersFirstESet = tiersFirstESet;
		tiersFirst = TIERS_FIRST_EDEFAULT;
		tiersFirstESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CASE_AIM__TIERS_FIRST, oldTiersFirst, TIERS_FIRST_EDEFAULT, oldTiersFirstESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetTiersFirst()
	{
		return tiersFirstESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isOneNewRiskAStep()
	{
		return oneNewRiskAStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOneNewRiskAStep(boolean newOneNewRiskAStep)
	{
		boolean oldOneNewRiskAStep = oneNewRiskAStep;
		oneNewRiskAStep = newOneNewRiskAStep;
		boolean oldOneNewRiskAStepESet = oneNewRiskAStepESet;
		oneNewRiskAStepESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__ONE_NEW_RISK_ASTEP, oldOneNewRiskAStep, oneNewRiskAStep, !oldOneNewRiskAStepESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetOneNewRiskAStep()
	{
		boolean oldOneNewRiskAStep = oneNewRiskAStep;
		boolean oldOneNewRiskAStepESet = oneNewRiskAStepESet;
		oneNewRiskAStep = ONE_NEW_RISK_ASTEP_EDEFAULT;
		oneNewRiskAStepESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.CASE_AIM__ONE_NEW_RISK_ASTEP, oldOneNewRiskAStep, ONE_NEW_RISK_ASTEP_EDEFAULT, oldOneNewRiskAStepESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetOneNewRiskAStep()
	{
		return oneNewRiskAStepESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getSameAxisDiscount()
	{
		return sameAxisDiscount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSameAxisDiscount(BigDecimal newSameAxisDiscount)
	{
		BigDecimal oldSameAxisDiscount = sameAxisDiscount;
		sameAxisDiscount = newSameAxisDiscount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__SAME_AXIS_DISCOUNT, oldSameAxisDiscount, sameAxisDiscount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBudgetsLimit()
	{
		return budgetsLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBudgetsLimit(boolean newBudgetsLimit)
	{
		boolean oldBudgetsLimit = budgetsLimit;
		budgetsLimit = newBudgetsLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__BUDGETS_LIMIT, oldBudgetsLimit, budgetsLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Costs getBudgets()
	{
		return budgets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBudgets(Costs newBudgets, NotificationChain msgs)
	{
		Costs oldBudgets = budgets;
		budgets = newBudgets;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__BUDGETS, oldBudgets, newBudgets);
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
	public void setBudgets(Costs newBudgets)
	{
		if (newBudgets != budgets)
		{
			NotificationChain msgs = null;
			if (budgets != null)
				msgs = ((InternalEObject)budgets).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_AIM__BUDGETS, null, msgs);
			if (newBudgets != null)
				msgs = ((InternalEObject)newBudgets).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.CASE_AIM__BUDGETS, null, msgs);
			msgs = basicSetBudgets(newBudgets, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CASE_AIM__BUDGETS, newBudgets, newBudgets));
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
			case ModelPackage.CASE_AIM__BUDGETS:
				return basicSetBudgets(null, msgs);
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
			case ModelPackage.CASE_AIM__OBJECTIVE:
				return getObjective();
			case ModelPackage.CASE_AIM__STOPPING_COST:
				return getStoppingCost();
			case ModelPackage.CASE_AIM__TIERS_FIRST:
				return isTiersFirst();
			case ModelPackage.CASE_AIM__ONE_NEW_RISK_ASTEP:
				return isOneNewRiskAStep();
			case ModelPackage.CASE_AIM__SAME_AXIS_DISCOUNT:
				return getSameAxisDiscount();
			case ModelPackage.CASE_AIM__BUDGETS_LIMIT:
				return isBudgetsLimit();
			case ModelPackage.CASE_AIM__BUDGETS:
				return getBudgets();
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
			case ModelPackage.CASE_AIM__OBJECTIVE:
				setObjective((ResourceKind)newValue);
				return;
			case ModelPackage.CASE_AIM__STOPPING_COST:
				setStoppingCost((BigDecimal)newValue);
				return;
			case ModelPackage.CASE_AIM__TIERS_FIRST:
				setTiersFirst((Boolean)newValue);
				return;
			case ModelPackage.CASE_AIM__ONE_NEW_RISK_ASTEP:
				setOneNewRiskAStep((Boolean)newValue);
				return;
			case ModelPackage.CASE_AIM__SAME_AXIS_DISCOUNT:
				setSameAxisDiscount((BigDecimal)newValue);
				return;
			case ModelPackage.CASE_AIM__BUDGETS_LIMIT:
				setBudgetsLimit((Boolean)newValue);
				return;
			case ModelPackage.CASE_AIM__BUDGETS:
				setBudgets((Costs)newValue);
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
			case ModelPackage.CASE_AIM__OBJECTIVE:
				unsetObjective();
				return;
			case ModelPackage.CASE_AIM__STOPPING_COST:
				setStoppingCost(STOPPING_COST_EDEFAULT);
				return;
			case ModelPackage.CASE_AIM__TIERS_FIRST:
				unsetTiersFirst();
				return;
			case ModelPackage.CASE_AIM__ONE_NEW_RISK_ASTEP:
				unsetOneNewRiskAStep();
				return;
			case ModelPackage.CASE_AIM__SAME_AXIS_DISCOUNT:
				setSameAxisDiscount(SAME_AXIS_DISCOUNT_EDEFAULT);
				return;
			case ModelPackage.CASE_AIM__BUDGETS_LIMIT:
				setBudgetsLimit(BUDGETS_LIMIT_EDEFAULT);
				return;
			case ModelPackage.CASE_AIM__BUDGETS:
				setBudgets((Costs)null);
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
			case ModelPackage.CASE_AIM__OBJECTIVE:
				return isSetObjective();
			case ModelPackage.CASE_AIM__STOPPING_COST:
				return STOPPING_COST_EDEFAULT == null ? stoppingCost != null : !STOPPING_COST_EDEFAULT.equals(stoppingCost);
			case ModelPackage.CASE_AIM__TIERS_FIRST:
				return isSetTiersFirst();
			case ModelPackage.CASE_AIM__ONE_NEW_RISK_ASTEP:
				return isSetOneNewRiskAStep();
			case ModelPackage.CASE_AIM__SAME_AXIS_DISCOUNT:
				return SAME_AXIS_DISCOUNT_EDEFAULT == null ? sameAxisDiscount != null : !SAME_AXIS_DISCOUNT_EDEFAULT.equals(sameAxisDiscount);
			case ModelPackage.CASE_AIM__BUDGETS_LIMIT:
				return budgetsLimit != BUDGETS_LIMIT_EDEFAULT;
			case ModelPackage.CASE_AIM__BUDGETS:
				return budgets != null;
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
		result.append(" (objective: ");
		if (objectiveESet) result.append(objective); else result.append("<unset>");
		result.append(", stoppingCost: ");
		result.append(stoppingCost);
		result.append(", tiersFirst: ");
		if (tiersFirstESet) result.append(tiersFirst); else result.append("<unset>");
		result.append(", oneNewRiskAStep: ");
		if (oneNewRiskAStepESet) result.append(oneNewRiskAStep); else result.append("<unset>");
		result.append(", sameAxisDiscount: ");
		result.append(sameAxisDiscount);
		result.append(", budgetsLimit: ");
		result.append(budgetsLimit);
		result.append(')');
		return result.toString();
	}

} //CaseAimImpl
